"""What pages share: filling a template, where to go on to, what came since a page was made."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import Any, TypeVar

from django.http import HttpRequest, HttpResponse, HttpResponseRedirect
from django.shortcuts import render
from django.urls import reverse

from backspan.core.errors import BackspanError, quoted
from backspan.core.ledger.entry import Entry
from backspan.core.ledger.entry_lines import drops_of, entry_line
from backspan.core.model.identifiers import did_you_mean
from backspan.core.model.in_place import Named
from backspan.core.model.rigs import Drop
from backspan.web.application import workbench_of
from backspan.web.workbench import DayState

T = TypeVar("T", bound=Named)


class FormError(BackspanError):
    """A form that cannot be taken as it was filled; says what was found and what was expected."""


class ChangedError(BackspanError):
    """Somebody stated something since the page was made that one has to see first."""


def state_of(request: HttpRequest) -> DayState:
    """The site as it stands now."""
    return workbench_of(request).today()


def filled(request: HttpRequest, template: str, **values: Any) -> HttpResponse:
    """A page from its template."""
    return render(request, template, values)


def go_on(name: str, *parts: str, query: str = "", at: str = "") -> HttpResponse:
    """Send the reader to a page, so that a form is never sent twice by going back."""
    to = reverse(name, args=parts) + (f"?{query}" if query else "") + (f"#{at}" if at else "")
    answer = HttpResponseRedirect(to)
    answer.status_code = 303
    return answer


def the_drop(state: DayState, name: str) -> Drop:
    """The drop of that name. Raises FormError where the site has none."""
    drops = () if state.project is None else state.project.drops
    for one in drops:
        if one.id == name:
            return one
    names = [one.id for one in drops]
    meant = did_you_mean(name, names) or f"drops: {', '.join(names) or 'none'}"
    raise FormError(f"found no drop {quoted(name)}; {meant}")


def named_of(request: HttpRequest, there: Iterable[T], query: str = "of") -> T | None:
    """The thing that a page is asked to put right, `?of=` its id; None where it adds one.

    Raises FormError where there is none of that id.
    """
    if query not in request.GET:
        return None
    name, known = request.GET[query], {one.id: one for one in there}
    if name not in known:
        raise FormError(f"found {quoted(name)}, expected one of: {', '.join(known) or 'none yet'}")
    return known[name]


def field(request: HttpRequest, name: str, *, told: str, most: int = 500) -> str:
    """A text of a form. Raises FormError where it is blank or too long."""
    text = request.POST.get(name, "").strip()
    if not text:
        raise FormError(f"{told}: found nothing, expected a text")
    if len(text) > most:
        raise FormError(f"{told}: found {len(text):,} characters, expected at most {most:,}")
    return text


def refuse_unseen(request: HttpRequest, state: DayState, drop: str) -> None:
    """Raise ChangedError where something about a drop was stated since the page was made."""
    since = came_since(request, state)
    about = [one for one in since if not drops_of(one.body) or drop in drops_of(one.body)]
    refuse_stated(about)


def refuse_stated(since: Sequence[Entry]) -> None:
    """Raise ChangedError where there is an entry that one has to see first."""
    if since:
        lines = "; ".join(entry_line(one) for one in since[:5])
        raise ChangedError(
            f"Since you opened this page somebody stated: {lines}. Nothing was written. Look at"
            " the page as it is now, and do it again if it still holds."
        )


def came_since(request: HttpRequest, state: DayState) -> Sequence[Entry]:
    """The entries that came since the page was made; FormError for a form without a place."""
    # A form that asks for a site's place has the ledger's under the longer name.
    text = request.POST.get("ledger_place") or request.POST.get("place", "")
    if not text.isdigit():
        raise FormError(f"found the place {quoted(text)}, expected the one of the page")
    return state.entries[int(text) :]
