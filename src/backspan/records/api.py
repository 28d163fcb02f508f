"""The door to the record of one site: ledger, evidence, key, and its name as a device.

All of it lies in one folder, but for a ledger that a database holds. A folder that was copied, or
brought back from an archive, is another device: it gets a name and a key of its own, so that two
folders never write two entries for one place.
"""

from __future__ import annotations

import contextlib
import os
import shutil
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from itertools import takewhile
from pathlib import Path
from types import TracebackType
from typing import BinaryIO, Self

from backspan.core.errors import quoted
from backspan.core.ledger.entry import Entry, read_entry
from backspan.core.ledger.receipts import NO_HEAD, Receipt
from backspan.records.archive import (
    Archive,
    ArchiveDamagedError,
    Content,
    read_archive,
    verify,
    write_archive,
)
from backspan.records.archive.manifest import Manifest
from backspan.records.archive.report import Damage
from backspan.records.errors import (
    EvidenceDamagedError,
    EvidenceMissingError,
    FolderError,
    FolderTakenError,
    NoRecordError,
    StoreError,
    StoreSiteError,
)
from backspan.records.evidence import EvidenceFolder
from backspan.records.folders import sync_folder
from backspan.records.opening import open_ledger
from backspan.records.signing import SigningKey, holds, signing_key
from backspan.records.store import Ledger, Statement

HEADS = "signed heads"
LEDGER, EVIDENCE, KEY, DEVICE = "ledger.sqlite", "evidence", "key.pem", "device.txt"


@dataclass(frozen=True, slots=True)
class SiteRecord:
    """The record of a site that is open; the ledger is closed with it."""

    folder: Path
    ledger: Ledger
    evidence: EvidenceFolder
    device: str

    def __enter__(self) -> Self:
        return self

    def __exit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        self.close()

    def close(self) -> None:
        """Let go of the ledger. May be called twice."""
        self.ledger.close()

    @property
    def site(self) -> str:
        """The site that it is of."""
        return self.ledger.site

    @property
    def key(self) -> SigningKey:
        """The key that this folder signs heads with; made where there is none."""
        return signing_key(self.folder / KEY)

    def say(self, statements: Sequence[Statement], *, at: str) -> tuple[Entry, ...]:
        """Write entries as this folder's device, all of them or none.

        Raises EvidenceMissingError where a file they rest on is not here, and as `Ledger.say` does.
        """
        for name in (one for statement in statements for one in statement.evidence):
            if not self.evidence.has(name):
                raise EvidenceMissingError(f"{self.folder}: found no evidence {quoted(name)}")
        return self.ledger.say(statements, device=self.device, at=at)

    def entries(self, after: int = 0) -> tuple[Entry, ...]:
        """The entries behind a place, each with the time it came, in the order they came in."""
        found = self.ledger.entries(after)
        return tuple(read_entry(raw, received=receipt.received) for receipt, raw in found)

    def write_archive(
        self, path: Path, *, at: str, project: bytes | None, without_missing: bool = False
    ) -> Manifest:
        """Write all of it to one file, with its head signed now.

        Raises StoreError where there is no entry yet, and as archive.write_archive does.
        """
        if self.ledger.last() is None:
            raise StoreError(str(self.folder), found="no entry yet", expected="one at least")
        last = self.ledger.sign_head(self.key, at=at)

        def kept() -> Iterator[tuple[Receipt, bytes]]:
            # What comes while this is written is for the next one.
            return takewhile(lambda one: one[0].place <= last.place, self.ledger.entries())

        return write_archive(
            path,
            Content(
                site=self.site,
                entries=(raw for _, raw in kept()),
                receipts=(receipt for receipt, _ in kept()),
                heads=[one for one in self.ledger.signed_heads() if one.place <= last.place],
                evidence=self._opened,
                project=project,
            ),
            without_missing=without_missing,
        )

    def take_archive(self, path: Path, *, received: str) -> int:
        """Take all entries and evidence of an archive that are not here; how many entries were new.

        Raises ArchiveDamagedError for one that does not prove itself, and as `Ledger.append` does;
        then no entry of it was taken.
        """
        archive = proven_archive(path)
        if archive.manifest.site != self.site:
            raise StoreSiteError(
                str(path),
                found=f"an archive of {archive.manifest.site!r}",
                expected=f"one of {self.site!r}",
            )
        evidence = EvidenceFolder.opened(self.evidence.folder, now=received)
        for name in archive.evidence:
            with archive.open_evidence(name) as stream:
                evidence.keep(stream)
        before = self.ledger.last()
        self.ledger.append(list(archive.entries()), received=received)
        last = self.ledger.last()
        return (last.place if last else 0) - (before.place if before else 0)

    def damage(
        self, *, trusted_key: str | None = None, known_heads: Iterable[str] = ()
    ) -> tuple[Damage, ...]:
        """What is not as it was written, of the evidence, of signatures, against heads kept.

        That each entry follows on the one before was proven when the ledger was opened. With a
        `trusted_key` one head at least has to be signed by it.
        """
        found = list(self._damaged_evidence())
        heads = {receipt.place: receipt.head for receipt, _ in self.ledger.entries()}
        signed = self.ledger.signed_heads()
        for number, head in enumerate(signed, start=1):
            if not holds(head) or heads.get(head.place) != head.head:
                found.append(Damage(HEADS, number, "does not hold"))
        if trusted_key is not None and all(one.key != trusted_key for one in signed):
            found.append(Damage(HEADS, None, f"none is signed by {trusted_key}"))
        absent = (one for one in known_heads if one not in {NO_HEAD, *heads.values()})
        found += [Damage("receipts", None, f"the head {one} is none of it") for one in absent]
        return tuple(found)

    def _damaged_evidence(self) -> Iterator[Damage]:
        named = {one: entry for entry in self.entries() for one in entry.envelope.evidence}
        for name, entry in sorted(named.items()):
            member = f"{EVIDENCE}/{name}"
            try:
                self.evidence.check(name)
            except EvidenceMissingError:
                yield Damage(member, None, f"is not there; {entry.name} names it")
            except EvidenceDamagedError as error:
                yield Damage(member, None, f"{error}; {entry.name} names it")

    def _opened(self, name: str) -> BinaryIO | None:
        return self.evidence.open(name) if self.evidence.has(name) else None


