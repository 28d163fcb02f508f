"""Is the inboard arm long enough for the outboard arm, where a rule set asks for a ratio."""

from __future__ import annotations

from collections.abc import Iterator

from backspan.core.findings import DoesNotApply
from backspan.core.mechanics.beam_geometry import inboard_to_outboard
from backspan.core.model.topics import Topic
from backspan.core.quantities import RATIO
from backspan.core.sheet.beam_as_built import BeamReads, arms, beam_reads
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.compared import Compared
from backspan.core.sheet.limits import limit_of
from backspan.core.sheet.question import Asked, Question, asked_each
from backspan.core.sheet.sheet import Sheet
from backspan.core.sheet.subjects import under_value

ID = "beam-proportion"
KEY = "geometry.inboard-to-outboard"


def work(sheet: Sheet, one: Asked[BeamReads]) -> Iterator[Compared]:
    """The least ratio against backspan over reach."""
    least = limit_of(one.values[0], RATIO)
    reach, backspan = arms(sheet, one.subject)
    outboard = sheet.positive("reach", reach)
    ratio = sheet.do(inboard_to_outboard, inboard=backspan, reach=outboard)
    yield Compared(least, ratio, numbers=(("least", least, RATIO), ("ratio", ratio, RATIO)))


QUESTION = Question(ID, "proportion", RATIO, work, strength=False)


def judge(case: Case) -> Iterator[Answer]:
    """One finding a beam and rule set with such a ratio; the inboard arm is the backspan."""
    return asked_each(QUESTION, case, asked(case))


def asked(case: Case) -> Iterator[Asked[BeamReads] | DoesNotApply]:
    """Each counterweighted beam under each rule set with such a ratio."""
    for one in under_value(case, ID, KEY):
        if isinstance(one, DoesNotApply):
            yield one
        else:
            beam = beam_reads(case, one.beam)
            yield Asked(beam, one.beam.name, one.beam.place, (one.value,))


CHECK = Check(ID, Topic.TIPPING, judge)
