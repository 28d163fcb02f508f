"""What is left on a tipping check, one change at a time, in steps people use on a roof.

Each margin is the boundary of one change on the check's own sums (core/sheet/boundary.py), so that
it sees what the check sees: the beam's own weight, a backspan that follows from the stack, every
branch of the rule. Where a branch is unknown nothing is promised; of a rule that is not held it is
told what is short, at the least.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import replace

from backspan.core.checks.tipping.hoists import hoist_margins
from backspan.core.checks.tipping.question import CAP, QUESTION, Held, asked
from backspan.core.findings import DoesNotApply, FindingKey, Margin
from backspan.core.numbers import (
    MOST_STEPS,
    at_least,
    fewest,
    step_up,
    surely_above,
    surely_below,
    total,
    whole_down,
    whole_up,
)
from backspan.core.quantities import (
    LENGTH,
    LITTLE_MORE_LENGTH,
    RATIO,
    TAPE_STEP,
    TENTH,
    Amount,
)
from backspan.core.rules.selected import SelectedRules
from backspan.core.sheet.beam_as_built import BeamReads
from backspan.core.sheet.beam_fits import BACKSPAN_FITS, STACK_FITS
from backspan.core.sheet.boundary import Change, Search, search_of
from backspan.core.sheet.case import Case
from backspan.core.sheet.compared import Compared
from backspan.core.sheet.moments import TOPIC, Branch
from backspan.core.sheet.question import Asked
from backspan.core.sheet.reads import Read
from backspan.core.sheet.subjects import BeamSubject, counterweighted

_Search = Search[Held, Branch]
_Fits = Search[BeamReads, Compared] | None


def margins(case: Case) -> Iterator[tuple[FindingKey, tuple[Margin, ...]]]:
    """The margins of each finding; none where nothing could be worked out."""
    for subject in counterweighted(case, QUESTION.check):
        if isinstance(subject, DoesNotApply):
            continue
        for rules in case.under(TOPIC):
            one = asked(case, subject, rules)
            if one.values:
                yield QUESTION.key_of(one), _left(case, subject, rules, one)


def _left(
    case: Case, subject: BeamSubject, rules: SelectedRules, one: Asked[Held]
) -> tuple[Margin, ...]:
    """What is left hangs on what is asked, and on every hoist that might take this one's place."""
    of = (case.ground, subject, rules, one, case.project.kit, case.under(CAP))
    key = ("left", QUESTION.key_of(one))
    return case.kept.same(key, of, lambda: tuple(_of_beam(case, subject, rules, one)))


def most_that_fit(case: Case, one: Asked[Held]) -> int:
    """The most pieces of the innermost group that stand on the beam."""
    beam = one.subject.support.beam
    fits = search_of(case, STACK_FITS, Asked(beam, one.name, one.place))
    change = Change(((beam.groups[-1].count, 1),), start=0.0)
    return 0 if fits is None else whole_down(at_least(fits.room(change), least=0.0))


def _of_beam(
    case: Case, subject: BeamSubject, rules: SelectedRules, one: Asked[Held]
) -> Iterator[Margin]:
    search = search_of(case, QUESTION, one)
    if search is None or search.worst.found.governing is None:
        return
    met, beam = search.worst.found.met, one.subject.support.beam
    if met is not None:
        fits = _fits(search)
        yield from _pieces(search, beam, met=met)
        yield from _lengths(search, fits, beam, met=met)
    yield from hoist_margins(search, subject, rules)
    if met is not None:
        yield from _price(search, beam)


def _pieces(search: _Search, beam: BeamReads, *, met: bool) -> Iterator[Margin]:
    """Pieces of the innermost group: how many fewer hold, or how many more would."""
    if not beam.groups:
        return
    count = beam.groups[-1].count
    there = int(total(group.count.as_stated for group in beam.groups))
    if met:
        spare = search.room(Change(((count, -1),), most=int(count.as_stated)))
        yield Margin("pieces-spare", spare)
        return
    # Counted from none: a stack that is too long may hold with fewer, which is no shortage.
    most = most_that_fit(search.case, search.asked) if beam.from_stack else MOST_STEPS
    fewest = search.short(Change(((count, 1),), most=most, start=0.0))
    if fewest is None:
        yield Margin("no-number-of-pieces", there, beyond=True)
    elif surely_above(fewest, limit=count.as_stated):
        yield Margin("pieces-spare", fewest - int(count.as_stated), beyond=True)


def _fits(search: _Search) -> _Fits:
    """What stands on the beam, where it is known to fit; None where it does not or nobody knows."""
    one = search.asked
    beam = one.subject.support.beam
    question = STACK_FITS if beam.from_stack else BACKSPAN_FITS
    found = search_of(search.case, question, Asked(beam, one.name, one.place))
    return found if found is not None and found.worst.found.met else None


def _lengths(search: _Search, fits: _Fits, beam: BeamReads, *, met: bool) -> Iterator[Margin]:
    step = TAPE_STEP[search.case.project.units]
    for left in _length("more-reach", search, fits, (beam.reach, step), met=met):
        yield left
        if beam.from_stack:
            # The reach takes from the backspan what the fulcrum would: one and the same change.
            yield replace(left, id="fulcrum-inboard")
    if beam.from_stack:
        yield from _length("less-backspan", search, fits, (beam.tail_gap, step), met=met)
    else:
        yield from _length("less-backspan", search, fits, (beam.backspan, -step), met=met)
        moves = ((beam.reach, step), (beam.backspan, -step))
        yield from _length("fulcrum-inboard", search, fits, *moves, met=met)


def _length(
    name: str, search: _Search, fits: _Fits, *moves: tuple[Read, float], met: bool
) -> Iterator[Margin]:
    """What is left of a change, or how much of it would have to be taken back.

    What stands on the beam has to stay on it.
    """
    step = TAPE_STEP[search.case.project.units]
    steps = moves if met else tuple((read, -each) for read, each in moves)
    shrinking = [read for read, each in steps if surely_below(each, limit=0.0)]
    change = Change(
        steps, most=fewest(MOST_STEPS, *(_until_none(read, step) for read in shrinking))
    )
    count = search.room(change) if met else search.short(change)
    if count is None:
        return
    on_beam = count if fits is None else fits.within(change, count)
    if not met and on_beam != count:
        return
    # What holds until nothing is left of a length has no end to tell of.
    if not met or on_beam != change.most:
        yield Margin(name, Amount(on_beam * step, LENGTH), beyond=not met and count != 0)


def _until_none(read: Read, step: float) -> int:
    """Steps a length may shrink by: the gap at the tail to nothing, any other not quite."""
    left = read.as_stated / step
    return whole_down(left) if read.quantity.zero else whole_up(left) - 1


def _price(search: _Search, beam: BeamReads) -> Iterator[Margin]:
    """What a little more reach costs, in pieces of the innermost group, at the worst corner."""
    if not beam.groups:
        return
    more = LITTLE_MORE_LENGTH[search.case.project.units]

    def short(read: Read, by: float) -> float:
        change = Change(((read, by),))
        governing = search.at(change, 1).governing
        return math.nan if governing is None else governing.shortfall

    now = short(beam.reach, 0.0)
    lost = short(beam.reach, more) - now
    gained = now - short(beam.groups[-1].count, 1)
    if surely_above(gained, limit=0.0) and surely_above(lost, limit=0.0):
        tenths = Amount(step_up(lost / gained, step=TENTH), RATIO)
        yield Margin(f"pieces-per-step-{search.case.project.units}", tenths)
