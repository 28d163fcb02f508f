"""How high above the roof a beam bears at the front."""

from __future__ import annotations

from dataclasses import dataclass

from backspan.core.model.rigs import SuspensionPoint
from backspan.core.numbers import surely_above
from backspan.core.sheet.case import Case
from backspan.core.sheet.reads import Read, read_of
from backspan.core.sheet.sheet import Sheet


@dataclass(frozen=True, slots=True)
class BearingReads:
    """A fulcrum at the edge: its own height, where it stands, and the parapet there."""

    setback: Read
    height: Read
    wall: Read
    thickness: Read


def bearing_reads(case: Case, point: SuspensionPoint) -> BearingReads:
    """What may be read of the front bearing of a point."""
    beam, wall = point.counterweighted_beam, case.edge.parapet
    fulcrum = None if beam is None else beam.fulcrum
    place = (*case.place_of(point), "counterweighted_beam", "fulcrum")
    at = (*case.edge_place, "parapet")
    return BearingReads(
        read_of("setback", fulcrum, place),
        read_of("fulcrum_height", fulcrum, place),
        read_of("parapet_height", wall, at),
        read_of("parapet_thickness", wall, at),
    )


def bearing_height(sheet: Sheet, at: BearingReads) -> float:
    """From the roof up to the beam: its fulcrum stands on the parapet, or inboard of it."""
    wall, own = sheet.read(at.wall), sheet.read(at.height)
    inboard = surely_above(sheet.read(at.setback), limit=sheet.read(at.thickness))
    return own if inboard else wall + own
