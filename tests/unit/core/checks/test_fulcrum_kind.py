"""A fulcrum on a tower or a parapet is for an engineer, with what comes on both stands."""

from __future__ import annotations

import pytest

from backspan.core.findings import Verdict
from backspan.core.model.project import Project
from backspan.core.model.rigs import FulcrumKind
from backspan.core.quantities import FORCE, Amount, parse
from tests.unit.core.rigs import ARM, BEAM, HOIST, PROJECT, finding, length, needs, put

TOWER = put(PROJECT, (*ARM, "fulcrum", "kind"), FulcrumKind.TOWER)


def told(project: Project) -> dict[str, float]:
    """The loads of the finding, in pounds."""
    found = finding(project, "fulcrum-kind")
    pound = parse("1 lb", FORCE)
    values = dict(found.message.values)
    return {name: one.value / pound for name, one in values.items() if isinstance(one, Amount)} | {
        "verdict": float(found.verdict is Verdict.REFER)
    }


def test_the_reactions_are_those_of_statics() -> None:
    """By hand: 1000 lb at 2 ft out, 880 lb at 10 ft and 200 lb at 6 1/2 ft in, stand at 10 ft.

    Behind (8800 + 1300 - 2000) / 10 = 810, in front 2080 - 810; with nothing on the line 1010.
    """
    assert told(TOWER) == pytest.approx(
        {
            "front_loaded": 1270.0,
            "rear_loaded": 810.0,
            "front_idle": 70.0,
            "rear_idle": 1010.0,
            "verdict": 1.0,
        }
    )


def test_a_rear_stand_that_would_lift_carries_nothing() -> None:
    heavy = put(TOWER, (*HOIST, "rated_load", "value"), parse("6000 lb", FORCE))
    found = told(heavy)
    assert found["rear_loaded"] == 0.0
    assert found["front_loaded"] == pytest.approx(7080.0)


def test_without_the_place_of_the_rear_stand_it_is_the_most_that_can_come() -> None:
    assert told(put(TOWER, (*ARM, "rear_stand"), None)) == pytest.approx(
        {"most": 2080.0, "verdict": 1.0}
    )


def test_without_the_weight_of_the_beam_no_load_is_told() -> None:
    assert told(put(TOWER, (*BEAM, "mass"), None)) == {"verdict": 1.0}


def test_whether_a_pad_stands_on_the_wall_is_asked() -> None:
    """Taking its place away makes no pass of a pad on the wall."""
    on_wall = put(PROJECT, (*ARM, "fulcrum", "setback"), length("4 in"))
    assert finding(on_wall, "fulcrum-kind").verdict is Verdict.REFER
    unknown = finding(put(PROJECT, (*ARM, "fulcrum", "setback"), None), "fulcrum-kind")
    assert (unknown.verdict, unknown.message.id) == (Verdict.MISSING, "fulcrum.on-wall-missing")
    assert ("need.input", "setback") in needs(unknown)


def test_a_pad_behind_the_wall_is_no_question() -> None:
    assert finding(PROJECT, "fulcrum-kind").verdict is Verdict.PASS
    on_the_wall = put(PROJECT, (*ARM, "fulcrum", "setback"), length("12 in"))
    assert finding(on_the_wall, "fulcrum-kind").verdict is Verdict.REFER
