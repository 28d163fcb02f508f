"""The load a rule's factor multiplies, on one suspension point."""

from __future__ import annotations

from dataclasses import dataclass

from backspan.core.mechanics import loads
from backspan.core.mechanics.tipping import weight
from backspan.core.model.evidence import StatedValue
from backspan.core.model.rigs import SuspensionPoint
from backspan.core.numbers import total
from backspan.core.quantities import FORCE, MASS
from backspan.core.rules.shape import LoadBasis
from backspan.core.sheet.case import Case
from backspan.core.sheet.inputs import EvidenceClass
from backspan.core.sheet.reads import UNKNOWN, Read, hoist_reads
from backspan.core.sheet.sheet import Sheet

_SHARES = {
    LoadBasis.HALF_DEAD_FULL_LIVE: loads.half_dead_full_live,
    LoadBasis.HALF_DEAD_HALF_LIVE: loads.half_dead_half_live,
}


@dataclass(frozen=True, slots=True)
class LineReads:
    """What may be read of the load on a suspension point; `stage` is to be asked for if none."""

    rated_load: Read
    stall_load: Read
    limiter_trip: Read
    rope_mass: Read
    bottom_weight: Read
    stages: tuple[tuple[Read, Read], ...]
    stage: Read


def line_reads(case: Case, point: SuspensionPoint) -> LineReads:
    """What may be read of the load on a suspension point, with evidence and places."""
    hoist, at = case.hoist(point.hoist), case.place_of(point)
    rated, stall = hoist_reads(case, point)
    trip = ("kit", "hoists", hoist.id, "limiter_trip")
    mass = EvidenceClass.MASS

    def of_stage(name: str, stage: str, stated: StatedValue[float] | None) -> Read:
        return Read(name, stated, mass, ("kit", "stages", stage, name), MASS)

    return LineReads(
        rated,
        stall,
        Read("limiter_trip", hoist.limiter_trip, EvidenceClass.RATING, trip, FORCE),
        Read("rope_mass", point.rope_mass, mass, (*at, "rope_mass"), MASS),
        Read("bottom_weight", point.bottom_weight, mass, (*at, "bottom_weight"), MASS),
        tuple(
            (
                of_stage("dead_mass", one.id, one.dead_mass),
                of_stage("intended_load", one.id, one.intended_load),
            )
            for one in case.stages_on(point)
        ),
        Read("stage", None, EvidenceClass.OBSERVATION, at, None),
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
        sheet.read(line.stage)
        return UNKNOWN
    dead = sheet.do(weight, mass=total([sheet.read(one) for one, _ in line.stages]))
    live = sheet.do(weight, mass=total([sheet.read(one) for _, one in line.stages]))
    return sheet.do(_SHARES[basis], dead_load=dead, live_load=live)
