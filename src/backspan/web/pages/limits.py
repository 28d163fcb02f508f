"""Limits that an engineer signed: how far a sealed drawing or letter reaches, for which drops."""

from __future__ import annotations

from typing import Any

from django.http import HttpRequest, HttpResponse

from backspan.core.ledger import bodies
from backspan.core.model.project import Project
from backspan.core.model.signed import LIMITS, SignedLimits
from backspan.core.quantities import FORCE, LENGTH, Dimension, display
from backspan.web.asking import Ask, ask, part, said
from backspan.web.describing import describe, form_page, the_project
from backspan.web.pages.common import go_on, state_of
from backspan.web.pages.rig_asked import things

_LABELS = {
    "most_reach": ("Reach at most", LENGTH),
    "least_backspan": ("Backspan at least", LENGTH),
    "most_rated_load": ("Rated load of the hoist at most", FORCE),
    "most_front": ("On the fulcrum at most, in service", FORCE),
    "most_rear": ("On the rear stand at most, in service", FORCE),
}


def page(request: HttpRequest) -> HttpResponse:
    """The papers there are, and one more."""
    project = the_project(request)
    signed = {
        one.body.limits: one.hash
        for one in state_of(request).entries
        if isinstance(one.body, bodies.LimitsSigned)
    }

    def act(sent: tuple[Ask, ...]) -> HttpResponse:
        describe(request, [bodies.LimitsSigned(part(SignedLimits, said(sent), sent))])
        return go_on("set-up-limits")

    rows = [_row(one, project, signed.get(one, "")) for one in project.signed_limits]
    return form_page(request, "set_up/limits.html", _asks(project), act, papers=rows)


def _asks(project: Project) -> tuple[Ask, ...]:
    people = tuple((one.id, f"{one.name}, {one.role}") for one in project.people)
    drops = tuple((one.id, one.id) for one in project.drops)
    return (
        ask(SignedLimits, "by", "Signed by", words=people),
        ask(SignedLimits, "document", "Its drawing or letter", like="such as S-201"),
        ask(SignedLimits, "revision", "Its revision"),
        ask(SignedLimits, "at", "Of the day"),
        ask(SignedLimits, "until", "Counts until"),
        Ask("drops", "For the drops", words=drops, many=True, needed=True),
        *(ask(SignedLimits, name, _LABELS[name][0]) for name in LIMITS),
        Ask(
            "hoists", "For these hoists alone", words=things(project, "hoist"), many=True, more=True
        ),
        Ask("beams", "For these beams alone", words=things(project, "beam"), many=True, more=True),
    )


def _row(paper: SignedLimits, project: Project, entry: str) -> dict[str, Any]:
    """A paper with its limits in the units of the site."""
    names = {one.id: one.name for one in project.people}
    limits = [
        f"{label[0].lower()}{label[1:]} {_shown(paper, name, dimension, project)}"
        for name, (label, dimension) in _LABELS.items()
        if getattr(paper, name) is not None
    ]
    return {"paper": paper, "by": names.get(paper.by, paper.by), "limits": limits, "entry": entry}


def _shown(paper: SignedLimits, name: str, dimension: Dimension, project: Project) -> str:
    value: float = getattr(paper, name)
    return display(value, dimension, project.units)
