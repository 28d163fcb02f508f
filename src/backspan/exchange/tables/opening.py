"""Which kind of table a file is, told by its name and held against its first bytes."""

from __future__ import annotations

from pathlib import PurePath

from backspan.core.errors import quoted
from backspan.exchange.tables.cells import MOST_BYTES, Table, refused, sound
from backspan.exchange.tables.plain import read_plain
from backspan.exchange.tables.workbook import read_workbook

PLAIN, WORKBOOK = ".csv", ".xlsx"
_ZIP, _OLD = b"PK", b"\xd0\xcf\x11\xe0"
_EXPECTED = "a table as .csv or .xlsx"


def is_table(name: str) -> bool:
    """Whether a file's name is that of a table."""
    return PurePath(name).suffix.lower() in {PLAIN, WORKBOOK}


def read_table(content: bytes, name: str, what: str) -> Table:
    """The table in a file's content, of a workbook the sheet called `what`, or its only one.

    Raises TableError with all that is wrong and where.
    """
    origin, ending = PurePath(name).name[:80] or "file", PurePath(name).suffix.lower()
    if ending not in {PLAIN, WORKBOOK}:
        raise refused(origin, f"a file that ends in {quoted(ending)}", _EXPECTED)
    if len(content) > MOST_BYTES:
        raise refused(origin, f"more than {MOST_BYTES:,} bytes", f"at most {MOST_BYTES:,}")
    if content.startswith(_OLD):
        found = "a workbook with a password, or one of before 2007"
        raise refused(origin, found, f"{_EXPECTED}, without a password")
    if content.startswith(_ZIP) != (ending == WORKBOOK):
        kind = "an archive" if content.startswith(_ZIP) else "no archive"
        raise refused(origin, f"{kind}, though its name ends in {ending}", _EXPECTED)
    if ending == WORKBOOK:
        return sound(read_workbook(content, origin, what))
    return sound(read_plain(content, origin))
