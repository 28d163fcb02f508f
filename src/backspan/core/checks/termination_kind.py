"""How the end of the suspension rope is made: with what, by whom, and for which rope.

U-bolt clips and knots hold no hoist's rope; an end formed on the rope is its maker's work or a
qualified person's; an end made for another diameter holds neither.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from backspan.core.findings import DoesNotApply
from backspan.core.model.kit import FORMED
from backspan.core.model.topics import Topic
from backspan.core.quantities import LENGTH
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.compared import Compared
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.question import Asked, Question
from backspan.core.sheet.reads import Read, read_of
from backspan.core.sheet.rope_end import end_kind, end_of
from backspan.core.sheet.rope_of import diameter_of
from backspan.core.sheet.sheet import Sheet
from backspan.core.sheet.witness import EvidenceClass
from backspan.core.sheet.words_seen import Point, WordSeen, each_point

ID = "termination-kind"

#: Which list refuses a kind of end, and the sentence that says so.
REFUSED = (("line.refused-clips", "end-clips"), ("line.refused-knot", "end-knot"))


@dataclass(frozen=True, slots=True)
class EndOnRope:
    """The diameter an end is made for, and the rope's own."""

    made_for: Read
    rope: Read


def fits(sheet: Sheet, one: Asked[EndOnRope]) -> Iterator[Compared]:
    """One diameter against the other, both ways: only equal ones hold."""
    made_for, rope = sheet.read(one.subject.made_for), sheet.read(one.subject.rope)
    numbers = (("made_for", made_for, LENGTH), ("diameter", rope, LENGTH))
    yield Compared(rope, made_for, numbers=numbers)
    yield Compared(made_for, rope, numbers=numbers)


FITS = Question(ID, "end-fits", LENGTH, fits, strength=False, share=False)


def judge(case: Case) -> Iterator[Answer]:
    """What each point's rope end is made with, who made it, and whether it is for that rope."""
    for one in each_point(case, ID):
        if isinstance(one, DoesNotApply):
            yield one
            continue
        for key, message in REFUSED:
            inputs = Inputs(case)
            kind = end_kind(inputs, one.point)
            word = None if kind is None else str(kind)
            seen = WordSeen(ID, one.name, one.place, inputs, word)
            yield from seen.against(key, message, refused=True)
        yield from _maker(case, one)
        end, place = end_of(case, one.point)
        made_for = read_of("termination_diameter", end, place)
        subject = EndOnRope(made_for, diameter_of(case, one.point))
        yield FITS.judge(case, Asked(subject, one.name, one.place))


def _maker(case: Case, one: Point) -> Iterator[Answer]:
    """Who formed the end, where it is one that is formed on the rope."""
    inputs = Inputs(case)
    if end_kind(inputs, one.point) not in FORMED:
        return
    end, place = end_of(case, one.point)
    word = None if end is None or end.made_by is None else str(end.made_by)
    at = (*place, "made_by")
    if word is None:
        inputs.want("termination_maker", EvidenceClass.RATING, at)
    else:
        inputs.fact("termination_maker", word, at)
    yield from WordSeen(ID, one.name, at, inputs, word).against("line.end-maker", "end-maker")


CHECK = Check(ID, Topic.LINE, judge)
