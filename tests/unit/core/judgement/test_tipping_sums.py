"""All branches of one rule set on one support: which governs, which are open, what is met."""

from __future__ import annotations

from dataclasses import replace

import pytest

from backspan.core.judgement.inputs import Inputs
from backspan.core.judgement.pieces_needed import pieces_needed
from backspan.core.judgement.subjects import BeamSubject, counterweighted
from backspan.core.judgement.tipping_sums import (
    TippingSums,
    factor_values,
    tipping_sums,
)
from backspan.core.model.basis import ReadingChoice, RuleChoice
from backspan.core.model.project import Project
from backspan.core.quantities import FORCE, parse
from tests.unit.core.rigs import (
    ARM,
    BEAM,
    EN,
    HOIST,
    OSHA,
    PROJECT,
    QUEBEC,
    STACK,
    STACKED,
    case,
    count,
    force,
    length,
    on_basis,
    put,
)

CREDIT = replace(EN, readings=(ReadingChoice("tipping.working-load-limit", "beam credited"),))
COUNT = (*STACK, "groups", 0, "count")


def sums(project: Project, choice: RuleChoice = OSHA) -> TippingSums:
    one = case(on_basis(project, choice))
    left = next(iter(counterweighted(one, "tipping")))
    assert isinstance(left, BeamSubject)
    return tipping_sums(Inputs(one), left, factor_values(one.rules[0]))


def governing(found: TippingSums) -> str:
    assert found.governing is not None
    return found.governing.value.key


def test_the_branch_that_asks_for_most_governs() -> None:
    found = sums(PROJECT)
    assert [branch.value.key for branch in found.branches] == [
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
    assert sums(put(PROJECT, (*HOIST, "stall_load"), None)).met is None
    no_stall = put(PROJECT, (*HOIST, "stall_load"), None)
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
    assert [value.key for value in found.unknown] == ["tipping.working-load-limit"]
    assert found.met is None


@pytest.mark.parametrize("project", [PROJECT, STACKED])
def test_the_pieces_needed_hold_and_one_fewer_does_not(project: Project) -> None:
    found = sums(project)
    assert found.governing is not None
    needed = pieces_needed(found.built, found.governing)
    assert needed is not None
    assert needed.needed is not None
    assert needed.there == 16
    assert needed.spare == 16 - needed.needed
    assert needed.piece_weight == pytest.approx(parse("55 lb", FORCE))
    assert sums(put(project, COUNT, count(needed.needed))).met is True
    assert sums(put(project, COUNT, count(needed.needed - 1))).met is False


def test_a_beam_without_any_kind_of_piece_tells_no_number() -> None:
    found = sums(put(PROJECT, (*STACK, "groups"), ()))
    assert found.governing is not None
    assert pieces_needed(found.built, found.governing) is None
