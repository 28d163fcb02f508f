"""Every check at the worst corner of what is doubtful.

A value with a tolerance lies somewhere within it, each by itself. Which end does harm is not a
constant: a beam's own mass helps or harms by where its centroid lies, and one more outer block
pushes the plates inside it towards the fulcrum. So nobody declares a direction: the check is asked
at every corner, each doubtful number at its least and its most, each doubtful count at every whole
number.

Why corners suffice: what the checks compare is, in each input alone and the others held, linear
(moments, lengths), linear over linear (a centroid, a ratio), or the larger of such. None of these
has its worst value strictly inside a range. The count of pieces is none of them, since rows fill up
one piece at a time; hence every whole number. A formula with its extreme inside a range must say so
and be asked there too.

Two things are none of the former, and both are asked in between or shown not to matter: a count,
for which every whole number is asked, and the beam's own weight, left out where it helps: that is
the smaller of two lines, whose least value still lies at an end. The moment that a steel section
takes is no such sum either, but grows all the way with each of its sizes and with its strength, and
falls with its unbraced length (tests/published/test_steel_beams.py).
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import replace

from backspan.core.findings import (
    Decider,
    Finding,
    InputUsed,
    Message,
    Need,
    Verdict,
)
from backspan.core.numbers import combinations
from backspan.core.quantities import Amount
from backspan.core.sheet.case import Corner, Place


def without_idle(corner: Corner, *, same: Callable[[Corner], bool]) -> Corner:
    """The corner less what changes nothing there, so that a reader sees only what does harm."""
    kept = dict(corner)
    for place in corner:
        less = {other: value for other, value in kept.items() if other != place}
        if same(less):
            kept = less
    return kept


def too_doubtful(finding: Finding) -> Finding:
    """More is in doubt than can be asked at every corner: a person decides, a fail stays."""
    doubts = sorted(
        ((one.name, tolerance) for one, tolerance in _tolerances(finding.inputs)),
        key=lambda one: (-one[1], one[0]),
    )
    names = tuple(dict.fromkeys(name for name, _ in doubts))
    widest = Message("need.too-much-doubt", (("inputs", names), ("number", len(doubts))))
    verdict = Verdict.REFER if finding.verdict is Verdict.PASS else finding.verdict
    needs = (*finding.needs, Need(Decider.COMPETENT_PERSON, widest))
    return replace(finding, verdict=verdict, needs=needs)


def _tolerances(inputs: Iterable[InputUsed]) -> Iterator[tuple[InputUsed, float]]:
    """The inputs that carry doubt, with how much of themselves it is."""
    for one in inputs:
        tolerance, stated = _number(one.tolerance), _number(one.stated)
        if tolerance > 0.0:
            yield one, tolerance / stated if stated > 0.0 else math.inf


def values_of(*, stated: float, tolerance: float) -> tuple[float, ...]:
    """Where a doubtful value is asked: a count at every whole number, a measure at both ends.

    Nothing a check reads can be below zero.
    """
    least, most = stated - tolerance, stated + tolerance
    if isinstance(stated, int):
        return tuple(range(int(least) if least > 0 else 0, int(most) + 1))
    return (max(0.0, least), most)


def _number(value: Amount | int | str | None) -> float:
    if isinstance(value, Amount):
        return value.value
    return value if isinstance(value, int) else 0


def corners_of(doubts: Mapping[Place, Sequence[float]]) -> Iterator[Corner] | None:
    """Every combination of the values; None where there are too many."""
    if not doubts:
        return iter(())
    every = combinations(tuple(doubts.values()))
    return None if every is None else (dict(zip(doubts, one, strict=True)) for one in every)
