"""The connecting hardware of a suspension point, each piece with a name of its own."""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass

from backspan.core.findings import Finding, Message
from backspan.core.model.rigs import Fitted, SuspensionPoint
from backspan.core.sheet.case import Case, Place
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.presence import judge_presence
from backspan.core.sheet.witness import EvidenceClass


@dataclass(frozen=True, slots=True)
class FittedPiece:
    """A piece where it is fitted, as findings name it."""

    fitted: Fitted
    name: str
    place: Place


def fitted_on(case: Case, point: SuspensionPoint) -> tuple[FittedPiece, ...]:
    """The pieces of a point in the order they are stated; of equal ones the second is numbered."""
    times: Counter[str] = Counter()
    found = []
    for index, one in enumerate(point.connectors or ()):
        times[one.connector] += 1
        number = f" ({times[one.connector]})" if times[one.connector] > 1 else ""
        name = f"{case.name_of(point)}/{one.connector}{number}"
        found.append(FittedPiece(one, name, (*case.place_of(point), "connectors", index)))
    return tuple(found)


def without_hardware(case: Case, check: str, point: SuspensionPoint) -> Finding:
    """That no hardware is stated: what joins the rope's end to its support is then not known."""
    inputs, place = Inputs(case), (*case.place_of(point), "connectors")
    inputs.want("connectors", EvidenceClass.OBSERVATION, place)
    return judge_presence(
        inputs,
        check=check,
        subject=case.name_of(point),
        place=place,
        message=Message("hardware.unsaid" if point.connectors is None else "hardware.none"),
        met=None,
        question="connector",
    )
