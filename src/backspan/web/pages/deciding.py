"""What is decided about a drop: lines connected, use permitted, restricted, stopped, the shift."""

from __future__ import annotations

from django.http import HttpRequest, HttpResponse
from django.views.decorators.http import require_POST

from backspan.core.errors import quoted
from backspan.core.ledger import bodies
from backspan.core.ledger.answers import answer_of, papers_of
from backspan.core.ledger.happenings import lines_of
from backspan.core.ledger.kinds import Body
from backspan.web.application import workbench_of
from backspan.web.pages.common import FormError, field, filled, go_on, refuse_unseen, state_of
from backspan.web.pages.common import the_drop as drop_named
from backspan.web.pages.drop import against_a_permit
from backspan.web.speaking import signer_of


def _say(request: HttpRequest, name: str, body: Body, *, at: str = "") -> HttpResponse:
    workbench_of(request).say([body], signer_of(request))
    return go_on("drop", name, at=at)


@require_POST
def connect(request: HttpRequest, name: str) -> HttpResponse:
    """A line that who speaks and a second person saw connected."""
    state, signer = state_of(request), signer_of(request)
    drop_named(state, name)
    refuse_unseen(request, state, name)
    line, second = request.POST.get("line", ""), request.POST.get("second", "")
    if line not in lines_of(state.folded.rig(name)):
        raise FormError(f"found the line {quoted(line)}, expected one of the rig")
    if second not in {one.id for one in state.described.people} - {signer.person}:
        raise FormError("found no second person, expected one who is not the one who speaks")
    return _say(request, name, bodies.LineConnected(name, line, second), at="decide")


@require_POST
def permit(request: HttpRequest, name: str) -> HttpResponse:
    """Permit the use of a drop as it stands, on the review of today."""
    state = state_of(request)
    drop_named(state, name)
    refuse_unseen(request, state, name)
    against = list(against_a_permit(state, name))
    codes = state.folded.codes(name)
    if against or codes is None:
        raise FormError(" ".join(against) or "The rig names something that is not there.")
    found = state.review(name)
    body = bodies.UsePermitted(name, *codes, answer_of(found), papers_of(found))
    return _say(request, name, body, at="decide")


@require_POST
def stop(request: HttpRequest, name: str) -> HttpResponse:
    """Stop a drop, or the whole site: it is never asked whether it still holds."""
    drop_named(state_of(request), name)
    drops = () if request.POST.get("everywhere") else (name,)
    return _say(request, name, bodies.UseStopped(drops, field(request, "why", told="Why")))


@require_POST
def restrict(request: HttpRequest, name: str) -> HttpResponse:
    """Restrict the use of a drop that is permitted."""
    state = state_of(request)
    drop_named(state, name)
    if state.folded.record(name).permit is None:
        raise FormError("found no permit in force, expected one to restrict")
    return _say(request, name, bodies.UseRestricted(name, field(request, "says", told="How")))


@require_POST
def hold(request: HttpRequest, name: str) -> HttpResponse:
    """Begin or end a pause: wind, storm, power."""
    drop_named(state_of(request), name)
    drops = () if request.POST.get("everywhere") else (name,)
    if request.POST.get("ends"):
        refuse_unseen(request, state_of(request), name)
        return _say(request, name, bodies.HoldEnded(drops, field(request, "why", told="Why")))
    return _say(request, name, bodies.HoldBegun(drops, field(request, "why", told="Why")))


def shift(request: HttpRequest, name: str) -> HttpResponse:
    """The check before a shift, as one page."""
    state = state_of(request)
    drop = drop_named(state, name)
    if request.method != "POST":
        standing = next(one for one in state.day["drops"] if one["drop"] == name)
        return filled(
            request, "shift.html", drop=drop, standing=standing, front=state.front(name), walk=WALK
        )
    signer_of(request)
    day = state.on.isoformat()
    if request.POST.get("unfit"):
        says = field(request, "says", told="What is wrong")
        return _say(request, name, bodies.ShiftChecked(name, day, fit=False, says=says))
    refuse_unseen(request, state, name)
    left = [told for number, told in enumerate(WALK) if not request.POST.get(f"seen-{number}")]
    if left:
        raise FormError(f"Not looked at yet: {'; '.join(left)}. Nothing was written.")
    says = request.POST.get("says", "").strip()[:500]
    return _say(request, name, bodies.ShiftChecked(name, day, fit=True, says=says))


#: What is walked before a shift, in walking order; common practice, no source.
WALK = (
    "yesterday's notes, the night's weather, other trades on the roof; the rig is as accepted",
    "roof: way up, light, protection at the edge for who rigs",
    "anchors: tag, dates, condition, nothing else hooked on",
    "beams: label, level, bearing, reach and backspan at their marks",
    "pieces: counted, stamped, held",
    "tiebacks: taut, straight back, to the right anchor, not chafed",
    "top of the rope: shackle, pin, clips tightened",
    "edges: softener under every rope, line and cord",
    "lifelines: one a person, own anchor, free, long enough, rope grab tried",
    "rope: looked at over its whole length on the first empty run",
    "power: circuit, plug locked, cord relieved, no drop of voltage",
    "stage: deck, rails, toeboards, rollers, stirrups, level, load sign",
    "hoists: controls, emergency stop, brake tried; first lift a few feet, then look again",
    "people: trained, harness in date, count and weight as permitted",
    "material: what comes on, where it stands, the heaviest step",
    "wind: read at the edge, and the forecast",
    "below: zone closed, somebody watches, residents told",
    "rescue: kit, way and people for this drop",
)
