"""Places on paper where a label could stand, and how well each would do."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass

from backspan.drawings.geometry import moved, turned
from backspan.drawings.scene import Point

_DISTANCES = (0.0, 2.0, 4.5, 8.0, 12.0, 17.0, 24.0, 32.0, 42.0, 55.0)
_SIDES = ((1, 0), (1, 1), (-1, 0), (-1, 1), (0, 1), (1, -1), (-1, -1), (0, -1))


@dataclass(frozen=True, slots=True)
class Spot:
    """A place that would do: the label stands to one side of `at`; `cost` says how well it does."""

    at: Point
    across: int
    up: int
    cost: float = 0.0
    points_at: Point | None = None
    """Where a leader from here ends, if not at what the label was asked for."""


def around(target: Point, *, away: float = 0.0) -> Iterator[Spot]:
    """Spots on all sides of a point, near ones first; `away` is the least distance."""
    for distance in _DISTANCES:
        for preference, (across, up) in enumerate(_SIDES):
            length = math.hypot(across, up)
            out = away + distance + 1.0
            at = (target[0] + across * out / length, target[1] + up * out / length)
            yield Spot(at, across, up, distance + preference * 0.3)


def beside(target: Point, *, side: Point, away: float = 0.0) -> Iterator[Spot]:
    """Spots on one side of a point and up to 60 degrees to either hand, near ones first."""
    for distance in _DISTANCES:
        for turn in (0.0, 30.0, -30.0, 60.0, -60.0):
            out = turned(side, degrees=turn)
            at = moved(target, along=out, by=away + distance + 1.0)
            across, up = _sign(out[0]), _sign(out[1])
            yield Spot(at, across, up, distance + abs(turn) / 30.0)


def _sign(value: float) -> int:
    small = 0.38  # within 22 degrees of the axis counts as straight on
    return 0 if abs(value) < small else (1 if value > 0.0 else -1)
