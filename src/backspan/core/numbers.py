"""Helpers that give the same bits on every platform, carry NaN, and round to a stated side."""

import itertools
import math
from collections.abc import Callable, Iterable, Iterator, Sequence
from fractions import Fraction

from backspan.core.errors import BackspanError

# No measured length or load carries nine digits: a smaller difference is arithmetic noise.
EQUAL_WITHIN = 1e-9

# Twelve doubtful numbers, each at its two ends.
MOST_COMBINATIONS = 2**12

# How far a search goes: 16 miles in sixteenths of an inch, 8,000 tons in pounds.
MOST_STEPS = 2**24


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


def surely_below(x: float, *, limit: float) -> bool:
    """Whether `x` is known to be below `limit`.

    Unknown is not below: what decides by it goes on with the unknown number itself, and ends NaN.
    """
    return x < limit


def surely_above(x: float, *, limit: float) -> bool:
    """Whether `x` is known to be above `limit`; unknown is not, as in `surely_below`."""
    return x > limit


def surely_nothing(x: float) -> bool:
    """Whether `x` is known to be none at all."""
    return x == 0.0


def at_least(x: float, *, least: float) -> float:
    """`x`, or `least` where that is larger; unknown where either is, unlike the built-in `max`."""
    return math.nan if math.isnan(x) or math.isnan(least) else max(x, least)


def at_most(x: float, *, most: float) -> float:
    """`x`, or `most` where that is smaller; unknown where either is, unlike the built-in `min`."""
    return math.nan if math.isnan(x) or math.isnan(most) else min(x, most)


def smaller(*numbers: float) -> float:
    """The smallest of some numbers, whose order is nothing; unknown where any of them is."""
    return math.nan if any(math.isnan(one) for one in numbers) else min(numbers)


def larger(*numbers: float) -> float:
    """The largest of some numbers, whose order is nothing; unknown where any of them is."""
    return math.nan if any(math.isnan(one) for one in numbers) else max(numbers)


def ends_around(middle: float, *, long: float) -> tuple[float, float]:
    """Where something `long` begins and ends around its middle; unknown where either is."""
    half = long / 2
    return middle - half, middle + half


def fewest(*counts: int) -> int:
    """The smallest of whole numbers, which are never unknown."""
    return min(counts)


def largest(*counts: int) -> int:
    """The largest of whole numbers, which are never unknown."""
    return max(counts)


def full_rows(count: float, *, per_row: int) -> float:
    """How many full rows of `per_row` a whole `count` makes; unknown where the count is."""
    return count if math.isnan(count) else float(int(count) // per_row)


def root(x: float) -> float:
    """Square root of `x`, correctly rounded; unknown where `x` is.

    Raises NumberError if `x` is negative or without limit.
    """
    if math.isnan(x):
        return x
    if _finite(x, "number under the root") < 0.0:
        raise NumberError(f"the number under the root is negative: {x!r}")
    return math.sqrt(x)


def meets(*, demand: float, capacity: float) -> bool:
    """Whether `capacity` is at least `demand`, both in one unit.

    Values within 1e-9 of each other, relative to the larger, count as equal, and equal passes.
    Raises NumberError if either is not finite: an unknown number never passes.
    """
    if not (math.isfinite(demand) and math.isfinite(capacity)):
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


def furthest(holds: Callable[[int], bool], *, most: int = MOST_STEPS, near: int = 0) -> int:
    """The largest number of steps up to `most` that holds, where all smaller ones do; else -1.

    It is sought from `near` on, which only saves trials.
    """
    first = min(near, most)
    if first > 0 and not holds(first):
        return _halved(-1, first, lambda count: not holds(count), down=True) - 1
    if first <= 0 and not holds(0):
        return -1
    low, reach = max(first, 0), 1
    while low + reach < most and holds(low + reach):
        low, reach = low + reach, reach + reach
    high = low + reach
    if high >= most:
        if low >= most or holds(most):
            return most
        high = most
    return _halved(low, high, lambda count: not holds(count)) - 1


def nearest(holds: Callable[[int], bool], *, most: int = MOST_STEPS) -> int | None:
    """The smallest number of steps that holds, where all larger ones do; None if none does."""
    if holds(0):
        return 0
    low, high = 0, 1
    while high < most and not holds(high):
        low, high = high, high + high
    if high >= most:
        if most <= low or not holds(most):
            return None
        high = most
    return _halved(low, high, holds)


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


def _halved(low: int, high: int, reached: Callable[[int], bool], *, down: bool = False) -> int:
    """The smallest count in (low, high] that is reached; `high` is, `low` is not or is before all.

    With `down` it is first sought close below `high`.
    """
    reach = 1
    while down and high - reach > low and reached(high - reach):
        high, reach = high - reach, reach + reach
    if down:
        low = max(low, high - reach)
    while high - low > 1:
        middle = (low + high) // 2
        if reached(middle):
            high = middle
        else:
            low = middle
    return high
