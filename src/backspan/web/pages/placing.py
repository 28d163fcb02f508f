"""Anchors: where each stands along and back from an edge, and what its papers say."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from django.http import HttpRequest, HttpResponse

from backspan.core.drafting import seen_from
from backspan.core.ledger import bodies
from backspan.core.model.evidence import Evidence
from backspan.core.model.project import Project
from backspan.core.model.site import Anchor, Roof
from backspan.exchange.written import part_data
from backspan.web.asking import Ask, ProblemsError, filled_in, part, said
from backspan.web.describing import describe, form_page, the_project
from backspan.web.pages.anchor_asked import (
    OF_THE_FORM,
    ROUND,
    of_anchor,
    placed,
    shown,
    with_paper,
)
from backspan.web.pages.anchor_righting import put_anchor_right
from backspan.web.pages.common import go_on, named_of


def anchors(request: HttpRequest) -> HttpResponse:
    """The anchors there are, and one more, or another like one of them."""
    project = the_project(request)
    there = [(of, one) for of in project.site.roofs for one in of.anchors]
    named = request.GET.get("like", "")
    like = next((one for _, one in there if one.id == named), None)
    asks = of_anchor(project)
    of = named_of(request, [one for _, one in there])
    if of is not None:
        roof = next(roof for roof, one in there if one is of)
        return put_anchor_right(request, project, roof, of)
    if like is not None:
        asks = filled_in(asks, _of_papers(like), project.units)
    return form_page(
        request,
        "set_up/anchors.html",
        asks,
        lambda sent: _add_anchor(request, project, sent),
        anchors=[_anchor_row(of, one, project) for of, one in there],
        like=like,
        roofs=project.site.roofs,
        edges=any(of.edges for of in project.site.roofs),
    )


def _add_anchor(request: HttpRequest, project: Project, sent: tuple[Ask, ...]) -> HttpResponse:
    text = {one.name: one.value for one in sent}
    wrong: list[str] = []
    of, at = placed(project, text, wrong)
    data = said([one for one in sent if one.name not in OF_THE_FORM], with_paper(request, text))
    data["ratings"] = _ratings(data, text, with_paper(request, text))
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
    any_way = {"value": ROUND, "evidence": str(Evidence.CERTIFICATE), **stated}
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


def _anchor_row(of: Roof, one: Anchor, project: Project) -> dict[str, Any]:
    near = [
        f"{shown(seen.along, project)} along edge {seen.edge}, {shown(seen.back, project)} back"
        for seen in seen_from(of, one.at)[:2]
    ]
    where = "; ".join(near)
    return {"roof": of, "anchor": one, "where": where}
