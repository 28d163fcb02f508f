"""The load a rule's factor multiplies, for one suspension point."""

from __future__ import annotations

from dataclasses import dataclass

from backspan.core.judgement.case import Place
from backspan.core.judgement.inputs import EvidenceClass, Inputs
from backspan.core.mechanics import loads
from backspan.core.mechanics.tipping import weight
from backspan.core.model.kit import Stage
from backspan.core.model.rigs import SuspensionPoint
from backspan.core.numbers import exact_sum
from backspan.core.quantities import FORCE, MASS
from backspan.core.rules.shape import LoadBasis
from backspan.core.worked.formula import Step


@dataclass(frozen=True, slots=True)
class BasisLoad:
    """The load in newtons, or None where an input it needs is not stated; and how it came."""

    load: float | None
    steps: tuple[Step, ...] = ()


@dataclass(frozen=True, slots=True)
class LoadReader:
    """Reads the load of one suspension point on any basis."""

    inputs: Inputs
    point: SuspensionPoint
    place: Place

    def read(self, basis: LoadBasis) -> BasisLoad:
        """The load on that basis at the corner of the case."""
        if basis is LoadBasis.HOIST_RATED:
            return BasisLoad(self._hoist("rated_load"))
        if basis is LoadBasis.HOIST_STALL:
            return BasisLoad(self._hoist("stall_load"))
        if basis is LoadBasis.LARGEST_ROPE_TENSION:
            return self._rope_tension()
        return self._stage_share(basis)

    def _hoist(self, name: str) -> float | None:
        hoist = self.inputs.case.hoist(self.point.hoist)
        place = ("kit", "hoists", hoist.id, name)
        return self.inputs.measure(name, getattr(hoist, name), FORCE, EvidenceClass.RATING, place)

    def _rope_tension(self) -> BasisLoad:
        pull = self._hoist("limiter_trip")
        rope = self._mass("rope_mass")
        bottom = self._mass("bottom_weight")
        if pull is None or rope is None or bottom is None:
            return BasisLoad(None)
        of_rope, of_bottom = weight(mass=rope), weight(mass=bottom)
        tension = loads.largest_rope_tension(
            hoist_pull=pull, rope_weight=of_rope.value, bottom_weight=of_bottom.value
        )
        return BasisLoad(tension.value, (of_rope, of_bottom, tension))

    def _mass(self, name: str) -> float | None:
        return self.inputs.measure(
            name, getattr(self.point, name), MASS, EvidenceClass.MASS, (*self.place, name)
        )

    def _stage_share(self, basis: LoadBasis) -> BasisLoad:
        stages = self.inputs.case.stages_on(self.point)
        dead = [self._of_stage(stage, "dead_mass") for stage in stages]
        live = [self._of_stage(stage, "intended_load") for stage in stages]
        if not stages:
            self.inputs.want("stage", EvidenceClass.OBSERVATION, self.place)
        known_dead = [one for one in dead if one is not None]
        known_live = [one for one in live if one is not None]
        if not stages or len(known_dead) < len(dead) or len(known_live) < len(live):
            return BasisLoad(None)
        of_dead = weight(mass=exact_sum(known_dead))
        of_live = weight(mass=exact_sum(known_live))
        share = (
            loads.half_dead_full_live
            if basis is LoadBasis.HALF_DEAD_FULL_LIVE
            else loads.half_dead_half_live
        )
        step = share(dead_load=of_dead.value, live_load=of_live.value)
        return BasisLoad(step.value, (of_dead, of_live, step))

    def _of_stage(self, stage: Stage, name: str) -> float | None:
        place = ("kit", "stages", stage.id, name)
        return self.inputs.measure(name, getattr(stage, name), MASS, EvidenceClass.MASS, place)
