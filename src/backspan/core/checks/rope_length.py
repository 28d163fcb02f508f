"""Does the suspension rope reach the level below, or is its end kept from running out.

The height of a drop is taken from its roof: what the rope needs besides is up to where the beam
bears, above the roof or above the parapet. An end stop that somebody saw sound stands for the
length; any other word of it leaves the length to prove it, also that none is needed.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from backspan.core.findings import DoesNotApply, Verdict
from backspan.core.mechanics.ropes import rope_to_reach
from backspan.core.model.rigs import Found
from backspan.core.model.topics import Topic
from backspan.core.quantities import LENGTH
from backspan.core.sheet.bearing_height import BearingReads, bearing_height, bearing_reads
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.question import Asked, Compared, Question
from backspan.core.sheet.reads import Read, read_of
from backspan.core.sheet.sheet import Sheet
from backspan.core.sheet.subjects import in_force_or_practice
from backspan.core.sheet.witness import EvidenceClass
from backspan.core.sheet.words_seen import WordSeen, each_point

ID, KEY = "rope-length", "line.end-stop"


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


QUESTION = Question(ID, "rope-length", LENGTH, reaches, strength=False)


def judge(case: Case) -> Iterator[Answer]:
    """Of each rope that it is long enough, or else that its end is stopped."""
    for one in each_point(case, ID):
        if isinstance(one, DoesNotApply):
            yield one
            continue
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
            continue
        inputs, at = Inputs(case), (*one.place, "end_stop")
        word = inputs.word("end_stop", stop, EvidenceClass.OBSERVATION, at)
        yield from WordSeen(ID, one.name, at, inputs, word).against(KEY, "end-stop")


CHECK = Check(ID, Topic.LINE, judge)
