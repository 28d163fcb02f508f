"""Does the suspension rope carry what hangs on it, where its end is made.

A rope is as strong as its end: a clip or a splice keeps only a share of its breaking force, and
who does not know the end knows no strength. The line's other hardware is asked by itself.

29 CFR 1926.451(a)(4) can be read in two ways: six times the load at the hoist's rated load or two
times its stall load, whichever is greater; or six times whichever load is greater, the rated load
or two times the stall load. The first is the usual one and the rule set's named default; the other
asks for three to six times as much and can be chosen by its name.
"""

from __future__ import annotations

from collections.abc import Iterator

from backspan.core.findings import DoesNotApply
from backspan.core.model.topics import Topic
from backspan.core.quantities import FORCE
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.line_strength import Carried, carried, told_as, under_line_rules
from backspan.core.sheet.question import Asked, Question, asked_each
from backspan.core.sheet.rope_reads import RopeReads, rope_reads, strength_of
from backspan.core.sheet.sheet import Sheet

ID = "rope-strength"


def work(sheet: Sheet, one: Asked[RopeReads]) -> Iterator[Carried]:
    """What each branch of the rule asks against the rope's strength at its end."""
    yield from carried(sheet, one.subject.line, one.values, strength_of(sheet, one.subject))


QUESTION = Question(ID, "rope", FORCE, work, told_as("rope"))


def judge(case: Case) -> Iterator[Answer]:
    """One finding for each suspension line under each rule set that asks for its strength."""
    return asked_each(QUESTION, case, asked(case))


def asked(case: Case) -> Iterator[Asked[RopeReads] | DoesNotApply]:
    """The rope of each suspension point under the branches of each rule set."""
    for one in under_line_rules(case, ID):
        if isinstance(one, DoesNotApply):
            yield one
            continue
        for values in one.having:
            yield Asked(rope_reads(case, one.point), one.name, one.place, values)


CHECK = Check(ID, Topic.LINE, judge)
