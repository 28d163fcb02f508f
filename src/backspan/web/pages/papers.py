"""The papers of a drop: made when they are asked for, kept as evidence when they are issued."""

from __future__ import annotations

import io
from typing import Any

from django.http import HttpRequest, HttpResponse
from django.utils.http import content_disposition_header
from django.views.decorators.http import require_GET, require_POST

from backspan.core.errors import quoted
from backspan.core.ledger import bodies
from backspan.core.ledger.entry_lines import entry_line
from backspan.core.ledger.kinds import STATES_NOTHING
from backspan.core.ledger.matters import Deficiency
from backspan.web.application import workbench_of
from backspan.web.pages.common import (
    ChangedError,
    FormError,
    came_since,
    filled,
    go_on,
    state_of,
    the_drop,
)
from backspan.web.printing import evidence_bytes, printed, printed_with
from backspan.web.site_papers import (
    TITLES,
    deficiency_paper,
    drop_paper,
    drops_of_paper,
    why_not,
)
from backspan.web.speaking import signer_of
from backspan.web.workbench import DayState, Workbench

_TOLD = {
    "tag": "One page for the access: the code, who permitted it, what ends it, lines for shifts.",
    "stop": "One page, English and Spanish: why, by whom, since when, who may lift it.",
    "sheet": "The fifteen items with blanks, to take up without a phone.",
    "review": "The review of today with its section and the calculation that governs.",
}
_CHANGED = (
    "Since you opened this page somebody stated: {lines}. The paper would say something else now;"
    " nothing was issued. Look at it as it is now, and issue that."
)


@require_GET
def page(request: HttpRequest, name: str) -> HttpResponse:
    """Each paper of a drop, or why there is none; what was issued of it."""
    state = state_of(request)
    drop = the_drop(state, name)
    papers = [
        {"name": one, "title": title, "told": _TOLD[one], "why_not": why_not(state, drop, one)}
        for one, title in TITLES.items()
    ]
    issued = [_issued(one) for one in reversed(state.folded.papers) if _is_of(one.body, name)]
    return filled(request, "papers.html", drop=drop, papers=papers, issued=issued)


@require_GET
def pdf(request: HttpRequest, name: str, paper: str) -> HttpResponse:
    """A paper of a drop as the record stands now; nothing is written."""
    state = state_of(request)
    return _download(_of_drop(workbench_of(request), state, name, paper), f"{paper}-{name}.pdf")


@require_POST
def issue(request: HttpRequest, name: str, paper: str) -> HttpResponse:
    """Keep a paper as evidence and say that it was issued."""
    state, bench = state_of(request), workbench_of(request)
    drop = the_drop(state, name)
    signer_of(request)
    _refuse_changed(request, state)
    made = _of_drop(bench, state, name, paper)
    drops = drops_of_paper(state, drop, paper)
    _issue(request, state, made, f"{TITLES[paper]} {name if drops else 'of the whole site'}", drops)
    return go_on("papers", name, at="issued")


@require_GET
def notice(request: HttpRequest, name: str) -> HttpResponse:
    """The notice of a deficiency; nothing is written."""
    state = state_of(request)
    made = _of_deficiency(workbench_of(request), state, _deficiency(state, name))
    return _download(made, f"deficiency-{name}.pdf")


@require_POST
def issue_notice(request: HttpRequest, name: str) -> HttpResponse:
    """Keep the notice of a deficiency as evidence and say that it was issued."""
    state = state_of(request)
    one = _deficiency(state, name)
    signer_of(request)
    _refuse_changed(request, state)
    made = _of_deficiency(workbench_of(request), state, one)
    _issue(request, state, made, f"deficiency notice {name}", one.says.drops)
    return go_on("deficiency", name)


def _of_drop(bench: Workbench, state: DayState, name: str, paper: str) -> bytes:
    drop = the_drop(state, name)
    if paper not in TITLES:
        raise FormError(f"found the paper {quoted(paper)}, expected one of: {', '.join(TITLES)}")
    return printed(drop_paper(bench, state, drop, paper), issued=state.on)


def _of_deficiency(bench: Workbench, state: DayState, one: Deficiency) -> bytes:
    evidence = evidence_bytes(bench.record.evidence, one.raised.envelope.evidence)
    return printed_with(
        lambda shown: deficiency_paper(bench, state, one, shown), evidence, issued=state.on
    )


def _deficiency(state: DayState, name: str) -> Deficiency:
    found = state.folded.matters.deficiencies.get(name)
    if not found:
        raise FormError(f"found no deficiency {quoted(name)}")
    return found[-1]


def _issue(
    request: HttpRequest, state: DayState, made: bytes, title: str, drops: tuple[str, ...]
) -> None:
    """Keep a paper and write its entry, unless something was stated while it was set."""
    bench = workbench_of(request)
    _refuse_since(bench.today(), state.place)
    kept = bench.record.evidence.keep(io.BytesIO(made))
    bench.say([bodies.PaperIssued(title, drops)], signer_of(request), (kept,))


def _refuse_changed(request: HttpRequest, state: DayState) -> None:
    came_since(request, state)
    _refuse_since(state, int(request.POST["place"]))


def _refuse_since(state: DayState, place: int) -> None:
    """Raise ChangedError where something came behind a place that the paper would tell."""
    new = [one for one in state.entries[place:] if not isinstance(one.body, STATES_NOTHING)]
    if new:
        lines = "; ".join(entry_line(one) for one in new[:5])
        raise ChangedError(_CHANGED.format(lines=lines))


def _is_of(body: Any, name: str) -> bool:
    return isinstance(body, bodies.PaperIssued) and (not body.drops or name in body.drops)


def _issued(entry: Any) -> dict[str, Any]:
    return {
        "at": entry.envelope.at[:16].replace("T", " "),
        "by": f"{entry.envelope.signer.name}, {entry.envelope.signer.role}",
        "name": entry.body.name,
        "evidence": entry.envelope.evidence,
    }


def _download(made: bytes, name: str) -> HttpResponse:
    answer = HttpResponse(made, content_type="application/pdf")
    told = content_disposition_header(as_attachment=True, filename=name)
    answer.headers["Content-Disposition"] = told or "attachment"
    return answer
