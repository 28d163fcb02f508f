"""The case and its subjects: what a check finds by name, and where there is nothing to judge."""

from __future__ import annotations

import pytest

from backspan.core.findings import DoesNotApply
from backspan.core.quantities import LENGTH, RATIO
from backspan.core.rules.shape import RuleError
from backspan.core.sheet.case import AbsentError
from backspan.core.sheet.limits import limit_of, needed_value
from backspan.core.sheet.subjects import BeamSubject, RuledSubject, counterweighted, under_value
from tests.unit.core.rigs import ARM, EN, OSHA, PROJECT, QUEBEC, RIG, case, on_basis, put

CASE = case()


def test_kit_is_found_by_its_id() -> None:
    assert CASE.hoist("H").name == "hoist"
    assert CASE.beam("B").name == "beam"
    assert CASE.piece("P").name == "plate"
    assert CASE.stage("ST").name == "stage"


@pytest.mark.parametrize("kind", ["hoist", "beam", "piece", "stage"])
def test_what_is_not_there_is_named(kind: str) -> None:
    with pytest.raises(AbsentError, match=f"the project has no {kind} 'X'"):
        getattr(CASE, kind)("X")


def test_places_and_names_go_by_ids() -> None:
    left, _ = CASE.points
    assert CASE.subject == "D"
    assert CASE.name_of(left) == "D/L"
    assert CASE.place_of(left) == ("drops", "D", "rig", "suspension_points", "L")
    assert [stage.id for stage in CASE.stages_on(left)] == ["ST"]


def test_a_drop_without_a_rig_has_no_points() -> None:
    bare = case(put(PROJECT, RIG, None))
    assert bare.points == ()
    (only,) = counterweighted(bare, "tipping")
    assert isinstance(only, DoesNotApply)
    assert only.reason.id == "na.no-suspension-point"


def test_points_without_a_beam_say_why_they_are_left_out() -> None:
    left, right = counterweighted(case(put(PROJECT, ARM, None)), "tipping")
    assert isinstance(left, DoesNotApply)
    assert left.reason.id == "na.no-counterweight"
    assert isinstance(right, BeamSubject)
    assert right.place[-1] == "counterweighted_beam"


def test_each_beam_stands_under_each_rule_set_that_has_the_value() -> None:
    key = "geometry.inboard-to-outboard"
    both = list(under_value(case(on_basis(PROJECT, OSHA, QUEBEC)), "beam-proportion", key))
    ruled = [one for one in both if isinstance(one, RuledSubject)]
    assert [(one.beam.name, one.value.rule_set) for one in ruled] == [
        ("D/L", "ca-qc-s21-r4"),
        ("D/R", "ca-qc-s21-r4"),
    ]
    assert len(both) == len(ruled)


def test_where_no_rule_set_has_the_value_the_basis_is_named() -> None:
    silent = list(under_value(case(on_basis(PROJECT, OSHA, EN)), "x", "geometry.nothing"))
    assert all(isinstance(one, DoesNotApply) for one in silent)
    (first, _) = silent
    assert isinstance(first, DoesNotApply)
    assert dict(first.reason.values)["rule_sets"] == (OSHA.rule_set, EN.rule_set)


def test_a_limit_is_read_with_its_dimension() -> None:
    value = needed_value(CASE.rules[0], "hoist.stall-cap")
    assert limit_of(value, RATIO) == 3.0
    with pytest.raises(RuleError, match=r"hoist\.stall-cap is not a limit on a length"):
        limit_of(value, LENGTH)
    with pytest.raises(RuleError, match=r"has no value 'hoist\.weight'"):
        needed_value(CASE.rules[0], "hoist.weight")
