"""What an outrigger beam's own weight adds to its moments.

It is taken as even along the beam. Where somebody stated that its centroid lies nearer the tip than
the middle, the weight is taken to have moved outward by that much.
"""

from __future__ import annotations

from backspan.core.mechanics.beam_loading import (
    own_moment_behind,
    own_moment_between,
    own_moment_outboard,
    own_moment_uneven,
)
from backspan.core.mechanics.beam_web import own_weight_outboard
from backspan.core.mechanics.tipping import weight
from backspan.core.numbers import surely_above
from backspan.core.sheet.beam_as_built import BeamReads, inboard_of
from backspan.core.sheet.sheet import Sheet


def own_over_fulcrum(sheet: Sheet, beam: BeamReads, reach: float) -> float:
    """Moment over the fulcrum of the beam's own weight outboard of it."""
    heavy, length = _weight(sheet, beam), sheet.read(beam.length)
    even = sheet.do(
        own_moment_outboard,
        beam_weight=heavy,
        beam_length=length,
        reach=reach,
        tip_beyond_line=sheet.read(beam.tip),
    )
    if not nearer_tip(sheet, beam):
        return even
    return sheet.do(
        own_moment_uneven,
        own_outboard=even,
        beam_weight=heavy,
        beam_length=length,
        centroid_from_tail=sheet.read(beam.centroid_from_tail),
    )


def own_outboard(sheet: Sheet, beam: BeamReads, reach: float) -> float:
    """The beam's own weight outboard of its fulcrum; all of it where its centroid says no more."""
    heavy = _weight(sheet, beam)
    if nearer_tip(sheet, beam):
        return heavy
    return sheet.do(
        own_weight_outboard,
        beam_weight=heavy,
        beam_length=sheet.read(beam.length),
        reach=reach,
        tip_beyond_line=sheet.read(beam.tip),
    )


def own_between(sheet: Sheet, beam: BeamReads, *, rear_stand: float) -> float:
    """The most the beam sags by itself between its fulcrum and its rear stand."""
    return sheet.do(
        own_moment_between,
        beam_weight=_weight(sheet, beam),
        beam_length=sheet.read(beam.length),
        rear_stand=rear_stand,
    )


def own_behind(sheet: Sheet, beam: BeamReads, *, reach: float, rear_stand: float) -> float:
    """Moment over the rear stand of the beam's own weight behind it."""
    return sheet.do(
        own_moment_behind,
        beam_weight=_weight(sheet, beam),
        beam_length=sheet.read(beam.length),
        inboard=inboard_of(sheet, beam, reach),
        rear_stand=rear_stand,
    )


def nearer_tip(sheet: Sheet, beam: BeamReads) -> bool:
    """Whether its centroid is stated and lies nearer the tip than the middle."""
    if beam.centroid_from_tail.stated is None:
        return False
    centroid = sheet.read(beam.centroid_from_tail)
    return surely_above(centroid + centroid, limit=sheet.read(beam.length))


def _weight(sheet: Sheet, beam: BeamReads) -> float:
    return sheet.do(weight, mass=sheet.read(beam.mass))
