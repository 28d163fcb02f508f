"""Rule values that are only remembered, confirmed against the office's own copy of the text."""

from __future__ import annotations

from dataclasses import replace

from django.http import HttpRequest, HttpResponse

from backspan.core.model.basis import Confirmation
from backspan.web.asking import Ask, ProblemsError
from backspan.web.describing import describe, described, form_page, the_project
from backspan.web.pages.common import go_on, state_of
from backspan.web.speaking import signer_of
from backspan.web.workbench import DayState


def page(request: HttpRequest) -> HttpResponse:
    """What waits to be confirmed, and what an office found in its copy."""
    state, project = state_of(request), the_project(request)
    waiting = _waiting(state)
    asks = (
        Ask("value", "Value", words=tuple(waiting.items()), needed=True),
        Ask(
            "copy_seen",
            "Copy that was seen",
            like="such as office copy of 1996, page 12",
            long=True,
        ),
    )

    def act(sent: tuple[Ask, ...]) -> HttpResponse:
        said = {one.name: one.value.strip() for one in sent}
        wrong = [] if said["copy_seen"] else ["Copy that was seen: found nothing, expected a text"]
        if said["value"] not in waiting:
            wrong.insert(0, "Value: found none, expected one that waits")
        if wrong:
            raise ProblemsError(wrong)
        rule_set, edition, value = said["value"].split("|")
        by, on = signer_of(request).person, state.on.isoformat()
        new = Confirmation(rule_set, edition, value, by, on, said["copy_seen"])
        confirmed = (*project.confirmations, new)
        describe(request, [described(replace(project, confirmations=confirmed))])
        return go_on("set-up-confirm")

    return form_page(
        request, "set_up/confirm.html", asks, act, confirmed=project.confirmations, waiting=waiting
    )


def _waiting(state: DayState) -> dict[str, str]:
    """The values that reviews of today wait for, by rule set, edition and key."""
    found: dict[str, str] = {}
    for drop in state.described.drops:
        for one in state.review(drop.id).findings:
            for value in one.rules:
                if value.only_remembered:
                    key = f"{value.rule_set}|{value.edition}|{value.key}"
                    told = f"{value.rule_set} {value.edition}, {value.provenance.clause}"
                    found.setdefault(key, f"{told}: {value.description}")
    return found
