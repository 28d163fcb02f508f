"""How near a straight line in plan comes to an outline; plain geometry.

Whether two lines cross is only asked where they do by more than a float can tell apart from
touching: what touches is no distance apart, and found so by its ends.
"""

from __future__ import annotations

from collections.abc import Sequence

from backspan.core.numbers import at_least, at_most, root, smaller, surely_above, surely_nothing
from backspan.core.sheet.reads import UNKNOWN

Spot = tuple[float, float]


def line_to_outline(start: Spot, end: Spot, outline: Sequence[Spot]) -> float:
    """The least distance of a line's points to an outline's area: none where they meet.

    Unknown where a number is, or where the outline has no points. One point is an outline too.
    """
    if not outline:
        return UNKNOWN
    near, meets = [], is_inside(start, outline)
    for index, corner in enumerate(outline):
        before = outline[index - 1]
        # Where two lines do not cross they are nearest at an end of one of them.
        near += [_squared(start, before, corner), _squared(end, before, corner)]
        near.append(_squared(corner, start, end))
        meets = meets or _cross(start, end, before, corner)
    nearest = root(smaller(*near))
    return nearest * 0.0 if meets else nearest


def is_inside(spot: Spot, outline: Sequence[Spot]) -> bool:
    """Whether a point is surely inside an outline: a ray from it crosses it an odd many times."""
    inside = False
    for index, corner in enumerate(outline):
        before = outline[index - 1]
        falls = surely_above(before[1], limit=corner[1])
        low, high = (corner, before) if falls else (before, corner)
        level = surely_above(high[1], limit=spot[1]) and not surely_above(low[1], limit=spot[1])
        if level and surely_above(_turn(low, high, spot), limit=0.0):
            inside = not inside
    return inside


def _cross(start: Spot, end: Spot, one: Spot, other: Spot) -> bool:
    return _on_two_sides(start, end, one, other) and _on_two_sides(one, other, start, end)


def _on_two_sides(one: Spot, other: Spot, start: Spot, end: Spot) -> bool:
    """Whether two points lie on different sides of a line."""
    first, second = _turn(start, end, one), _turn(start, end, other)
    return (surely_above(first, limit=0.0) and surely_above(0.0, limit=second)) or (
        surely_above(second, limit=0.0) and surely_above(0.0, limit=first)
    )


def _turn(start: Spot, end: Spot, spot: Spot) -> float:
    """Above zero where a point lies to the left of a line, below where to its right."""
    along, up = end[0] - start[0], end[1] - start[1]
    return along * (spot[1] - start[1]) - up * (spot[0] - start[0])


def _squared(spot: Spot, start: Spot, end: Spot) -> float:
    """The square of how far a point is from the nearest one of a line between its ends."""
    along, up = end[0] - start[0], end[1] - start[1]
    to_spot, aside = spot[0] - start[0], spot[1] - start[1]
    length = along * along + up * up
    share = 0.0
    if not surely_nothing(length):
        ahead = (to_spot * along + aside * up) / length
        share = at_least(at_most(ahead, most=1.0), least=0.0)
    across, on = to_spot - share * along, aside - share * up
    return across * across + on * on
