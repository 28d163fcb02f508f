"""A table under its headings: what stands in a row under a name, and all that is wrong there."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from typing import Any, TypeVar

from backspan.core.errors import quoted
from backspan.core.model.dated import DATE, why_no_date
from backspan.core.model.identifiers import near
from backspan.core.quantities import LENGTH, Length, QuantityError, parse
from backspan.exchange.parse import ProjectError, parse_part
from backspan.exchange.parse.shape import quantity
from backspan.exchange.tables.cells import Row, Table, TableError
from backspan.exchange.wrong import Wrong

T = TypeVar("T")
_STEP = re.compile(r"[.\[]")
_ABSENT = re.compile("no [a-z_]+")
_DAY = "a day"


class Headed:
    """A table whose headings are known; `wrong` gathers every problem."""

    def __init__(self, table: Table, known: Sequence[str], days: Sequence[str] = ()) -> None:
        self.table = table
        self.wrong: list[Wrong] = []
        self._days = frozenset(days)
        self.columns: dict[str, int] = {}
        heading, *self.rows = table.rows
        self._heading = heading
        for column, cell in sorted(heading.cells.items()):
            where = table.address(heading.number, column)
            if cell.text not in known:
                expected = near(cell.text, known, what="columns")
                self.wrong.append(Wrong(where, f"the column {quoted(cell.text)}", expected))
            elif cell.text in self.columns:
                found = f"the column {quoted(cell.text)} a second time"
                self.wrong.append(Wrong(where, found, "each column once"))
            else:
                self.columns[cell.text] = column
        if not self.rows:
            found = "no row below the headings"
            self.tell(heading, None, found, "one at least")
        for row in self.rows:
            for column, cell in row.cells.items():
                if column not in heading.cells:
                    where = table.address(row.number, column)
                    found = f"{quoted(cell.text)} under no heading"
                    self.wrong.append(Wrong(where, found, "a heading above each value"))

    def need(self, *names: str) -> None:
        """A problem for each of these columns that is not there."""
        for name in names:
            if name not in self.columns:
                found = f"no column {name}"
                self.tell(self._heading, None, found, f"a column with the heading {name}")

    def tell(self, row: Row, name: str | None, found: str, expected: str) -> None:
        """Add a problem of a row, in the column of that name where there is one."""
        column = None if name is None else self.columns.get(name)
        head = "" if name is None or column is None else f" ({name})"
        where = self.table.address(row.number, column) + head
        self.wrong.append(Wrong(where, found, expected))

    def refuse(self) -> None:
        """Raise TableError where anything is wrong."""
        if self.wrong:
            raise TableError(dict.fromkeys(self.wrong))

    def plain(self, row: Row, name: str) -> str:
        """What stands there, whatever it is: blank where nothing does."""
        cell = row.cells.get(self.columns.get(name, 0))
        return "" if cell is None else cell.text

    def text(self, row: Row, name: str, *, needed: str = "") -> str:
        """What stands there; blank where nothing does, which is a problem where it is `needed`."""
        cell = row.cells.get(self.columns.get(name, 0))
        if cell is None:
            if needed and name in self.columns:
                self.tell(row, name, "an empty cell", needed)
            return ""
        if cell.odd and not (cell.odd == _DAY and name in self._days):
            self.tell(row, name, f"{cell.odd}, {quoted(cell.text)}", "its text: make the cell text")
            return ""
        return cell.text

    def length(self, row: Row, name: str) -> Length | None:
        """The length there; None, and a problem, where none can be read."""
        text = self.text(row, name, needed=quantity(LENGTH))
        try:
            return parse(text, LENGTH) if text else None
        except QuantityError as error:
            self.tell(row, name, f"{quoted(text)}: {error.reason}", quantity(LENGTH))
            return None

    def day(self, row: Row, name: str, *, latest: str) -> str:
        """The day there, none after `latest`."""
        text = self.text(row, name)
        why = why_no_date(text, with_time=False) if text else None
        if why is not None:
            self.tell(row, name, f"{quoted(text)}, {why}", DATE)
        elif text > latest:
            self.tell(row, name, text, f"a day that is not after {latest}")
        else:
            return text
        return ""

    def names(self, there: Mapping[str, str]) -> None:
        """A problem for each `id` that stands twice, or that the site has: `there` says where."""
        seen: dict[str, int] = {}
        for row in self.rows:
            name = self.plain(row, "id")
            if name and name in seen:
                found = f"{quoted(name)} a second time"
                first = self.table.address(seen[name], self.columns["id"])
                self.tell(row, "id", found, f"an id of its own; the first stands in {first}")
            elif name in there:
                self.tell(row, "id", f"{quoted(name)}, which is {there[name]}", "an id of its own")
            seen.setdefault(name, row.number)

    def record(self, row: Row, cls: type[T], data: Mapping[str, Any]) -> T | None:
        """The record that a row says; None, and its problems, where it is not sound."""
        try:
            return parse_part({name: one for name, one in data.items() if one}, cls, "table")
        except ProjectError as error:
            for one in error.problems:
                # A blank that is needed was told when it was read, with its own cell.
                if _ABSENT.fullmatch(one.found) is None:
                    self.tell(row, _STEP.split(one.path)[0], one.found, one.expected)
            return None
