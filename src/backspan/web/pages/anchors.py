"""The register of anchors by roof; each inspected, withdrawn, or wondered about on its page."""

from __future__ import annotations

from django.http import HttpRequest, HttpResponse

from backspan.core.errors import quoted
from backspan.core.ledger import bodies
from backspan.core.ledger.kinds import Body
from backspan.core.model.site import AnchorStanding
from backspan.web.anchors_told import Told, findings_about, told_anchors
from backspan.web.falling import ended_by, fallen, stopped_by
from backspan.web.history import entries_about, history_of, is_about_anchor
from backspan.web.pages.common import FormError, field, filled, go_on, state_of
from backspan.web.pages.saying import a_day, line_of_text, matter_id, refuse_since, say_placed
from backspan.web.speaking import signer_of
from backspan.web.workbench import DayState


def page(request: HttpRequest) -> HttpResponse:
    """The register, roof by roof; anchors whose days pass within six weeks first."""
    state = state_of(request)
    if state.project is None:
        return filled(request, "empty.html")
    told = list(told_anchors(state))
    out = [one for one in told if one.anchor.standing is AnchorStanding.OUT_OF_SERVICE]
    first = [one for one in told if one not in out and (one.soon or one.concerns)]
    rest = [one for one in told if one not in out and one not in first]
    return filled(
        request,
        "anchors.html",
        many=len(told),
        first=sorted(first, key=lambda one: one.rank),
        roofs=[
            (roof, [one for one in rest if one.roof == roof.id])
            for roof in state.project.site.roofs
            if roof.anchors
        ],
        out=out,
    )


def one(request: HttpRequest, roof: str, name: str) -> HttpResponse:
    """One anchor; inspected, withdrawn, a concern noted."""
    state = state_of(request)
    told = next(
        (one for one in told_anchors(state) if (one.roof, one.anchor.id) == (roof, name)), None
    )
    if told is None:
        raise FormError(f"found no anchor {quoted(name)} on a roof {quoted(roof)}; see the anchors")
    if request.method == "POST":
        signer_of(request)
        return _said(request, state, told)
    entries = entries_about(state, is_about_anchor(state, roof, name))
    return filled(
        request,
        "anchor.html",
        one=told,
        findings=list(findings_about(state, told)),
        standings=list(AnchorStanding),
        inspection_ends=_inspection_ends(state, told),
        withdrawal_ends=ended_by(state, bodies.AnchorWithdrawn(roof, name, "")),
        stops=stopped_by(state, name),
        fallen=list(fallen(state, entries)),
        history=list(history_of(state, entries)),
    )


def _inspection_ends(state: DayState, told: Told) -> tuple[str, ...]:
    """The drops whose acceptance falls with a new inspection: it names other days or words."""
    today = state.on.isoformat()
    found = [
        drop
        for standing in AnchorStanding
        for drop in ended_by(
            state, bodies.AnchorInspected(told.roof, told.anchor.id, today, standing, today)
        )
    ]
    return tuple(dict.fromkeys(found))


def _said(request: HttpRequest, state: DayState, told: Told) -> HttpResponse:
    does, roof, name = request.POST.get("does", ""), told.roof, told.anchor.id
    if does == "concern":
        says, number = field(request, "says", told="What is the concern"), matter_id(request, state)
        say_placed(request, state, bodies.ConcernNoted(number, name, says))
        return go_on("concern", number)
    refuse_since(request, state, is_about_anchor(state, roof, name))
    match does:
        case "inspected":
            body: Body = _inspected(request, state, told)
        case "withdraw":
            if told.anchor.standing is AnchorStanding.OUT_OF_SERVICE:
                raise FormError(f"Anchor {name} is out of service already")
            body = bodies.AnchorWithdrawn(roof, name, field(request, "why", told="Why"))
        case _:
            raise FormError(f"found {quoted(does)}, expected an inspection, withdrawal or concern")
    say_placed(request, state, body)
    return go_on("anchor", roof, name)


def _inspected(request: HttpRequest, state: DayState, told: Told) -> bodies.AnchorInspected:
    today = state.on.isoformat()
    day = a_day(request, "day", told="Day of the inspection", latest=today)
    word = request.POST.get("standing", "")
    if word not in {str(one) for one in AnchorStanding}:
        words = " | ".join(AnchorStanding)
        raise FormError(f"Standing: found {quoted(word)}, expected one of: {words}")
    certified = None
    if request.POST.get("certified", "").strip():
        certified = a_day(request, "certified", told="Day of the certificate", latest=today)
    says = line_of_text(request, "says", told="What was found", most=500)
    return bodies.AnchorInspected(
        told.roof, told.anchor.id, day, AnchorStanding(word), certified, says
    )
