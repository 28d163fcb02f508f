"""Anchors of a drawing as rows of a table: judged and stated as those of a table are."""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from decimal import Decimal

from backspan.core.quantities import Length
from backspan.exchange.drawings_in.anchors import DrawnAnchor
from backspan.exchange.tables.cells import Cell, Row, Table, sound

_HEADINGS = ("id", "x", "y", "kind", "uses", "rating", "inspected", "certified", "fixed_by")
_ALL = (*_HEADINGS, "standing")
_FROM_ATTRIBUTES = frozenset(_ALL) - {"id", "x", "y"}


@dataclass(frozen=True, slots=True)
class DrawnTable(Table):
    """A table whose rows stand in a drawing; `left_out` counts the attributes that it has not."""

    places: Mapping[int, str] = field(default_factory=dict)
    left_out: Mapping[str, int] = field(default_factory=dict)

    def address(self, row: int, column: int | None = None) -> str:
        """Where the block of a row is placed; `column` is told by its name."""
        del column
        return self.places.get(row, self.origin)


def anchor_table(anchors: Sequence[DrawnAnchor], origin: str, *, block: str) -> DrawnTable:
    """Anchors under the headings of a table; what has no KIND is called as its block is.

    Raises TableError where a text of the drawing is none that a table holds.
    """
    rows = [Row(1, {at: Cell(name) for at, name in enumerate(_ALL, start=1)})]
    places: dict[int, str] = {}
    left_out: Counter[str] = Counter()
    for number, one in enumerate(anchors, start=2):
        said = {"id": one.id, "x": _metres(one.at[0]), "y": _metres(one.at[1]), "kind": block}
        for tag, text in one.attributes.items():
            name = tag.casefold().replace("-", "_")
            if name not in _FROM_ATTRIBUTES:
                left_out[tag] += 1
            elif text:
                said[name] = text
        cells = {at: Cell(said[name]) for at, name in enumerate(_ALL, start=1) if name in said}
        rows.append(Row(number, cells))
        places[number] = one.where
    found = DrawnTable(origin, None, tuple(rows), places, left_out)
    sound(found)
    return found


def _metres(value: Length) -> str:
    """A length that is read as the very same number."""
    return f"{Decimal(repr(value)):f} m"
