"""Tables on a sheet: the answers of the drops, and the rigging schedule."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from itertools import zip_longest

from backspan.core.findings import Verdict
from backspan.core.words import ENGLISH, Language
from backspan.drawings.canvas import TEXT
from backspan.drawings.lettering import shortened, wrapped
from backspan.drawings.scene import Layer, Line, Shape, Symbol, SymbolName, Text
from backspan.drawings.symbols import answer_layer, answer_sign
from backspan.drawings.things import Facts, Thing

ROW = 5.2
SIGN = 3.4
SIGN_ROOM = SIGN + 0.8
"""What the sign of an answer takes before its word, in millimetres."""

GAP = 1.5
"""Paper between the texts of two columns."""


@dataclass(frozen=True, slots=True)
class Column:
    """A column of a table: its heading and its width in millimetres."""

    heading: str
    width: float
    wraps: bool = False
    """Whether a long text goes on in the next line instead of being cut."""


Cell = str | Verdict | None
"""A text, an answer, or None where something was not reviewed."""


def table(
    columns: Sequence[Column],
    rows: Sequence[Sequence[Cell]],
    *,
    left: float,
    top: float,
    room: float,
    more: str,
    language: Language = ENGLISH,
    things: Sequence[Thing] = (),
) -> tuple[tuple[Shape, ...], float]:
    """A table from `top` down within `room`, and its height.

    Rows that find no room are counted in a last line, with the words of `more`. `things` are what
    the rows say as data, one for each row, or none.
    """
    fit = max(int(room / ROW) - 1, 1)
    broken = [_broken(columns, row) for row in rows]
    shown = _first(broken, fit)
    shapes: list[Shape] = []
    width = sum(column.width for column in columns)
    shapes += _row(columns, [column.heading for column in columns], left, top, language, bold=True)
    shapes.append(Line(Layer.SHEET, (left, top - ROW), (left + width, top - ROW)))
    y = top - ROW
    for lines, thing in zip_longest(shown, things[: len(shown)]):
        if thing is not None:
            shapes.append(Symbol(Layer.SHEET, SymbolName.SCHEDULE_ROW, (left, y), ROW, of=thing))
        for row in lines:
            written = _row(columns, row, left, y, language)
            shapes += written if thing is None else (replace(one, of=thing) for one in written)
            y -= ROW
    if len(shown) < len(rows):
        at = (left, y - ROW + (ROW - TEXT) / 2)
        count = str(len(rows) - len(shown))
        words = language.drawn("more", count=count, where=more)
        words = shortened(words, room=width, height=TEXT)
        shapes.append(Text(Layer.LABEL, at, words, TEXT))
        y -= ROW
    return tuple(shapes), top - y


def row_facts(names: Sequence[str], cells: Sequence[Cell], exact: Mapping[str, str]) -> Facts:
    """What a row says as data: its cells by the names of their columns, and exact values."""
    said = ((name, cell) for name, cell in zip(names, cells, strict=True) if cell)
    return (*((name, str(cell)) for name, cell in said), *exact.items())


def _first(
    rows: Sequence[Sequence[Sequence[Cell]]], fit: int
) -> Sequence[Sequence[Sequence[Cell]]]:
    """As many rows as `fit` lines hold, one of them left for the count of the others."""
    if sum(map(len, rows)) <= fit:
        return rows
    shown, used = 0, 0
    while shown < len(rows) and used + len(rows[shown]) <= fit - 1:
        used += len(rows[shown])
        shown += 1
    return rows[:shown]


def _broken(columns: Sequence[Column], cells: Sequence[Cell]) -> list[Sequence[Cell]]:
    """A row, and the lines that its long texts go on in."""
    texts = [
        wrapped(cell, room=column.width - GAP, height=TEXT)
        if column.wraps and isinstance(cell, str) and not isinstance(cell, Verdict)
        else (cell,)
        for column, cell in zip(columns, cells, strict=True)
    ]
    deep = max((len(lines) for lines in texts), default=1)
    return [[lines[at] if at < len(lines) else "" for lines in texts] for at in range(deep)]


def _row(
    columns: Sequence[Column],
    cells: Sequence[Cell],
    left: float,
    top: float,
    language: Language,
    *,
    bold: bool = False,
) -> list[Shape]:
    shapes: list[Shape] = []
    base = top - ROW + (ROW - TEXT) / 2
    x = left
    for column, cell in zip(columns, cells, strict=True):
        room = column.width - GAP
        if isinstance(cell, Verdict):
            shapes.append(answer_sign(cell, (x + SIGN / 2, top - ROW / 2), size=SIGN))
            at = (x + SIGN_ROOM, base)
            shapes.append(Text(answer_layer(cell), at, language.word(cell), TEXT, bold=True))
        else:
            words = language.drawn("not_reviewed") if cell is None else cell
            text = shortened(words, room=room, height=TEXT, bold=bold)
            shapes.append(Text(Layer.LABEL, (x, base), text, TEXT, bold=bold))
        x += column.width
    return shapes
