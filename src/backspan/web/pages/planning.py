"""The contractor's plan and the drops: who rigs what, on which drawing, for which days, where."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from django.http import HttpRequest, HttpResponse

from backspan.core.ledger import bodies
from backspan.core.model.plan import Plan
from backspan.core.model.project import Project
from backspan.core.model.rigs import Drop
from backspan.core.model.walked import edge_length
from backspan.core.numbers import surely_above
from backspan.core.quantities import LENGTH, display
from backspan.exchange.written import part_data
from backspan.web.asking import DRAWN, PLANNED, Ask, ProblemsError, ask, filled_in, part, said
from backspan.web.describing import describe, form_page, statement, the_project
from backspan.web.pages.common import go_on, named_of, state_of, the_drop
from backspan.web.pages.edges import edge_named, edges_of
from backspan.web.righting import as_it_stands, put_right


def plan(request: HttpRequest) -> HttpResponse:
    """The plan that the contractor handed in, or its next revision."""
    project = the_project(request)
    asks = _of_plan(project, project.plan)

    def act(sent: tuple[Ask, ...]) -> HttpResponse:
        describe(request, [bodies.PlanReceived(part(Plan, said(sent), sent))])
        return go_on("set-up-drops")

    return form_page(request, "set_up/plan.html", asks, act, plan=project.plan)


def plan_of_drop(request: HttpRequest, name: str) -> HttpResponse:
    """The plan of one drop, which goes before that of the whole work."""
    project = the_project(request)
    drop = the_drop(state_of(request), name)
    asks = _of_plan(project, drop.plan or project.plan)

    def act(sent: tuple[Ask, ...]) -> HttpResponse:
        describe(request, [bodies.PlanReceived(part(Plan, said(sent), sent), name)])
        return go_on("set-up-rig", name)

    return form_page(request, "set_up/plan.html", asks, act, plan=drop.plan, drop=drop)


def _of_plan(project: Project, there: Plan | None) -> tuple[Ask, ...]:
    people = tuple((one.id, f"{one.name}, {one.role}") for one in project.people)
    asks: tuple[Ask, ...] = (
        ask(Plan, "contractor", "Contractor who rigs"),
        ask(Plan, "designer", "Who designed it", words=people),
        ask(Plan, "drawing", "Drawing", like="such as SW-04"),
        ask(Plan, "revision", "Its revision"),
        ask(Plan, "begins", "Work begins on"),
        ask(Plan, "ends", "Work ends on"),
    )
    return asks if there is None else filled_in(asks, part_data(there), project.units)


def drops(request: HttpRequest) -> HttpResponse:
    """The drops there are, and one more."""
    project = the_project(request)
    rows = [
        {
            "drop": one,
            "start": display(one.start, LENGTH, project.units),
            "width": display(one.width.value, LENGTH, project.units),
            "points": () if one.rig is None else one.rig.suspension_points,
        }
        for one in project.drops
    ]
    rigged = any(one.rig is not None for one in project.drops)
    of = named_of(request, project.drops)
    asks = of_drop(project)
    like = named_of(request, project.drops, "like")
    if of is not None:
        asks = as_it_stands(asks[1:], _drop_data(of), project.units)
    elif like is not None:
        asks = filled_in(asks, _next_to(like, project), project.units)

    def act(sent: tuple[Ask, ...]) -> HttpResponse:
        if of is not None:
            data = put_right(sent, _drop_data(of), statement(request), project.units)
            describe(request, [bodies.DropDescribed(_drop_from(data, sent, []))])
            return go_on("set-up-drops")
        drop = new_drop(request, project, sent)
        describe(request, [bodies.DropDescribed(drop)])
        if like is not None and request.POST.get("does") == "same rig":
            return go_on("set-up-same-rig", drop.id, like.id, query="plan=same")
        return go_on("set-up-rig", drop.id)

    return form_page(
        request,
        "set_up/drops.html",
        asks,
        act,
        drops=rows,
        rigged=rigged,
        of=of,
        like=like,
        roofs=project.site.roofs,
    )


def _next_to(like: Drop, project: Project) -> dict[str, Any]:
    """A drop of the same width and height that begins where another ends, with the next mark.

    Where it would reach beyond the edge, nothing is said of its beginning.
    """
    data = _drop_data(like)
    _, edge = edge_named(project, str(data["edge"]))
    begins = like.start + like.width.value
    fits = not surely_above(begins + like.width.value, limit=edge_length(edge))
    stem = like.id.rstrip("0123456789")
    taken = {one.id for one in project.drops}
    marks = (f"{stem}{number}" for number in range(1, len(taken) + 2))
    data["id"] = next(one for one in marks if one not in taken)
    data["start"] = display(begins, LENGTH, project.units) if fits else ""
    data.pop("name", None)
    return data


def _drop_data(of: Drop) -> dict[str, Any]:
    """A drop without its rig and plan, as its form asks for it: edge and roof in one."""
    data = part_data(replace(of, rig=None, plan=None))
    return {**data, "edge": f"{of.roof}/{of.edge}"}


def of_drop(project: Project) -> tuple[Ask, ...]:
    """What is asked of a drop: its mark and its place."""
    return (
        ask(Drop, "id", "Its mark", like="such as S1"),
        Ask("edge", "Over edge", words=edges_of(project), needed=True),
        ask(Drop, "start", "Begins along the edge at, from its left end as you look out"),
        ask(Drop, "width", "How wide", evidence=PLANNED),
        ask(Drop, "height", "Height from the roof to its lowest place", evidence=DRAWN),
        ask(Drop, "clear_below", "From the deck there to the level below", evidence=DRAWN),
        ask(Drop, "name", "What it is called", more=True),
    )


def new_drop(request: HttpRequest, project: Project, sent: tuple[Ask, ...]) -> Drop:
    """The drop that was written. Raises ProblemsError with all that is wrong with it."""
    data = said(sent, statement(request))
    wrong = []
    if data.get("id") in {one.id for one in project.drops}:
        wrong.append(f"Its mark: found {data['id']} a second time, expected one of its own")
    return _drop_from(data, sent, wrong)


def _drop_from(data: dict[str, Any], sent: tuple[Ask, ...], wrong: list[str]) -> Drop:
    roof, _, edge = str(data.get("edge", "")).partition("/")
    if not edge:
        wrong = ["Over edge: found none, expected an edge of a roof", *wrong]
    try:
        found = part(Drop, {**data, "roof": roof or "-", "edge": edge or "-"}, sent)
    except ProblemsError as error:
        raise ProblemsError([*wrong, *error.problems]) from error
    if wrong:
        raise ProblemsError(wrong)
    return found
