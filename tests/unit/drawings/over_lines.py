"""Which texts of a finished scene lie over the lines that somebody has to read."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from backspan.drawings import Scene
from backspan.drawings.dimensions import dimension_lines
from backspan.drawings.geometry import Segment, overlap, text_quad
from backspan.drawings.paper import frame_of
from backspan.drawings.scene import Dimension, Layer, Line, Polygon
from tests.unit.drawings.inspection import texts_on_paper

READ = frozenset(
    {
        Layer.BEAM,
        Layer.COUNTERWEIGHT,
        Layer.DROP,
        Layer.FULCRUM,
        Layer.PLATE,
        Layer.SUSPENSION,
        Layer.TIEBACK,
    }
)


def over_lines(scene: Scene) -> set[tuple[str, str]]:
    """Texts with what they lie over: a dimension, its extension lines, the rig, a drop's box."""
    lines = tuple(_lines(scene))
    return {
        (text.text, name)
        for text in texts_on_paper(scene)
        for name, line in lines
        if overlap(line, text_quad(text))
    }


def _lines(scene: Scene) -> Iterator[tuple[str, Segment]]:
    frame = frame_of(scene)
    for shape in scene.drawing:
        if isinstance(shape, Dimension):
            first, last, through = map(frame.to_paper, (shape.start, shape.end, shape.line_through))
            drawn = dimension_lines(first, last, line_through=through, angle=shape.angle)
            for line in (drawn.line, *drawn.extensions):
                yield f"dimension: {shape.text.text}", line
        elif isinstance(shape, Line) and shape.layer in READ:
            yield shape.layer, (frame.to_paper(shape.start), frame.to_paper(shape.end))
        elif isinstance(shape, Polygon) and shape.outlined and shape.layer in READ:
            corners = tuple(map(frame.to_paper, shape.points))
            for line in pairwise((*corners, corners[0])):
                yield shape.layer, line
