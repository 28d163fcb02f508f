"""Each shape of a scene as the DXF entity that says the same."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from backspan.drawings.dxf_attributes import HEIGHT, attach, mark
from backspan.drawings.dxf_tables import BOLD, DIMENSIONS, STYLE, block_name
from backspan.drawings.geometry import left_of, moved, turned
from backspan.drawings.lettering import plain, text_width
from backspan.drawings.paper import Frame
from backspan.drawings.scene import (
    BLACK,
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
    Shape,
    Symbol,
    Text,
)

if TYPE_CHECKING:
    from ezdxf.layouts.base import BaseLayout

BY_LAYER = 256


@dataclass(frozen=True, slots=True)
class Space:
    """Where entities go, and what one unit of a shape's points measures there.

    `line_scale` is the factor on dash patterns; `in_block` puts all on the layer that takes the
    layer of what refers to it.
    """

    layout: BaseLayout
    frame: Frame
    unit: float
    line_scale: float = 1.0
    in_block: bool = False

    def at(self, point: Point) -> Point:
        """A point of a shape in the units of the file."""
        return (point[0] * self.unit, point[1] * self.unit)

    def pen(self, on_paper: float) -> float:
        """Millimetres on paper in the units of the file."""
        return self.frame.real(on_paper) * self.unit

    def attributes(self, layer: Layer) -> dict[str, Any]:
        """The layer of an entity, and its own scale of dashes where it needs one."""
        found: dict[str, Any] = {"layer": "0" if self.in_block else str(layer)}
        if self.line_scale != 1.0:
            found["ltscale"] = self.line_scale
        return found


def add_shapes(space: Space, shapes: Iterable[Shape]) -> None:
    """Every shape as an entity, in their order."""
    for shape in shapes:
        match shape:
            case Hatch():
                _hatch(space, shape)
            case Symbol():
                _insert(space, shape)
            case Text():
                _text(space, shape)
            case Dimension():
                _dimension(space, shape)
            case _:
                _lines(space, shape)


def _lines(space: Space, shape: Line | Polyline | Polygon | Circle | Arc) -> None:
    layout, given = space.layout, space.attributes(shape.layer)
    match shape:
        case Line(_, start, end):
            drawn = layout.add_line(space.at(start), space.at(end), dxfattribs=given)
            mark(drawn, shape.of)
        case Polyline(_, points):
            course = layout.add_lwpolyline([space.at(point) for point in points], dxfattribs=given)
            mark(course, shape.of)
        case Polygon(_, points, fill, outlined):
            _fill(space, shape.layer, points, fill)
            if outlined:
                ring = [space.at(point) for point in points]
                outline = layout.add_lwpolyline(ring, close=True, dxfattribs=given)
                mark(outline, shape.of)
        case Circle(_, centre, radius, fill):
            circle = layout.add_circle(space.at(centre), radius * space.unit, dxfattribs=given)
            mark(circle, shape.of)
            _fill(space, shape.layer, _rim(centre, radius), fill)
        case Arc(_, centre, radius, start_angle, end_angle):
            arc = layout.add_arc(
                space.at(centre), radius * space.unit, start_angle, end_angle, dxfattribs=given
            )
            mark(arc, shape.of)


def _rim(centre: Point, radius: float) -> tuple[Point, ...]:
    return tuple(
        moved(centre, along=turned((1.0, 0.0), degrees=step * 15.0), by=radius)
        for step in range(24)
    )


def _fill(space: Space, layer: Layer, points: tuple[Point, ...], fill: str | None) -> None:
    # White is the paper, grey a tint of it: on a dark screen both would hide the lettering.
    if fill != BLACK:
        return
    hatch = space.layout.add_hatch(color=BY_LAYER, dxfattribs=space.attributes(layer))
    hatch.paths.add_polyline_path([space.at(point) for point in points], is_closed=True)


def _hatch(space: Space, shape: Hatch) -> None:
    hatch = space.layout.add_hatch(color=BY_LAYER, dxfattribs=space.attributes(shape.layer))
    away = left_of(turned((1.0, 0.0), degrees=shape.angle))
    step = space.pen(shape.spacing)
    lines = [[shape.angle, (0.0, 0.0), (away[0] * step, away[1] * step), []]]
    hatch.set_pattern_fill("LINES", definition=lines)
    hatch.paths.add_polyline_path([space.at(point) for point in shape.points], is_closed=True)


def _insert(space: Space, shape: Symbol) -> None:
    size = space.pen(shape.size)
    insert = space.layout.add_blockref(
        block_name(shape.name),
        space.at(shape.at),
        dxfattribs={
            **space.attributes(shape.layer),
            "xscale": size,
            "yscale": size,
            "zscale": size,
            "rotation": shape.angle,
        },
    )
    if shape.of is not None:
        attach(insert, shape.of, height=space.pen(HEIGHT))


def _text(space: Space, shape: Text) -> None:
    from ezdxf.enums import TextEntityAlignment

    places = {
        Align.START: TextEntityAlignment.LEFT,
        Align.MIDDLE: TextEntityAlignment.CENTER,
        Align.END: TextEntityAlignment.RIGHT,
    }
    # Two percent signs start a control code in a DXF text.
    words = plain(shape.text).replace("%%", "% %")
    text = space.layout.add_text(
        words,
        height=space.pen(shape.height),
        rotation=shape.angle,
        dxfattribs={**space.attributes(shape.layer), "style": BOLD if shape.bold else STYLE},
    )
    text.set_placement(space.at(shape.at), align=places[shape.align])


def _dimension(space: Space, shape: Dimension) -> None:
    text = shape.text
    along = turned((1.0, 0.0), degrees=text.angle)
    width = space.pen(text_width(text.text, height=text.height))
    shift = {Align.START: width / 2, Align.MIDDLE: 0.0, Align.END: -width / 2}[text.align]
    base = moved(space.at(text.at), along=along, by=shift)
    middle = moved(base, along=left_of(along), by=space.pen(text.height) / 2)
    dimension = space.layout.add_linear_dim(
        base=space.at(shape.line_through),
        p1=space.at(shape.start),
        p2=space.at(shape.end),
        angle=shape.angle,
        text=_dimension_text(text.text),
        text_rotation=text.angle,
        location=middle,
        dimstyle=DIMENSIONS,
        dxfattribs=space.attributes(shape.layer),
    )
    dimension.render()


def _dimension_text(text: str) -> str:
    """The text as it is, none of it taken for a control code of the format."""
    escaped = plain(text).replace("\\", "\\\\").replace("{", "\\{").replace("}", "\\}")
    return escaped.replace("<>", "< >").replace("%%", "% %")
