"""Plane geometry of a drawing: boxes around texts, crossings, lines clipped to an outline.

It places ink on paper. No answer of a review rests on it.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence

from backspan.drawings.lettering import ASCENT, DESCENT, text_width
from backspan.drawings.scene import Align, Point, Text

Quad = tuple[Point, Point, Point, Point]
Segment = tuple[Point, Point]
Box = tuple[float, float, float, float]
"""Left, bottom, right, top."""


def moved(point: Point, *, along: Point, by: float) -> Point:
    """`point` moved `by` along the direction `along`."""
    return (point[0] + along[0] * by, point[1] + along[1] * by)


def direction(start: Point, end: Point) -> Point:
    """Direction from one point to another, of length one; to the right when they are the same."""
    length = math.dist(start, end)
    if length == 0.0:
        return (1.0, 0.0)
    return ((end[0] - start[0]) / length, (end[1] - start[1]) / length)


def turned(point: Point, *, degrees: float) -> Point:
    """`point` turned anticlockwise about the origin."""
    angle = math.radians(degrees)
    cosine, sine = math.cos(angle), math.sin(angle)
    return (point[0] * cosine - point[1] * sine, point[0] * sine + point[1] * cosine)


def left_of(along: Point) -> Point:
    """The direction a quarter turn anticlockwise of `along`."""
    return (-along[1], along[0])


def angle_of(along: Point) -> float:
    """Angle of a direction, in degrees from the x axis."""
    return math.degrees(math.atan2(along[1], along[0]))


def readable(angle: float) -> float:
    """The angle at which text along a line is not upside down."""
    turned_angle = (angle + 180.0) % 360.0 - 180.0
    if turned_angle > 90.0 + 1e-6:
        return turned_angle - 180.0
    return turned_angle + 180.0 if turned_angle <= -90.0 + 1e-6 else turned_angle


def bounds(points: Iterable[Point]) -> Box | None:
    """The upright box around the points; None where there are none."""
    known = tuple(points)
    if not known:
        return None
    xs, ys = [point[0] for point in known], [point[1] for point in known]
    return (min(xs), min(ys), max(xs), max(ys))


def corners(box: Box) -> Quad:
    """The corners of an upright box, anticlockwise from the lower left."""
    left, bottom, right, top = box
    return ((left, bottom), (right, bottom), (right, top), (left, top))


def corners_around(point: Point, size: float) -> Quad:
    """The corners of an upright square about a point."""
    half = size / 2
    return corners((point[0] - half, point[1] - half, point[0] + half, point[1] + half))


def grown(box: Box, by: float) -> Box:
    """The box with `by` more on every side."""
    return (box[0] - by, box[1] - by, box[2] + by, box[3] + by)


def text_quad(text: Text) -> Quad:
    """The room a text on paper takes, as a box turned with it."""
    width = text_width(text.text, height=text.height, bold=text.bold)
    left = {Align.START: 0.0, Align.MIDDLE: -width / 2, Align.END: -width}[text.align]
    ascent, descent = text.height * ASCENT, text.height * DESCENT
    flat = corners((left, -descent, left + width, ascent))
    at = (turned(corner, degrees=text.angle) for corner in flat)
    first, second, third, fourth = ((x + text.at[0], y + text.at[1]) for x, y in at)
    return (first, second, third, fourth)


def overlap(one: Sequence[Point], other: Sequence[Point]) -> bool:
    """Whether two convex outlines (a segment is one too) share more than a touch."""
    for outline in (one, other):
        for start, end in zip(outline, (*outline[1:], outline[0]), strict=True):
            axis = left_of(direction(start, end))
            mine = [point[0] * axis[0] + point[1] * axis[1] for point in one]
            theirs = [point[0] * axis[0] + point[1] * axis[1] for point in other]
            if max(mine) <= min(theirs) + 1e-9 or max(theirs) <= min(mine) + 1e-9:
                return False
    return True


def apart(one: Box, other: Box) -> bool:
    """Whether two upright boxes share no more than a touch."""
    return (
        one[2] <= other[0] + 1e-9
        or other[2] <= one[0] + 1e-9
        or one[3] <= other[1] + 1e-9
        or other[3] <= one[1] + 1e-9
    )


def passes(segment: Segment, box: Box) -> bool:
    """Whether a segment runs through the inside of an upright box."""
    (x, y), (end_x, end_y) = segment
    first, last = 0.0, 1.0
    for start, step, low, high in ((x, end_x - x, box[0], box[2]), (y, end_y - y, box[1], box[3])):
        if step == 0.0:
            if not low < start < high:
                return False
            continue
        enter, leave = (low - start) / step, (high - start) / step
        first, last = max(first, min(enter, leave)), min(last, max(enter, leave))
        if first >= last:
            return False
    return True


def meet(one: Segment, other: Segment) -> bool:
    """Whether two segments cross."""
    return _parted(one, other) and _parted(other, one)


def _parted(line: Segment, other: Segment) -> bool:
    (x, y), (end_x, end_y) = line
    (a, b), (c, d) = other
    before = (end_x - x) * (b - y) - (end_y - y) * (a - x)
    after = (end_x - x) * (d - y) - (end_y - y) * (c - x)
    return (before < 0.0) != (after < 0.0)


def crossings(outline: Sequence[Point], at: Point, along: Point) -> list[float]:
    """Where the line through `at` along a direction crosses an outline, as distances from `at`."""
    normal = left_of(along)
    found = []
    for start, end in zip(outline, (*outline[1:], outline[0]), strict=True):
        before = (start[0] - at[0]) * normal[0] + (start[1] - at[1]) * normal[1]
        after = (end[0] - at[0]) * normal[0] + (end[1] - at[1]) * normal[1]
        if (before < 0.0) == (after < 0.0):
            continue
        share = before / (before - after)
        x, y = start[0] + (end[0] - start[0]) * share, start[1] + (end[1] - start[1]) * share
        found.append((x - at[0]) * along[0] + (y - at[1]) * along[1])
    return sorted(found)


def hatch_lines(outline: Sequence[Point], *, spacing: float, angle: float) -> list[Segment]:
    """Parallel lines inside an outline, `spacing` apart."""
    if len(outline) < 3 or spacing <= 0.0:  # noqa: PLR2004 - an outline has three corners
        return []
    along = turned((1.0, 0.0), degrees=angle)
    normal = left_of(along)
    heights = [point[0] * normal[0] + point[1] * normal[1] for point in outline]
    first, last = math.ceil(min(heights) / spacing), math.floor(max(heights) / spacing)
    lines: list[Segment] = []
    for row in range(first, last + 1):
        # Half a hair off the grid, so that a line never runs along a side or through a corner.
        at = moved((0.0, 0.0), along=normal, by=row * spacing + spacing * 1e-6)
        cuts = crossings(outline, at, along)
        for start, end in zip(cuts[::2], cuts[1::2], strict=False):
            lines.append((moved(at, along=along, by=start), moved(at, along=along, by=end)))
    return lines


def inside(outline: Sequence[Point], point: Point) -> bool:
    """Whether a point lies within an outline."""
    if len(outline) < 3:  # noqa: PLR2004 - an outline has three corners
        return False
    ahead = [cut for cut in crossings(outline, point, (1.0, 0.0)) if cut > 0.0]
    return len(ahead) % 2 == 1
