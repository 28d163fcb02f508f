"""What forms that write an entry share: a day, a value found now, a page that is too old."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from django.http import HttpRequest

from backspan.core.errors import quoted
from backspan.core.ledger.kinds import Body, kind_of, read_body
from backspan.core.ledger.writes import writes_of
from backspan.core.model.dated import DATE, why_no_date
from backspan.core.model.evidence import Evidence, StatedValue
from backspan.core.wire import to_data
from backspan.web.application import workbench_of
from backspan.web.pages.common import FormError, came_since, refuse_stated
from backspan.web.speaking import signer_of
from backspan.web.workbench import DayState


def say_placed(request: HttpRequest, state: DayState, body: Body) -> None:
    """Write an entry that has its place. Raises LedgerError, WireError where it has none."""
    signer = signer_of(request)
    refuse_unplaced(state, body)
    workbench_of(request).say([body], signer)


def refuse_unplaced(state: DayState, body: Body) -> None:
    """Raise LedgerError, WireError where an entry has no place in the site as it stands."""
    read_body(*kind_of(body), to_data(body))
    data = state.folded.data
    for write in writes_of(body, data):
        data = write.on(data)


def found_now(request: HttpRequest, value: Any, text: str) -> StatedValue[Any]:
    """A value that who speaks found now."""
    now = workbench_of(request).clock().replace(tzinfo=None).isoformat(timespec="minutes")
    by = signer_of(request).person
    return StatedValue(value, evidence=Evidence.MEASURED, by=by, at=now, text=text)


def a_day(request: HttpRequest, name: str, *, told: str, latest: str | None = None) -> str:
    """A day of a form, no later than `latest`. Raises FormError for anything else."""
    text = request.POST.get(name, "").strip()
    why = why_no_date(text, with_time=False)
    if why is not None:
        raise FormError(f"{told}: found {quoted(text)}, {why}; expected {DATE}")
    if latest is not None and text > latest:
        raise FormError(f"{told}: found {text}, expected a day that is not after {latest}")
    return text


def line_of_text(request: HttpRequest, name: str, *, told: str, most: int = 100) -> str:
    """A text that may be blank. Raises FormError where it is too long or has signs of control."""
    text = request.POST.get(name, "").strip()
    if len(text) > most or not text.isprintable():
        raise FormError(f"{told}: found {quoted(text)}, expected one line of at most {most} signs")
    return text


def refuse_since(request: HttpRequest, state: DayState, about: Callable[[Body], bool]) -> None:
    """Raise ChangedError where something of that kind was stated since the page was made."""
    refuse_stated([one for one in came_since(request, state) if about(one.body)])


def matter_id(request: HttpRequest, state: DayState) -> str:
    """A name for a new matter, which no other machine takes: a device's name is in it."""
    return f"{workbench_of(request).record.device[-4:]}-{state.place + 1}"
