"""Is each tieback as strong as the suspension rope, where its own end is made.

The clause says that a tieback equals the suspension ropes in strength. Read as the rope is: what
that carries at its end. Read as the rope has to be: what the rule asks of it. The first is never
less where the rope itself holds, and is the default. Of a pair each carries its own share, which
grows with its angle.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from backspan.core.findings import DoesNotApply, Message
from backspan.core.mechanics.ropes import load_to_carry
from backspan.core.model.topics import Topic
from backspan.core.numbers import at_least
from backspan.core.quantities import FORCE
from backspan.core.rules.selected import SelectedValue
from backspan.core.rules.shape import FactorOnLoad
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.compared import Compared
from backspan.core.sheet.load_on_line import load_on_line
from backspan.core.sheet.moments import factor_values
from backspan.core.sheet.question import Asked, Question, asked_each
from backspan.core.sheet.reads import UNKNOWN
from backspan.core.sheet.rope_reads import EndReads, RopeReads, end_reads, rope_reads, strength_of
from backspan.core.sheet.sheet import Sheet
from backspan.core.sheet.subjects import in_force_or_practice
from backspan.core.sheet.tied import Ties, share_of, ties_of
from backspan.core.sheet.witness import words_of

ID = "tieback-strength"
KEY, LINE = "tieback.strength", "line"
AS_IT_IS = "the rope as it is"


@dataclass(frozen=True, slots=True)
class Held:
    """A tieback beside the suspension rope it equals; the rule values that rope is held against."""

    rope: RopeReads
    asked_of_rope: tuple[SelectedValue, ...]
    own: EndReads
    ties: Ties
    index: int


def work(sheet: Sheet, one: Asked[Held]) -> Iterator[Compared]:
    """What the tieback has to carry of the rope's strength, against what it carries at its end."""
    held = one.subject
    for value in one.values:
        of_rope = words_of(value) == (AS_IT_IS,) or not held.asked_of_rope
        equal = strength_of(sheet, held.rope) if of_rope else _asked_of(sheet, held)
        share = share_of(sheet, held.ties, held.index, equal)
        own = strength_of(sheet, held.own)
        numbers = (("strength", own, FORCE), ("required", share, FORCE))
        yield Compared(share, own, numbers=numbers, value=value)


def _asked_of(sheet: Sheet, held: Held) -> float:
    """The most that a branch of the rule asks of the suspension rope."""
    most = 0.0 if held.asked_of_rope else UNKNOWN
    for value in held.asked_of_rope:
        rule = value.content
        if isinstance(rule, FactorOnLoad):
            load = load_on_line(sheet, held.rope.line, rule.load)
            asked_for = sheet.do(load_to_carry, factor=rule.factor, load=load)
            most = at_least(asked_for, least=most)
    return most


#: Equal ropes are equal: no share of strength that is ranked with others.
QUESTION = Question(ID, ID, FORCE, work, strength=False, share=False)


def judge(case: Case) -> Iterator[Answer]:
    """One finding a tieback under each text that says how strong it is."""
    return asked_each(QUESTION, case, asked(case))


def asked(case: Case) -> Iterator[Asked[Held] | DoesNotApply]:
    """Each tieback of each suspension point."""
    values = in_force_or_practice(case, KEY)
    of_rope = tuple(one for rules in case.under(LINE) for one in factor_values(rules, LINE))
    if not case.points:
        yield DoesNotApply(ID, case.subject, case.place, Message("na.no-suspension-point"))
    for point in case.points:
        if not point.tied:
            reason = Message("na.no-tieback")
            yield DoesNotApply(ID, case.name_of(point), case.place_of(point), reason)
            continue
        rope, ties = rope_reads(case, point), ties_of(case, point)
        for index, tie in enumerate(ties.each):
            held = Held(rope, of_rope, end_reads(case, tie.tie, tie.place), ties, index)
            for value in values:
                yield Asked(held, tie.name, tie.place, (value,))


CHECK = Check(ID, Topic.TIEBACK, judge)
