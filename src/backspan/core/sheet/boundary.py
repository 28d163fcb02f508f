"""How far one thing may change before an answer does: a search on the same sums.

`Change` names the values that move together, by how much a step and which way. The answer is asked
at 1, 2, 4 ... steps until it turns, then halved. It turns once: a moment about the fulcrum is, in
each length, load and count that is moved here, steadily rising or falling as long as the stack
stays on the beam, own weight that changes sides included.

The search is made at the corner that is worst before anything moves, which is cheap and can only
be too hopeful; the step it ends at is then asked at every corner, and if another corner has become
the worst one, the search is made again at all of them. One step further fails at a point within
the doubt, so it fails.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Generic

from backspan.core.numbers import (
    MOST_STEPS,
    furthest,
    nearest,
    surely_above,
    surely_below,
    whole_down,
)
from backspan.core.sheet.case import Case, Place
from backspan.core.sheet.compared import C, Compared, Weighed
from backspan.core.sheet.question import Asked, Question, S, Worst
from backspan.core.sheet.reads import Read


@dataclass(frozen=True, slots=True)
class Change:
    """One change: each read with what a step adds to it; at most so many steps make sense."""

    steps: tuple[tuple[Read, float], ...]
    most: int = MOST_STEPS
    start: float = math.nan
    """Where the first read begins, if not at its stated value: nobody may have stated it."""

    def moved(self, count: int) -> dict[Place, float]:
        """The values after that many steps."""
        return {
            read.place: (read.as_stated if math.isnan(self.start) else self.start) + count * each
            for read, each in self.steps
        }


def every(_: Compared) -> bool:
    """Any branch of an answer."""
    return True


def holds(found: Weighed[C]) -> bool:
    """Whether the answer is yes."""
    return found.met is True


def fails(found: Weighed[C]) -> bool:
    """Whether the answer is no."""
    return found.met is False


@dataclass(frozen=True, slots=True)
class Search(Generic[S, C]):
    """One question of one subject, whose boundaries are sought."""

    case: Case
    question: Question[S, C]
    asked: Asked[S]
    worst: Worst[C]
    """Before anything moves."""

    def at(self, change: Change, count: int) -> Weighed[C]:
        """What is found after so many steps at the corner that was worst before."""
        values = _with(self.worst.offsets, change.moved(count))
        return self.question.bare(values, self.asked, {})

    def room(self, change: Change, only: Callable[[C], bool] = every) -> int:
        """The most steps after which the branches asked for still hold; -1 where none does."""
        found = furthest(
            lambda count: _hold(self.at(change, count), only),
            most=change.most,
            near=self._guess(change, only),
        )
        return self.within(change, found, only)

    def within(self, change: Change, count: int, only: Callable[[C], bool] = every) -> int:
        """As `room`, up to `count` steps, most likely all of them."""

        def everywhere(steps: int) -> bool:
            return self._everywhere(change, steps, lambda found: _hold(found, only))

        if count < 0 or everywhere(count):
            return count
        return furthest(everywhere, most=count - 1, near=count - 1)

    def short(self, change: Change) -> int | None:
        """The fewest steps after which the answer no longer is no; None where no number is.

        What is unknown stays unknown: the steps are what is short at the least.
        """
        found = nearest(lambda count: not fails(self.at(change, count)), most=change.most)
        if found is None or self._everywhere(change, found, lambda at: not fails(at)):
            return found
        return nearest(
            lambda count: self._everywhere(change, count, lambda at: not fails(at)),
            most=change.most,
        )

    def _guess(self, change: Change, only: Callable[[C], bool]) -> int:
        """Where the boundary would be if what is short grew by the same at each step."""
        none, one = (
            [branch.shortfall for branch in self.at(change, count).branches if only(branch)]
            for count in (0, 1)
        )
        ends = [
            whole_down(-before / (after - before))
            for before, after in zip(none, one, strict=False)
            if surely_above(after, limit=before) and surely_below(before, limit=0.0)
        ]
        return min(ends, default=0)

    def _everywhere(
        self, change: Change, count: int, accepts: Callable[[Weighed[C]], bool]
    ) -> bool:
        return self.question.everywhere(self.case, self.asked, change.moved(count), accepts)


def _hold(found: Weighed[C], only: Callable[[C], bool]) -> bool:
    return not found.outside and all(branch.met for branch in found.branches if only(branch))


def search_of(case: Case, question: Question[S, C], asked: Asked[S]) -> Search[S, C] | None:
    """The search for one subject; None where too much is in doubt to know the worst corner."""
    worst = question.worst(case, asked)
    return None if worst is None else Search(case, question, asked, worst)


def _with(
    corner: Mapping[Place, tuple[float, float]], moved: Mapping[Place, float]
) -> dict[Place, float]:
    """The corner's values, those that moved as far from where they now are as they were."""
    values = {place: value for place, (value, _) in corner.items()}
    for place, value in moved.items():
        _, offset = corner.get(place, (value, 0))
        values[place] = max(0, value + offset)
    return values
