"""Who is placed on the stages of a drop, and whether each has a lifeline close enough for a fall.

A person is placed where somebody stated a place: there, and as far as they go from it. The walk of
somebody of whom nobody said how far they go is no place: that they may leave it is what the word
on the lifeline speaks of. Nobody says which line is whose on the stage, so any one will do, each
for one person.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from backspan.core.findings import DoesNotApply
from backspan.core.model.work import LoadKind, PlacedLoad, WorkStep
from backspan.core.numbers import meets
from backspan.core.sheet.case import Case
from backspan.core.sheet.hung import Hung, each_hung
from backspan.core.sheet.placed import Load, placed

#: Where somebody is on the edge: the stations between which they stay.
Stay = tuple[float, float]


@dataclass(frozen=True, slots=True)
class Unreached:
    """A step of the work in which not everybody who is placed has a line close by."""

    stage: str
    step: str


def riders_of(case: Case) -> tuple[Load, ...]:
    """Everybody who is placed on a stage of the drop in any step of the work."""
    return tuple(
        placed(case, load, (*hung.place, "work", step.id, "loads", load.id))
        for hung, step in _steps(case)
        for load in _people(step)
    )


def unreached(case: Case, stations: Sequence[float], most: float) -> Iterator[Unreached]:
    """The steps in which no choice of lines has everybody within `most` of one of their own."""
    by_step: dict[str, list[tuple[str, Stay]]] = {}
    for hung, step in _steps(case):
        left = _left(case, hung)
        for load in _people(step):
            if load.at is not None and left is not None:
                to = load.at if load.to is None else load.to
                ends = (left + load.at, left + to)
                stay = ends if ends[0] <= ends[1] else (ends[1], ends[0])
                by_step.setdefault(step.id, []).append((hung.hung.stage, stay))
    for name, people in by_step.items():
        if not _each_has_one([stay for _, stay in people], stations, most):
            yield Unreached(people[0][0], name)


def _each_has_one(stays: Sequence[Stay], stations: Sequence[float], most: float) -> bool:
    """Whether every stay has a station of its own from which it is nowhere further than `most`."""
    # A line reaches from its station back and on: whose reach ends first takes the first that fits.
    free = sorted(stations)
    for low, high in sorted(stays, key=lambda stay: stay[0]):
        fits = [one for one in free if _within(high - one, most) and _within(one - low, most)]
        if not fits:
            return False
        free.remove(fits[0])
    return True


def _within(aside: float, most: float) -> bool:
    return meets(demand=aside, capacity=most)


def _steps(case: Case) -> Iterator[tuple[Hung, WorkStep]]:
    for hung in each_hung(case, ""):
        if not isinstance(hung, DoesNotApply):
            for step in hung.hung.work or ():
                yield hung, step


def _people(step: WorkStep) -> Iterator[PlacedLoad]:
    return (load for load in step.loads if load.kind is LoadKind.PERSON)


def _left(case: Case, hung: Hung) -> float | None:
    """The station of the stage's left stirrup, from which places on it are taken."""
    return min(
        (point.station for point in case.points if point.id in hung.hung.from_points), default=None
    )
