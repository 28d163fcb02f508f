"""A drop's rig as the plan shows it: every value planned, every observation left blank."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from django.http import HttpRequest, HttpResponse

from backspan.core.ledger import bodies
from backspan.core.model.evidence import Evidence
from backspan.core.model.project import Project
from backspan.core.model.rigs import Drop, Rig, SuspensionPoint
from backspan.core.quantities import LENGTH, display
from backspan.exchange.written import part_data
from backspan.web.asking import Ask, ProblemsError, filled_in, part, said
from backspan.web.describing import describe, form_page, statement, the_project
from backspan.web.pages.common import go_on, named_of, refuse_unseen, state_of, the_drop
from backspan.web.pages.point_righting import point_as_asked, point_put_right
from backspan.web.pages.rig_asked import (
    copied,
    joints_named,
    line_kit,
    lines_as_said,
    of_point,
    of_rig,
    said_of_rig,
    was_looked_at,
)
from backspan.web.righting import as_it_stands

_SEEN = (
    "Its mark: found {}, which somebody looked at already, expected another; what is found there is"
    " stated on the page of the drop"
)


def rig(request: HttpRequest, name: str) -> HttpResponse:
    """The rig of a drop: its stage and lines, its points, each as the plan shows it."""
    project, state = the_project(request), state_of(request)
    drop = the_drop(state, name)
    asks = of_rig(project, drop)
    if drop.rig is not None:
        asks = filled_in(asks, said_of_rig(project, drop.rig), project.units)

    def act(sent: tuple[Ask, ...]) -> HttpResponse:
        refuse_unseen(request, state, name)
        new = _rig_from(request, project, drop, sent)
        describe(request, [bodies.RigSetUp(name, new)])
        return (
            go_on("set-up-point", name) if not new.suspension_points else go_on("set-up-rig", name)
        )

    points = () if drop.rig is None else drop.rig.suspension_points
    rows = [
        {"point": one, "station": display(one.station, LENGTH, project.units)} for one in points
    ]
    others = [] if drop.rig is not None else [one for one in project.drops if one.rig is not None]
    return form_page(request, "set_up/rig.html", asks, act, drop=drop, points=rows, others=others)


def point(request: HttpRequest, name: str) -> HttpResponse:
    """One suspension point: the first from the plan, the others copied from it."""
    project, state = the_project(request), state_of(request)
    drop = the_drop(state, name)
    of = Rig() if drop.rig is None else drop.rig
    like = next((one for one in of.suspension_points if one.id == request.GET.get("like")), None)
    asks = of_point(project, drop, of)
    stands = named_of(request, of.suspension_points)
    if stands is not None:
        asks = as_it_stands(asks[1:], point_as_asked(stands), project.units)
    elif like is not None:
        asks = filled_in(asks, copied(like, drop, project), project.units)
    else:
        asks = tuple(replace(one, value="L") if one.name == "id" else one for one in asks)

    def act(sent: tuple[Ask, ...]) -> HttpResponse:
        refuse_unseen(request, state, name)
        if stands is None:
            new = _point_from(request, project, sent)
        else:
            data = point_put_right(stands, sent, _by_the_plan(request, project), project.units)
            new = part(SuspensionPoint, data, sent)
        before = next((one for one in of.suspension_points if one.id == new.id), None)
        if before is not None and was_looked_at(part_data(before)):
            raise ProblemsError([_SEEN.format(new.id)])
        others = [one for one in of.suspension_points if one.id != new.id]
        taken_off = stands is not None and request.POST.get("does") == "take off"
        describe(
            request,
            [bodies.RigSetUp(name, _with_points(of, others if taken_off else (*others, new)))],
        )
        return go_on("set-up-rig", name)

    seen = stands is not None and was_looked_at(part_data(stands))
    return form_page(
        request, "set_up/point.html", asks, act, drop=drop, like=like, of=stands, seen=seen
    )


def _with_points(of: Rig, points: Iterable[SuspensionPoint]) -> Rig:
    """The rig with these points, its one stage hung from all of them."""
    along = tuple(sorted(points, key=lambda one: one.station))
    hung = of.stages
    if len(hung) == 1:
        hung = (replace(hung[0], from_points=tuple(one.id for one in along)),)
    return replace(of, suspension_points=along, stages=hung)


def _rig_from(request: HttpRequest, project: Project, drop: Drop, sent: tuple[Ask, ...]) -> Rig:
    """The rig that was written, with the points and the lines that are there already."""
    there = Rig() if drop.rig is None else drop.rig
    named = {one.name: one for one in sent}
    made_of = line_kit(sent)
    from_anchors, known = named["lines"].values, {one.anchor for one in there.lines}
    lines = [{"id": one, "anchor": one, **made_of} for one in from_anchors if one not in known]
    points = [one.id for one in there.suspension_points]
    stage = named["stage"].value
    data = said([named["riders"]], statement(request))
    same = there.stages[:1] if stage and stage in {one.stage for one in there.stages[:1]} else ()
    hung = tuple(replace(one, from_points=tuple(points)) for one in same)
    if stage and not same:
        data["stages"] = [{"stage": stage, "from_points": points}]
    if lines:
        data["lifelines"] = lines
    new = part(Rig, data, sent)
    # Of a line that ends on no anchor of the roof nothing is asked here: it stays.
    ends = {None, *from_anchors}
    kept = (one for one in lines_as_said(project, there, sent) if one.anchor in ends)
    lifelines = (*kept, *new.lines)
    seen = there.riders is not None and there.riders.evidence is not Evidence.DRAWING
    return replace(
        there,
        stages=(*hung, *new.stages, *there.stages[1:]),
        riders=there.riders if seen else new.riders,
        lifelines=lifelines or None,
    )


def _point_from(request: HttpRequest, project: Project, sent: tuple[Ask, ...]) -> SuspensionPoint:
    data = said(sent, _by_the_plan(request, project))
    if "connectors" in data:
        data["connectors"] = [{"connector": one} for one in data["connectors"]]
    joints_named(data)
    ties = data.get("tiebacks")
    if ties and ties[0].get("anchor"):
        ties[0]["id"] = f"TB-{data.get('id', '')}"
    else:
        data.pop("tiebacks", None)
    return part(SuspensionPoint, data, sent)


def _by_the_plan(request: HttpRequest, project: Project) -> dict[str, str]:
    """Who states what the plan shows, when, and on which drawing."""
    paper = "" if project.plan is None else project.plan.drawing or ""
    return {**statement(request), **({"document": paper} if paper else {})}
