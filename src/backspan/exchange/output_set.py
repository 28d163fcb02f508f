"""A set of results in a folder: written whole, and in force once the index names it.

The folder holds one folder a set, named by its day and a number, and an index whose first line
names the set in force. A set is made in a folder that nothing names. When all of it is written it
gets its name, and the index is replaced last: a run that is stopped at any moment leaves the old
set in force or the new one, never parts of both. What a killed run left goes at the next run: a run
that lives holds a lock beside what it makes.
"""

from __future__ import annotations

import contextlib
import os
import re
import shutil
import sys
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from hashlib import sha256
from pathlib import Path
from types import TracebackType
from typing import BinaryIO, Self

from backspan.exchange.files import FileError, reason_of, write_text

INDEX = "current.txt"
#: The first words of the index; what follows in that line is the name of the set in force.
NAMES = "The set in force: "

_UNFINISHED = re.compile(r"\.unfinished-[0-9a-f]{16}")
_LOCK = ".lock"
_WRITABLE = "a folder that can be written to"


def refuse_unwritable(folder: Path) -> None:
    """Raise FileError where a set can surely not be made in `folder`; nothing is written."""
    there = next(one for one in (folder, *folder.absolute().parents) if one.exists())
    if not there.is_dir():
        raise FileError(folder, found=f"{there} is no folder", expected=_WRITABLE)
    if not os.access(there, os.W_OK | os.X_OK):
        raise FileError(folder, found=f"{there} may not be written to", expected=_WRITABLE)


def set_in_force(folder: Path) -> str | None:
    """The name of the set that the index of `folder` names; None where there is no index."""
    with contextlib.suppress(FileNotFoundError):
        first, *_ = (folder / INDEX).read_text(encoding="utf-8").splitlines() or [""]
        return first.removeprefix(NAMES)
    return None


@dataclass(slots=True)
class OutputSet:
    """One set in the making; leaving it unfinished takes away all that it made.

    Raises FileError where a folder or a file cannot be made as asked.
    """

    folder: Path
    sums: dict[str, str] = field(default_factory=dict)
    """The SHA-256 of each file written, by its name."""
    _made: list[Path] = field(default_factory=list)
    _making: Path | None = None
    _lock: BinaryIO | None = None

    def __enter__(self) -> Self:
        with _told(self.folder, _WRITABLE):
            self._made = _make(self.folder)
            try:
                _clear_leftovers(self.folder)
                self._lock = _locked(self.folder)
                self._making = Path(self._lock.name).with_suffix("")
                self._making.mkdir()
            except BaseException:
                self._give_up()
                raise
        return self

    def __exit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        self._give_up()

    def write(self, stem: str, ending: str, content: bytes) -> str:
        """Write a file of the set; its name, with a number where another has the same.

        Names that differ only in large and small letters are the same on some systems.
        """
        taken = {name.casefold() for name in self.sums}
        name, number = f"{stem}.{ending}", 2
        while name.casefold() in taken:
            name, number = f"{stem}-{number}.{ending}", number + 1
        path = self._place / name
        if path.parent != self._place:
            raise FileError(path, found="a name that leads elsewhere", expected="a file name alone")
        with _told(self.folder / name, "a file that can be written"), path.open("xb") as file:
            file.write(content)
            file.flush()
            os.fsync(file.fileno())
        self.sums[name] = sha256(content).hexdigest()
        return name

    def finish(self, day: str, index: Callable[[str], str]) -> Path:
        """Give the set its name and put it in force; where it is now.

        `index` makes what the index says below its first line, from the set's name.
        """
        making = self._place
        with _told(self.folder, _WRITABLE):
            whole = _named(making, day)
            try:
                write_text(self.folder / INDEX, f"{NAMES}{whole.name}\n{index(whole.name)}")
            except BaseException:
                self._making = whole
                raise
        self._making = None
        self._made = []
        return whole

    @property
    def _place(self) -> Path:
        if self._making is None:
            raise ValueError("the set is not open")
        return self._making

    def _give_up(self) -> None:
        """Take away what was not finished; an error of that hides none that led here."""
        if self._making is not None:
            shutil.rmtree(self._making, ignore_errors=True)
            self._making = None
        if self._lock is not None:
            name = Path(self._lock.name)
            with contextlib.suppress(OSError):
                self._lock.close()
            with contextlib.suppress(OSError):
                name.unlink()
            self._lock = None
        for folder in self._made:
            with contextlib.suppress(OSError):
                folder.rmdir()
        self._made = []


def _make(folder: Path) -> list[Path]:
    """Make the folder; those that were made for it, the innermost first."""
    absent = [one for one in (folder, *folder.parents) if not one.exists()]
    folder.mkdir(parents=True, exist_ok=True)
    return absent


def _named(making: Path, day: str) -> Path:
    """Give a finished folder the first name of its day that is free."""
    number = 1
    while True:
        whole = making.parent / f"{day}-{number}"
        if not whole.exists():
            making.rename(whole)
            return whole
        number += 1


def _locked(folder: Path) -> BinaryIO:
    """A lock of a name of its own, held until it is closed or the process ends."""
    while True:
        path = folder / f".unfinished-{os.urandom(8).hex()}{_LOCK}"
        lock = path.open("xb")
        # Another run may have taken it for a leftover before it was held.
        if _hold(lock) and path.exists() and path.stat().st_ino == os.fstat(lock.fileno()).st_ino:
            return lock
        lock.close()


def _clear_leftovers(folder: Path) -> None:
    """Take away what runs left that are no longer there; what cannot be taken away stays."""
    for path in sorted(folder.iterdir()):
        lock = path.with_name(path.name.removesuffix(_LOCK) + _LOCK)
        if _UNFINISHED.fullmatch(path.name.removesuffix(_LOCK)) and _is_left(lock):
            shutil.rmtree(lock.with_suffix(""), ignore_errors=True)
            with contextlib.suppress(OSError):
                lock.unlink()


def _is_left(path: Path) -> bool:
    """Whether nobody holds the lock; one that is not there nobody holds."""
    try:
        lock = path.open("rb")
    except FileNotFoundError:
        return True
    except OSError:
        return False
    with lock:
        return _hold(lock)


def _hold(lock: BinaryIO) -> bool:
    """Take the lock of an open file, if nobody has it."""
    if sys.platform == "win32":
        import msvcrt

        try:
            msvcrt.locking(lock.fileno(), msvcrt.LK_NBLCK, 1)
        except OSError:
            return False
        return True
    import fcntl

    try:
        fcntl.flock(lock.fileno(), fcntl.LOCK_EX | fcntl.LOCK_NB)
    except OSError:
        return False
    return True


@contextlib.contextmanager
def _told(path: Path, expected: str) -> Iterator[None]:
    """Tell an error of the system as one of ours, with the place and what would do."""
    try:
        yield
    except FileError:
        raise
    except OSError as error:
        raise FileError(path, found=reason_of(error), expected=expected) from error
