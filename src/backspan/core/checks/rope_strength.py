"""Does the suspension rope carry what hangs on it, where its end is made.

A rope is as strong as its end: a clip or a splice keeps only a share of its breaking force, and
who does not know the end knows no strength. The line's other hardware is not asked here.

29 CFR 1926.451(a)(4) can be read in two ways: six times the load at the hoist's rated load or two
times its stall load, whichever is greater; or six times whichever load is greater, the rated load
or two times the stall load. The first is the usual one and the rule set's named default; the other
asks for three to six times as much and can be chosen by its name.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from backspan.core.findings import DoesNotApply, Message
from backspan.core.mechanics.ropes import load_to_carry
from backspan.core.model.topics import Topic
from backspan.core.quantities import FORCE, RATIO
from backspan.core.rules.shape import FactorOnLoad
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.decide import ENDINGS
from backspan.core.sheet.load_on_line import load_on_line
from backspan.core.sheet.moments import factor_values
from backspan.core.sheet.question import Asked, Compared, Judged, Question, Told, asked_each
from backspan.core.sheet.rope_reads import RopeReads, rope_reads, strength_of
from backspan.core.sheet.sheet import Sheet
from backspan.core.sheet.subjects import no_rule

ID, TOPIC = "rope-strength", "line"


@dataclass(slots=True, kw_only=True)
class Carried(Compared):
    """A force asked of the rope against what it carries; on which load it is asked."""

    load: str


def work(sheet: Sheet, one: Asked[RopeReads]) -> Iterator[Carried]:
    """What each branch of the rule asks against the rope's strength at its end."""
    rope = one.subject
    strength = strength_of(sheet, rope)
    for value in one.values:
        rule = value.content
        if not isinstance(rule, FactorOnLoad):
            continue
        load = load_on_line(sheet, rope.line, rule.load)
        required = sheet.do(load_to_carry, factor=rule.factor, load=load)
        numbers = (
            ("strength", strength, FORCE),
            ("required", required, FORCE),
            ("factor", rule.factor, RATIO),
        )
        yield Carried(required, strength, numbers=numbers, value=value, load=str(rule.load))


def tells(judged: Judged[RopeReads, Carried]) -> Told:
    """What is asked, on which load, and what the rope carries."""
    shown = judged.weighed.shown
    values = () if shown is None else (*shown.told(), ("load", shown.load))
    return Told(Message(f"rope.{ENDINGS[judged.weighed.met]}", tuple(values)))


QUESTION = Question(ID, "rope", FORCE, work, tells)


def judge(case: Case) -> Iterator[Answer]:
    """One finding for each suspension line under each rule set that asks for its strength."""
    return asked_each(QUESTION, case, asked(case))


def asked(case: Case) -> Iterator[Asked[RopeReads] | DoesNotApply]:
    """The rope of each suspension point under the branches of each rule set."""
    having = [values for rules in case.under(TOPIC) if (values := factor_values(rules, TOPIC))]
    if not case.points:
        yield DoesNotApply(ID, case.subject, case.place, Message("na.no-suspension-point"))
    for point in case.points:
        name, place = case.name_of(point), case.place_of(point)
        if not having:
            yield DoesNotApply(ID, name, place, no_rule(case, TOPIC))
        for values in having:
            yield Asked(rope_reads(case, point), name, place, values)


CHECK = Check(ID, Topic.LINE, judge)
