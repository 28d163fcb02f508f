"""Places that count as one: what lies within a millimetre of what was there before."""

from __future__ import annotations

from itertools import product

from backspan.core.model.site import Point
from backspan.core.quantities import Length

#: Two places nearer than this are one.
WITHIN: Length = 0.001


class Spots:
    """Places by number, each more than `WITHIN` from those before it."""

    def __init__(self) -> None:
        self.places: list[Point] = []
        self._cells: dict[tuple[int, int], list[int]] = {}

    def number(self, at: Point) -> tuple[int, bool]:
        """The number of a place, and whether it was there before."""
        x, y = (round(one / WITHIN) for one in at)
        for cell in product((x - 1, x, x + 1), (y - 1, y, y + 1)):
            for one in self._cells.get(cell, ()):
                if are_one(self.places[one], at):
                    return one, True
        new = len(self.places)
        self.places.append(at)
        self._cells.setdefault((x, y), []).append(new)
        return new, False


def are_one(one: Point, other: Point) -> bool:
    """Whether two places count as one."""
    x, y = other[0] - one[0], other[1] - one[1]
    return x * x + y * y <= WITHIN * WITHIN
