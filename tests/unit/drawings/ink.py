"""Where the ink of a scene lies on its sheet, for tests of what must stay within it."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from backspan.drawings import Scene
from backspan.drawings.dimensions import dimension_lines
from backspan.drawings.geometry import moved, text_quad, turned
from backspan.drawings.paper import MILLIMETRES, Frame, frame_of
from backspan.drawings.scene import (
    Arc,
    Circle,
    Dimension,
    Hatch,
    Line,
    Point,
    Polygon,
    Polyline,
    Scale,
    Shape,
    Symbol,
)
from backspan.drawings.symbols import glyph
from tests.unit.drawings.inspection import texts_on_paper


def ink_beyond(scene: Scene) -> list[tuple[Point, str]]:
    """Points of shapes (millimetres) that lie off the sheet, with the kind of shape."""
    return [
        (point, kind)
        for point, kind in _ink(scene)
        if not (
            -1e-6 <= point[0] <= scene.width + 1e-6 and -1e-6 <= point[1] <= scene.height + 1e-6
        )
    ]


def _ink(scene: Scene) -> Iterator[tuple[Point, str]]:
    for text in texts_on_paper(scene):
        yield from ((point, text.text) for point in text_quad(text))
    on_sheet = Frame(Scale(MILLIMETRES, ""), (0.0, 0.0))
    for frame, shapes in ((frame_of(scene), scene.drawing), (on_sheet, scene.sheet)):
        for shape in shapes:
            yield from ((point, type(shape).__name__) for point in _points(shape, frame))


def _points(shape: Shape, frame: Frame) -> Iterator[Point]:
    """The outermost points of a shape on paper; texts are not looked at here."""
    match shape:
        case Line(_, start, end):
            yield from map(frame.to_paper, (start, end))
        case Polyline(_, points) | Polygon(_, points) | Hatch(_, points):
            yield from map(frame.to_paper, points)
        case Circle(_, centre, radius) | Arc(_, centre, radius):
            yield from _round(frame.to_paper(centre), frame.drawn(radius))
        case Dimension(_, start, end, line_through, angle):
            first, last, through = map(frame.to_paper, (start, end, line_through))
            lines = dimension_lines(first, last, line_through=through, angle=angle)
            for one in (*lines.extensions, lines.line, *lines.ticks):
                yield from one
        case Symbol():
            yield from _symbol(shape, frame.to_paper(shape.at))
        case _:
            pass


def _symbol(shape: Symbol, at: Point) -> Iterator[Point]:
    own = Frame(Scale(MILLIMETRES / shape.size, ""), (0.0, 0.0))
    drawn: Iterable[Shape] = glyph(shape.name, shape.layer)
    for one in drawn:
        for point in _points(one, own):
            x, y = turned(point, degrees=shape.angle)
            yield (at[0] + x, at[1] + y)


def _round(centre: Point, radius: float) -> Iterator[Point]:
    for along in ((1.0, 0.0), (-1.0, 0.0), (0.0, 1.0), (0.0, -1.0)):
        yield moved(centre, along=along, by=radius)
