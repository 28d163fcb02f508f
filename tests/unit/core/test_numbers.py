"""Sums, comparisons and roundings that must fall the same way everywhere."""

import itertools
import math

import pytest

from backspan.core.errors import BackspanError
from backspan.core.numbers import (
    MOST_COMBINATIONS,
    NumberError,
    combinations,
    exact_sum,
    meets,
    root,
    significant,
    step_down,
    step_up,
    total,
    whole_down,
    whole_up,
)

NOT_FINITE = [math.nan, math.inf, -math.inf]


def test_sum_does_not_depend_on_order() -> None:
    values = [1e16, 1.0, -1e16, 0.1]
    assert {exact_sum(order) for order in itertools.permutations(values)} == {1.1}


def test_sum_of_ten_tenths_is_one() -> None:
    assert exact_sum(0.1 for _ in range(10)) == 1.0


def test_sum_of_nothing_is_zero() -> None:
    assert exact_sum([]) == 0.0


@pytest.mark.parametrize(
    "values",
    [[1.0, math.nan], [math.inf], [math.inf, -math.inf], [1e308, 1e308]],
    ids=["nan", "inf", "inf less inf", "too large"],
)
def test_sum_refuses_what_has_no_finite_value(values: list[float]) -> None:
    with pytest.raises(NumberError, match=r"sum .*finite"):
        exact_sum(values)


def test_root_of_a_square() -> None:
    assert root(144.0) == 12.0
    assert root(0.0) == 0.0


def test_root_refuses_negatives() -> None:
    with pytest.raises(NumberError, match=r"root is negative: -4\.0"):
        root(-4.0)


def test_root_refuses_what_has_no_limit_and_carries_what_is_unknown() -> None:
    with pytest.raises(NumberError, match="under the root is not a finite number"):
        root(math.inf)
    assert math.isnan(root(math.nan))


@pytest.mark.parametrize(
    ("demand", "capacity", "met"),
    [
        (4000.0, 4000.0, True),
        (4000.0, 4000.1, True),
        (4000.0, 3999.9, False),
        (4000.0, 4000.0 * (1 - 0.9e-9), True),
        (4000.0, 4000.0 * (1 - 1.1e-9), False),
        (0.0, 0.0, True),
        (0.0, -1.0, False),
        (-1.0, 0.0, True),
        (-2.0, -2.0, True),
        (-2.0, -3.0, False),
        (0.3, 0.1 + 0.1 + 0.1, True),
        (0.1 + 0.1 + 0.1, 0.3, True),
    ],
)
def test_meets(*, demand: float, capacity: float, met: bool) -> None:
    assert meets(demand=demand, capacity=capacity) is met


@pytest.mark.parametrize("x", NOT_FINITE)
def test_an_unknown_number_never_passes(x: float) -> None:
    with pytest.raises(NumberError, match="demand is not a finite number"):
        meets(demand=x, capacity=1.0)
    with pytest.raises(NumberError, match="capacity is not a finite number"):
        meets(demand=1.0, capacity=x)


@pytest.mark.parametrize(
    ("x", "up", "down"),
    [
        (250 / 25, 10, 10),
        (10.0000000001, 10, 10),
        (9.9999999999, 10, 10),
        (10.001, 11, 10),
        (9.999, 10, 9),
        (10.00000002, 11, 10),
        (9.99999998, 10, 9),
        (1_000_000.0005, 1_000_000, 1_000_000),
        (0.0, 0, 0),
        (1e-10, 0, 0),
        (-1e-10, 0, 0),
        (1e-8, 1, 0),
        (-0.5, 0, -1),
        (-2.001, -2, -3),
        (-2.0000000001, -2, -2),
        (0.1 * 3 / 0.1, 3, 3),
    ],
)
def test_whole_up_and_down(x: float, up: int, down: int) -> None:
    assert (whole_up(x), whole_down(x)) == (up, down)


@pytest.mark.parametrize("x", NOT_FINITE)
def test_whole_refuses_what_is_not_finite(x: float) -> None:
    with pytest.raises(NumberError, match="not a finite number"):
        whole_up(x)
    with pytest.raises(NumberError, match="not a finite number"):
        whole_down(x)


