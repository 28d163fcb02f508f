"""The most a hoist may lift or stall at on one support, and the hoists of the kit that would do."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator, Mapping
from dataclasses import replace

from backspan.core.checks.tipping.question import QUESTION, Held, asked
from backspan.core.findings import Margin
from backspan.core.mechanics.loads import stall_cap
from backspan.core.numbers import (
    MOST_STEPS,
    at_least,
    meets,
    step_down,
    surely_above,
    surely_below,
)
from backspan.core.quantities import FORCE, RATIO, Amount, roof_step
from backspan.core.rules.selected import SelectedRules
from backspan.core.rules.shape import FactorOnLoad, LoadBasis
from backspan.core.sheet.boundary import Change, Search, holds
from backspan.core.sheet.limits import limit_of
from backspan.core.sheet.moments import Branch
from backspan.core.sheet.reads import Read
from backspan.core.sheet.subjects import BeamSubject


def hoist_margins(
    search: Search[Held, Branch], subject: BeamSubject, rules: SelectedRules
) -> Iterator[Margin]:
    """The most its hoist may lift or stall at, and the hoists of the kit that would do."""
    one = search.asked
    bases = {value.content.load for value in one.values if isinstance(value.content, FactorOnLoad)}
    if not bases.issubset({LoadBasis.HOIST_RATED, LoadBasis.HOIST_STALL}):
        return
    step = roof_step(FORCE, search.case.project.units)
    most: dict[LoadBasis, float] = {}
    for basis in (LoadBasis.HOIST_RATED, LoadBasis.HOIST_STALL):
        if basis in bases:
            change = Change(((_load_of(one.subject, basis), step),), start=0.0)
            found = search.room(change, _on(basis))
            most[basis] = math.inf if found == MOST_STEPS else at_least(found, least=0) * step
    yield from _most_loads(one.subject, most, step=step)
    held = [
        hoist.id
        for hoist in search.case.project.kit.hoists
        if _would_do(search, _with_hoist(subject, hoist.id), rules, most)
    ]
    yield Margin("hoists-that-do", ", ".join(held) or "none")


def _with_hoist(subject: BeamSubject, hoist: str) -> BeamSubject:
    return replace(subject, point=replace(subject.point, hoist=hoist))


def _on(basis: LoadBasis) -> Callable[[Branch], bool]:
    return lambda branch: branch.rule.load is basis


def _load_of(held: Held, basis: LoadBasis) -> Read:
    line = held.support.line
    return line.rated_load if basis is LoadBasis.HOIST_RATED else line.stall_load


def _most_loads(held: Held, most: Mapping[LoadBasis, float], *, step: float) -> Iterator[Margin]:
    """The largest load of each kind its own branches hold, up to what the rule allows a hoist."""
    rated, stall = most.get(LoadBasis.HOIST_RATED), most.get(LoadBasis.HOIST_STALL)
    if rated is not None and math.isfinite(rated):
        yield Margin("most-rated-load", Amount(step_down(rated, step=step), FORCE))
    if stall is None:
        return
    cap = _cap_of(held)
    if surely_below(cap, limit=stall):
        yield Margin("most-stall-load-allowed", Amount(step_down(cap, step=step), FORCE))
    elif math.isfinite(stall):
        yield Margin("most-stall-load", Amount(step_down(stall, step=step), FORCE))


def _would_do(
    search: Search[Held, Branch],
    there: BeamSubject,
    rules: SelectedRules,
    most: Mapping[LoadBasis, float],
) -> bool:
    """Whether every branch holds with that hoist on the line, and its stall load is allowed.

    No more is asked than what is known to hold, where the loads are exact; else all is asked again.
    """
    one = asked(search.case, there, rules)
    held = one.subject
    loads = [(_load_of(held, basis), limit) for basis, limit in most.items()]
    if any(math.isnan(load.as_stated) or load.refer is not None for load, _ in loads):
        return False
    reads = [load for load, _ in loads] + [_load_of(search.asked.subject, basis) for basis in most]
    exact = not any(read.stated is not None and read.stated.tolerance for read in reads)
    known = exact and all(not surely_above(load.as_stated, limit=limit) for load, limit in loads)
    if not known and not QUESTION.everywhere(search.case, one, {}, holds):
        return False
    cap = _cap_of(held)
    if math.isnan(cap):
        return True
    stall = held.support.line.stall_load.as_stated
    return not math.isnan(stall) and meets(demand=stall, capacity=cap)


def _cap_of(held: Held) -> float:
    """The most stall load the rule allows this hoist; NaN where it sets no cap."""
    rated = held.support.line.rated_load.as_stated
    if held.cap is None:
        return math.nan
    return stall_cap(cap_factor=limit_of(held.cap, RATIO), rated_load=rated).value
