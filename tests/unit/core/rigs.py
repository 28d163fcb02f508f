"""A small two-point rig made without any file, and ways to change one thing of it. Invented."""

from __future__ import annotations

import datetime
import json
from collections.abc import Sequence
from dataclasses import fields, is_dataclass, replace
from enum import StrEnum
from pathlib import Path
from typing import Any, TypeVar, cast

from backspan.core.checks import CHECKS
from backspan.core.findings import DoesNotApply, Finding
from backspan.core.model.basis import Basis, Confirmation, RuleChoice
from backspan.core.model.evidence import Evidence, StatedValue
from backspan.core.model.kit import (
    BeamLabel,
)
from backspan.core.model.project import Project
from backspan.core.model.rigs import (
    BackspanFrom,
)
from backspan.core.quantities import FORCE, LENGTH, MASS, Dimension, parse
from backspan.core.quantities.named import QUANTITIES
from backspan.core.review.run import case_of, with_margins
from backspan.core.rules.selected import RuleLibrary
from backspan.core.sheet.case import Case, Place
from backspan.core.sheet.check import Answer, Check
from backspan.core.wire import from_data
from tools.write_sources import RULE_SETS, read_rule_sets

R = TypeVar("R")
W = TypeVar("W", bound=StrEnum)

LIBRARY = RuleLibrary(read_rule_sets(RULE_SETS))
ON = datetime.date(2026, 11, 25)
TODAY = ON.isoformat()

OSHA = RuleChoice("us-osha-1926-subpart-l", "1996")
EN = RuleChoice("eu-en-1808", "2015")
QUEBEC = RuleChoice("ca-qc-s21-r4", "undated")
HONG_KONG = RuleChoice("hk-cap-59ac", "undated")
AUSTRALIA = RuleChoice("au-as-nzs-1576-4", "alert-5616")
NEW_ZEALAND = RuleChoice("nz-acop-scaffolding", "1995")
ONTARIO_TALK = RuleChoice("ca-on-ihsa-counterweights", "undated")

HOIST: Place = ("kit", "hoists", "H")
BEAM: Place = ("kit", "beams", "B")
BEAM_UNIT: Place = ("kit", "units", "B-1")
PIECE: Place = ("kit", "pieces", "P")
STAGE: Place = ("kit", "stages", "ST")
RIG: Place = ("drops", "D", "rig")
LEFT: Place = (*RIG, "suspension_points", "L")
RIGHT: Place = (*RIG, "suspension_points", "R")
ARM: Place = (*LEFT, "counterweighted_beam")
STACK: Place = (*ARM, "stack")

#: Where the records of the left point stand that quantities are stated in.
RECORDS: dict[str, Place] = {
    "counterweighted_beam": ARM,
    "fulcrum": (*ARM, "fulcrum"),
    "rear_bearing": (*ARM, "rear"),
    "pad": (*ARM, "fulcrum", "pad"),
    "stack": STACK,
    "piece_group": (*STACK, "groups", 0),
    "suspension_point": LEFT,
    "beam": BEAM,
    "beam_label": (*BEAM, "label"),
    "piece": PIECE,
    "hoist": HOIST,
    "stage": STAGE,
    "rope": ("kit", "ropes", "W"),
    "beam_splice": (*ARM, "splices", "J1"),
    "stage_found": (*RIG, "stages", 0, "found"),
    "termination": ("kit", "terminations", "EYE"),
    "clip_sheet": ("kit", "terminations", "GRIPS", "clips"),
    "clips": (*RIGHT, "clips"),
    "connector": ("kit", "connectors", "WLL"),
    "anchor_rating": ("site", "roofs", "ROOF", "anchors", "A1", "ratings", 0),
    "rope_wear": ("kit", "units", "W-1", "wear"),
    "drop": ("drops", "D"),
    "lanyard": ("kit", "lanyards", "LAN"),
    "parapet": ("site", "roofs", "ROOF", "edges", "S", "parapet"),
}


#: Where a number stands that the record named above does not state.
ELSEWHERE: dict[str, Place] = {
    "elongation": ("kit", "ropes", "LIFE", "elongation"),
    "connector_breaking_force": ("kit", "connectors", "SH", "breaking_force"),
}


def place_of(name: str) -> Place:
    """Where the quantity of that name is stated for the left point."""
    quantity = QUANTITIES[name]
    if name in ELSEWHERE:
        return ELSEWHERE[name]
    return (*RECORDS[quantity.record], quantity.field)


def stated(
    text: str,
    dimension: Dimension,
    evidence: Evidence | None = Evidence.MEASURED,
    *,
    tolerance: str | None = None,
) -> StatedValue[float]:
    """A value as a file states it."""
    half_width = 0.0 if tolerance is None else parse(tolerance, dimension)
    number = parse(text, dimension)
    return StatedValue(number, half_width, evidence, by="MT", at=TODAY, text=text)


def length(text: str, *, tolerance: str | None = None) -> StatedValue[float]:
    """A length taped on the roof."""
    return stated(text, LENGTH, tolerance=tolerance)


def force(text: str, *, tolerance: str | None = None) -> StatedValue[float]:
    """A load read from a label."""
    return stated(text, FORCE, Evidence.LABEL, tolerance=tolerance)


def mass(text: str, *, tolerance: str | None = None) -> StatedValue[float]:
    """A mass read from a stamp."""
    return stated(text, MASS, Evidence.LABEL, tolerance=tolerance)


