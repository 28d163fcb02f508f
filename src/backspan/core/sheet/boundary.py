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

from backspan.core.numbers import MOST_STEPS, furthest, nearest
from backspan.core.sheet.case import Case, Place
from backspan.core.sheet.question import Asked, C, Question, S, Weighed, Worst
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

    def room(self, change: Change) -> int:
        """The most steps after which the answer still is yes; -1 where the start is not."""
        there, everywhere = self._held(change)
        found = furthest(there, most=change.most)
        if found >= 0 and not everywhere(found):
            return furthest(everywhere, most=found)
        return found

    def short(self, change: Change) -> int | None:
        """The fewest steps after which the answer no longer is no; None where no number is.

        What is unknown stays unknown: the steps are what is short at the least.
        """
        there, everywhere = self._held(change, unknown=True)
        found = nearest(there, most=change.most)
        if found is not None and not everywhere(found):
            return nearest(everywhere, most=change.most)
        return found

    def _held(
        self, change: Change, *, unknown: bool = False
    ) -> tuple[Callable[[int], bool], Callable[[int], bool]]:
        accepted = {True, None} if unknown else {True}

        def there(count: int) -> bool:
            return self.at(change, count).met in accepted

        def everywhere(count: int) -> bool:
            at = self.question.worst(self.case, self.asked, change.moved(count))
            return at is not None and at.found.met in accepted

        return there, everywhere


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
