"""Drawings in: lines, blocks and texts of a DXF file in metres, a roof's outline, its anchors."""

from backspan.exchange.drawings_in.anchors import DrawnAnchor, anchors_of
from backspan.exchange.drawings_in.drawn import (
    BlockPlaced,
    DrawnIn,
    DrawnLine,
    DrawnText,
    Noted,
    Size,
    Units,
)
from backspan.exchange.drawings_in.errors import DrawingError
from backspan.exchange.drawings_in.first_look import MOST_BYTES, MOST_ENTITIES
from backspan.exchange.drawings_in.onto import with_outline
from backspan.exchange.drawings_in.outline import DrawnOutline, roof_outline
from backspan.exchange.drawings_in.reading import is_drawing, read_drawing
from backspan.exchange.drawings_in.rows import DrawnTable, anchor_table
from backspan.exchange.drawings_in.units import DrawingUnit

__all__ = [
    "MOST_BYTES",
    "MOST_ENTITIES",
    "BlockPlaced",
    "DrawingError",
    "DrawingUnit",
    "DrawnAnchor",
    "DrawnIn",
    "DrawnLine",
    "DrawnOutline",
    "DrawnTable",
    "DrawnText",
    "Noted",
    "Size",
    "Units",
    "anchor_table",
    "anchors_of",
    "is_drawing",
    "read_drawing",
    "roof_outline",
    "with_outline",
]
