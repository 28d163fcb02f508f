"""A thing of the plan moved: by lengths that were typed, or as far as a pointer pulled it.

Pulled along the edge, a suspension point moves with all that hangs on it; pulled across the edge,
it is the part that was taken hold of: the line changes the reach, the stack the backspan, the
fulcrum its setback.
"""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from backspan.core.drafting import DraftError, snapped, stepped
from backspan.core.drafting.acting import Act, drop_of, edge_of, one_of, point_of, rig_of, roof_of
from backspan.core.drafting.building import MoveCorner, MoveEdge
from backspan.core.drafting.rigging import LeadLifeline, Measure, MoveBeam, MoveDrop, MovePoint
from backspan.core.drafting.standing import MoveAnchor, MoveObstacle
from backspan.core.model.rigs import CounterweightedBeam
from backspan.core.model.site import Edge, Point
from backspan.core.model.walked import along_and_back, on_plan
from backspan.core.quantities import Length
from backspan.web.plan.said import Said, metres


def move(said: Said) -> Act:
    """The act by which a thing moves. Raises DraftError for one that does not."""
    match said.path:
        case ("site", "roofs", roof, "anchors", anchor):
            stood = one_of(roof_of(said.project, roof).anchors, anchor, "anchor").at
            return MoveAnchor(roof, anchor, _nudged(said, stood) or said.place())
        case ("site", "roofs", roof, "obstacles", obstacle):
            return MoveObstacle(roof, obstacle, _shift(said))
        case ("site", "roofs", roof, "outline", number) if number.isdigit():
            corners = roof_of(said.project, roof).outline
            stood = corners[int(number)] if int(number) < len(corners) else (0.0, 0.0)
            return MoveCorner(roof, int(number), _nudged(said, stood) or said.place())
        case ("site", "roofs", roof, "edges", edge, *_):
            return MoveEdge(roof, edge, _out(said, roof, edge))
        case ("drops", drop):
            return MoveDrop(drop, _along(said, drop, "start"))
        case ("drops", drop, "rig", "suspension_points", point, *rest):
            return _move_point(said, drop, point, rest)
        case ("drops", drop, "rig", "lifelines", line):
            _, rig = rig_of(said.project, drop)
            anchor = one_of(rig.lines, line, "lifeline").anchor
            return LeadLifeline(drop, line, anchor, _along(said, drop, "station"))
        case _:
            raise DraftError("found nothing that can be moved, expected a thing of the plan")


def _out(said: Said, roof: str, name: str) -> Length:
    """How far an edge was pulled outward, or that was typed."""
    if said.has("out"):
        return said.length("out", "Outward by")
    edge = edge_of(roof_of(said.project, roof), name)
    _, to_back = along_and_back(edge, said.pointed())
    _, from_back = along_and_back(edge, said.pointed("0"))
    return stepped(from_back - to_back, said.project.units)


def _nudged(said: Said, stood: Point) -> Point | None:
    """A place a step beside the one where a thing stood; None where no key nudged it."""
    if not said.has("dx", "dy"):
        return None
    return stood[0] + metres(said.form["dx"]), stood[1] + metres(said.form["dy"])


def _shift(said: Said) -> Point:
    """How far something was moved: from one place that was pointed at to another, or typed."""
    if said.has("x", "x0"):
        (x, y), (from_x, from_y) = said.pointed(), said.pointed("0")
        return stepped(x - from_x, said.project.units), stepped(y - from_y, said.project.units)
    return said.length("across", "Across the plan"), said.length("up", "Up the plan")


def edge_over(said: Said, drop: str) -> Edge:
    """The edge that a drop lies over. Raises DraftError where there is no such drop."""
    of = drop_of(said.project, drop)
    return edge_of(roof_of(said.project, of.roof), of.edge)


