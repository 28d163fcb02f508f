"""The lines a dimension is drawn with, for writers that have no dimension of their own."""

from __future__ import annotations

from dataclasses import dataclass

from backspan.drawings.geometry import Segment, left_of, moved, turned
from backspan.drawings.scene import Point

GAP = 1.2
OVERSHOOT = 1.5
TICK = 2.2


@dataclass(frozen=True, slots=True)
class DimensionLines:
    """Extension lines, the dimension line and its two ticks, in millimetres on paper."""

    extensions: tuple[Segment, ...]
    line: Segment
    ticks: tuple[Segment, Segment]


def dimension_lines(
    start: Point, end: Point, *, line_through: Point, angle: float
) -> DimensionLines:
    """Where the lines of a dimension lie, from the two points and a point on the line (paper)."""
    along = turned((1.0, 0.0), degrees=angle)
    first = _foot(start, on=line_through, along=along)
    last = _foot(end, on=line_through, along=along)
    extensions = tuple(
        (moved(point, along=away, by=GAP), moved(foot, along=away, by=OVERSHOOT))
        for point, foot in ((start, first), (end, last))
        for away, distance in (_away(point, foot, along),)
        if distance > GAP
    )
    slope = turned(along, degrees=45.0)
    ticks = tuple(
        (moved(foot, along=slope, by=-TICK / 2), moved(foot, along=slope, by=TICK / 2))
        for foot in (first, last)
    )
    return DimensionLines(extensions, (first, last), (ticks[0], ticks[1]))


def _foot(point: Point, *, on: Point, along: Point) -> Point:
    normal = left_of(along)
    height = (on[0] - point[0]) * normal[0] + (on[1] - point[1]) * normal[1]
    return moved(point, along=normal, by=height)


def _away(point: Point, foot: Point, along: Point) -> tuple[Point, float]:
    normal = left_of(along)
    height = (foot[0] - point[0]) * normal[0] + (foot[1] - point[1]) * normal[1]
    return (normal if height >= 0.0 else (-normal[0], -normal[1])), abs(height)
