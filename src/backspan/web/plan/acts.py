"""What a hand means on the roof plan: from what a form said to an act."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from types import MappingProxyType

from backspan.core.drafting import DraftError, distance, seen_from, snapped, squared
from backspan.core.drafting.acting import Act, drop_of, edge_of, one_of, point_of, rig_of, roof_of
from backspan.core.drafting.building import AddCorner, DrawRoof, RaiseParapet
from backspan.core.drafting.rigging import (
    CarryRig,
    LeadLifeline,
    LeadTieback,
    PlaceDrop,
    PlacePoint,
)
from backspan.core.drafting.standing import PlaceAnchor, PlaceObstacle, TakeObstacle
from backspan.core.errors import quoted
from backspan.core.model.site import Edge, Point
from backspan.core.model.walked import along_and_back, edge_length, on_plan
from backspan.core.quantities import Length
from backspan.web.plan.moving import along_on, edge_over, move
from backspan.web.plan.said import Said, metres, next_anchor, next_drop, next_mark


def meant(said: Said) -> Act:
    """The act that a form means. Raises DraftError where it means none."""
    verb = said.form.get("verb", "")
    found = _VERBS.get(verb)
    if found is None:
        raise DraftError(f"found {quoted(verb)}, expected one of: {', '.join(_VERBS)}")
    return found(said)


def _place_anchor(said: Said) -> Act:
    mark = said.form.get("mark", "").strip() or next_anchor(said.project)
    kind = said.form.get("kind", "").strip()
    return PlaceAnchor(said.roof.id, mark, said.place(), kind)


def _place_obstacle(said: Said) -> Act:
    name = said.form.get("name", "").strip() or "obstacle"
    mark = next_mark((one.id for one in said.roof.obstacles), "O1")
    if said.has("x", "x2"):
        return PlaceObstacle(said.roof.id, mark, name, _box(said, said.place(), said.place("2")))
    edge = edge_of(said.roof, said.text("edge", "Seen from edge"))
    along, end = said.length("along", "Begins along it"), said.length("along-end", "Ends along it")
    near, far = said.length("back", "Its near side"), said.length("back-end", "Its far side")
    corners = ((along, near), (end, near), (end, far), (along, far))
    places = tuple(on_plan(edge, along=one, back=back) for one, back in corners)
    return PlaceObstacle(said.roof.id, mark, name, places)


def _box(said: Said, one: Point, other: Point) -> tuple[Point, ...]:
    """The rectangle along the edge that is nearest, between two corners that lie across."""
    seen = seen_from(said.roof, one)
    if not seen:
        (x, y), (u, v) = one, other
        return ((x, y), (u, y), (u, v), (x, v))
    edge = edge_of(said.roof, seen[0].edge)
    (a, b), (c, d) = along_and_back(edge, one), along_and_back(edge, other)
    corners = ((a, b), (c, b), (c, d), (a, d))
    return tuple(on_plan(edge, along=along, back=back) for along, back in corners)


def _take_obstacle(said: Said) -> Act:
    return TakeObstacle(said.roof.id, said.path[-1] if said.path else "")


def _place_drop(said: Said) -> Act:
    on_roof = [one for one in said.project.drops if one.roof == said.roof.id]
    if said.has("x", "y"):
        edge, start = _beside(said, said.pointed())
    else:
        edge = edge_of(said.roof, said.text("edge", "Over edge"))
        start = said.length("along", "Begins along it")
    if said.has("width"):
        width = said.length("width", "How wide")
    elif on_roof:
        width = on_roof[-1].width.value
    else:
        raise DraftError("How wide: found nothing, expected it for the first drop of a roof")
    for one in on_roof:
        end = one.start + one.width.value
        if one.edge == edge.id and abs(end - start) <= said.near:
            start = end
    mark = said.form.get("mark", "").strip() or next_drop(said.project, edge.id)
    return PlaceDrop(mark, said.roof.id, edge.id, start, width)


def _beside(said: Said, at: Point) -> tuple[Edge, Length]:
    """The edge that a pointer is nearest to, and how far along it, in whole steps of a tape."""

    def off(edge: Edge) -> Length:
        along, back = along_and_back(edge, at)
        beyond = max(-along, along - edge_length(edge), 0.0)
        return abs(back) + beyond

    if not said.roof.edges:
        raise DraftError(f"found no edge on {said.roof.name}, expected one for a drop to lie over")
    edge = min(said.roof.edges, key=off)
    along = along_and_back(edge, at)[0]
    found = snapped(
        said.roof, on_plan(edge, along=along, back=0.0), within=said.near, style=said.project.units
    )
    return edge, max(along_and_back(edge, found.at)[0], 0.0)


def _connect(said: Said) -> Act:
    """A line of a rig led to an anchor."""
    anchor = said.text("anchor", "To anchor")
    match said.path:
        case ("drops", drop, "rig", "suspension_points", point, "tiebacks", tieback):
            return LeadTieback(drop, point, tieback, anchor)
        case ("drops", drop, "rig", "suspension_points", point, *_):
            return LeadTieback(drop, point, _tie_of(said, drop, point), anchor)
        case ("drops", drop, "rig", "lifelines", line):
            of = one_of(rig_of(said.project, drop)[1].lines, line, "lifeline")
            station = of.station
            if station is None:
                station = said.length("station", "Over the edge at")
            return LeadLifeline(drop, line, anchor, station)
        case ("drops", drop):
            rig = rig_of(said.project, drop)[1]
            mark = next_mark((one.id for one in rig.lines), "LL1")
            return LeadLifeline(drop, mark, anchor, _over(said, drop, anchor))
        case _:
            raise DraftError(
                "found nothing that has a line, expected a point, a line or a drop of the plan"
            )


def _tie_of(said: Said, drop: str, point: str) -> str:
    """The only tieback of a point, else the mark of one more."""
    rig = rig_of(said.project, drop)[1]
    ties = point_of(rig, point).tied
    if len(ties) == 1:
        return ties[0].id
    return next_mark(
        (one.id for each in rig.suspension_points for one in each.tied), f"TB-{point}1"
    )


def _over(said: Said, drop: str, anchor: str) -> Length:
    """Where a lifeline passes the edge: as typed, else straight out from its anchor."""
    if said.has("station"):
        return said.length("station", "Over the edge at")
    roof = roof_of(said.project, drop_of(said.project, drop).roof)
    return along_and_back(edge_over(said, drop), one_of(roof.anchors, anchor, "anchor").at)[0]


def _place_point(said: Said) -> Act:
    of = said.path
    if len(of) < len(("drops", "S1")) or of[0] != "drops":
        raise DraftError("found no drop, expected one for the suspension point to be of")
    drop = drop_of(said.project, of[1])
    there = () if drop.rig is None else drop.rig.suspension_points
    mark = said.form.get("mark", "").strip() or ("L" if not there else "R")
    if said.has("x", "y"):
        station = along_on(said, drop.id, said.pointed())
    else:
        station = said.length("station", "Along the edge")
    return PlacePoint(
        drop.id, mark, station, said.text("hoist", "Hoist"), said.text("beam", "Beam")
    )


def _carry(said: Said) -> Act:
    if not said.path:
        raise DraftError("found no drop, expected one to carry a rig to")
    return CarryRig(said.path[-1], said.text("source", "The rig of"))


def _parapet(said: Said) -> Act:
    height, thickness = said.length("height", "Height"), said.length("thickness", "Thickness")
    return RaiseParapet(said.roof.id, _edge_meant(said).id, height, thickness)


def _edge_meant(said: Said) -> Edge:
    """The edge, or the parapet on it, that an act is about."""
    match said.path:
        case ("site", "roofs", _, "edges", name, *_):
            return edge_of(said.roof, name)
        case _:
            raise DraftError("found no edge, expected one of the roof")


def _corner(said: Said) -> Act:
    edge = _edge_meant(said)
    if said.has("x", "y"):
        along = along_and_back(edge, said.place())[0]
    else:
        along = said.length("along", "Along it")
    mark = next_mark((one.id for one in said.roof.edges), f"{edge.id}2")
    return AddCorner(said.roof.id, edge.id, along, mark)


def _draw(said: Said) -> Act:
    """A roof by its corners, as a pointer sends them: metres in pairs, `0,0 12.5,0 12.5,8`."""
    name = said.text("name", "What the roof is called")
    level = said.length("level", "Its height above the ground")
    pairs = said.form.get("corners", "").split()
    if len(pairs) > _MOST_CORNERS:
        raise DraftError(f"found {len(pairs)} corners, expected {_MOST_CORNERS} at most")
    corners = [one.partition(",") for one in pairs]
    places = [(metres(x), metres(y)) for x, _, y in corners]
    square = squared(places, within=said.near, style=said.project.units)
    return DrawRoof(said.roof.id, name, level, square)


_MOST_CORNERS = 200


_VERBS: Mapping[str, Callable[[Said], Act]] = MappingProxyType(
    {
        "draw roof": _draw,
        "place anchor": _place_anchor,
        "place obstacle": _place_obstacle,
        "place drop": _place_drop,
        "place point": _place_point,
        "move": move,
        "connect": _connect,
        "carry": _carry,
        "take away": _take_obstacle,
        "raise parapet": _parapet,
        "add corner": _corner,
    }
)


def measured(said: Said) -> tuple[Length, Point, Point]:
    """How far two places that were pointed at lie apart. Raises DraftError where one is none."""
    one, other = said.place(), said.place("2")
    return distance(one, other), one, other
