"""Writing what describes a site: judged whole before a word of it is kept."""

from __future__ import annotations

import datetime
import re
from collections.abc import Callable, Iterable, Sequence
from typing import Any

from django.http import HttpRequest, HttpResponse

from backspan.core.ledger import bodies
from backspan.core.ledger.described import describes
from backspan.core.ledger.document import PlaceError
from backspan.core.ledger.entry import Signer
from backspan.core.ledger.kinds import Body
from backspan.core.ledger.writes import skeleton, writes_of
from backspan.core.model.order import ordered
from backspan.core.model.people import Person
from backspan.core.model.project import Project
from backspan.core.model.references import problems
from backspan.core.model.rule_names import rule_problems
from backspan.core.model.walked import WalkError
from backspan.core.review.basis import PRACTICE
from backspan.core.rules.selected import RuleLibrary
from backspan.core.rules.shape import WordList
from backspan.web.application import workbench_of
from backspan.web.asking import Ask, ProblemsError, given
from backspan.web.falling import accepted, fallen
from backspan.web.pages.common import FormError, filled, state_of
from backspan.web.pages.saying import refuse_since
from backspan.web.speaking import signer_of
from backspan.web.workbench import DayState, Workbench

#: An id has so many characters at most.
_LONGEST = 24
_NO_LETTER = re.compile(r"[^A-Za-z0-9]+")
#: Practice says under these names who may judge, witness and design.
_ROLES = ("take-over.", "witness.", "design.")


def the_project(request: HttpRequest) -> Project:
    """The project that is set up. Raises FormError where there is none yet."""
    project = state_of(request).project
    if project is None:
        raise FormError("found no site yet, expected its first page to be filled: set it up first")
    return project


def described(project: Project) -> Body:
    """The entry that describes the site around what entries of their own say."""
    return bodies.SiteDescribed(ordered(skeleton(project)))


def describe(
    request: HttpRequest,
    new: Sequence[Body],
    signer: Signer | None = None,
    evidence: Sequence[str] = (),
) -> None:
    """Write entries, if the site that they make is sound: all of them, or none.

    `evidence` are the hashes of the files that show what they say.

    Raises ProblemsError with every name that leads nowhere or stands twice, and every place outside
    its edge; ChangedError where one of these things was described since the page was made;
    NobodySpeaksError where nobody said who speaks.
    """
    by, bench = signer or signer_of(request), workbench_of(request)
    with bench.saying:
        _judged(request, new, bench)
        bench.say(new, by, evidence)


def _judged(request: HttpRequest, new: Sequence[Body], bench: Workbench) -> None:
    """Raise as `describe` does where these entries may not be written."""
    state = state_of(request)
    things = {describes(one) for one in new} - {None}
    # What a page was made from is written whole: what came since would be lost with it.
    refuse_since(request, state, lambda body: describes(body) in things)
    before = set() if state.project is None else set(_problems(state.project, bench.library))
    after = _problems(after_all(state, new), bench.library)
    wrong = [one for one in after if one not in before]
    if wrong:
        raise ProblemsError(dict.fromkeys(wrong))


def after_all(state: DayState, new: Iterable[Body]) -> Project:
    """The project once these entries are taken. Raises ProblemsError where one has no place."""
    data: Any = state.folded.data
    try:
        for body in new:
            for write in writes_of(body, data):
                data = write.on(data)
        return state.folded.project_with(data)
    except PlaceError as error:
        raise ProblemsError([str(error)]) from error


def statement(request: HttpRequest) -> dict[str, str]:
    """Who states what a form says, and when."""
    at = workbench_of(request).clock().replace(tzinfo=None)
    return {"by": signer_of(request).person, "at": at.isoformat(timespec="minutes")}


def form_page(
    request: HttpRequest,
    template: str,
    asks: Sequence[Ask],
    act: Callable[[tuple[Ask, ...]], HttpResponse],
    **values: Any,
) -> HttpResponse:
    """A page with a form: what it says is done, or it is shown again with all that is wrong."""
    wrong: tuple[str, ...] = ()
    if request.method == "POST":
        asks = given(asks, request.POST)
        try:
            return act(tuple(asks))
        except ProblemsError as error:
            wrong = error.problems
        except WalkError as error:
            wrong = error.problems
    more = any(one.more for one in asks)
    state = state_of(request)
    page = filled(
        request,
        template,
        asks=asks,
        has_more=more,
        wrong=wrong,
        steps=steps(request),
        accepted=accepted(state),
        fallen=list(
            fallen(state, [one for one in state.entries if describes(one.body) is not None])
        ),
        **values,
    )
    page.status_code = 400 if wrong else 200
    return page


def steps(request: HttpRequest) -> list[dict[str, Any]]:
    """The pages that set a site up, in their order, each with how many things it holds."""
    project = state_of(request).project
    if project is None:
        return []
    roofs = project.site.roofs
    kit = project.kit
    types = (*kit.hoists, *kit.ropes, *kit.terminations, *kit.connectors, *kit.lanyards)
    rows = (
        ("site", "Site and basis", 1),
        ("people", "People", len(project.people)),
        ("roofs", "Roofs", len(roofs)),
        ("anchors", "Anchors", sum(len(one.anchors) for one in roofs)),
        ("kinds", "Kinds of kit", len((*types, *kit.beams, *kit.pieces, *kit.stages))),
        ("units", "Things by tag", len(kit.units)),
        ("plan", "Plan", 0 if project.plan is None else 1),
        ("drops", "Drops", len(project.drops)),
        ("limits", "Limits signed", len(project.signed_limits)),
        ("confirm", "Confirmed values", len(project.confirmations)),
    )
    return [{"page": f"set-up-{page}", "title": title, "many": many} for page, title, many in rows]


def roles(library: RuleLibrary) -> tuple[str, ...]:
    """The roles that the trade's practice knows: who may judge, witness, design."""
    practice = library.get(PRACTICE.rule_set, PRACTICE.edition)
    found = {
        word
        for value in practice.values
        if value.key.startswith(_ROLES)
        for reading in value.readings
        if isinstance(reading.content, WordList)
        for word in reading.content.words
    }
    return tuple(sorted(found))


def signer_as(person: Person) -> Signer:
    """A person as they sign."""
    return Signer(person.id, person.name, person.role, person.employer, person.card)


def id_for(name: str, taken: Iterable[str]) -> str:
    """An id made of a name, none of those that are taken."""
    plain = _NO_LETTER.sub("-", name).strip("-").upper()[: _LONGEST - 3].strip("-") or "X"
    there, number, found = set(taken), 1, plain
    while found in there:
        number += 1
        found = f"{plain}-{number}"
    return found


def today_of(request: HttpRequest) -> datetime.date:
    """The day at this machine."""
    return workbench_of(request).clock().date()


def _problems(project: Project, library: RuleLibrary) -> list[str]:
    found = (*problems(project), *rule_problems(project, library))
    return [f"{_way(one.path)}: found {one.found}, expected {one.expected}" for one in found]


def _way(path: Sequence[str | int]) -> str:
    return " ".join(str(one).replace("_", " ") for one in path if not isinstance(one, int))
