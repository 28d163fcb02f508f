"""A tieback in plan: how far it turns off the perpendicular to the face, and what it shares.

A measured angle goes first. Else it follows from the plan: the tieback runs from the tail of the
beam, or from the suspension shackle, to its anchor; across is along the edge, along is inboard. A
station and an anchor on a plan are off by as much as the trade allows for, which is laid on the
side that turns it further.

More than zero is towards the end of the edge. Two tiebacks of one support that are not both
perpendicular hold it together as a pair, on opposite sides.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from backspan.core.angles import cosine, direction, sine
from backspan.core.mechanics.beam_geometry import inboard_length
from backspan.core.mechanics.tiebacks import pair_tension
from backspan.core.model.rigs import SuspensionPoint, Tieback, TiebackStart
from backspan.core.numbers import root, surely_above, surely_below
from backspan.core.quantities import ANGLE, LENGTH
from backspan.core.sheet.case import Case, Place
from backspan.core.sheet.limits import limit_of, needed_value
from backspan.core.sheet.reads import UNKNOWN, Read, read_of
from backspan.core.sheet.sheet import Sheet

MOST_ANGLE, PLAN_POSITION = "tieback.most-angle", "tolerance.plan-position"


@dataclass(frozen=True, slots=True)
class TieReads:
    """What may be read of a tieback's direction; `across` and `inward` place its anchor."""

    name: str
    place: Place
    tie: Tieback
    angle: Read
    setback: Read
    reach: Read
    tip: Read
    length: Read
    across: float
    inward: float
    off: float
    on_beam: bool


@dataclass(frozen=True, slots=True)
class Ties:
    """The tiebacks of one support, and how far a single one may turn."""

    each: tuple[TieReads, ...]
    most: float
    outward: tuple[float, float]


def on_edge(case: Case, point: tuple[float, float]) -> tuple[float, float]:
    """A point of the plan as its station along the drop's edge, and how far in from its face."""
    edge = case.edge
    along = (edge.end[0] - edge.start[0], edge.end[1] - edge.start[1])
    length = root(along[0] * along[0] + along[1] * along[1])
    from_start = (point[0] - edge.start[0], point[1] - edge.start[1])
    station = (from_start[0] * along[0] + from_start[1] * along[1]) / length
    return station, (from_start[0] * along[1] - from_start[1] * along[0]) / length


def outward(case: Case) -> tuple[float, float]:
    """The direction in plan from the roof over the drop's edge, of length one."""
    edge = case.edge
    along = (edge.end[0] - edge.start[0], edge.end[1] - edge.start[1])
    length = root(along[0] * along[0] + along[1] * along[1])
    return -along[1] / length, along[0] / length


def ties_of(case: Case, point: SuspensionPoint) -> Ties:
    """The tiebacks of a suspension point, with all that may be read of them."""
    beam, at = point.counterweighted_beam, (*case.place_of(point), "counterweighted_beam")
    kind = None if beam is None else case.beam(beam.beam)
    fulcrum = None if beam is None else beam.fulcrum
    of_kit = ("kit", "beams", "" if kind is None else kind.id)
    anchors = {one.id: one for roof in case.project.site.roofs for one in roof.anchors}
    off = limit_of(needed_value(case.practice, PLAN_POSITION), LENGTH)
    found = []
    for tie in point.tied:
        place = (*case.place_of(point), "tiebacks", tie.id)
        anchor = anchors.get(tie.anchor or "")
        station, inward = (UNKNOWN, UNKNOWN) if anchor is None else on_edge(case, anchor.at)
        found.append(
            TieReads(
                f"{case.name_of(point)}/{tie.id}",
                place,
                tie,
                read_of("tieback_angle", tie, place),
                read_of("setback", fulcrum, (*at, "fulcrum")),
                read_of("reach", beam, at),
                read_of("tip_beyond_line", beam, at),
                read_of("beam_length", kind, of_kit),
                station - point.station,
                inward,
                off,
                on_beam=beam is not None,
            )
        )
    own = case.project.most_tieback_angle
    usual = limit_of(needed_value(case.practice, MOST_ANGLE), ANGLE)
    return Ties(tuple(found), usual if own is None else own, outward(case))


def angle_of(sheet: Sheet, one: TieReads) -> float:
    """By how much a tieback turns off the perpendicular, in radians; NaN where nobody knows."""
    if one.angle.stated is not None or one.tie.anchor is None:
        return sheet.read(one.angle)
    begins = begins_inboard(sheet, one)
    across = one.across - one.off if surely_below(one.across, limit=0.0) else one.across + one.off
    return direction(across=across, along=one.inward - begins)


def begins_inboard(sheet: Sheet, one: TieReads) -> float:
    """How far in from the face a tieback begins; NaN where nobody knows."""
    start = one.tie.attached
    if start is None:
        sheet.want("attached", (*one.place, "attached"))
        return UNKNOWN
    if not one.on_beam:  # other supports hold at the face
        return 0.0
    setback, reach = sheet.read(one.setback), sheet.read(one.reach)
    behind = -reach
    if start.value is not TiebackStart.SHACKLE:
        tip, length = sheet.read(one.tip), sheet.read(one.length)
        behind = sheet.do(inboard_length, beam_length=length, tip_beyond_line=tip, reach=reach)
    return setback + behind


def is_pair(angles: Sequence[float], most: float) -> bool:
    """Whether two tiebacks hold as a pair: not both of them may stand alone."""
    match angles:
        case [one, other]:
            return any(surely_above(abs(angle), limit=most) for angle in (one, other))
        case _:
            return False


def share_of(sheet: Sheet, ties: Ties, index: int, held: float) -> float:
    """What one tieback has to carry of a force along the beam: all of it, or its part of a pair."""
    match ties.each:
        case [one, second]:
            angles = (angle_of(sheet, one), angle_of(sheet, second))
        case _:
            return held
    if not is_pair(angles, ties.most):
        return held
    own, other = angles[index], angles[1 - index]
    return sheet.do(pair_tension, held=held, own_slope=_slope(own), other_slope=_slope(other))


def pull_of(sheet: Sheet, ties: Ties, index: int) -> float:
    """The direction in plan in which a tieback pulls its anchor, clockwise from the sheet's up."""
    turn = angle_of(sheet, ties.each[index])
    out = ties.outward
    # Outward along the perpendicular, and back across by what the tieback runs across.
    across, along = (out[1], -out[0]), cosine(turn)
    back = -sine(turn)
    return direction(
        across=out[0] * along + across[0] * back, along=out[1] * along + across[1] * back
    )


def _slope(angle: float) -> float:
    """How much a tieback runs across for its length along the beam, whichever side."""
    turned = cosine(angle)
    return abs(sine(angle)) / turned if surely_above(turned, limit=0.0) else UNKNOWN
