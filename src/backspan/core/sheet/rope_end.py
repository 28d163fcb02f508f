"""How the end of a suspension rope is made, as the kit states it."""

from __future__ import annotations

from backspan.core.model.kit import Termination, TerminationKind
from backspan.core.model.rigs import SuspensionPoint
from backspan.core.sheet.case import Case, Place
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.witness import EvidenceClass


def end_of(case: Case, point: SuspensionPoint) -> tuple[Termination | None, Place]:
    """The termination of a point and where it stands; where it would be named, if it is not."""
    kit = case.project.kit
    end = None if point.termination is None else kit.termination(point.termination)
    return end, end_place(case, point)


def end_place(case: Case, point: SuspensionPoint) -> Place:
    """Where the termination of a point stands, or would be named."""
    if point.termination is None:
        return (*case.place_of(point), "termination")
    return ("kit", "terminations", point.termination)


def end_kind(inputs: Inputs, point: SuspensionPoint) -> TerminationKind | None:
    """What the end is made with; a fact of the kit, on nobody's word. None is noted as wanted."""
    end, place = end_of(inputs.case, point)
    if end is None or end.kind is None:
        inputs.want("termination_kind", EvidenceClass.RATING, (*place, "kind"))
        return None
    inputs.fact("termination_kind", str(end.kind), (*place, "kind"))
    return end.kind
