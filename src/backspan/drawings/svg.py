"""A scene as SVG text: self-contained, the same bytes for the same scene, safe with any text."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from functools import cache, lru_cache
from typing import TypeVar
from xml.sax.saxutils import escape, quoteattr

from backspan.drawings.dimensions import dimension_lines
from backspan.drawings.geometry import hatch_lines, moved, text_quad, turned
from backspan.drawings.lettering import font_size, plain
from backspan.drawings.paper import MILLIMETRES, Frame, frame_of
from backspan.drawings.scene import (
    PENS,
    Align,
    Arc,
    Circle,
    Dimension,
    Hatch,
    Layer,
    Line,
    Point,
    Polygon,
    Polyline,
    Scale,
    Scene,
    Shape,
    Symbol,
    SymbolName,
    Text,
)
from backspan.drawings.symbols import glyph
from backspan.drawings.things import Thing

FONTS = "Arial, Helvetica, 'Liberation Sans', 'DejaVu Sans', 'Source Sans Pro', sans-serif"
HATCH_PEN = 0.13
TICK_PEN = 0.4

S = TypeVar("S", bound=Shape)


def to_svg(scene: Scene) -> str:
    """The sheet as an SVG document, its size in millimetres; each part can be shown alone."""
    width, height = _number(scene.width), _number(scene.height)
    root = (
        f'<svg xmlns="http://www.w3.org/2000/svg" width="{width}mm" height="{height}mm" '
        f'viewBox="0 0 {width} {height}" role="img" font-family="{FONTS}" fill="none" '
        'stroke-linecap="round" stroke-linejoin="round">'
    )
    lines = [
        '<?xml version="1.0" encoding="UTF-8"?>',
        root,
        f"<title>{escape(plain(scene.title))}</title>",
        f"<desc>{escape(plain(scene.description))}</desc>",
    ]
    for part in scene.parts:
        left, bottom, right, top = part.box
        box = (left, scene.height - top, right - left, top - bottom)
        numbers = " ".join(_number(value) for value in box)
        lines.append(f'<view id={quoteattr(part.id)} viewBox="{numbers}"/>')
    lines.append(f'<rect width="{width}" height="{height}" fill="#ffffff"/>')
    lines += _Writer(scene.height, frame_of(scene)).group("drawing", scene.drawing)
    on_sheet = Frame(Scale(MILLIMETRES, ""), (0.0, 0.0))
    lines += _Writer(scene.height, on_sheet).group("sheet", scene.sheet)
    return "\n".join([*lines, "</svg>", ""])


def svg_group(name: str, shapes: Iterable[Shape], frame: Frame, *, height: float) -> str:
    """Shapes that lie on a sheet of that height as one group of an SVG document, named `name`."""
    return "\n".join(_Writer(height, frame).group(name, shapes))


def _number(value: float) -> str:
    text = f"{value:.3f}".rstrip("0").rstrip(".")
    return "0" if text in {"", "-0"} else text


class _Writer:
    """Writes shapes of one frame as SVG elements; y is turned to run down the page."""

    def __init__(self, sheet_height: float, frame: Frame) -> None:
        self._height = sheet_height
        self._frame = frame

    def group(self, name: str, shapes: Iterable[Shape]) -> list[str]:
        """All shapes in their order; texts come last so that no line is drawn over them."""
        kept = tuple(shapes)
        texts = [shape for shape in kept if isinstance(shape, Text)]
        texts += [shape.text for shape in kept if isinstance(shape, Dimension)]
        lines = [f"<g data-part={quoteattr(name)}>"]
        lines += _by_thing(kept, self.elements)
        lines += (self._mask(text) for text in texts if text.masked)
        lines += _by_thing(texts, lambda text: [self._text(text)])
        return [*lines, "</g>"]

    def _paper(self, point: Point) -> Point:
        x, y = self._frame.to_paper(point)
        return (x, self._height - y)

    def _points(self, points: Iterable[Point]) -> str:
        on_paper = (self._paper(point) for point in points)
        return " ".join(f"{_number(x)},{_number(y)}" for x, y in on_paper)

    def elements(self, shape: Shape) -> list[str]:
        """A shape as elements; texts are written apart."""
        match shape:
            case Line(layer, start, end):
                return [self._path(layer, (start, end))]
            case Polyline(layer, points):
                return [self._path(layer, points)]
            case Polygon(layer, points, fill, outlined):
                pen = _stroke(layer) if outlined else ""
                return [f'<polygon points="{self._points(points)}"{_fill(fill)}{pen}/>']
            case Circle(layer, centre, radius, fill):
                x, y = self._paper(centre)
                drawn = _number(self._frame.drawn(radius))
                at = f'cx="{_number(x)}" cy="{_number(y)}" r="{drawn}"'
                return [f"<circle {at}{_fill(fill)}{_stroke(layer)}/>"]
            case Arc():
                return [self._path(shape.layer, _arc_points(shape))]
            case Dimension():
                return self._dimension(shape)
            case Hatch():
                return self._hatch(shape)
            case Symbol():
                return self._symbol(shape)
            case Text():
                return []

    def _path(self, layer: Layer, points: Iterable[Point]) -> str:
        return f'<polyline points="{self._points(points)}"{_stroke(layer)}/>'

    def _dimension(self, shape: Dimension) -> list[str]:
        lines = dimension_lines(
            self._frame.to_paper(shape.start),
            self._frame.to_paper(shape.end),
            line_through=self._frame.to_paper(shape.line_through),
            angle=shape.angle,
        )
        on_paper = _Writer(self._height, Frame(Scale(MILLIMETRES, ""), (0.0, 0.0)))
        thin = [on_paper._path(shape.layer, line) for line in (*lines.extensions, lines.line)]
        colour = PENS[shape.layer].colour
        ticks = (on_paper._points(tick) for tick in lines.ticks)
        pen = f'stroke="{colour}" stroke-width="{TICK_PEN}"'
        return [*thin, *(f'<polyline points="{tick}" {pen}/>' for tick in ticks)]

    def _hatch(self, shape: Hatch) -> list[str]:
        outline = [self._frame.to_paper(point) for point in shape.points]
        lines = hatch_lines(outline, spacing=shape.spacing, angle=shape.angle)
        if not lines:
            return []
        path = "".join(
            f"M{_number(start[0])} {_number(self._height - start[1])}"
            f"L{_number(end[0])} {_number(self._height - end[1])}"
            for start, end in lines
        )
        colour = PENS[shape.layer].colour
        return [f'<path d="{path}" stroke="{colour}" stroke-width="{HATCH_PEN}"/>']

    def _symbol(self, shape: Symbol) -> list[str]:
        x, y = self._paper(shape.at)
        turn = f" rotate({_number(-shape.angle)})" if shape.angle else ""
        lines = _sign(shape.name, shape.layer, shape.size)
        if not lines:
            return []
        return [f'<g transform="translate({_number(x)},{_number(y)}){turn}">', *lines, "</g>"]

    def _mask(self, text: Text) -> str:
        on_paper = _on_paper(text, self._frame)
        points = " ".join(
            f"{_number(x)},{_number(self._height - y)}" for x, y in text_quad(on_paper)
        )
        return f'<polygon points="{points}" fill="#ffffff"/>'

    def _text(self, text: Text) -> str:
        x, y = self._paper(text.at)
        at = f'x="{_number(x)}" y="{_number(y)}"'
        anchor = "" if text.align is Align.START else f' text-anchor="{text.align}"'
        weight = ' font-weight="bold"' if text.bold else ""
        turn = ""
        if text.angle:
            turn = f' transform="rotate({_number(-text.angle)} {_number(x)} {_number(y)})"'
        size, colour = _number(font_size(text.height)), PENS[text.layer].colour
        content = escape(plain(text.text))
        return (
            f'<text {at} font-size="{size}" fill="{colour}"{anchor}{weight}{turn}>{content}</text>'
        )


def _by_thing(shapes: Iterable[S], written: Callable[[S], list[str]]) -> list[str]:
    """Shapes in their order; those of one thing that follow each other stand in one group."""
    lines: list[str] = []
    last: Thing | None = None
    for shape in shapes:
        elements = written(shape)
        of = shape.of
        if of is not last and elements and of != last:
            if last is not None:
                lines.append("</g>")
            if of is not None:
                lines.append(f'<g data-thing="{of.kind}" data-path={quoteattr(of.where)}>')
            last = of
        lines += elements
    if last is not None:
        lines.append("</g>")
    return lines


def _on_paper(text: Text, frame: Frame) -> Text:
    return Text(
        text.layer,
        frame.to_paper(text.at),
        text.text,
        text.height,
        text.align,
        text.angle,
        bold=text.bold,
    )


@lru_cache(maxsize=256)
def _sign(name: SymbolName, layer: Layer, size: float) -> tuple[str, ...]:
    """A sign about its own point, on paper."""
    inner = _Writer(0.0, Frame(Scale(MILLIMETRES / size, ""), (0.0, 0.0)))
    return tuple(line for one in glyph(name, layer) for line in inner.elements(one))


@cache
def _stroke(layer: Layer) -> str:
    pen = PENS[layer]
    dashes = ""
    if pen.dashes:
        dashes = f' stroke-dasharray="{" ".join(_number(dash) for dash in pen.dashes)}"'
    return f' stroke="{pen.colour}" stroke-width="{_number(pen.width)}"{dashes}'


def _fill(fill: str | None) -> str:
    return "" if fill is None else f' fill="{fill}"'


def _arc_points(arc: Arc) -> tuple[Point, ...]:
    steps = max(4, int(abs(arc.end_angle - arc.start_angle) // 10))
    span = arc.end_angle - arc.start_angle
    rims = (
        turned((arc.radius, 0.0), degrees=arc.start_angle + span * step / steps)
        for step in range(steps + 1)
    )
    return tuple(moved(arc.centre, along=rim, by=1.0) for rim in rims)
