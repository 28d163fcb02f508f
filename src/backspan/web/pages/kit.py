"""The kit: every thing by its tag, what has something against it first; a new one registered."""

from __future__ import annotations

from typing import Any

from django.http import HttpRequest, HttpResponse

from backspan.core.errors import quoted
from backspan.core.ledger import bodies
from backspan.core.model.identifiers import did_you_mean
from backspan.core.model.units import Condition, Unit, UnitKind
from backspan.web.kit_told import KINDS, Thing, things, types_of
from backspan.web.pages.common import FormError, field, filled, go_on, state_of
from backspan.web.pages.saying import found_now, line_of_text, say_placed
from backspan.web.speaking import signer_of
from backspan.web.workbench import DayState

#: A tag is written on a label on the thing.
MOST_OF_A_TAG = 40


def page(request: HttpRequest) -> HttpResponse:
    """All things, or those whose tag has what is sought in it."""
    state = state_of(request)
    if state.project is None:
        return filled(request, "empty.html")
    sought = request.GET.get("tag", "").strip()
    units = state.project.kit.units
    if sought in {one.id for one in units}:
        return go_on("thing", sought)
    wanted = tuple(one for one in units if sought.casefold() in one.id.casefold())
    told = list(things(state, wanted))
    return filled(
        request,
        "kit.html",
        sought=sought,
        meant="" if told else did_you_mean(sought, [one.id for one in units]),
        found=bool(told),
        many=len(units),
        against=[one for one in told if one.against],
        groups=[_group(kind, told) for kind in UnitKind],
    )


def _group(kind: UnitKind, told: list[Thing]) -> dict[str, Any]:
    """The things of a kind that nothing stands against."""
    mine = [one for one in told if one.unit.kind is kind]
    rest = [one for one in mine if not one.against]
    return {"kind": kind, "title": KINDS[kind][1], "things": rest, "more": len(mine) - len(rest)}


def new(request: HttpRequest) -> HttpResponse:
    """Register a thing: its kind, then tag, type, serial and condition."""
    state = state_of(request)
    if state.project is None:
        return filled(request, "empty.html")
    if request.method == "POST":
        unit = _read(request, state)
        say_placed(request, state, bodies.UnitRegistered(unit))
        return go_on("thing", unit.id)
    text = request.GET.get("kind", "")
    kind = _kind(text) if text else None
    return filled(
        request,
        "kit_new.html",
        kinds=list(UnitKind),
        kind=kind,
        types=() if kind is None else types_of(state.project, kind),
        conditions=list(Condition),
        most=MOST_OF_A_TAG,
    )


def _read(request: HttpRequest, state: DayState) -> Unit:
    signer_of(request)
    project = state.described
    kind = _kind(request.POST.get("kind", ""))
    tag = field(request, "tag", told="Tag", most=MOST_OF_A_TAG)
    if not tag.isprintable() or "/" in tag:
        raise FormError(f"Tag: found {quoted(tag)}, expected signs that print, and no stroke")
    there = next((one for one in project.kit.units if one.id == tag), None)
    if there is not None:
        raise FormError(f"Tag: {tag} is taken: it is a {there.kind} of type {there.of}")
    types = [one.id for one in types_of(project, kind)]
    if tag in types:
        raise FormError(f"Tag: {tag} is the name of a type; expected one of its own for the thing")
    of = request.POST.get("of", "")
    if of not in types:
        raise FormError(
            f"Type: found {quoted(of)}, expected a type of {kind}: {', '.join(types) or 'none yet'}"
        )
    serial = line_of_text(request, "serial", told="Serial") or None
    word = request.POST.get("condition", "")
    if word and word not in {str(one) for one in Condition}:
        told = " | ".join(Condition)
        raise FormError(f"Condition: found {quoted(word)}, expected one of: {told}")
    condition = found_now(request, Condition(word), word) if word else None
    return Unit(id=tag, kind=kind, of=of, serial=serial, condition=condition)


def _kind(text: str) -> UnitKind:
    if text not in {str(one) for one in UnitKind}:
        raise FormError(f"Kind: found {quoted(text)}, expected one of: {' | '.join(UnitKind)}")
    return UnitKind(text)
