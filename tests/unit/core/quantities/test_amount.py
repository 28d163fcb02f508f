"""A number that knows its dimension."""

import math

import pytest

from backspan.core.quantities import FORCE, LENGTH, Amount, QuantityError


def test_amounts_of_one_value_and_dimension_are_equal() -> None:
    assert Amount(1.0, LENGTH) == Amount(1.0, LENGTH)
    assert Amount(1.0, LENGTH) != Amount(1.0, FORCE)
    assert len({Amount(1.0, LENGTH), Amount(1.0, LENGTH)}) == 1


@pytest.mark.parametrize("value", [math.nan, math.inf, -math.inf])
def test_an_amount_is_finite(value: float) -> None:
    with pytest.raises(QuantityError, match="a force is a finite number"):
        Amount(value, FORCE)
