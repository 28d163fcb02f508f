"""Is each lifeline strong enough where its end is made, its lanyard too; of a rope for a life.

A knot keeps the share of the rope that its record states, often half. Whether that loss counts
against the clause's breaking strength the text does not say: here it does. A line of wire has
grabs of its own: a qualified person says that line, grab and absorber are made for each other.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import TypeVar

from backspan.core.findings import Decider, DoesNotApply, Finding, Message, Need
from backspan.core.model.kit import RopeKind
from backspan.core.model.topics import Topic
from backspan.core.quantities import FORCE
from backspan.core.rules.selected import SelectedValue
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.compared import Compared
from backspan.core.sheet.decide import passed_by_a_person
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.lifelines import Life, each_lifeline, lanyard_of
from backspan.core.sheet.limits import limit_of
from backspan.core.sheet.question import Asked, Question
from backspan.core.sheet.reads import Read, read_of
from backspan.core.sheet.rope_reads import EndReads, end_reads, strength_of
from backspan.core.sheet.sheet import Sheet
from backspan.core.sheet.subjects import in_force_or_practice
from backspan.core.sheet.witness import EvidenceClass
from backspan.core.sheet.words_seen import WordSeen

S = TypeVar("S")
ID, KEY = "lifeline-strength", "fall.line-strength"
LANYARD = "lanyard-strength"
ROPE, REFUSED = "lifeline-rope", "fall.refused-rope"


def work(sheet: Sheet, one: Asked[EndReads]) -> Iterator[Compared]:
    """The least breaking strength of each text against the line's at its end."""
    yield from _holds(strength_of(sheet, one.subject), one.values)


def of_lanyard(sheet: Sheet, one: Asked[Read]) -> Iterator[Compared]:
    """The same against that of its rider's lanyard with its hooks."""
    yield from _holds(sheet.read(one.subject), one.values)


def _holds(strength: float, values: tuple[SelectedValue, ...]) -> Iterator[Compared]:
    for value in values:
        least = limit_of(value, FORCE)
        numbers = (("strength", strength, FORCE), ("least", least, FORCE))
        yield Compared(least, strength, numbers=numbers, value=value)


QUESTION = Question(ID, ID, FORCE, work, strength=False)
#: A label against what is asked of it: no share of strength that is ranked with others.
OF_LANYARD = Question(LANYARD, LANYARD, FORCE, of_lanyard, strength=False, share=False)


def _check(question: Question[S, Compared], of: Callable[[Case, Life], S]) -> Check:
    """One finding a lifeline on what the question is asked of."""

    def judge(case: Case) -> Iterator[Answer]:
        values = in_force_or_practice(case, KEY)
        for one in each_lifeline(case, question.check):
            if isinstance(one, DoesNotApply):
                yield one
            else:
                yield question.judge(case, Asked(of(case, one), one.name, one.place, values))

    return Check(question.check, Topic.FALL_ARREST, judge)


def _end(case: Case, one: Life) -> EndReads:
    return end_reads(case, one.line, one.place)


def _lanyard(case: Case, one: Life) -> Read:
    return read_of("lanyard_breaking_force", *lanyard_of(case, one))


def judge_rope(case: Case) -> Iterator[Answer]:
    """One finding a lifeline: what its rope is made of."""
    for one in each_lifeline(case, ROPE):
        if isinstance(one, DoesNotApply):
            yield one
            continue
        inputs, word = Inputs(case), _kind(case, one)
        at = (*one.place, "rope")
        if word is None:
            inputs.want("rope_kind", EvidenceClass.RATING, at)
        else:
            inputs.fact("rope_kind", word, at)
        seen = WordSeen(ROPE, one.name, at, inputs, word)
        for found in seen.against(REFUSED, ROPE, refused=True):
            yield _of_wire(one, found) if word == RopeKind.WIRE else found


def _of_wire(one: Life, found: Finding) -> Finding:
    need = Need(Decider.QUALIFIED_PERSON, Message("need.lifeline-of-wire", (("line", one.name),)))
    return passed_by_a_person(found, need, ROPE)


def _kind(case: Case, one: Life) -> str | None:
    rope = None if one.line.rope is None else case.project.kit.rope(one.line.rope)
    return None if rope is None else str(rope.kind)


CHECKS = (
    _check(QUESTION, _end),
    _check(OF_LANYARD, _lanyard),
    Check(ROPE, Topic.FALL_ARREST, judge_rope),
)
