"""A roof larger than any: 60 drops with their rigs, 400 anchors, 2,000 lines. Invented.

It is the first drop of the demo again and again along a roof of its own, every rig with more
tiebacks and lifelines than anybody would lead, so that what draws it is asked enough. Each drop has
things of its own, but for the lots of pieces, which all of them share.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from typing import Any

from backspan.core.model.project import Project
from backspan.core.model.rigs import Drop, Lifeline, Rig, SuspensionPoint, Tieback
from backspan.core.model.site import Anchor, Edge, Roof
from backspan.core.model.units import UnitKind
from backspan.core.model.walked import on_plan
from backspan.core.sheet.uses import uses_of
from backspan.core.wire import from_data, to_data

DROPS, ANCHORS, LINES = 60, 400, 2_000
_TIES = 6
_GAP = 0.5
_BACK = (6.0, 9.0, 12.0, 15.0)


def large(project: Project, drop: str = "S1") -> Project:
    """The site with one more roof of that size, on which a drop stands again and again."""
    first = next(one for one in project.drops if one.id == drop)
    width = first.width.value + _GAP
    long, deep = width * (DROPS // 2) + 4.0, 40.0
    outline = ((0.0, deep), (long, deep), (long, 0.0), (0.0, 0.0))
    sides = (("N", 0, 1), ("S", 2, 3))
    like = next(edge for roof in project.site.roofs for edge in roof.edges if edge.parapet)
    edges = tuple(
        Edge(name, outline[start], outline[end], like.parapet) for name, start, end in sides
    )
    of = project.site.roofs[0]
    roof = Roof(
        "BIG", "large roof", of.level, outline, edges, anchors=_anchors(edges, of.anchors[0])
    )
    drops = tuple(
        replace(
            first,
            id=f"B{number + 1}",
            name=None,
            roof="BIG",
            edge=edges[number % 2].id,
            start=1.0 + width * (number // 2),
            rig=_with_tags(
                _rig(first.rig or Rig(), number, 1.0 + width * (number // 2) - first.start),
                {tag: f"{tag}-{number + 1}" for tag in _tags(project, first)},
            ),
        )
        for number in range(DROPS)
    )
    site = replace(project.site, roofs=(*project.site.roofs, roof))
    tags = _tags(project, first)
    units = tuple(
        replace(one, id=f"{one.id}-{number + 1}", serial=None)
        for number in range(DROPS)
        for one in project.kit.units
        if one.id in tags
    )
    kit = replace(project.kit, units=(*project.kit.units, *units))
    return replace(project, site=site, kit=kit, drops=(*project.drops, *drops))


def _tags(project: Project, drop: Drop) -> set[str]:
    """The things with a tag of a drop's rig, but for lots."""
    named = {one.name for one in uses_of(drop.rig or Rig(), drop.id)}
    units = (one for one in project.kit.units if one.kind is not UnitKind.PIECE)
    return {one.id for one in units if one.id in named}


def _anchors(edges: tuple[Edge, ...], like: Anchor) -> tuple[Anchor, ...]:
    rows = len(edges) * len(_BACK)
    each = ANCHORS // rows
    step = (edges[0].end[0] - edges[0].start[0]) / (each + 1)
    return tuple(
        replace(
            like,
            id=f"P{side * ANCHORS // len(edges) + row * each + number + 1}",
            at=on_plan(edge, along=step * (number + 1), back=back),
        )
        for side, edge in enumerate(edges)
        for row, back in enumerate(_BACK)
        for number in range(each)
    )


def _rig(rig: Rig, number: int, shift: float) -> Rig:
    """A rig at a further place, its lines led to anchors behind it."""
    side, along = number % 2, number // 2
    first = side * (ANCHORS // 2) + min(along * 5 // 3, 44) + 1
    names = [f"P{first + row * 50 + near}" for row in range(len(_BACK)) for near in range(6)]
    points = tuple(_point(one, shift, names) for one in rig.suspension_points)
    lines = LINES // DROPS - _TIES * len(points)
    station = points[0].station
    led = tuple(
        Lifeline(f"LL-{count + 1}", names[count % len(names)], station=station + 0.2 * count)
        for count in range(lines + 1)
    )
    return replace(rig, suspension_points=points, lifelines=led, moved_from=None)


def _with_tags(rig: Rig, tags: Mapping[str, str]) -> Rig:
    """The rig with things of the same kind under other tags."""

    def told(data: Any) -> Any:
        if isinstance(data, dict):
            return {name: told(part) for name, part in data.items()}
        if isinstance(data, list):
            return [told(part) for part in data]
        return tags.get(data, data) if isinstance(data, str) else data

    return from_data(Rig, told(to_data(rig)))


def _point(point: SuspensionPoint, shift: float, names: list[str]) -> SuspensionPoint:
    ties = tuple(Tieback(f"TB-{point.id}{count + 1}", names[count]) for count in range(_TIES))
    return replace(point, station=point.station + shift, tiebacks=ties)
