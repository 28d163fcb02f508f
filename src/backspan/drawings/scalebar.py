"""The graphic scale bar and the north arrow, on the sheet."""

from __future__ import annotations

from backspan.core.quantities import Style
from backspan.core.words import ENGLISH, Language
from backspan.drawings.canvas import TEXT
from backspan.drawings.geometry import Box
from backspan.drawings.lettering import ASCENT, text_width
from backspan.drawings.paper import MILLIMETRES
from backspan.drawings.scene import (
    BLACK,
    Align,
    Layer,
    Line,
    Point,
    Polygon,
    Scale,
    Shape,
    Symbol,
    SymbolName,
    Text,
)
from backspan.drawings.symbols import WHITE

FOOT = 0.3048
SEGMENTS = 4
LEAST_SEGMENT = 12.0
BAR = 1.8
BEHIND = 5.0

_FEET = (0.5, 1, 2, 4, 5, 10, 20, 40, 50, 100, 200, 500, 1000)
_METRES = (0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500)


def segment(scale: Scale, units: Style) -> tuple[float, float, str]:
    """A round length for one segment of the bar, its millimetres on paper, and its unit."""
    steps, metres, unit = (_METRES, 1.0, "m") if units is Style.METRIC else (_FEET, FOOT, "ft")
    for step in steps:
        drawn = step * metres * MILLIMETRES / scale.ratio
        if drawn >= LEAST_SEGMENT:
            return float(step), drawn, unit
    step = float(steps[-1])
    while step * metres * MILLIMETRES / scale.ratio < LEAST_SEGMENT:
        step *= 2
    return step, step * metres * MILLIMETRES / scale.ratio, unit


def scale_bar(
    scale: Scale,
    units: Style,
    at: Point,
    *,
    segments: int = SEGMENTS,
    language: Language = ENGLISH,
) -> tuple[Shape, ...]:
    """A bar of `segments` whose lower left corner is `at`, with its lengths and the scale."""
    step, drawn, unit = segment(scale, units)
    x, y = at
    shapes: list[Shape] = []
    for place in range(segments):
        left, right = x + place * drawn, x + (place + 1) * drawn
        box = ((left, y), (right, y), (right, y + BAR), (left, y + BAR))
        shapes.append(Polygon(Layer.SHEET, box, WHITE if place % 2 else BLACK))
    for place in range(segments + 1):
        tick = x + place * drawn
        shapes.append(Line(Layer.SHEET, (tick, y), (tick, y + BAR + 1.0)))
        words = f"{place * step:,g}"
        base = (tick, y + BAR + 2.0)
        shapes.append(Text(Layer.LABEL, base, words, TEXT, Align.MIDDLE))
    end = x + segments * drawn
    shapes.append(Text(Layer.LABEL, (end + BEHIND, y + BAR + 2.0), unit, TEXT))
    told = language.drawn("scale_bar", scale=scale.text)
    shapes.append(Text(Layer.LABEL, (end + BEHIND, y - 0.4), told, TEXT))
    return tuple(shapes)


def bar_room(
    scale: Scale,
    units: Style,
    at: Point,
    *,
    segments: int = SEGMENTS,
    language: Language = ENGLISH,
) -> Box:
    """The paper in millimetres that a scale bar at `at` takes with its words."""
    _, drawn, unit = segment(scale, units)
    told = language.drawn("scale_bar", scale=scale.text)
    said = max(text_width(words, height=TEXT) for words in (told, unit))
    right = at[0] + segments * drawn + BEHIND + said
    return (at[0] - LEAST_SEGMENT / 4, at[1] - 1.2, right, at[1] + BAR + 2.0 + TEXT * ASCENT)


def north_arrow(at: Point, *, clockwise: float, size: float = 12.0) -> tuple[Shape, ...]:
    """An arrow that points to true north, `clockwise` degrees from the top of the sheet."""
    return (Symbol(Layer.SHEET, SymbolName.NORTH, at, size, -clockwise),)
