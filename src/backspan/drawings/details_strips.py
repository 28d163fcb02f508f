"""Strips of lines on paper: start, end, clips, run and anchor, at no scale."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from backspan.core.model.seen import Route
from backspan.drawings.canvas import TEXT, Canvas
from backspan.drawings.details_lines import Strip
from backspan.drawings.geometry import Box
from backspan.drawings.lettering import LEADING, wrapped
from backspan.drawings.plan_building import ANCHOR_SIGN, ANCHOR_SIZE
from backspan.drawings.scene import (
    Circle,
    Layer,
    Line,
    Point,
    Polygon,
    Polyline,
    Symbol,
    Text,
)
from backspan.drawings.symbols import WHITE

At = Callable[[float, float], Point]

HEAD = 9.0
"""From the top of a strip down to its line, in millimetres."""

START, EYE, BEND, END = 12.0, 20.0, 85.0, 122.0
CLIP, CLIP_STEP, MOST_CLIPS = 1.6, 3.0, 6
EYE_RADIUS = 1.6
UNDER = 6.0
COLUMNS = ((6.0, 44.0), (52.0, 68.0), (122.0, 36.0))
"""Where the words under a strip begin, and how wide they may be."""


def strip_height(strips: Sequence[Strip]) -> float:
    """The height in millimetres that each strip takes, so that the longest words have room."""
    deep = max((len(rows) for strip in strips for rows in _words(strip)), default=0)
    return HEAD + UNDER + deep * TEXT * LEADING + 1.0


def _words(strip: Strip) -> list[list[str]]:
    """The words under a strip, broken into the lines of their columns."""
    told = ((*strip.start, *strip.ending), strip.run, strip.end)
    return [
        [row for line in lines for row in wrapped(line, room=room, height=TEXT)]
        for lines, (_, room) in zip(told, COLUMNS, strict=True)
    ]


def draw_strip(canvas: Canvas, strip: Strip, box: Box) -> None:
    """One line from its start at the left to its end at the right, with its words below."""

    def at(across: float, up: float) -> Point:
        return canvas.frame.to_drawing((box[0] + across, box[3] - HEAD + up))

    title = Text(Layer.LABEL, (box[0] + 6.0, box[3] - 4.5), strip.title, canvas.text, bold=True)
    canvas.write([title])
    start = Layer.BEAM if strip.start_known else Layer.NOT_KNOWN
    canvas.add(Line(start, at(6.0, 0.0), at(START, 0.0)))
    ending = Layer.SUSPENSION if strip.ending_known else Layer.NOT_KNOWN
    radius = canvas.frame.real(EYE_RADIUS)
    canvas.add(
        Line(ending, at(START, 0.0), at(EYE - 2 * EYE_RADIUS, 0.0)),
        Circle(ending, at(EYE - EYE_RADIUS, 0.0), radius, WHITE),
    )
    _run(canvas, strip, at)
    _clips(canvas, strip, at)
    _end(canvas, strip, at)
    for rows, (left, _) in zip(_words(strip), COLUMNS, strict=True):
        for place, words in enumerate(rows):
            base = box[3] - HEAD - UNDER - canvas.text * place * LEADING
            canvas.write([Text(Layer.LABEL, (box[0] + left, base), words, canvas.text)])


def _run(canvas: Canvas, strip: Strip, at: At) -> None:
    """The rope as somebody said it runs: straight, over an edge, round something."""
    if strip.route is Route.OVER_AN_EDGE:
        corner = (at(BEND, 3.0), at(BEND, -3.0), at(BEND + 14.0, -3.0))
        points = (at(EYE, 0.0), at(BEND - 1.0, 4.0), at(END, 0.0))
        canvas.add(Polyline(Layer.EXISTING, corner), Polyline(strip.layer, points))
    elif strip.route is Route.BENT:
        points = (at(EYE, 0.0), at(BEND, 3.0), at(END, 0.0))
        canvas.add(
            Circle(Layer.OBSTACLE, at(BEND, 1.2), canvas.frame.real(1.5), WHITE),
            Polyline(strip.layer, points),
        )
    else:
        canvas.add(Line(strip.layer, at(EYE, 0.0), at(END, 0.0)))
    if strip.softener is not None:
        up = 4.0 if strip.route is Route.OVER_AN_EDGE else 0.0
        ends = (at(BEND - 3.0, up), at(BEND + 2.0, up))
        canvas.add(Polyline(strip.softener, ends))


def _clips(canvas: Canvas, strip: Strip, at: At) -> None:
    """A box across the rope for each clip; more than the paper has are counted in words."""
    for place in range(min(strip.clips or 0, MOST_CLIPS)):
        left = EYE + 2.0 + place * CLIP_STEP
        corners = ((left, -CLIP), (left + 1.2, -CLIP), (left + 1.2, CLIP), (left, CLIP))
        points = tuple(at(x, y) for x, y in corners)
        canvas.add(Polygon(Layer.FULCRUM, points, WHITE))


def _end(canvas: Canvas, strip: Strip, at: At) -> None:
    if strip.anchor is not None:
        sign = ANCHOR_SIGN[strip.anchor]
        canvas.add(Symbol(Layer.ANCHOR, sign, at(END + ANCHOR_SIZE / 2, 0.0), ANCHOR_SIZE))
        return
    layer = Layer.FULCRUM if strip.end_known else Layer.NOT_KNOWN
    corners = ((END, -2.5), (END + 8.0, -2.5), (END + 8.0, 2.5), (END, 2.5))
    canvas.add(Polygon(layer, tuple(at(x, y) for x, y in corners), WHITE))
