"""Every thing of the kit that a rig names, and where it names it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from backspan.core.model.rigs import Rig
from backspan.core.model.units import UnitKind
from backspan.core.sheet.case import Place


@dataclass(frozen=True, slots=True)
class Use:
    """A thing where a rig names it: `name` is its tag, or only its type; `count` of its pieces."""

    kind: UnitKind
    name: str
    at: str
    place: Place
    count: float = 1.0
    of_life: bool = False
    """Whether it is the rope of a lifeline."""


def uses_of(rig: Rig, drop: str) -> Iterator[Use]:
    """Every hoist, rope, beam, stage and lot that a rig names, by point, stage or lifeline."""
    around = ("drops", drop, "rig")
    for point in rig.suspension_points:
        at, place = f"{drop}/{point.id}", (*around, "suspension_points", point.id)
        yield Use(UnitKind.HOIST, point.hoist, at, (*place, "hoist"))
        yield Use(UnitKind.ROPE, point.rope or "", at, (*place, "rope"))
        beam = point.counterweighted_beam
        if beam is None:
            continue
        of_beam = (*place, "counterweighted_beam")
        yield Use(UnitKind.BEAM, beam.beam, at, (*of_beam, "beam"))
        for index, group in enumerate(beam.stack.groups):
            there = (*of_beam, "stack", "groups", index, "piece")
            yield Use(UnitKind.PIECE, group.piece, at, there, group.count.value)
    for hung in rig.stages:
        name = f"{drop}/{hung.stage}"
        yield Use(UnitKind.STAGE, hung.stage, name, (*around, "stages", hung.stage))
    for life in rig.lines:
        if life.rope is not None:
            at, of_line = f"{drop}/{life.id}", (*around, "lifelines", life.id, "rope")
            yield Use(UnitKind.ROPE, life.rope, at, of_line, of_life=True)
