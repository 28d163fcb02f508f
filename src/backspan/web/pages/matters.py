"""Deficiencies: raised with photographs, answered, looked at again, closed."""

from __future__ import annotations

from django.http import HttpRequest, HttpResponse
from django.views.decorators.http import require_POST

from backspan.core.errors import quoted
from backspan.core.ledger import bodies
from backspan.core.ledger.kinds import Body
from backspan.web.application import workbench_of
from backspan.web.history import entry_told
from backspan.web.pages.common import FormError, field, filled, go_on, state_of, the_drop
from backspan.web.pages.evidence import kept
from backspan.web.pages.saying import matter_id
from backspan.web.speaking import signer_of


@require_POST
def raise_one(request: HttpRequest, name: str) -> HttpResponse:
    """Raise a deficiency of a drop."""
    state, signer, bench = state_of(request), signer_of(request), workbench_of(request)
    the_drop(state, name)
    about, says = field(request, "about", told="Where"), field(request, "says", told="What")
    forbids = request.POST.get("forbids") != "no"
    number = matter_id(request, state)
    body = bodies.DeficiencyRaised(number, (name,), about, says, forbids_use=forbids)
    bench.say([body], signer, kept(request))
    return go_on("deficiency", number)


def page(request: HttpRequest, name: str) -> HttpResponse:
    """A deficiency with what was said and found of it; answered, looked at again, closed here."""
    state = state_of(request)
    found = state.folded.matters.deficiencies.get(name)
    if not found:
        raise FormError(f"found no deficiency {quoted(name)}")
    if request.method == "POST":
        signer = signer_of(request)
        workbench_of(request).say([_said(request, name)], signer, kept(request))
        return go_on("deficiency", name)
    told = [
        {**entry_told(one), "by": one.envelope.signer.name}
        for one in state.entries
        if getattr(one.body, "id", None) == name
        and isinstance(
            one.body,
            bodies.DeficiencyRaised
            | bodies.DeficiencyAnswered
            | bodies.DeficiencyReinspected
            | bodies.DeficiencyClosed,
        )
    ]
    last = found[-1]
    mended = bool(last.looked) and last.looked[-1][1]
    return filled(request, "deficiency.html", number=name, one=last, told=told, mended=mended)


def _said(request: HttpRequest, name: str) -> Body:
    does = request.POST.get("does", "")
    if does == "close":
        return bodies.DeficiencyClosed(name)
    says = field(request, "says", told="What was done or found")
    match does:
        case "answer":
            return bodies.DeficiencyAnswered(name, says)
        case "mended":
            return bodies.DeficiencyReinspected(name, mended=True, says=says)
        case "not-mended":
            return bodies.DeficiencyReinspected(name, mended=False, says=says)
        case _:
            raise FormError(f"found {quoted(does)}, expected an answer, a second look or a close")
