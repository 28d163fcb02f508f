"""Opens an archive that is in its one form; anything else is refused before a word of it is used.

Nothing is ever unpacked: contents are read in place, by where they lie, never by a name from the
file. That entries follow, signatures hold and evidence is there is what `verify` proves.
"""

from __future__ import annotations

import io
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import BinaryIO

from backspan.core.ledger.entry import MOST_BYTES, Entry, read_entry
from backspan.core.ledger.errors import EntryError
from backspan.core.ledger.receipts import Receipt, SignedHead, read_receipt
from backspan.records.archive import layout
from backspan.records.archive.container import survey
from backspan.records.archive.errors import ArchiveDamagedError, ArchiveError
from backspan.records.archive.followed import MOST_RECEIPT_BYTES
from backspan.records.archive.heads import read_heads
from backspan.records.archive.layout import Member
from backspan.records.archive.manifest import Manifest, NoManifestError, read_manifest
from backspan.records.archive.parts import Part, hash_of_part, lines
from backspan.records.archive.report import Damage, Damages


@dataclass(frozen=True, slots=True)
class Archive:
    """An archive of which the container and its list were found as they were written."""

    path: Path
    manifest: Manifest
    heads: tuple[SignedHead, ...]
    project: bytes | None
    members: dict[str, Member]

    @property
    def evidence(self) -> tuple[str, ...]:
        """The hashes of all evidence in it, sorted."""
        names = [name for name in self.members if name.startswith(layout.EVIDENCE)]
        return tuple(name.removeprefix(layout.EVIDENCE) for name in names)

    def entries(self) -> Iterator[bytes]:
        """The bytes of the entries in the order of their places, as they lie in the file.

        Raises ArchiveDamagedError at a line that is too long or has no end.
        """
        yield from self._lines(layout.ENTRIES, MOST_BYTES + 1)

    def receipts(self) -> Iterator[Receipt]:
        """The receipts in order. Raises ArchiveDamagedError at a line that is none."""
        for number, line in enumerate(self._lines(layout.RECEIPTS, MOST_RECEIPT_BYTES), start=1):
            try:
                yield read_receipt(line)
            except EntryError as error:
                damage = Damage(layout.RECEIPTS, number, f"cannot be read: {error}")
                raise ArchiveDamagedError((damage,)) from error

    def all_entries(self) -> Iterator[Entry]:
        """The entries as they are read, each with the time it came, in the order of their places.

        Raises ArchiveDamagedError as `receipts` does, EntryError for a line that is no entry.
        """
        for receipt, raw in zip(self.receipts(), self.entries(), strict=True):
            yield read_entry(raw, received=receipt.received)

    def open_evidence(self, name: str) -> BinaryIO:
        """The file of that hash, once its content was found to have it; the caller closes it.

        Raises ArchiveError where it is not in the archive, ArchiveDamagedError where its content
        is another.
        """
        member = self.members.get(layout.EVIDENCE + name)
        if member is None:
            raise ArchiveError(f"{self.path}: no evidence of the hash {name!r}")
        with self.path.open("rb") as file:
            found = hash_of_part(file, at=member.content, size=member.size)
        if found != name:
            damage = Damage(member.name, None, f"its content has the hash {found}")
            raise ArchiveDamagedError((damage,))
        part = Part(self.path.open("rb"), at=member.content, size=member.size)
        return io.BufferedReader(part)

    def _lines(self, name: str, most: int) -> Iterator[bytes]:
        member = self.members[name]
        with self.path.open("rb") as file:
            found = lines(file, at=member.content, size=member.size, most=most)
            for number, line in enumerate(found, start=1):
                if not line.endswith(b"\n"):
                    damage = Damage(name, number, "too long, or no line feed at its end")
                    raise ArchiveDamagedError((damage,))
                yield line[:-1]


def looks_like_archive(path: Path) -> bool:
    """Whether a file begins as an archive does; False where it cannot be read."""
    try:
        with path.open("rb") as file:
            start = file.read(layout.BLOCK)
    except OSError:
        return False
    return start[layout.MAGIC_AT :].startswith(layout.MAGIC)


def read_archive(path: Path) -> Archive:
    """Open the archive at `path`.

    Raises ArchiveDamagedError, with all that was found, where a byte of the container, a size or
    a hash in the list differs, or anything else is in the file; OSError where it cannot be read.
    """
    damages = Damages()
    with path.open("rb") as file:
        members = {one.name: one for one in survey(file, damages)}
        _refuse(damages)
        manifest = _listed(file, members, damages)
        _refuse(damages)
        try:
            heads = read_heads(_content(file, members[layout.HEADS], damages))
        except ValueError as error:
            heads = ()
            damages.tell(layout.HEADS, f"cannot be read: {error}")
        project = members.get(layout.PROJECT)
        content = None if project is None else _content(file, project, damages)
        _refuse(damages)
    return Archive(path, manifest, heads, content, members)


def _refuse(damages: Damages) -> None:
    if damages.count:
        raise ArchiveDamagedError(damages.done())


def _content(file: BinaryIO, member: Member, damages: Damages) -> bytes:
    if member.size > layout.MOST_WHOLE:
        damages.tell(member.name, f"{member.size:,} bytes, at most {layout.MOST_WHOLE:,}")
        return b""
    file.seek(member.content)
    return file.read(member.size)


def _listed(file: BinaryIO, members: dict[str, Member], damages: Damages) -> Manifest:
    """The manifest, held against what is there; evidence is held against it when it is opened."""
    try:
        manifest = read_manifest(_content(file, members[layout.MANIFEST], damages))
    except NoManifestError as error:
        damage = Damage(layout.MANIFEST, None, str(error))
        raise ArchiveDamagedError((*damages.done(), damage)) from error
    listed = {row.name: row for row in manifest.members}
    for name, one in members.items():
        row = listed.pop(name, None)
        if name == layout.MANIFEST:
            continue
        if row is None or row.size != one.size:
            damages.tell(name, "not of the size that the manifest lists")
        elif not name.startswith(layout.EVIDENCE):
            found = hash_of_part(file, at=one.content, size=one.size)
            if found != row.sha256:
                damages.tell(name, f"found the hash {found}, expected {row.sha256}")
        elif row.sha256 != name.removeprefix(layout.EVIDENCE):
            damages.tell(name, f"listed with the hash {row.sha256}")
    for name in listed:
        damages.tell(name, "is not there; the manifest lists it")
    return manifest
