"""The contractor's plan and the drops: who rigs what, on which drawing, for which days, where."""

from __future__ import annotations

from django.http import HttpRequest, HttpResponse

from backspan.core.ledger import bodies
from backspan.core.model.plan import Plan
from backspan.core.model.project import Project
from backspan.core.model.rigs import Drop
from backspan.core.quantities import LENGTH, display
from backspan.exchange.written import part_data
from backspan.web.asking import PLANNED, Ask, ProblemsError, ask, filled_in, part, said
from backspan.web.describing import describe, form_page, statement, the_project
from backspan.web.pages.common import go_on
from backspan.web.pages.edges import edges_of


def plan(request: HttpRequest) -> HttpResponse:
    """The plan that the contractor handed in, or its next revision."""
    project = the_project(request)
    people = tuple((one.id, f"{one.name}, {one.role}") for one in project.people)
    asks: tuple[Ask, ...] = (
        ask(Plan, "contractor", "Contractor who rigs"),
        ask(Plan, "designer", "Who designed it", words=people),
        ask(Plan, "drawing", "Drawing", like="such as SW-04"),
        ask(Plan, "revision", "Its revision"),
        ask(Plan, "begins", "Work begins on"),
        ask(Plan, "ends", "Work ends on"),
    )
    if project.plan is not None:
        asks = filled_in(asks, part_data(project.plan), project.units)

    def act(sent: tuple[Ask, ...]) -> HttpResponse:
        describe(request, [bodies.PlanReceived(part(Plan, said(sent), sent))])
        return go_on("set-up-drops")

    return form_page(request, "set_up/plan.html", asks, act, plan=project.plan)


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

    def act(sent: tuple[Ask, ...]) -> HttpResponse:
        drop = new_drop(request, project, sent)
        describe(request, [bodies.DropDescribed(drop)])
        return go_on("set-up-rig", drop.id)

    asks = of_drop(project)
    return form_page(request, "set_up/drops.html", asks, act, drops=rows, rigged=rigged)


def of_drop(project: Project) -> tuple[Ask, ...]:
    """What is asked of a drop: its mark and its place."""
    return (
        ask(Drop, "id", "Its mark", like="such as S1"),
        Ask("edge", "Over edge", words=edges_of(project), needed=True),
        ask(Drop, "start", "Begins along the edge at, from its left end as you look out"),
        ask(Drop, "width", "How wide", evidence=PLANNED),
        ask(Drop, "height", "Height from the roof to its lowest place", evidence=PLANNED),
        ask(Drop, "name", "What it is called", more=True),
    )


def new_drop(request: HttpRequest, project: Project, sent: tuple[Ask, ...]) -> Drop:
    """The drop that was written. Raises ProblemsError with all that is wrong with it."""
    data = said(sent, statement(request))
    roof, _, edge = str(data.get("edge", "")).partition("/")
    wrong = [] if edge else ["Over edge: found none, expected an edge of a roof"]
    if data.get("id") in {one.id for one in project.drops}:
        wrong.append(f"Its mark: found {data['id']} a second time, expected one of its own")
    try:
        found = part(Drop, {**data, "roof": roof or "-", "edge": edge or "-"}, sent)
    except ProblemsError as error:
        raise ProblemsError([*wrong, *error.problems]) from error
    if wrong:
        raise ProblemsError(wrong)
    return found
