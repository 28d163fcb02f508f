"""All that a drop leans on: its rig, its roof, and the very things and kinds of kit it names."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass, is_dataclass, replace
from functools import cache
from typing import Any

from backspan.core.model.evidence import StatedValue
from backspan.core.model.inherit import field_names
from backspan.core.model.rigs import Rig
from backspan.core.model.units import UnitKind
from backspan.core.quantities.named import QUANTITIES
from backspan.core.sheet.case import Case, Place
from backspan.core.sheet.reads import Read, read_of
from backspan.core.sheet.uses import uses_of

#: What a word is called where its field alone does not say it.
#: Stated words that another name is known by in the trade's words, by their record and field.
NAMES_OF_WORDS = {
    ("unit", "label"): "label_state",
    ("tieback", "found"): "tieback",
    ("lifeline", "found"): "lifeline",
    ("fitted", "found"): "connector",
    ("tieback", "softener"): "tieback_softener",
    ("lifeline", "softener"): "lifeline_softener",
    ("suspension_point", "softener"): "line_softener",
    ("beam_splice", "there"): "joint_there",
}
_NUMBERS = {(one.record, one.field): one.name for one in QUANTITIES.values() if one.record}


@dataclass(frozen=True, slots=True)
class StatedAt:
    """A value as the file states it: what it is called, where it stands; a number also to read."""

    name: str
    stated: StatedValue[Any]
    place: Place
    read: Read | None


def stated_values(case: Case) -> Iterator[StatedAt]:
    """Every value that somebody stated of the drop and of what it leans on."""
    for record, place in _leans_on(case):
        yield from _stated_of(record, place)


def record_name(record: type) -> str:
    """What the table of quantities calls a record: CounterweightedBeam, counterweighted_beam."""
    return _snake(record.__name__)


@cache
def _snake(name: str) -> str:
    return re.sub(r"(?<!^)(?=[A-Z])", "_", name).lower()


def name_of_field(record: type, field: str) -> str:
    """What a stated value is called: the name of its quantity, or of the word it is."""
    there = (record_name(record), field)
    return _NUMBERS.get(there) or NAMES_OF_WORDS.get(there, field)


def _stated_of(record: Any, place: Place) -> Iterator[StatedAt]:
    kind = record.__class__
    for field in field_names(kind):
        value, there = getattr(record, field), (*place, field)
        if isinstance(value, StatedValue):
            name = name_of_field(kind, field)
            yield StatedAt(
                name, value, there, read_of(name, record, place) if name in QUANTITIES else None
            )
        elif isinstance(value, tuple):
            for index, item in enumerate(value):
                if is_dataclass(item):
                    yield from _stated_of(item, (*there, getattr(item, "id", index)))
        elif is_dataclass(value):
            yield from _stated_of(value, there)


def _leans_on(case: Case) -> Iterator[tuple[object, Place]]:
    """Each record with its place; of a roof only the drop's edge and the anchors of its lines."""
    drop, rig = case.drop, case.drop.rig
    yield drop, case.place
    ties = () if rig is None else (one for point in rig.suspension_points for one in point.tied)
    lines = [*ties, *(() if rig is None else rig.lines)]
    used = {line.anchor for line in lines if line.anchor is not None}
    for roof in case.project.site.roofs:
        anchors = tuple(one for one in roof.anchors if one.id in used)
        edges = tuple(one for one in roof.edges if (roof.id, one.id) == (drop.roof, drop.edge))
        if anchors or roof.id == drop.roof:
            yield replace(roof, anchors=anchors, edges=edges), ("site", "roofs", roof.id)
    if rig is not None:
        yield from _kit(case, rig, {line.rope for line in lines})


def _kit(case: Case, rig: Rig, ropes: set[str | None]) -> Iterator[tuple[object, Place]]:
    """The units that a rig names, and the kinds that it or they name."""
    kit, uses = case.project.kit, list(uses_of(rig, case.drop.id))
    for kind in UnitKind:
        names = {use.name for use in uses if use.kind is kind}
        names |= {rope for rope in ropes if rope and kind is UnitKind.ROPE}
        units = [one for one in kit.units if one.kind is kind and one.id in names]
        yield from ((one, ("kit", "units", one.id)) for one in units)
        names |= {one.of for one in units}
        for one in getattr(kit, f"{kind}s"):
            if one.id in names:
                yield one, ("kit", f"{kind}s", one.id)
    points = rig.suspension_points
    ends = {point.termination for point in points}
    ends |= {line.termination for point in points for line in point.tied}
    ends |= {line.termination for line in rig.lines}
    worn = {line.lanyard for line in rig.lines}
    fitted = {one.connector for point in points for one in point.connectors or ()}
    for name, things, named in (
        ("terminations", kit.terminations, ends),
        ("connectors", kit.connectors, fitted),
        ("lanyards", kit.lanyards, worn),
    ):
        yield from ((one, ("kit", name, one.id)) for one in things if one.id in named)
