"""What is asked of a rig and of its points, and what a second point takes over from the first."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator
from dataclasses import replace
from typing import Any

from backspan.core.model.evidence import Evidence
from backspan.core.model.project import Project
from backspan.core.model.rigs import Drop, Lifeline, Rig, SuspensionPoint
from backspan.core.model.site import AnchorUse
from backspan.core.model.units import UnitKind
from backspan.core.quantities import LENGTH, display, parse
from backspan.core.quantities.errors import QuantityError
from backspan.exchange.written import part_data
from backspan.web.asking import PLANNED, Ask, ProblemsError, ask
from backspan.web.pages.types import KINDS

_BEAM = "counterweighted_beam"
_OF_LINE = "line"
_PIECES = f"{_BEAM}.stack.groups.0"
#: What a plan shows of a point, and what is rarely on it; the rest somebody has to look at.
_SHOWN: tuple[tuple[str, str], ...] = (
    ("station", "Along the edge, from its left end"),
    (f"{_BEAM}.reach", "Reach"),
    (f"{_BEAM}.backspan", "Backspan"),
    (f"{_BEAM}.tip_beyond_line", "Beam beyond the line"),
    (f"{_BEAM}.rear_stand", "Fulcrum to rear stand"),
    (f"{_BEAM}.fulcrum.kind", "Fulcrum on"),
    (f"{_BEAM}.fulcrum.setback", "Fulcrum behind the face"),
    (f"{_BEAM}.fulcrum.height", "Fulcrum, its own height"),
    (f"{_PIECES}.count", "Pieces"),
    ("rope_length", "Rope, how long"),
)
_RARE: tuple[tuple[str, str], ...] = (
    (f"{_BEAM}.joined", "Beam of one piece or of sections"),
    (f"{_BEAM}.splices.0.from_tail", "Beam's joint, from its tail"),
    (f"{_BEAM}.splices.1.from_tail", "Beam's second joint, from its tail"),
    ("rope_mass", "Rope, its mass"),
    ("bottom_weight", "Weight at the rope's end"),
    (f"{_PIECES}.per_row", "Pieces beside one another"),
    (f"{_BEAM}.stack.groups.1.piece", "Pieces of a second kind, inside the first"),
    (f"{_BEAM}.stack.groups.1.count", "Second kind, how many"),
    (f"{_BEAM}.stack.groups.1.per_row", "Second kind, beside one another"),
    (f"{_BEAM}.stack.tail_gap", "Tail to the stack"),
    (f"{_BEAM}.fulcrum.plate_length", "Front plate, length"),
    (f"{_BEAM}.fulcrum.plate_width", "Front plate, width"),
    (f"{_BEAM}.fulcrum.surface_strength", "Front surface carries"),
    (f"{_BEAM}.rear.plate_length", "Rear plate, length"),
    (f"{_BEAM}.rear.plate_width", "Rear plate, width"),
    (f"{_BEAM}.rear.surface_strength", "Rear surface carries"),
    ("other_support.kind", "Another support in place of the beam"),
    ("other_support.reach", "Other support, its reach"),
    ("other_support.document", "Other support, the paper it rests on"),
)


def of_rig(project: Project, drop: Drop) -> tuple[Ask, ...]:
    """What is asked of a rig but its points."""
    return (
        Ask("stage", "Stage", words=things(project, "stage"), needed=True),
        *of_riders(project, drop),
        *_of_lines(project, drop.rig),
    )


def of_riders(project: Project, drop: Drop) -> tuple[Ask, ...]:
    """Who rides, from which anchors their lifelines hang, and what all of those are made of."""
    return (
        ask(Rig, "riders", "Most people on it at once", evidence=PLANNED),
        Ask(
            "lines",
            "Lifelines from anchor",
            words=anchors(project, drop, AnchorUse.FALL_ARREST),
            many=True,
        ),
        *(
            Ask(name, label, words=things(project, field), more=bool(drop.rig and drop.rig.lines))
            for (name, field), label in zip(LINE_KIT.items(), _OF_ALL, strict=True)
        ),
    )


#: What a form calls what lifelines are made of, and the field of a lifeline.
LINE_KIT = {"line-rope": "rope", "line-end": "termination", "line-lanyard": "lanyard"}
_OF_ALL = ("Rope of lifelines set up here", "Its end at the anchor", "Lanyard on each")
_OF_ONE = ("rope", "its end at the anchor", "lanyard")
#: Whose a line is, chosen for each by itself: no two riders share one.
_WHOSE = "worker"
#: Where a line passes the edge, by which it is judged how far aside of its anchor it hangs.
_OVER = "station"


def _of_lines(project: Project, there: Rig | None) -> Iterator[Ask]:
    """What each line there is made of, and whose: two riders need not wear the same lanyard."""
    for number, line in enumerate(() if there is None else there.lines):
        at = "" if line.anchor in {None, line.id} else f" from {line.anchor}"
        for field, label in zip(LINE_KIT.values(), _OF_ONE, strict=True):
            name, told = f"{_OF_LINE}.{number}.{field}", f"Lifeline {line.id}{at}: {label}"
            yield Ask(name, told, words=things(project, field), value=getattr(line, field) or "")
        name, told = f"{_OF_LINE}.{number}.{_OVER}", f"Lifeline {line.id}{at}: over the edge at"
        yield Ask(name, told, like="such as 12 ft", dimension=LENGTH, value=_over(project, line))
        whose = f"Lifeline {line.id}{at}: whose it is"
        people = tuple((one.id, f"{one.name}, {one.role}") for one in project.people)
        yield Ask(f"{_OF_LINE}.{number}.{_WHOSE}", whose, words=people, value=line.worker or "")


def _over(project: Project, line: Lifeline) -> str:
    """Where a line passes the edge, as it is read."""
    return "" if line.station is None else display(line.station, LENGTH, project.units)


def lines_as_said(project: Project, there: Rig, sent: Iterable[Ask]) -> tuple[Lifeline, ...]:
    """The lines that are there, each made of what was chosen for it, where it hangs, and whose.

    Raises ProblemsError where a station is no length.
    """
    named = {one.name: one.value for one in sent}
    labels = {one.name: one.label for one in sent}

    def chosen(number: int, line: Lifeline, field: str) -> str | None:
        return named.get(f"{_OF_LINE}.{number}.{field}", getattr(line, field)) or None

    def station(number: int, line: Lifeline) -> float | None:
        name, known = f"{_OF_LINE}.{number}.{_OVER}", _over(project, line)
        told = named.get(name, known).strip()
        if told == known:
            return line.station
        try:
            return parse(told, LENGTH) if told else None
        except QuantityError as error:
            raise ProblemsError([f"{labels[name]}: {error}"]) from error

    return tuple(
        replace(
            line,
            station=station(number, line),
            rope=chosen(number, line, "rope"),
            termination=chosen(number, line, "termination"),
            lanyard=chosen(number, line, "lanyard"),
            worker=chosen(number, line, _WHOSE),
        )
        for number, line in enumerate(there.lines)
    )


def line_kit(sent: Iterable[Ask]) -> dict[str, str]:
    """What was chosen of that, by the field of a lifeline."""
    return {LINE_KIT[one.name]: one.value for one in sent if one.name in LINE_KIT and one.value}


def kit_of_lines(there: Rig) -> dict[str, str]:
    """What the lifelines of a rig are made of, as the form calls it: as the first that says."""
    found = {
        name: next((one for line in there.lines if (one := getattr(line, field))), "")
        for name, field in LINE_KIT.items()
    }
    return {name: one for name, one in found.items() if one}


def said_of_rig(project: Project, there: Rig) -> dict[str, Any]:
    """What a rig says of that already."""
    lines = there.lines
    data: dict[str, Any] = {"lines": [one.anchor for one in lines]}
    data["stage"] = there.stages[0].stage if there.stages else ""
    data |= kit_of_lines(there)
    fields = (*LINE_KIT.values(), _WHOSE)
    data[_OF_LINE] = [
        {_OVER: _over(project, one), **{field: getattr(one, field) for field in fields}}
        for one in lines
    ]
    return {**data, **{k: v for k, v in part_data(there).items() if k == "riders"}}


def of_point(project: Project, drop: Drop, of: Rig) -> tuple[Ask, ...]:
    """What is asked of a point: what the plan shows of it, and with which things."""
    cls = SuspensionPoint
    connectors = tuple((one.id, one.name) for one in project.kit.connectors)
    ends = tuple((one.id, one.name) for one in project.kit.terminations)
    shown = [ask(cls, name, label, evidence=PLANNED, needed=False) for name, label in _SHOWN]
    pieces = things(project, "piece")
    chosen = {f"{_BEAM}.stack.groups.1.piece": {"words": pieces}}
    return (
        ask(cls, "id", "Its mark", like="such as L or R"),
        shown[0],
        ask(cls, "hoist", "Hoist", words=things(project, "hoist", of)),
        ask(cls, "rope", "Suspension rope", words=things(project, "rope", of)),
        ask(cls, "termination", "Its end", words=ends),
        Ask("connectors", "Between rope and beam", words=connectors, many=True),
        ask(cls, f"{_BEAM}.beam", "Beam", words=things(project, "beam", of), needed=False),
        *shown[1:8],
        ask(cls, f"{_PIECES}.piece", "Pieces of", words=pieces, needed=False),
        *shown[8:],
        Ask(
            "tiebacks.0.anchor",
            "Tieback to anchor",
            words=anchors(project, drop, AnchorUse.TIEBACK),
        ),
        Ask("tiebacks.0.rope", "Tieback rope", words=things(project, "rope")),
        Ask("tiebacks.0.termination", "Its end", words=ends, more=True),
        *(
            ask(cls, name, label, evidence=PLANNED, needed=False, more=True, **chosen.get(name, {}))
            for name, label in _RARE
        ),
    )


def copied(like: SuspensionPoint, drop: Drop, project: Project) -> dict[str, Any]:
    """What another point of the rig takes over: its plan, and the next things of the same kinds.

    The second hangs as far from the right end of the drop as the first from the left. Its anchor is
    left blank, and nothing that was seen of the first is in the form at all.
    """
    data: dict[str, Any] = planned(part_data(like))
    mirrored = drop.start + drop.start + drop.width.value - like.station
    alone = drop.rig is None or len(drop.rig.suspension_points) == 1
    data["station"] = display(mirrored, LENGTH, project.units) if alone else ""
    data["id"] = "R" if like.id == "L" else f"{like.id}-2"
    data["connectors"] = [one.connector for one in like.connectors or ()]
    taken = set(used(drop.rig))
    beam = data.get(_BEAM)
    for record, name, kind in (
        (data, "hoist", "hoist"),
        (data, "rope", "rope"),
        (beam, "beam", "beam"),
    ):
        if isinstance(record, dict) and record.get(name):
            record[name] = _next(project, kind, str(record[name]), taken)
    for tie in data.get("tiebacks", []):
        tie.pop("anchor", None)
    return data


def joints_named(data: dict[str, Any]) -> None:
    """Give each joint of a point's beam a mark; what nothing is said of is no joint."""
    beam = data.get(_BEAM)
    if isinstance(beam, dict) and "splices" in beam:
        told = [one for one in beam["splices"] if set(one) - {"id"}]
        beam["splices"] = [{"id": f"J{number}", **one} for number, one in enumerate(told, start=1)]


