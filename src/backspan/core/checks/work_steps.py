"""Do the steps of the work say enough, and no more than was intended; do the riders fit in it.

A step is what is on the stage at one time. One of them has everybody on it, or the last ride down
at the end of the day is a step that nobody asked about. The riders of a rig are those of all its
stages: each may have its fullest step while the others have theirs.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from backspan.core.findings import Decider, DoesNotApply, Finding, Message, Need
from backspan.core.mechanics.hoist_share import half_way
from backspan.core.mechanics.tipping import weight
from backspan.core.model.stages import HungStage
from backspan.core.model.topics import Topic
from backspan.core.numbers import larger, largest, smaller, surely_below, total
from backspan.core.quantities import FORCE, LENGTH, MASS, RATIO
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.compared import Compared
from backspan.core.sheet.decide import refused_by_a_person
from backspan.core.sheet.limits import limit_of, needed_value
from backspan.core.sheet.placed import PERSON, Load, Step, mass_of, steps_of, weight_of
from backspan.core.sheet.question import Asked, Question
from backspan.core.sheet.reads import Read, read_of
from backspan.core.sheet.sheet import Sheet

ID = "work-steps"
KEY = "load.work-steps"
AT_ONE_PLACE, CLOSE = "load.at-one-place", "load.close-together"


@dataclass(frozen=True, slots=True)
class Work:
    """The steps of the work on a stage, and what may be on it."""

    intended: Read
    riders: Read
    length: Read
    apart: Read
    steps: tuple[Step, ...] = ()
    elsewhere: float = 0.0
    """The most people in a step of each other stage of the rig, together."""
    alone: bool = True
    """Whether any rider may be on this stage: nobody stated for each of several who is on it."""


def riders_fit(sheet: Sheet, one: Asked[Work]) -> Iterator[Compared]:
    """What the riders weigh against all that is intended: they are part of it."""
    each = limit_of(one.values[0], MASS)
    work = one.subject
    many = sheet.read(work.riders) if work.alone else most_people(work.steps)
    people = sheet.do(weight, mass=many * each)
    intended = sheet.do(weight, mass=sheet.read(one.subject.intended))
    numbers = (("people", people, FORCE), ("intended", intended, FORCE))
    yield Compared(people, intended, numbers=numbers)


def as_intended(sheet: Sheet, one: Asked[Work]) -> Iterator[Compared]:
    """All of each step against what is intended at any one time."""
    intended = sheet.do(weight, mass=sheet.read(one.subject.intended))
    for step in one.subject.steps:
        load = total([weight_of(sheet, each) for each in step.loads])
        numbers = (("load", load, FORCE), ("intended", intended, FORCE))
        yield Compared(load, intended, words=(("step", step.name),), numbers=numbers)


def everybody(sheet: Sheet, one: Asked[Work]) -> Iterator[Compared]:
    """The most people in a step, of all stages together, against the riders: no more, no fewer."""
    riders = sheet.read(one.subject.riders)
    people = most_people(one.subject.steps) + one.subject.elsewhere
    counts = (("people", people), ("riders", riders))
    yield Compared(people, riders, counts=counts)
    yield Compared(riders, people, counts=counts)


def most_people(steps: tuple[Step, ...]) -> float:
    """The most people in one of some steps; nobody where there is none."""
    return float(largest(0, *(step.people for step in steps)))


def on_the_deck(sheet: Sheet, one: Asked[Work]) -> Iterator[Compared]:
    """How far from the middle each load is placed, against half the deck."""
    half = sheet.do(half_way, whole=sheet.read(one.subject.length))
    middle = sheet.do(half_way, whole=sheet.read(one.subject.apart))
    for step in one.subject.steps:
        for place in (place for load in step.loads for place in load.places):
            off = abs(place - middle)
            numbers = (("off", off, LENGTH), ("half", half, LENGTH))
            yield Compared(off, half, words=(("step", step.name),), numbers=numbers)


def at_one_place(sheet: Sheet, one: Asked[Work]) -> Iterator[Compared]:
    """The mass at each place against the most that a deck is taken to carry there.

    Things that were placed close together are at one place, and so is one that nobody placed with
    all others; who walks past them is not counted.
    """
    value, close = one.values
    most, apart = limit_of(value, MASS), limit_of(close, LENGTH)
    for step in one.subject.steps:
        for load in step.loads:
            there = [other for other in step.loads if other is load or _beside(load, other, apart)]
            mass = total([mass_of(sheet, other) for other in there])
            numbers = (("load", mass, MASS), ("most", most, MASS))
            yield Compared(mass, most, words=(("step", step.name),), numbers=numbers, value=value)


def _beside(one: Load, other: Load, apart: float) -> bool:
    """Whether two things may lie or be carried closer together than that."""
    if one.person or other.person:
        return False
    if not one.places or not other.places:
        return True
    begin = larger(smaller(*one.places), smaller(*other.places))
    end = smaller(larger(*one.places), larger(*other.places))
    return surely_below(begin - end, limit=apart)


RIDERS = Question(ID, "riders-weight", FORCE, riders_fit, strength=False, share=False)
SUM = Question(ID, "step-load", FORCE, as_intended, strength=False, share=False)
ALL = Question(ID, "steps-with-all", RATIO, everybody, strength=False, share=False)
PLACE = Question(ID, "one-load", MASS, at_one_place, strength=False, share=False)
DECK = Question(ID, "step-on-deck", LENGTH, on_the_deck, strength=False, share=False)


def judge(case: Case) -> Iterator[Answer]:
    """Of each stage whether its riders fit; of the steps that are stated their load and people."""
    hung = () if case.drop.rig is None else case.drop.rig.stages
    if not hung:
        yield DoesNotApply(ID, case.subject, case.place, Message("na.nothing-of-it"))
    for one in hung:
        yield from _stage(case, one, tuple(other for other in hung if other is not one))


def _stage(case: Case, hung: HungStage, others: tuple[HungStage, ...]) -> Iterator[Finding]:
    stage, rig = case.stage(hung.stage), case.drop.rig
    kit, place = ("kit", "stages", stage.id), (*case.place, "rig", "stages", hung.stage)
    work = Work(
        read_of("intended_load", stage, kit),
        read_of("riders", rig, (*case.place, "rig")),
        read_of("stage_length", stage, kit),
        read_of("stirrup_spacing", stage, kit),
        steps_of(case, hung, place),
        total(most_people(steps_of(case, one, place)) for one in others),
        not others or any(one.work is None for one in (hung, *others)),
    )
    name, rule = f"{case.subject}/{hung.stage}", needed_value(case.practice, KEY)
    yield RIDERS.judge(case, Asked(work, name, place, (needed_value(case.practice, PERSON),)))
    if hung.work is None:
        return
    questions = [SUM, ALL]
    questions += [DECK] if any(load.places for step in work.steps for load in step.loads) else []
    for question in questions:
        yield question.judge(case, Asked(work, name, place, (rule,)))
    if any(step.loads for step in work.steps):
        single = tuple(needed_value(case.practice, key) for key in (AT_ONE_PLACE, CLOSE))
        says = Message("need.one-load", (("stage", hung.stage),))
        found = PLACE.judge(case, Asked(work, name, place, single))
        yield refused_by_a_person(found, Need(Decider.QUALIFIED_PERSON, says))


CHECK = Check(ID, Topic.PEOPLE, judge)
