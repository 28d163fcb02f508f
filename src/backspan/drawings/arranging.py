"""Places many labels on one paper: each where it stands best, then a little give and take.

What is asked for first is placed first. A label that came to stand badly may then send one or two
others away from a better place, where all of them together stand better so.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from backspan.drawings.placing import Label, Placed, Placer
from backspan.drawings.scene import Point
from backspan.drawings.spots import Spot

WELL = 9.0
"""A label that costs no more than this stands well enough."""

MISSING_COSTS = 100.0
ROUNDS = 3
MOST_TRIALS = 160
"""How many exchanges are tried on one paper: what bounds the time on a crowded one."""

TRIALS_A_LABEL = 2
NEIGHBOURS = 4


@dataclass(frozen=True, slots=True)
class Request:
    """A label that asks for a place, as `Placer.place` takes it."""

    label: Label
    target: Point
    spots: tuple[Spot, ...] = ()
    near: bool = False


def arrange(placer: Placer, requests: Sequence[Request]) -> tuple[Placed | None, ...]:
    """The places of all labels, in the order asked for; None for one without room."""
    placed = [_placed(placer, request) for request in requests]
    most = min(MOST_TRIALS, TRIALS_A_LABEL * len(requests))
    trials = most
    for _ in range(ROUNDS):
        before = tuple(placed)
        for at in range(len(requests)):
            # Before anything was moved, a label already stands where it can stand best.
            if _cost(placed[at]) > WELL and trials < most:
                _again(placer, requests, placed, at)
            if _cost(placed[at]) > WELL and trials > 0:
                trials -= _exchanged(placer, requests, placed, at)
        if trials <= 0 or tuple(placed) == before:
            break
    placer.unplaced += [
        request.label for request, one in zip(requests, placed, strict=True) if one is None
    ]
    return tuple(placed)


def _placed(placer: Placer, request: Request, *, under: float = math.inf) -> Placed | None:
    found = placer.best(
        request.label, request.target, request.spots, near=request.near, under=under
    )
    if found is not None:
        placer.keep(found)
    return found


def _cost(placed: Placed | None) -> float:
    return MISSING_COSTS if placed is None else placed.cost


def _lift(placer: Placer, placed: Placed | None) -> None:
    if placed is not None:
        placer.lift(placed)


def _again(
    placer: Placer, requests: Sequence[Request], placed: list[Placed | None], at: int
) -> None:
    """Place one label anew, now that the places of the others are known."""
    _lift(placer, placed[at])
    placed[at] = _placed(placer, requests[at])


def _exchanged(
    placer: Placer, requests: Sequence[Request], placed: list[Placed | None], at: int
) -> int:
    """Let one label go before each neighbour in turn; how many exchanges were tried."""
    tried = 0
    for other in _neighbours(requests, placed, at):
        tried += 1
        before = placed[at], placed[other]
        for one in before:
            _lift(placer, one)
        # Only where the label itself stands better is the other's new place worth the search.
        first = _placed(placer, requests[at], under=_cost(before[0]) - 1e-9)
        if first is not None:
            left = sum(map(_cost, before)) - first.cost
            second = _placed(placer, requests[other], under=left - 1e-9)
            if second is not None or left > MISSING_COSTS:
                placed[at], placed[other] = first, second
                break
        _lift(placer, first)
        for one in before:
            if one is not None:
                placer.keep(one)
    return tried


def _neighbours(
    requests: Sequence[Request], placed: Sequence[Placed | None], at: int
) -> tuple[int, ...]:
    """The labels that stand nearest to what one label names."""
    x, y = requests[at].target
    far = []
    for other, one in enumerate(placed):
        if one is not None and other != at:
            left, bottom, right, top = one.box
            away = max(left - x, x - right, 0.0) + max(bottom - y, y - top, 0.0)
            far.append((away, other))
    return tuple(other for _, other in sorted(far)[:NEIGHBOURS])
