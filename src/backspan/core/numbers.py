"""Floating-point helpers that give the same bits on every platform and round to a stated side."""

import itertools
import math
from collections.abc import Iterable, Iterator, Sequence
from fractions import Fraction

from backspan.core.errors import BackspanError

# No measured length or load carries nine digits: a smaller difference is arithmetic noise.
EQUAL_WITHIN = 1e-9

# Twelve doubtful numbers, each at its two ends.
MOST_COMBINATIONS = 2**12


class NumberError(BackspanError, ValueError):
    """A number on which the asked operation has no meaning, such as the root of a negative."""


def exact_sum(values: Iterable[float]) -> float:
    """Sum of `values`, correctly rounded, whatever their order; 0.0 for none.

    Raises NumberError if a value is not finite or the sum is too large for a float.
    """
    try:
        total = math.fsum(values)
    except (OverflowError, ValueError) as error:
        raise NumberError(f"the sum has no finite value ({error})") from error
    return _finite(total, "sum")


def total(values: Iterable[float]) -> float:
    """As `exact_sum`, but unknown where any of them is: NaN is carried, not refused."""
    known = tuple(values)
    return math.nan if any(math.isnan(one) for one in known) else exact_sum(known)


def root(x: float) -> float:
    """Square root of `x`, correctly rounded.

    Raises NumberError if `x` is negative or not finite.
    """
    if _finite(x, "number under the root") < 0.0:
        raise NumberError(f"the number under the root is negative: {x!r}")
    return math.sqrt(x)


def meets(*, demand: float, capacity: float) -> bool:
    """Whether `capacity` is at least `demand`, both in one unit.

    Values within 1e-9 of each other, relative to the larger, count as equal, and equal passes.
    Raises NumberError if either is not finite: an unknown number never passes.
    """
    _finite(demand, "demand")
    _finite(capacity, "capacity")
    return capacity >= demand or math.isclose(capacity, demand, rel_tol=EQUAL_WITHIN)


def whole_up(x: float) -> int:
    """Smallest whole number not below `x`.

    An `x` within 1e-9 (relative; absolute below one) of a whole number is that whole number.
    Raises NumberError if `x` is not finite.
    """
    nearest = _nearest_whole(x)
    return math.ceil(x) if nearest is None else nearest


def whole_down(x: float) -> int:
    """Largest whole number not above `x`, with the same courtesy as `whole_up`.

    Raises NumberError if `x` is not finite.
    """
    nearest = _nearest_whole(x)
    return math.floor(x) if nearest is None else nearest


def step_up(x: float, *, step: float) -> float:
    """Smallest multiple of `step` not below `x`, both in one unit; courtesy as in `whole_up`.

    Raises NumberError if `x` is not finite or `step` is not positive and finite.
    """
    return _multiple(whole_up(_in_steps(x, step)), step)


def step_down(x: float, *, step: float) -> float:
    """Largest multiple of `step` not above `x`, both in one unit; courtesy as in `whole_up`.

    Raises NumberError if `x` is not finite or `step` is not positive and finite.
    """
    return _multiple(whole_down(_in_steps(x, step)), step)


def combinations(choices: Sequence[Sequence[float]]) -> Iterator[tuple[float, ...]] | None:
    """Every way to take one number of each choice; None where that is more than can be tried.

    One empty way where there is no choice at all.
    """
    many = 1
    for values in choices:
        many *= len(values)
        if many > MOST_COMBINATIONS:
            return None
    return itertools.product(*choices)


def significant(x: float, digits: int = 10) -> float:
    """`x` rounded to `digits` significant decimal digits; never -0.0.

    Raises NumberError if `x` is not finite or `digits` is below one.
    """
    if digits < 1:
        raise NumberError(f"a number needs at least one significant digit, not {digits}")
    rounded = float(f"{_finite(x, 'number'):.{digits - 1}e}")
    return _finite(rounded, "rounded number") + 0.0  # -0.0 + 0.0 is 0.0


def _finite(x: float, what: str) -> float:
    if not math.isfinite(x):
        raise NumberError(f"the {what} is not a finite number: {x!r}")
    return x


def _nearest_whole(x: float) -> int | None:
    nearest = round(_finite(x, "number"))
    close = abs(x - nearest) <= EQUAL_WITHIN * max(1.0, abs(nearest))
    return nearest if close else None


def _in_steps(x: float, step: float) -> float:
    if _finite(step, "step") <= 0.0:
        raise NumberError(f"the step is not positive: {step!r}")
    return _finite(_finite(x, "number") / step, "count of steps")


def _multiple(count: int, step: float) -> float:
    # Through the step's decimal text, so that three steps of 0.1 make 0.3.
    return float(count * Fraction(repr(step)))
