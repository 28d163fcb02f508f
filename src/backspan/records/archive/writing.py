"""Writes an archive, whole or not at all.

Everything goes to a file of a temporary name in the same folder, which takes the archive's name
only when all of it is on the disk. Contents are streamed: a header is written once the size of what
follows it is known.
"""

from __future__ import annotations

import contextlib
import hashlib
import os
import tempfile
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from itertools import zip_longest
from pathlib import Path
from typing import BinaryIO

from backspan.core.ledger.entry import read_entry
from backspan.core.ledger.errors import ChainError, EntryError
from backspan.core.ledger.receipts import NO_HEAD, Receipt, SignedHead, following, write_receipt
from backspan.core.version import PROGRAM
from backspan.core.wire import canonical, to_data
from backspan.records.archive import layout
from backspan.records.archive.errors import ContentError, EvidenceAbsentError, WritingError
from backspan.records.archive.manifest import Manifest, Row, write_manifest
from backspan.records.archive.parts import CHUNK
from backspan.records.archive.readme import README_BYTES
from backspan.records.folders import sync_folder


@dataclass(frozen=True, slots=True)
class Content:
    """What goes into an archive.

    `entries` are the bytes of the entries in the order of their places, `receipts` theirs.
    `evidence` opens a file by its hash, and answers None where it is not there.
    """

    site: str
    entries: Iterable[bytes]
    receipts: Iterable[Receipt]
    heads: Iterable[SignedHead]
    evidence: Callable[[str], BinaryIO | None]
    project: bytes | None = None


@dataclass(slots=True)
class Tar:
    """A tar file that is being written, and the rows of what is in it so far."""

    file: BinaryIO
    rows: list[Row]

    def add(self, name: str, pieces: Iterable[bytes]) -> Row:
        """Write a member. Raises ContentError for one that is too large for the format."""
        at, size, content = self.file.tell(), 0, hashlib.sha256()
        self.file.write(bytes(layout.BLOCK))
        for piece in pieces:
            size += len(piece)
            if size > layout.MOST_SIZE:
                raise ContentError(f"{name}: more than {layout.MOST_SIZE:,} bytes, the most it may")
            content.update(piece)
            self.file.write(piece)
        self.file.write(bytes(layout.padding(size)))
        self.file.seek(at)
        self.file.write(layout.header(name, size))
        self.file.seek(0, os.SEEK_END)
        self.rows.append(Row(name, size, content.hexdigest()))
        return self.rows[-1]


def write_archive(
    path: Path, content: Content, *, program: str = PROGRAM, without_missing: bool = False
) -> Manifest:
    """Write the archive of a site to `path`, and answer its manifest.

    A file that stood there is replaced once the new one is whole. Raises ContentError where
    entries, receipts and heads do not belong together, or evidence is not what its hash says,
    EvidenceAbsentError with all hashes whose files are not there unless `without_missing`, and
    WritingError where the disk or a stream of evidence fails. After an error nothing of the new
    archive is left.
    """
    with _whole_or_nothing(path) as file:
        tar = Tar(file, [])
        tar.add(layout.README, [README_BYTES])
        statements = _Statements(content)
        tar.add(layout.ENTRIES, statements.entries())
        tar.add(layout.RECEIPTS, statements.receipts())
        tar.add(layout.HEADS, [statements.signed()])
        if content.project is not None:
            tar.add(layout.PROJECT, [content.project])
        missing = tuple(_missing(content, sorted(statements.named)))
        if missing and not without_missing:
            raise EvidenceAbsentError(missing)
        for name in sorted(statements.named.difference(missing)):
            _add_evidence(tar, name, content.evidence)
        heads = statements.heads
        last = heads[-1] if heads else NO_HEAD
        members = tuple(tar.rows)
        manifest = Manifest(layout.FORMAT, content.site, program, len(heads), last, members)
        tar.add(layout.MANIFEST, [write_manifest(manifest)])
        file.write(layout.END_BLOCKS)
    return manifest


