"""29 CFR 1926.451(a)(2) and (a)(5): rated load against stall load, exact break-evens by algebra.

Also two published slips, as negative cases: a course page that prints "1/2 times the stall
capacity", and a table that gives the tipping rule's clause as (d)(1).
"""

from __future__ import annotations

from dataclasses import replace

import pytest

from backspan.core.findings import Verdict
from backspan.core.quantities import MOMENT
from backspan.core.review import review
from backspan.core.rules.selected import RuleLibrary
from backspan.core.rules.shape import FactorOnLoad, LoadBasis
from tests.published.published_rig import (
    LIBRARY,
    ON,
    failed,
    finding,
    in_unit,
    project,
    reviewed,
    row,
    spare,
    value_in,
)

FILE = "osha-stall-and-rated"
OSHA = "us-osha-1926-subpart-l"
RATED, STALL = "tipping.rated-load", "tipping.stall-load"


@pytest.mark.parametrize(
    ("drop", "governs", "moment", "weight"),
    [
        ("S1250", RATED, 8000.0, 8000 / 12),
        ("S2666", RATED, 8000.0, 8000 / 12),
        ("S2667", STALL, 8000.5 + 0.5, 8001 / 12),
        ("S3000", STALL, 9000.0, 750.0),
    ],
)
def test_which_branch_governs(drop: str, governs: str, moment: float, weight: float) -> None:
    made = reviewed(FILE, drop)
    found = finding(made, "tipping")
    assert found.governing == governs
    assert in_unit(found.demand, "lb ft") == pytest.approx(moment, rel=1e-9)
    assert in_unit(row(made, OSHA, governs).required, "lb") == pytest.approx(weight, rel=1e-9)
    assert found.verdict is Verdict.PASS
    assert finding(made, "stall-cap").verdict is Verdict.PASS


def test_the_stall_branch_is_2_ft_lb_under_the_rated_one_at_2666_lb() -> None:
    found = finding(reviewed(FILE, "S2666"), "tipping")
    moments = [step.value for step in found.steps if step.formula == "required_moment"]
    assert [round(value_in(one, MOMENT, "lb ft")) for one in moments] == [8000, 7998]


def test_750_lb_are_exactly_enough_at_a_stall_load_of_3000_lb() -> None:
    assert spare(finding(reviewed(FILE, "S3000"), "tipping")) == 0
    assert finding(reviewed(FILE, "N14"), "tipping").verdict is Verdict.FAIL


def test_a_stall_load_above_three_times_the_rated_load_is_refused_for_itself() -> None:
    assert finding(reviewed(FILE, "S3000"), "stall-cap").verdict is Verdict.PASS
    refused = finding(reviewed(FILE, "S3001"), "stall-cap")
    assert refused.verdict is Verdict.FAIL
    assert refused.rules[0].provenance.clause == "1926.451(a)(5)"
    assert ("stall-cap", "stall-cap.fail") in failed(reviewed(FILE, "S3001"))


def test_an_unknown_stall_load_cannot_be_verified() -> None:
    made = reviewed(FILE, "SX")
    found = finding(made, "tipping")
    assert found.verdict is Verdict.MISSING
    assert in_unit(found.demand, "lb ft") == pytest.approx(8000.0, rel=1e-9)
    assert "note.stall-not-known" in {note.id for note in found.notes}


def test_the_factor_on_the_stall_load_is_one_and_a_half_and_not_a_half() -> None:
    """Negative case: a course page (oshacademy.com 804-5-7) prints "1/2 times the stall capacity".

    It says so of the sister rule on supporting surfaces. With a half, the beam that 1926.451(a)(2)
    refuses for want of one piece would pass.
    """
    made = reviewed(FILE, "N14")
    assert finding(made, "tipping").verdict is Verdict.FAIL
    asked = in_unit(row(made, OSHA, STALL).required, "lb")
    assert asked == pytest.approx(1.5 * 3000 * 2 / 12, rel=1e-9)
    slip = review(project(FILE), "N14", with_stall_factor(0.5), on=ON)
    assert finding(slip, "tipping").verdict is Verdict.PASS
    assert finding(slip, "tipping").governing == RATED


def with_stall_factor(factor: float) -> RuleLibrary:
    """The rule sets with another factor on the stall load."""
    rules = LIBRARY.get(OSHA, "1996")
    value = rules.value(STALL)
    assert value is not None
    (reading,) = value.readings
    assert isinstance(reading.content, FactorOnLoad)
    assert (reading.content.factor, reading.content.load) == (1.5, LoadBasis.HOIST_STALL)
    other = replace(
        value, readings=(replace(reading, content=replace(reading.content, factor=factor)),)
    )
    values = tuple(other if one.key == STALL else one for one in rules.values)
    return RuleLibrary((replace(rules, values=values), LIBRARY.get("trade-practice", "2026")))


def test_the_tipping_rule_is_a_2_and_not_d_1() -> None:
    """Negative case: a comparison table gave (d)(1), which is the rule on supporting surfaces."""
    found = finding(reviewed(FILE, "S1250"), "tipping")
    assert {value.provenance.clause for value in found.rules} == {"1926.451(a)(2)"}
