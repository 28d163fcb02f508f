"""Files of evidence in one folder, each named by the hash of its content and never changed.

A file is written under a name that nobody asks for, and gets its own name when all of it is on the
disk: a run that is stopped leaves the whole file or none. What is here already is left as it is,
unless it was damaged: then the sound content takes its place. A run that was killed leaves what it
had under such a name; whoever opens the folder to write clears it away, once nobody can be at it.
"""

from __future__ import annotations

import contextlib
import errno
import hashlib
import os
import re
import stat
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import BinaryIO, Self

from backspan.core.errors import quoted
from backspan.core.ledger.entry import is_hash
from backspan.records.errors import (
    EvidenceDamagedError,
    EvidenceError,
    EvidenceFullError,
    EvidenceMissingError,
)
from backspan.records.folders import sync_folder
from backspan.records.moments import seconds_of

_UNFINISHED = ".unfinished-"
_UNFINISHED_NAME = re.compile(rf"{re.escape(_UNFINISHED)}[0-9a-f]{{16}}")
#: Seconds without a write after which nobody is at an unfinished file any more: a day.
ABANDONED = 86_400
_PIECE = 1 << 20
_FULL = frozenset({errno.ENOSPC, errno.EDQUOT, errno.EFBIG})


@dataclass(frozen=True, slots=True)
class EvidenceFolder:
    """The evidence of a site; its folder is made with the first file.

    Every method raises EvidenceError where the folder cannot be read or written.
    """

    folder: Path

    @classmethod
    def opened(cls, folder: Path, *, now: str) -> Self:
        """The evidence in a folder, opened to write: what killed runs left there is cleared away.

        `now` is a time with its offset. A file that was written to within a day before it stays:
        another program may be at it. Raises MomentError for a time that is none.
        """
        one = cls(folder)
        one._clear(seconds_of(now) - ABANDONED)
        return one

    def keep(self, stream: BinaryIO) -> str:
        """Keep what a stream gives; its hash, once it is on the disk.

        Raises EvidenceFullError where there is no room, with nothing of it left behind. What
        reading the stream raises is passed on, and nothing is left either.
        """
        with self._told(self.folder):
            self.folder.mkdir(parents=True, exist_ok=True)
        making = self.folder / f"{_UNFINISHED}{os.urandom(8).hex()}"
        try:
            name = self._copied(stream, making)
            with self._told(self.folder / name):
                if not self._is_sound(name):
                    making.replace(self.folder / name)
                # Also where it was there: who wrote it may have been stopped before this.
                sync_folder(self.folder)
        finally:
            with contextlib.suppress(FileNotFoundError):
                making.unlink()
        return name

    def open(self, name: str) -> BinaryIO:
        """The file of that hash, open for reading; `check` says whether it is sound.

        Raises EvidenceMissingError where it is not here.
        """
        path = self._path(name)
        with self._told(path):
            return path.open("rb")

    def has(self, name: str) -> bool:
        """Whether a file of that hash is here."""
        return is_hash(name) and (self.folder / name).is_file()

    def all(self) -> tuple[str, ...]:
        """The hashes of all files that are here, in order."""
        if not self.folder.exists():
            return ()
        with self._told(self.folder):
            return tuple(sorted(path.name for path in self.folder.iterdir() if is_hash(path.name)))

    def check(self, name: str) -> None:
        """Read a file whole; raises EvidenceDamagedError where its content has another hash."""
        path = self._path(name)
        with self._told(path), path.open("rb") as file:
            found = hashlib.file_digest(file, "sha256").hexdigest()
        if found != name:
            raise EvidenceDamagedError(
                f"{path}: found content with the hash {found[:12]}, expected {name[:12]}"
            )

    def _clear(self, before: float) -> None:
        if not self.folder.exists():
            return
        with self._told(self.folder):
            left = [one for one in self.folder.iterdir() if _UNFINISHED_NAME.fullmatch(one.name)]
        for path in left:
            # Another program may finish it or clear it away between a look and the next.
            with self._told(path), contextlib.suppress(FileNotFoundError):
                found = path.lstat()
                if stat.S_ISREG(found.st_mode) and found.st_mtime < before:
                    path.unlink()

    def _copied(self, stream: BinaryIO, making: Path) -> str:
        total = hashlib.sha256()
        with self._told(making):
            out = making.open("xb", buffering=0)
        with out:
            while piece := stream.read(_PIECE):
                total.update(piece)
                with self._told(making):
                    _write(out.fileno(), piece)
            with self._told(making):
                os.fsync(out.fileno())
        return total.hexdigest()

    def _is_sound(self, name: str) -> bool:
        if not self.has(name):
            return False
        try:
            self.check(name)
        except EvidenceDamagedError:
            return False
        return True

    def _path(self, name: str) -> Path:
        if not is_hash(name):
            raise EvidenceMissingError(f"found {quoted(name)}, expected the hash of a file")
        return self.folder / name

    @contextlib.contextmanager
    def _told(self, path: Path) -> Iterator[None]:
        """Tell an error of the system as one of ours."""
        try:
            yield
        except FileNotFoundError as error:
            raise EvidenceMissingError(f"{path}: found no file, expected evidence") from error
        except OSError as error:
            reason = error.strerror or str(error)
            if error.errno in _FULL:
                raise EvidenceFullError(f"{path}: found {reason}, expected room for it") from error
            raise EvidenceError(
                f"{path}: found {reason}, expected a folder to read and write"
            ) from error


def _write(file: int, piece: bytes) -> None:
    """Write all of a piece: the system may take a part, and say why only when asked again."""
    rest = memoryview(piece)
    while rest:
        rest = rest[os.write(file, rest) :]
