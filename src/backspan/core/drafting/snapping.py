"""Where on the plan a hand means: a corner, an edge, a row of anchors, or a step of the tape.

A place on a roof is told as an engineer tapes it: so far along the nearest edge from its left end
as seen looking out, and so far back from its face. Snapping moves a place to the nearest of these
within a given distance, in this order: a corner; an edge, square to it; in line with another
anchor, along or back; and always to a whole step of the tape.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

from backspan.core.model.site import Edge, Point, Roof
from backspan.core.model.walked import along_and_back, edge_length, on_plan
from backspan.core.numbers import root
from backspan.core.quantities import TAPE_STEP, Length, Style


@dataclass(frozen=True, slots=True)
class Seen:
    """A place as it is seen from an edge: so far along it, so far back from its face."""

    edge: str
    along: Length
    back: Length


@dataclass(frozen=True, slots=True)
class Snapped:
    """A place after snapping, what it snapped to, and how it is seen from the nearest edge."""

    at: Point
    to: str
    seen: Seen | None


def distance(one: Point, other: Point) -> Length:
    """How far apart two places on the plan are."""
    x, y = other[0] - one[0], other[1] - one[1]
    return root(x * x + y * y)


def seen_from(roof: Roof, at: Point) -> tuple[Seen, ...]:
    """A place as it is seen from every edge that it lies behind, nearest first."""
    found = []
    for edge in roof.edges:
        along, back = along_and_back(edge, at)
        if back >= -_SLACK and -_SLACK <= along <= edge_length(edge) + _SLACK:
            found.append(Seen(edge.id, along, back))
    return tuple(sorted(found, key=lambda one: (one.back, one.edge)))


def snapped(roof: Roof, at: Point, *, within: Length, style: Style = Style.US) -> Snapped:
    """The place that is meant by one that was pointed at."""
    corner = _nearest(roof.outline, at)
    if corner is not None and distance(corner, at) <= within:
        return Snapped(corner, "a corner", _first(roof, corner))
    edge = _edge_beside(roof, at, within)
    if edge is not None:
        along = stepped(along_and_back(edge, at)[0], style)
        place = on_plan(edge, along=along, back=0.0)
        return Snapped(place, f"edge {edge.id}", Seen(edge.id, along, 0.0))
    seen = _first(roof, at)
    if seen is None:
        return Snapped(at, "", None)
    edge = next(one for one in roof.edges if one.id == seen.edge)
    places = {one.id: along_and_back(edge, one.at) for one in roof.anchors if one.at != at}
    rows = ({name: one[axis] for name, one in places.items()} for axis in (0, 1))
    (along, with_along), (back, with_back) = (
        _in_row(length, row, within)
        for length, row in zip((seen.along, seen.back), rows, strict=True)
    )
    along = along if with_along else stepped(along, style)
    back = back if with_back else stepped(back, style)
    names = dict.fromkeys(one for one in (with_along, with_back) if one)
    to = f"in line with {' and '.join(names)}" if names else ""
    return Snapped(on_plan(edge, along=along, back=back), to, Seen(edge.id, along, back))


def squared(
    corners: Sequence[Point], *, within: Length, style: Style = Style.US
) -> tuple[Point, ...]:
    """Corners pointed at one after another, each edge square to the first or along it.

    An edge that turns off either by no more than `within` at its end is taken to be so, and its
    length is a whole step of the tape. A last corner on the first closes the outline and is left
    out.
    """
    found: list[Point] = []
    along: Point = (1.0, 0.0)
    for corner in corners:
        if not found:
            found.append(corner)
            continue
        (x, y), (u, v) = found[-1], corner
        far = (u - x) * along[0] + (v - y) * along[1]
        aside = (v - y) * along[0] - (u - x) * along[1]
        far, aside = (0.0 if abs(one) <= within else stepped(one, style) for one in (far, aside))
        if len(found) > 1 and distance(corner, found[0]) <= within:
            break
        found.append((x + far * along[0] - aside * along[1], y + far * along[1] + aside * along[0]))
        if len(found) == _FIRST_EDGE and (long := distance(*found)) > 0.0:
            (x, y), (u, v) = found
            along = ((u - x) / long, (v - y) / long)
    return tuple(found)


_FIRST_EDGE = 2


#: A place this far beyond an end of an edge is still seen from it.
_SLACK: Length = 0.001


def _first(roof: Roof, at: Point) -> Seen | None:
    return next(iter(seen_from(roof, at)), None)


def _nearest(points: Iterable[Point], at: Point) -> Point | None:
    return min(points, key=lambda one: distance(one, at), default=None)


def _edge_beside(roof: Roof, at: Point, within: Length) -> Edge | None:
    """The nearest edge that a place lies square to, within a distance on either side of it."""
    near = []
    for edge in roof.edges:
        along, back = along_and_back(edge, at)
        if 0.0 <= along <= edge_length(edge) and abs(back) <= within:
            near.append((abs(back), edge.id, edge))
    return min(near)[2] if near else None


def _in_row(length: Length, rows: Mapping[str, Length], within: Length) -> tuple[Length, str]:
    """The length of an anchor that is close to one, and its name; the length itself if none is."""
    near = [(abs(one - length), name, one) for name, one in rows.items()]
    off, name, found = min(near, default=(within, "", length))
    return (found, name) if off < within else (length, "")


def stepped(length: Length, style: Style) -> Length:
    """A length in whole steps of a tape."""
    step = TAPE_STEP[style]
    return round(length / step) * step
