"""Where the edges of a closed outline meet other than at their corners."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise

from backspan.core.model.site import Point


@dataclass(frozen=True, slots=True)
class Crossing:
    """Two edges by their numbers, counted from 1, and a point that both hold."""

    one: int
    other: int
    at: Point


def crossings(closed: Sequence[Point]) -> Iterator[Crossing]:
    """Each two edges that cross, touch or lie upon one another; the first point ends `closed`.

    Edges that follow one another meet at their corner, and count where the later one runs back
    along the earlier. Edges in one line, each in a place of its own, do not meet.
    """
    edges = list(pairwise(closed))
    last = len(edges) - 1
    for one, (a, b) in enumerate(edges):
        for other in range(one + 1, len(edges)):
            c, d = edges[other]
            if other == one + 1:
                at = b if _folds(a, b, d) else None
            elif (one, other) == (0, last):
                at = a if _folds(c, a, b) else None
            else:
                at = _meeting(a, b, c, d)
            if at is not None:
                yield Crossing(one + 1, other + 1, at)


def _folds(before: Point, corner: Point, after: Point) -> bool:
    """Whether an edge runs back along the one before it."""
    ahead = (corner[0] - before[0]) * (after[0] - corner[0])
    aside = (corner[1] - before[1]) * (after[1] - corner[1])
    return _side(before, corner, after) == 0.0 and ahead + aside < 0.0


def _meeting(a: Point, b: Point, c: Point, d: Point) -> Point | None:
    """A point of two edges; None where they have none."""
    if not _near(a, b, c, d) or not (_parts(a, b, c, d) and _parts(c, d, a, b)):
        return None
    from_a, from_b = _side(c, d, a), _side(c, d, b)
    if from_a == from_b:  # in one line
        return next((one for one in (c, d) if _near(a, b, one, one)), a)
    share = from_a / (from_a - from_b)
    return a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])


def _near(a: Point, b: Point, c: Point, d: Point) -> bool:
    """Whether the boxes around two edges touch: where they do not, no edge meets the other."""
    return all(
        max(a[axis], b[axis]) >= min(c[axis], d[axis])
        and max(c[axis], d[axis]) >= min(a[axis], b[axis])
        for axis in (0, 1)
    )


def _parts(a: Point, b: Point, c: Point, d: Point) -> bool:
    """Whether two points do not lie on one side of a line; a point upon it lies on neither."""
    one, other = _side(a, b, c), _side(a, b, d)
    return not (one > 0.0 < other or one < 0.0 > other)


def _side(a: Point, b: Point, at: Point) -> float:
    return (b[0] - a[0]) * (at[1] - a[1]) - (b[1] - a[1]) * (at[0] - a[0])
