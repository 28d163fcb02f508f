"""The furthest or nearest step at which something still holds, found by doubling and halving.

The engine itself is asked at every trial, so that the number told is one that the check passes
and one step beyond is one that it does not.
"""

from __future__ import annotations

from collections.abc import Callable

from backspan.core.numbers import MOST_STEPS, furthest, nearest, step_down


def most_that_holds(holds: Callable[[float], bool], *, step: float) -> float | None:
    """The largest multiple of `step` that holds, where every smaller one holds too.

    0.0 where not even one step holds; None where it holds however far it is sought.
    """
    found = furthest(lambda count: count == 0 or holds(_at(count, step)))
    return None if found == MOST_STEPS else _at(found, step)


def least_that_holds(holds: Callable[[float], bool], *, step: float) -> float | None:
    """The smallest multiple of `step`, at least one, that holds, where every larger one does too.

    None where it does not hold however far it is sought.
    """
    found = nearest(lambda count: count > 0 and holds(_at(count, step)))
    return None if found is None else _at(found, step)


def _at(count: int, step: float) -> float:
    return step_down(count * step, step=step)
