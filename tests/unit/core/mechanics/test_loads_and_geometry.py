"""Loads and lengths against numbers worked by hand; every formula is in the register."""

from __future__ import annotations

import pytest

from backspan.core.mechanics import FORMULAS, beam_geometry, loads, stack, tipping
from backspan.core.mechanics.constants import STANDARD_GRAVITY
from backspan.core.worked.formula import Step

#: One stage of cases-style numbers in kg: hoist 500, limiter 1.25, rope 25, bottom weight 20,
#: dead 400, live 240; beam 18 ft, tip 6 in, reach 2 ft in inches.
CASES: list[tuple[Step, float]] = [
    (loads.largest_rope_tension(hoist_pull=625.0, rope_weight=25.0, bottom_weight=20.0), 670.0),
    (loads.half_dead_full_live(dead_load=400.0, live_load=240.0), 440.0),
    (loads.half_dead_half_live(dead_load=400.0, live_load=240.0), 320.0),
    (loads.stall_cap(cap_factor=3.0, rated_load=500.0), 1500.0),
    (beam_geometry.inboard_length(beam_length=216.0, tip_beyond_line=6.0, reach=24.0), 186.0),
    (beam_geometry.backspan_to_stack(inboard=186.0, stack_centroid=27.0), 159.0),
    (
        beam_geometry.uniform_beam_centroid(beam_length=216.0, tip_beyond_line=6.0, reach=24.0),
        78.0,
    ),
    (beam_geometry.beam_centroid(inboard=186.0, centroid_from_tail=200.0), -14.0),
    (beam_geometry.inboard_to_outboard(inboard=3.0, reach=2.0), 1.5),
]


@pytest.mark.parametrize(("step", "value"), CASES, ids=[step.formula for step, _ in CASES])
def test_the_value_by_hand(step: Step, value: float) -> None:
    assert step.value == pytest.approx(value, rel=1e-12)


def test_every_formula_of_both_files_has_a_case() -> None:
    named = {
        name
        for module in (loads, beam_geometry)
        for name, one in vars(module).items()
        if hasattr(one, "__wrapped__")
    }
    assert {step.formula for step, _ in CASES} == named


def test_the_register_holds_every_formula_once() -> None:
    for module in (tipping, loads, beam_geometry, stack):
        for name, one in vars(module).items():
            if hasattr(one, "__wrapped__") and one.__wrapped__.__module__ == module.__name__:
                assert FORMULAS[name] is one


def test_gravity_is_the_one_of_the_convention() -> None:
    assert STANDARD_GRAVITY == 9.80665
