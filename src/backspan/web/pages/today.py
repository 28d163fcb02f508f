"""Today: what may carry people and what may not, what is owed by whom, what runs out."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from django.http import HttpRequest, HttpResponse

from backspan.core.findings import WORST_FIRST
from backspan.web.owed import owed
from backspan.web.pages.common import filled, state_of
from backspan.web.running_out import running_out
from backspan.web.workbench import DayState


def page(request: HttpRequest) -> HttpResponse:
    """One row a drop, worst first, each with its reason and who must act."""
    state = state_of(request)
    if state.project is None:
        return filled(request, "empty.html")
    rows = sorted(_rows(state), key=_rank)
    return filled(
        request,
        "today.html",
        rows=rows,
        day=state.day,
        owed=owed(([row["drop"]], one) for row in rows for one in row["front"]["reasons"]),
        runs_out=list(running_out(state.project, state.library, state.on)),
    )


def _rows(state: DayState) -> Iterator[dict[str, Any]]:
    for one in state.day["drops"]:
        yield {**one, "front": state.front(one["drop"])}


def _rank(row: dict[str, Any]) -> tuple[bool, int, int, str]:
    """In service last; the worst review first; of equals the one with more against it."""
    verdicts = [str(one) for one in WORST_FIRST]
    front = row["front"]
    worst = verdicts.index(front["verdict"])
    return row["in_service"], worst, -len(front["reasons"]), row["drop"]
