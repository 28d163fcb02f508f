"""One thing with its tag: plate, tests, wear, where it hangs; looked at, tested, exchanged here."""

from __future__ import annotations

from dataclasses import asdict, replace
from enum import StrEnum
from typing import TypeVar

from django.http import HttpRequest, HttpResponse

from backspan.core.errors import quoted
from backspan.core.ledger import bodies
from backspan.core.ledger.document import put
from backspan.core.ledger.kinds import Body
from backspan.core.model.identifiers import did_you_mean
from backspan.core.model.units import Test, TestFound, TestOf, Unit, UnitKind
from backspan.core.quantities import RATIO
from backspan.core.wire import from_data, to_data
from backspan.web.falling import accepted, ended_by, fallen, stopped_by
from backspan.web.hanging import Hangs, hanging
from backspan.web.history import entries_about, history_of, is_about_unit
from backspan.web.kit_told import Thing, plate, seen_of, things, with_wear
from backspan.web.pages.common import FormError, field, filled, go_on, state_of
from backspan.web.pages.saying import (
    a_day,
    found_now,
    line_of_text,
    matter_id,
    refuse_since,
    say_placed,
)
from backspan.web.pages.stating import read_value
from backspan.web.speaking import signer_of
from backspan.web.workbench import DayState

W = TypeVar("W", bound=StrEnum)


def page(request: HttpRequest, tag: str) -> HttpResponse:
    """All of one thing; a form of it states one observation, test, concern or exchange."""
    state = state_of(request)
    unit = _the_unit(state, tag)
    if request.method == "POST":
        signer_of(request)
        return _said(request, state, unit)
    project, about = state.described, is_about_unit(state, tag)
    (told,) = things(state, (unit,))
    entries = entries_about(state, about)
    concern, others = bodies.ConcernNoted("", tag, ""), _others(state, unit)
    return filled(
        request,
        "kit_thing.html",
        one=told,
        plate=list(plate(project, unit)),
        fallen=list(fallen(state, entries)),
        still=_still_accepted(state, told),
        exchanges=[(place, _ends(state, unit, place, others)) for place in told.places],
        others=others,
        tried=[one.value for one in TestOf],
        ended=[one.value for one in TestFound],
        looked_ends=ended_by(state, bodies.UnitLookedAt(unit)),
        stops=stopped_by(state, tag),
        concern_ends=ended_by(state, concern),
        history=list(history_of(state, entries)),
    )


def _said(request: HttpRequest, state: DayState, unit: Unit) -> HttpResponse:
    does = request.POST.get("does", "")
    if does == "concern":
        says = field(request, "says", told="What is the concern")
        name = matter_id(request, state)
        say_placed(request, state, bodies.ConcernNoted(name, unit.id, says))
        return go_on("concern", name)
    refuse_since(request, state, is_about_unit(state, unit.id))
    match does:
        case "look":
            body: Body = bodies.UnitLookedAt(_looked(request, state, unit))
        case "test":
            test = _test(request, state)
            body = bodies.UnitLookedAt(replace(unit, tests=(*unit.tests, test)))
        case "exchange":
            body = _exchange(request, state, unit)
        case _:
            raise FormError(f"found {quoted(does)}, expected a look, test, concern or exchange")
    say_placed(request, state, body)
    return go_on("thing", unit.id)


def _looked(request: HttpRequest, state: DayState, unit: Unit) -> Unit:
    """The thing with one observation of it made now; all else as it was."""
    asked = request.POST.get("path", "")
    whole = with_wear(unit)
    for value in seen_of(state.described, unit):
        if "/".join(value.path) == asked:
            text = request.POST.get("value", "").strip()
            seen = read_value(value, text)
            if value.dimension is RATIO and seen > 1:
                raise FormError(f"found {quoted(text)}, expected a share of it, such as 5 %")
            found = found_now(request, seen, text)
            plain = {**asdict(found), "evidence": str(found.evidence)}
            return from_data(Unit, put(to_data(whole), value.path[3:], plain))
    raise FormError(f"found the place {quoted(asked)}, expected something that is seen of it")


def _test(request: HttpRequest, state: DayState) -> Test:
    what = line_of_text(request, "what", told="What was tested")
    by = line_of_text(request, "by", told="Who tested it")
    for told, text in (("What was tested", what), ("Who tested it", by)):
        if not text:
            raise FormError(f"{told}: found nothing, expected a text")
    day = a_day(request, "day", told="Day of the test", latest=state.on.isoformat())
    until = a_day(request, "until", told="Counts until")
    if until < day:
        raise FormError(f"Counts until: found {until}, expected a day that is not before {day}")
    document = line_of_text(request, "document", told="Document") or None
    tried = _one_of(request, "of", "What it tried", TestOf)
    ended = _one_of(request, "found", "How it ended", TestFound)
    return Test(what, by, day, until, document, tried, ended)


def _one_of(request: HttpRequest, name: str, told: str, words: type[W]) -> W:
    found = line_of_text(request, name, told=told)
    for one in words:
        if found == one:
            return one
    raise FormError(f"{told}: found {quoted(found)}, expected one of: {', '.join(words)}")


def _exchange(request: HttpRequest, state: DayState, unit: Unit) -> bodies.UnitExchanged:
    drop, path = request.POST.get("drop", ""), request.POST.get("path", "")
    there = hanging(state.described)
    here = [one for one in there if (one.kind, one.name) == (unit.kind, unit.id)]
    place = next((one for one in here if (one.drop, one.key) == (drop, path)), None)
    if place is None:
        raise FormError(f"found the place {quoted(path)} of {quoted(drop)}, where it does not hang")
    tag = request.POST.get("put_in", "")
    other = _the_unit(state, tag)
    if other.kind is not unit.kind or other.id == unit.id:
        raise FormError(f"Put in: found the {other.kind} {tag}, expected another {unit.kind}")
    elsewhere = [one for one in there if (one.kind, one.name) == (other.kind, tag)]
    if elsewhere and unit.kind is not UnitKind.PIECE:
        where = ", ".join(f"{one.drop}, {one.at}" for one in elsewhere)
        raise FormError(f"Put in: {tag} hangs at {where}; take it out there first")
    return bodies.UnitExchanged(drop, place.path, unit.id, tag)


def _others(state: DayState, unit: Unit) -> list[Unit]:
    """What may be put in its place: the same kind, hanging nowhere; of lots, any other."""
    project = state.described
    used = {(one.kind, one.name) for one in hanging(project)}
    lot = unit.kind is UnitKind.PIECE
    same = [one for one in project.kit.units if one.kind is unit.kind and one.id != unit.id]
    return [one for one in same if lot or (one.kind, one.id) not in used]


def _ends(state: DayState, unit: Unit, place: Hangs, others: list[Unit]) -> tuple[str, ...]:
    """The drops whose acceptance falls when it is exchanged there, whichever is put in."""
    if not others:
        return ()
    return ended_by(state, bodies.UnitExchanged(place.drop, place.path, unit.id, others[0].id))


def _still_accepted(state: DayState, told: Thing) -> list[str]:
    """Drops that are still accepted although something stands against a thing that hangs there."""
    if not told.against:
        return []
    there = accepted(state)
    return list(dict.fromkeys(one.drop for one in told.places if one.drop in there))


def _the_unit(state: DayState, tag: str) -> Unit:
    units = () if state.project is None else state.project.kit.units
    for one in units:
        if one.id == tag:
            return one
    meant = did_you_mean(tag, [one.id for one in units])
    raise FormError(f"found no thing with the tag {quoted(tag)}; {meant or 'see the kit'}")
