"""The stack of counterweight: its weight, its length on the beam, its true centroid.

Pieces stand in rows from the tail inwards; the pieces of one row share one place on the beam. A
last row that is not full stands inboard of the full ones. With w_i the weight of a row and c_i the
distance of its middle from the tail, the centroid is sum(w_i c_i) / sum(w_i); the backspan is what
is left of the inboard arm.

Every row added inboard has a shorter arm than the one before, so the moment about the fulcrum grows
with each piece, by less and less, until the stack reaches the fulcrum: there the beam is too short.
A piece added at the tail is another matter: it pushes all others inboard, and may hold less.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from backspan.core.mechanics.stack import (
    added_length,
    added_weight,
    moment_about_tail,
    pieces_weight,
    rows_centroid,
    rows_length,
    stack_centroid,
)
from backspan.core.mechanics.tipping import weight
from backspan.core.numbers import full_rows, surely_nothing
from backspan.core.sheet.reads import UNKNOWN
from backspan.core.sheet.sheet import Sheet


@dataclass(frozen=True, slots=True)
class Rows:
    """Equal pieces on a beam, SI: how many, how many share a place, their mass and length."""

    count: float
    per_row: int
    piece_mass: float
    piece_length: float = UNKNOWN


@dataclass(frozen=True, slots=True)
class PlacedStack:
    """A stack on its beam: weight, and centroid and inner end from the tail."""

    weight: float
    centroid_from_tail: float
    inner_end_from_tail: float


def stacked_weight(sheet: Sheet, groups: Sequence[Rows]) -> float:
    """Weight of all groups wherever they stand; no groups weigh nothing."""
    total = 0.0
    for group in groups:
        if surely_nothing(group.count):
            continue
        one = sheet.do(weight, mass=group.piece_mass)
        heavy = sheet.do(pieces_weight, pieces=group.count, piece_weight=one)
        total = _together(sheet, total, heavy)
    return total


def inner_end(sheet: Sheet, groups: Sequence[Rows], *, tail_gap: float) -> float:
    """Distance from the tail to where the rows of the groups end, whatever they weigh."""
    end = tail_gap
    for group in groups:
        for _, rows in _full_and_last(group):
            long = sheet.do(rows_length, rows=rows, piece_length=group.piece_length)
            end = sheet.do(added_length, length_before=end, stack_length=long)
    return end


def placed_stack(sheet: Sheet, groups: Sequence[Rows], *, tail_gap: float) -> PlacedStack:
    """The stack with its true centroid; where nothing is stacked, that is where it would begin."""
    moment, total, end = 0.0, 0.0, tail_gap
    for group in groups:
        one = UNKNOWN if surely_nothing(group.count) else sheet.do(weight, mass=group.piece_mass)
        for pieces, rows in _full_and_last(group):
            long = sheet.do(rows_length, rows=rows, piece_length=group.piece_length)
            heavy = sheet.do(pieces_weight, pieces=pieces, piece_weight=one)
            middle = sheet.do(rows_centroid, outer_end=end, stack_length=long)
            moment = sheet.do(
                moment_about_tail, moment_before=moment, counterweight=heavy, centroid=middle
            )
            end = sheet.do(added_length, length_before=end, stack_length=long)
            total = sheet.do(added_weight, weight_before=total, counterweight=heavy)
    if surely_nothing(total):
        return PlacedStack(total, tail_gap, end)
    return PlacedStack(total, sheet.do(stack_centroid, moment=moment, counterweight=total), end)


def _together(sheet: Sheet, before: float, more: float) -> float:
    if surely_nothing(before):
        return more
    return sheet.do(added_weight, weight_before=before, counterweight=more)


def _full_and_last(group: Rows) -> Iterator[tuple[float, float]]:
    """Pieces and rows of the full rows, then of the last one that is not full."""
    rows = full_rows(group.count, per_row=group.per_row)
    full = rows * group.per_row
    for pieces, of_them in ((full, rows), (group.count - full, 1.0)):
        if not surely_nothing(pieces):
            yield pieces, of_them
