"""A stall load of at most 3 times the rated load, 29 CFR 1926.451(a)(5)."""

from __future__ import annotations

import pytest

from backspan.core.findings import Verdict
from tests.unit.core.rigs import (
    EN,
    HOIST,
    PROJECT,
    RIG,
    finding,
    force,
    needs,
    on_basis,
    put,
    reasons,
    without_stall,
)


@pytest.mark.parametrize(
    ("stall", "verdict"),
    [
        ("2999 lb", Verdict.PASS),
        ("3000 lb", Verdict.PASS),
        ("3001 lb", Verdict.FAIL),
        ("13.344664846 kN", Verdict.PASS),
        ("13.36 kN", Verdict.FAIL),
    ],
)
def test_three_times_the_rated_load_is_allowed_and_no_more(stall: str, verdict: Verdict) -> None:
    found = finding(put(PROJECT, (*HOIST, "stall_load"), force(stall)), "stall-cap")
    assert found.verdict is verdict
    assert found.message.id == f"stall-cap.{verdict}"
    assert found.rules[0].provenance.clause == "1926.451(a)(5)"


def test_an_unknown_stall_load_is_missing() -> None:
    found = finding(without_stall(PROJECT), "stall-cap")
    assert found.verdict is Verdict.MISSING
    assert needs(found) == (("need.input", "stall_load"),)
    assert found.utilisation is None


def test_both_tolerances_are_taken_at_the_end_that_does_harm() -> None:
    rated_less = put(PROJECT, (*HOIST, "rated_load"), force("1000 lb", tolerance="1 lb"))
    stall_more = put(PROJECT, (*HOIST, "stall_load"), force("2990 lb", tolerance="11 lb"))
    assert finding(rated_less, "stall-cap").verdict is Verdict.PASS
    at_cap = put(rated_less, (*HOIST, "stall_load"), force("3000 lb"))
    assert finding(at_cap, "stall-cap").verdict is Verdict.FAIL
    assert finding(stall_more, "stall-cap").verdict is Verdict.FAIL


def test_a_tolerance_as_large_as_the_rated_load_is_a_finding() -> None:
    doubtful = put(PROJECT, (*HOIST, "rated_load"), force("1000 lb", tolerance="1000 lb"))
    found = finding(doubtful, "stall-cap")
    assert found.verdict is Verdict.FAIL
    assert found.utilisation is None


def test_a_basis_without_a_cap_has_nothing_to_judge() -> None:
    told = [("D/L", "na.no-rule"), ("D/R", "na.no-rule")]
    assert list(reasons(on_basis(PROJECT, EN), "stall-cap")) == told
    assert reasons(put(PROJECT, RIG, None), "stall-cap") == (("D", "na.no-suspension-point"),)
