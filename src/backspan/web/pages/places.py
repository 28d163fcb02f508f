"""The roof: its edges from lengths and turns, its parapets."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from django.http import HttpRequest, HttpResponse

from backspan.core.errors import quoted
from backspan.core.model.project import Project
from backspan.core.model.site import Edge, Parapet, Roof
from backspan.core.model.walked import (
    Facing,
    Walked,
    WalkError,
    edge_length,
    moved,
    read_walk,
    roof_of,
)
from backspan.core.quantities import LENGTH, Length, display
from backspan.core.review.basis import PRACTICE, selected_rules
from backspan.core.sheet.limits import limit_of, needed_value
from backspan.core.sheet.tied import PLAN_POSITION
from backspan.exchange.written import part_data
from backspan.web.application import workbench_of
from backspan.web.asking import DRAWN, Ask, ProblemsError, ask, every, part, said
from backspan.web.describing import (
    describe,
    described,
    form_page,
    id_for,
    statement,
    the_project,
)
from backspan.web.pages.common import go_on
from backspan.web.pages.edges import edge_named, length_in
from backspan.web.righting import as_it_stands, put_right

FIRST = Ask(
    "first",
    "The first edge faces",
    words=tuple((str(one), str(one)) for one in Facing),
    needed=True,
    value=str(Facing.SOUTH),
)
WALK = Ask(
    "walk",
    "Its edges",
    long=True,
    needed=True,
    like="60 ft, right 90, 30 ft, right 90, 60 ft, right 90, 30 ft",
)


def roofs(request: HttpRequest) -> HttpResponse:
    """The roofs there are, and one more of them, walked edge by edge."""
    project = the_project(request)
    return form_page(
        request,
        "set_up/roofs.html",
        _of_roof(project),
        lambda sent: _add_roof(request, project, sent),
        roofs=[_roof_row(one, project) for one in project.site.roofs],
        gap=most_gap_shown(request, project),
    )


def edge(request: HttpRequest, roof: str, name: str) -> HttpResponse:
    """One edge: what it faces, its parapet where it is not that of the others."""
    project = the_project(request)
    of, one = edge_named(project, f"{roof}/{name}")
    stands = part_data(one)
    asks = as_it_stands(
        (
            ask(Edge, "faces", "Street or yard below"),
            *every(Edge, DRAWN, "parapet"),
        ),
        stands,
        project.units,
    )

    def act(sent: tuple[Ask, ...]) -> HttpResponse:
        data = put_right(sent, stands, statement(request), project.units)
        wall = part(Parapet, data["parapet"], _inner(sent)) if "parapet" in data else None
        new = replace(one, parapet=wall, faces=data.get("faces"))
        edges = tuple(new if there is one else there for there in of.edges)
        describe(request, [described(_with_roof(project, replace(of, edges=edges)))])
        return go_on("set-up-roofs")

    length = display(edge_length(one), LENGTH, project.units)
    return form_page(request, "set_up/edge.html", asks, act, roof=of, edge=one, length=length)


def _of_roof(project: Project) -> tuple[Ask, ...]:
    asks = (
        ask(Roof, "name", "What the roof is called", like="such as main roof"),
        ask(Roof, "level", "Its height above the ground", evidence=DRAWN),
        FIRST,
        WALK,
        ask(Edge, "parapet.height", "Parapet, height above the roof", evidence=DRAWN, needed=False),
        ask(Edge, "parapet.thickness", "Parapet, thickness", evidence=DRAWN, needed=False),
        ask(Edge, "parapet.material", "Parapet, made of", more=True),
    )
    if not project.site.roofs:
        return asks
    west = Ask(
        "east", "From the site's datum east to its west end", needed=True, like="such as 120 ft"
    )
    south = Ask(
        "north", "From the site's datum north to its south end", needed=True, like="such as 0 ft"
    )
    return (*asks[:4], west, south, *asks[4:])


def _add_roof(request: HttpRequest, project: Project, sent: tuple[Ask, ...]) -> HttpResponse:
    text = {one.name: one.value for one in sent}
    wrong: list[str] = []
    found = walked(request, project, text, wrong)
    data = said(
        [one for one in sent if one.name not in {"first", "walk", "east", "north"}],
        statement(request),
    )
    wall, own = (
        data.pop("parapet", None),
        id_for(text["name"], [one.id for one in project.site.roofs]),
    )
    parapet = roof = None
    try:
        roof = part(Roof, {**data, "id": own, "outline": [], "edges": []}, sent)
    except ProblemsError as error:
        wrong.extend(error.problems)
    try:
        parapet = part(Parapet, wall, _inner(sent)) if wall else None
    except ProblemsError as error:
        wrong.extend(error.problems)
    if wrong or roof is None or found is None:
        raise ProblemsError(wrong)
    edges = tuple(replace(one, parapet=parapet) for one in found.edges)
    new = replace(roof, outline=found.outline, edges=edges)
    site = replace(project.site, roofs=(*project.site.roofs, new))
    describe(request, [described(replace(project, site=site))])
    return go_on("set-up-roofs")


def walked(
    request: HttpRequest, project: Project, text: dict[str, str], wrong: list[str]
) -> Walked | None:
    """The edges that were walked; what is wrong with them is added."""
    found = None
    if text["first"] not in set(Facing):
        wrong.append(
            f"The first edge faces: found {quoted(text['first'])}, expected one of the four"
        )
        return None
    try:
        found = roof_of(
            read_walk(text["walk"]),
            first=Facing(text["first"]),
            most_gap=_most_gap(request, project),
            style=project.units,
        )
    except WalkError as error:
        wrong.extend(f"Its edges: {one}" for one in error.problems)
    if "east" in text:
        east, north = (length_in(text[name], name, wrong) for name in ("east", "north"))
        if found is not None and east is not None and north is not None:
            found = moved(found, east=east, north=north)
    return found


def most_gap_shown(request: HttpRequest, project: Project) -> str:
    """How far the end of a walk may lie from its start, as pages tell it."""
    return display(_most_gap(request, project), LENGTH, project.units)


def _most_gap(request: HttpRequest, project: Project) -> Length:
    """How far the end of a walk may lie from its start: as far as a place on a plan is off."""
    practice = selected_rules(project, PRACTICE, workbench_of(request).library)
    return limit_of(needed_value(practice, PLAN_POSITION), LENGTH)


def _inner(sent: tuple[Ask, ...]) -> list[Ask]:
    return [replace(one, name=one.name.removeprefix("parapet.")) for one in sent]


def _with_roof(project: Project, new: Roof) -> Project:
    roofs = tuple(new if one.id == new.id else one for one in project.site.roofs)
    return replace(project, site=replace(project.site, roofs=roofs))


def _roof_row(one: Roof, project: Project) -> dict[str, Any]:
    return {
        "roof": one,
        "level": display(one.level.value, LENGTH, project.units),
        "edges": [
            {
                "edge": edge,
                "length": display(edge_length(edge), LENGTH, project.units),
                "height": ""
                if edge.parapet is None
                else display(edge.parapet.height.value, LENGTH, project.units),
                "thickness": ""
                if edge.parapet is None
                else display(edge.parapet.thickness.value, LENGTH, project.units),
            }
            for edge in one.edges
        ],
    }
