"""How many whole pieces: the count a beam needs, and the count at the most stall load allowed."""

from __future__ import annotations

from dataclasses import dataclass, replace

from backspan.core.checks.tipping import fewest_pieces
from backspan.core.mechanics.constants import STANDARD_GRAVITY
from backspan.core.mechanics.loads import stall_cap
from backspan.core.mechanics.tipping import (
    pieces_in_weight,
    required_counterweight,
    required_moment,
    weight,
)
from backspan.core.quantities import FORCE, MASS, Amount
from backspan.core.questions.imagined import Rigged, with_rig
from backspan.core.questions.judging import Worked, stall_cap_of, stall_open, worked_of
from backspan.core.questions.shape import Asked, Line
from backspan.core.sheet.moments import Branch
from backspan.core.worked.formula import Step


@dataclass(frozen=True, slots=True)
class Counted:
    """Pieces needed by the governing branch; None where no number of them is enough."""

    branch: Branch
    needed: int | None
    required: float | None
    """Mass of counterweight at the backspan as it is, kg; None where the pieces make it."""
    steps: tuple[Step, ...]


def counted(worked: Worked, rigged: Rigged) -> Counted | None:
    """The count for a beam; None where the rule's load or the beam is not known."""
    branch = worked.governing
    if branch is None:
        return None
    backspan = branch.built.backspan
    needed = fewest_pieces(worked.case, worked.asked)
    if rigged.from_stack or not backspan > 0.0:
        return Counted(branch, needed, None, ())
    wanted = required_counterweight(required=branch.demand - branch.own_moment, backspan=backspan)
    one = weight(mass=rigged.piece)
    share = pieces_in_weight(counterweight=wanted.value, piece_weight=one.value)
    turned = required_moment(factor=branch.rule.factor, load=branch.load, reach=branch.built.reach)
    steps = (turned, wanted, one, share) if branch.own_moment == 0.0 else ()
    return Counted(branch, needed, max(0.0, wanted.value) / STANDARD_GRAVITY, steps)


@dataclass(frozen=True, slots=True)
class AtMostStall:
    """The same beam with the hoist at the most stall load its rule allows."""

    stall: float
    rigged: Rigged
    worked: Worked


def at_most_stall(asked: Asked, worked: Worked, rigged: Rigged) -> AtMostStall | None:
    """That beam; None where the stall load is known, plays no part, or has no cap."""
    cap = stall_cap_of(worked.case)
    if cap is None or not stall_open(worked):
        return None
    stall = stall_cap(cap_factor=cap, rated_load=rigged.rated).value
    at_cap = replace(rigged, stall=stall)
    return AtMostStall(stall, at_cap, worked_of(with_rig(worked.case, asked, at_cap)))


def stall_lines(most: AtMostStall | None, at_cap: Counted | None) -> tuple[Line, ...]:
    """The numbers at the most stall load allowed."""
    if most is None or at_cap is None:
        return ()
    lines = [Line("most-stall", Amount(most.stall, FORCE))]
    if at_cap.required is not None:
        lines.append(Line("required-at-most-stall", Amount(at_cap.required, MASS)))
    if at_cap.needed is not None:
        lines.append(Line("pieces-at-most-stall", at_cap.needed))
    return tuple(lines)
