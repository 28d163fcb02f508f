"""The legend: one row for each kind of line and sign that the drawing really uses."""

from __future__ import annotations

from collections.abc import Iterable
from types import MappingProxyType

from backspan.core.words import ENGLISH, Language
from backspan.drawings.canvas import TEXT
from backspan.drawings.lettering import shortened
from backspan.drawings.scene import (
    Hatch,
    Layer,
    Line,
    Point,
    Polygon,
    Shape,
    Symbol,
    SymbolName,
    Text,
)
from backspan.drawings.symbols import WHITE

ROW = 5.4
SAMPLE = 8.5
COLUMNS = 2
FILLED = "#e6e6e6"

#: Which text of drawings names a kind of line or sign, in the order of the legend.
LAYERS = MappingProxyType(
    {
        Layer.EXISTING: "legend_existing",
        Layer.PARAPET: "legend_parapet",
        Layer.OBSTACLE: "legend_obstacle",
        Layer.DROP: "legend_drop",
        Layer.BEAM: "legend_beam",
        Layer.JOINT: "legend_joint",
        Layer.PLATE: "legend_plate",
        Layer.COUNTERWEIGHT: "legend_counterweight",
        Layer.SUSPENSION: "legend_suspension",
        Layer.STAGE: "legend_stage",
        Layer.TIEBACK: "legend_tieback",
        Layer.LIFELINE: "legend_lifeline",
        Layer.SOFTENER: "legend_softener",
        Layer.PLANNED: "legend_planned",
        Layer.NOT_KNOWN: "legend_not_known",
    }
)
SYMBOLS = MappingProxyType(
    {
        SymbolName.ANCHOR: "legend_anchor",
        SymbolName.ANCHOR_CONDITIONAL: "legend_anchor_conditional",
        SymbolName.ANCHOR_OUT: "legend_anchor_out",
        SymbolName.SUSPENSION_POINT: "legend_point",
        SymbolName.FULCRUM: "legend_fulcrum",
        SymbolName.CENTROID: "legend_centroid",
    }
)

_BOXED = frozenset({Layer.PARAPET, Layer.OBSTACLE, Layer.COUNTERWEIGHT, Layer.DROP, Layer.STAGE})
_SYMBOL_LAYER = {
    SymbolName.FULCRUM: Layer.FULCRUM,
    SymbolName.CENTROID: Layer.COUNTERWEIGHT,
    SymbolName.SUSPENSION_POINT: Layer.SUSPENSION,
}


def legend_rows(drawing: Iterable[Shape]) -> tuple[Layer | SymbolName, ...]:
    """The kinds of line and sign in a drawing that have a row, in the order of the legend."""
    kept = tuple(drawing)
    layers = {shape.layer for shape in kept if not isinstance(shape, Symbol | Text)}
    symbols = {shape.name for shape in kept if isinstance(shape, Symbol)}
    return (
        *(layer for layer in LAYERS if layer in layers),
        *(symbol for symbol in SYMBOLS if symbol in symbols),
    )


def legend_height(rows: tuple[Layer | SymbolName, ...]) -> float:
    """The height the legend takes, in millimetres."""
    return ROW * (-(-len(rows) // COLUMNS))


def legend(
    rows: tuple[Layer | SymbolName, ...],
    *,
    left: float,
    right: float,
    top: float,
    language: Language = ENGLISH,
) -> tuple[Shape, ...]:
    """The rows in two columns downwards from `top`: a sample and what it stands for."""
    shapes: list[Shape] = []
    deep = -(-len(rows) // COLUMNS)
    width = (right - left) / COLUMNS
    for place, row in enumerate(rows):
        column, line = divmod(place, deep)
        x, middle = left + column * width, top - ROW * (line + 0.5)
        shapes += _sample(row, (x, middle))
        words = language.drawn(LAYERS[row] if isinstance(row, Layer) else SYMBOLS[row])
        at = (x + SAMPLE + 2.0, middle - TEXT / 2)
        room = width - SAMPLE - 2.0
        shapes.append(Text(Layer.LABEL, at, shortened(words, room=room, height=TEXT), TEXT))
    return tuple(shapes)


def _sample(row: Layer | SymbolName, at: Point) -> tuple[Shape, ...]:
    x, y = at
    if isinstance(row, SymbolName):
        layer = _SYMBOL_LAYER.get(row, Layer.ANCHOR)
        lift = 1.6 if row is SymbolName.FULCRUM else 0.0
        size = 2.4 if row is SymbolName.SUSPENSION_POINT else 3.6
        return (Symbol(layer, row, (x + SAMPLE / 2, y + lift), size),)
    if row in _BOXED:
        box = ((x, y - 1.7), (x + SAMPLE, y - 1.7), (x + SAMPLE, y + 1.7), (x, y + 1.7))
        fill = FILLED if row is Layer.OBSTACLE else WHITE
        outline = Polygon(row, box, fill)
        hatched = row in {Layer.COUNTERWEIGHT, Layer.PARAPET}
        return (
            (outline, Hatch(row, box, 1.2 if row is Layer.COUNTERWEIGHT else 2.0))
            if hatched
            else (outline,)
        )
    return (Line(row, (x, y), (x + SAMPLE, y)),)
