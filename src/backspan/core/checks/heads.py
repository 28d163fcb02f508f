"""Is there a sound lifeline for everybody who rides, visitors among them.

A line counts for the person whose it is: two lines of one worker hold one rider. Whose a line is
that names nobody is not known, and is asked where the others do not suffice.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from backspan.core.findings import DoesNotApply, Message
from backspan.core.model.rigs import Found, Lifeline
from backspan.core.model.topics import Topic
from backspan.core.numbers import surely_above
from backspan.core.quantities import RATIO
from backspan.core.sheet.case import Case, Place
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.compared import Compared
from backspan.core.sheet.limits import needed_value
from backspan.core.sheet.question import Asked, Question
from backspan.core.sheet.reads import UNKNOWN, Read, read_of
from backspan.core.sheet.sheet import Sheet

ID = "heads"
KEY = "presence.line-for-each"


@dataclass(frozen=True, slots=True)
class Riding:
    """The riders of a rig and its lifelines, if somebody stated them."""

    riders: Read
    lines: tuple[Lifeline, ...] | None
    place: Place


def work(sheet: Sheet, one: Asked[Riding]) -> Iterator[Compared]:
    """Riders against lifelines: one that is known to be defective or absent is none."""
    riders, lines = sheet.read(one.subject.riders), one.subject.lines
    there = UNKNOWN
    if lines is None:
        sheet.want("lifelines", one.subject.place)
    else:
        there = _lines(sheet, riders, lines, one.subject.place)
    yield Compared(riders, there, counts=(("riders", riders), ("lines", there)))


def _lines(sheet: Sheet, riders: float, lines: tuple[Lifeline, ...], place: Place) -> float:
    """How many lines hold a rider each; unknown where that depends on whose a line is."""
    useful = [line for line in lines if not _useless(line)]
    held = float(len({line.worker for line in useful if line.worker is not None}))
    nobodys = [line for line in useful if line.worker is None]
    at_best = held + len(nobodys)
    if not surely_above(riders, limit=held):
        return held
    if surely_above(riders, limit=at_best):
        return at_best
    for line in nobodys:
        sheet.want("worker", (*place, line.id))
    return UNKNOWN


def _useless(line: Lifeline) -> bool:
    return line.found is not None and line.found.value is not Found.SOUND


QUESTION = Question(ID, "heads", RATIO, work, strength=False)


def judge(case: Case) -> Iterator[Answer]:
    """One finding for the rig."""
    rig, place = case.drop.rig, (*case.place, "rig")
    if rig is None or not case.points:
        yield DoesNotApply(ID, case.subject, case.place, Message("na.no-suspension-point"))
        return
    riding = Riding(read_of("riders", rig, place), rig.lifelines, (*place, "lifelines"))
    rule = needed_value(case.practice, KEY)
    found = QUESTION.judge(case, Asked(riding, case.subject, (*place, "riders"), (rule,)))
    # Two lines for two riders are not "all used up".
    yield replace(found, utilisation=None, steps=())


CHECK = Check(ID, Topic.FALL_ARREST, judge)
