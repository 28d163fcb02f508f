"""Put what is unknown into each argument of each formula and selector: it comes out unknown."""

from __future__ import annotations

import inspect
import math
from collections.abc import Callable

import pytest

from backspan.core import numbers
from backspan.core.mechanics import FORMULAS
from backspan.core.worked.formula import AnyFormula

ARGUMENTS = [
    (formula, name)
    for formula in FORMULAS.values()
    for name in inspect.signature(formula.__wrapped__).parameters
]


@pytest.mark.parametrize(
    ("formula", "unknown"), ARGUMENTS, ids=[f"{one.name}-{name}" for one, name in ARGUMENTS]
)
def test_a_formula_carries_it(formula: AnyFormula, unknown: str) -> None:
    names = inspect.signature(formula.__wrapped__).parameters
    # No two alike, so that no difference is nothing to divide by.
    known = {name: 3.0 + place / 4 for place, name in enumerate(names)}
    assert math.isfinite(formula(**known).value)
    assert math.isnan(formula(**(known | {unknown: math.nan})).value)


#: A number by itself, and with what it is held against unknown.
SELECTORS: dict[str, list[Callable[[float], float]]] = {
    "total": [lambda x: numbers.total([1.0, x]), lambda x: numbers.total([x, -1.0])],
    "at_least": [
        lambda x: numbers.at_least(x, least=0.0),
        lambda x: numbers.at_least(1.0, least=x),
    ],
    "at_most": [lambda x: numbers.at_most(x, most=5.0), lambda x: numbers.at_most(1.0, most=x)],
    "smaller": [lambda x: numbers.smaller(x, 5.0), lambda x: numbers.smaller(1.0, x)],
    "larger": [lambda x: numbers.larger(x, 5.0), lambda x: numbers.larger(1.0, x)],
    "root": [numbers.root],
    "ends_around": [
        lambda x: numbers.ends_around(x, long=1.0)[0],
        lambda x: numbers.ends_around(1.0, long=x)[0],
        lambda x: numbers.ends_around(1.0, long=x)[1],
    ],
    "full_rows": [lambda x: numbers.full_rows(x, per_row=2)],
}
#: What decides a branch: unknown is never surely so, and what it decides goes on unknown.
DECIDERS: dict[str, list[Callable[[float], bool]]] = {
    "surely_below": [
        lambda x: numbers.surely_below(x, limit=1.0),
        lambda x: numbers.surely_below(1.0, limit=x),
    ],
    "surely_above": [
        lambda x: numbers.surely_above(x, limit=1.0),
        lambda x: numbers.surely_above(1.0, limit=x),
    ],
    "surely_nothing": [numbers.surely_nothing],
}
#: What refuses a number that is not finite, and so can not lose it.
REFUSES: dict[str, list[Callable[[float], object]]] = {
    "meets": [
        lambda x: numbers.meets(demand=x, capacity=1.0),
        lambda x: numbers.meets(demand=1.0, capacity=x),
    ],
    "exact_sum": [lambda x: numbers.exact_sum([1.0, x])],
    "whole_up": [numbers.whole_up],
    "whole_down": [numbers.whole_down],
    "step_up": [lambda x: numbers.step_up(x, step=1.0), lambda x: numbers.step_up(1.0, step=x)],
    "step_down": [
        lambda x: numbers.step_down(x, step=1.0),
        lambda x: numbers.step_down(1.0, step=x),
    ],
    "significant": [numbers.significant],
}
#: Of whole numbers only.
WHOLE = {"fewest", "largest", "furthest", "nearest", "combinations"}


@pytest.mark.parametrize("name", SELECTORS)
def test_a_selector_carries_it(name: str) -> None:
    for asked in SELECTORS[name]:
        assert math.isfinite(asked(3.0))
        assert math.isnan(asked(math.nan))


@pytest.mark.parametrize("name", DECIDERS)
def test_a_decider_is_not_sure(name: str) -> None:
    for asked in DECIDERS[name]:
        assert asked(math.nan) is False
        assert {asked(-3.0), asked(0.0), asked(3.0)} == {True, False}


@pytest.mark.parametrize("name", REFUSES)
def test_what_needs_a_number_refuses_it(name: str) -> None:
    for asked in REFUSES[name]:
        asked(3.0)
        with pytest.raises(numbers.NumberError, match="finite"):
            asked(math.nan)


def test_every_function_of_numbers_is_here() -> None:
    public = {
        name
        for name, one in vars(numbers).items()
        if inspect.isfunction(one) and not name.startswith("_")
    }
    here = {*SELECTORS, *DECIDERS, *REFUSES, *WHOLE}
    assert {name for name in public if vars(numbers)[name].__module__ == numbers.__name__} == here
