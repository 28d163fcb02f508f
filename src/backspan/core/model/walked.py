"""A roof from a walk along its edges: lengths and turns in, outline and edges out.

The walk keeps the roof on the right hand, so each edge runs from its left end to its right end as
seen by who stands on the roof and looks out over it. The plan is drawn with the first edge facing
the way that was said, up the sheet being north, and with no corner left of 0 or below 0.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace
from enum import StrEnum
from itertools import pairwise

from backspan.core.angles import HALF_TURN, RIGHT_ANGLE, cosine, direction, sine
from backspan.core.errors import BackspanError, quoted
from backspan.core.model.crossing import crossings
from backspan.core.model.site import Edge, Point
from backspan.core.numbers import root, total
from backspan.core.quantities import (
    ANGLE,
    LENGTH,
    Angle,
    Length,
    QuantityError,
    Style,
    display,
    parse,
)

_TURN = re.compile(r"(right|left)\s*(.*)", re.IGNORECASE)
_BETWEEN = re.compile(r"[,;\n]")
_STEPS = (
    "lengths and turns in turns, such as 60 ft, right 90, 30 ft, right 90, 60 ft, right 90, 30 ft"
)
_FEWEST = 3
#: A walk round a roof has turned once round; what is off by less is the doubt of its turns.
_ROUND: Angle = 2 * HALF_TURN
_NOT_ROUND: Angle = RIGHT_ANGLE
#: Two corners nearer than this are one.
_SAME_PLACE: Length = 0.001
#: How far an edge may look off north, east, south or west and still be called so.
_CALLED_SO: Angle = RIGHT_ANGLE / 4


class WalkError(BackspanError, ValueError):
    """A walk that makes no roof; `problems` holds all that is wrong with it."""

    def __init__(self, problems: Sequence[str]) -> None:
        self.problems = tuple(problems)
        super().__init__("; ".join(problems))


class Facing(StrEnum):
    """The way an edge looks, out over its facade."""

    SOUTH = "south"
    WEST = "west"
    NORTH = "north"
    EAST = "east"


_OUT: dict[Facing, Point] = {
    Facing.SOUTH: (0.0, -1.0),
    Facing.WEST: (-1.0, 0.0),
    Facing.NORTH: (0.0, 1.0),
    Facing.EAST: (1.0, 0.0),
}


@dataclass(frozen=True, slots=True)
class Walk:
    """The lengths of all edges, and the turn to the right after each but the last."""

    lengths: tuple[Length, ...]
    turns: tuple[Angle, ...]


@dataclass(frozen=True, slots=True)
class Walked:
    """The roof of a walk; `gap` is how far its end lay from its start before they were joined."""

    outline: tuple[Point, ...]
    edges: tuple[Edge, ...]
    gap: Length


def read_walk(text: str) -> Walk:
    """Read `60 ft, right 90, 30 ft, ...`; a turn is in degrees, and 90 where it says no more.

    Raises WalkError with every step that cannot be read.
    """
    lengths: list[Length] = []
    turns: list[Angle] = []
    wrong: list[str] = []
    said = [one.strip() for one in _BETWEEN.split(text) if one.strip()]
    for number, step in enumerate(said, start=1):
        turn = _TURN.fullmatch(step)
        if (turn is not None) != (number % 2 == 0):
            wanted = "a turn, such as right 90" if number % 2 == 0 else "a length, such as 60 ft"
            wrong.append(f"step {number}: found {quoted(step)}, expected {wanted}")
            break
        try:
            if turn is None:
                lengths.append(parse(step, LENGTH))
            else:
                turns.append(_turn(turn[1].lower(), turn[2]))
        except QuantityError as error:
            wrong.append(f"step {number}: {error}")
    if said and not wrong and len(said) % 2 == 0:
        wrong.append(f"found a turn at the end, {quoted(said[-1])}, expected a length there")
    if not said:
        wrong.append(f"found nothing, expected {_STEPS}")
    if wrong:
        raise WalkError(wrong)
    return Walk(tuple(lengths), tuple(turns))


def roof_of(walk: Walk, *, first: Facing, most_gap: Length, style: Style = Style.US) -> Walked:
    """The outline and edges of a walk whose first edge faces `first`.

    Edges are called S, W, N, E where each looks another of these ways, else E1, E2 and so on. An
    end within `most_gap` of the start is laid upon it, which the last
    edge takes. Raises WalkError where the walk does not come back to its start, not round the
    roof with the roof on its right, or across itself.
    """
    wrong = [
        f"edge {number}: found no length, expected more than 0"
        for number, length in enumerate(walk.lengths, start=1)
        if not length > 0.0
    ]
    if len(walk.lengths) < _FEWEST:
        wrong.append(f"found {len(walk.lengths)} edges, expected {_FEWEST} at least")
    if wrong:
        raise WalkError(wrong)
    corners, ways = _corners(walk, first)
    gap = _apart(corners[0], corners[-1])
    if gap > most_gap:
        raise WalkError([_open(corners, gap, most_gap, style)])
    closed = [*corners[:-1], corners[0]]
    turned = total((*walk.turns, _between(ways[-1], ways[0])))
    if abs(turned - _ROUND) > _NOT_ROUND:
        left = "the roof on the left: turn right where it says left" if turned < 0.0 else "a loop"
        raise WalkError([f"found a walk with {left}; expected the roof on the right all the way"])
    crossing = next(crossings(closed), None)
    if crossing is not None:
        found = f"found edge {crossing.other} across edge {crossing.one}"
        raise WalkError([f"{found}, expected edges that do not cross"])
    return Walked(*_drawn(closed), gap)


def edges_round(outline: Sequence[Point]) -> tuple[Edge, ...]:
    """The edges of an outline, called as those of a walk; the roof lies on their right hand."""
    closed = [*outline, outline[0]]
    return tuple(
        Edge(name, start, end)
        for name, (start, end) in zip(_names(closed), pairwise(closed), strict=True)
    )


def outlined(corners: Sequence[Point]) -> tuple[tuple[Point, ...], tuple[Edge, ...]]:
    """The outline and edges of a roof by its corners, drawn in either direction round it.

    Edges are called as in `roof_of`. Raises WalkError for fewer than three corners, for two at one
    place, and for edges that cross.
    """
    if len(corners) < _FEWEST:
        raise WalkError([f"found {len(corners)} corners, expected {_FEWEST} at least"])
    closed = [*corners, corners[0]]
    wrong = [
        f"edge {number}: found no length, expected more than 0"
        for number, (one, other) in enumerate(pairwise(closed), start=1)
        if not _apart(one, other) > _SAME_PLACE
    ]
    if wrong:
        raise WalkError(wrong)
    crossing = next(crossings(closed), None)
    if crossing is not None:
        found = f"found edge {crossing.other} across edge {crossing.one}"
        raise WalkError([f"{found}, expected edges that do not cross"])
    turned = total(x * v - u * y for (x, y), (u, v) in pairwise(closed))
    if turned > 0.0:
        closed.reverse()
    return tuple(closed[:-1]), edges_round(closed[:-1])


def moved(walked: Walked, *, east: Length, north: Length) -> Walked:
    """The same roof further along the plan: where the site has another one at its datum."""

    def there(at: Point) -> Point:
        return at[0] + east, at[1] + north

    edges = (replace(one, start=there(one.start), end=there(one.end)) for one in walked.edges)
    return replace(walked, outline=tuple(map(there, walked.outline)), edges=tuple(edges))


def on_plan(edge: Edge, *, along: Length, back: Length) -> Point:
    """The point so far along an edge from its left end, and so far back in from its face."""
    (x, y), (across, up) = edge.start, _way(edge.start, edge.end)
    return x + along * across + back * up, y + along * up - back * across


def along_and_back(edge: Edge, at: Point) -> tuple[Length, Length]:
    """Where a point lies: how far along an edge from its left end, how far in from its face."""
    across, up = _way(edge.start, edge.end)
    x, y = at[0] - edge.start[0], at[1] - edge.start[1]
    return x * across + y * up, x * up - y * across


def edge_length(edge: Edge) -> Length:
    """From its left end to its right end."""
    return _apart(edge.start, edge.end)


def is_within(outline: Sequence[Point], at: Point) -> bool:
    """Whether a point lies inside an outline: a line from it to the right leaves it once more."""
    x, y = at
    inside = False
    for one, other in pairwise((*outline, outline[0])):
        if (one[1] > y) != (other[1] > y):
            meets = one[0] + (y - one[1]) * (other[0] - one[0]) / (other[1] - one[1])
            inside = inside != (x < meets)
    return inside


def _turn(way: str, much: str) -> Angle:
    text = much.strip()
    angle = RIGHT_ANGLE if not text else parse(f"{text} deg" if text.isdigit() else text, ANGLE)
    return angle if way == "right" else -angle


def _corners(walk: Walk, first: Facing) -> tuple[list[Point], list[Point]]:
    """Where each edge begins, and the end of the last; the way that each runs."""
    out = _OUT[first]
    way = (out[1], -out[0])
    corners, ways = [(0.0, 0.0)], [way]
    for length, turn in zip(walk.lengths, (*walk.turns, None), strict=True):
        x, y = corners[-1]
        corners.append((x + length * way[0], y + length * way[1]))
        if turn is not None:
            way = _turned(way, turn)
            ways.append(way)
    return corners, ways


def _turned(way: Point, angle: Angle) -> Point:
    """A direction turned to the right; by right angles without any rounding."""
    if angle == RIGHT_ANGLE:
        return way[1], -way[0]
    if angle == -RIGHT_ANGLE:
        return -way[1], way[0]
    aside, ahead = sine(angle), cosine(angle)
    return way[0] * ahead + way[1] * aside, way[1] * ahead - way[0] * aside


def _between(way: Point, following: Point) -> Angle:
    """The turn to the right from one direction to another, within half a turn."""
    aside = way[1] * following[0] - way[0] * following[1]
    return direction(across=aside, along=way[0] * following[0] + way[1] * following[1])


def _open(corners: Sequence[Point], gap: Length, most: Length, style: Style) -> str:
    """What is told of a walk that does not come back."""
    (x, y), (to_x, to_y) = corners[-1], corners[0]
    ways = [
        f"{display(abs(much), LENGTH, style)} to the {word}"
        for much, word in (
            (to_x - x, "east" if to_x > x else "west"),
            (to_y - y, "north" if to_y > y else "south"),
        )
        if abs(much) > most / 100
    ]
    return (
        f"the roof does not close: found its end {display(gap, LENGTH, style)} from its start"
        f" ({' and '.join(ways)} is missing), expected within {display(most, LENGTH, style)};"
        " look at each length and turn again"
    )


def _drawn(closed: Sequence[Point]) -> tuple[tuple[Point, ...], tuple[Edge, ...]]:
    """Outline and edges, moved so that no corner is left of 0 or below 0."""
    left, low = min(x for x, _ in closed), min(y for _, y in closed)
    outline = tuple((x - left, y - low) for x, y in closed[:-1])
    return outline, edges_round(outline)


def _names(closed: Sequence[Point]) -> list[str]:
    """S, W, N, E where each edge looks another of these ways, else E1, E2 and so on."""
    found = [_called(_way(start, end)) for start, end in pairwise(closed)]
    if None not in found and len(set(found)) == len(found):
        return [str(one) for one in found]
    return [f"E{number}" for number in range(1, len(found) + 1)]


def _called(way: Point) -> str | None:
    """The letter of the way that an edge looks; None half-way between two."""
    out = (-way[1], way[0])
    for facing, (x, y) in _OUT.items():
        off = _between((x, y), out)
        if abs(off) <= _CALLED_SO:
            return str(facing)[0].upper()
    return None


def _way(start: Point, end: Point) -> Point:
    length = _apart(start, end)
    return (end[0] - start[0]) / length, (end[1] - start[1]) / length


def _apart(one: Point, other: Point) -> Length:
    x, y = other[0] - one[0], other[1] - one[1]
    return root(x * x + y * y)