@dataclass(slots=True)
class _Statements:
    """Entries, receipts and heads on their way out, each held against the ones before."""

    content: Content
    hashes: list[str]
    heads: list[str]
    named: set[str]

    def __init__(self, content: Content) -> None:
        self.content, self.hashes, self.heads, self.named = content, [], [], set()

    def entries(self) -> Iterator[bytes]:
        for number, raw in enumerate(self.content.entries, start=1):
            place = f"{layout.ENTRIES} line {number}"
            try:
                entry = read_entry(raw)
            except EntryError as error:
                raise ContentError(f"{place}: {error}") from error
            if entry.envelope.site != self.content.site:
                found = entry.envelope.site
                raise ContentError(f"{place}: of the site {found!r}, not {self.content.site!r}")
            self.hashes.append(entry.hash)
            self.named.update(entry.envelope.evidence)
            yield raw + b"\n"

    def receipts(self) -> Iterator[bytes]:
        try:
            numbered = enumerate(zip_longest(following(self.content.receipts), self.hashes), 1)
            for place, (receipt, entry) in numbered:
                if receipt is None or receipt.entry != entry:
                    raise ContentError(
                        f"{layout.RECEIPTS} line {place}: found"
                        f" {'no receipt' if receipt is None else 'a receipt of ' + receipt.entry},"
                        f" expected one of {entry or 'nothing'}"
                    )
                self.heads.append(receipt.head)
                yield write_receipt(receipt) + b"\n"
        except ChainError as error:
            raise ContentError(f"{layout.RECEIPTS}: {error}") from error

    def signed(self) -> bytes:
        heads = tuple(self.content.heads)
        for one in heads:
            here = self.heads[one.place - 1] if 0 < one.place <= len(self.heads) else None
            if one.site != self.content.site or one.head != here:
                raise ContentError(
                    f"{layout.HEADS}: the signed head of place {one.place} of {one.site!r} is not"
                    " that of the receipts"
                )
        return canonical([to_data(one) for one in heads])


def _missing(content: Content, hashes: Iterable[str]) -> Iterator[str]:
    """Those whose files are not there: all are told before anything large is copied."""
    for name in hashes:
        with _reading(name):
            stream = content.evidence(name)
            if stream is not None:
                stream.close()
        if stream is None:
            yield name


def _add_evidence(tar: Tar, name: str, opening: Callable[[str], BinaryIO | None]) -> None:
    with _reading(name):
        stream = opening(name)
    if stream is None:
        raise EvidenceAbsentError((name,))
    with contextlib.closing(stream):
        row = tar.add(layout.EVIDENCE + name, _pieces(name, stream))
    if row.sha256 != name:
        raise ContentError(f"{row.name}: its content has the hash {row.sha256}")


def _pieces(name: str, stream: BinaryIO) -> Iterator[bytes]:
    while True:
        with _reading(name):
            piece = stream.read(CHUNK)
        if not piece:
            return
        yield piece


@contextlib.contextmanager
def _reading(name: str) -> Iterator[None]:
    try:
        yield
    except OSError as error:
        raise WritingError(f"{layout.EVIDENCE}{name}: cannot be read: {error}") from error


@contextlib.contextmanager
def _whole_or_nothing(path: Path) -> Iterator[BinaryIO]:
    """A file beside `path` that takes its name if the block ends well, and goes if it does not."""
    try:
        number, name = tempfile.mkstemp(prefix=f".{path.name}.", suffix=".part", dir=path.parent)
    except OSError as error:
        raise WritingError(f"{path}: cannot be written: {error}") from error
    part = Path(name)
    try:
        with os.fdopen(number, "wb") as file:
            yield file
            file.flush()
            os.fsync(file.fileno())
        part.replace(path)
        sync_folder(path.parent)
    except OSError as error:
        raise WritingError(f"{path}: cannot be written: {error}") from error
    finally:
        part.unlink(missing_ok=True)
