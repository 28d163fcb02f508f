"""How wide a plate under the fulcrum counts across the wall, or across the roof beside it.

What presses evenly presses around its own centre. A plate whose centre is nearer an edge of the
wall than half its side counts as wide as twice that distance, however far it goes on to the other
side or hangs over the face. Behind a wall it counts no wider than the room it has there. A tape's
doubt of both lengths is taken off in full, so that it asks for no corners of its own.

Which side of a plate lies across nobody states: whoever asks takes the worse.
"""

from __future__ import annotations

from dataclasses import dataclass

from backspan.core.mechanics.bearing import room_across
from backspan.core.model.rigs import SuspensionPoint
from backspan.core.numbers import at_most, exact_sum, surely_above, surely_nothing
from backspan.core.sheet.bearing_height import BearingReads, bearing_reads
from backspan.core.sheet.case import Case
from backspan.core.sheet.inputs import tolerance_of
from backspan.core.sheet.sheet import Sheet


@dataclass(frozen=True, slots=True)
class Across:
    """Where a fulcrum stands at its wall, and how far off both lengths may be together."""

    at: BearingReads
    in_doubt: float


def across(case: Case, point: SuspensionPoint) -> Across | None:
    """What may be read of it; None where a question is asked without any roof."""
    if not case.project.site.roofs:
        return None
    at = bearing_reads(case, point)
    off = (tolerance_of(case, one) or 0.0 for one in (at.setback, at.thickness))
    return Across(at, exact_sum(off))


def room_of(sheet: Sheet, one: Across) -> float:
    """The width that counts; outside its domain where nothing of the plate would lie there."""
    beside = sheet.without_doubt()
    setback, wall = beside.read(one.at.setback), beside.read(one.at.wall)
    thick = 0.0 if surely_nothing(wall) else beside.read(one.at.thickness)
    if surely_above(setback, limit=thick):
        to_edge = setback - thick
    else:
        to_edge = at_most(setback, most=thick - setback)
    room = sheet.do(room_across, to_edge=to_edge, in_doubt=one.in_doubt)
    return sheet.positive("beyond_wall", room)
