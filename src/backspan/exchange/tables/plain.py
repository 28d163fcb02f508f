"""A table in plain text, its values separated by commas, semicolons or tabs.

The row of headings alone tells which of the three it is: no heading of ours holds one of them.
"""

from __future__ import annotations

import csv
import io

from backspan.core.errors import quoted
from backspan.exchange.tables.cells import MOST_COLUMNS, MOST_ROWS, Cell, Row, Table, refused

_SEPARATORS = {",": "commas", ";": "semicolons", "\t": "tabs"}
_ENCODED = "text in UTF-8: save it as such"


def read_plain(content: bytes, origin: str) -> Table:
    """The table in a text file. Raises TableError where it is none, with its line."""
    try:
        text = content.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        line = content[: error.start].count(b"\n") + 1
        found = f"the byte 0x{content[error.start]:02X}, which is not UTF-8"
        raise refused(f"line {line}", found, _ENCODED) from error
    if "\0" in text:
        line = text[: text.index("\0")].count("\n") + 1
        raise refused(f"line {line}", "the character U+0000, which no text holds", _ENCODED)
    separator = _separator(text)
    reader = csv.reader(io.StringIO(text, newline=""), delimiter=separator, strict=True)
    rows: list[Row] = []
    begins = 1
    try:
        for values in reader:
            cells = {at: Cell(one.strip()) for at, one in enumerate(values, start=1) if one.strip()}
            if cells:
                rows.append(Row(begins, cells))
            if len(rows) > MOST_ROWS + 1:
                found = f"more than {MOST_ROWS:,} rows below the headings"
                raise refused(f"line {begins}", found, f"at most {MOST_ROWS:,}")
            begins = reader.line_num + 1
    except csv.Error as error:
        raise refused(
            f"line {begins}", f"a row that cannot be read ({error})", "values, quotes in pairs"
        ) from error
    return Table(origin, None, tuple(rows))


def _separator(text: str) -> str:
    """What stands between the headings."""
    first = next((line for line in text.splitlines() if line.strip()), "")
    there = {one: name for one, name in _SEPARATORS.items() if one in first}
    if len(there) > 1:
        found = f"{' and '.join(there.values())} in the row of headings {quoted(first)}"
        raise refused("line 1", found, "one of commas, semicolons or tabs between the headings")
    if first.count(",") > 4 * MOST_COLUMNS:
        raise refused("line 1", f"{first.count(',')} headings", f"at most {MOST_COLUMNS}")
    return next(iter(there), ",")
