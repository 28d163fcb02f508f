"""The proof of an archive alone: nothing is asked but its bytes, a key and heads that were kept.

All that can be found is told at once, each with the member and line it lies in. What the archive
says of itself proves only that it is whole. That nothing was cut off or written anew is proven by a
head that stood elsewhere: one that was kept, or one signed by a key that is known from elsewhere.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from pathlib import Path
from typing import BinaryIO

from backspan.core.ledger.entry import MOST_BYTES
from backspan.core.ledger.receipts import NO_HEAD, SignedHead
from backspan.records.archive import layout
from backspan.records.archive.container import survey
from backspan.records.archive.followed import MOST_RECEIPT_BYTES, follow_receipts
from backspan.records.archive.heads import prove_heads, prove_known
from backspan.records.archive.layout import Member
from backspan.records.archive.manifest import Manifest, NoManifestError, read_manifest
from backspan.records.archive.parts import first_difference, hash_of_part, lines
from backspan.records.archive.readme import README_BYTES
from backspan.records.archive.report import Damages, Report
from backspan.records.archive.statements import Statements, prove_entries


def verify(
    path: Path,
    *,
    holds: Callable[[SignedHead], bool],
    trusted_key: str | None = None,
    known_heads: Iterable[str] = (),
) -> Report:
    """What is damaged in the archive at `path`.

    `holds` answers whether a signature is by the key it names; `trusted_key` is the one key that
    heads may be signed with, and at least one must be; `known_heads` are heads kept elsewhere. A
    file that is no archive at all is a report too; raises OSError where it cannot be read.
    """
    with path.open("rb") as file:
        return verify_stream(file, holds=holds, trusted_key=trusted_key, known_heads=known_heads)


def verify_stream(
    file: BinaryIO,
    *,
    holds: Callable[[SignedHead], bool],
    trusted_key: str | None = None,
    known_heads: Iterable[str] = (),
) -> Report:
    """As `verify`, of a file that is open and can be read at any place."""
    damages = Damages()
    members = {one.name: one for one in survey(file, damages)}
    manifest = _manifest(file, members, damages)
    hashes = {
        name: hash_of_part(file, at=one.content, size=one.size) for name, one in members.items()
    }
    _readme(file, members, damages)
    receipts = follow_receipts(
        _lines(file, members.get(layout.RECEIPTS), MOST_RECEIPT_BYTES), damages
    )
    statements = prove_entries(
        lambda: _lines(file, members.get(layout.ENTRIES), MOST_BYTES + 1),
        receipts,
        None if manifest is None else manifest.site,
        damages,
    )
    signed = prove_heads(
        _whole(file, members.get(layout.HEADS), damages),
        receipts.found,
        damages,
        site=statements.site,
        holds=holds,
        trusted_key=trusted_key,
    )
    prove_known(known_heads, receipts.found, damages)
    _evidence(hashes, statements, damages)
    last = receipts.found[-1] if receipts.found else None
    head = NO_HEAD if last is None else last.head
    if manifest is not None:
        _against_manifest(manifest, members, hashes, damages)
        if (manifest.entries, manifest.head) != (statements.lines, head):
            damages.tell(
                layout.MANIFEST,
                f"found {manifest.entries} entries up to the head {manifest.head}, expected"
                f" {statements.lines} up to {head}",
            )
    return Report(damages.done(), statements.site, statements.lines, head, signed)


def _whole(file: BinaryIO, member: Member | None, damages: Damages) -> bytes:
    """The content of a small member; tells where it is too large to be one."""
    if member is None:
        return b""
    if member.size > layout.MOST_WHOLE:
        damages.tell(member.name, f"{member.size:,} bytes, at most {layout.MOST_WHOLE:,}")
        return b""
    file.seek(member.content)
    return file.read(member.size)


def _lines(file: BinaryIO, member: Member | None, most: int) -> Iterator[bytes]:
    if member is None:
        return iter(())
    return lines(file, at=member.content, size=member.size, most=most)


def _manifest(file: BinaryIO, members: dict[str, Member], damages: Damages) -> Manifest | None:
    if layout.MANIFEST not in members:
        return None
    try:
        return read_manifest(_whole(file, members[layout.MANIFEST], damages))
    except NoManifestError as error:
        damages.tell(layout.MANIFEST, str(error))
        return None


def _readme(file: BinaryIO, members: dict[str, Member], damages: Damages) -> None:
    one = members.get(layout.README)
    if one is None:
        return
    differs = first_difference(file, at=one.content, expected=README_BYTES)
    if differs is not None or one.size != len(README_BYTES):
        at = one.end if differs is None else differs
        damages.tell(layout.README, f"not the text of this format, from byte {at:,} of the file")


def _evidence(hashes: dict[str, str], statements: Statements, damages: Damages) -> None:
    there = {
        name.removeprefix(layout.EVIDENCE): found
        for name, found in hashes.items()
        if name.startswith(layout.EVIDENCE)
    }
    for name, found in there.items():
        if name != found:
            damages.tell(layout.EVIDENCE + name, f"its content has the hash {found}")
        if name not in statements.named and not statements.unread:
            damages.tell(layout.EVIDENCE + name, "no entry names it")
    for name in sorted(statements.named.keys() - there.keys()):
        damages.tell(layout.EVIDENCE + name, f"is not there; {statements.named[name]} names it")


def _against_manifest(
    manifest: Manifest, members: dict[str, Member], hashes: dict[str, str], damages: Damages
) -> None:
    listed = {row.name: row for row in manifest.members}
    for name, row in listed.items():
        one = members.get(name)
        if one is None:
            damages.tell(name, "is not there; the manifest lists it")
        elif (row.size, row.sha256) != (one.size, hashes[name]):
            damages.tell(
                name,
                f"found {one.size:,} bytes with the hash {hashes[name]}, expected"
                f" {row.size:,} with {row.sha256} by the manifest",
            )
    for name in members:
        if name not in listed and name != layout.MANIFEST:
            damages.tell(name, "the manifest does not list it")
