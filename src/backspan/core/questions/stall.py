"""At what load may a hoist stall; with its stall load given: is it within the cap."""

from __future__ import annotations

from backspan.core.checks import stall_cap
from backspan.core.findings import Message
from backspan.core.mechanics import loads
from backspan.core.quantities import FORCE, RATIO, Amount
from backspan.core.questions.choosing import rule_choice
from backspan.core.questions.imagined import Rigged, case_for, rules_of_case
from backspan.core.questions.judging import (
    answer_of,
    findings_of,
    questioned,
    stall_cap_of,
)
from backspan.core.questions.parameters import DEFAULT_RULES, RATED, RULES, STALL
from backspan.core.questions.shape import Answer, Asked, Line, Topic
from backspan.core.rules.shape import FactorOnLoad, LoadBasis
from backspan.core.sheet.case import Case
from backspan.core.sheet.moments import factor_values


def _answer(asked: Asked) -> Answer:
    rated, stall = asked.needed("rated"), asked.number("stall")
    choice = rule_choice(asked.word("rules") or DEFAULT_RULES, asked.library)
    rigged = Rigged(rated=rated, reach=1.0, piece=1.0, pieces=0, stall=stall)
    case = case_for(asked, rigged, (choice,))
    factor, value = stall_cap_of(case), rules_of_case(case).find(stall_cap.KEY)
    notes = (*questioned(asked, case), Message("note.asker-vouches"))
    if factor is None or value is None:
        message = Message("stall.no-cap", (("rule_set", rules_of_case(case).rule_set.id),))
        return Answer(message, notes=notes)
    cap = loads.stall_cap(cap_factor=factor, rated_load=rated)
    lines = [Line("most-stall", Amount(cap.value, FORCE)), *_break_even(case, rated)]
    if stall is None:
        words = (("rated", Amount(rated, FORCE)), ("cap", Amount(cap.value, FORCE)))
        message = Message("stall.cap", words)
        return Answer(message, lines=tuple(lines), steps=(cap,), rules=(value,), notes=notes)
    lines.append(Line("stall-ratio", Amount(stall / rated, RATIO)))
    findings = findings_of(case, (stall_cap.CHECK,))
    return answer_of(asked, case, findings, None, lines)


def _break_even(case: Case, rated: float) -> tuple[Line, ...]:
    """The stall load above which the stall branch of the tipping rule governs."""
    rules = [value.content for value in factor_values(rules_of_case(case))]
    factors = {rule.load: rule.factor for rule in rules if isinstance(rule, FactorOnLoad)}
    of_rated, of_stall = factors.get(LoadBasis.HOIST_RATED), factors.get(LoadBasis.HOIST_STALL)
    if of_rated is None or of_stall is None:
        return ()
    return (Line("stall-governs-above", Amount(of_rated * rated / of_stall, FORCE)),)


TOPIC = Topic(
    "stall",
    "At what load may this hoist stall?",
    (RATED, STALL, RULES),
    "rated=1000lb stall=3000lb",
    _answer,
)
