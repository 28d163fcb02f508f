"""One roof put right: its name, its level, its edges walked anew."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from django.http import HttpRequest, HttpResponse

from backspan.core.errors import quoted
from backspan.core.model.in_place import in_place
from backspan.core.model.project import Project
from backspan.core.model.site import Roof
from backspan.core.model.walked import is_within, moved
from backspan.exchange.written import part_data
from backspan.web.asking import DRAWN, Ask, ProblemsError, ask, part
from backspan.web.describing import describe, described, form_page, statement, the_project
from backspan.web.pages.common import FormError, go_on
from backspan.web.pages.places import FIRST, WALK, most_gap_shown, walked
from backspan.web.righting import as_it_stands, put_right

_ANEW = "Its edges, walked anew"


def page(request: HttpRequest, roof: str) -> HttpResponse:
    """One roof. An edge that keeps its mark keeps its parapet; anchors stay where they are."""
    project = the_project(request)
    of = the_roof(project, roof)
    stands = {name: one for name, one in part_data(of).items() if name in {"id", "name", "level"}}
    asks = as_it_stands(
        (
            ask(Roof, "name", "What the roof is called"),
            ask(Roof, "level", "Its height above the ground", evidence=DRAWN),
        ),
        stands,
        project.units,
    )
    anew = (replace(WALK, label=_ANEW, needed=False, more=True), replace(FIRST, more=True))

    def act(sent: tuple[Ask, ...]) -> HttpResponse:
        data = put_right(sent[:2], stands, statement(request), project.units)
        named = part(Roof, {**data, "outline": [], "edges": []}, sent)
        new = replace(of, name=named.name, level=named.level)
        if sent[2].value:
            new = _walked_anew(request, project, new, {one.name: one.value for one in sent})
        roofs = in_place(project.site.roofs, new)
        describe(request, [described(replace(project, site=replace(project.site, roofs=roofs)))])
        return go_on("set-up-roofs")

    gap = most_gap_shown(request, project)
    return form_page(request, "set_up/roof.html", (*asks, *anew), act, of=of, gap=gap)


def the_roof(project: Project, name: str) -> Roof:
    """The roof of that id. Raises FormError where there is none."""
    found = next((one for one in project.site.roofs if one.id == name), None)
    if found is None:
        raise FormError(f"found no roof {quoted(name)}, expected one of the site")
    return found


def _walked_anew(request: HttpRequest, project: Project, of: Roof, text: dict[str, str]) -> Roof:
    """The roof with new edges, its south-west corner where it was.

    Raises ProblemsError where the walk is none, or where something would no longer stand on the
    roof.
    """
    wrong: list[str] = []
    found = walked(request, project, text, wrong)
    if found is None:
        raise ProblemsError(wrong)
    west, south = (min((at[axis] for at in of.outline), default=0.0) for axis in (0, 1))
    found = moved(found, east=west, north=south)
    before = {one.id: one for one in of.edges}
    edges = tuple(
        replace(one, parapet=before[one.id].parapet, faces=before[one.id].faces)
        if one.id in before
        else one
        for one in found.edges
    )
    new = replace(of, outline=found.outline, edges=edges)
    wrong.extend(_off_it(new))
    if wrong:
        raise ProblemsError(wrong)
    return new


def _off_it(of: Roof) -> Iterator[str]:
    """What would stand outside the new outline."""
    for anchor in of.anchors:
        if not is_within(of.outline, anchor.at):
            yield f"{_ANEW}: found anchor {anchor.id} outside of it, expected every anchor on it"
    for one in of.obstacles:
        if not all(is_within(of.outline, at) for at in one.outline):
            yield f"{_ANEW}: found {one.name} ({one.id}) beyond it, expected it on the roof"
