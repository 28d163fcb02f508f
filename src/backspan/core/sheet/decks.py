"""Where the decks of stages hang along an edge, seen from the roof.

A deck is taken to stand out alike beyond its outer lines: nobody states by how much on either side.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from backspan.core.model.rigs import Rig
from backspan.core.numbers import at_least, ends_around, smaller
from backspan.core.sheet.case import Case
from backspan.core.sheet.reads import Read, read_of
from backspan.core.sheet.sheet import Sheet


@dataclass(frozen=True, slots=True)
class Deck:
    """A stage on its lines: the middle between the outer ones, and how long it is."""

    name: str
    middle: float
    length: Read


def decks_of(case: Case, rig: Rig, drop: str) -> Iterator[Deck]:
    """Every stage of a rig that hangs from points of it."""
    stations = {one.id: one.station for one in rig.suspension_points}
    for hung in rig.stages:
        at = [stations[name] for name in hung.from_points if name in stations]
        if not at:
            continue
        low, high = smaller(*at), at[0]
        for one in at:
            high = at_least(high, least=one)
        stage = case.stage(hung.stage)
        long = read_of("stage_length", stage, ("kit", "stages", stage.id))
        _, half = ends_around(0.0, long=high - low)
        yield Deck(f"{drop}/{hung.stage}", low + half, long)


def ends_of(sheet: Sheet, deck: Deck) -> tuple[float, float]:
    """Where a deck begins and ends along its edge."""
    return ends_around(deck.middle, long=sheet.read(deck.length))
