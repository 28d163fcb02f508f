"""Anchors: where each stands along and back from an edge, and what its papers say."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from django.http import HttpRequest, HttpResponse

from backspan.core.ledger import bodies
from backspan.core.model.evidence import Evidence
from backspan.core.model.project import Project
from backspan.core.model.site import Anchor, AnchorUse, Roof
from backspan.core.model.walked import along_and_back, edge_length, is_within, on_plan
from backspan.core.quantities import LENGTH, Length, display
from backspan.exchange.written import part_data
from backspan.web.asking import PAPER, Ask, ProblemsError, ask, filled_in, part, said
from backspan.web.describing import describe, form_page, statement, the_project
from backspan.web.pages.common import FormError, go_on
from backspan.web.pages.edges import edge_named, edges_of, length_in

_ROUND = "180 deg"
_USES = tuple((str(one), str(one)) for one in AnchorUse)


def anchors(request: HttpRequest) -> HttpResponse:
    """The anchors there are, and one more, or another like one of them."""
    project = the_project(request)
    there = [(of, one) for of in project.site.roofs for one in of.anchors]
    named = request.GET.get("like", "")
    like = next((one for _, one in there if one.id == named), None)
    asks = _of_anchor(project)
    if like is not None:
        asks = filled_in(asks, _of_papers(like), project.units)
    return form_page(
        request,
        "set_up/anchors.html",
        asks,
        lambda sent: _add_anchor(request, project, sent),
        anchors=[_anchor_row(of, one, project) for of, one in there],
        like=like,
        edges=any(of.edges for of in project.site.roofs),
    )


def _of_anchor(project: Project) -> tuple[Ask, ...]:
    return (
        ask(Anchor, "id", "Its mark", like="such as A01"),
        Ask("edge", "Seen from edge", words=edges_of(project), needed=True),
        Ask(
            "along", "Along it, from its left end as you look out", needed=True, like="such as 8 ft"
        ),
        Ask("back", "Back from its face", needed=True, like="such as 12 ft"),
        ask(Anchor, "kind", "What it is", like="such as through-bolted post"),
        ask(Anchor, "uses", "Its papers allow", words=_USES, many=True),
        ask(Anchor, "ratings.0.load", "Carries, for each of these uses", evidence=PAPER),
        Ask("any-way", "Pulled in", words=(("yes", "any direction"), ("", "nobody said"))),
        ask(Anchor, "inspected", "Inspected on"),
        ask(Anchor, "certified", "Load test or certificate of"),
        ask(Anchor, "fixed_by", "Fixed in the building"),
        Ask("document", "Paper that says so", more=True, like="such as anchor letter of 3 March"),
        ask(Anchor, "standing", "Standing", more=True, needed=False),
    )


def _add_anchor(request: HttpRequest, project: Project, sent: tuple[Ask, ...]) -> HttpResponse:
    text = {one.name: one.value for one in sent}
    wrong: list[str] = []
    along = length_in(text["along"], "Along it", wrong)
    back = length_in(text["back"], "Back from its face", wrong)
    of, at = None, (0.0, 0.0)
    try:
        of, one = edge_named(project, text["edge"])
    except FormError:
        wrong.append("Seen from edge: found none, expected an edge of a roof")
    else:
        if along is not None and back is not None:
            at = on_plan(one, along=along, back=back)
            if not is_within(of.outline, at):
                wrong.append(
                    f"Along and back: found a place outside {of.name}, expected one on it; edge"
                    f" {one.id} is {display(edge_length(one), LENGTH, project.units)} long"
                )
    own = {"edge", "along", "back", "any-way", "document"}
    data = said([one for one in sent if one.name not in own], _with_paper(request, text))
    data["ratings"] = _ratings(data, text, _with_paper(request, text))
    try:
        made = part(Anchor, {**data, "at": ["0 ft", "0 ft"]}, sent)
    except ProblemsError as error:
        wrong.extend(error.problems)
    if wrong or of is None:
        raise ProblemsError(dict.fromkeys(wrong))
    there = {one.id for roof in project.site.roofs for one in roof.anchors}
    if made.id in there:
        raise ProblemsError([f"Its mark: found {made.id} a second time, expected one of its own"])
    describe(request, [bodies.AnchorRegistered(of.id, replace(made, at=at))])
    answer = go_on("set-up-anchors")
    if request.POST.get("does") == "like":
        answer.headers["Location"] += f"?like={made.id}"
    return answer


def _ratings(
    data: dict[str, Any], text: dict[str, str], stated: dict[str, str]
) -> list[dict[str, Any]]:
    """What the papers say, for each use they allow."""
    first = data.get("ratings") or [{}]
    load = first[0] if isinstance(first, list) else {}
    any_way = {"value": _ROUND, "evidence": str(Evidence.CERTIFICATE), **stated}
    within = {"within": any_way} if text["any-way"] else {}
    return [{"use": one, **load, **within} for one in data.get("uses", [])] if load else []


def _of_papers(like: Anchor) -> dict[str, Any]:
    """What another anchor of the same kind keeps: all but its mark and its place."""
    data = part_data(like)
    rated = like.ratings[0] if like.ratings else None
    kept = {name: value for name, value in data.items() if name not in {"id", "at"}}
    load = None if rated is None else rated.load
    return {
        **kept,
        "any-way": "yes" if rated is not None and rated.within is not None else "",
        "document": "" if load is None or load.document is None else load.document,
    }


def _with_paper(request: HttpRequest, text: dict[str, str]) -> dict[str, str]:
    paper = {"document": text["document"]} if text["document"] else {}
    return {**statement(request), **paper}


def _anchor_row(of: Roof, one: Anchor, project: Project) -> dict[str, Any]:
    over = []
    for edge in of.edges:
        along, back = along_and_back(edge, one.at)
        if back >= 0.0 and 0.0 <= along <= edge_length(edge):
            over.append((back, along, edge.id))
    near = [
        f"{_shown(along, project)} along edge {name}, {_shown(back, project)} back"
        for back, along, name in sorted(over)[:2]
    ]
    where = "; ".join(near)
    return {"roof": of, "anchor": one, "where": where}


def _shown(length: Length, project: Project) -> str:
    return display(length, LENGTH, project.units)
