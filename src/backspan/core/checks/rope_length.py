"""Does the suspension rope reach the level below, or is its end kept from running out.

A hoist that winds its rope up keeps turns of it on its drum instead. Which of the two a hoist is
somebody has to say: judged as the other it would pass for nothing.

The height of a drop is taken from its roof: what the rope needs besides is up to where the beam
bears, above the roof or above the parapet. An end stop that somebody saw sound stands for the
length; any other word of it leaves the length to prove it, also that none is needed.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from backspan.core.findings import DoesNotApply, Finding, Message, Verdict
from backspan.core.mechanics.ropes import rope_to_reach
from backspan.core.model.kit import Hoist, HoistRope
from backspan.core.model.rigs import Found
from backspan.core.model.topics import Topic
from backspan.core.quantities import LENGTH, RATIO
from backspan.core.sheet.bearing_height import BearingReads, bearing_height, bearing_reads
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.compared import Compared
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.limits import limit_of
from backspan.core.sheet.presence import judge_presence
from backspan.core.sheet.question import Asked, Question
from backspan.core.sheet.reads import Read, read_of
from backspan.core.sheet.sheet import Sheet
from backspan.core.sheet.subjects import in_force_or_practice
from backspan.core.sheet.witness import EvidenceClass
from backspan.core.sheet.words_seen import Point, WordSeen, each_point

ID, KEY, TURNS = "rope-length", "line.end-stop", "line.least-drum-turns"


@dataclass(frozen=True, slots=True)
class Hanging:
    """A rope with the height it hangs down and where it begins."""

    length: Read
    height: Read
    beam: BearingReads


def reaches(sheet: Sheet, one: Asked[Hanging]) -> Iterator[Compared]:
    """The height from where the beam bears down to the level below against the rope."""
    length, height = sheet.read(one.subject.length), sheet.read(one.subject.height)
    above = bearing_height(sheet, one.subject.beam)
    needed = sheet.do(rope_to_reach, drop_height=height, height_above_roof=above)
    yield Compared(needed, length, numbers=(("needed", needed, LENGTH), ("length", length, LENGTH)))


def turns(sheet: Sheet, one: Asked[Read]) -> Iterator[Compared]:
    """The turns left on the drum against the fewest that each rule allows."""
    left = sheet.read(one.subject)
    for value in one.values:
        least = limit_of(value, RATIO)
        yield Compared(least, left, counts=(("count", left), ("least", least)), value=value)


QUESTION = Question(ID, "rope-length", LENGTH, reaches, strength=False)
ON_DRUM = Question(ID, "drum-turns", RATIO, turns, strength=False)


def judge(case: Case) -> Iterator[Answer]:
    """Of each rope by what its hoist does with it: long enough, stopped, or turns on a drum."""
    for one in each_point(case, ID):
        if isinstance(one, DoesNotApply):
            yield one
            continue
        hoist, inputs = case.hoist(one.point.hoist), Inputs(case)
        at = ("kit", "hoists", hoist.id, "takes_rope")
        if hoist.takes_rope is None:
            inputs.want("takes_rope", EvidenceClass.OBSERVATION, at)
            yield _unsaid(one, hoist, inputs)
            continue
        inputs.fact("takes_rope", str(hoist.takes_rope), at)
        winds = hoist.takes_rope is HoistRope.WINDS
        for found in (_wound if winds else _climbed)(case, one):
            yield replace(found, inputs=(*inputs.used, *found.inputs))


def _wound(case: Case, one: Point) -> Iterator[Finding]:
    left, values = read_of("drum_turns", one.point, one.place), in_force_or_practice(case, TURNS)
    yield ON_DRUM.judge(case, Asked(left, one.name, one.place, values))


def _climbed(case: Case, one: Point) -> Iterator[Finding]:
    point = one.point
    hanging = Hanging(
        read_of("rope_length", point, one.place),
        read_of("drop_height", case.drop, case.place),
        bearing_reads(case, point),
    )
    values = in_force_or_practice(case, KEY)
    found = QUESTION.judge(case, Asked(hanging, one.name, one.place, values))
    stop = point.end_stop
    if found.verdict is Verdict.PASS or stop is None or stop.value is not Found.SOUND:
        yield found
        return
    inputs, at = Inputs(case), (*one.place, "end_stop")
    word = inputs.word("end_stop", stop, EvidenceClass.OBSERVATION, at)
    yield from WordSeen(ID, one.name, at, inputs, word).against(KEY, "end-stop")


def _unsaid(one: Point, hoist: Hoist, inputs: Inputs) -> Finding:
    return judge_presence(
        inputs,
        check=ID,
        subject=one.name,
        place=one.place,
        message=Message("hoist-rope.missing", (("hoist", hoist.id),)),
        met=None,
        question="hoist-rope",
    )


CHECK = Check(ID, Topic.LINE, judge)
