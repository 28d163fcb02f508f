"""Anchors out of the drawing under a plan: every problem, or the rows and a button."""

from __future__ import annotations

from django.http import HttpRequest, HttpResponse

from backspan.core.errors import quoted
from backspan.core.model.project import Project
from backspan.core.model.site import Anchor
from backspan.exchange.drawings_in import DrawingError
from backspan.exchange.tables import HEADINGS, TableError, What, entries_for, shown
from backspan.exchange.wrong import MOST_SHOWN
from backspan.web.application import workbench_of
from backspan.web.asking import ProblemsError
from backspan.web.describing import describe, statement, the_project, today_of
from backspan.web.pages.common import FormError, field, filled, go_on, state_of
from backspan.web.pages.roof import the_roof
from backspan.web.plan.under_anchors import Chosen, anchors_under, document_of
from backspan.web.plan.under_shown import Lying, lying_under


def page(request: HttpRequest, roof: str) -> HttpResponse:
    """The anchors that the blocks of a drawing would place; stated once somebody says so."""
    project = the_project(request)
    of = the_roof(project, roof)
    if request.method != "POST":
        return go_on("plan-under", roof, at="anchors")
    lying = _lying(request, project, roof)
    block = field(request, "block", told="Which block", most=200)
    attribute = field(request, "attribute", told="Which attribute is its mark", most=200)
    rows: tuple[Anchor, ...] = ()
    wrong: tuple[str, ...] = ()
    more = 0
    try:
        today = today_of(request).isoformat()
        chosen = Chosen(block, attribute, **statement(request), today=today)
        evidence = workbench_of(request).record.evidence
        rows = anchors_under(evidence, lying, project, roof, chosen)
        if request.POST.get("does") == "state":
            return _state(request, roof, lying, rows)
    except (DrawingError, TableError) as error:
        wrong = tuple(map(str, error.problems[:MOST_SHOWN]))
        more = len(error.problems) - len(wrong)
    except ProblemsError as error:
        wrong = error.problems
    answer = filled(
        request,
        "plan/under_anchors.html",
        roof=of,
        lying=lying,
        document=document_of(lying.underlay),
        block=block,
        attribute=attribute,
        headings=HEADINGS[What.ANCHORS],
        rows=() if wrong else shown(rows, project, roof),
        wrong=wrong,
        more=more,
    )
    answer.status_code = 400 if wrong else 200
    return answer


def _lying(request: HttpRequest, project: Project, roof: str) -> Lying:
    found = lying_under(state_of(request), project, roof)
    if found is None:
        raise FormError(f"found nothing under the plan of {quoted(roof)}, expected a drawing")
    return found


def _state(request: HttpRequest, roof: str, lying: Lying, rows: tuple[Anchor, ...]) -> HttpResponse:
    """State the rows, if they are still of the drawing that was looked at: all, or none."""
    said = request.POST.get("entry", "")
    if said != lying.entry.hash:
        raise FormError(
            f"found another drawing under the plan than the page was made from ({said[:12]!r}),"
            " expected the same: look again"
        )
    describe(request, list(entries_for(rows, roof)), evidence=(lying.underlay.file,))
    return go_on("roof-plan", roof)
