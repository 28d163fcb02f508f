"""A drawing under the plan: handed in, laid by two points, checked by a third length, signed.

Until the third length agrees with the tape nothing of it stands under the plan.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Any
from urllib.parse import urlencode

from django.http import HttpRequest, HttpResponse

from backspan.core.errors import BackspanError, quoted
from backspan.core.ledger import bodies
from backspan.core.ledger.kinds import Body
from backspan.core.model.evidence import StatedValue
from backspan.core.model.laid import LaidError
from backspan.core.model.project import Project
from backspan.core.model.site import Roof
from backspan.core.model.underlay import SHORTEST, TOLERANCE_LENGTH, TOLERANCE_PART
from backspan.drawings.surface import surface_of
from backspan.drawings.under import Window, under_svg
from backspan.exchange.drawings_in import DrawingError, DrawingUnit
from backspan.exchange.pictures import PictureError
from backspan.web.application import workbench_of
from backspan.web.describing import the_project
from backspan.web.pages.common import FormError, filled, go_on, state_of
from backspan.web.pages.saying import refuse_since
from backspan.web.plan.said import next_mark
from backspan.web.plan.under_anchors import choices_of
from backspan.web.plan.under_file import Given, given, handed_in
from backspan.web.plan.under_page import Pages, chosen, page_of, pages_of
from backspan.web.plan.under_picked import (
    APART,
    POINTS,
    Answered,
    answered,
    check_of,
    places_on,
    underlay_of_form,
)
from backspan.web.plan.under_shown import PEN, lying_under, on_surface, window_of
from backspan.web.speaking import signer_of, speaker_of

#: The longer side of a file as it is shown to be picked on.
_SHOWN = 2_000.0
#: The rim around it, and how thick its lines are.
_RIM, _PEN = 60.0, 1.0
#: What is told on the page; anything else is told by the page of what was refused.
_TOLD = (FormError, DrawingError, PictureError, LaidError)


@dataclass(frozen=True, slots=True)
class Seen:
    """What a page shows: a file or pages to choose from, what was found of it, what was wrong."""

    given: Given | None = None
    choice: Pages | None = None
    answer: Answered | None = None
    wrong: tuple[str, ...] = ()


def page(request: HttpRequest, roof: str) -> HttpResponse:
    """What lies under the plan of a roof, and how to lay something there."""
    project = the_project(request)
    of = _roof(project, roof)
    said = request.POST if request.method == "POST" else request.GET
    seen = Seen()
    try:
        if request.method == "POST" and said.get("does") == "upload":
            return _picking(roof, handed_in(request), request.POST.get("unit", ""))
        seen = _seen(request, said)
        if request.method == "POST" and said.get("does") == "page":
            return _picking(roof, _chosen(request), "")
        if request.method == "POST":
            return _done(request, project, of, seen.given)
    except _TOLD as error:
        seen = replace(seen, wrong=tuple(str(error).splitlines()))
    return _page(request, project, of, seen)


def drawn(request: HttpRequest, roof: str) -> HttpResponse:
    """A drawing alone, to be picked on, as an image."""
    _roof(the_project(request), roof)
    found = _given(request, request.GET)
    if found.drawn is None:
        raise FormError(f"found {quoted(found.name)}, expected a drawing")
    window, per = _shown(found)
    left, top = found.drawn.size.low[0], found.drawn.size.high[1]
    step = per * found.factor
    text = under_svg(
        found.drawn.lines,
        lambda at: ((at[0] - left) / step, (top - at[1]) / step),
        window,
        pen=_PEN,
    )
    return _image(text)


def under(request: HttpRequest, roof: str) -> HttpResponse:
    """The drawing that lies under a plan, as an image. Refused before it is confirmed."""
    state, project = state_of(request), the_project(request)
    lying = lying_under(state, project, roof)
    if lying is None:
        raise FormError(f"found nothing under the plan of {quoted(roof)}, expected a drawing")
    laid, underlay = lying.laid, lying.underlay
    if laid is None:
        raise FormError(f"{lying.wrong}; expected a drawing that was confirmed")
    evidence = workbench_of(request).record.evidence
    found = given(evidence, underlay.file, underlay.name, underlay.unit or "")
    lines = () if found.drawn is None else found.drawn.lines
    surface = surface_of(project, roof)
    window = window_of(surface)
    return _image(under_svg(lines, lambda at: on_surface(laid, surface, at), window, pen=PEN))


def _roof(project: Project, name: str) -> Roof:
    """A roof of the site, or a blank one under the mark that the next one gets."""
    for one in project.site.roofs:
        if one.id == name:
            return one
    if name == next_mark((one.id for one in project.site.roofs), "R1"):
        return Roof(name, "new roof", StatedValue(0.0), (), ())
    raise FormError(f"found no roof {quoted(name)}, expected one of the site")


def _seen(request: HttpRequest, said: Any) -> Seen:
    """What a request asks to see: a file, a page of a PDF, or the pages to choose from."""
    if said.get("file"):
        return Seen(_given(request, said))
    if not said.get("pdf"):
        return Seen()
    evidence = workbench_of(request).record.evidence
    pdf, name, number = (said.get(one, "") for one in ("pdf", "name", "page"))
    if number and said.get("does") != "page":
        return Seen(Given.of_page(page_of(evidence, pdf, name, number)))
    return Seen(choice=pages_of(evidence, pdf, name))


def _given(request: HttpRequest, said: Any) -> Given:
    evidence = workbench_of(request).record.evidence
    return given(evidence, said.get("file", ""), said.get("name", ""), said.get("unit", ""))


def _chosen(request: HttpRequest) -> Given:
    """The page of a PDF that a form chooses, kept as a picture."""
    signer_of(request)
    evidence = workbench_of(request).record.evidence
    pdf, name, number = (request.POST.get(one, "") for one in ("pdf", "name", "page"))
    return Given.of_page(chosen(evidence, pdf, name, number))


def _picking(roof: str, new: Given | Pages, unit: str) -> HttpResponse:
    """On to the points of a file, or first to its pages."""
    if isinstance(new, Pages):
        query = urlencode({"pdf": new.pdf, "name": new.name})
        return go_on("plan-under", roof, query=query, at="choose")
    if new.page is None:
        query = urlencode({"file": new.file, "name": new.name, "unit": unit})
    else:
        page = new.page
        query = urlencode({"pdf": page.pdf, "name": page.origin, "page": page.number})
    return go_on("plan-under", roof, query=query, at="pick")


def _done(request: HttpRequest, project: Project, of: Roof, found: Given | None) -> HttpResponse:
    """A check, or a check that is signed."""
    does = request.POST.get("does", "")
    if found is None or does not in {"check", "sign"}:
        raise FormError(
            f"found {quoted(does)}, expected upload, page of a PDF, or check or sign with its file"
        )
    if does == "sign":
        return _sign(request, project, of, found)
    speaker = speaker_of(request)
    by = None if speaker is None else speaker.id
    one = underlay_of_form(request.POST, found, of, by=by, at=state_of(request).on.isoformat())
    answer = answered(check_of(one), project)
    wrong = () if answer.holds else (answer.text,)
    return _page(request, project, of, Seen(found, answer=answer, wrong=wrong))


def _sign(request: HttpRequest, project: Project, of: Roof, found: Given) -> HttpResponse:
    """State it as an entry. Raises FormError where its third length does not agree."""
    signer, bench = signer_of(request), workbench_of(request)

    def is_about_it(body: Body) -> bool:
        match body:
            case bodies.UnderlayLaid(roof=roof) | bodies.AnchorRegistered(roof=roof):
                return roof == of.id
            case _:
                return isinstance(body, bodies.SiteDescribed)

    with bench.saying:
        state = state_of(request)
        refuse_since(request, state, is_about_it)
        day = state.on.isoformat()
        one = underlay_of_form(request.POST, found, of, by=signer.person, at=day)
        answer = answered(check_of(one), project)
        if not answer.holds:
            raise FormError(answer.text)
        bench.say([bodies.UnderlayLaid(of.id, one)], signer, found.evidence)
    return go_on("plan-under", of.id, query="signed=1")


def _shown(found: Given) -> tuple[Window, float]:
    """The window in which a file is picked on, and its own units in one of the window's."""
    across, down = found.sides
    per = max(across, down) / _SHOWN
    return Window(-_RIM, -_RIM, across / per + 2 * _RIM, down / per + 2 * _RIM), per


