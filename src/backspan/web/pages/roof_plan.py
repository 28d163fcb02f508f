"""The roof plan to work on: look at anything, draw, undo; nothing is recorded until it is signed.

The page carries the acts that nobody signed. With a script a pointer sends them one by one and
only what changed comes back; without it every act is a form, and the whole page comes back.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from functools import partial
from typing import Any

from django.http import HttpRequest, HttpResponse
from django.utils.safestring import mark_safe

from backspan.core.drafting import Draft, DraftError, entries_between
from backspan.core.drafting.acting import Hand
from backspan.core.errors import quoted
from backspan.core.findings import Review
from backspan.core.model.evidence import Evidence, StatedValue, Statement
from backspan.core.model.project import Project
from backspan.core.model.site import Roof
from backspan.core.quantities import LENGTH, Style, display
from backspan.drawings.surface import groups, surface_of
from backspan.drawings.things import path_in, path_text
from backspan.web.describing import describe, the_project
from backspan.web.falling import fallen_with
from backspan.web.pages.common import FormError, filled, go_on, refuse_unseen, state_of
from backspan.web.plan.acts import meant, measured
from backspan.web.plan.drawn import (
    MOST_ASKED,
    Reviews,
    Sheet,
    answers,
    reviews_of,
    sheet_of,
    signed,
    touched,
    with_draft,
)
from backspan.web.plan.said import Said, next_anchor, next_mark
from backspan.web.plan.told import Told, history, same_things, things_of, told_of
from backspan.web.plan.under_shown import LAYER, lying_under, under_group
from backspan.web.speaking import signer_of
from backspan.web.workbench import DayState

#: How what was drawn is known, for whoever signs.
_KNOWN = (
    (Evidence.MEASURED, "measured on the roof"),
    (Evidence.DRAWING, "read from a drawing"),
    (Evidence.TOLD, "told by somebody"),
)
_NEW = "new"
#: So many of the acts that nobody signed are listed, the last of them.
_SHOWN = 12
#: What a tap on the plan does, in words of the trade.
_VERBS = (
    ("look", "look"),
    ("move", "move"),
    ("connect", "connect"),
    ("measure", "measure"),
    ("place anchor", "place an anchor"),
    ("place obstacle", "place an obstacle"),
    ("place drop", "place a drop"),
    ("place point", "place a beam"),
    ("add corner", "add a corner"),
    ("draw roof", "draw the roof"),
)
#: What an arrow key moves a thing by, and with the shift key; in metres.
_US_STEPS, _METRIC_STEPS = ("0.3048", "0.0127"), ("0.1", "0.01")
_LAYERS = (
    ("anchor", "anchors"),
    ("obstacle", "obstacles"),
    ("drop", "drops"),
    ("beam", "beams"),
    ("tieback", "tiebacks"),
    ("lifeline", "lifelines"),
    ("words", "words"),
)
#: Lengths of a beam that may be typed, by their names in a form.
_LENGTHS = (
    ("reach", "Reach"),
    ("backspan", "Backspan"),
    ("setback", "Fulcrum behind the face"),
    ("tip", "Beam beyond the line"),
    ("rear", "Fulcrum to rear stand"),
)


@dataclass(frozen=True, slots=True)
class Seen:
    """What a page shows: a sheet, the thing that is looked at, what went wrong or was measured."""

    sheet: Sheet
    path: tuple[str, ...] = ()
    wrong: str = ""
    measured: str = ""


def plans(request: HttpRequest) -> HttpResponse:
    """The plan of the first roof; an empty one where no roof is described."""
    project = the_project(request)
    roofs = project.site.roofs
    return go_on("roof-plan", roofs[0].id if roofs else _next_roof(project))


def page(request: HttpRequest, roof: str) -> HttpResponse:
    """The plan of a roof with what was drawn on it."""
    state, project = state_of(request), the_project(request)
    if request.method == "POST":
        return _done(request, state, project, roof)
    if roof == _NEW:
        return go_on("roof-plan", _next_roof(project))
    if roof != _next_roof(project) and all(one.id != roof for one in project.site.roofs):
        raise FormError(f"found no roof {quoted(roof)}, expected one of the site")
    seen = Seen(Sheet(project, Draft(), project), path_in(request.GET.get("of", "")))
    if request.GET.get("part") == "last":
        return HttpResponse(_last(state, seen.path, roof), content_type="text/plain; charset=utf-8")
    if request.GET.get("part") == "answers":
        return _answered(request, state, roof, seen)
    return _page(request, state, roof, seen)


def _done(request: HttpRequest, state: DayState, project: Project, roof: str) -> HttpResponse:
    """One act more, one less, a look, a measurement, or all of it signed."""
    form = request.POST
    before = sheet_of(project, form.get("draft", ""))
    seen = Seen(before, path_in(form.get("of", "")))
    does = form.get("does", "act")
    try:
        if does == "sign":
            return _sign(request, state, before, roof)
        seen = _after(form.dict(), does, seen, roof)
    except DraftError as error:
        seen = replace(seen, wrong=str(error))
    if request.headers.get("X-Part") == "plan":
        return _parts(request, state, roof, seen, project if "all" in form else before.site)
    answer = _page(request, state, roof, seen)
    answer.status_code = 400 if seen.wrong else 200
    return answer


def _after(form: dict[str, Any], does: str, seen: Seen, roof: str) -> Seen:
    sheet = seen.sheet
    match does:
        case "look":
            return seen
        case "undo":
            return replace(seen, sheet=with_draft(sheet, sheet.draft.without_last()))
        case "drop all":
            return Seen(with_draft(sheet, Draft()), seen.path)
        case "measure":
            long, one, other = measured(Said(form, sheet.site, _roof(sheet.site, roof)))
            texts = (display(each, LENGTH, sheet.site.units) for each in (long, *one, *other))
            told = "{} from {}, {} to {}, {}".format(*texts)
            return replace(seen, measured=told)
        case "act":
            act = meant(Said(form, sheet.site, _roof(sheet.site, roof)))
            return replace(seen, sheet=with_draft(sheet, sheet.draft.after(act)))
        case _:
            raise DraftError(f"found {quoted(does)}, expected act, undo, look, measure or sign")


def _sign(request: HttpRequest, state: DayState, sheet: Sheet, roof: str) -> HttpResponse:
    """Say all of it as entries. Raises DraftError where it is not said how it is known."""
    speaker = signer_of(request)
    known = request.POST.get("known", "")
    if known not in {str(one) for one, _ in _KNOWN}:
        raise DraftError("How it is known: found nothing, expected measured, drawing or told")
    if not sheet.draft.acts:
        raise DraftError("found nothing drawn, expected an act to sign")
    document = request.POST.get("document", "").strip()[:100] or None
    if known == Evidence.DRAWING and document is None:
        raise DraftError("Which drawing: found nothing, expected its number and revision")
    at = state.on.isoformat()
    says = Statement(Evidence(known), speaker.person, at, document)
    site = signed(sheet, Hand(sheet.recorded.units, says))
    for drop in touched(sheet.recorded, site):
        if any(one.id == drop for one in sheet.recorded.drops):
            refuse_unseen(request, state, drop)
    describe(request, entries_between(sheet.recorded, site))
    return go_on("roof-plan", roof, query="signed=1")


def _next_roof(project: Project) -> str:
    return next_mark((one.id for one in project.site.roofs), "R1")


def _roof(site: Project, name: str) -> Roof:
    """The roof of the page as drawn; a blank one where it is not drawn yet."""
    found = next((one for one in site.site.roofs if one.id == name), None)
    return found or Roof(name, "new roof", StatedValue(0.0), (), ())


def _page(request: HttpRequest, state: DayState, roof: str, seen: Seen) -> HttpResponse:
    """The whole page. The answers of its drops come after it, or it would wait for all of them."""
    sheet = seen.sheet
    project = sheet.recorded
    surface = surface_of(project, roof)
    there = _is_there(sheet.site, roof)
    draw = partial(_whole, sheet, roof, {})
    drawn = draw() if sheet.draft.acts else state.once("roof plan", roof, draw)
    recorded = next((one for one in project.site.roofs if one.id == roof), None)
    lying = lying_under(state, project, roof)
    under = under_group(lying, surface, roof)
    return filled(
        request,
        "plan/page.html",
        drawn=mark_safe(drawn),  # noqa: S308 - escaped by its writer
        surface=surface,
        origin=surface.frame.origin,
        signed="signed" in request.GET,
        verbs=_VERBS,
        chosen="look" if there else "draw roof",
        layers=(*_LAYERS, LAYER) if under else _LAYERS,
        lying=lying,
        under=under,
        things=list(things_of(sheet.site, _roof(sheet.site, roof))),
        steps=_US_STEPS if project.units is Style.US else _METRIC_STEPS,
        roofs=project.site.roofs,
        recorded=recorded,
        **_side(state, roof, seen, reviews_of(state, sheet)),
    )


def _parts(
    request: HttpRequest, state: DayState, roof: str, seen: Seen, before: Project | None
) -> HttpResponse:
    """What changed: groups of the drawing, and all that stands beside it."""
    sheet = seen.sheet
    stood = sheet.recorded if before is None else before
    surface, there = surface_of(sheet.recorded, roof), _is_there(sheet.site, roof)
    # What a hand just moved is answered first; the page then asks for the others that it touched.
    last = next(iter(touched(stood, sheet.site)), "")
    first = last or request.POST.get("others", "")
    found = reviews_of(state, sheet, first, most=1 if last else MOST_ASKED)
    # An answer that no longer holds goes from the plan, as one that was asked comes upon it.
    asked = found.touched | frozenset(touched(sheet.recorded, stood))
    drawn = groups(surface, sheet.site, found, roof, was=before, asked=asked) if there else ()
    same = before is not None and same_things(before, sheet.site, roof)
    things = () if same else tuple(things_of(sheet.site, _roof(sheet.site, roof)))
    return filled(
        request,
        "plan/parts.html",
        drawn=mark_safe("".join(text for _, text in drawn)),  # noqa: S308 - escaped by its writer
        things=things,
        **_side(state, roof, seen, found),
    )


def _answered(request: HttpRequest, state: DayState, roof: str, seen: Seen) -> HttpResponse:
    """All of the plan as recorded with the answers of its drops, and what stands beside it."""
    found = reviews_of(state, seen.sheet)
    drawn = state.once("answered plan", roof, partial(_whole, seen.sheet, roof, found))
    return filled(
        request,
        "plan/parts.html",
        drawn=mark_safe(drawn),  # noqa: S308 - escaped by its writer
        **_side(state, roof, seen, found),
    )


def _whole(sheet: Sheet, roof: str, reviews: Mapping[str, Review]) -> str:
    """Every part of the plan of a roof; nothing where it is not there yet."""
    if not _is_there(sheet.site, roof):
        return ""
    surface = surface_of(sheet.recorded, roof)
    return "".join(text for _, text in groups(surface, sheet.site, reviews, roof))


def _last(state: DayState, path: tuple[str, ...], roof: str) -> str:
    """What was stated last of a thing that is pointed at; nothing of one that is not recorded."""
    try:
        found = history(state, told_of(state.described, path, roof))
    except DraftError:
        return ""
    return "{at} {text} ({by})".format(**found[0]) if found else ""


def _is_there(site: Project, roof: str) -> bool:
    return any(one.id == roof for one in site.site.roofs)


def _side(state: DayState, roof: str, seen: Seen, found: Reviews) -> dict[str, Any]:
    """What stands beside the drawing: the thing looked at, what is not signed, what it answers."""
    sheet, site = seen.sheet, seen.sheet.site
    on = _roof(site, roof)
    told: Told | None = None
    wrong = seen.wrong
    if seen.path:
        try:
            told = told_of(site, seen.path, roof)
        except DraftError as error:
            wrong = wrong or str(error)
    return {
        "roof": on,
        "edges": on.edges,
        "anchors": [one.id for one in on.anchors],
        "told": told,
        "history": [] if told is None else history(state, told),
        "of": path_text(seen.path),
        "draft": sheet.text,
        "many": len(sheet.lines),
        "earlier": max(len(sheet.lines) - _SHOWN, 0),
        "lines": sheet.lines[-_SHOWN:],
        "wrong": wrong,
        "measured": seen.measured,
        "answers": list(answers(state, found)),
        "waiting": found.waiting,
        "falls": fallen_with(state, site) if sheet.draft.acts else (),
        "known": _KNOWN,
        "lengths": _LENGTHS,
        "next_anchor": next_anchor(site),
        "rigged": [one.id for one in site.drops if one.rig is not None],
        "kit": site.kit,
        "drops": [one for one in site.drops if one.roof == roof],
    }
