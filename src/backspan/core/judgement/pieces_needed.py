"""How many whole pieces a support needs, counted in the pieces that stand innermost on it."""

from __future__ import annotations

from dataclasses import dataclass

from backspan.core.judgement.beam_as_built import AsBuilt
from backspan.core.judgement.tipping_sums import Branch
from backspan.core.mechanics.stack import (
    Rows,
    least_count_at_backspan,
    least_count_on_beam,
    stacked_weight,
)
from backspan.core.mechanics.tipping import weight


@dataclass(frozen=True, slots=True)
class PiecesNeeded:
    """Pieces needed in all; None where no number of them is enough on this beam."""

    needed: int | None
    there: int
    piece_weight: float

    @property
    def spare(self) -> int | None:
        """Pieces more than needed; negative when short; None when the beam is too short."""
        return None if self.needed is None else self.there - self.needed


def pieces_needed(built: AsBuilt, branch: Branch) -> PiecesNeeded | None:
    """The whole pieces a branch needs; None where the beam carries no kind of piece.

    The innermost group is the one that is varied. At a measured backspan the centroid stays
    where it was taped; where the backspan follows from the stack, each piece moves it.
    """
    if not built.rows or built.backspan is None:
        return None
    *others, last = built.rows
    one = weight(mass=last.piece_mass).value
    fixed = sum(group.count for group in others)
    if one <= 0.0:
        count = None  # pieces whose tolerance is as large as their mass
    elif built.inboard is not None and built.tail_gap is not None:
        count = least_count_on_beam(
            others,
            last,
            tail_gap=built.tail_gap,
            inboard=built.inboard,
            required=branch.required,
            held_by_beam=branch.held_by_beam,
        )
    elif built.backspan <= 0.0:
        count = None
    else:
        count = least_count_at_backspan(
            required=branch.required,
            held_by_others=_held(others, built.backspan) + branch.held_by_beam,
            piece_weight=one,
            backspan=built.backspan,
        )
    needed = None if count is None else fixed + count
    return PiecesNeeded(needed, built.pieces, one)


def _held(groups: list[Rows], backspan: float) -> float:
    return stacked_weight(groups).weight * backspan
