"""All branches of one rule set on one support: which governs, which are open, what is met."""

from __future__ import annotations

from dataclasses import replace

from backspan.core.model.basis import ReadingChoice, RuleChoice
from backspan.core.model.project import Project
from backspan.core.sheet.beam_as_built import as_built
from backspan.core.sheet.compared import Weighed, weigh
from backspan.core.sheet.moments import Branch, branches, factor_values, support_reads
from backspan.core.sheet.sheet import BareSheet
from backspan.core.sheet.subjects import BeamSubject, counterweighted
from tests.unit.core.rigs import (
    ARM,
    BEAM,
    EN,
    HOIST,
    OSHA,
    PROJECT,
    QUEBEC,
    STACK,
    case,
    count,
    force,
    length,
    on_basis,
    put,
    without_stall,
)

CREDIT = replace(EN, readings=(ReadingChoice("tipping.working-load-limit", "beam credited"),))
COUNT = (*STACK, "groups", 0, "count")


def sums(project: Project, choice: RuleChoice = OSHA) -> Weighed[Branch]:
    one = case(on_basis(project, choice))
    left = next(iter(counterweighted(one, "tipping")))
    assert isinstance(left, BeamSubject)
    support, sheet = support_reads(one, left), BareSheet({}, {})
    values = factor_values(one.rules[0])
    built = as_built(sheet, support.beam)
    return weigh(branches(sheet, support, built, values))


def governing(found: Weighed[Branch]) -> str:
    assert found.governing is not None
    assert found.governing.value is not None
    return found.governing.value.key


def test_the_branch_that_asks_for_most_governs() -> None:
    found = sums(PROJECT)
    assert [branch.value.key for branch in found.branches if branch.value is not None] == [
        "tipping.rated-load",
        "tipping.stall-load",
    ]
    assert governing(found) == "tipping.rated-load"
    assert governing(sums(put(PROJECT, (*HOIST, "stall_load"), force("2667 lb")))) == (
        "tipping.stall-load"
    )


def test_where_both_ask_for_the_same_the_first_governs() -> None:
    equal = put(PROJECT, (*HOIST, "rated_load"), force("900 lb"))
    assert governing(sums(put(equal, (*HOIST, "stall_load"), force("2400 lb")))) == (
        "tipping.rated-load"
    )


def test_met_is_told_of_all_branches() -> None:
    assert sums(PROJECT).met is True
    assert sums(put(PROJECT, COUNT, count(14))).met is False
    assert sums(without_stall(PROJECT)).met is None
    no_stall = without_stall(PROJECT)
    assert sums(put(no_stall, COUNT, count(14))).met is False
    assert sums(put(PROJECT, (*ARM, "backspan"), None)).met is None


def test_a_text_without_a_factor_has_no_branches() -> None:
    assert factor_values(case(on_basis(PROJECT, QUEBEC)).rules[0]) == ()


def test_equality_is_met() -> None:
    exact = put(put(PROJECT, (*ARM, "reach"), length("2.2 ft")), COUNT, count(16))
    assert sums(exact).met is True  # 4 x 1,000 x 2.2 = 16 x 55 x 10
    assert sums(put(exact, COUNT, count(15))).met is False


def test_a_credit_that_is_not_known_leaves_its_branch_open() -> None:
    found = sums(put(PROJECT, (*BEAM, "mass"), None), CREDIT)
    assert [branch.met for branch in found.branches] == [None]
    assert found.met is None


def test_weight_that_may_pull_outboard_and_is_unknown_leaves_a_fail_a_fail() -> None:
    far = put(put(PROJECT, (*ARM, "reach"), length("9 ft")), (*ARM, "backspan"), length("8 ft"))
    unknown = put(far, (*BEAM, "mass"), None)
    assert sums(put(unknown, COUNT, count(95))).met is None
    assert sums(put(unknown, COUNT, count(80))).met is False
