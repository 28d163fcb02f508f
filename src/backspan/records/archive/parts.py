"""Reads parts of a large file: in pieces, line by line, or as a stream of its own."""

from __future__ import annotations

import hashlib
import io
from collections.abc import Iterator
from typing import BinaryIO

CHUNK = 1 << 20


def hash_of_part(file: BinaryIO, *, at: int, size: int) -> str:
    """The hash of so many bytes of a file from there on, read in pieces."""
    file.seek(at)
    content = hashlib.sha256()
    while size > 0 and (piece := file.read(min(size, CHUNK))):
        content.update(piece)
        size -= len(piece)
    return content.hexdigest()


def first_difference(file: BinaryIO, *, at: int, expected: bytes) -> int | None:
    """Where the bytes from there on differ first; the file's end where they are cut short."""
    file.seek(at)
    found = file.read(len(expected))
    if found == expected:
        return None
    pairs = zip(found, expected, strict=False)
    return at + next((n for n, (one, other) in enumerate(pairs) if one != other), len(found))


def lines(file: BinaryIO, *, at: int, size: int, most: int) -> Iterator[bytes]:
    """The lines of a part of a file, each with its line feed if it has one.

    Of a line of more than `most` bytes only the first `most` and one more are given.
    """
    left = size
    while left > 0:
        file.seek(at)
        line = file.readline(min(left, most + 1))
        if not line:
            return
        at, left = at + len(line), left - len(line)
        yield line
        rest = line
        while not rest.endswith(b"\n") and left > 0 and rest:
            rest = file.readline(min(left, CHUNK))
            at, left = at + len(rest), left - len(rest)


class Part(io.RawIOBase):
    """A part of a file as a stream that owns the file; nothing beyond the part can be read."""

    def __init__(self, file: BinaryIO, *, at: int, size: int) -> None:
        super().__init__()
        self._file, self._left = file, size
        file.seek(at)

    def readable(self) -> bool:
        """It can be read."""
        return True

    def readinto(self, buffer: memoryview) -> int:  # type: ignore[override]
        """Fill the buffer with what is left, as far as it goes."""
        found = self._file.read(min(len(buffer), self._left))
        buffer[: len(found)] = found
        self._left -= len(found)
        return len(found)

    def close(self) -> None:
        """Close the file under it."""
        self._file.close()
        super().close()
