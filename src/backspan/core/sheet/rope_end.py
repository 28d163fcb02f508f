"""How the end of a rope is made, as the kit states it: of a suspension rope or of a lifeline."""

from __future__ import annotations

from collections.abc import Container, Iterator
from dataclasses import dataclass

from backspan.core.model.kit import FORMED, Termination, TerminationKind
from backspan.core.model.rigs import Lifeline, SuspensionPoint
from backspan.core.quantities import LENGTH
from backspan.core.sheet.case import Case, Place
from backspan.core.sheet.compared import Compared
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.question import Asked
from backspan.core.sheet.reads import Read, read_of
from backspan.core.sheet.rope_of import diameter_of
from backspan.core.sheet.sheet import Sheet
from backspan.core.sheet.witness import EvidenceClass
from backspan.core.sheet.words_seen import WordSeen


@dataclass(frozen=True, slots=True)
class Roped:
    """What hangs on a rope with an end, as findings name it."""

    on: SuspensionPoint | Lifeline
    name: str
    place: Place


@dataclass(frozen=True, slots=True)
class EndOnRope:
    """The diameter an end or a hoist is made for, and the rope's own."""

    made_for: Read
    rope: Read


def end_of(
    case: Case, on: SuspensionPoint | Lifeline, place: Place
) -> tuple[Termination | None, Place]:
    """The termination and where it stands; where it would be named, if it is not."""
    name = on.termination
    if name is None:
        return None, (*place, "termination")
    return case.project.kit.termination(name), ("kit", "terminations", name)


def end_kind(
    inputs: Inputs, on: SuspensionPoint | Lifeline, place: Place
) -> TerminationKind | None:
    """What the end is made with; a fact of the kit, on nobody's word. None is noted as wanted."""
    end, place = end_of(inputs.case, on, place)
    if end is None or end.kind is None:
        inputs.want("termination_kind", EvidenceClass.RATING, (*place, "kind"))
        return None
    inputs.fact("termination_kind", str(end.kind), (*place, "kind"))
    return end.kind


def end_seen(case: Case, check: str, one: Roped) -> WordSeen:
    """What the end is made with, to be held against a list of words."""
    inputs = Inputs(case)
    kind = end_kind(inputs, one.on, one.place)
    return WordSeen(check, one.name, one.place, inputs, None if kind is None else str(kind))


def maker_seen(
    case: Case, check: str, one: Roped, formed: Container[TerminationKind | None] = FORMED
) -> WordSeen | None:
    """Who formed the end, where it is one that is formed on the rope; else nobody is asked."""
    inputs = Inputs(case)
    if end_kind(inputs, one.on, one.place) not in formed:
        return None
    end, place = end_of(case, one.on, one.place)
    word = None if end is None or end.made_by is None else str(end.made_by)
    at = (*place, "made_by")
    if word is None:
        inputs.want("termination_maker", EvidenceClass.RATING, at)
    else:
        inputs.fact("termination_maker", word, at)
    return WordSeen(check, one.name, at, inputs, word)


def end_on_rope(case: Case, one: Roped) -> Asked[EndOnRope]:
    """The end and the rope it is on, to be asked whether they fit."""
    end, place = end_of(case, one.on, one.place)
    made_for = read_of("termination_diameter", end, place)
    return Asked(EndOnRope(made_for, diameter_of(case, one.on, one.place)), one.name, one.place)


def fits(sheet: Sheet, one: Asked[EndOnRope]) -> Iterator[Compared]:
    """One diameter against the other, both ways: only equal ones hold."""
    made_for, rope = sheet.read(one.subject.made_for), sheet.read(one.subject.rope)
    numbers = (("made_for", made_for, LENGTH), ("diameter", rope, LENGTH))
    yield Compared(rope, made_for, numbers=numbers)
    yield Compared(made_for, rope, numbers=numbers)
