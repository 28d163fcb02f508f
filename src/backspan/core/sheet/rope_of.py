"""The suspension rope of a point: its type, and the very rope with its tag."""

from __future__ import annotations

from backspan.core.model.kit import Rope
from backspan.core.model.rigs import SuspensionPoint
from backspan.core.model.units import Unit, UnitKind
from backspan.core.sheet.case import Case
from backspan.core.sheet.reads import Read, read_of


def rope_of(case: Case, point: SuspensionPoint) -> Rope | None:
    """The type of rope at a point; None where nobody named it."""
    return None if point.rope is None else case.project.kit.rope(point.rope)


def rope_unit(case: Case, point: SuspensionPoint) -> Unit | None:
    """The rope itself; None where only a type is named, or nothing."""
    return None if point.rope is None else case.project.kit.unit(UnitKind.ROPE, point.rope)


def diameter_of(case: Case, point: SuspensionPoint) -> Read:
    """The diameter of the rope at a point."""
    rope = rope_of(case, point)
    at = (*case.place_of(point), "rope") if rope is None else ("kit", "ropes", rope.id)
    return read_of("rope_diameter", rope, at)
