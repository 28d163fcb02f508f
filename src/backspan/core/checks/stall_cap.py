"""Is the hoist's stall load within what the rule allows for its rated load."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from backspan.core.findings import DoesNotApply, Message
from backspan.core.mechanics.loads import stall_cap
from backspan.core.model.topics import Topic
from backspan.core.quantities import FORCE, RATIO
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.compared import Compared
from backspan.core.sheet.limits import limit_of
from backspan.core.sheet.question import Asked, Question, asked_each
from backspan.core.sheet.reads import Read, hoist_reads
from backspan.core.sheet.sheet import Sheet
from backspan.core.sheet.subjects import no_rule

ID = "stall-cap"
KEY = "hoist.stall-cap"


@dataclass(frozen=True, slots=True)
class OnTheLine:
    """The hoist on a suspension point."""

    hoist: str
    rated_load: Read
    stall_load: Read


def work(sheet: Sheet, one: Asked[OnTheLine]) -> Iterator[Compared]:
    """The stall load against the cap on it."""
    rated, stall = sheet.read(one.subject.rated_load), sheet.read(one.subject.stall_load)
    factor = limit_of(one.values[0], RATIO)
    cap = sheet.do(stall_cap, cap_factor=factor, rated_load=rated)
    numbers = (("factor", factor, RATIO), ("cap", cap, FORCE), ("stall", stall, FORCE))
    yield Compared(stall, cap, (("hoist", one.subject.hoist),), numbers)


QUESTION = Question(ID, "stall-cap", FORCE, work, strength=False)


def judge(case: Case) -> Iterator[Answer]:
    """One finding for each suspension point under each rule set that caps the stall load."""
    return asked_each(QUESTION, case, asked(case))


def asked(case: Case) -> Iterator[Asked[OnTheLine] | DoesNotApply]:
    """The hoist of each suspension point under each rule set that caps its stall load."""
    having = [value for rules in case.under(KEY) if (value := rules.find(KEY)) is not None]
    if not case.points:
        yield DoesNotApply(ID, case.subject, case.place, Message("na.no-suspension-point"))
    for point in case.points:
        if not having:
            reason = no_rule(case, KEY)
            yield DoesNotApply(ID, case.name_of(point), case.place_of(point), reason)
        for value in having:
            on_the_line = OnTheLine(case.hoist(point.hoist).id, *hoist_reads(case, point))
            yield Asked(on_the_line, case.name_of(point), case.place_of(point), (value,))


CHECK = Check(ID, Topic.STAGE, judge)