def planned(data: Any) -> Any:
    """What a record says by the plan alone: what was found on the roof is left out of it."""
    if isinstance(data, list):
        return [planned(one) for one in data]
    if not isinstance(data, dict):
        return data
    kept = {name: planned(value) for name, value in data.items() if not _only_found(value)}
    if "planned" in kept and "value" in kept:
        kept = {"value": kept["planned"], "evidence": str(Evidence.DRAWING)}
    return kept


def was_looked_at(data: Any) -> bool:
    """Whether anything in a record was stated otherwise than by the plan."""
    if isinstance(data, list):
        return any(map(was_looked_at, data))
    if not isinstance(data, dict):
        return False
    if "value" in data:
        return bool(data.get("evidence") != Evidence.DRAWING or "planned" in data)
    return any(map(was_looked_at, data.values()))


def _only_found(value: Any) -> bool:
    return (
        isinstance(value, dict)
        and "value" in value
        and value.get("evidence") != Evidence.DRAWING
        and "planned" not in value
    )


def _next(project: Project, kind: str, name: str, taken: set[str]) -> str:
    """The next thing of the same type that hangs nowhere in the rig; the type itself, if named."""
    unit = project.kit.unit(UnitKind(kind), name)
    if unit is None:
        return name
    free = (one.id for one in project.kit.units if one.of == unit.of and one.id not in taken)
    return next(free, "")


