"""A DXF file in: judged by its bytes, loaded apart, judged by its size."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from pathlib import PurePath
from types import MappingProxyType
from typing import Any

from backspan.core.model.site import Point
from backspan.exchange.drawings_in.apart import SECONDS, loaded_apart
from backspan.exchange.drawings_in.drawn import (
    BlockPlaced,
    DrawnIn,
    DrawnLine,
    DrawnText,
    Noted,
    Size,
    Units,
)
from backspan.exchange.drawings_in.errors import refused
from backspan.exchange.drawings_in.first_look import look
from backspan.exchange.drawings_in.units import (
    LARGEST,
    SMALLEST,
    DrawingUnit,
    disagreement,
    header_number,
    is_plausible,
    plausible_units,
    said_of,
    unit_of,
)

_THE_FILE, _YOU = "the file says", "you said"


def is_drawing(name: str) -> bool:
    """Whether a file's name is that of a drawing that can be read."""
    return PurePath(name).suffix.lower() == ".dxf"


def read_drawing(
    content: bytes, name: str, *, units: DrawingUnit | None = None, seconds: int = SECONDS
) -> DrawnIn:
    """The drawing in a DXF file's content, in metres; `units` is what the caller says of it.

    Without them the file's own count. Raises DrawingError with all that is wrong, and where.
    """
    origin = PurePath(name).name[:80] or "drawing"
    look(content, origin)
    code = header_number(content, "INSUNITS")
    found, noted = _units(code, units, origin)
    measured = disagreement(found.unit, header_number(content, "MEASUREMENT"))
    noted.extend(filter(None, [measured]))
    told = loaded_apart(content, origin, float(found.unit.factor), seconds=seconds)
    lines = tuple(
        DrawnLine(layer, _points(points), closed) for layer, points, closed in told["lines"]
    )
    blocks = tuple(
        BlockPlaced(block, layer, _point(at), MappingProxyType(said))
        for block, layer, at, said in told["blocks"]
    )
    texts = tuple(DrawnText(layer, text, _point(at)) for layer, text, at in told["texts"])
    audit = (*(Noted(one, 1) for one in noted), *(Noted(*one) for one in told["noted"]))
    size = _size(lines, blocks, texts, audit, origin)
    _refuse_implausible(size, found, origin)
    return DrawnIn(origin, found, lines, blocks, texts, size, audit)


def _units(code: int | None, said: DrawingUnit | None, origin: str) -> tuple[Units, list[str]]:
    """The units that count, and what is to be told of them."""
    in_file = unit_of(code)
    if said is None:
        if in_file is None:
            known = ", ".join(DrawingUnit)
            expected = f"the units it was drawn in: set them there, or say one of {known}"
            raise refused(origin, said_of(code), expected)
        return Units(in_file, _THE_FILE), []
    if in_file is said:
        return Units(said, _THE_FILE), []
    return Units(said, _YOU), [f"the file says {said_of(code)}; taken as {said}, as you said"]


def _size(
    lines: Iterable[DrawnLine],
    blocks: Iterable[BlockPlaced],
    texts: Iterable[DrawnText],
    audit: Iterable[Noted],
    origin: str,
) -> Size:
    """From the lowest corner to the highest. Raises DrawingError where nothing was drawn."""
    spots = list(_spots(lines, blocks, texts))
    if not spots:
        left = "; ".join(f"{one.many:,} {one.what}" for one in audit)
        found = "nothing drawn in model space" + (f" ({left})" if left else "")
        raise refused(origin, found, "lines or blocks in model space")
    across, up = [x for x, _ in spots], [y for _, y in spots]
    return Size((min(across), min(up)), (max(across), max(up)))


def _spots(
    lines: Iterable[DrawnLine], blocks: Iterable[BlockPlaced], texts: Iterable[DrawnText]
) -> Iterator[Point]:
    for line in lines:
        yield from line.points
    yield from (one.at for one in blocks)
    yield from (one.at for one in texts)


def _refuse_implausible(size: Size, units: Units, origin: str) -> None:
    if is_plausible(size.overall):
        return
    better = list(plausible_units(size.overall, units.unit))
    would = f"in {' or '.join(better)} it would be a roof's" if better else "in no unit a roof's"
    raise refused(
        origin,
        f"an overall size of {size.told} with {units.unit} as its units ({units.said} so)",
        f"{SMALLEST:,.0f} m to {LARGEST:,.0f} m overall: {would}; look for things far away from"
        " the roof, or say the units it was drawn in",
    )


def _points(data: Any) -> tuple[Point, ...]:
    return tuple(_point(one) for one in data)


def _point(data: Any) -> Point:
    x, y = data
    return x, y
