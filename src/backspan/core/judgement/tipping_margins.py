"""What is left on a tipping check, in pieces, inches and hoists, each rounded to caution."""

from __future__ import annotations

from collections.abc import Iterator

from backspan.core.findings import Margin
from backspan.core.judgement.case import Case
from backspan.core.judgement.pieces_needed import PiecesNeeded, pieces_needed
from backspan.core.judgement.tipping_sums import Branch, FactorValues, TippingSums
from backspan.core.mechanics.loads import stall_cap
from backspan.core.mechanics.tipping import (
    least_backspan,
    most_fulcrum_shift,
    most_load,
    pieces_for_more_reach,
)
from backspan.core.model.kit import Hoist
from backspan.core.numbers import meets, step_down, step_up
from backspan.core.quantities import (
    FORCE,
    LENGTH,
    LITTLE_MORE_LENGTH,
    RATIO,
    TENTH,
    Amount,
    roof_step,
)
from backspan.core.rules.shape import LoadBasis

#: Where the fulcrum moves, the outboard end grows and the inboard end shrinks.
_BOTH_ENDS = len(("outboard", "inboard"))

_MOST_LOAD = {
    LoadBasis.HOIST_RATED: "most-rated-load",
    LoadBasis.HOIST_STALL: "most-stall-load",
}


def tipping_margins(
    case: Case, sums: TippingSums, values: FactorValues, *, cap_factor: float | None
) -> tuple[Margin, ...]:
    """All margins of the governing branch; none where nothing could be worked out.

    `cap_factor` is how many times its rated load a hoist may stall at, where the rules say so.
    """
    branch, built = sums.governing, sums.built
    if branch is None or not built.reach or built.backspan is None or branch.load <= 0.0:
        return ()
    pieces = pieces_needed(built, branch)
    margins = [
        *_pieces(pieces),
        *_lengths(case, sums, branch),
        *_hoists(case, sums, branch, values, cap_factor=cap_factor),
    ]
    if pieces is not None and pieces.piece_weight > 0.0 and built.backspan > 0.0:
        more = LITTLE_MORE_LENGTH[case.project.units]
        # What moves with the reach costs pieces as a load on the line does, at a factor of one.
        moves = _moving(sums, branch)
        price = pieces_for_more_reach(
            factor=1.0,
            load=branch.rule.factor * branch.load + moves,
            more_reach=more,
            backspan=built.backspan,
            piece_weight=pieces.piece_weight,
        )
        tenths = Amount(step_up(price.value, step=TENTH), RATIO)
        margins.append(Margin(f"pieces-per-step-{case.project.units}", tenths))
    return tuple(margins)


def _pieces(pieces: PiecesNeeded | None) -> Iterator[Margin]:
    if pieces is None:
        return
    if pieces.spare is None:
        yield Margin("no-number-of-pieces", pieces.there, beyond=True)
    else:
        yield Margin("pieces-spare", abs(pieces.spare), beyond=pieces.spare < 0)


def _lengths(case: Case, sums: TippingSums, branch: Branch) -> Iterator[Margin]:
    built = sums.built
    backspan, counterweight = built.backspan, built.counterweight
    if built.reach is None or backspan is None or counterweight is None:
        return
    step = roof_step(LENGTH, case.project.units)
    yield _length("more-reach", _more_reach(sums, branch), step)
    if counterweight <= 0.0:
        return
    near = least_backspan(
        required=branch.required - branch.held_by_beam, counterweight=counterweight
    ).value
    yield _length("less-backspan", backspan - near, step)
    shift = _shift(branch, moved=counterweight + branch.beam_weight)
    yield _length("fulcrum-inboard", _within(shift, sums, branch, ends=_BOTH_ENDS), step)


def _more_reach(sums: TippingSums, branch: Branch) -> float:
    """Reach left at the same backspan; one that follows from the stack shrinks as reach grows."""
    shift = _shift(branch, moved=_moving(sums, branch))
    return _within(shift, sums, branch, ends=_BOTH_ENDS if sums.built.from_stack else 1)


def _moving(sums: TippingSums, branch: Branch) -> float:
    """The weight that comes nearer the fulcrum, or further out, as the reach grows.

    The beam moves with it; so does the counterweight where the backspan follows from the stack.
    """
    stack = (sums.built.counterweight or 0.0) if sums.built.from_stack else 0.0
    return stack + branch.beam_weight


def _shift(branch: Branch, *, moved: float) -> float:
    """How far the line may move out while the weight `moved` comes as much nearer the fulcrum."""
    return most_fulcrum_shift(
        resisting=branch.resisting,
        required=branch.required,
        factor=branch.rule.factor,
        load=branch.load,
        counterweight=moved,
    ).value


def _within(left: float, sums: TippingSums, branch: Branch, *, ends: int) -> float:
    """`left`, but no further than weight that is left out of the sum stays harmless.

    `ends` is how many ends of the beam change: outboard alone, or inboard as well.
    """
    room = sums.left_out_until
    return left if room is None or branch.beam_weight > 0.0 else min(left, room / ends)


def _length(name: str, left: float, step: float) -> Margin:
    if left >= 0.0:
        return Margin(name, Amount(step_down(left, step=step), LENGTH))
    short = step_up(-left, step=step)
    return Margin(name, Amount(short, LENGTH), beyond=short > 0.0)


def _hoists(
    case: Case,
    sums: TippingSums,
    branch: Branch,
    values: FactorValues,
    *,
    cap_factor: float | None,
) -> Iterator[Margin]:
    bases = {rule.load for _, rule in values}
    reach = sums.built.reach
    if reach is None or not bases <= {LoadBasis.HOIST_RATED, LoadBasis.HOIST_STALL}:
        return
    step = roof_step(FORCE, case.project.units)
    for basis, name in _MOST_LOAD.items():
        most = [
            most_load(resisting=branch.resisting, factor=rule.factor, reach=reach).value
            for _, rule in values
            if rule.load is basis
        ]
        if most:
            yield Margin(name, Amount(max(0.0, step_down(min(most), step=step)), FORCE))
    held = [
        hoist.id
        for hoist in case.project.kit.hoists
        if _within_cap(hoist, cap_factor)
        and _held(hoist, values, reach=reach, resisting=branch.resisting)
    ]
    yield Margin("hoists-that-do", ", ".join(held) or "none")


def _within_cap(hoist: Hoist, cap_factor: float | None) -> bool:
    """Whether the hoist's stall load is known and within the rule's cap, where it has one."""
    if cap_factor is None:
        return True
    if hoist.stall_load is None:
        return False
    cap = stall_cap(cap_factor=cap_factor, rated_load=hoist.rated_load.value).value
    return meets(demand=hoist.stall_load.value, capacity=cap)


def _held(hoist: Hoist, values: FactorValues, *, reach: float, resisting: float) -> bool:
    """Whether every branch of the rule would be held with this hoist on the line."""
    for _, rule in values:
        rated = rule.load is LoadBasis.HOIST_RATED
        stated = hoist.rated_load if rated else hoist.stall_load
        if stated is None:
            return False
        load = stated.value + (stated.tolerance or 0.0)
        if not meets(demand=rule.factor * load * reach, capacity=resisting):
            return False
    return True
