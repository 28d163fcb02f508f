"""A table in a workbook: a zip of XML, looked through before the library that reads it opens it.

Sizes, counts and kinds are told from the archive itself, so that a small file that stands for a
huge one is refused while it is still small. What a cell shows is what is read of it: a formula
counts by the value that was stored with it.
"""

from __future__ import annotations

import datetime
import io
import warnings
import zipfile
import zlib
from typing import Any
from xml.parsers import expat

from backspan.core.errors import quoted
from backspan.exchange.tables.cells import (
    MOST_COLUMNS,
    MOST_ROWS,
    Cell,
    Row,
    Table,
    TableError,
    refused,
)
from backspan.exchange.wrong import Wrong

_WORKBOOK = "a workbook (.xlsx) as a spreadsheet saves it, without a password and without macros"
_DAMAGED = "a whole workbook (.xlsx): save it again"
#: Of an archive: members, bytes that all stand for, elements of all of its XML.
_MOST_MEMBERS, _MOST_UNPACKED, _MOST_ELEMENTS = 500, 60_000_000, 2_000_000
_MOST_CELLS = (MOST_ROWS + 1) * MOST_COLUMNS
_PIECE = 65_536
_FORMULA = "f"


class _TooMuchError(Exception):
    """An XML that goes beyond a limit, or tries what none of ours needs."""


def read_workbook(content: bytes, origin: str, what: str) -> Table:
    """The table on the sheet called `what`, or on the only sheet. Raises TableError."""
    _look_through(content, origin)
    values = _opened(content, origin, values=True)
    formulas = _opened(content, origin, values=False)
    sheet = _sheet(values, origin, what)
    written = formulas[sheet.title]
    wrong: list[Wrong] = []
    table = Table(origin, sheet.title, ())
    for merged in sheet.merged_cells.ranges:
        where = f"{sheet.title}!{merged.coord}"
        wrong.append(Wrong(where, "cells that are merged", "each cell with its own value"))
    rows: dict[int, dict[int, Cell]] = {}
    # Not by rows: a sheet may claim a million of them and hold one cell.
    for (row, column), cell in sorted(written._cells.items()):  # noqa: SLF001 - the cells there are
        if cell.value is None:
            continue
        found = sheet.cell(row, column)
        try:
            one = _cell(cell, found)
        except TableError as error:
            where = table.address(row, column)
            wrong += [Wrong(where, two.found, two.expected) for two in error.problems]
        else:
            if one.text:
                rows.setdefault(row, {})[column] = one
    if wrong:
        raise TableError(wrong)
    return Table(origin, sheet.title, tuple(Row(number, cells) for number, cells in rows.items()))


def _look_through(content: bytes, origin: str) -> None:
    """Raise TableError for an archive that is damaged, too large, encrypted, or carries macros."""
    try:
        with zipfile.ZipFile(io.BytesIO(content)) as archive:
            members = archive.infolist()
            _judge_members(members, origin)
            left = [_MOST_ELEMENTS, _MOST_CELLS]
            for one in members:
                if one.filename.lower().endswith((".xml", ".rels", ".vml")):
                    with archive.open(one) as stream:
                        _count(stream, left)
                else:
                    archive.read(one)
    except _TooMuchError as error:
        expected = f"at most {MOST_ROWS:,} rows of {MOST_COLUMNS} cells, of plain XML"
        raise refused(origin, str(error), expected) from error
    except (
        zipfile.BadZipFile,
        zlib.error,
        expat.ExpatError,
        NotImplementedError,
        RuntimeError,
        EOFError,
        OSError,
        ValueError,
    ) as error:
        if isinstance(error, TableError):
            raise
        raise refused(origin, "a workbook that is damaged", _DAMAGED) from error


def _judge_members(members: list[zipfile.ZipInfo], origin: str) -> None:
    names = [one.filename.lower() for one in members]
    size = sum(one.file_size for one in members)
    found = ""
    if any(one.flag_bits & 1 for one in members):
        found = "a workbook with a password"
    elif len(names) > _MOST_MEMBERS or len(set(names)) < len(names):
        found = f"an archive of {len(names):,} parts, or of two with one name"
    elif size > _MOST_UNPACKED:
        found = f"a workbook that unpacks to {size:,} bytes, more than {_MOST_UNPACKED:,}"
    elif any("vbaproject" in one or "macrosheets/" in one for one in names):
        found = "a workbook with macros"
    elif any("externallinks/" in one for one in names):
        found = "a workbook with links to other files"
    elif "[content_types].xml" not in names:
        found = "an archive that is no workbook"
    if found:
        raise refused(origin, found, _WORKBOOK)


def _count(stream: Any, left: list[int]) -> None:
    """Read XML, keep none of it. Raises _TooMuchError beyond what is `left` of elements, cells."""
    parser = expat.ParserCreate()

    def begins(name: str, _attributes: dict[str, str]) -> None:
        left[0] -= 1
        left[1] -= name.rpartition(":")[2] == "c"
        if min(left) < 0:
            raise _TooMuchError("a workbook with more cells than a table has")

    def declares(*_about: Any) -> None:
        raise _TooMuchError("a workbook that declares a kind of document of its own")

    parser.StartElementHandler = begins
    parser.StartDoctypeDeclHandler = declares
    while piece := stream.read(_PIECE):
        parser.Parse(piece, False)  # noqa: FBT003 - the parser's own form
    parser.Parse(b"", True)  # noqa: FBT003 - as above


def _opened(content: bytes, origin: str, *, values: bool) -> Any:
    from openpyxl import load_workbook

    try:
        with warnings.catch_warnings():
            warnings.simplefilter("ignore")
            return load_workbook(io.BytesIO(content), data_only=values, keep_links=False)
    except Exception as error:  # a damaged file makes the library raise anything
        raise refused(origin, "a workbook that is damaged", _DAMAGED) from error


def _sheet(book: Any, origin: str, what: str) -> Any:
    """The sheet of that name; else the only one."""
    sheets = list(book.worksheets)
    named = [one for one in sheets if one.title.strip().casefold() == what]
    if len(named) == 1:
        return named[0]
    if len(sheets) == 1:
        return sheets[0]
    names = ", ".join(quoted(one.title) for one in sheets) or "none"
    raise refused(origin, f"the sheets {names}", f"one sheet, or one that is called {what}")


def _cell(written: Any, found: Any) -> Cell:
    """What a cell shows. Raises TableError, without the place, where that cannot be told."""
    value = found.value
    if written.data_type == _FORMULA and value is None:
        expected = "its value: open the workbook in a spreadsheet and save it, or type the value"
        raise refused("", "a formula that was never worked out", expected)
    if found.data_type == "e":
        raise refused("", f"the error {quoted(value)}", "a value")
    if isinstance(value, datetime.datetime) and value.time() == datetime.time():
        return Cell(value.date().isoformat(), odd="a day")
    if isinstance(value, datetime.datetime | datetime.date | datetime.time | datetime.timedelta):
        return Cell(str(value), odd="a time")
    if isinstance(value, bool):
        return Cell(str(value).upper(), odd="a yes or no")
    if isinstance(value, int | float):
        shown = found.number_format
        plain = shown in {"General", "@", "0"}
        return Cell(repr(value), odd="" if plain else f"a number that is shown as {shown}")
    return Cell(str(value).strip())