def count(number: int, *, tolerance: int | None = None) -> StatedValue[int]:
    """Pieces counted on the beam."""
    return StatedValue(number, tolerance, Evidence.MEASURED, by="MT", at=TODAY)


def seen(word: W) -> StatedValue[W]:
    """A word for what somebody saw on the roof."""
    return StatedValue(word, None, Evidence.MEASURED, by="MT", at=TODAY, text=str(word))


def labelled(pieces: int | None = 30, most: str | None = None) -> BeamLabel:
    """What the label of a beam allows."""
    allowed = None if pieces is None else replace(count(pieces), evidence=Evidence.LABEL)
    load, reach = force("3000 lb"), replace(length("15 ft"), evidence=Evidence.LABEL)
    least = replace(length("0 ft"), evidence=Evidence.LABEL)
    return BeamLabel(allowed, None if most is None else mass(most), load, reach, least)


def without_stall(project: Project) -> Project:
    """The project whose hoist has no stall load, nor a limiter that would stand in for it."""
    return put(put(project, (*HOIST, "stall_load"), None), (*HOIST, "limiter_trip"), None)


#: Passes under OSHA with one piece spare on either side.
PROJECT = from_data(Project, json.loads((Path(__file__).parent / "rig.json").read_text("utf-8")))


def confirmed(project: Project, choice: RuleChoice, value: str) -> Project:
    """The project with one value confirmed by its engineer."""
    said = Confirmation(choice.rule_set, choice.edition, value, "PE", "2026-11-18", "office copy")
    return replace(project, confirmations=(*project.confirmations, said))


def on_basis(project: Project, *choices: RuleChoice) -> Project:
    """The project held against these rule sets."""
    return replace(project, basis=Basis(choices))


def case(project: Project = PROJECT, library: RuleLibrary = LIBRARY) -> Case:
    """The project's one drop, ready for a check."""
    return case_of(project, "D", library, on=ON)


def check_named(name: str) -> Check:
    """The registered check of that id."""
    return next(check for check in CHECKS if check.id == name)


def answers(project: Project, check: str, library: RuleLibrary = LIBRARY) -> tuple[Answer, ...]:
    """What one check says of the project's one drop."""
    return tuple(check_named(check).judge(case(project, library)))


def findings(
    project: Project, check: str, subject: str = "D/L", library: RuleLibrary = LIBRARY
) -> tuple[Finding, ...]:
    """The findings of one check on one subject."""
    given = answers(project, check, library)
    found = [one for one in given if isinstance(one, Finding) and one.subject == subject]
    return with_margins(case(project, library), found)


def finding(
    project: Project, check: str, subject: str = "D/L", library: RuleLibrary = LIBRARY
) -> Finding:
    """The only finding of one check on one subject."""
    (only,) = findings(project, check, subject, library)
    return only


def reasons(project: Project, check: str) -> tuple[tuple[str, str], ...]:
    """Subject and message id wherever the check has nothing to judge."""
    given = answers(project, check)
    return tuple((one.subject, one.reason.id) for one in given if isinstance(one, DoesNotApply))


def needs(found: Finding) -> tuple[tuple[str, str], ...]:
    """What would settle a finding: message id and the input or value it is about."""
    told = []
    for need in found.needs:
        values = dict(need.what.values)
        told.append((need.what.id, str(values.get("input", values.get("value", "")))))
    return tuple(told)


def margin(found: Finding, name: str) -> Any:
    """The value of one margin: positive where it is left, negative where it is used up."""
    one = next(one for one in found.margins if one.id == name)
    number = one.value.value if hasattr(one.value, "value") else one.value
    return -cast("float", number) if one.beyond else number


def notes(found: Finding) -> set[str]:
    """The message ids of a finding's notes."""
    return {note.id for note in found.notes}


def put(record: R, place: Sequence[str | int], value: object) -> R:
    """`record` with what stands at `place` replaced; items of lists are named by their id."""
    if not place:
        return cast("R", value)
    step, *rest = place
    if isinstance(record, tuple):
        position = _position(record, step)
        items = [put(one, rest, value) if n == position else one for n, one in enumerate(record)]
        return cast("R", tuple(items))
    if not is_dataclass(record) or isinstance(record, type):
        raise LookupError(f"nothing at {step!r}")
    inner = put(getattr(record, str(step)), rest, value)
    return cast("R", replace(cast("Any", record), **{str(step): inner}))


def at(record: object, place: Sequence[str | int]) -> Any:
    """What stands at a place."""
    for step in place:
        if isinstance(record, tuple):
            record = record[_position(record, step)]
        else:
            record = getattr(record, str(step))
    return record


def _position(items: tuple[Any, ...], step: str | int) -> int:
    if isinstance(step, int):
        return step % len(items)
    for position, item in enumerate(items):
        names = {one.name for one in fields(item)} & {"id", "piece", "stage"}
        if any(getattr(item, name) == step for name in names):
            return position
    raise LookupError(f"no item {step!r}")


def _stacked() -> Project:
    untaped = put(PROJECT, (*ARM, "backspan"), None)
    worked_out = put(untaped, (*ARM, "backspan_from"), BackspanFrom.STACK)
    return put(worked_out, (*STACK, "tail_gap"), length("3 in"))


#: The left backspan worked out: beam 18 ft, tip 6 in, reach 2 ft, gap 3 in, 16 plates of 3 in.
STACKED = _stacked()
