"""The outline of a roof from a layer of a drawing: one closed line, its roof on the right hand."""

from __future__ import annotations

import difflib
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise

from backspan.core.errors import quoted
from backspan.core.model.crossing import crossings
from backspan.core.model.site import Edge, Point
from backspan.core.model.walked import edges_round
from backspan.core.numbers import exact_sum, root
from backspan.core.quantities import Length
from backspan.exchange.drawings_in.drawn import DrawnIn, Units
from backspan.exchange.drawings_in.errors import DrawingError, refused
from backspan.exchange.drawings_in.joined import Joined, Run, joined
from backspan.exchange.drawings_in.spots import are_one
from backspan.exchange.wrong import MOST_SHOWN, Wrong

FEWEST_CORNERS, MOST_CORNERS = 3, 1_000
_MOST_NAMED = 12
_ONE_CLOSED = "one closed line round the roof"


@dataclass(frozen=True, slots=True)
class DrawnOutline:
    """An outline and its edges, walked clockwise; `left_out` counts the layer's other lines."""

    outline: tuple[Point, ...]
    edges: tuple[Edge, ...]
    left_out: int


def roof_outline(drawn: DrawnIn, layer: str) -> DrawnOutline:
    """The outline that a layer holds. Raises DrawingError with all that makes it none."""
    where = f"layer {quoted(layer)}"
    lines = [one for one in drawn.lines if one.layer.casefold() == layer.casefold()]
    if not lines:
        raise refused(where, "no line on it", f"{_ONE_CLOSED}; {_layers(drawn, layer)}")
    found = joined(lines)
    candidates = [one for one in found.runs if one.closed]
    if not candidates:
        raise DrawingError(_open(found, drawn.units, where))
    if len(candidates) > 1:
        told = "; ".join(_told(one, drawn.units) for one in candidates[:_MOST_NAMED])
        more = len(candidates) - _MOST_NAMED
        told += f"; and {more:,} more" if more > 0 else ""
        expected = f"{_ONE_CLOSED}: put it on a layer of its own"
        raise refused(where, f"{len(candidates):,} closed lines ({told})", expected)
    corners = candidates[0].points
    wrong = list(_unsound(corners, drawn.units, where))
    if wrong:
        raise DrawingError(wrong)
    outline = corners if _area(corners) < 0.0 else (corners[0], *reversed(corners[1:]))
    return DrawnOutline(outline, edges_round(outline), len(found.runs) - 1)


def _open(found: Joined, units: Units, where: str) -> Iterator[Wrong]:
    """What keeps each run of the layer from closing."""
    for at, many in found.forks[:MOST_SHOWN]:
        met = f"the ends of {many} lines at {units.place(at)}"
        yield Wrong(where, met, "two lines at each corner, none drawn twice")
    for one in found.runs[:MOST_SHOWN]:
        start, end = one.points[0], one.points[-1]
        told = (
            f"a line that does not close: its ends lie {units.length(_apart(start, end))} apart,"
            f" at {units.place(start)} and {units.place(end)}"
        )
        yield Wrong(where, told, f"{_ONE_CLOSED}, its ends within 1 mm")


def _unsound(corners: Sequence[Point], units: Units, where: str) -> Iterator[Wrong]:
    """What is wrong with a closed line as the outline of a roof."""
    if len(corners) < FEWEST_CORNERS:
        expected = f"{FEWEST_CORNERS} at least"
        yield Wrong(where, f"an outline of {len(corners)} corners", expected)
        return
    if len(corners) > MOST_CORNERS:
        expected = f"at most {MOST_CORNERS:,}: draw its curves with fewer points"
        yield Wrong(where, f"an outline of {len(corners):,} corners", expected)
        return
    closed = [*corners, corners[0]]
    short = [
        Wrong(
            where,
            f"edge {number} without a length, at {units.place(start)}",
            "each corner once, 1 mm or more from the next",
        )
        for number, (start, end) in enumerate(pairwise(closed), start=1)
        if are_one(start, end)
    ]
    yield from short
    if short:  # what has no length crosses whatever it lies on
        return
    for one in crossings(closed):
        met = f"edge {one.other} across edge {one.one} at {units.place(one.at)}"
        ends = "; ".join(
            f"edge {number} runs from {units.place(closed[number - 1])}"
            f" to {units.place(closed[number])}"
            for number in (one.one, one.other)
        )
        yield Wrong(where, f"{met} ({ends})", "edges that do not cross")


def _told(run: Run, units: Units) -> str:
    """The size of a closed run and where it lies."""
    across, up = [x for x, _ in run.points], [y for _, y in run.points]
    low = min(across), min(up)
    sides = max(across) - low[0], max(up) - low[1]
    return f"{' by '.join(map(units.length, sides))} at {units.place(low)}"


def _layers(drawn: DrawnIn, layer: str) -> str:
    """The layers that hold lines, the nearest in name first."""
    there = sorted({one.layer for one in drawn.lines})
    close = difflib.get_close_matches(layer, there, n=_MOST_NAMED, cutoff=0.4)
    named = [*close, *(one for one in there if one not in close)][:_MOST_NAMED]
    more = len(there) - len(named)
    return (
        f"layers with lines: {', '.join(map(quoted, named)) or 'none'}"
        f"{f' and {more:,} more' if more else ''}"
    )


def _area(corners: Sequence[Point]) -> float:
    """Twice the area inside, negative where the walk is clockwise."""
    x, y = corners[0]
    return exact_sum(
        (one[0] - x) * (other[1] - y) - (other[0] - x) * (one[1] - y)
        for one, other in pairwise((*corners, corners[0]))
    )


def _apart(one: Point, other: Point) -> Length:
    x, y = other[0] - one[0], other[1] - one[1]
    return root(x * x + y * y)
