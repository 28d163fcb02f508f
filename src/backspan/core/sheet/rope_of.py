"""The rope of a point or a lifeline: its type, and the very rope with its tag."""

from __future__ import annotations

from backspan.core.model.kit import Rope
from backspan.core.model.rigs import Lifeline, SuspensionPoint
from backspan.core.model.units import Unit, UnitKind
from backspan.core.sheet.case import Case, Place
from backspan.core.sheet.reads import Read, read_of


def rope_of(case: Case, on: SuspensionPoint | Lifeline) -> Rope | None:
    """The type of rope; None where nobody named it."""
    return None if on.rope is None else case.project.kit.rope(on.rope)


def rope_unit(case: Case, point: SuspensionPoint) -> Unit | None:
    """The rope itself; None where only a type is named, or nothing."""
    return None if point.rope is None else case.project.kit.unit(UnitKind.ROPE, point.rope)


def diameter_of(case: Case, on: SuspensionPoint | Lifeline, place: Place) -> Read:
    """The diameter of the rope of what stands at `place`."""
    rope = rope_of(case, on)
    at = (*place, "rope") if rope is None else ("kit", "ropes", rope.id)
    return read_of("rope_diameter", rope, at)