def _along(said: Said, drop: str, name: str) -> Length:
    """A place along a drop's edge: typed, or as far as a pointer moved from where it was."""
    if said.has(name):
        return said.length(name, "Along the edge")
    edge, (to_along, _), (from_along, _) = _pulled(said, drop)
    stood = _stood(said, drop)
    return along_on(said, drop, on_plan(edge, along=stood + to_along - from_along, back=0.0))


def along_on(said: Said, drop: str, at: Point) -> Length:
    """How far along a drop's edge a place lies, in whole steps of a tape."""
    edge = edge_over(said, drop)
    foot = on_plan(edge, along=along_and_back(edge, at)[0], back=0.0)
    found = snapped(said.roof, foot, within=said.near, style=said.project.units)
    return along_and_back(edge, found.at)[0]


def _pulled(said: Said, drop: str) -> tuple[Edge, Point, Point]:
    """The drop's edge, and where a pointer went to and came from: along it and back from it."""
    edge = edge_over(said, drop)
    return edge, along_and_back(edge, said.pointed()), along_and_back(edge, said.pointed("0"))


def _stood(said: Said, drop: str) -> Length:
    """Where along its edge the thing stood that is moved."""
    of = drop_of(said.project, drop)
    match said.path:
        case ("drops", _, "rig", "suspension_points", point, *_):
            return point_of(rig_of(said.project, drop)[1], point).station
        case ("drops", _, "rig", "lifelines", line):
            station = one_of(rig_of(said.project, drop)[1].lines, line, "lifeline").station
            return of.start if station is None else station
        case _:
            return of.start


def _move_point(said: Said, drop: str, point: str, part: list[str]) -> Act:
    """A point, or a part of its beam, by lengths that were typed or as far as it was pulled.

    Pulled along the edge, all of it moves; pulled across it, the part that was taken hold of.
    """
    for name, measure in _MEASURES.items():
        if said.has(name):
            return MoveBeam(drop, point, measure, said.length(name, str(measure)))
    if said.has("station"):
        return MovePoint(drop, point, said.length("station", "Along the edge"))
    _, (to_along, to_back), (from_along, from_back) = _pulled(said, drop)
    if abs(to_along - from_along) >= abs(to_back - from_back):
        return MovePoint(drop, point, _along(said, drop, "station"))
    inward = to_back - from_back
    measure, sign = _PULLED.get(tuple(part[1:]), (Measure.REACH, -1.0)) if part else _HUNG
    beam = point_of(rig_of(said.project, drop)[1], point).counterweighted_beam
    stated = None if beam is None else _stated(beam, measure)
    if stated is None:
        raise DraftError(f"found no {measure} of {drop}/{point} stated, expected it to be typed")
    return MoveBeam(drop, point, measure, stepped(stated + sign * inward, said.project.units))


def _stated(beam: CounterweightedBeam, measure: Measure) -> Length | None:
    """A length of a beam as it stands; None where nobody stated it."""
    setback = None if beam.fulcrum is None else beam.fulcrum.setback
    found = {
        Measure.REACH: beam.reach,
        Measure.BACKSPAN: beam.backspan,
        Measure.SETBACK: setback,
        Measure.TIP: beam.tip_beyond_line,
        Measure.REAR_STAND: beam.rear_stand,
    }[measure]
    return None if found is None else found.value


_HUNG = (Measure.REACH, -1.0)
#: What changes where a part of the support is pulled inward by so much.
_PULLED: Mapping[tuple[str, ...], tuple[Measure, float]] = MappingProxyType(
    {
        ("fulcrum",): (Measure.SETBACK, 1.0),
        ("stack",): (Measure.BACKSPAN, 1.0),
        ("rear",): (Measure.REAR_STAND, 1.0),
    }
)
_MEASURES: Mapping[str, Measure] = MappingProxyType(
    {
        "reach": Measure.REACH,
        "backspan": Measure.BACKSPAN,
        "setback": Measure.SETBACK,
        "tip": Measure.TIP,
        "rear": Measure.REAR_STAND,
    }
)
