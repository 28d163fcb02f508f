"""A facade as it stands today: the elevation to scale, its drops as rows, sheets to take along."""

from __future__ import annotations

from collections.abc import Iterable
from typing import TypeVar

from django.http import HttpRequest, HttpResponse
from django.utils.http import content_disposition_header
from django.views.decorators.http import require_GET

from backspan.core.errors import quoted
from backspan.core.findings import Review
from backspan.core.model.in_place import Named
from backspan.core.model.project import Project
from backspan.core.model.rigs import Drop
from backspan.core.model.site import Edge, Roof
from backspan.core.quantities import Style
from backspan.drawings import (
    Scene,
    elevation,
    elevation_figure,
    roof_plan,
    to_dxf,
    to_svg,
)
from backspan.drawings.values import length_text
from backspan.papers import drawing_content
from backspan.web.describing import the_project
from backspan.web.pages.common import FormError, filled, state_of
from backspan.web.pages.today import rows_of, worst_first
from backspan.web.printing import printed
from backspan.web.workbench import DayState

T = TypeVar("T", bound=Named)

#: What a sheet can be taken along as, and what it is then.
_FORMS = {"svg": "image/svg+xml", "dxf": "image/vnd.dxf", "pdf": "application/pdf"}


@require_GET
def page(request: HttpRequest, roof: str, edge: str) -> HttpResponse:
    """The facade under an edge with its drops, worst first."""
    state, project = state_of(request), the_project(request)
    on, along = _facade(project, roof, edge)
    drops = {one.id: one for one in _drops(project, on, along)}
    rows = [
        {**row, "height": _height(drops[row["drop"]], project.units)}
        for row in rows_of(state, set(drops))
    ]
    return filled(
        request,
        "plan/elevation.html",
        roof=on,
        edge=along,
        drawn=_picture(state, project, on, along),
        rows=sorted(rows, key=worst_first),
        forms=[(form, form.upper()) for form in _FORMS],
    )


@require_GET
def picture(request: HttpRequest, roof: str, edge: str) -> HttpResponse:
    """The facade to scale, for its page."""
    state, project = state_of(request), the_project(request)
    drawn = to_svg(_picture(state, project, *_facade(project, roof, edge)))
    answer = HttpResponse(drawn, content_type=_FORMS["svg"])
    if request.GET.get("at") == str(state.place):
        # Its address names the place of the ledger: another place is another picture.
        answer.headers["Cache-Control"] = "private, max-age=600"
    return answer


@require_GET
def sheet(request: HttpRequest, roof: str, edge: str, form: str) -> HttpResponse:
    """The elevation as a sheet to take along."""
    state, project = state_of(request), the_project(request)
    on, along = _facade(project, roof, edge)
    drops = _drops(project, on, along)
    reviews, standings = _reviews(state, drops), _standings(state)
    scene = elevation(project, on.id, along.id, reviews, standings=standings)
    return _taken_along(state, scene, f"elevation-{on.id}-{along.id}", form)


@require_GET
def plan(request: HttpRequest, roof: str, form: str) -> HttpResponse:
    """The plan of a roof as a sheet to take along."""
    state, project = state_of(request), the_project(request)
    on = _named(project.site.roofs, roof, "roof")
    reviews = _reviews(state, [one for one in project.drops if one.roof == on.id])
    return _taken_along(state, roof_plan(project, reviews, on.id), f"roof-{on.id}", form)


def _facade(project: Project, roof: str, edge: str) -> tuple[Roof, Edge]:
    on = _named(project.site.roofs, roof, "roof")
    return on, _named(on.edges, edge, f"edge of roof {on.id}")


def _named(there: tuple[T, ...], name: str, told: str) -> T:
    for one in there:
        if one.id == name:
            return one
    names = ", ".join(one.id for one in there)
    raise FormError(f"found no {told} {quoted(name)}, expected one of: {names or 'none yet'}")


def _drops(project: Project, on: Roof, along: Edge) -> tuple[Drop, ...]:
    return tuple(one for one in project.drops if one.roof == on.id and one.edge == along.id)


def _reviews(state: DayState, drops: Iterable[Drop]) -> dict[str, Review]:
    return {one.id: state.review(one.id) for one in drops}


def _standings(state: DayState) -> dict[str, str]:
    """Where each drop stands, in the words of today's page."""
    return {one["drop"]: one["state_text"] for one in state.day["drops"]}


def _picture(state: DayState, project: Project, on: Roof, along: Edge) -> Scene:
    reviews = _reviews(state, _drops(project, on, along))
    return elevation_figure(project, on.id, along.id, reviews, standings=_standings(state))


def _height(drop: Drop, units: Style) -> str:
    if drop.height is None:
        return "Height not stated."
    return f"{length_text(drop.height.value, units)} high."


def _taken_along(state: DayState, scene: Scene, name: str, form: str) -> HttpResponse:
    """The sheet as a file in one of its forms."""
    if form not in _FORMS:
        raise FormError(f"found the form {quoted(form)}, expected one of: {', '.join(_FORMS)}")
    drawn: bytes
    if form == "dxf":
        drawn = to_dxf(scene)
    elif form == "pdf":
        content = drawing_content(to_svg(scene), title=scene.title)
        drawn = printed(content, issued=state.on)
    else:
        drawn = to_svg(scene).encode("utf-8")
    answer = HttpResponse(drawn, content_type=_FORMS[form])
    kept = content_disposition_header(as_attachment=True, filename=f"{name}.{form}")
    answer.headers["Content-Disposition"] = kept or "attachment"
    return answer
