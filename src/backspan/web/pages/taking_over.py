"""Topics that a named person judged in writing instead of the program, entered with the paper."""

from __future__ import annotations

import datetime

from django.http import HttpRequest, HttpResponse

from backspan.core.errors import quoted
from backspan.core.ledger import bodies
from backspan.core.model.project import Project
from backspan.core.model.topics import DropTaken, TakeOver, Topic
from backspan.web.application import workbench_of
from backspan.web.pages.common import FormError, field, filled, go_on, state_of, the_drop
from backspan.web.pages.evidence import kept
from backspan.web.pages.saying import refuse_unplaced
from backspan.web.speaking import signer_of


def page(request: HttpRequest, name: str) -> HttpResponse:
    """What is not judged here, who may judge it, and the paper by which somebody did."""
    state = state_of(request)
    drop = the_drop(state, name)
    if request.method == "POST":
        signer = signer_of(request)
        body = bodies.TopicTakenOver(_taken(request, name))
        refuse_unplaced(state, body)
        workbench_of(request).say([body], signer, kept(request))
        return go_on("drop", name)
    answers = state.review(name).topics
    return filled(
        request,
        "taking_over.html",
        drop=drop,
        front=state.front(name),
        open=[one for one in answers if one.not_judged],
        people=state.described.people,
        given=[one for one in state.described.taken_over if _names(one, name)],
        today=state.on.isoformat(),
    )


def _taken(request: HttpRequest, name: str) -> TakeOver:
    """What a form says. Raises FormError for anything that no paper could say."""
    state = state_of(request)
    project: Project = state.described
    by, named = request.POST.get("by", ""), request.POST.getlist("topics")
    if by not in {one.id for one in project.people}:
        raise FormError(f"found the person {quoted(by)}, expected who judged it, of the people")
    topics = tuple(one for one in Topic if str(one) in named)
    if not topics:
        raise FormError("found no topic, expected those that the paper judges")
    at, until = _day(request, "at"), _day(request, "until")
    if at > state.on.isoformat() or until < at:
        raise FormError(f"found {at} to {until}, expected a day that came, and one not before it")
    code = state.folded.codes(name)
    if code is None:
        raise FormError("The rig names something that is not there: it has no configuration code.")
    document = field(request, "document", told="Document", most=200)
    return TakeOver(by, document, at, until, topics, (DropTaken(name, code[0]),))


def _day(request: HttpRequest, name: str) -> str:
    text = request.POST.get(name, "")
    try:
        return datetime.date.fromisoformat(text).isoformat()
    except ValueError as error:
        raise FormError(f"{name}: found {quoted(text)}, expected a day as 2026-11-25") from error


def _names(paper: TakeOver, drop: str) -> bool:
    return any(one.drop == drop for one in paper.drops)
