"""Arcs as runs of points that stay within a sagitta of them."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence

from backspan.core.model.site import Point

_TURN = 2 * math.pi
_FEWEST = 8
#: No curve of a roof needs more to stay within a millimetre.
MOST_PIECES = 20_000


class TooFineError(ValueError):
    """A curve that no sensible number of points follows."""


def arc(
    centre: Point, *, radius: float, start: float, sweep: float, sagitta: float
) -> tuple[Point, ...]:
    """Points along an arc, its ends among them; angles in radians, to the left."""
    pieces = _pieces(abs(radius), abs(sweep), sagitta)
    angles = (start + sweep * place / pieces for place in range(pieces + 1))
    x, y = centre
    return tuple((x + radius * math.cos(one), y + radius * math.sin(one)) for one in angles)


def circle(centre: Point, *, radius: float, sagitta: float) -> tuple[Point, ...]:
    """Points round a circle, each once."""
    return arc(centre, radius=radius, start=0.0, sweep=_TURN, sagitta=sagitta)[:-1]


def bulged(
    points: Sequence[tuple[float, float, float]], *, closed: bool, sagitta: float
) -> Iterator[Point]:
    """Points along x, y and bulge: the tangent of a quarter of the arc to the next point."""
    for place, (x, y, bulge) in enumerate(points):
        yield x, y
        is_last = place == len(points) - 1
        if bulge == 0.0 or (is_last and not closed):
            continue
        ahead = points[0] if is_last else points[place + 1]
        yield from _bulge((x, y), (ahead[0], ahead[1]), bulge, sagitta)


def _bulge(start: Point, end: Point, bulge: float, sagitta: float) -> Iterator[Point]:
    """The points between two ends of an arc."""
    across, up = end[0] - start[0], end[1] - start[1]
    chord = math.hypot(across, up)
    if chord == 0.0:
        return
    radius = chord * (1 + bulge * bulge) / (4 * bulge)
    off = chord * (1 - bulge * bulge) / (4 * bulge)
    centre = (
        (start[0] + end[0]) / 2 - up / chord * off,
        (start[1] + end[1]) / 2 + across / chord * off,
    )
    first = math.atan2(start[1] - centre[1], start[0] - centre[0])
    found = arc(
        centre, radius=abs(radius), start=first, sweep=4 * math.atan(bulge), sagitta=sagitta
    )
    yield from found[1:-1]


def _pieces(radius: float, sweep: float, sagitta: float) -> int:
    """How many chords keep within the sagitta, and a full turn in eight at least."""
    least = max(1, math.ceil(_FEWEST * sweep / _TURN - 1e-9))
    if radius <= sagitta:
        return least
    each = 2 * math.acos(1 - sagitta / radius)
    if each == 0.0 or sweep / each > MOST_PIECES:
        raise TooFineError(f"an arc of radius {radius:g}")
    return max(least, math.ceil(sweep / each))
