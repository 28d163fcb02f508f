"""What is left on a tipping check, in pieces, inches and hoists, each rounded to caution."""

from __future__ import annotations

from collections.abc import Iterator

from backspan.core.findings import Margin
from backspan.core.judgement.case import Case
from backspan.core.judgement.pieces_needed import PiecesNeeded, pieces_needed
from backspan.core.judgement.tipping_sums import Branch, FactorValues, TippingSums
from backspan.core.mechanics.tipping import (
    least_backspan,
    most_fulcrum_shift,
    most_load,
    most_reach,
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

_MOST_LOAD = {
    LoadBasis.HOIST_RATED: "most-rated-load",
    LoadBasis.HOIST_STALL: "most-stall-load",
}


def tipping_margins(case: Case, sums: TippingSums, values: FactorValues) -> tuple[Margin, ...]:
    """All margins of the governing branch; none where nothing could be worked out."""
    branch, built = sums.governing, sums.built
    if branch is None or built.reach is None or built.backspan is None:
        return ()
    pieces = pieces_needed(built, branch)
    margins = [
        *_pieces(pieces),
        *_lengths(case, sums, branch),
        *_hoists(case, sums, branch, values),
    ]
    if pieces is not None and pieces.piece_weight > 0.0 and built.backspan > 0.0:
        more = LITTLE_MORE_LENGTH[case.project.units]
        price = pieces_for_more_reach(
            factor=branch.rule.factor,
            load=branch.load,
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
    reach, backspan, counterweight = built.reach, built.backspan, built.counterweight
    if reach is None or backspan is None or counterweight is None:
        return
    step = roof_step(LENGTH, case.project.units)
    far = most_reach(resisting=branch.resisting, factor=branch.rule.factor, load=branch.load).value
    yield _length("more-reach", far - reach, step)
    if counterweight <= 0.0:
        return
    near = least_backspan(
        required=branch.required - branch.held_by_beam, counterweight=counterweight
    ).value
    yield _length("less-backspan", backspan - near, step)
    shift = most_fulcrum_shift(
        resisting=branch.resisting,
        required=branch.required,
        factor=branch.rule.factor,
        load=branch.load,
        counterweight=counterweight,
    ).value
    yield _length("fulcrum-inboard", shift, step)


def _length(name: str, left: float, step: float) -> Margin:
    if left >= 0.0:
        return Margin(name, Amount(step_down(left, step=step), LENGTH))
    return Margin(name, Amount(step_up(-left, step=step), LENGTH), beyond=True)


def _hoists(
    case: Case, sums: TippingSums, branch: Branch, values: FactorValues
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
        if _held(hoist, values, reach=reach, resisting=branch.resisting)
    ]
    yield Margin("hoists-that-do", ", ".join(held) or "none")


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
