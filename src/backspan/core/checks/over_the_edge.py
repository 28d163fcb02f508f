"""Does the suspension line hang clear of the building, and does the beam pass over the parapet.

The line hangs `reach` outboard of the fulcrum, which stands `setback` inboard of the face: it is
clear where the reach is the longer. The beam lies on the fulcrum at its height above what that
stands on: the parapet within its thickness, the roof elsewhere.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from backspan.core.findings import DoesNotApply
from backspan.core.model.topics import Topic
from backspan.core.quantities import LENGTH
from backspan.core.sheet.bearing_height import BearingReads, bearing_height, bearing_reads
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.compared import Compared
from backspan.core.sheet.question import Asked, Question
from backspan.core.sheet.reads import Read, read_of
from backspan.core.sheet.sheet import Sheet
from backspan.core.sheet.subjects import counterweighted

LINE, BEAM = "line-clear", "beam-clear"


@dataclass(frozen=True, slots=True)
class AtTheEdge:
    """A beam where it passes the edge."""

    reach: Read
    bearing: BearingReads


def line(sheet: Sheet, one: Asked[AtTheEdge]) -> Iterator[Compared]:
    """The setback against the reach: what is left is between the face and the line."""
    reach, setback = sheet.read(one.subject.reach), sheet.read(one.subject.bearing.setback)
    sheet.positive("line", reach - setback)
    numbers = (("setback", setback, LENGTH), ("reach", reach, LENGTH))
    yield Compared(setback, reach, numbers=numbers)


def beam(sheet: Sheet, one: Asked[AtTheEdge]) -> Iterator[Compared]:
    """The top of the parapet against the height of the beam's bearing."""
    wall = sheet.read(one.subject.bearing.wall)
    bearing = bearing_height(sheet, one.subject.bearing)
    yield Compared(wall, bearing, numbers=(("wall", wall, LENGTH), ("bearing", bearing, LENGTH)))


LINE_CLEAR = Question(LINE, LINE, LENGTH, line, strength=False)
BEAM_CLEAR = Question(BEAM, BEAM, LENGTH, beam, strength=False)


def _check(question: Question[AtTheEdge, Compared], topic: Topic) -> Check:
    def judge(case: Case) -> Iterator[Answer]:
        for subject in counterweighted(case, question.check):
            if isinstance(subject, DoesNotApply):
                yield subject
                continue
            there = AtTheEdge(
                read_of("reach", subject.support, subject.place),
                bearing_reads(case, subject.point),
            )
            yield question.judge(case, Asked(there, subject.name, subject.place))

    return Check(question.check, topic, judge)


CHECKS = (_check(LINE_CLEAR, Topic.LINE), _check(BEAM_CLEAR, Topic.BEAM))
