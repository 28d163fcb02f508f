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

from backspan.core.checks.tipping.question import QUESTION, Held, asked
from backspan.core.findings import DoesNotApply, FindingKey, Margin
from backspan.core.mechanics.loads import stall_cap
from backspan.core.numbers import (
    MOST_STEPS,
    at_least,
    meets,
    step_down,
    step_up,
    surely_above,
    surely_below,
    total,
    whole_down,
    whole_up,
)
from backspan.core.quantities import (
    FORCE,
    LENGTH,
    LITTLE_MORE_LENGTH,
    RATIO,
    TAPE_STEP,
    TENTH,
    Amount,
    roof_step,
)
from backspan.core.rules.selected import SelectedRules
from backspan.core.rules.shape import FactorOnLoad, LoadBasis
from backspan.core.sheet.beam_as_built import BeamReads
from backspan.core.sheet.beam_fits import BACKSPAN_FITS, STACK_FITS
from backspan.core.sheet.boundary import Change, Search, search_of
from backspan.core.sheet.case import Case
from backspan.core.sheet.limits import limit_of
from backspan.core.sheet.moments import Branch
from backspan.core.sheet.question import Asked, Compared
from backspan.core.sheet.reads import Read
from backspan.core.sheet.subjects import BeamSubject, counterweighted

_Search = Search[Held, Branch]

_OF_HOIST = (LoadBasis.HOIST_RATED, LoadBasis.HOIST_STALL)


def margins(case: Case) -> Iterator[tuple[FindingKey, tuple[Margin, ...]]]:
    """The margins of each finding; none where nothing could be worked out."""
    for subject in counterweighted(case, QUESTION.check):
        if isinstance(subject, DoesNotApply):
            continue
        for rules in case.rules:
            one = asked(case, subject, rules)
            if one.values:
                yield QUESTION.key_of(one), tuple(_of_beam(case, subject, rules, one))


def most_that_fit(case: Case, one: Asked[Held]) -> int:
    """The most pieces of the innermost group that stand on the beam."""
    beam = one.subject.support.beam
    fits = search_of(case, STACK_FITS, Asked(beam, one.name, one.place))
    change = Change(((beam.groups[-1].count, 1),), start=0.0)
    return 0 if fits is None else whole_down(at_least(fits.room(change), least=0.0))


def fewest_pieces(case: Case, one: Asked[Held]) -> int | None:
    """The fewest pieces of the innermost group that the known branches hold with; None if none."""
    beam = one.subject.support.beam
    search = search_of(case, QUESTION, one)
    if search is None or not beam.groups:
        return None
    most = most_that_fit(case, one) if beam.from_stack else MOST_STEPS
    return search.short(Change(((beam.groups[-1].count, 1),), most=most, start=0.0))


def _of_beam(
    case: Case, subject: BeamSubject, rules: SelectedRules, one: Asked[Held]
) -> Iterator[Margin]:
    search = search_of(case, QUESTION, one)
    if search is None or search.worst.found.governing is None:
        return
    met, beam = search.worst.found.met, one.subject.support.beam
    if met is not None:
        yield from _pieces(search, beam, met=met)
        yield from _lengths(search, beam, met=met)
    yield from _hoists(search, subject, rules)
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
    more = search.short(Change(((count, 1),), most=_more_that_fit(search, beam)))
    if more is None:
        yield Margin("no-number-of-pieces", there, beyond=True)
    else:
        yield Margin("pieces-spare", more, beyond=True)


def _more_that_fit(search: _Search, beam: BeamReads) -> int:
    """How many more pieces of the innermost group the beam has room for."""
    if not beam.from_stack:
        return MOST_STEPS
    fits = _fits(search)
    return 0 if fits is None else fits.room(Change(((beam.groups[-1].count, 1),)))


def _fits(search: _Search) -> Search[BeamReads, Compared] | None:
    """What stands on the beam, where it is known to fit; None where it does not or nobody knows."""
    one = search.asked
    beam = one.subject.support.beam
    question = STACK_FITS if beam.from_stack else BACKSPAN_FITS
    found = search_of(search.case, question, Asked(beam, one.name, one.place))
    return found if found is not None and found.worst.found.met else None


