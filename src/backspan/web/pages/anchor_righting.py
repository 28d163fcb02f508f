"""An anchor put right: its place, its papers for each use; what nobody touched stays as stated."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from typing import Any

from django.http import HttpRequest, HttpResponse

from backspan.core.drafting import seen_from
from backspan.core.ledger import bodies
from backspan.core.model.evidence import Evidence
from backspan.core.model.project import Project
from backspan.core.model.site import Anchor, AnchorUse, Roof
from backspan.exchange.written import part_data
from backspan.web.asking import PAPER, Ask, ProblemsError, ask, part
from backspan.web.describing import describe, form_page
from backspan.web.pages.anchor_asked import (
    OF_THE_FORM,
    ROUND,
    of_anchor,
    placed,
    shown,
    with_paper,
)
from backspan.web.pages.common import go_on
from backspan.web.righting import as_it_stands, put_right


def put_anchor_right(
    request: HttpRequest, project: Project, of: Roof, anchor: Anchor
) -> HttpResponse:
    """One anchor as it stands, and what of it is put right."""
    stands = _as_asked(of, anchor, project)
    plain = [one for one in of_anchor(project) if one.name not in {"id", "ratings.0.load"}]
    at = next(index for index, one in enumerate(plain) if one.name == "any-way")
    rated = [
        ask(Anchor, "ratings.0.load", f"Carries, for {use}", evidence=PAPER) for use in AnchorUse
    ]
    named = [replace(one, name=f"rated.{use}") for one, use in zip(rated, AnchorUse, strict=True)]
    asks = as_it_stands([*plain[:at], *named, *plain[at:]], stands, project.units)

    def act(sent: tuple[Ask, ...]) -> HttpResponse:
        text = {one.name: one.value for one in sent}
        by = with_paper(request, text)
        data = put_right([one for one in sent if one.name != "document"], stands, by, project.units)
        place = [one for one in ("edge", "along", "back") if data.get(one) != stands.get(one)]
        wrong: list[str] = []
        roof, where = placed(project, text, wrong) if place else (of, anchor.at)
        if roof is not None and roof is not of:
            wrong.append(
                f"Seen from edge: found one of {roof.name}, expected one of {of.name}; an anchor of"
                " another roof is withdrawn here and registered there"
            )
        data["ratings"] = list(_ratings_put_right(data, stands, by))
        kept = {name: one for name, one in data.items() if name not in OF_THE_FORM}
        try:
            new = part(Anchor, kept, sent)
        except ProblemsError as error:
            wrong.extend(error.problems)
        if wrong:
            raise ProblemsError(dict.fromkeys(wrong))
        describe(request, [bodies.AnchorRegistered(of.id, replace(new, at=where))])
        return go_on("set-up-anchors")

    return form_page(request, "set_up/anchors.html", asks, act, of=anchor, edges=True)


def _as_asked(of: Roof, anchor: Anchor, project: Project) -> dict[str, Any]:
    """An anchor as its form asks for it: from the edge it is nearest to, a load for each use."""
    data = part_data(anchor)
    ratings = {one["use"]: one["load"] for one in data.get("ratings", []) if "load" in one}
    if ratings:
        data["rated"] = ratings
    if any(one.within is not None for one in anchor.ratings):
        data["any-way"] = "yes"
    for seen in seen_from(of, anchor.at)[:1]:
        data |= {
            "edge": f"{of.id}/{seen.edge}",
            "along": shown(seen.along, project),
            "back": shown(seen.back, project),
        }
    return data


def _ratings_put_right(
    data: dict[str, Any], stands: dict[str, Any], by: dict[str, str]
) -> Iterator[dict[str, Any]]:
    """What its papers say for each use; its direction is changed only where that was."""
    before = {one["use"]: one for one in stands.get("ratings", [])}
    turned = data.get("any-way") != stands.get("any-way")
    loads = data.get("rated", {})
    for use in AnchorUse:
        rating = {**before.get(str(use), {}), "use": str(use)}
        rating.pop("load", None)
        if use in loads:
            rating["load"] = loads[use]
        if turned:
            for name in ("within", "toward"):
                rating.pop(name, None)
        if turned and data.get("any-way") and use in loads:
            rating["within"] = {"value": ROUND, "evidence": str(Evidence.CERTIFICATE), **by}
        if rating.keys() != {"use"}:
            yield rating
