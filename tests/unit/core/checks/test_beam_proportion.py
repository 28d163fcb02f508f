"""Inboard over outboard at least 1.5: Quebec, S-2.1 r.4, s. 3.9.15 (equality is enough)."""

from __future__ import annotations

import pytest

from backspan.core.findings import Verdict
from backspan.core.model.project import Project
from tests.unit.core.rigs import (
    ARM,
    OSHA,
    PROJECT,
    QUEBEC,
    finding,
    length,
    needs,
    on_basis,
    put,
    reasons,
)

QUEBEC_RIG = on_basis(PROJECT, OSHA, QUEBEC)


def arms(inboard: str, outboard: str) -> Project:
    return put(
        put(QUEBEC_RIG, (*ARM, "reach"), length(outboard)), (*ARM, "backspan"), length(inboard)
    )


@pytest.mark.parametrize(
    ("inboard", "verdict"),
    [("1.5 m", Verdict.PASS), ("1.499 m", Verdict.FAIL), ("1.49 m", Verdict.FAIL)],
)
def test_one_and_a_half_times_is_enough(inboard: str, verdict: Verdict) -> None:
    found = finding(arms(inboard, "1 m"), "beam-proportion")
    assert found.verdict is verdict
    assert found.message.id == f"proportion.{verdict}"
    assert found.rules[0].provenance.clause == "s. 3.9.15"
    assert found.governing == "geometry.inboard-to-outboard"


def test_in_feet_as_in_metres() -> None:
    assert finding(arms("3 ft", "2 ft"), "beam-proportion").verdict is Verdict.PASS
    assert finding(arms("2 ft 11 15/16 in", "2 ft"), "beam-proportion").verdict is Verdict.FAIL


def test_without_an_arm_it_is_missing() -> None:
    found = finding(put(QUEBEC_RIG, (*ARM, "reach"), None), "beam-proportion")
    assert found.verdict is Verdict.MISSING
    assert needs(found) == (("need.input", "reach"),)


def test_a_tolerance_is_taken_at_the_end_that_does_harm() -> None:
    taped = put(arms("1.5 m", "1 m"), (*ARM, "reach"), length("1 m", tolerance="1 mm"))
    assert finding(taped, "beam-proportion").verdict is Verdict.FAIL


def test_elsewhere_it_does_not_apply() -> None:
    assert set(reasons(PROJECT, "beam-proportion")) == {
        ("D/L", "na.no-rule"),
        ("D/R", "na.no-rule"),
    }
