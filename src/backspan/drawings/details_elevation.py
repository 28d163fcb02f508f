"""A bearing drawn to scale: the elevation along the beam, and plate and pad in plan."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from backspan.core.model.project import Project
from backspan.core.model.rigs import FulcrumKind
from backspan.drawings.canvas import Canvas
from backspan.drawings.details_bearing import Bearing
from backspan.drawings.geometry import Box
from backspan.drawings.lettering import ASCENT, LEADING, wrapped
from backspan.drawings.scene import Hatch, Layer, Line, Point, Polygon, Polyline, Shape, Text
from backspan.drawings.symbols import WHITE
from backspan.drawings.values import Known, evidence_text, length_text, own_length, pressure_text

LARGEST_SIDE = 39.0
"""The most paper that the longest side of a plate or pad takes, in millimetres."""

# Places in a cell, from its left side, and what is drawn at no scale, in millimetres.
ELEVATION, WORDS, PLAN = 32.0, 57.0, 131.0
WORDS_WIDE = 46.0
SURFACE = 13.0
"""The least from the foot of a cell up to the surface."""

STANDS = 34.0
"""What an elevation takes above its surface, as a rule."""
BODY, BODY_HALF = 12.0, 5.0
BEAM_HALF, BEAM_DEPTH, GROUND_HALF = 21.0, 5.0, 23.0
PAD_DEPTH = 2.5
BAND = 2.2
BETWEEN = 1.8

#: The side of a plate that nobody stated, in millimetres: dashed, and no answer uses it.
UNSTATED_SIDE = 24.0


@dataclass(frozen=True, slots=True)
class Cell:
    """One bearing on its canvas, within a box of the paper."""

    canvas: Canvas
    project: Project
    bearing: Bearing
    box: Box

    @property
    def surface(self) -> float:
        """From the foot of the cell up to the surface, so that the elevation lies in its middle."""
        return max(SURFACE, (self.box[3] - self.box[1] - 8.0 - STANDS) / 2)

    def side(self, value: Known | None, unstated: float = UNSTATED_SIDE) -> float:
        """Paper that a length takes; a nominal one where it is not stated."""
        return unstated if value is None else self.canvas.frame.drawn(value.value)

    def rectangle(self, layer: Layer, box: Box, fill: str | None = WHITE) -> Polygon:
        """An upright outline on the paper of the cell."""
        left, low, right, high = box
        points = ((left, low), (right, low), (right, high), (left, high))
        return Polygon(layer, tuple(_at(self, *point) for point in points), fill)


def _at(cell: Cell, across: float, up: float) -> Point:
    """The drawing point that lies so far (paper) from the lower left of the cell."""
    return cell.canvas.frame.to_drawing((cell.box[0] + across, cell.box[1] + up))


def draw_bearing(cell: Cell) -> None:
    """The detail of one bearing: its title, its elevation with words, plate and pad in plan."""
    top = cell.box[3] - cell.box[1]
    title = Text(
        Layer.LABEL,
        (cell.box[0] + 6.0, cell.box[3] - 6.0),
        cell.bearing.title,
        cell.canvas.text,
        bold=True,
    )
    cell.canvas.write([title])
    places = _elevation(cell)
    _words(cell, places)
    _plan(cell, middle=(PLAN, (top - 8.0) / 2))


def _layer(layer: Layer, *sides: Known | None) -> Layer:
    return Layer.NOT_KNOWN if any(side is None for side in sides) else layer


def _elevation(cell: Cell) -> list[tuple[Point, tuple[str, ...]]]:
    """What is drawn from the surface up, each with the words that tell it."""
    bearing, canvas = cell.bearing, cell.canvas
    ground, left, right = cell.surface, ELEVATION - GROUND_HALF, ELEVATION + GROUND_HALF
    band = ((left, ground - BAND), (right, ground - BAND), (right, ground), (left, ground))
    canvas.add(
        Line(Layer.EXISTING, _at(cell, left, ground), _at(cell, right, ground)),
        Hatch(Layer.EXISTING, tuple(_at(cell, *corner) for corner in band), 1.6),
    )
    told = [(_at(cell, ELEVATION + BEAM_HALF, cell.surface), tuple(_surface_words(cell)))]
    up = ground
    if bearing.pad is not None:
        length, _, thick = bearing.pad
        half, deep = cell.side(length) / 2, cell.side(thick, PAD_DEPTH)
        layer = _layer(Layer.PLATE, length, thick)
        box = (ELEVATION - half, up, ELEVATION + half, up + deep)
        canvas.add(cell.rectangle(layer, box))
        told.append(
            (_at(cell, ELEVATION + half, up + deep / 2), _size_words(cell, "pad_of", bearing.pad))
        )
        up += deep
    half = cell.side(bearing.plate[0]) / 2
    plate = _layer(Layer.PLATE, bearing.plate[0])
    canvas.add(Line(plate, _at(cell, ELEVATION - half, up), _at(cell, ELEVATION + half, up)))
    told.append((_at(cell, ELEVATION + half, up), _size_words(cell, "plate_of", bearing.plate)))
    up = _body(cell, up, told)
    _beam(cell, up, told)
    return told


def _body(cell: Cell, up: float, told: list[tuple[Point, tuple[str, ...]]]) -> float:
    """What stands between plate and beam, cut by a break where it is higher than the paper has."""
    bearing, canvas = cell.bearing, cell.canvas
    height = None if bearing.height is None else cell.surface + cell.side(bearing.height)
    whole = height is not None and up < height <= cell.surface + 2 * BODY
    top = height if whole and height is not None else up + BODY
    if bearing.drawn_as is FulcrumKind.PARAPET and bearing.height is None:
        top = up
    stated = bearing.stated and (bearing.height is not None or not bearing.asks_height)
    layer = Layer.FULCRUM if stated else Layer.NOT_KNOWN
    if top > up:
        canvas.add(*_legs(cell, layer, up, top, whole=whole))
    told.append((_at(cell, ELEVATION + BODY_HALF, (up + top) / 2), tuple(_body_words(cell))))
    if whole and bearing.height is not None:
        canvas.dimension(
            _at(cell, ELEVATION - BEAM_HALF, cell.surface),
            _at(cell, ELEVATION - BEAM_HALF, top),
            line_through=_at(cell, ELEVATION - BEAM_HALF - 2.0, cell.surface),
            angle=90.0,
            lines=(own_length(bearing.height.value, cell.project.units),),
        )
    return top


def _legs(cell: Cell, layer: Layer, low: float, high: float, *, whole: bool) -> Iterator[Shape]:
    if cell.bearing.drawn_as in {FulcrumKind.PAD, FulcrumKind.PARAPET}:
        yield cell.rectangle(layer, (ELEVATION - BODY_HALF, low, ELEVATION + BODY_HALF, high))
    else:
        for side in (-1.0, 1.0):
            foot, head = ELEVATION + side * BODY_HALF, ELEVATION + side * BODY_HALF * 0.6
            yield Line(layer, _at(cell, foot, low), _at(cell, head, high))
    if not whole:
        middle = (low + high) / 2
        zigzag = ((-7.0, 0.0), (-1.0, 0.0), (-0.4, 1.2), (0.4, -1.2), (1.0, 0.0), (7.0, 0.0))
        points = tuple(_at(cell, ELEVATION + x, middle + y) for x, y in zigzag)
        yield Polyline(Layer.EXISTING, points)


def _beam(cell: Cell, up: float, told: list[tuple[Point, tuple[str, ...]]]) -> None:
    depth = cell.bearing.depth
    high = up + cell.side(depth, BEAM_DEPTH)
    left, right = ELEVATION - BEAM_HALF, ELEVATION + BEAM_HALF
    layer = Layer.BEAM if depth is not None else Layer.NOT_KNOWN
    cell.canvas.add(cell.rectangle(layer, (left, up, right, high)))
    told.append((_at(cell, right, (up + high) / 2), tuple(_beam_words(cell))))


def _surface_words(cell: Cell) -> Iterator[str]:
    language, strength = cell.canvas.language, cell.bearing.strength
    if strength is None:
        yield f"{cell.bearing.surface}:"
        yield language.drawn("carries_not_stated")
        return
    units = cell.project.units
    carries = language.drawn("carries", pressure=pressure_text(strength.value, units))
    yield f"{cell.bearing.surface}: {carries}"
    evidence = (
        language.drawn("evidence_not_stated")
        if strength.evidence is None
        else language.word(strength.evidence)
    )
    yield evidence if strength.document is None else f"{evidence}: {strength.document}"


def _size_words(cell: Cell, text: str, sides: tuple[Known | None, ...]) -> tuple[str, ...]:
    """Length x width x thickness, each that is not stated as the blank it is."""
    language, units = cell.canvas.language, cell.project.units
    blank = language.drawn("not_stated")
    if not any(sides):
        return (language.drawn(text, sides=blank),)
    lengths = (blank if one is None else length_text(one.value, units) for one in sides)
    stated = [evidence_text(one, units, language) for one in sides if one is not None]
    return (language.drawn(text, sides=" x ".join(lengths)), "; ".join(dict.fromkeys(stated)))


def _body_words(cell: Cell) -> Iterator[str]:
    bearing, language = cell.bearing, cell.canvas.language
    if bearing.height is not None:
        height = length_text(bearing.height.value, cell.project.units)
        yield language.drawn("kind_high", kind=bearing.kind, height=height)
        yield evidence_text(bearing.height, cell.project.units, language)
    elif bearing.asks_height:
        yield language.drawn("kind_not_measured", kind=bearing.kind)
    else:
        yield bearing.kind


def _beam_words(cell: Cell) -> Iterator[str]:
    language, depth = cell.canvas.language, cell.bearing.depth
    kind = cell.project.kit.beam(cell.bearing.beam)
    shape = None if kind is None or kind.section is None else kind.section.shape
    name = "" if kind is None else kind.id
    yield language.drawn("beam_type", beam=name or language.drawn("not_stated"))
    if shape is not None:
        yield language.drawn("section_shape", shape=shape)
    if depth is None:
        yield language.drawn("depth_not_stated")
    else:
        yield language.drawn("deep", depth=length_text(depth.value, cell.project.units))


def _words(cell: Cell, told: list[tuple[Point, tuple[str, ...]]]) -> None:
    """The words from the beam down beside the elevation, each with a line to its thing."""
    canvas, text = cell.canvas, cell.canvas.text
    step, top = text * LEADING, cell.box[3] - cell.box[1] - 8.0
    blocks = [
        (target, [row for line in lines for row in wrapped(line, room=WORDS_WIDE, height=text)])
        for target, lines in reversed(told)
    ]
    deep = sum(len(rows) * step + BETWEEN for _, rows in blocks)
    y = min(top, max(cell.surface + STANDS / 2 + deep / 2 - 4.0, deep + 1.0))
    for target, rows in blocks:
        for place, words in enumerate(rows):
            base = y - text * ASCENT - place * step
            at = (cell.box[0] + WORDS, cell.box[1] + base)
            canvas.write([Text(Layer.LABEL, at, words, text)])
        middle = y - text * ASCENT + text / 2
        canvas.arrow(Layer.LABEL, _at(cell, WORDS - 1.0, middle), target)
        y -= len(rows) * step + BETWEEN


def _plan(cell: Cell, *, middle: Point) -> None:
    """Plate and pad from above, with their sides; the length lies along the beam as drawn."""
    bearing = cell.bearing
    sizes = []
    if bearing.pad is not None:
        sizes.append((bearing.pad[:2], -1.0))
    sizes.append((bearing.plate, 1.0))
    x, y = middle
    reach = [max(cell.side(sides[at]) for sides, _ in sizes) / 2 for at in (0, 1)]
    for (length, width), _ in sizes:
        along, across = cell.side(length) / 2, cell.side(width) / 2
        layer = _layer(Layer.PLATE, length, width)
        cell.canvas.add(cell.rectangle(layer, (x - along, y - across, x + along, y + across)))
    for (length, width), side in sizes:
        along, across = cell.side(length) / 2, cell.side(width) / 2
        # The plate is dimensioned below and at the right, the pad above and at the left.
        if length is not None:
            cell.canvas.dimension(
                _at(cell, x - along, y - side * across),
                _at(cell, x + along, y - side * across),
                line_through=_at(cell, x, y - side * (reach[1] + 5.0)),
                angle=0.0,
                lines=(own_length(length.value, cell.project.units),),
            )
        if width is not None:
            cell.canvas.dimension(
                _at(cell, x + side * along, y - across),
                _at(cell, x + side * along, y + across),
                line_through=_at(cell, x + side * (reach[0] + 5.0), y),
                angle=90.0,
                lines=(own_length(width.value, cell.project.units),),
            )
