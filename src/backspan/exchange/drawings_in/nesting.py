"""Blocks inside blocks: how deep and how many, counted before any of them is taken apart."""

from __future__ import annotations

from collections.abc import Iterable
from typing import TYPE_CHECKING

from backspan.core.errors import quoted
from backspan.exchange.drawings_in.errors import DrawingError, refused
from backspan.exchange.drawings_in.first_look import MOST_ENTITIES
from backspan.exchange.wrong import Wrong

if TYPE_CHECKING:
    from ezdxf.document import Drawing
    from ezdxf.entities.dxfgfx import DXFGraphic

MOST_DEEP = 8
_REFERENCE, _OVERLAY = 4, 8


def refuse_references(document: Drawing) -> None:
    """Raise DrawingError where a block is another drawing's, with each of them."""
    wrong = []
    for one in document.blocks:
        if one.block is not None and one.block.dxf.flags & (_REFERENCE | _OVERLAY):
            where = f"block {quoted(one.name)}"
            found = f"a reference to another file, {quoted(one.block.dxf.get('xref_path', ''))}"
            wrong.append(Wrong(where, found, "a drawing with its references bound in"))
    if wrong:
        raise DrawingError(wrong)


def refuse_deep(document: Drawing, origin: str) -> None:
    """Raise DrawingError where blocks are nested too deep, or make too much when taken apart."""
    _, many = _Nesting(document).of(document.modelspace(), ())
    if many > MOST_ENTITIES:
        found = f"{many:,} entities once its blocks are taken apart"
        raise refused(origin, found, f"at most {MOST_ENTITIES:,}: save the roof's layers alone")


class _Nesting:
    """The depth and the entities of each block, worked out once."""

    def __init__(self, document: Drawing) -> None:
        self._blocks = document.blocks
        self._known: dict[str, tuple[int, int]] = {}

    def of(self, entities: Iterable[DXFGraphic], above: tuple[str, ...]) -> tuple[int, int]:
        """How many levels of blocks these hold, and how many entities in all."""
        deep, many = 0, 0
        for one in entities:
            if one.dxftype() != "INSERT":
                many += 1
                continue
            inside = 0
            if one.dxf.get("name") in self._blocks:
                below, inside = self._block(one.dxf.name, above)
                deep = max(deep, below + 1)
            many += (1 + inside) * _count(one)
        return deep, many

    def _block(self, name: str, above: tuple[str, ...]) -> tuple[int, int]:
        key = name.casefold()
        path = (*above, key)
        if key in above:
            raise refused(f"block {quoted(name)}", "itself inside of it", "blocks without a loop")
        if key not in self._known:
            _refuse_path(path, 0)
            self._known[key] = self.of(self._blocks.get(name), path)
        _refuse_path(path, self._known[key][0])
        return self._known[key]


def _refuse_path(path: tuple[str, ...], below: int) -> None:
    if len(path) + below > MOST_DEEP:
        found = f"more than {MOST_DEEP} blocks, each inside the one before"
        raise refused(f"block {quoted(path[0])}", found, f"at most {MOST_DEEP}")


def _count(insert: DXFGraphic) -> int:
    """How often a block is placed by one entity: in rows and columns, or once."""
    rows, columns = insert.dxf.get("row_count", 1), insert.dxf.get("column_count", 1)
    return max(1, int(rows)) * max(1, int(columns))
