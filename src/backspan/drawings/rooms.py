"""The paper in cells: which room a text takes, and through which cells a line runs."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass
from itertools import pairwise

from backspan.drawings.geometry import Box, Quad, Segment, apart, overlap
from backspan.drawings.scene import Point

CELL = 15.0
"""The side of a cell, in millimetres: about the length of a short label."""

Cell = tuple[int, int]


@dataclass(frozen=True, slots=True)
class Room:
    """The room of one text: its outline, the upright box around it, whether they are the same."""

    quad: Quad
    box: Box
    upright: bool

    @property
    def middle(self) -> Point:
        """The middle of the box."""
        left, bottom, right, top = self.box
        return ((left + right) / 2, (bottom + top) / 2)

    def covers(self, other: Room) -> bool:
        """Whether two texts would lie over one another."""
        if apart(self.box, other.box):
            return False
        return (self.upright and other.upright) or overlap(self.quad, other.quad)


def room_of(quad: Quad) -> Room:
    """The room that an outline takes."""
    xs, ys = {point[0] for point in quad}, {point[1] for point in quad}
    box = (min(xs), min(ys), max(xs), max(ys))
    return Room(quad, box, len(xs) == 2 and len(ys) == 2)  # noqa: PLR2004 - two of each


def within(box: Box, area: Box) -> bool:
    """Whether a box lies wholly in an area."""
    return box[0] >= area[0] and box[1] >= area[1] and box[2] <= area[2] and box[3] <= area[3]


def parts_of(segment: Segment) -> Iterator[Segment]:
    """A segment cut so that no part is longer than a cell."""
    (x, y), (end_x, end_y) = segment
    steps = max(1, math.ceil(math.dist(*segment) / CELL))
    cuts = (
        (x + (end_x - x) * step / steps, y + (end_y - y) * step / steps)
        for step in range(steps + 1)
    )
    yield from pairwise(cuts)


def cells_along(segment: Segment) -> tuple[Cell, ...]:
    """The cells that a segment runs through, each once."""
    runs = (cells_in(box_around(*part)) for part in parts_of(segment))
    return tuple(dict.fromkeys(cell for run in runs for cell in run))


def box_around(one: Point, other: Point) -> Box:
    """The upright box around two points."""
    return (
        min(one[0], other[0]),
        min(one[1], other[1]),
        max(one[0], other[0]),
        max(one[1], other[1]),
    )


def cells_in(box: Box) -> list[Cell]:
    """The cells that a box touches."""
    left, bottom = math.floor(box[0] / CELL), math.floor(box[1] / CELL)
    right, top = math.floor(box[2] / CELL), math.floor(box[3] / CELL)
    return [(column, row) for column in range(left, right + 1) for row in range(bottom, top + 1)]