def _within(window: Window) -> Window:
    """The same without its rim, which a picture does not have in it."""
    return Window(0.0, 0.0, window.width - 2 * _RIM, window.height - 2 * _RIM)


def _page(request: HttpRequest, project: Project, of: Roof, seen: Seen) -> HttpResponse:
    found = seen.given
    lying = lying_under(state_of(request), project, of.id)
    choices = wrong = None
    if lying is not None and lying.laid is not None and not lying.underlay.is_picture:
        try:
            choices = choices_of(workbench_of(request).record.evidence, lying.underlay)
        except BackspanError as error:
            wrong = str(error)
    answer = filled(
        request,
        "plan/under.html",
        roof=of,
        known=any(one.id == of.id for one in project.site.roofs),
        lying=lying,
        choices=choices,
        not_read=wrong,
        given=found,
        seen=seen,
        number=request.POST.get("page", ""),
        units=tuple(DrawingUnit),
        signed="signed" in request.GET,
        part=f"{100 * TOLERANCE_PART:g} %",
        length=f"{1000 * TOLERANCE_LENGTH:g} mm",
        shortest=f"{SHORTEST:g} m",
        **({} if found is None else _to_pick(request, of, found)),
    )
    answer.status_code = 400 if seen.wrong else 200
    return answer


def _to_pick(request: HttpRequest, of: Roof, found: Given) -> dict[str, Any]:
    """What the form of the points shows, with what was typed in it before."""
    said, (window, per) = request.POST, _shown(found)
    places = list(places_on(of))
    points = [
        {
            "number": number,
            "told": told,
            "x": said.get(f"x{number}", ""),
            "y": said.get(f"y{number}", ""),
            "at": said.get(f"at{number}", ""),
            "along": said.get(f"along{number}", ""),
            "back": said.get(f"back{number}", ""),
        }
        for number, told in POINTS
    ]
    places_two = [(APART, "taped from the first point"), *places]
    return {
        "window": window,
        "image": window if found.size is None else _within(window),
        "per": f"{per:.12g}",
        "left": f"{found.corner[0]:.12g}",
        "top": f"{found.corner[1]:.12g}",
        "laid_by": list(zip(points[:2], (places, places_two), strict=True)),
        "checked_by": points[2:],
        "apart": said.get("apart", ""),
        "taped": said.get("taped", ""),
        "unit": said.get("unit", request.GET.get("unit", "")),
    }


def _image(text: str) -> HttpResponse:
    answer = HttpResponse(text, content_type="image/svg+xml")
    answer.headers["Content-Security-Policy"] = "default-src 'none'; sandbox"
    # Its address names the file or entry and the sheet: it is another address if either is another.
    answer.headers["Cache-Control"] = "private, max-age=86400, immutable"
    return answer
