"""What was seen of each lifeline in use: its grab, its length, what its rider is tied to.

That both its ends were seen is asked by `lifeline`. A lanyard tied to the stage may do where lines
of their own hold the stage and lock by themselves: a qualified person says so, no word does. What
was taken over before somebody saw that covers it in no case. Nor does it cover riders below a
second level or a canopy, through which a vertical line holds nobody, nor those of a stage that is
kept off something along its way: they may fall onto that, high above what is clear below.

That a rider works close below a line is no answer where the line goes over the edge beside the
drop, nor where people are placed on the stage and not each of them, anywhere they stay, has a line
of their own close by: the word is asked again. Of whom nobody placed, or said how far they go from
their place, the word itself says that they keep below their line.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from typing import Any

from backspan.core.findings import (
    Decider,
    DoesNotApply,
    Finding,
    Message,
    MessageValue,
    Need,
)
from backspan.core.model.topics import Topic
from backspan.core.numbers import surely_above, surely_below
from backspan.core.quantities import LENGTH, Amount
from backspan.core.sheet.case import Case, Place
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.hung import Hung, each_hung
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.lifelines import Life, each_lifeline
from backspan.core.sheet.limits import limit_of, needed_value
from backspan.core.sheet.presence import judge_presence
from backspan.core.sheet.riders import Unreached, unreached
from backspan.core.sheet.subjects import in_force_or_practice
from backspan.core.sheet.witness import EvidenceClass, words_of
from backspan.core.sheet.words_seen import AskedWord, WordSeen

TIED = "lifeline-tied"
SWING, TAPED = "lifeline-swing", "tolerance.taped-length"
BESIDE = "fall.most-beside"


@dataclass(frozen=True, slots=True)
class ByPerson:
    """A word of a lifeline of which one list passes, and another is left to a person."""

    check: str
    question: str
    place: Place
    accepted: str
    left: str
    need: Message
    words: tuple[tuple[str, MessageValue], ...] = ()


@dataclass(frozen=True, slots=True)
class OfStage:
    """A word of a stage, and the list of those with which a vertical line holds its riders."""

    check: str
    way: tuple[str, ...]
    accepted: str
    need: str


OF_STAGE = (
    OfStage("lifeline-overhead", ("overhead",), "fall.overhead", "need.held-under"),
    OfStage("lifeline-ledge", ("found", "along"), "fall.along", "need.past-ledge"),
)


#: What a finding on a word becomes by what else is known of its line.
Unless = Callable[[Case, Life, Finding], Finding]


def _check(row: AskedWord, unless: Unless | None = None) -> Check:
    def judge(case: Case) -> Iterator[Answer]:
        for one in each_lifeline(case, row.check):
            if isinstance(one, DoesNotApply):
                yield one
                continue
            inputs, word = _word(case, one, row.field)
            seen = WordSeen(row.check, one.name, (*one.place, row.field), inputs, word)
            for found in seen.against(row.key, row.check):
                yield found if unless is None else unless(case, one, found)

    return Check(row.check, Topic.FALL_ARREST, judge)


def _aside(case: Case, one: Life) -> float | None:
    """The station of a line that goes over the edge beside its drop, beyond what a tape is off."""
    station, drop = one.line.station, case.drop
    off = limit_of(needed_value(case.practice, TAPED), LENGTH)
    if station is None:
        return None
    before = surely_below(station, limit=drop.start - off)
    beyond = surely_above(station, limit=drop.start + drop.width.value + off)
    return station if before or beyond else None


def _unreached(case: Case) -> Unreached | None:
    """A step with somebody placed far from every line that is left for them.

    None too where it is not known where a line passes the edge, which is asked elsewhere.
    """
    stations = [line.station for line in (() if case.drop.rig is None else case.drop.rig.lines)]
    if None in stations:
        return None
    known = [one for one in stations if one is not None]
    most = limit_of(needed_value(case.practice, BESIDE), LENGTH)
    return next(unreached(case, known, most), None)


def _swings(case: Case, one: Life, found: Finding) -> Finding:
    """The word that somebody works close below a line, unless its place contradicts it."""
    if found.message.id != f"{SWING}.pass":
        return found
    inputs, word = _word(case, one, "swing")
    station, far = _aside(case, one), _unreached(case)
    told: tuple[tuple[str, MessageValue], ...] = (("found", word or ""),)
    if station is not None:
        ending, told = "aside", (*told, ("station", Amount(station, LENGTH)))
    elif far is not None:
        most = Amount(limit_of(needed_value(case.practice, BESIDE), LENGTH), LENGTH)
        ending = "far"
        told = (*told, ("stage", far.stage), ("step", far.step), ("most", most))
    else:
        return found
    at = (*one.place, "swing")
    inputs.want("swing", EvidenceClass.OBSERVATION, at)
    return judge_presence(
        inputs,
        check=SWING,
        subject=one.name,
        place=at,
        message=Message(f"{SWING}.{ending}", told),
        met=None,
        rules=found.rules,
        question=SWING,
    )


def _word(case: Case, one: Life, field: str) -> tuple[Inputs, str | None]:
    inputs, said = Inputs(case), getattr(one.line, field)
    return inputs, inputs.word(field, said, EvidenceClass.OBSERVATION, (*one.place, field))


def judge_tied(case: Case) -> Iterator[Answer]:
    """One finding a lifeline: its rider's lanyard goes to it, or to what never holds a life."""
    for one in each_lifeline(case, TIED):
        yield one if isinstance(one, DoesNotApply) else _tied(case, one)


