"""The only place where a verdict is made: every combination of what can be open."""

from __future__ import annotations

import itertools
from dataclasses import replace

import pytest

from backspan.core.findings import Decider, Message, Need, Verdict
from backspan.core.rules.selected import Confirmed, SelectedValue
from backspan.core.rules.shape import Mark
from backspan.core.sheet.decide import decide
from backspan.core.sheet.inputs import Inputs
from tests.unit.core.rigs import PROJECT, case, finding

OPEN = Need(Decider.MEASURER, Message("need.input", (("input", "reach"), ("place", "x"))))
PERSON = Need(Decider.LICENSED_ENGINEER, Message("need.design", (("rule_set", "x"),)))
READ = finding(PROJECT, "stall-cap").rules[0]
MEMORY = replace(READ, provenance=replace(READ.provenance, mark=Mark.MEMORY))
CONFIRMED = replace(MEMORY, confirmed=Confirmed("P. Ennis", "2026-11-18", "office copy"))


def inputs(*, not_stated: bool = False, weak: bool = False) -> Inputs:
    one = Inputs(case())
    one.not_stated = [OPEN] if not_stated else []
    one.weak = [OPEN] if weak else []
    return one


@pytest.mark.parametrize(
    ("met", "not_stated", "weak", "remembered", "person"),
    list(itertools.product([True, False, None], *[[False, True]] * 4)),
)
def test_the_answer_to_every_combination(
    *, met: bool | None, not_stated: bool, weak: bool, remembered: bool, person: bool
) -> None:
    verdict, needs = decide(
        met=met,
        inputs=inputs(not_stated=not_stated, weak=weak),
        rules=(MEMORY if remembered else READ,),
        refer=(PERSON,) if person else (),
    )
    if met is False:
        expected = Verdict.FAIL
    elif met is None or not_stated or weak:
        expected = Verdict.MISSING
    elif remembered or person:
        expected = Verdict.REFER
    else:
        expected = Verdict.PASS
    assert verdict is expected
    if expected is Verdict.PASS:
        assert needs == ()
    if expected is Verdict.REFER:
        assert len(needs) == remembered + person


def test_a_confirmed_value_passes() -> None:
    assert decide(met=True, inputs=inputs(), rules=(CONFIRMED,)) == (Verdict.PASS, ())


@pytest.mark.parametrize("mark", [Mark.READ, Mark.COPY, Mark.PRACTICE])
def test_only_memory_asks_for_a_confirmation(mark: Mark) -> None:
    value: SelectedValue = replace(MEMORY, provenance=replace(MEMORY.provenance, mark=mark))
    assert decide(met=True, inputs=inputs(), rules=(value,))[0] is Verdict.PASS


def test_the_confirmation_asked_for_names_text_edition_clause_and_value() -> None:
    _, (need,) = decide(met=True, inputs=inputs(), rules=(MEMORY,))
    assert need.who is Decider.OFFICE
    assert dict(need.what.values) == {
        "rule_set": "us-osha-1926-subpart-l",
        "edition": "1996",
        "clause": "1926.451(a)(5)",
        "value": "hoist.stall-cap",
    }
