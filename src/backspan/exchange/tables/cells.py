"""A table as text: rows of cells, each with the address under which a person finds it again."""

from __future__ import annotations

import json
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from backspan.core.errors import quoted
from backspan.exchange.parse.text import stranger_in
from backspan.exchange.wrong import Wrong, WrongError

#: A site has hundreds of anchors; what is beyond these is another thing than a table of them.
MOST_BYTES, MOST_ROWS, MOST_COLUMNS = 5_000_000, 5_000, 60
#: Characters of all cells together.
MOST_TEXT = 600_000
#: Bytes that a form carries: with the rest of it less than a request may hold.
_MOST_CARRIED = 900_000
_LETTERS = 26


class TableError(WrongError):
    """A table that cannot be taken; `problems` holds every cell that is wrong, by its address."""


@dataclass(frozen=True, slots=True)
class Cell:
    """What stands in a cell; `odd` is what a spreadsheet made of it that no text says."""

    text: str
    odd: str = ""


@dataclass(frozen=True, slots=True)
class Row:
    """One row by its number, its cells by the number of their column; blank ones are not there."""

    number: int
    cells: Mapping[int, Cell]


@dataclass(frozen=True, slots=True)
class Table:
    """The rows of a file that are not blank, the heading first; `sheet` is None for plain text."""

    origin: str
    sheet: str | None
    rows: tuple[Row, ...]

    def address(self, row: int, column: int | None = None) -> str:
        """Where a cell, or a row, is found again."""
        if self.sheet is None:
            return f"line {row}" + ("" if column is None else f", column {column}")
        return f"{self.sheet}!" + (f"row {row}" if column is None else f"{letters(column)}{row}")


def letters(column: int) -> str:
    """The letters of a column, counted from 1: A, Z, AA."""
    found = ""
    while column > 0:
        column, rest = divmod(column - 1, _LETTERS)
        found = chr(ord("A") + rest) + found
    return found


def refused(where: str, found: str, expected: str) -> TableError:
    """The error of one thing that makes all of a file no table."""
    return TableError([Wrong(where, found, expected)])


def sound(table: Table) -> Table:
    """The table. Raises TableError where it is too large, empty, or a cell holds no plain text."""
    if not table.rows:
        raise refused(table.origin, "nothing in it", "a row of headings, and rows below it")
    if len(table.rows) - 1 > MOST_ROWS:
        found = f"{len(table.rows) - 1:,} rows below the headings"
        raise refused(table.origin, found, f"at most {MOST_ROWS:,}")
    size = sum(len(cell.text) for row in table.rows for cell in row.cells.values())
    if size > MOST_TEXT:
        found = f"{size:,} characters in its cells"
        raise refused(table.origin, found, f"at most {MOST_TEXT:,}: take it in in parts")
    wrong = []
    for row in table.rows:
        for column, cell in row.cells.items():
            where = table.address(row.number, column)
            if column > MOST_COLUMNS:
                found = f"{quoted(cell.text)} in column {column}"
                wrong.append(Wrong(where, found, f"at most {MOST_COLUMNS} columns"))
            stranger = stranger_in(cell.text) or ("a line break" if "\n" in cell.text else None)
            if stranger is not None:
                found = f"{quoted(cell.text)} with {stranger} in it"
                wrong.append(Wrong(where, found, "one line that a person types and reads"))
    if wrong:
        raise TableError(wrong)
    return table


def carried(table: Table) -> str:
    """The table as a text that a form carries from where it is shown to where it is stated.

    Raises TableError for one that no form carries.
    """
    rows = [
        [
            row.number,
            [[at, one.text, *filter(None, [one.odd])] for at, one in row.cells.items()],
        ]
        for row in table.rows
    ]
    text = json.dumps([table.origin, table.sheet, rows], ensure_ascii=False, separators=(",", ":"))
    size = len(text.encode("utf-8"))
    if size > _MOST_CARRIED:
        found = f"{size:,} bytes of rows"
        raise refused(table.origin, found, f"at most {_MOST_CARRIED:,} on a page: send it in parts")
    return text


def brought(text: str) -> Table:
    """The table that `carried` wrote. Raises TableError for anything else."""
    try:
        origin, sheet, rows = json.loads(text)
        found = Table(
            _text(origin),
            None if sheet is None else _text(sheet),
            tuple(
                Row(
                    _counted(number),
                    {_counted(column): Cell(*map(_text, said)) for column, *said in cells},
                )
                for number, cells in rows
            ),
        )
    except (ValueError, TypeError, OverflowError, RecursionError) as error:
        expected = "the rows that the page showed; choose the file again"
        raise refused("the table", "rows that no page of ours wrote", expected) from error
    return sound(found)


def _counted(value: Any) -> int:
    """A number of a row or column, counted from 1."""
    if not isinstance(value, int) or value < 1:
        raise ValueError(value)
    return value


def _text(value: Any) -> str:
    if not isinstance(value, str):
        raise TypeError(value)
    return value
