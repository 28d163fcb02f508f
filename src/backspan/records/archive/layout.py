"""The form of an archive: a plain tar file of which every byte follows from names and contents.

The container is POSIX ustar, uncompressed, with every field of a header fixed but name, size and
checksum, and two empty blocks at the end. So the same content always gives the same bytes, and a
byte of the container that was changed is found by writing it again.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from backspan.core.ledger.entry import is_hash

#: The format number of archives.
FORMAT = 1

README = "README.txt"
ENTRIES = "entries.jsonl"
RECEIPTS = "receipts.jsonl"
HEADS = "heads.json"
PROJECT = "project.json"
EVIDENCE = "evidence/"
MANIFEST = "manifest.json"
#: How damage names the file as a whole, and the empty blocks after the last member.
ARCHIVE = "archive"
END = "end of archive"

BLOCK = 512
END_BLOCKS = bytes(2 * BLOCK)
#: What eleven octal digits hold: 8 GiB less one byte.
MOST_SIZE = 8**11 - 1
#: Members that are read as a whole; entries and evidence are not.
MOST_WHOLE = 64_000_000

#: The order of members that are always there, and of those that may be.
FIXED = (README, ENTRIES, RECEIPTS, HEADS, PROJECT)
REQUIRED = (README, ENTRIES, RECEIPTS, HEADS, MANIFEST)
_SIZE = slice(124, 135)
_NAME = slice(0, 100)
#: Where the magic word of the format stands in a header.
MAGIC_AT = 257
MAGIC = b"ustar\x0000"


@dataclass(frozen=True, slots=True)
class Member:
    """A member and where it lies: its header at `at`, its content a block further on."""

    name: str
    at: int
    size: int

    @property
    def content(self) -> int:
        """Where its content begins."""
        return self.at + BLOCK

    @property
    def end(self) -> int:
        """Where its content ends and its padding begins."""
        return self.content + self.size

    @property
    def after(self) -> int:
        """Where the next header begins."""
        return self.end + padding(self.size)


def padding(size: int) -> int:
    """How many empty bytes follow a content of that size, up to the next block."""
    return -size % BLOCK


def header(name: str, size: int) -> bytes:
    """The one header of a member of that name and size."""
    fields = (
        name.encode("ascii").ljust(100, b"\0"),
        b"0000644\0000000000\0000000000\0",  # mode, owner, group
        b"%011o\0" % size,
        b"00000000000\0",  # time: none, or the same content would give other bytes
        b" " * 8,  # the checksum is worked out with blanks in its place
        b"0".ljust(101, b"\0"),  # a plain file, linked to nothing
        MAGIC.ljust(72, b"\0"),  # with no name of owner or group
        b"0000000\0000000000\0".ljust(183, b"\0"),
    )
    block = b"".join(fields)
    return block[:148] + b"%06o\0 " % sum(block) + block[156:]


def read_header(block: bytes) -> tuple[str, int] | None:
    """Name and size of the member whose one header this block is; None for any other block."""
    name, size = stated_name(block), stated_size(block)
    if name is None or size is None or header(name, size) != block:
        return None
    return name, size


def stated_name(block: bytes) -> str | None:
    """The name in a header, if it is one of an archive."""
    name = block[_NAME].rstrip(b"\0").decode("ascii", errors="replace")
    return name if rank(name) is not None else None


def stated_size(block: bytes) -> int | None:
    """The size in a header, if it is one."""
    digits = block[_SIZE]
    if len(digits) != _SIZE.stop - _SIZE.start or digits.strip(b"01234567"):
        return None
    return int(digits, 8)


def rank(name: str) -> tuple[int, str] | None:
    """Where a member of that name stands among the others; None if there is no such member."""
    if name in FIXED:
        return FIXED.index(name), ""
    if name == MANIFEST:
        return len(FIXED) + 1, ""
    if name.startswith(EVIDENCE) and is_hash(name.removeprefix(EVIDENCE)):
        return len(FIXED), name
    return None


def laid_out(sizes: list[tuple[str, int]]) -> Iterator[Member]:
    """Members of these names and sizes, one after the other from the start of a file."""
    at = 0
    for name, size in sizes:
        one = Member(name, at, size)
        yield one
        at = one.after
