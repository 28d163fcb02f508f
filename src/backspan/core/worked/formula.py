"""A formula that records its own use: what was asked, with which numbers, what came out.

A formula is one return expression. Calling it computes the value and records the arguments;
nothing is rendered until somebody asks for text (expression.py), so a recorded formula costs
little more than the bare one. The same function is what is printed: there is no second text.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any, Generic, ParamSpec

from backspan.core.quantities import Dimension

P = ParamSpec("P")


@dataclass(frozen=True, slots=True)
class Step:
    """One use of a formula: its name, the arguments by name, the result in SI.

    `of` is the kind of quantity of a formula that holds for any (`Same`).
    """

    formula: str
    arguments: tuple[tuple[str, float], ...]
    value: float
    of: Dimension | None = None


class Formula(Generic[P]):
    """A formula by its function: calling it gives the recorded step."""

    __slots__ = ("__wrapped__", "name", "symbol")

    def __init__(self, function: Callable[P, float], symbol: str) -> None:
        """Wrap `function`; `symbol` is what its result is called in print."""
        self.__wrapped__ = function
        self.name: str = function.__name__
        self.symbol = symbol

    def __call__(self, *args: P.args, **kwargs: P.kwargs) -> Step:
        """Compute the value and record how it came about."""
        return Step(self.name, tuple(kwargs.items()), self.__wrapped__(*args, **kwargs))  # type: ignore[arg-type]  # every parameter of a formula is a keyword-only float, held by an architecture test


def formula(symbol: str) -> Callable[[Callable[P, float]], Formula[P]]:
    """Mark a function of one return expression as a recorded formula with its symbol."""

    def wrap(function: Callable[P, float]) -> Formula[P]:
        return Formula(function, symbol)

    return wrap


AnyFormula = Formula[Any]
