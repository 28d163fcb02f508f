"""Anchors or drops of a roof out of a table: every wrong cell, or the rows and a button."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import PurePath

from django.http import HttpRequest, HttpResponse

from backspan.core.errors import quoted
from backspan.core.model.project import Project
from backspan.core.model.site import Roof
from backspan.exchange.tables import (
    EVIDENCE,
    HEADINGS,
    MOST_BYTES,
    Table,
    TableError,
    Told,
    What,
    brought,
    carried,
    entries_for,
    read_table,
    shown,
    stated,
)
from backspan.exchange.wrong import MOST_SHOWN
from backspan.web.asking import ProblemsError
from backspan.web.describing import describe, statement, steps, the_project, today_of
from backspan.web.pages.common import FormError, filled, go_on
from backspan.web.pages.roof import the_roof
from backspan.web.pages.saying import line_of_text
from backspan.web.uploads import refuse_too_large


@dataclass(frozen=True, slots=True)
class Seen:
    """The rows of a table as they would be stated, and what carries them to where they are."""

    rows: tuple[tuple[str, ...], ...]
    carried: str
    evidence: str
    document: str


def page(request: HttpRequest, roof: str, what: str) -> HttpResponse:
    """The form, all that is wrong with the table that was sent, or its rows."""
    project = the_project(request)
    of, kind = the_roof(project, roof), _what(what)
    wrong: tuple[str, ...] = ()
    more, seen = 0, None
    if request.method == "POST":
        try:
            if request.POST.get("does") == "state":
                return _state(request, project, of, kind)
            seen = _look(request, project, of, kind)
        except TableError as error:
            wrong = tuple(map(str, error.problems[:MOST_SHOWN]))
            more = len(error.problems) - len(wrong)
        except ProblemsError as error:
            wrong = error.problems
    answer = filled(
        request,
        "set_up/table.html",
        roof=of,
        what=kind,
        back=f"set-up-{kind}",
        headings=HEADINGS[kind],
        evidence=EVIDENCE,
        seen=seen,
        wrong=wrong,
        more=more,
        steps=steps(request),
    )
    answer.status_code = 400 if wrong else 200
    return answer


def _what(word: str) -> What:
    if word not in set(What):
        raise FormError(f"found {quoted(word)}, expected a table of: {' or '.join(What)}")
    return What(word)


def _look(request: HttpRequest, project: Project, of: Roof, what: What) -> Seen:
    """The rows of the file that was sent. Raises TableError with every problem."""
    refuse_too_large(request)
    file = request.FILES.get("file")
    if file is None:
        raise FormError("Which file: found none, expected a table as .csv or .xlsx")
    # What is too large is not read: a byte more than may be tells so.
    table = read_table(file.read(MOST_BYTES + 1), PurePath(file.name or "file").name, what)
    told = _told(request)
    rows = stated(table, what, project, of.id, told, today=_today(request))
    return Seen(shown(rows, project, of.id), carried(table), told.evidence, told.document)


def _state(request: HttpRequest, project: Project, of: Roof, what: What) -> HttpResponse:
    """State the rows that were shown, judged anew: all of them, or none."""
    table: Table = brought(request.POST.get("rows", ""))
    rows = stated(table, what, project, of.id, _told(request), today=_today(request))
    describe(request, list(entries_for(rows, of.id)))
    return go_on(f"set-up-{what}")


def _told(request: HttpRequest) -> Told:
    """Who takes it in, when, on what evidence. Raises NobodySpeaksError where nobody said who."""
    word = request.POST.get("evidence", "")
    if word not in set(EVIDENCE):
        words = " or ".join(EVIDENCE)
        raise FormError(f"Where its values come from: found {quoted(word)}, expected {words}")
    document = line_of_text(request, "document", told="Paper that says so", most=200)
    return Told(**statement(request), evidence=word, document=document)


def _today(request: HttpRequest) -> str:
    return today_of(request).isoformat()
