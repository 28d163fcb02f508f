from __future__ import annotations

from collections.abc import Mapping

import pytest

from backspan.core.numbers import NumberError
from backspan.core.worked.arithmetic import UNBOUNDED, error_bound, evaluate
from backspan.core.worked.expression import Expression, from_text

CONSTANTS = {"GRAVITY": 9.80665}


def read(text: str) -> Expression:
    return from_text(text, parameters=("a", "b", "c"), constants=CONSTANTS, place="test")


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("a + b", 11.0),
        ("a - b", 7.0),
        ("a * b / c", 6.0),
        ("a * (b / c)", 6.0),
        ("-a + b", -7.0),
        ("-(a + b)", -11.0),
        ("root(a)", 3.0),
        ("larger(a, b) - smaller(a, c)", 6.0),
        ("a / 2", 4.5),
        ("1 / 3", 1 / 3),
        ("a * GRAVITY", 9.0 * 9.80665),
    ],
)
def test_an_expression_is_worked_out(text: str, expected: float) -> None:
    assert evaluate(read(text), {"a": 9.0, "b": 2.0, "c": 3.0}) == expected


def test_the_order_of_working_is_kept() -> None:
    values = {"a": 0.1, "b": 0.2, "c": 0.3}
    assert evaluate(read("a + b + c"), values) == 0.1 + 0.2 + 0.3
    assert evaluate(read("a + (b + c)"), values) == 0.1 + (0.2 + 0.3)
    assert evaluate(read("a + b + c"), values) != evaluate(read("a + (b + c)"), values)


def test_a_constant_may_be_counted_in_another_unit() -> None:
    assert evaluate(read("a * GRAVITY"), {"a": 250.0, "GRAVITY": 1.0}) == 250.0


def test_division_by_zero_and_roots_of_negatives_fail_as_in_the_formula() -> None:
    with pytest.raises(ZeroDivisionError, match="division"):
        evaluate(read("a / b"), {"a": 1.0, "b": 0.0})
    with pytest.raises(NumberError, match="negative"):
        evaluate(read("root(a)"), {"a": -1.0})


@pytest.mark.parametrize(
    ("text", "values", "expected"),
    [
        ("a", {"a": 100.0}, 1e-12),
        ("2", {}, 0.0),
        ("-a", {"a": 100.0}, 1e-12),
        ("a + b", {"a": 100.0, "b": 50.0}, 1.5e-12),
        ("a - b", {"a": 100.0, "b": 100.0}, 2e-12),
        ("a * b", {"a": 100.0, "b": 50.0}, 1e-10),
        ("a / b", {"a": 100.0, "b": 50.0}, 4e-14),
        ("a / (b - c)", {"a": 1.0, "b": 2.0, "c": 2.0 - 1e-9}, 4e4),
        ("larger(a, b)", {"a": 100.0, "b": 1.0}, 1e-12),
        ("root(a)", {"a": 100.0}, 1e-13),
        ("a * GRAVITY", {"a": 1.0}, 2e-13),
    ],
)
def test_the_error_bound_follows_the_numbers(
    text: str, values: Mapping[str, float], expected: float
) -> None:
    assert error_bound(read(text), values) == pytest.approx(expected, rel=0.05, abs=1e-20)


def test_a_divisor_that_may_be_zero_has_no_bound() -> None:
    values = {"a": 1.0, "b": 3.0, "c": 3.0 + 4e-16}
    assert error_bound(read("a / (b - c)"), values) == UNBOUNDED