def used(of: Rig | None) -> Iterator[str]:
    """The things that hang in a rig."""
    for one in () if of is None else of.suspension_points:
        yield one.hoist
        if one.rope is not None:
            yield one.rope
        if one.counterweighted_beam is not None:
            yield one.counterweighted_beam.beam


def things(project: Project, kind: str, of: Rig | None = None) -> tuple[tuple[str, str], ...]:
    """The things of a kind by tag, then its types, for a thing whose tag nobody read."""
    types = {one.id: one.name for one in getattr(project.kit, KINDS[kind][0])}
    if kind not in set(UnitKind):
        return tuple(types.items())
    taken = set(used(of))
    here = dict.fromkeys(taken, ", in this rig")
    units = [
        (one.id, f"{one.id}, {types.get(one.of, one.of)}{here.get(one.id, '')}")
        for one in project.kit.units
        if one.kind == kind
    ]
    return (*units, *((one, f"{name}, tag not known") for one, name in types.items()))


def anchors(project: Project, drop: Drop, use: AnchorUse) -> tuple[tuple[str, str], ...]:
    """Every anchor of the site as a choice: those for this use first, the nearest before others.

    An anchor of another use, or of another roof, can be chosen too: what hangs there is stated as
    it is, and the review says what of it does not do.
    """
    edges = {edge.id: edge for roof in project.site.roofs for edge in roof.edges}
    edge, middle = edges[drop.edge], drop.start + drop.width.value / 2
    long = math.dist(edge.start, edge.end)
    share = middle / long if long else 0.0
    start, end = edge.start, edge.end
    spot = tuple(one + (other - one) * share for one, other in zip(start, end, strict=True))
    found = [
        (roof.id != drop.roof, use not in one.uses, math.dist(one.at, spot), one)
        for roof in project.site.roofs
        for one in roof.anchors
    ]
    return tuple(
        (one.id, f"{one.id}, {one.kind}" + (f" ({', '.join(one.uses)})" if one.uses else ""))
        for _, _, _, one in sorted(found, key=lambda each: each[:3])
    )
