"""Today: what may carry people and what may not, what is owed by whom, what runs out."""

from __future__ import annotations

from collections.abc import Container, Iterator
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
    rows = sorted(rows_of(state), key=worst_first)
    return filled(
        request,
        "today.html",
        rows=rows,
        day=state.day,
        owed=owed(([row["drop"]], one) for row in rows for one in row["front"]["reasons"]),
        runs_out=list(running_out(state.project, state.library, state.on)),
    )


def rows_of(state: DayState, named: Container[str] | None = None) -> Iterator[dict[str, Any]]:
    """Drops with their standing of the day and what stands before all else of their reviews.

    All of them, or those that are named.
    """
    for one in state.day["drops"]:
        if named is not None and one["drop"] not in named:
            continue
        yield {**one, "front": state.front(one["drop"])}


def worst_first(row: dict[str, Any]) -> tuple[bool, int, int, str]:
    """In service last; the worst review first; of equals the one with more against it."""
    verdicts = [str(one) for one in WORST_FIRST]
    front = row["front"]
    worst = verdicts.index(front["verdict"])
    return row["in_service"], worst, -len(front["reasons"]), row["drop"]
