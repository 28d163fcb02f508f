"""Which very thing is it, is it sound, is it in one place only, and do its tests last.

A plate speaks of a kind; people ride on one hoist, on one rope. A rig that names only the kind
leaves open which thing hangs there. The project file shows the roof as it stands, so a thing that
two rigs of it name is somewhere else than one of them says. Of a lifeline the type is enough, as
what was found of it is asked where it hangs; where its tag is named, that very rope is judged.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from backspan.core.findings import DoesNotApply, Finding, Message, MessageValue
from backspan.core.model.evidence import Evidence, StatedValue
from backspan.core.model.topics import Topic
from backspan.core.model.units import RopeDamage, Unit, UnitKind
from backspan.core.numbers import surely_above, total
from backspan.core.sheet.case import Case, Place
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.limits import needed_value
from backspan.core.sheet.presence import judge_presence
from backspan.core.sheet.unit_tests import judge_tests
from backspan.core.sheet.uses import Use, uses_of
from backspan.core.sheet.witness import EvidenceClass
from backspan.core.sheet.words_allowed import judge_words
from backspan.core.sheet.words_seen import WordSeen

Standing = dict[tuple[UnitKind, str], list[Use]]


@dataclass(frozen=True, slots=True)
class Row:
    """A word on a thing: its field, what it is called, its sentence and its list of words."""

    field: str
    called: str
    says: str
    key: str
    question: str


CONDITION = Row("condition", "condition", "condition", "condition.in-use", "condition")
#: The label of a beam is judged with what it allows (beam_label.py).
PLATE = Row("label", "plate_state", "plate-state", "equipment.label-state", "plate")


def _check(name: str, topic: Topic, kind: UnitKind, *, of_life: bool = False) -> Check:
    def judge(case: Case) -> Iterator[Answer]:
        rig = case.drop.rig
        gone = case.project.moved_to(case.drop.id)
        here = () if rig is None or gone else uses_of(rig, case.drop.id)
        project = case.project
        mine = [use for use in here if use.kind is kind and use.of_life is of_life]
        if of_life:
            mine = [use for use in mine if project.kit.unit(kind, use.name) is not None]
        if not mine:
            yield DoesNotApply(name, case.subject, case.place, Message("na.nothing-of-it"))
        everywhere = case.once_for_all("uses", lambda: _standing(case))
        for use in mine:
            unit = project.kit.unit(kind, use.name)
            if unit is None:
                yield _unknown(case, name, use)
                continue
            place = ("kit", "units", unit.id)
            yield _said(case, name, use, unit, CONDITION)
            yield from _elsewhere(case, name, use, unit, everywhere[kind, unit.id])
            yield from _same_serial(case, name, use, unit, everywhere)
            if unit.label is not None and _goes_by_its_plate(case, unit):
                yield _said(case, name, use, unit, PLATE)
            yield from judge_tests(case, name, use, unit)
            if of_life and unit.wear is not None and unit.wear.damage is not None:
                yield from _damage(case, name, use, unit.wear.damage, place)

    return Check(name, topic, judge)


def _standing(case: Case) -> Standing:
    """Every use on the roof as it stands, by what is used."""
    found: Standing = {}
    for drop, rig in case.project.standing_rigs:
        for use in uses_of(rig, drop):
            found.setdefault((use.kind, use.name), []).append(use)
    return found


def _unknown(case: Case, check: str, use: Use) -> Finding:
    inputs = Inputs(case)
    inputs.want("tag", EvidenceClass.OBSERVATION, use.place)
    words = (("kind", str(use.kind)), ("name", use.name or "not stated"))
    return judge_presence(
        inputs,
        check=check,
        subject=use.at,
        place=use.place,
        message=Message("unit.unknown", words),
        met=None,
        question=f"tag {use.name}",
    )


def _said(case: Case, check: str, use: Use, unit: Unit, row: Row) -> Finding:
    """What somebody found of a thing, against the words with which it may be used."""
    inputs, place = Inputs(case), ("kit", "units", unit.id)
    at = (*place, row.field)
    word = inputs.word(row.called, getattr(unit, row.field), EvidenceClass.OBSERVATION, at)
    found = judge_words(
        check=check,
        subject=use.at,
        place=place,
        message=row.says,
        words=None if word is None else (word,),
        rule=needed_value(case.practice, row.key),
        inputs=inputs,
    )
    return replace(found, question=f"{row.question} of {unit.id}")


def _damage(
    case: Case, check: str, use: Use, seen: StatedValue[RopeDamage], place: Place
) -> Iterator[Finding]:
    """What somebody saw along the rope of a lifeline."""
    inputs, at = Inputs(case), (*place, "wear", "damage")
    word = inputs.word("damage", seen, EvidenceClass.OBSERVATION, at)
    yield from WordSeen(check, use.at, place, inputs, word).against("line.damage", "rope-damage")


def _goes_by_its_plate(case: Case, unit: Unit) -> bool:
    """Whether a thing carries a plate that has to be there, or a number was read from its own."""
    kit = case.project.kit
    if unit.kind is UnitKind.PIECE:
        piece = kit.piece(unit.of)
        return piece is not None and piece.mass.evidence is Evidence.LABEL
    if unit.kind is UnitKind.ROPE:
        rope = kit.rope(unit.of)
        force = None if rope is None else rope.breaking_force
        return force is not None and force.evidence is Evidence.LABEL
    return unit.kind in {UnitKind.HOIST, UnitKind.STAGE}


def _elsewhere(case: Case, check: str, use: Use, unit: Unit, same: list[Use]) -> Iterator[Finding]:
    """A fail where another point names the same thing, or a lot has not so many pieces."""
    others = tuple(dict.fromkeys(other.at for other in same if other.place != use.place))
    words: tuple[tuple[str, MessageValue], ...] = (("unit", unit.id), ("others", others))
    message = "unit.twice"
    if unit.kind is UnitKind.PIECE:
        named = total(other.count for other in same)
        there = None if unit.count is None else unit.count.value
        if there is None or not surely_above(named, limit=there):
            return
        words = (("unit", unit.id), ("named", int(named)), ("count", there))
        message = "unit.lot-too-small"
    elif not others:
        return
    yield judge_presence(
        Inputs(case),
        check=check,
        subject=use.at,
        place=use.place,
        message=Message(message, words),
        met=False,
        question=f"place of {unit.id}",
    )


def _same_serial(
    case: Case, check: str, use: Use, unit: Unit, everywhere: Standing
) -> Iterator[Finding]:
    """A fail where another tag that hangs on the roof has the serial of this thing.

    Of a lot it says nothing: its pieces may stand in two.
    """
    hanging = case.once_for_all("serials", lambda: _by_serial(case, everywhere))
    same = hanging.get((unit.kind, unit.of, _plain(unit.serial)), ())
    others = tuple(one for one in same if one != unit.id)
    if not _plain(unit.serial) or not others or unit.kind is UnitKind.PIECE:
        return
    serial = unit.serial or ""
    words: tuple[tuple[str, MessageValue], ...]
    words = (("unit", unit.id), ("serial", serial), ("others", others))
    inputs = Inputs(case)
    inputs.fact("serial", serial, ("kit", "units", unit.id, "serial"))
    yield judge_presence(
        inputs,
        check=check,
        subject=use.at,
        place=("kit", "units", unit.id, "serial"),
        message=Message("unit.same-serial", words),
        met=False,
        question=f"serial of {unit.id}",
    )


def _by_serial(case: Case, everywhere: Standing) -> dict[tuple[UnitKind, str, str], list[str]]:
    """The tags that hang on the roof, by kind, type and serial."""
    found: dict[tuple[UnitKind, str, str], list[str]] = {}
    for one in case.project.kit.units:
        if (one.kind, one.id) in everywhere:
            found.setdefault((one.kind, one.of, _plain(one.serial)), []).append(one.id)
    return found


def _plain(serial: str | None) -> str:
    """A serial as it is compared: blanks and capitals make no other thing of it."""
    return "".join((serial or "").split()).casefold()


CHECKS: tuple[Check, ...] = (
    _check("hoist-unit", Topic.STAGE, UnitKind.HOIST),
    _check("rope-unit", Topic.LINE, UnitKind.ROPE),
    _check("beam-unit", Topic.BEAM, UnitKind.BEAM),
    _check("piece-lot", Topic.TIPPING, UnitKind.PIECE),
    _check("stage-unit", Topic.STAGE, UnitKind.STAGE),
    _check("lifeline-unit", Topic.FALL_ARREST, UnitKind.ROPE, of_life=True),
)
