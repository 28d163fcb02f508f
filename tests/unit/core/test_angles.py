"""Own sines and directions against the platform's, whose last bit differs between machines."""

from __future__ import annotations

import math

import pytest

from backspan.core.angles import HALF_TURN, cosine, direction, sine, turned_within
from backspan.core.mechanics import FORMULAS

ANGLES = [n * 0.01 for n in range(-900, 901)]


def test_sine_and_cosine_are_those_of_the_platform() -> None:
    for angle in ANGLES:
        assert sine(angle) == pytest.approx(math.sin(angle), abs=1e-14)
        assert cosine(angle) == pytest.approx(math.cos(angle), abs=1e-14)


def test_a_direction_is_that_of_the_platform_in_every_quarter() -> None:
    for angle in ANGLES:
        across, along = 3.0 * math.sin(angle), 3.0 * math.cos(angle)
        assert direction(across=across, along=along) == pytest.approx(
            math.atan2(across, along), abs=1e-14
        )
    assert math.isnan(direction(across=0.0, along=0.0))


def test_unknown_is_carried() -> None:
    for found in (sine(math.nan), cosine(math.nan), turned_within(math.nan)):
        assert math.isnan(found)
    assert math.isnan(direction(across=math.nan, along=1.0))
    assert math.isnan(direction(across=1.0, along=math.nan))
    assert turned_within(3 * HALF_TURN) == pytest.approx(-HALF_TURN)


#: Statics: forces along and across the beam, by the sine rule of the triangle of forces.
PAIRS = [(20.0, 45.0, 0.7802, 0.3774), (15.0, 60.0, 0.8966, 0.2679), (30.0, 30.0, 0.5774, 0.5774)]


@pytest.mark.parametrize(("one", "other", "first", "second"), PAIRS)
def test_the_pulls_of_a_pair(one: float, other: float, first: float, second: float) -> None:
    slopes = [math.tan(math.radians(angle)) for angle in (one, other)]
    pair = FORMULAS["pair_tension"]
    of_one = pair(held=1.0, own_slope=slopes[0], other_slope=slopes[1]).value
    of_other = pair(held=1.0, own_slope=slopes[1], other_slope=slopes[0]).value
    assert (of_one, of_other) == pytest.approx((first, second), abs=5e-5)
    assert of_one * math.sin(math.radians(one)) == pytest.approx(
        of_other * math.sin(math.radians(other))
    )
