"""Shapes cut off at the sides of a window, so that a part of a drawing can stand alone."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from itertools import pairwise

from backspan.drawings.geometry import Box, Segment
from backspan.drawings.scene import Hatch, Layer, Line, Point, Polygon, Polyline, Shape


def within(shapes: Iterable[Shape], window: Box) -> Iterator[Shape]:
    """What of lines, outlines and hatches lies in a window; other shapes are left out.

    Window and shapes are in the same units. An outline that is cut stays open at the cut.
    """
    for shape in shapes:
        match shape:
            case Line(layer, start, end):
                yield from _lines(shape, layer, (start, end), window)
            case Polyline(layer, points):
                yield from _lines(shape, layer, points, window)
            case Polygon(layer, points, fill, outlined):
                kept = outline_within(points, window)
                if fill is not None and kept:
                    yield Polygon(layer, kept, fill, outlined=False, of=shape.of)
                if outlined:
                    round_it = (*points, *points[:1])
                    yield from _lines(shape, layer, round_it, window)
            case Hatch(layer, points, spacing, angle):
                kept = outline_within(points, window)
                if kept:
                    yield Hatch(layer, kept, spacing, angle, of=shape.of)
            case _:
                pass


def _lines(shape: Shape, layer: Layer, points: Sequence[Point], window: Box) -> Iterator[Line]:
    """What is seen of a course of straight lines, each of the thing of the shape it is cut from."""
    for start, end in _segments(points, window):
        yield Line(layer, start, end, of=shape.of)


def segment_within(segment: Segment, window: Box) -> Segment | None:
    """The part of a straight line in a window; None where it passes by."""
    (x, y), (end_x, end_y) = segment
    first, last = 0.0, 1.0
    for start, step, low, high in (
        (x, end_x - x, window[0], window[2]),
        (y, end_y - y, window[1], window[3]),
    ):
        if step == 0.0:
            if not low <= start <= high:
                return None
            continue
        enter, leave = (low - start) / step, (high - start) / step
        first, last = max(first, min(enter, leave)), min(last, max(enter, leave))
    if first >= last:
        return None
    at = (_between(segment[0], segment[1], share) for share in (first, last))
    return next(at), next(at)


def outline_within(outline: Sequence[Point], window: Box) -> tuple[Point, ...]:
    """The outline of what a closed outline and a window share; empty where they share nothing.

    Cut side by side of the window (Sutherland and Hodgman, 1974): parts of an outline that is not
    convex stay joined along the side.
    """
    left, bottom, right, top = window
    kept = tuple(outline)
    for axis, limit, sign in ((0, left, 1.0), (0, right, -1.0), (1, bottom, 1.0), (1, top, -1.0)):
        kept = tuple(_cut(kept, axis=axis, limit=limit, sign=sign))
    return kept


def _cut(outline: Sequence[Point], *, axis: int, limit: float, sign: float) -> Iterator[Point]:
    """The outline on one side of an upright or level line."""
    if not outline:
        return
    for before, point in zip((outline[-1], *outline[:-1]), outline, strict=True):
        was, now = sign * (before[axis] - limit), sign * (point[axis] - limit)
        if (was < 0.0) != (now < 0.0):
            yield _between(before, point, was / (was - now))
        if now >= 0.0:
            yield point


def _segments(points: Sequence[Point], window: Box) -> Iterator[Segment]:
    for segment in pairwise(points):
        part = segment_within(segment, window)
        if part is not None:
            yield part


def _between(start: Point, end: Point, share: float) -> Point:
    return (start[0] + (end[0] - start[0]) * share, start[1] + (end[1] - start[1]) * share)
