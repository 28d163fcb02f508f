"""What stands on a roof that rigging has to pass: placed along and back from an edge."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Any

from django.http import HttpRequest, HttpResponse

from backspan.core.model.in_place import in_place
from backspan.core.model.project import Project
from backspan.core.model.site import Edge, Obstacle, Point, Roof
from backspan.core.model.walked import along_and_back, edge_length, is_within, on_plan
from backspan.core.quantities import LENGTH, Length, display
from backspan.exchange.written import part_data
from backspan.web.asking import DRAWN, Ask, ProblemsError, ask, part, said
from backspan.web.describing import (
    describe,
    described,
    form_page,
    id_for,
    statement,
    the_project,
)
from backspan.web.pages.common import FormError, go_on, named_of
from backspan.web.pages.edges import edge_named, edges_of, length_in
from backspan.web.pages.roof import the_roof
from backspan.web.righting import as_it_stands, put_right

#: The four lengths that say where a rectangle along an edge lies.
_SIDES = ("along", "along-end", "back", "back-end")
_LABELS = (
    "Begins along it at, from its left end as you look out",
    "Ends along it at",
    "Its near side, back from the face of the edge",
    "Its far side, back from the face",
)
_PLACE = frozenset({"edge", *_SIDES})


def page(request: HttpRequest, roof: str) -> HttpResponse:
    """The obstacles of a roof, one more, or one of them put right or taken away."""
    project = the_project(request)
    on = the_roof(project, roof)
    of = named_of(request, on.obstacles)
    asks = _asks(project, on)
    stands = {} if of is None else _as_asked(on, of, project)
    if of is not None:
        asks = as_it_stands(asks, stands, project.units)

    def act(sent: tuple[Ask, ...]) -> HttpResponse:
        if of is None:
            there = (*on.obstacles, _new(project, on, sent, statement(request)))
        elif request.POST.get("does") == "take away":
            there = tuple(one for one in on.obstacles if one is not of)
        else:
            data = put_right(sent, stands, statement(request), project.units)
            there = in_place(on.obstacles, _put_right(project, on, of, sent, (stands, data)))
        roofs = in_place(project.site.roofs, replace(on, obstacles=there))
        describe(request, [described(replace(project, site=replace(project.site, roofs=roofs)))])
        return go_on("set-up-obstacles", roof)

    rows = [{"one": one, "where": _told(on, one, project)} for one in on.obstacles]
    return form_page(request, "set_up/obstacles.html", asks, act, roof=on, obstacles=rows, of=of)


def _asks(project: Project, on: Roof) -> tuple[Ask, ...]:
    edges = tuple(one for one in edges_of(project) if one[0].startswith(f"{on.id}/"))
    return (
        ask(Obstacle, "name", "What it is", like="such as stair head, cooling tower, vent"),
        Ask("edge", "Seen from edge", words=edges, needed=True),
        *(
            Ask(name, label, needed=True, like="such as 8 ft")
            for name, label in zip(_SIDES, _LABELS, strict=True)
        ),
        ask(Obstacle, "height", "How high above the roof", evidence=DRAWN),
    )


def _new(project: Project, on: Roof, sent: tuple[Ask, ...], by: dict[str, str]) -> Obstacle:
    wrong: list[str] = []
    outline = _outline(project, on, sent, wrong)
    data = said([one for one in sent if one.name not in _PLACE], by)
    own = id_for(str(data.get("name", "")), [one.id for one in on.obstacles])
    return replace(_read({**data, "id": own}, sent, wrong), outline=outline)


def _put_right(
    project: Project,
    on: Roof,
    of: Obstacle,
    sent: tuple[Ask, ...],
    stood_stands: tuple[dict[str, Any], dict[str, Any]],
) -> Obstacle:
    stood, data = stood_stands
    wrong: list[str] = []
    moved = any(data.get(name) != stood.get(name) for name in _PLACE)
    outline = _outline(project, on, sent, wrong) if moved else of.outline
    kept = {name: one for name, one in data.items() if name not in _PLACE}
    return replace(_read(kept, sent, wrong), outline=outline)


def _read(data: dict[str, Any], sent: Sequence[Ask], wrong: list[str]) -> Obstacle:
    """An obstacle but its outline. Raises ProblemsError with all that is wrong."""
    try:
        found = part(Obstacle, {**data, "outline": []}, sent)
    except ProblemsError as error:
        raise ProblemsError(dict.fromkeys([*wrong, *error.problems])) from error
    if wrong:
        raise ProblemsError(wrong)
    return found


def _outline(
    project: Project, on: Roof, sent: Sequence[Ask], wrong: list[str]
) -> tuple[Point, ...]:
    """The rectangle along an edge that was written; what is wrong with it is added."""
    text = {one.name: one.value for one in sent}
    lengths = [
        length_in(text[name], label, wrong) for name, label in zip(_SIDES, _LABELS, strict=True)
    ]
    try:
        _, edge = edge_named(project, text["edge"])
    except FormError:
        wrong.append("Seen from edge: found none, expected an edge of the roof")
        return ()
    if None in lengths:
        return ()
    begins, ends, near, far = (one for one in lengths if one is not None)
    if ends <= begins or far <= near:
        wrong.append(
            "Where it stands: found an end that is not beyond its beginning, expected it to end"
            " further along the edge than it begins, and its far side further back"
        )
        return ()
    corners = ((begins, near), (ends, near), (ends, far), (begins, far))
    found = tuple(on_plan(edge, along=along, back=back) for along, back in corners)
    if not all(is_within(on.outline, one) for one in found):
        long = display(edge_length(edge), LENGTH, project.units)
        wrong.append(
            f"Where it stands: found a place beyond {on.name}, expected one on it; edge {edge.id}"
            f" is {long} long"
        )
    return found


def _extent(edge: Edge, outline: Sequence[Point]) -> tuple[Length, Length, Length, Length]:
    """How far along an edge and back from it an outline reaches: begins, ends, near, far."""
    places = [along_and_back(edge, one) for one in outline]
    along, back = [one for one, _ in places], [one for _, one in places]
    return min(along), max(along), min(back), max(back)


def _as_asked(on: Roof, of: Obstacle, project: Project) -> dict[str, Any]:
    """An obstacle as its form asks for it, seen from the edge that is nearest."""
    data = part_data(of)
    data.pop("outline")
    if not on.edges or not of.outline:
        return data
    edge = _nearest(on, of)
    lengths = _extent(edge, of.outline)
    shown = (display(one, LENGTH, project.units) for one in lengths)
    return {**data, "edge": f"{on.id}/{edge.id}", **dict(zip(_SIDES, shown, strict=True))}


def _nearest(on: Roof, of: Obstacle) -> Edge:
    return min(on.edges, key=lambda edge: abs(_extent(edge, of.outline)[2]))


def _told(on: Roof, of: Obstacle, project: Project) -> str:
    """Where it stands, and how high, as a sentence tells it."""
    said = _as_asked(on, of, project)
    parts = [] if of.height is None else [f"{display(of.height.value, LENGTH, project.units)} high"]
    if "edge" in said:
        begins, ends, near, far = (said[name] for name in _SIDES)
        edge = str(said["edge"]).rpartition("/")[2]
        parts.append(f"{begins} to {ends} along edge {edge}, {near} to {far} back")
    return ", ".join(parts)
