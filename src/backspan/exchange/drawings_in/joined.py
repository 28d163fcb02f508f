"""Lines that meet end to end, joined into runs."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass

from backspan.core.model.site import Point
from backspan.exchange.drawings_in.drawn import DrawnLine
from backspan.exchange.drawings_in.spots import Spots, are_one

_AT_A_CORNER, _TRIANGLE = 2, 3


@dataclass(frozen=True, slots=True)
class Run:
    """Points one after another; a closed run goes on from its last to its first."""

    points: tuple[Point, ...]
    closed: bool


@dataclass(frozen=True, slots=True)
class Joined:
    """The runs of a layer, and the places where more than two lines end."""

    runs: tuple[Run, ...]
    forks: tuple[tuple[Point, int], ...]


def joined(lines: Iterable[DrawnLine]) -> Joined:
    """Closed lines as they are; open ones joined where their ends lie within a millimetre."""
    closed, pieces = [], []
    for one in lines:
        if one.closed:
            points = one.points[:-1] if are_one(one.points[0], one.points[-1]) else one.points
            closed.append(Run(points, closed=True))
        elif len(one.points) > _TRIANGLE and are_one(one.points[0], one.points[-1]):
            closed.append(Run(one.points[:-1], closed=True))
        else:
            pieces.append(one.points)
    chains = _Chains(pieces)
    return Joined((*closed, *chains.runs()), chains.forks)


class _Chains:
    """Open lines by the places where they end; each goes into one run."""

    def __init__(self, pieces: Sequence[tuple[Point, ...]]) -> None:
        spots = Spots()
        self._pieces = pieces
        self._ends = [(spots.number(one[0])[0], spots.number(one[-1])[0]) for one in pieces]
        self._there: dict[int, list[int]] = {}
        for number, both in enumerate(self._ends):
            for end in both:
                self._there.setdefault(end, []).append(number)
        self._taken: set[int] = set()
        self.forks = tuple(
            (spots.places[end], len(them))
            for end, them in self._there.items()
            if len(them) > _AT_A_CORNER
        )

    def runs(self) -> Iterator[Run]:
        """A run ends where nothing, or more than one line, goes on."""
        for number, (start, end) in enumerate(self._ends):
            if number in self._taken:
                continue
            self._taken.add(number)
            forward, last = self._onward(end, number)
            points = [*self._pieces[number], *forward]
            if last == start:
                yield Run(tuple(points[:-1]), closed=True)
                continue
            backward, _ = self._onward(start, number)
            yield Run((*reversed(backward), *points), closed=False)

    def _onward(self, at: int, number: int) -> tuple[list[Point], int]:
        """The points beyond an end of a line, and the number of the place where they stop."""
        found: list[Point] = []
        while len(self._there[at]) == _AT_A_CORNER:
            following = next((one for one in self._there[at] if one != number), number)
            if following in self._taken:
                break
            self._taken.add(following)
            start, end = self._ends[following]
            points = self._pieces[following]
            found.extend(points[1:] if start == at else points[-2::-1])
            at, number = (end if start == at else start), following
        return found, at