def _tied(case: Case, one: Life) -> Finding:
    inputs, word = _word(case, one, "tied_to")
    asked = ByPerson(
        check=TIED,
        question=TIED,
        place=(*one.place, "tied_to"),
        accepted="fall.tied-to",
        left="fall.tied-by-person",
        need=Message("need.tied-to-stage", (("line", one.name),)),
    )
    return _judged(inputs, one, word, asked)


def _of_stage(row: OfStage) -> Check:
    """One finding a lifeline and stage, by a word of the stage that tells of its riders' fall."""

    def judge(case: Case) -> Iterator[Answer]:
        stages = tuple(each_hung(case, row.check))
        for one in each_lifeline(case, row.check):
            if isinstance(one, DoesNotApply):
                yield one
                continue
            for hung in stages:
                if isinstance(hung, DoesNotApply):
                    yield replace(hung, subject=one.name, place=one.place)
                else:
                    yield _below(case, one, hung, row)

    return Check(row.check, Topic.FALL_ARREST, judge)


def _below(case: Case, one: Life, hung: Hung, row: OfStage) -> Finding:
    inputs, at = Inputs(case), (*hung.place, *row.way)
    said: Any = hung.hung
    for step in row.way:
        said = getattr(said, step)
    word = inputs.word(row.way[-1], said, EvidenceClass.OBSERVATION, at)
    stage = hung.hung.stage
    asked = ByPerson(
        check=row.check,
        question=f"{row.check} {stage}",
        place=at,
        accepted=row.accepted,
        left=f"{row.accepted}-by-person",
        need=Message(row.need, (("stage", stage), ("line", one.name))),
        words=(("stage", stage),),
    )
    return _judged(inputs, one, word, asked)


def _judged(inputs: Inputs, one: Life, word: str | None, asked: ByPerson) -> Finding:
    keys = (asked.accepted, asked.left)
    accepted, left = (in_force_or_practice(inputs.case, key) for key in keys)
    rules, refer = accepted, tuple[Need, ...]()
    ending, met = "missing", None if word is None else False
    if word is not None:
        ending = "fail"
        if all(word in words_of(value) for value in accepted):
            ending, met = "pass", True
        elif all(word in words_of(value) for value in left):
            ending, met, rules = "refer", True, left
            refer = (Need(Decider.QUALIFIED_PERSON, asked.need),)
    return judge_presence(
        inputs,
        check=asked.check,
        subject=one.name,
        place=asked.place,
        message=Message(f"{asked.check}.{ending}", (("found", word or ""), *asked.words)),
        met=met,
        rules=rules,
        refer=refer,
        question=asked.question,
    )


CHECKS = (
    _check(AskedWord("lifeline-grab", "grab", "fall.grab")),
    _check(AskedWord("grab-height", "grab_height", "fall.grab-height")),
    _check(AskedWord("lifeline-splices", "splices", "fall.splices")),
    _check(AskedWord(SWING, "swing", "fall.swing"), _swings),
    _check(AskedWord("rider-harness", "harness", "fall.harness")),
    _check(AskedWord("rider-hooks", "hooks", "fall.hooks")),
    _check(AskedWord("lifeline-low-end", "low_end", "fall.low-end")),
    Check(TIED, Topic.FALL_ARREST, judge_tied),
    *(_of_stage(row) for row in OF_STAGE),
)
