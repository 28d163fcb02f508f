"""A value that somebody found, or confirmed as planned: one tap, one entry."""

from __future__ import annotations

from dataclasses import replace
from enum import StrEnum
from typing import Any
from urllib.parse import urlencode

from django.http import HttpRequest, HttpResponse
from django.views.decorators.http import require_POST

from backspan.core.errors import quoted
from backspan.core.ledger import bodies
from backspan.core.ledger.document import Path
from backspan.core.ledger.fields import Stateable, field_at
from backspan.core.ledger.kinds import Body
from backspan.core.model.evidence import Evidence, StatedValue
from backspan.core.quantities import QuantityError, parse
from backspan.web.application import workbench_of
from backspan.web.pages.common import (
    ChangedError,
    FormError,
    came_since,
    go_on,
    state_of,
    the_drop,
)
from backspan.web.pages.saying import refuse_unplaced
from backspan.web.speaking import signer_of
from backspan.web.values_told import part_of


class Tap(StrEnum):
    """A tap that states a value which is there already, as forms name it."""

    PLAN = "as_planned"
    AGAIN = "again"


Found = bodies.NumberFound | bodies.CountFound | bodies.WordFound


@require_POST
def value(request: HttpRequest, name: str) -> HttpResponse:
    """State one value of a drop's rig, or of a thing in it, as found now by who speaks."""
    state, signer = state_of(request), signer_of(request)
    the_drop(state, name)
    path = tuple(request.POST.get("path", "").split("/"))
    if path[:1] == ("drops",) and path[1:2] != (name,):
        raise FormError(f"{'/'.join(path)}: found a value of another drop, expected one of {name}")
    at = field_at(state.described, path)
    for entry in came_since(request, state):
        if _says(entry.body, path, name):
            raise ChangedError(
                f"Since you opened this page {entry.envelope.signer.name} stated something else"
                " there. Nothing was written. Look at the page as it is now."
            )
    bench = workbench_of(request)
    now = bench.clock().replace(tzinfo=None).isoformat(timespec="minutes")
    tap = next((one for one in Tap if request.POST.get(one)), None)
    text = request.POST.get("value", "")
    body = found_body(at, text, tap=tap, by=signer.person, now=now)
    if at.is_rated:
        body = _by_paper(body, request)
    refuse_unplaced(state, body)
    bench.say([body], signer)
    return _back(request, name, path)


def _back(request: HttpRequest, name: str, path: Path) -> HttpResponse:
    """To where the form stood: a page of its own, and the group that was open there."""
    item, stood = request.POST.get("item", ""), request.POST.get("from", "")
    if stood == "joints":
        return go_on(stood, name, at=item)
    if stood == "values":
        return go_on(stood, name, query=urlencode({"open": part_of(path)}), at=item)
    return go_on("drop", name, query=urlencode({"open": stood}) if stood else "", at=item)


def _by_paper(body: Found, request: HttpRequest) -> Found:
    """A value that a plate or a paper says, with that; a tap on a plan is no paper."""
    said = request.POST.get("evidence", "")
    if said not in {Evidence.LABEL, Evidence.CERTIFICATE}:
        raise FormError(f"found the evidence {quoted(said)}, expected: label | certificate")
    paper = request.POST.get("document", "").strip()[:200] or None
    if paper is None and said == Evidence.CERTIFICATE:
        raise FormError("found no paper, expected the one that says it")
    found: Any = replace(body.found, evidence=Evidence(said), document=paper)
    return replace(body, found=found)


def _says(body: Body, path: Path, drop: str) -> bool:
    """Whether an entry states something at a path, or sets up the rig anew."""
    return getattr(body, "path", None) == path or (
        isinstance(body, bodies.RigSetUp | bodies.RigMoved) and body.drop == drop
    )


def found_body(at: Stateable, text: str, *, by: str, now: str, tap: Tap | None = None) -> Found:
    """What somebody found at a place, by the kind of value that may stand there.

    Raises FormError for a text that cannot be it, or a tap on a plan that says nothing.
    """
    planned = _planned(at)
    found, text = _tapped(at, tap, planned) if tap else (read_value(at, text.strip()), text.strip())
    said: dict[str, Any] = {
        "value": found,
        "evidence": Evidence.MEASURED,
        "by": by,
        "at": now,
        "planned": planned,
    }
    if at.words:
        return bodies.WordFound(at.path, StatedValue(**said, text=str(found)))
    if at.is_count:
        return bodies.CountFound(at.path, StatedValue(**said, text=str(found)))
    return bodies.NumberFound(at.path, StatedValue(**said, text=text))


def _tapped(at: Stateable, tap: Tap, planned: Any) -> tuple[Any, str]:
    """What a tap says, and how that was written.

    To the last digit: a number that was rounded on its way over a page would be another rig.
    """
    stated = at.stated
    if tap is Tap.PLAN:
        if stated is None or planned is None:
            raise FormError("found a tap on the plan, expected a planned value: there is none")
        return planned, stated.text if stated.evidence is Evidence.DRAWING else ""
    if stated is None or stated.evidence is None:
        raise FormError("found a tap on what was found, expected a value: there is none")
    return str(stated.value) if at.words else stated.value, stated.text


def _planned(at: Stateable) -> Any:
    """What the plan says there: beside what was found, or alone."""
    stated = at.stated
    if stated is None:
        return None
    alone = stated.value if stated.evidence is Evidence.DRAWING else None
    planned = alone if stated.planned is None else stated.planned
    return str(planned) if at.words and planned is not None else planned


def read_value(at: Stateable, text: str) -> Any:
    """What a text states there: a word, a count, a number in SI. Raises FormError otherwise."""
    if at.words:
        if text not in at.words:
            raise FormError(f"found {quoted(text)}, expected one of: {' | '.join(at.words)}")
        return text
    if at.dimension is None:
        if not text.isdigit():
            raise FormError(f"found {quoted(text)}, expected a whole number, such as 12")
        return int(text)
    try:
        return parse(text, at.dimension)
    except QuantityError as error:
        raise FormError(str(error)) from error