def open_record(folder: Path, *, database: str | None = None) -> SiteRecord:
    """The record in a folder, its ledger in a database where an address of one is given.

    Raises NoRecordError where there is none, StoreError where its ledger cannot be opened.
    """
    device = _device(folder)
    if device is None:
        raise NoRecordError(f"{folder}: found no record of a site, expected one that was made")
    return _opened(folder, device, database, None)


def make_record(folder: Path, site: str, *, database: str | None = None) -> SiteRecord:
    """The record in a folder, made where there is none; what stopped half-way is made whole.

    Raises FolderTakenError where something else is there, FolderError where it cannot be made,
    StoreSiteError for a record of another site.
    """
    device = _device(folder)
    if device is None:
        _refuse_taken(folder)
        device = _make(folder)
    return _opened(folder, device, database, site)


def restore_record(archive: Path, folder: Path, *, database: str | None = None) -> SiteRecord:
    """The record that an archive holds, in a new folder, whole or not at all.

    Entries stand at the places, with the times and heads, that they had. Raises FolderTakenError
    where something is there, ArchiveDamagedError for an archive that does not prove itself,
    StoreError where the database holds something already.
    """
    _refuse_taken(folder)
    found = proven_archive(archive)
    making = folder.parent / f".{folder.name}-{os.urandom(8).hex()}"
    try:
        device = _make(making)
        with _opened(making, device, database, found.manifest.site) as record:
            for name in found.evidence:
                with found.open_evidence(name) as stream:
                    record.evidence.keep(stream)
            pairs = zip(found.receipts(), found.entries(), strict=True)
            record.ledger.refill(pairs, found.heads)
            record.key  # noqa: B018 - made now, so that a folder that is here has one
        with _told(folder):
            making.rename(folder)
            sync_folder(folder.parent)
    finally:
        shutil.rmtree(making, ignore_errors=True)
    return _opened(folder, device, database, found.manifest.site)


def proven_archive(path: Path) -> Archive:
    """The archive at `path`, of which everything was proven against everything else in it.

    Raises ArchiveDamagedError, which says what is wrong with it and where.
    """
    report = verify(path, holds=holds)
    if not report.whole:
        raise ArchiveDamagedError(report.damage)
    return read_archive(path)


def _opened(folder: Path, device: str, database: str | None, site: str | None) -> SiteRecord:
    ledger = open_ledger(database or folder / LEDGER, site)
    return SiteRecord(folder, ledger, EvidenceFolder(folder / EVIDENCE), device)


def _device(folder: Path) -> str | None:
    with _told(folder):
        try:
            found = (folder / DEVICE).read_text("utf-8").strip()
        except (FileNotFoundError, NotADirectoryError):
            return None
        except UnicodeDecodeError:
            found = ""
    if not found:
        raise FolderError(f"{folder / DEVICE}: found no name, expected the one of this device")
    return found


def _make(folder: Path) -> str:
    """Make the folder and its name as a device."""
    name = f"desk-{os.urandom(4).hex()}"
    with _told(folder):
        folder.mkdir(parents=True, exist_ok=True)
        making = folder / f".{DEVICE}-{os.urandom(8).hex()}"
        try:
            with making.open("x", encoding="utf-8") as file:
                file.write(f"{name}\n")
                file.flush()
                os.fsync(file.fileno())
            # A link never takes the place of the name of a program that started just before.
            with contextlib.suppress(FileExistsError):
                os.link(making, folder / DEVICE)
        finally:
            making.unlink(missing_ok=True)
        sync_folder(folder)
    return _device(folder) or name


def _refuse_taken(folder: Path) -> None:
    with _told(folder):
        taken = folder.exists() and not (folder.is_dir() and not any(folder.iterdir()))
    if taken:
        raise FolderTakenError(f"{folder}: found something there, expected a new or empty folder")


@contextlib.contextmanager
def _told(folder: Path) -> Iterator[None]:
    """Tell an error of the system as one of ours."""
    try:
        yield
    except OSError as error:
        reason = error.strerror or str(error)
        raise FolderError(f"{folder}: found {reason}, expected a folder to write in") from error
