"""The things of the kit as pages tell them: as last seen, with tests, place and what is against."""

from __future__ import annotations

import datetime
from collections.abc import Iterator
from dataclasses import dataclass, fields, replace
from enum import StrEnum
from typing import Any

from backspan.core.findings import Finding, Verdict
from backspan.core.ledger.fields import Stateable, type_fields, unit_fields
from backspan.core.ledger.matters import Concern
from backspan.core.model.inherit import with_statements
from backspan.core.model.kit import Rope, RopeKind
from backspan.core.model.project import Project
from backspan.core.model.units import Condition, RopeWear, Test, Unit, UnitKind
from backspan.core.quantities import RATIO
from backspan.core.words import ENGLISH, per_cent, say
from backspan.web.hanging import Hangs, hanging
from backspan.web.shown import Shown, shown_value
from backspan.web.workbench import DayState

#: Each kind with the list of its types, and what several of it are called.
KINDS: dict[UnitKind, tuple[str, str]] = {
    UnitKind.HOIST: ("hoists", "Hoists"),
    UnitKind.ROPE: ("ropes", "Ropes"),
    UnitKind.BEAM: ("beams", "Beams"),
    UnitKind.PIECE: ("pieces", "Lots of pieces"),
    UnitKind.STAGE: ("stages", "Stages"),
}

#: What is looked at of a thing, by its kind.
_LOOKED_AT = {
    UnitKind.HOIST: ("condition", "label"),
    UnitKind.ROPE: ("condition", "broken_in_lay", "broken_in_strand", "wire_worn", "damage"),
    UnitKind.BEAM: ("condition", "label"),
    UnitKind.PIECE: ("condition", "count"),
    UnitKind.STAGE: ("condition", "label"),
}

#: What is seen of a thing on its own page, where the words elsewhere say of what.
_CALLED = {"condition": "condition", "label": "maker's label"}


@dataclass(frozen=True, slots=True)
class Thing:
    """One thing with its tag, as a page tells it."""

    unit: Unit
    type_name: str
    seen: tuple[Shown, ...]
    tests: tuple[tuple[Test, int], ...]
    """Each test with the days that are left of it."""
    places: tuple[Hangs, ...]
    refused: tuple[str, ...]
    concerns: tuple[Concern, ...]

    @property
    def condition(self) -> Shown:
        """Its condition as last seen."""
        return self.seen[0]

    @property
    def against(self) -> bool:
        """Whether something stands against it: it is told before the others."""
        condition = self.unit.condition
        bad = condition is not None and condition.value is not Condition.SOUND
        return bad or bool(self.refused) or bool(self.concerns)


def things(state: DayState, units: tuple[Unit, ...]) -> Iterator[Thing]:
    """Some units as pages tell them: what has something against it first, then by tag."""
    project = state.with_statements
    there, against = hanging(project), refusals(state)
    filled = {one.id: one for one in project.kit.units}
    told = [_thing(state, project, filled[one.id], there, against) for one in units]
    return iter(sorted(told, key=lambda one: (not one.against, one.unit.id)))


def _thing(
    state: DayState,
    project: Project,
    unit: Unit,
    there: tuple[Hangs, ...],
    against: dict[str, list[str]],
) -> Thing:
    made = type_of(project, unit)
    return Thing(
        unit,
        unit.of if made is None else made.name,
        tuple(looked_at(project, unit)),
        tuple((test, _left(test, state.on)) for test in unit.tests),
        tuple(one for one in there if (one.kind, one.name) == (unit.kind, unit.id)),
        tuple(against.get(unit.id, ())),
        open_concerns(state, unit.id, unit.of),
    )


def looked_at(project: Project, unit: Unit) -> Iterator[Shown]:
    """What may be seen of a thing, with what was last seen of it."""
    for value in seen_of(project, unit):
        shown = shown_value(value, project)
        shown = replace(shown, name=_CALLED.get(value.field, shown.name))
        if value.dimension is RATIO:
            found = per_cent(value.stated.value) if value.stated is not None else ""
            shown = replace(shown, like="5 %", found=found if shown.found else "")
        yield shown


def seen_of(project: Project, unit: Unit) -> Iterator[Stateable]:
    """The values that are seen of a thing of its kind; wear only of a wire rope."""
    made = type_of(project, unit)
    worn = not isinstance(made, Rope) or made.kind is RopeKind.WIRE
    for value in unit_fields(with_wear(unit)):
        if value.field in _LOOKED_AT[unit.kind] and (worn or value.record != "rope_wear"):
            yield value


def _left(test: Test, on: datetime.date) -> int:
    return (datetime.date.fromisoformat(test.until) - on).days


def with_wear(unit: Unit) -> Unit:
    """The thing with room for the wear of a rope."""
    if unit.kind is not UnitKind.ROPE or unit.wear is not None:
        return unit
    return replace(unit, wear=RopeWear())


def types_of(project: Project, kind: UnitKind) -> tuple[Any, ...]:
    """The types of a kind that the kit names."""
    found: tuple[Any, ...] = getattr(project.kit, KINDS[kind][0])
    return found


def type_of(project: Project, unit: Unit) -> Any:
    """The type of a thing; None where the kit has none of that name."""
    return next((one for one in types_of(project, unit.kind) if one.id == unit.of), None)


def plate(project: Project, unit: Unit) -> Iterator[tuple[str, Shown | None, str]]:
    """What the maker's plate says: the name, the value as stated, or the word that it is."""
    made = type_of(project, unit)
    if made is None:
        return
    for one in fields(made):
        if isinstance(word := getattr(made, one.name), StrEnum):
            yield one.name.replace("_", " "), None, ENGLISH.word(word)
    filled = with_statements(made, project.kit.values_from)
    for value in type_fields(filled, kinds=KINDS[unit.kind][0]):
        shown = shown_value(value, project)
        yield shown.name, shown, ""


def refusals(state: DayState) -> dict[str, list[str]]:
    """By tag: why the reviews of today refuse a thing."""
    project: Project = state.described
    found: dict[str, list[str]] = {}
    for drop in project.drops:
        for one in state.review(drop.id).findings:
            tag = _blamed(one) if one.verdict is Verdict.FAIL else None
            if tag is not None:
                line = f"{drop.id}: {say(one.message, project.units, places=False)}"
                lines = found.setdefault(tag, [])
                lines += [] if line in lines else [line]
    return found


def _blamed(finding: Finding) -> str | None:
    """The thing that a finding names, or whose own state is all that it was judged on."""
    named = dict(finding.message.values).get("unit")
    if isinstance(named, str):
        return named
    places = [one.place for one in finding.inputs] or [finding.place]
    tags = {place[2] if place[:2] == ("kit", "units") else None for place in places}
    only = tags.pop() if len(tags) == 1 else None
    return only if isinstance(only, str) else None


def open_concerns(state: DayState, *about: str) -> tuple[Concern, ...]:
    """The open concerns about any of these names."""
    every = (one for each in state.folded.matters.concerns.values() for one in each)
    return tuple(one for one in every if one.closed is None and one.says.about in about)
