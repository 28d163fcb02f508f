"""A sheet that was filled on the roof, entered: each filled blank one entry, all of them or none.

Who enters it signs; who found the values, and when, stands in each of them.
"""

from __future__ import annotations

import datetime
from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import Any

from django.http import HttpRequest, HttpResponse

from backspan.core.errors import BackspanError, quoted
from backspan.core.ledger import bodies
from backspan.core.ledger.entry import Entry
from backspan.core.ledger.fields import Stateable, field_at
from backspan.core.ledger.stop_list import Known, known
from backspan.core.ledger.writes import writes_of
from backspan.web.application import workbench_of
from backspan.web.blanks import Blank, BlankItem, blank_items, code_of
from backspan.web.pages.common import FormError, came_since, filled, go_on, state_of, the_drop
from backspan.web.pages.evidence import kept
from backspan.web.pages.stating import Found, found_body
from backspan.web.speaking import signer_of
from backspan.web.uploads import TooLargeError
from backspan.web.workbench import DayState


@dataclass(slots=True)
class _Read:
    """What a form says: its entries in the order of their numbers, and all that is wrong."""

    found: list[Found] = field(default_factory=list)
    problems: list[str] = field(default_factory=list)


def page(request: HttpRequest, name: str) -> HttpResponse:
    """The blanks of a drop's sheet with their numbers; filled ones are stated together."""
    state = state_of(request)
    drop = the_drop(state, name)
    if drop.rig is None:
        raise FormError(f"found nothing rigged at drop {name}, expected a rig to look at")
    items = blank_items(state, name)
    if request.method != "POST":
        return _shown(request, state, name, items, ())
    signer = signer_of(request)
    read = _read(request, state, name, items)
    evidence: tuple[str, ...] = ()
    if not read.problems:
        try:
            evidence = kept(request)
        except (FormError, TooLargeError) as error:
            read.problems.append(f"Photograph of the sheet: {error}")
    if read.problems:
        return _shown(request, state, name, items, read.problems)
    workbench_of(request).say(read.found, signer, evidence)
    return go_on("drop", name, at="past")


def _read(request: HttpRequest, state: DayState, name: str, items: Sequence[BlankItem]) -> _Read:
    """Read a whole form; nothing is written."""
    read = _Read()
    _check_code(request, code_of(state, name, items), read)
    by = _person(request, state, read)
    at = _moment(request, read)
    since = came_since(request, state)
    data = state.folded.data
    filled_in = 0
    for blank in (one for item in items for one in item.blanks):
        text = request.POST.get(blank.field, "").strip()
        if not text:
            continue
        filled_in += 1
        try:
            place = field_at(state.described, tuple(blank.value.key.split("/")))
            body = found_body(place, text, by=by, now=at)
            _refuse_later(place, since, at)
            for write in writes_of(body, data):
                data = write.on(data)
        except BackspanError as error:
            read.problems.append(f"{blank.title}: {error}")
        else:
            read.found.append(body)
    if not filled_in:
        read.problems.append("Values: found none, expected one at least that was filled in")
    return read


def _check_code(request: HttpRequest, expected: str, read: _Read) -> None:
    """A sheet of another rig has other numbers: its values would go to wrong places."""
    code = request.POST.get("code", "").strip().upper()
    if code != expected:
        read.problems.append(
            f"Sheet: found {quoted(code[:20])}, expected {expected}. A sheet with another code was"
            " printed of another rig, or before this one was set up: print it anew, or state its"
            " values one by one on the page of the drop"
        )


def _person(request: HttpRequest, state: DayState, read: _Read) -> str:
    by = request.POST.get("by", "")
    if by not in {one.id for one in state.described.people}:
        read.problems.append(f"Found by: found {quoted(by[:40])}, expected a person of the site")
    return by


def _moment(request: HttpRequest, read: _Read) -> str:
    """The day and time of the sheet, to the minute, never after now."""
    day, time = request.POST.get("day", "").strip(), request.POST.get("time", "").strip()
    now = workbench_of(request).clock().replace(tzinfo=None)
    try:
        said = datetime.datetime.combine(
            datetime.date.fromisoformat(day), datetime.time.fromisoformat(time)
        ).replace(tzinfo=None)
    except ValueError:
        read.problems.append(
            f"Day and time: found {quoted(f'{day[:20]} {time[:20]}'.strip())}, expected those on"
            " the sheet, such as 2026-11-25 and 09:30"
        )
        return ""
    if said > now:
        read.problems.append(
            f"Day and time: found {day} {time}, which is still to come; it is now"
            f" {now.isoformat(sep=' ', timespec='minutes')}"
        )
    return said.isoformat(timespec="minutes")


def _refuse_later(place: Stateable, since: Sequence[Entry], at: str) -> None:
    """Raise FormError where somebody found the value after the sheet, or since the page was made.

    What was seen last holds: an older sheet never writes over it unseen.
    """
    for entry in since:
        rig = isinstance(entry.body, bodies.RigSetUp | bodies.RigMoved)
        if getattr(entry.body, "path", None) == place.path or (
            rig and getattr(entry.body, "drop", None) == place.path[1]
        ):
            raise FormError(
                f"{entry.envelope.signer.name} stated something there since you opened this page;"
                " look at the page of the drop, and leave this blank or enter it again"
            )
    stated = place.stated
    if stated is not None and stated.at and known(place) is Known.FOUND and stated.at > at > "":
        raise FormError(
            f"found later than the sheet, {stated.at.replace('T', ' ')}; leave it blank here, or"
            " state it on the page of the drop"
        )


def _shown(
    request: HttpRequest,
    state: DayState,
    name: str,
    items: Sequence[BlankItem],
    problems: Sequence[str],
) -> HttpResponse:
    """The form, with what was typed where something is wrong with it."""
    rows = [{"item": item, "blanks": [_row(request, one) for one in item.blanks]} for item in items]
    typed = {one: request.POST.get(one, "") for one in ("code", "by", "day", "time")}
    answer = filled(
        request,
        "sheet.html",
        drop=the_drop(state, name),
        rows=rows,
        code=code_of(state, name, items),
        people=state.described.people,
        problems=problems,
        typed=typed,
        today=state.on.isoformat(),
    )
    answer.status_code = 400 if problems else 200
    return answer


def _row(request: HttpRequest, blank: Blank) -> dict[str, Any]:
    return {"blank": blank, "one": blank.value, "typed": request.POST.get(blank.field, "")}
