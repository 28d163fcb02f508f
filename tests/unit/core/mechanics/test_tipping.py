"""Formulas of tipping against numbers worked by hand, in SI."""

from __future__ import annotations

import pytest

from backspan.core.mechanics import tipping
from backspan.core.worked.formula import Step

G = 9.80665

#: Reach 0.5 m, backspan 4 m, hoist 500 kg, factor 4: 1,000 kg m against 250 kg x 4 m.
CASES: list[tuple[Step, float]] = [
    (tipping.weight(mass=500.0), 4903.325),
    (tipping.tipping_moment(load=4903.325, reach=0.5), 2451.6625),
    (tipping.required_moment(factor=4.0, load=4903.325, reach=0.5), 9806.65),
    (tipping.resisting_moment(counterweight=250 * G, backspan=4.0), 9806.65),
    (
        tipping.resisting_moment_with_beam(
            counterweight=250 * G, backspan=4.0, beam_weight=60 * G, beam_centroid_inboard=1.75
        ),
        1105 * G,
    ),
    (
        tipping.resisting_moment_with_beam(
            counterweight=250 * G, backspan=4.0, beam_weight=60 * G, beam_centroid_inboard=-1.0
        ),
        940 * G,
    ),
    (tipping.required_counterweight(required=9806.65, backspan=4.0), 250 * G),
    (
        tipping.required_counterweight_with_beam(
            required=750 * G, backspan=4.0, beam_weight=60 * G, beam_centroid_inboard=1.75
        ),
        161.25 * G,
    ),
    (tipping.factor_reached(resisting=9806.65, tipping=2451.6625), 4.0),
    (tipping.pieces_in_weight(counterweight=250 * G, piece_weight=25 * G), 10.0),
]


@pytest.mark.parametrize(("step", "value"), CASES, ids=[step.formula for step, _ in CASES])
def test_the_value_by_hand(step: Step, value: float) -> None:
    assert step.value == pytest.approx(value, rel=1e-12)


def test_every_formula_of_the_file_has_a_case() -> None:
    named = {name for name, one in vars(tipping).items() if hasattr(one, "__wrapped__")}
    assert {step.formula for step, _ in CASES} == named


def test_the_step_records_what_was_asked() -> None:
    step = tipping.tipping_moment(load=2.0, reach=3.0)
    assert step == Step("tipping_moment", (("load", 2.0), ("reach", 3.0)), 6.0)
