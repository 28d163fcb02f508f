"""The load a rule's factor multiplies, on one suspension point."""

from __future__ import annotations

from dataclasses import dataclass

from backspan.core.mechanics import loads
from backspan.core.mechanics.tipping import weight
from backspan.core.model.rigs import SuspensionPoint
from backspan.core.numbers import total
from backspan.core.rules.shape import LoadBasis
from backspan.core.sheet.case import Case, Place
from backspan.core.sheet.reads import UNKNOWN, Read, hoist_reads, read_of
from backspan.core.sheet.sheet import Sheet

_SHARES = {
    LoadBasis.HALF_DEAD_FULL_LIVE: loads.half_dead_full_live,
    LoadBasis.HALF_DEAD_HALF_LIVE: loads.half_dead_half_live,
}


@dataclass(frozen=True, slots=True)
class LineReads:
    """What may be read of the load on a suspension point, and where a stage would hang."""

    rated_load: Read
    stall_load: Read
    limiter_trip: Read
    rope_mass: Read
    bottom_weight: Read
    stages: tuple[tuple[Read, Read], ...]
    point: Place


def line_reads(case: Case, point: SuspensionPoint) -> LineReads:
    """What may be read of the load on a suspension point, with evidence and places."""
    hoist, at = case.hoist(point.hoist), case.place_of(point)
    rated, stall = hoist_reads(case, point)
    stages = [(one, ("kit", "stages", one.id)) for one in case.stages_on(point)]
    return LineReads(
        rated,
        stall,
        read_of("limiter_trip", hoist, ("kit", "hoists", hoist.id)),
        read_of("rope_mass", point, at),
        read_of("bottom_weight", point, at),
        tuple(
            (read_of("dead_mass", one, place), read_of("intended_load", one, place))
            for one, place in stages
        ),
        at,
    )


def load_on_line(sheet: Sheet, line: LineReads, basis: LoadBasis) -> float:
    """The load in newtons on that basis; NaN where a value it follows from is not stated."""
    if basis is LoadBasis.HOIST_RATED:
        return sheet.read(line.rated_load)
    if basis is LoadBasis.HOIST_STALL:
        return sheet.read(line.stall_load)
    if basis is LoadBasis.LARGEST_ROPE_TENSION:
        return sheet.do(
            loads.largest_rope_tension,
            hoist_pull=sheet.read(line.limiter_trip),
            rope_weight=sheet.do(weight, mass=sheet.read(line.rope_mass)),
            bottom_weight=sheet.do(weight, mass=sheet.read(line.bottom_weight)),
        )
    if not line.stages:
        sheet.want("stage", line.point)
        return UNKNOWN
    dead = sheet.do(weight, mass=total([sheet.read(one) for one, _ in line.stages]))
    live = sheet.do(weight, mass=total([sheet.read(one) for _, one in line.stages]))
    return sheet.do(_SHARES[basis], dead_load=dead, live_load=live)
