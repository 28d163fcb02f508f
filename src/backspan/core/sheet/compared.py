"""What the branches of an answer come to: each compared by itself, the worst of them governs.

A rule may have several branches: one known to fail is a fail whatever is unknown of the others;
else one unknown leaves the answer open.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from typing import Generic, TypeVar

from backspan.core.findings import MessageValue
from backspan.core.numbers import meets
from backspan.core.quantities import Amount, Dimension
from backspan.core.rules.selected import SelectedValue

_WORST_FIRST = (False, None, True)


@dataclass(slots=True)
class Compared:
    """A demand and a capacity in SI, NaN where unknown, and what the sentence says of them.

    Not frozen, as is nothing that is made at every corner: that costs a quarter of a search.
    Nobody changes one.
    """

    demand: float
    capacity: float
    words: tuple[tuple[str, MessageValue], ...] = ()
    numbers: tuple[tuple[str, float, Dimension], ...] = ()
    """Numbers of the sentence in SI; those that are NaN are not told."""
    counts: tuple[tuple[str, float], ...] = ()
    """Whole numbers of the sentence, likewise."""
    value: SelectedValue | None = None
    """The rule value this branch is held against, where the question has several."""

    def told(self) -> Iterator[tuple[str, MessageValue]]:
        """What the sentence says: its words, then what is known of its numbers."""
        yield from self.words
        for name, count in self.counts:
            if not math.isnan(count):
                yield name, int(count)
        for name, value, dimension in self.numbers:
            if not math.isnan(value):
                yield name, Amount(value, dimension)

    @property
    def met(self) -> bool | None:
        """Whether the capacity is enough; None where either is unknown."""
        if math.isnan(self.demand) or math.isnan(self.capacity):
            return None
        return meets(demand=self.demand, capacity=self.capacity)

    @property
    def ratio(self) -> float:
        """Demand over capacity; without limit where nothing resists, none where it is unknown."""
        if self.capacity <= 0.0:
            return math.inf if self.demand > 0.0 else 0.0
        share = self.demand / self.capacity
        return 0.0 if math.isnan(share) else share

    @property
    def shortfall(self) -> float:
        """Demand less capacity, which ranks what has the same ratio."""
        return self.demand - self.capacity


C = TypeVar("C", bound=Compared)


@dataclass(slots=True)
class Weighed(Generic[C]):
    """All branches of an answer, what they come to, and what left its domain."""

    branches: tuple[C, ...]
    outside: tuple[str, ...]
    met: bool | None
    """False where one branch is known to fail, None where one is unknown, else True."""
    governing: C | None
    """The known branch with most demand over capacity, the first of equals."""
    rank: tuple[int, float, float]
    """The worse, the smaller."""

    @property
    def shown(self) -> C | None:
        """The branch that governs; where only one was asked, that one, known or not."""
        only = self.branches[0] if len(self.branches) == 1 else None
        return self.governing or only


def weigh(branches: Iterable[C], outside: Iterable[str] = ()) -> Weighed[C]:
    """What the branches of an answer come to."""
    every, left = tuple(branches), tuple(outside)
    failed, unknown = bool(left), not every
    governing, most = None, (-math.inf, -math.inf)
    for branch in every:
        met = branch.met
        if met is None:
            unknown = True
            continue
        failed = failed or not met
        share = (branch.ratio, branch.shortfall)
        if share > most:
            governing, most = branch, share
    met = False if failed else None if unknown else True
    if left:
        most = (math.inf, 0.0)
    elif governing is None:
        # Of what cannot be compared, what asks most is the worst.
        asked_for = every[0].demand if len(every) == 1 else math.nan
        most = (0.0, 0.0 if math.isnan(asked_for) else asked_for)
    return Weighed(every, left, met, governing, (_WORST_FIRST.index(met), -most[0], -most[1]))
