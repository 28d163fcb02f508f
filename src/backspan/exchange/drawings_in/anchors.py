"""Anchors from a drawing: each a block placed where the anchor stands, its mark an attribute."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from types import MappingProxyType

from backspan.core.errors import quoted
from backspan.core.model.site import Point
from backspan.exchange.drawings_in.drawn import BlockPlaced, DrawnIn
from backspan.exchange.drawings_in.errors import DrawingError, refused
from backspan.exchange.drawings_in.spots import Spots
from backspan.exchange.wrong import Wrong

MOST_ANCHORS = 5_000
_MOST_NAMED = 12


@dataclass(frozen=True, slots=True)
class DrawnAnchor:
    """An anchor as it was drawn: its mark, its place, and the block's other attributes."""

    id: str
    at: Point
    attributes: Mapping[str, str]
    where: str


def anchors_of(drawn: DrawnIn, block: str, id_attribute: str) -> tuple[DrawnAnchor, ...]:
    """The anchors that a block marks, in the order of the file.

    Names of blocks and tags are the same in capitals. Raises DrawingError with every problem.
    """
    there = [one for one in drawn.blocks if one.block.casefold() == block.casefold()]
    where = f"block {quoted(block)}"
    if not there:
        raise refused(where, "none placed", f"the block of an anchor; {_blocks(drawn)}")
    if len(there) > MOST_ANCHORS:
        raise refused(where, f"{len(there):,} placed", f"at most {MOST_ANCHORS:,}")
    rows = [_anchor(one, drawn, id_attribute) for one in there]
    wrong = list(_wrong(rows, there, id_attribute))
    if wrong:
        raise DrawingError(wrong)
    return tuple(rows)


def _anchor(one: BlockPlaced, drawn: DrawnIn, id_attribute: str) -> DrawnAnchor:
    tag = id_attribute.casefold()
    mark = next((text for name, text in one.attributes.items() if name.casefold() == tag), "")
    rest = {name: text.strip() for name, text in one.attributes.items() if name.casefold() != tag}
    where = f"block {one.block} at {drawn.units.place(one.at)}"
    return DrawnAnchor(mark.strip(), one.at, MappingProxyType(rest), where)


def _wrong(
    rows: list[DrawnAnchor], placed: list[BlockPlaced], id_attribute: str
) -> Iterator[Wrong]:
    """Marks that are missing, blank or there twice, and spots that are taken."""
    seen: dict[str, DrawnAnchor] = {}
    spots = Spots()
    standing: dict[int, DrawnAnchor] = {}
    tag = id_attribute.casefold()
    for row, block in zip(rows, placed, strict=True):
        tags = [name for name in block.attributes if name.casefold() == tag]
        if not tags:
            others = ", ".join(block.attributes) or "none at all"
            found = f"no attribute {quoted(id_attribute)} (it has: {others})"
            yield Wrong(row.where, found, "the anchor's mark in it, such as A01")
        elif not row.id:
            found = f"a blank in its attribute {tags[0]}"
            yield Wrong(row.where, found, "the anchor's mark, such as A01")
        elif row.id in seen:
            expected = f"a mark of its own; the first is {seen[row.id].where}"
            yield Wrong(row.where, f"{quoted(row.id)} a second time", expected)
        seen.setdefault(row.id, row)
        number, was_there = spots.number(row.at)
        if was_there:
            first = standing[number]
            found = f"the spot of anchor {first.id or 'without a mark'}, {first.where}"
            yield Wrong(row.where, found, "a spot of its own")
        standing.setdefault(number, row)


def _blocks(drawn: DrawnIn) -> str:
    """The blocks that were placed, the most frequent first."""
    counted = Counter(one.block for one in drawn.blocks)
    named = [f"{name} ({many:,})" for name, many in counted.most_common(_MOST_NAMED)]
    more = len(counted) - len(named)
    return f"blocks placed: {', '.join(named) or 'none'}{f' and {more:,} more' if more else ''}"
