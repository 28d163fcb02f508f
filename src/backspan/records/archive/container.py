"""Where the members of a tar file lie, and every byte between them that is not as written.

A sealed manifest at the end tells the whole layout, so that a broken header leads nobody astray:
all headers, paddings and end blocks are written again from it and compared. Without one the
headers are followed from the start; where one is broken, the next whole header goes on.
"""

from __future__ import annotations

import os
from typing import BinaryIO

from backspan.records.archive import layout
from backspan.records.archive.layout import BLOCK, Member
from backspan.records.archive.manifest import BEGINS, NoManifestError, read_manifest
from backspan.records.archive.parts import CHUNK, first_difference
from backspan.records.archive.report import Damages

_WINDOWS = (CHUNK, layout.MOST_WHOLE)
#: A file made to look like many manifests shall not take hours.
_MOST_TRIES = 16


def survey(file: BinaryIO, damages: Damages) -> tuple[Member, ...]:
    """The members of the file in their order; tells of everything around them that differs."""
    total = file.seek(0, os.SEEK_END)
    if total == 0:
        damages.tell(layout.ARCHIVE, "an empty file, expected an archive")
        return ()
    members = _by_manifest(file, total) or _by_headers(file, total, damages)
    if not members:
        damages.tell(layout.ARCHIVE, f"no archive: no member in its {total:,} bytes")
        return ()
    for number, one in enumerate(members):
        _compare(file, one.name, damages, at=one.at, expected=layout.header(one.name, one.size))
        short = one.end - total
        if short > 0:
            damages.tell(one.name, f"the file ends at byte {total:,}, {short:,} bytes too early")
            continue
        empty = bytes(layout.padding(one.size))
        following = members[number + 1].at if number + 1 < len(members) else None
        if following is not None and following != one.after:
            damages.tell(one.name, f"ends at byte {one.end:,}, the next begins at {following:,}")
        else:
            _compare(file, one.name, damages, at=one.end, expected=empty, what="padding")
    _end(file, members[-1], total, damages)
    for name in layout.REQUIRED:
        if name not in [one.name for one in members]:
            damages.tell(name, "is not there")
    return members


def _end(file: BinaryIO, last: Member, total: int, damages: Damages) -> None:
    end = last.after
    if last.end <= total:
        expected = layout.END_BLOCKS
        _compare(file, layout.END, damages, at=end, expected=expected, what="end blocks")
    more = total - end - len(layout.END_BLOCKS)
    if more > 0:
        damages.tell(layout.END, f"{more:,} bytes more, from byte {total - more:,} on")


def _compare(
    file: BinaryIO,
    name: str,
    damages: Damages,
    *,
    at: int,
    expected: bytes,
    what: str = "header",
) -> None:
    offset = first_difference(file, at=at, expected=expected)
    if offset is not None:
        damages.tell(name, f"its {what} differs at byte {offset:,} of the file")


def _by_manifest(file: BinaryIO, total: int) -> tuple[Member, ...]:
    """The layout by the last sealed manifest, if that stands where it says itself."""
    for window in _WINDOWS:
        # Members begin at whole blocks, and so does the window.
        start = max(0, total - window) // BLOCK * BLOCK
        file.seek(start)
        tail = file.read(total - start)
        at, tries = len(tail), 0
        while (at := tail.rfind(BEGINS, 0, at)) >= 0 and tries < _MOST_TRIES:
            if (start + at) % BLOCK == 0:
                tries += 1
                members = _planned(tail[at:].split(b"\0", 1)[0], start + at)
                if members:
                    return members
        if start == 0:
            break
    return ()


def _planned(raw: bytes, at: int) -> tuple[Member, ...]:
    try:
        manifest = read_manifest(raw)
    except NoManifestError:
        return ()
    sizes = [(row.name, row.size) for row in manifest.members]
    members = tuple(layout.laid_out([*sizes, (layout.MANIFEST, len(raw))]))
    return members if members[-1].content == at else ()


def _by_headers(file: BinaryIO, total: int, damages: Damages) -> tuple[Member, ...]:
    members: list[Member] = []
    at, last = 0, (-1, "")
    while at < total:
        file.seek(at)
        block = file.read(BLOCK)
        named = layout.read_header(block)
        if named is not None and (place := layout.rank(named[0])) is not None and place > last:
            members.append(Member(named[0], at, named[1]))
            at, last = members[-1].after, place
            continue
        if not block.strip(b"\0") or (members and members[-1].name == layout.MANIFEST):
            break
        before = members[-1].name if members else None
        damages.tell(
            layout.stated_name(block) or layout.ARCHIVE,
            f"no header of a member that may follow on {before or 'nothing'} at byte {at:,}",
        )
        start = members[-1].content if members else at
        found = _next_header(file, start, last)
        if found is None:
            break
        if members:
            kept = members[-1]
            members[-1] = Member(kept.name, kept.at, min(kept.size, found - kept.content))
        at = found
    return tuple(members)


def _next_header(file: BinaryIO, start: int, last: tuple[int, str]) -> int | None:
    """Where the next whole header of a later member begins, at any byte from there on."""
    file.seek(start)
    kept, base = b"", start
    while piece := file.read(CHUNK):
        window = kept + piece
        hit = -1
        while (hit := window.find(layout.MAGIC, hit + 1)) >= 0:
            begins = hit - layout.MAGIC_AT
            if begins < 0 or begins + BLOCK > len(window):
                continue
            named = layout.read_header(window[begins : begins + BLOCK])
            place = None if named is None else layout.rank(named[0])
            if place is not None and place > last:
                return base + begins
        kept = window[-BLOCK:]
        base += len(window) - len(kept)
    return None
