"""What the suspension rope carries at its end against what 29 CFR 1926.451(a)(4) asks.

The rig's rope breaks at 8,000 lb and its eye keeps 0.9 of that: 7,200 lb. Six times the rated load
of 1,000 lb are 6,000 lb, two times the stall load of 2,500 lb are 5,000 lb; by the literal reading
six times two times 2,500 lb are 30,000 lb.
"""

from __future__ import annotations

from dataclasses import replace

import pytest

from backspan.core.findings import Finding, Verdict
from backspan.core.mechanics.ropes import load_to_carry, strength_at_end
from backspan.core.model.basis import ReadingChoice
from backspan.core.model.project import Project
from backspan.core.quantities import FORCE, parse
from tests.unit.core.rigs import (
    HOIST,
    LEFT,
    OSHA,
    PROJECT,
    QUEBEC,
    finding,
    force,
    needs,
    on_basis,
    put,
    reasons,
    without_stall,
)

ROPE = ("kit", "ropes", "W")
LITERAL = replace(OSHA, readings=(ReadingChoice("line.stall-load", "literal"),))


def strength(project: Project) -> Finding:
    return finding(project, "rope-strength")


def breaking(text: str, project: Project = PROJECT) -> Project:
    return put(project, (*ROPE, "breaking_force"), force(text))


def test_the_formulas() -> None:
    assert load_to_carry(factor=6.0, load=1000.0).value == 6000.0
    assert strength_at_end(breaking_force=8000.0, efficiency=0.9).value == 7200.0


def test_six_times_the_rated_load_governs_up_to_three_times_of_stall() -> None:
    found = strength(PROJECT)
    assert (found.verdict, found.governing) == (Verdict.PASS, "line.rated-load")
    assert found.utilisation == pytest.approx(6000.0 / 7200.0)
    strong = strength(put(PROJECT, (*HOIST, "stall_load"), force("3500 lb")))
    assert strong.governing == "line.stall-load"
    assert strong.utilisation == pytest.approx(7000.0 / 7200.0)


@pytest.mark.parametrize(("text", "verdict"), [("6,666.67 lb", "pass"), ("6,666 lb", "fail")])
def test_equal_is_enough(text: str, verdict: str) -> None:
    assert strength(breaking(text)).verdict == verdict


def test_the_end_of_the_rope_counts_not_the_rope_alone() -> None:
    weak = put(PROJECT, ("kit", "terminations", "EYE", "efficiency", "value"), 0.74)
    assert strength(weak).verdict is Verdict.FAIL


def test_the_literal_reading_asks_for_five_times_as_much() -> None:
    found = strength(on_basis(PROJECT, LITERAL))
    assert found.verdict is Verdict.FAIL
    assert found.demand is not None
    assert found.demand.value == pytest.approx(parse("30,000 lb", FORCE))
    assert found.rules[0].reading == "literal"
    assert strength(breaking("33,334 lb", on_basis(PROJECT, LITERAL))).verdict is Verdict.PASS


@pytest.mark.parametrize(
    ("place", "lacks"),
    [
        ((*ROPE, "breaking_force"), "breaking_force"),
        (("kit", "terminations", "EYE", "efficiency"), "efficiency"),
        ((*LEFT, "termination"), "efficiency"),
        ((*LEFT, "rope"), "breaking_force"),
    ],
)
def test_what_is_not_stated_is_missing(place: tuple[str, ...], lacks: str) -> None:
    found = strength(put(PROJECT, place, None))
    assert found.verdict is Verdict.MISSING
    assert ("need.input", lacks) in needs(found)


def test_a_branch_that_fails_fails_whatever_the_other_is() -> None:
    assert strength(without_stall(PROJECT)).verdict is Verdict.MISSING
    assert strength(breaking("6,000 lb", without_stall(PROJECT))).verdict is Verdict.FAIL


def test_a_breaking_force_that_somebody_told_is_not_enough() -> None:
    told = put(PROJECT, (*ROPE, "breaking_force", "evidence"), "told")
    assert strength(told).verdict is Verdict.MISSING


def test_a_text_without_a_rule_has_nothing_to_ask() -> None:
    project = on_basis(PROJECT, QUEBEC)
    assert ("D/L", "na.no-rule") in reasons(project, "rope-strength")