def _lengths(search: _Search, beam: BeamReads, *, met: bool) -> Iterator[Margin]:
    step = TAPE_STEP[search.case.project.units]
    yield from _length("more-reach", search, (beam.reach, step), met=met)
    if beam.from_stack:
        yield from _length("less-backspan", search, (beam.tail_gap, step), met=met)
        yield from _length("fulcrum-inboard", search, (beam.reach, step), met=met)
    else:
        yield from _length("less-backspan", search, (beam.backspan, -step), met=met)
        moves = ((beam.reach, step), (beam.backspan, -step))
        yield from _length("fulcrum-inboard", search, *moves, met=met)


def _length(name: str, search: _Search, *moves: tuple[Read, float], met: bool) -> Iterator[Margin]:
    """What is left of a change, or how much of it would have to be taken back."""
    step = TAPE_STEP[search.case.project.units]
    steps = moves if met else tuple((read, -each) for read, each in moves)
    # Nothing is moved beyond nothing: a length that shrinks ends before it is none.
    shrinking = [read for read, each in steps if surely_below(each, limit=0.0)]
    most = min([MOST_STEPS, *(_until_none(read, step) for read in shrinking)])
    fits = _fits(search)
    change = Change(steps, most=most)
    if fits is not None:
        # What stands on the beam has to stay on it.
        change = replace(change, most=fits.room(change))
    count = search.room(change) if met else search.short(change)
    if count is not None and (count < MOST_STEPS or not met):
        yield Margin(name, Amount(count * step, LENGTH), beyond=not met and count > 0)


def _until_none(read: Read, step: float) -> int:
    """Steps a length may shrink by: the gap at the tail to nothing, any other not quite."""
    left = read.as_stated / step
    return whole_down(left) if read.name == "tail_gap" else whole_up(left) - 1


def _hoists(search: _Search, subject: BeamSubject, rules: SelectedRules) -> Iterator[Margin]:
    """The most its hoist may lift or stall at, and the hoists of the kit that would do."""
    one = search.asked
    bases = {value.content.load for value in one.values if isinstance(value.content, FactorOnLoad)}
    if not bases <= set(_OF_HOIST):
        return
    line = one.subject.support.line
    if LoadBasis.HOIST_RATED in bases:
        yield from _most_load(search, "most-rated-load", line.rated_load, LoadBasis.HOIST_RATED)
    if LoadBasis.HOIST_STALL in bases:
        yield from _most_load(search, "most-stall-load", line.stall_load, LoadBasis.HOIST_STALL)
    held = [
        hoist.id
        for hoist in search.case.project.kit.hoists
        if _would_do(search.case, subject, rules, hoist.id)
    ]
    yield Margin("hoists-that-do", ", ".join(held) or "none")


def _most_load(search: _Search, name: str, read: Read, basis: LoadBasis) -> Iterator[Margin]:
    """The largest load of that kind its own branches hold, up to what the rule allows a hoist."""
    step = roof_step(FORCE, search.case.project.units)
    own = tuple(
        value
        for value in search.asked.values
        if isinstance(value.content, FactorOnLoad) and value.content.load is basis
    )
    alone = search_of(search.case, QUESTION, replace(search.asked, values=own))
    found = 0 if alone is None else alone.room(Change(((read, step),), start=0.0))
    if alone is None or found == MOST_STEPS:
        return
    most = Amount(step_down(at_least(found, least=0) * step, step=step), FORCE)
    cap = _cap_of(search.asked.subject) if basis is LoadBasis.HOIST_STALL else math.nan
    if surely_below(cap, limit=most.value):
        yield Margin("most-stall-load-allowed", Amount(step_down(cap, step=step), FORCE))
    else:
        yield Margin(name, most)


def _cap_of(held: Held) -> float:
    """The most stall load the rule allows this hoist; NaN where it sets no cap."""
    rated = held.support.line.rated_load.as_stated
    if held.cap is None:
        return math.nan
    return stall_cap(cap_factor=limit_of(held.cap, RATIO), rated_load=rated).value


def _would_do(case: Case, subject: BeamSubject, rules: SelectedRules, hoist: str) -> bool:
    """Whether every branch holds with that hoist on the line, and its stall load is allowed."""
    there = replace(subject, point=replace(subject.point, hoist=hoist))
    one = asked(case, there, rules)
    worst = QUESTION.worst(case, one)
    if worst is None or worst.found.met is not True:
        return False
    cap = _cap_of(one.subject)
    if math.isnan(cap):
        return True
    stall = one.subject.support.line.stall_load.as_stated
    return not math.isnan(stall) and meets(demand=stall, capacity=cap)


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
