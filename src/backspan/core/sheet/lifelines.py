"""Each lifeline of a drop, with its name and its place."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from backspan.core.findings import DoesNotApply, Message
from backspan.core.model.kit import Lanyard
from backspan.core.model.rigs import Lifeline
from backspan.core.model.site import Anchor, Roof
from backspan.core.sheet.case import Case, Place


@dataclass(frozen=True, slots=True)
class Life:
    """A lifeline as findings name it."""

    line: Lifeline
    name: str
    place: Place


def anchored(case: Case, line: Lifeline) -> tuple[Roof, Anchor]:
    """The roof and the anchor from which a lifeline hangs."""
    return next(
        (roof, anchor)
        for roof in case.project.site.roofs
        for anchor in roof.anchors
        if anchor.id == line.anchor
    )


def lanyard_of(case: Case, one: Life) -> tuple[Lanyard | None, Place]:
    """The kind of lanyard that a rider wears, and its place; where it is named, if none."""
    name = one.line.lanyard
    worn = None if name is None else case.project.kit.lanyard(name)
    return worn, (*one.place, "lanyard") if worn is None else ("kit", "lanyards", worn.id)


def each_lifeline(case: Case, check: str) -> Iterator[Life | DoesNotApply]:
    """Every lifeline, or that none is stated, which stops the drop elsewhere."""
    rig, place = case.drop.rig, (*case.place, "rig", "lifelines")
    lines = () if rig is None else rig.lines
    if not lines:
        yield DoesNotApply(check, case.subject, place, Message("na.no-lifeline"))
    for line in lines:
        yield Life(line, f"{case.subject}/{line.id}", (*place, line.id))
