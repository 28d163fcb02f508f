"""What the roof plan tells of the thing that is pointed at: its values, its place, its history."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from typing import Any

from django.urls import reverse

from backspan.core.drafting import DraftError, seen_from
from backspan.core.drafting.acting import drop_of, edge_of, one_of, point_of, rig_of, roof_of
from backspan.core.ledger import bodies
from backspan.core.ledger.entry_lines import drops_of
from backspan.core.ledger.kinds import Body
from backspan.core.model.project import Project
from backspan.core.model.rigs import SuspensionPoint
from backspan.core.model.site import Point, Roof
from backspan.core.model.walked import edge_length, on_plan
from backspan.core.quantities import LENGTH, display
from backspan.drawings.rig_things import drop_thing, lifeline_thing
from backspan.drawings.site_things import anchor_thing, obstacle_thing
from backspan.drawings.things import Facts, path_text
from backspan.web.history import entries_about, history_of, is_about_anchor
from backspan.web.workbench import DayState

Path = tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Told:
    """A thing of the plan as its panel tells it; `kind` says which acts it has."""

    kind: str
    name: str
    path: Path
    rows: tuple[tuple[str, str], ...]
    page: str = ""
    thing: Any = None
    """The record of the model that it is, for the values of its forms."""

    @property
    def where(self) -> str:
        """Its path as forms carry it."""
        return path_text(self.path)


def told_of(project: Project, path: Path, roof_id: str) -> Told:
    """What is told of a thing of the site as drawn. Raises DraftError where it is not there."""
    match path:
        case ("site", "roofs", roof):
            return _roof(project, path, roof_of(project, roof))
        case ("site", "roofs", roof, "anchors", name):
            return _anchor(project, path, roof_of(project, roof), name)
        case ("site", "roofs", roof, "edges", name, *_):
            return _edge(project, path[:5], roof_of(project, roof), name)
        case ("site", "roofs", roof, "obstacles", name):
            one = one_of(roof_of(project, roof).obstacles, name, "obstacle")
            rows = _plain(obstacle_thing(roof, one, project.units).facts)
            page = reverse("set-up-obstacles", args=[roof]) + f"?of={name}"
            return Told("obstacle", f"{one.name} ({name})", path, rows, page, one)
        case ("site", "roofs", roof, "outline", number) if number.isdigit():
            return _corner(project, path, roof_of(project, roof), int(number))
        case ("drops", name, *rest):
            return _of_drop(project, path, name, rest)
        case _:
            raise DraftError(f"found nothing of roof {roof_id} at {path_text(path)!r}")


def history(state: DayState, told: Told) -> list[dict[str, Any]]:
    """The last entries about a thing, newest first; those of the site where it has no own."""
    return list(history_of(state, entries_about(state, _about(state, told))[-_FEW:]))


def things_of(project: Project, roof: Roof) -> Iterator[tuple[str, str]]:
    """Every thing on the plan of a roof: its path and its name, for who does not point."""
    base = ("site", "roofs", roof.id)
    yield path_text(base), f"roof {roof.name}"
    yield from ((path_text((*base, "edges", one.id)), f"edge {one.id}") for one in roof.edges)
    for number in range(len(roof.outline)):
        yield path_text((*base, "outline", str(number))), f"corner {number + 1}"
    for one in roof.obstacles:
        yield path_text((*base, "obstacles", one.id)), f"obstacle {one.id} {one.name}"
    yield from ((path_text((*base, "anchors", one.id)), f"anchor {one.id}") for one in roof.anchors)
    for drop in project.drops:
        if drop.roof != roof.id:
            continue
        yield path_text(("drops", drop.id)), f"drop {drop.id}"
        if drop.rig is None:
            continue
        rig = ("drops", drop.id, "rig")
        for point in drop.rig.suspension_points:
            at = (*rig, "suspension_points", point.id)
            yield path_text(at), f"{drop.id}/{point.id}"
            for tie in point.tied:
                yield path_text((*at, "tiebacks", tie.id)), f"{drop.id}/{point.id} tieback {tie.id}"
        for line in drop.rig.lines:
            yield path_text((*rig, "lifelines", line.id)), f"{drop.id} lifeline {line.id}"


def same_things(before: Project, after: Project, roof: str) -> bool:
    """Whether the plan of a roof has the very things in both, wherever they are now."""
    return _names(before, after, roof) == _names(after, before, roof)


def _names(project: Project, other: Project, roof: str) -> list[object]:
    """Names of all that is not the same record in another site: what is has the same names."""
    roofs = (one for one in project.site.roofs if one.id == roof)
    others = {*map(id, other.site.roofs), *map(id, other.drops)}
    found: list[object] = [
        (
            tuple(one.id for one in of.edges),
            tuple(one.id for one in of.anchors),
            tuple((one.id, one.name) for one in of.obstacles),
            (of.name, len(of.outline)),
        )
        for of in roofs
        if id(of) not in others
    ]
    for drop in project.drops:
        if drop.roof == roof and id(drop) not in others:
            points = () if drop.rig is None else drop.rig.suspension_points
            lines = () if drop.rig is None else drop.rig.lines
            ties = tuple((one.id, tuple(tie.id for tie in one.tied)) for one in points)
            found.append((drop.id, ties, tuple(one.id for one in lines)))
    return found


_FEW = 6


def _plain(facts: Facts) -> tuple[tuple[str, str], ...]:
    """Facts as people read them: without the exact numbers beside those that are printed."""
    return tuple(
        (name.replace("_", " "), value)
        for name, value in facts
        if not name.endswith(("_m", "_n", "_kg"))
    )


def _place(project: Project, roof: Roof, at: Point) -> tuple[tuple[str, str], ...]:
    """A place as it is taped: along and back from each edge it is seen from, two at most."""
    units = project.units
    seen = [
        (
            f"from edge {one.edge}",
            f"{display(one.along, LENGTH, units)} along, {display(one.back, LENGTH, units)} back",
        )
        for one in seen_from(roof, at)[:2]
    ]
    x, y = (display(one, LENGTH, units) for one in at)
    return (*seen, ("on the plan", f"{x} across, {y} up"))


def _roof(project: Project, path: Path, roof: Roof) -> Told:
    rows = (
        ("level", display(roof.level.value, LENGTH, project.units)),
        ("edges", str(len(roof.edges))),
        ("anchors", str(len(roof.anchors))),
        ("obstacles", str(len(roof.obstacles))),
    )
    return Told("roof", roof.name, path, rows, reverse("set-up-roof", args=[roof.id]), roof)


def _anchor(project: Project, path: Path, roof: Roof, name: str) -> Told:
    one = one_of(roof.anchors, name, "anchor")
    facts = _plain(anchor_thing(roof.id, one, project.units).facts)
    rows = (*_place(project, roof, one.at), *facts)
    return Told(
        "anchor", f"anchor {name}", path, rows, reverse("anchor", args=[roof.id, name]), one
    )


def _edge(project: Project, path: Path, roof: Roof, name: str) -> Told:
    one = edge_of(roof, name)
    rows = [("length", display(edge_length(one), LENGTH, project.units))]
    if one.faces:
        rows.append(("over", one.faces))
    if one.parapet is not None:
        for label in ("height", "thickness"):
            value = getattr(one.parapet, label).value
            rows.append((f"parapet {label}", display(value, LENGTH, project.units)))
    page = reverse("set-up-edge", args=[roof.id, name])
    return Told("edge", f"edge {name}", path, tuple(rows), page, one)


def _corner(project: Project, path: Path, roof: Roof, number: int) -> Told:
    if number >= len(roof.outline):
        raise DraftError(f"found no corner {number + 1} of {roof.name}")
    x, y = (display(one, LENGTH, project.units) for one in roof.outline[number])
    rows = (("on the plan", f"{x} across, {y} up"),)
    return Told("corner", f"corner {number + 1}", path, rows, thing={"x": x, "y": y})


def _of_drop(project: Project, path: Path, name: str, rest: list[str]) -> Told:
    drop = drop_of(project, name)
    match rest:
        case ["rig", "suspension_points", point, "tiebacks", tie]:
            of = point_of(rig_of(project, name)[1], point)
            one = one_of(of.tied, tie, "tieback")
            rows = tuple((label, text) for label, text in (("goes to", one.goes_to),) if text)
            label = f"{name}/{point} tieback {tie}"
            return Told("tieback", label, path, rows, reverse("drop", args=[name]), one)
        case ["rig", "suspension_points", point, *_]:
            of = point_of(rig_of(project, name)[1], point)
            rows = tuple(_of_point(project, of))
            return Told("point", f"{name}/{point}", path, rows, reverse("drop", args=[name]), of)
        case ["rig", "lifelines", line]:
            led = one_of(rig_of(project, name)[1].lines, line, "lifeline")
            rows = _plain(lifeline_thing(name, led, project.units).facts)
            label = f"{name} lifeline {line}"
            return Told("lifeline", label, path, rows, reverse("drop", args=[name]), led)
        case _:
            edge = edge_of(roof_of(project, drop.roof), drop.edge)
            middle = on_plan(edge, along=drop.start + drop.width.value / 2, back=0.0)
            rows = _plain(drop_thing(drop, None, project.units, at=middle).facts)
            page = reverse("drop", args=[name])
            return Told("drop", f"drop {name}", ("drops", name), rows, page, drop)


def _of_point(project: Project, of: SuspensionPoint) -> Iterator[tuple[str, str]]:
    """A suspension point with the lengths of its beam, each with how it is known."""
    yield "along the edge", display(of.station, LENGTH, project.units)
    yield "hoist", of.hoist
    beam = of.counterweighted_beam
    if beam is None:
        return
    yield "beam", beam.beam
    setback = None if beam.fulcrum is None else beam.fulcrum.setback
    lengths = (
        ("reach", beam.reach),
        ("backspan", beam.backspan),
        ("fulcrum behind the face", setback),
        ("beam beyond the line", beam.tip_beyond_line),
        ("fulcrum to rear stand", beam.rear_stand),
    )
    for label, value in lengths:
        if value is not None:
            seen = ", ".join(one for one in (value.evidence, value.by, value.at) if one)
            text = display(value.value, LENGTH, project.units)
            yield label, f"{text} ({seen or 'no evidence'})"
    if beam.stack.groups:
        counts = " + ".join(f"{one.count.value} of {one.piece}" for one in beam.stack.groups)
        yield "pieces", counts
    for tie in of.tied:
        yield f"tieback {tie.id}", f"to {tie.goes_to}" if tie.goes_to else "end not stated"


def _about(state: DayState, told: Told) -> Callable[[Body], bool]:
    match told.path:
        case ("site", "roofs", roof, "anchors", name):
            return is_about_anchor(state, roof, name)
        case ("drops", name, *_):
            return lambda body: name in drops_of(body) or getattr(body, "to", None) == name
        case _:
            return lambda body: isinstance(body, bodies.SiteDescribed)
