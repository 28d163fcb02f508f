"""The furthest or nearest step at which something still holds, found by halving.

The engine itself is asked at every trial, so that the number told is one that the check passes
and one step beyond is one that it does not.
"""

from __future__ import annotations

from collections.abc import Callable

from backspan.core.numbers import step_down

#: Beyond this many steps nothing is sought: with 1/16 in that is some 20 miles.
_MOST_STEPS = 2**24


def most_that_holds(holds: Callable[[float], bool], *, step: float) -> float | None:
    """The largest multiple of `step` that holds, where every smaller one holds too.

    0.0 where not even one step holds; None where it holds however far it is sought.
    """
    high = 1
    while holds(_at(high, step)):
        high *= 2
        if high > _MOST_STEPS:
            return None
    return _at(_halved(high // 2, high, lambda count: not holds(_at(count, step))) - 1, step)


def least_that_holds(holds: Callable[[float], bool], *, step: float) -> float | None:
    """The smallest multiple of `step`, at least one, that holds, where every larger one does too.

    None where it does not hold however far it is sought.
    """
    high = 1
    while not holds(_at(high, step)):
        high *= 2
        if high > _MOST_STEPS:
            return None
    return _at(_halved(high // 2, high, lambda count: holds(_at(count, step))), step)


def _halved(low: int, high: int, reached: Callable[[int], bool]) -> int:
    """The smallest count in (low, high] that is reached; `high` is, `low` is not."""
    while high - low > 1:
        middle = (low + high) // 2
        if reached(middle):
            high = middle
        else:
            low = middle
    return high


def _at(count: int, step: float) -> float:
    return step_down(count * step, step=step)
