"""Tiebacks in plan: from the beam to the anchor, over all that lies between them."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from backspan.drawings.canvas import Canvas
from backspan.drawings.geometry import direction, left_of, moved
from backspan.drawings.scene import Layer, Line, Point, Polygon
from backspan.drawings.spots import Spot, around
from backspan.drawings.symbols import WHITE
from backspan.drawings.things import Thing

CLEARING = 1.2
NEAR_LINE = 6.0
MIDDLE = 0.5
END = 3.5
"""How close to the end of a line, in millimetres on paper, no leader points."""

STRAIGHT = 5
"""A tieback that turns off by less, in degrees, is drawn without a figure."""


@dataclass(frozen=True, slots=True)
class Tie:
    """A tieback in plan (metres), and by how many degrees it turns off the line of its beam.

    The angle is None where it is not known on what, or where, the tieback is made fast.
    """

    name: str
    start: Point
    anchor: Point
    angle: int | None
    thing: Thing


def clear_ties(canvas: Canvas, ties: Sequence[Tie]) -> None:
    """Blank paper along each tieback, drawn before the beams: no outline beneath hides it."""
    for tie in ties:
        strip = _clearing(canvas, tie.start, tie.anchor)
        canvas.add(Polygon(Layer.TIEBACK, strip, WHITE, outlined=False))


def draw_ties(canvas: Canvas, ties: Sequence[Tie]) -> None:
    """The tiebacks themselves, drawn after the beams, with the angle where it is not straight."""
    for tie in ties:
        start, end = tie.start, tie.anchor
        layer = Layer.NOT_KNOWN if tie.angle is None else Layer.TIEBACK
        canvas.add(Line(layer, start, end, of=tie.thing))
        middle = ((start[0] + end[0]) / 2, (start[1] + end[1]) / 2)
        spots = along_line(canvas, start, end)
        if tie.angle is None:
            words = canvas.language.drawn("angle_not_known", tieback=tie.name)
        elif tie.angle >= STRAIGHT:
            words = f"{tie.name} {tie.angle}°"
        else:
            continue
        with canvas.of(tie.thing):
            canvas.later((words,), middle, spots=spots, near=True)


def _clearing(canvas: Canvas, start: Point, end: Point) -> tuple[Point, ...]:
    """A strip of blank paper along a tieback, so that outlines beneath do not hide it."""
    side = left_of(direction(start, end))
    half = canvas.frame.real(CLEARING / 2)
    return (
        moved(start, along=side, by=half),
        moved(end, along=side, by=half),
        moved(end, along=side, by=-half),
        moved(start, along=side, by=-half),
    )


def along_line(canvas: Canvas, start: Point, end: Point) -> Iterator[Spot]:
    """On both sides of a line, near its middle first; never at its ends, where signs stand."""
    first, last = canvas.frame.to_paper(start), canvas.frame.to_paper(end)
    least = END / max(math.dist(first, last), END)
    for share in (MIDDLE, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8):
        if not least <= share <= 1.0 - least and share != MIDDLE:
            continue
        place = (
            first[0] + (last[0] - first[0]) * share,
            first[1] + (last[1] - first[1]) * share,
        )
        for spot in around(place):
            if spot.cost < NEAR_LINE:
                cost = spot.cost + abs(share - MIDDLE) * 8.0
                yield Spot(spot.at, spot.across, spot.up, cost, points_at=place)
