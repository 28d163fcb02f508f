"""Same rig as another drop: its equipment comes along, its new place stays blank."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from django.http import HttpRequest, HttpResponse

from backspan.core.ledger import bodies
from backspan.core.model.project import Project
from backspan.core.model.rigs import Drop, Rig, SuspensionPoint
from backspan.core.model.site import AnchorUse
from backspan.exchange.parse import ProjectError
from backspan.exchange.same_rig import point_moved, same_rig
from backspan.exchange.written import part_data
from backspan.web.asking import PLANNED, Ask, ProblemsError, ask, filled_in, said, told
from backspan.web.describing import describe, form_page, statement, the_project
from backspan.web.pages.common import FormError, go_on, refuse_unseen, state_of, the_drop
from backspan.web.pages.rig_asked import (
    LINE_KIT,
    anchors,
    kit_of_lines,
    line_kit,
    of_riders,
    planned,
)

_BEAM = "counterweighted_beam"
_PLANNED = (
    (f"{_BEAM}.reach", "reach"),
    (f"{_BEAM}.backspan", "backspan"),
    (f"{_BEAM}.tip_beyond_line", "beam beyond the line"),
    (f"{_BEAM}.rear_stand", "fulcrum to rear stand"),
    (f"{_BEAM}.fulcrum.setback", "fulcrum behind the face"),
    (f"{_BEAM}.fulcrum.plate_length", "front plate, length"),
    (f"{_BEAM}.fulcrum.plate_width", "front plate, width"),
    (f"{_BEAM}.rear.plate_length", "rear plate, length"),
    (f"{_BEAM}.rear.plate_width", "rear plate, width"),
)


def page(request: HttpRequest, name: str, source: str) -> HttpResponse:
    """Set up at a drop the rig that hung at another one, which is then no longer there."""
    project, state = the_project(request), state_of(request)
    drop, before = the_drop(state, name), the_drop(state, source)
    if before.rig is None or drop.rig is not None:
        found = f"drop {source} without a rig" if before.rig is None else f"drop {name} with a rig"
        raise FormError(f"found {found}, expected a rig at {source} and none at {name}")
    rig = before.rig

    def act(sent: tuple[Ask, ...]) -> HttpResponse:
        refuse_unseen(request, state, name)
        refuse_unseen(request, state, source)
        moved = _moved(request, project, (drop, before, rig), sent)
        describe(request, [bodies.RigMoved(source, name), bodies.RigSetUp(name, moved)])
        return go_on("drop", name)

    asks = tuple(_asks(project, drop, rig))
    as_there = request.GET.get("plan") == "same"
    if as_there:
        asks = filled_in(asks, _plan_of(rig), project.units)
    return form_page(
        request, "set_up/same_rig.html", asks, act, drop=drop, source=before, as_there=as_there
    )


def _plan_of(rig: Rig) -> dict[str, Any]:
    """What the plan shows of a rig at the drop it leaves, but where it hangs and on which anchors.

    Nothing that was found there, and nothing of the roof under it: a form is filled with it, and
    whoever sends that says that the plan shows the same at the new drop.
    """
    data: dict[str, Any] = planned(part_data(rig)) | kit_of_lines(rig)
    data.pop("lifelines", None)
    for one in data.get("suspension_points", []):
        for name in ("station", "tiebacks"):
            one.pop(name, None)
    return data


def _asks(project: Project, drop: Drop, rig: Rig) -> list[Ask]:
    found = list(filled_in(of_riders(project, drop), kit_of_lines(rig), project.units))
    for number, one in enumerate(rig.suspension_points):
        found.extend(_of_point(project, drop, one, f"suspension_points.{number}"))
    return found


def _of_point(project: Project, drop: Drop, one: SuspensionPoint, at: str) -> list[Ask]:
    def asked(name: str, label: str, **more: Any) -> Ask:
        told = f"Point {one.id}: {label}"
        return ask(Rig, f"{at}.{name}", told, evidence=PLANNED, needed=False, **more)

    station = asked("station", "along the edge")
    asks = [
        replace(station, like="left blank, as far from the drop's left end as before"),
        *(
            Ask(
                f"{at}.tiebacks.{index}.anchor",
                f"Point {one.id}: tieback {tie.id} to anchor",
                words=anchors(project, drop, AnchorUse.TIEBACK),
            )
            for index, tie in enumerate(one.tied)
        ),
    ]
    beam = one.counterweighted_beam
    if beam is None:
        return asks
    pieces = [
        asked(f"{_BEAM}.stack.groups.{index}.count", f"pieces of {group.piece}")
        for index, group in enumerate(beam.stack.groups)
    ]
    return [*asks, *pieces, *(asked(name, label, more=True) for name, label in _PLANNED)]


def _moved(
    request: HttpRequest,
    project: Project,
    drops: tuple[Drop, Drop, Rig],
    sent: tuple[Ask, ...],
) -> Rig:
    drop, before, rig = drops
    named = {one.name: one for one in sent}
    by = statement(request)
    if project.plan is not None and project.plan.drawing is not None:
        by["document"] = project.plan.drawing
    own = {"lines", *LINE_KIT}
    data = said([one for one in sent if one.name not in own and "." not in one.name], by)
    # Which points were written of; a point without a word of its own is at its place all the same.
    places = _by_number(sent, by)
    data["suspension_points"] = [
        point_moved(one, places.get(number, {}), by=drop.start - before.start)
        for number, one in enumerate(rig.suspension_points)
    ]
    made_of = line_kit(sent)
    if named["lines"].values:
        # The crew goes along with its rig: the lines there are theirs, in their order.
        crew = dict(enumerate({"worker": one.worker} for one in rig.lines if one.worker))
        data["lifelines"] = [
            {"id": one, "anchor": one, **made_of, **crew.get(number, {})}
            for number, one in enumerate(named["lines"].values)
        ]
    try:
        found = same_rig(project, drop.id, data, source=before.id)
    except ProjectError as error:
        asks = [replace(one, name=_as_told(one.name, rig)) for one in sent]
        raise ProblemsError(told(error, asks)) from error
    return found.rig or Rig()


def _as_told(name: str, rig: Rig) -> str:
    """The name of a question as the path of a problem has it: a point by its id."""
    around, _, rest = name.partition(".")
    number, _, inner = rest.partition(".")
    if around != "suspension_points":
        return f"rig.{name}"
    return f"rig.{around}.{rig.suspension_points[int(number)].id}.{inner}"


def _by_number(sent: tuple[Ask, ...], by: dict[str, str]) -> dict[int, dict[str, Any]]:
    """What was written of each point, by its number in the rig."""
    found: dict[int, list[Ask]] = {}
    for one in sent:
        around, _, rest = one.name.partition(".")
        number, _, name = rest.partition(".")
        if around == "suspension_points":
            found.setdefault(int(number), []).append(replace(one, name=name))
    return {number: said(asks, by) for number, asks in found.items()}
