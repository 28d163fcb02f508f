"""Names that lead nowhere, names used twice, and things that stand outside the edge they name.

What a rig lacks (no pieces, no suspension points, no support) is no problem of the file: it is a
finding, made by the checks.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import fields, replace
from typing import Any

from backspan.core.model.evidence import is_before
from backspan.core.model.identifiers import Identifiers, Path, ReferenceProblem, identifiers
from backspan.core.model.kit import Kit
from backspan.core.model.project import Project
from backspan.core.model.rigs import Drop, Rig, SuspensionPoint
from backspan.core.model.signed import LIMITS
from backspan.core.model.site import Edge, Roof
from backspan.core.model.splice_places import impossible_joints
from backspan.core.numbers import root, surely_above
from backspan.core.quantities import LENGTH, Length, display

__all__ = ["Path", "ReferenceProblem", "name_problems", "place_problems", "problems"]

#: Positions on an edge are read from drawings and tapes: a millimetre is no contradiction.
_SLACK: Length = 0.001
#: Fields whose text is the id of a person, wherever they stand.
_PERSON_FIELDS = frozenset({"by", "checked_by", "designer", "worker", "prepared_by"})
_KIT = ("hoist", "rope", "termination", "connector", "beam", "piece", "stage", "lanyard")

_Problems = Iterator[ReferenceProblem]


def problems(project: Project) -> tuple[ReferenceProblem, ...]:
    """Every absent or doubled name, and all that lies where it can not or is empty."""
    return (*name_problems(project), *place_problems(project))


def name_problems(project: Project) -> tuple[ReferenceProblem, ...]:
    """Every id that is named but absent, and every id used twice within its list."""
    lists = _lists(project)
    found = [problem for one in lists.values() for problem in one.doubled()]
    for index, roof in enumerate(project.site.roofs):
        path = ("site", "roofs", index)
        found.extend(_edges(roof, path).doubled())
        obstacles = identifiers("obstacle", "obstacles", [((*path, "obstacles"), roof.obstacles)])
        found.extend(obstacles.doubled())
    found.extend(_of_units(project.kit))
    found.extend(_people(project, (), lists["person"]))
    for index, drop in enumerate(project.drops):
        found.extend(_drop(drop, ("drops", index), project, lists))
    for number, taken in enumerate(project.taken_over):
        for index, one in enumerate(taken.drops):
            place = ("taken_over", number, "drops", index, "drop")
            found.extend(lists["drop"].lookup(one.drop, place))
    for number, signed in enumerate(project.signed_limits):
        for field, kind in (("drops", "drop"), ("hoists", "hoist"), ("beams", "beam")):
            for index, name in enumerate(getattr(signed, field)):
                at = ("signed_limits", number, field, index)
                found.extend(lists[kind].lookup(name, at))
    return tuple(found)


def place_problems(project: Project) -> tuple[ReferenceProblem, ...]:
    """Every edge without length, every drop, point or lifeline outside its edge, an empty basis."""
    found: list[ReferenceProblem] = []
    if not project.basis.tipping:
        expected = "at least one, with its edition"
        found.append(ReferenceProblem(("basis", "tipping"), "no rule set", expected))
    for number, roof in enumerate(project.site.roofs):
        for index, edge in enumerate(roof.edges):
            if _length(edge) <= _SLACK:
                path = ("site", "roofs", number, "edges", index, "end")
                found.append(ReferenceProblem(path, "the start again", "the other end of the edge"))
    found.extend(_signed(project))
    for index, drop in enumerate(project.drops):
        if _comes_from_itself(drop, project):
            back: Path = ("drops", index, "rig", "moved_from")
            found.append(ReferenceProblem(back, f"a way back to {drop.id}", "the drop before"))
        if drop.rig is not None:
            found.extend(impossible_joints(drop.rig, ("drops", index, "rig"), project))
        of_drop = _edge_of(drop, project)
        if of_drop is not None and _length(of_drop) > _SLACK:
            found.extend(_outside(drop, ("drops", index), of_drop, project))
    return tuple(found)


def _signed(project: Project) -> _Problems:
    """Papers that end before they were signed, and limits of nothing."""
    for number, one in enumerate(project.signed_limits):
        if is_before(one.until, one.at):
            place = ("signed_limits", number, "until")
            yield ReferenceProblem(place, one.until, f"the day it was signed, {one.at}, or later")
        for field in LIMITS:
            limit = getattr(one, field)
            if limit is not None and not surely_above(limit, limit=0.0):
                yield ReferenceProblem(("signed_limits", number, field), "nothing", "more than 0")


def _comes_from_itself(drop: Drop, project: Project) -> bool:
    """Whether the way a rig came leads back to its own drop."""
    before = {one.id: one.rig.moved_from for one in project.drops if one.rig is not None}
    name, seen = before.get(drop.id), set[str]()
    while name is not None and name not in seen:
        if name == drop.id:
            return True
        seen.add(name)
        name = before.get(name)
    return False


def _lists(project: Project) -> dict[str, Identifiers]:
    """The lists that serve the whole project, by kind."""
    roofs = project.site.roofs
    of_kit = {kind: _things(project.kit, kind) for kind in _KIT}
    # Papers name an anchor without its roof, so one id serves the whole site.
    anchors = [(("site", "roofs", n, "anchors"), roof.anchors) for n, roof in enumerate(roofs)]
    return of_kit | {
        "person": identifiers("person", "people", [(("people",), project.people)]),
        "drop": identifiers("drop", "drops", [(("drops",), project.drops)]),
        "roof": identifiers("roof", "roofs", [(("site", "roofs"), roofs)]),
        "anchor": identifiers("anchor", "anchors", anchors),
    }


def _types(kit: Kit, kind: str) -> Identifiers:
    return identifiers(kind, f"{kind}s", [(("kit", f"{kind}s"), getattr(kit, f"{kind}s"))])


def _things(kit: Kit, kind: str) -> Identifiers:
    """Types and units of one kind: a rig may name either, so no two share a name."""
    types = _types(kit, kind)
    units = [
        (unit.id, ("kit", "units", index))
        for index, unit in enumerate(kit.units)
        if str(unit.kind) == kind and isinstance(getattr(unit, "id", None), str)
    ]
    lists = (*types.lists, ("kit", "units"))
    return replace(types, lists=lists, ids=(*types.ids, *units))


def _of_units(kit: Kit) -> _Problems:
    """Units of a type that is not there."""
    for index, unit in enumerate(kit.units):
        if str(unit.kind) in _KIT:
            place = ("kit", "units", index, "of")
            yield from _types(kit, str(unit.kind)).lookup(unit.of, place)


def _edges(roof: Roof, path: Path) -> Identifiers:
    return identifiers("edge", f"edges of roof {roof.id}", [((*path, "edges"), roof.edges)])


def _people(value: Any, path: Path, people: Identifiers) -> _Problems:
    """Problems with the people named anywhere in `value`."""
    if isinstance(value, tuple):
        for index, item in enumerate(value):
            yield from _people(item, (*path, index), people)
    elif not isinstance(value, str | float | int | None):
        for field in fields(value):
            content = getattr(value, field.name)
            if field.name not in _PERSON_FIELDS:
                yield from _people(content, (*path, field.name), people)
            elif isinstance(content, str):
                yield from people.lookup(content, (*path, field.name))


def _drop(drop: Drop, path: Path, project: Project, lists: dict[str, Identifiers]) -> _Problems:
    yield from lists["roof"].lookup(drop.roof, (*path, "roof"))
    for index, roof in enumerate(project.site.roofs):
        if roof.id == drop.roof:
            edges = _edges(roof, ("site", "roofs", index))
            yield from edges.lookup(drop.edge, (*path, "edge"))
            break
    if drop.rig is not None:
        yield from lists["drop"].lookup(drop.rig.moved_from, (*path, "rig", "moved_from"))
        yield from _rig(drop.rig, (*path, "rig"), lists)


def _rig(rig: Rig, path: Path, lists: dict[str, Identifiers]) -> _Problems:
    own_points = [((*path, "suspension_points"), rig.suspension_points)]
    points = identifiers("suspension point", "suspension points of the rig", own_points)
    tiebacks = [
        ((*path, "suspension_points", index, "tiebacks"), point.tied)
        for index, point in enumerate(rig.suspension_points)
    ]
    lifelines = [((*path, "lifelines"), rig.lines)]
    yield from points.doubled()
    yield from identifiers("tieback", "tiebacks", tiebacks).doubled()
    yield from identifiers("lifeline", "lifelines", lifelines).doubled()
    for index, point in enumerate(rig.suspension_points):
        yield from _point(point, (*path, "suspension_points", index), lists)
    for index, hung in enumerate(rig.stages):
        yield from lists["stage"].lookup(hung.stage, (*path, "stages", index, "stage"))
        for position, name in enumerate(hung.from_points):
            yield from points.lookup(name, (*path, "stages", index, "from_points", position))
    for index, line in enumerate(rig.lines):
        yield from lists["anchor"].lookup(line.anchor, (*path, "lifelines", index, "anchor"))
        for kind in ("rope", "termination", "lanyard"):
            place = (*path, "lifelines", index, kind)
            yield from lists[kind].lookup(getattr(line, kind), place)


def _point(point: SuspensionPoint, path: Path, lists: dict[str, Identifiers]) -> _Problems:
    for kind in ("hoist", "rope", "termination"):
        yield from lists[kind].lookup(getattr(point, kind), (*path, kind))
    beam = point.counterweighted_beam
    if beam is not None:
        beam_path = (*path, "counterweighted_beam")
        yield from lists["beam"].lookup(beam.beam, (*beam_path, "beam"))
        for index, group in enumerate(beam.stack.groups):
            group_path = (*beam_path, "stack", "groups", index, "piece")
            yield from lists["piece"].lookup(group.piece, group_path)
        joints = [((*beam_path, "splices"), beam.splices)]
        yield from identifiers("splice", "splices of the beam", joints).doubled()
    for index, fitted in enumerate(point.connectors or ()):
        place = (*path, "connectors", index, "connector")
        yield from lists["connector"].lookup(fitted.connector, place)
    for index, tieback in enumerate(point.tied):
        for kind in ("anchor", "rope", "termination"):
            place = (*path, "tiebacks", index, kind)
            yield from lists[kind].lookup(getattr(tieback, kind), place)


def _edge_of(drop: Drop, project: Project) -> Edge | None:
    roof = next((roof for roof in project.site.roofs if roof.id == drop.roof), None)
    edges = roof.edges if roof is not None else ()
    return next((edge for edge in edges if edge.id == drop.edge), None)


def _length(edge: Edge) -> Length:
    across, up = edge.end[0] - edge.start[0], edge.end[1] - edge.start[1]
    return root(across * across + up * up)


def _outside(drop: Drop, path: Path, edge: Edge, project: Project) -> _Problems:
    """Problems of a drop with its edge, where both are known."""
    length = _length(edge)
    wanted = f"within edge {edge.id}, which is {display(length, LENGTH, project.units)} long"
    if drop.start < -_SLACK:
        found = f"a drop that starts {display(-drop.start, LENGTH, project.units)} before its edge"
        yield ReferenceProblem((*path, "start"), found, f"a drop {wanted}")
    end = drop.start + drop.width.value
    if end > length + _SLACK:
        found = f"a drop that ends at {display(end, LENGTH, project.units)}"
        yield ReferenceProblem((*path, "width"), found, f"a drop {wanted}")
    if drop.rig is None:
        return
    stations = [
        *(
            ("suspension_points", index, point.station)
            for index, point in enumerate(drop.rig.suspension_points)
        ),
        *(("lifelines", index, line.station) for index, line in enumerate(drop.rig.lines)),
    ]
    for kind, index, station in stations:
        if station is not None and not -_SLACK <= station <= length + _SLACK:
            at = display(station, LENGTH, project.units)
            station_path = (*path, "rig", kind, index, "station")
            yield ReferenceProblem(station_path, f"a station at {at}", f"a station {wanted}")
