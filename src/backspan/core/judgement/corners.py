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

The worst answer is the answer. An input may be read at one corner only (the beam's mass, where
its weight pulls outboard), so the doubtful inputs are the union of what all corners read.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from functools import partial
from typing import Generic, TypeVar

from backspan.core.findings import (
    WORST_FIRST,
    Decider,
    Finding,
    FindingKey,
    InputUsed,
    Message,
    Need,
    Verdict,
)
from backspan.core.judgement.case import Case, Corner, Place
from backspan.core.judgement.check import Answer, Check
from backspan.core.numbers import combinations
from backspan.core.quantities import Amount

T = TypeVar("T")

_AS_STATED = 0


def answers_at_worst_corner(check: Check, case: Case) -> tuple[Answer, ...]:
    """A check's answers, each finding at the worst corner of the inputs that were read for it."""
    answers = tuple(check.judge(case))
    doubtful = {one.subject for one in answers if _doubts_of(one.inputs)}
    if check.finds_worst_corner or not doubtful:
        return answers
    worst: dict[FindingKey, Finding] = {}
    for point in _looked_at(case, doubtful):
        for finding in _worst_findings(check, replace(case, only=point)):
            worst[finding.key] = finding
    judged = [worst.pop(one.key, one) if isinstance(one, Finding) else one for one in answers]
    # A finding that only a corner has (a check that otherwise has nothing to judge) comes last.
    again = {(one.check, one.subject) for one in worst.values()}
    kept = [
        one for one in judged if isinstance(one, Finding) or (one.check, one.subject) not in again
    ]
    return (*kept, *worst.values())


@dataclass(frozen=True, slots=True)
class AtCorner(Generic[T]):
    """What was found at one corner."""

    corner: Corner
    found: T


def results_at_corners(
    case: Case, work: Callable[[Case], tuple[T, Iterable[InputUsed]]]
) -> tuple[AtCorner[T], ...] | None:
    """What `work` finds as stated (first) and at every corner of all inputs it read.

    `work` returns what it found and the inputs it read. None where there are too many corners.
    """
    looked_at = replace(case, corner={}, searching=True)
    found, used = work(looked_at)
    stated: AtCorner[T] = AtCorner({}, found)
    doubts = _doubts_of(used)
    while True:
        corners = corners_of(doubts)
        if corners is None:
            return None
        results = [stated]
        known = dict(doubts)
        for corner in corners:
            result, used = work(replace(looked_at, corner=corner))
            results.append(AtCorner(corner, result))
            known |= _doubts_of(used)
        if known.keys() == doubts.keys():
            return tuple(results)
        doubts = known


def ratio_of(finding: Finding) -> float:
    """Demand over capacity, to rank findings of one kind; without limit where nothing resists."""
    if finding.demand is None or finding.capacity is None:
        return finding.utilisation or 0.0
    if finding.capacity.value <= 0.0:
        # Nothing resists: the more is asked, the worse; ranked above every ratio.
        return math.inf if finding.demand.value > 0.0 else 0.0
    return finding.demand.value / finding.capacity.value


def _looked_at(case: Case, subjects: set[str]) -> Iterator[str | None]:
    """The suspension points to look at one by one; None for all at once."""
    names = {case.name_of(point): point.id for point in case.points}
    if subjects <= names.keys():
        yield from (names[subject] for subject in sorted(subjects))
    else:
        yield None


def _worst_findings(check: Check, case: Case) -> Iterator[Finding]:
    def judge(at: Case) -> tuple[dict[FindingKey, Finding], list[InputUsed]]:
        found = tuple(check.judge(at))
        by_key = {one.key: one for one in found if isinstance(one, Finding)}
        return by_key, [used for one in found for used in one.inputs]

    results = results_at_corners(case, judge)
    if results is None:
        stated, _ = judge(replace(case, corner={}))
        for one in stated.values():
            yield too_doubtful(one) if _doubts_of(one.inputs) else one
        return
    stated = results[_AS_STATED].found
    for key in dict.fromkeys(key for result in results for key in result.found):
        worst = min((one for one in results if key in one.found), key=lambda one: _rank(one, key))
        corner = without_idle(worst.corner, same=partial(_same, judge, case, worst, key))
        finding = judge(replace(case, corner=corner))[0][key]
        if key not in stated or stated[key].verdict is not finding.verdict:
            finding = replace(finding, notes=(*finding.notes, Message("note.within-tolerance")))
        yield finding


def _same(
    judge: Callable[[Case], tuple[dict[FindingKey, Finding], list[InputUsed]]],
    case: Case,
    worst: AtCorner[dict[FindingKey, Finding]],
    key: FindingKey,
    corner: Corner,
) -> bool:
    """Whether a finding is as bad at another corner as at the worst."""
    found, _ = judge(replace(case, corner=corner, searching=True))
    return key in found and _rank(AtCorner(corner, found), key) == _rank(worst, key)


def without_idle(corner: Corner, *, same: Callable[[Corner], bool]) -> Corner:
    """The corner less what changes nothing there, so that a reader sees only what does harm."""
    kept = dict(corner)
    for place in corner:
        less = {other: value for other, value in kept.items() if other != place}
        if same(less):
            kept = less
    return kept


def _rank(at: AtCorner[dict[FindingKey, Finding]], key: FindingKey) -> tuple[int, float]:
    """The worst answer first, then the largest demand over capacity."""
    found = at.found[key]
    return WORST_FIRST.index(found.verdict), -ratio_of(found)


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


def _doubts_of(inputs: Iterable[InputUsed]) -> dict[Place, tuple[float, ...]]:
    """The values at which each doubtful input is asked, by its place."""
    return {
        one.place: values_of(
            stated=one.stated if isinstance(one.stated, int) else _number(one.stated),
            tolerance=_number(one.tolerance),
        )
        for one, _ in _tolerances(inputs)
    }


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
