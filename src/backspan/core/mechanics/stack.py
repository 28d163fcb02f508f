"""The stack of counterweight: its weight, its length on the beam, its true centroid.

Pieces stand in rows from the tail inwards; the pieces of one row share one place on the beam.
A last row that is not full stands inboard of the full ones. Every row added inboard has a
shorter arm than the one before, so the moment of a stack about the fulcrum grows with each
piece, by less and less, until the stack reaches the fulcrum: there the beam is too short.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from backspan.core.errors import BackspanError
from backspan.core.mechanics.tipping import weight
from backspan.core.numbers import meets, whole_down, whole_up
from backspan.core.quantities import Force, Length, Mass, Moment, Ratio
from backspan.core.worked.formula import Step, formula


class StackError(BackspanError, ValueError):
    """A stack that cannot be placed: no pieces, or pieces without a length."""


@formula(symbol="l")
def rows_length(*, rows: Ratio, piece_length: Length) -> Length:
    """Length of beam that rows of equal pieces take.

    Source: geometry.
    """
    return rows * piece_length


@formula(symbol="c_row")
def rows_centroid(*, outer_end: Length, stack_length: Length) -> Length:
    """Centroid of equal rows, from the tail end of the beam.

    Source: geometry; Ontario safety talk on counterweights (half the length the stack takes).
    """
    return outer_end + stack_length / 2


@formula(symbol="W")
def pieces_weight(*, pieces: Ratio, piece_weight: Force) -> Force:
    """Weight of a number of equal pieces.

    Source: arithmetic.
    """
    return pieces * piece_weight


@formula(symbol="S")
def moment_about_tail(*, moment_before: Moment, counterweight: Force, centroid: Length) -> Moment:
    """First moment of the stack about the tail end, one more group added.

    Source: statics.
    """
    return moment_before + counterweight * centroid


@formula(symbol="W_sum")
def added_weight(*, weight_before: Force, counterweight: Force) -> Force:
    """Weight of the stack, one more group added.

    Source: arithmetic.
    """
    return weight_before + counterweight


@formula(symbol="x_in")
def added_length(*, length_before: Length, stack_length: Length) -> Length:
    """Distance from the tail end to the inner end of the rows so far.

    Source: geometry.
    """
    return length_before + stack_length


@formula(symbol="c")
def stack_centroid(*, moment: Moment, counterweight: Force) -> Length:
    """Centroid of the whole stack, from the tail end of the beam.

    Source: statics.
    """
    return moment / counterweight


@dataclass(frozen=True, slots=True)
class Rows:
    """Equal pieces on a beam: how many, how many share a place, their mass and length."""

    count: int
    per_row: int
    piece_mass: Mass
    piece_length: Length | None


@dataclass(frozen=True, slots=True)
class StackedWeight:
    """The weight of a stack wherever it stands."""

    weight: Force
    steps: tuple[Step, ...]


@dataclass(frozen=True, slots=True)
class PlacedStack:
    """A stack on its beam: weight, centroid and inner end from the tail, and the steps."""

    weight: Force
    centroid_from_tail: Length
    inner_end_from_tail: Length
    steps: tuple[Step, ...]


def stacked_weight(groups: Sequence[Rows]) -> StackedWeight:
    """Weight of all groups, group by group. No groups weigh nothing."""
    total = 0.0
    steps: list[Step] = []
    for group in groups:
        if group.count == 0:
            continue
        one = weight(mass=group.piece_mass)
        all_of_it = pieces_weight(pieces=float(group.count), piece_weight=one.value)
        steps += (one, all_of_it)
        if total == 0.0:
            total = all_of_it.value
        else:
            together = added_weight(weight_before=total, counterweight=all_of_it.value)
            total = together.value
            steps.append(together)
    return StackedWeight(total, tuple(steps))


def placed_stack(groups: Sequence[Rows], *, tail_gap: Length) -> PlacedStack:
    """The stack with its true centroid; every group needs its piece length.

    Raises StackError when a group has pieces but no length on the beam, or nothing is stacked.
    """
    moment, total, inner_end = 0.0, 0.0, tail_gap
    steps: list[Step] = []
    for group in groups:
        one = weight(mass=group.piece_mass)
        for pieces, rows in _full_and_last(group):
            if group.piece_length is None:
                raise StackError("a piece on the beam has no length")
            long = rows_length(rows=float(rows), piece_length=group.piece_length)
            heavy = pieces_weight(pieces=float(pieces), piece_weight=one.value)
            middle = rows_centroid(outer_end=inner_end, stack_length=long.value)
            turned = moment_about_tail(
                moment_before=moment, counterweight=heavy.value, centroid=middle.value
            )
            end = added_length(length_before=inner_end, stack_length=long.value)
            together = added_weight(weight_before=total, counterweight=heavy.value)
            moment, total, inner_end = turned.value, together.value, end.value
            steps += (one, heavy, long, middle, turned, together, end)
    if total == 0.0:
        raise StackError("nothing is stacked")
    centroid = stack_centroid(moment=moment, counterweight=total)
    return PlacedStack(total, centroid.value, inner_end, (*steps, centroid))


def _full_and_last(group: Rows) -> tuple[tuple[int, int], ...]:
    full_rows, rest = divmod(group.count, group.per_row)
    parts = ((full_rows * group.per_row, full_rows), (rest, 1))
    return tuple((pieces, rows) for pieces, rows in parts if pieces)


def inner_end(groups: Sequence[Rows], *, tail_gap: Length) -> Length:
    """Distance from the tail end to where the rows of the groups end, whatever they weigh.

    Raises StackError when a group has pieces but no length on the beam.
    """
    end = tail_gap
    for group in groups:
        for _, rows in _full_and_last(group):
            if group.piece_length is None:
                raise StackError("a piece on the beam has no length")
            long = rows_length(rows=float(rows), piece_length=group.piece_length).value
            end = added_length(length_before=end, stack_length=long).value
    return end


def most_that_fit(others: Sequence[Rows], last: Rows, *, tail_gap: Length, inboard: Length) -> int:
    """Pieces of the last group that fit between the others and the fulcrum.

    Raises StackError when a piece has no length.
    """
    if last.piece_length is None:
        raise StackError("a piece on the beam has no length")
    room = inboard - inner_end(others, tail_gap=tail_gap)
    return max(0, whole_down(room / last.piece_length)) * last.per_row


def least_count_at_backspan(
    *, required: Moment, held_by_others: Moment, piece_weight: Force, backspan: Length
) -> int:
    """Fewest whole pieces that resist the moment when the centroid stays where it is."""
    return max(0, whole_up((required - held_by_others) / (piece_weight * backspan)))


def least_count_on_beam(
    others: Sequence[Rows],
    last: Rows,
    *,
    tail_gap: Length,
    inboard: Length,
    required: Moment,
    held_by_beam: Moment,
) -> int | None:
    """Fewest whole pieces of the last group that resist the moment with their true centroid.

    None when even the pieces that fit do not: the beam is too short. The moment grows with
    every piece that still fits, so the search may halve its range.
    """
    most = most_that_fit(others, last, tail_gap=tail_gap, inboard=inboard)

    def holds(count: int) -> bool:
        groups = (*others, Rows(count, last.per_row, last.piece_mass, last.piece_length))
        if stacked_weight(groups).weight <= 0.0:
            return meets(demand=required, capacity=held_by_beam)
        stack = placed_stack(groups, tail_gap=tail_gap)
        arm = inboard - stack.centroid_from_tail
        return meets(demand=required, capacity=stack.weight * arm + held_by_beam)

    if not holds(most):
        return None
    low, high = 0, most
    while low < high:
        middle = (low + high) // 2
        if holds(middle):
            high = middle
        else:
            low = middle + 1
    return low