@pytest.mark.parametrize(
    ("x", "step", "up", "down"),
    [
        (1.03, 1 / 16, 1.0625, 1.0),
        (1.0625, 1 / 16, 1.0625, 1.0625),
        (0.3, 0.1, 0.3, 0.3),
        (0.31, 0.1, 0.4, 0.3),
        (-0.31, 0.1, -0.3, -0.4),
        (1391.2, 1.0, 1392.0, 1391.0),
        (6.18799999999999, 0.001, 6.188, 6.188),
        (0.0, 5.0, 0.0, 0.0),
    ],
)
def test_step_up_and_down(*, x: float, step: float, up: float, down: float) -> None:
    assert step_up(x, step=step) == up
    assert step_down(x, step=step) == down


@pytest.mark.parametrize("step", [0.0, -1.0])
def test_step_refuses_a_step_that_goes_nowhere(step: float) -> None:
    with pytest.raises(NumberError, match="step is not positive"):
        step_up(1.0, step=step)
    with pytest.raises(NumberError, match="step is not positive"):
        step_down(1.0, step=step)


@pytest.mark.parametrize("x", NOT_FINITE)
def test_step_refuses_what_is_not_finite(x: float) -> None:
    with pytest.raises(NumberError, match="number is not a finite number"):
        step_up(x, step=1.0)
    with pytest.raises(NumberError, match="step is not a finite number"):
        step_down(1.0, step=x)


def test_step_refuses_more_steps_than_a_float_can_count() -> None:
    with pytest.raises(NumberError, match="count of steps is not a finite number"):
        step_up(1e300, step=1e-300)


@pytest.mark.parametrize(
    ("x", "digits", "rounded"),
    [
        (1391.3043478260870, 10, 1391.304348),
        (1391.3043478260870, 3, 1390.0),
        (0.000123456789, 2, 0.00012),
        (-2.5, 1, -2.0),
        (9.99, 1, 10.0),
        (0.1 + 0.2, 10, 0.3),
    ],
)
def test_significant(*, x: float, digits: int, rounded: float) -> None:
    assert significant(x, digits) == rounded


def test_significant_keeps_ten_digits_unless_told() -> None:
    assert significant(12345.678901234) == 12345.6789


def test_significant_never_answers_minus_zero() -> None:
    assert math.copysign(1.0, significant(-0.0)) == 1.0


def test_significant_needs_a_digit() -> None:
    with pytest.raises(NumberError, match="at least one significant digit, not 0"):
        significant(1.0, 0)


@pytest.mark.parametrize("x", NOT_FINITE)
def test_significant_refuses_what_is_not_finite(x: float) -> None:
    with pytest.raises(NumberError, match="number is not a finite number"):
        significant(x)


def test_significant_refuses_to_round_past_the_largest_float() -> None:
    with pytest.raises(NumberError, match="rounded number is not a finite number"):
        significant(1.7976931348623157e308, 1)


def test_a_number_error_is_a_backspan_error_and_a_value_error() -> None:
    assert issubclass(NumberError, BackspanError)
    assert issubclass(NumberError, ValueError)


def test_every_combination_takes_one_of_each_choice() -> None:
    every = combinations(((1.0, 2.0), range(3)))
    assert every is not None
    assert list(every) == [(1.0, 0), (1.0, 1), (1.0, 2), (2.0, 0), (2.0, 1), (2.0, 2)]
    assert list(combinations(()) or ()) == [()]


def test_twelve_pairs_can_be_combined_and_one_more_cannot() -> None:
    assert len(list(combinations([(0.0, 1.0)] * 12) or ())) == MOST_COMBINATIONS
    assert combinations([(0.0, 1.0)] * 13) is None


def test_a_total_of_something_unknown_is_unknown() -> None:
    assert total([0.1] * 10) == 1.0
    assert total([]) == 0.0
    assert math.isnan(total([1.0, math.nan, math.inf]))
