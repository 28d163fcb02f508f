"""Where the decks of stages hang: along an edge, seen from the roof, and out of its face.

A deck is taken to stand out alike beyond its outer lines: nobody states by how much on either side.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from backspan.core.model.rigs import Rig, SuspensionPoint
from backspan.core.numbers import ends_around, larger, smaller
from backspan.core.sheet.case import Case
from backspan.core.sheet.reads import Read, read_of
from backspan.core.sheet.sheet import Sheet


@dataclass(frozen=True, slots=True)
class Deck:
    """A stage on its lines: the middle between the outer ones, and how long it is."""

    name: str
    middle: float
    length: Read


def line_out(point: SuspensionPoint) -> float | None:
    """How far out of the face a line hangs, as stated; None where nobody can tell."""
    beam = point.counterweighted_beam
    reach = None if beam is None else beam.reach
    setback = None if beam is None or beam.fulcrum is None else beam.fulcrum.setback
    return None if reach is None or setback is None else reach.value - setback.value


def decks_of(case: Case, rig: Rig, drop: str) -> Iterator[Deck]:
    """Every stage of a rig that hangs from points of it."""
    stations = {one.id: one.station for one in rig.suspension_points}
    for hung in rig.stages:
        at = [stations[name] for name in hung.from_points if name in stations]
        if not at:
            continue
        low, high = smaller(*at), larger(*at)
        stage = case.stage(hung.stage)
        long = read_of("stage_length", stage, ("kit", "stages", stage.id))
        _, half = ends_around(0.0, long=high - low)
        yield Deck(f"{drop}/{hung.stage}", low + half, long)


def ends_of(sheet: Sheet, deck: Deck) -> tuple[float, float]:
    """Where a deck begins and ends along its edge."""
    return ends_around(deck.middle, long=sheet.read(deck.length))
