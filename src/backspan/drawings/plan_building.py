"""What stands there before the rig comes: roof outline, parapets, obstacles, anchors, in plan."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from types import MappingProxyType

from backspan.core.model.site import Anchor, AnchorStanding, Edge, Obstacle, Parapet, Roof
from backspan.core.quantities import Style
from backspan.core.words import Language
from backspan.drawings.canvas import Canvas, Rank
from backspan.drawings.edges import edge_line
from backspan.drawings.geometry import bounds, moved
from backspan.drawings.legend import FILLED
from backspan.drawings.scene import Hatch, Layer, Line, Point, Polygon, Symbol, SymbolName
from backspan.drawings.site_things import anchor_thing, edge_thing, obstacle_thing, roof_thing
from backspan.drawings.spots import Spot, beside
from backspan.drawings.symbols import WHITE
from backspan.drawings.values import length_text

ANCHOR_SIZE = 4.0
HATCH = 2.0

ANCHOR_SIGN = {
    AnchorStanding.IN_SERVICE: SymbolName.ANCHOR,
    AnchorStanding.CONDITIONAL: SymbolName.ANCHOR_CONDITIONAL,
    AnchorStanding.OUT_OF_SERVICE: SymbolName.ANCHOR_OUT,
}
_UNITS = ("mm", "m]", "m ")
_LABEL_STATIONS = (0.5, 0.3, 0.7, 0.15, 0.85, 0.05, 0.95)
_LABEL_INWARD = (9.0, 16.0, 26.0, 40.0)


def draw_building(canvas: Canvas, roof: Roof, units: Style) -> None:
    """The outline of the roof, the walls at its edges, the obstacles on it."""
    if len(roof.outline) > 1:
        canvas.add(Polygon(Layer.EXISTING, roof.outline, of=roof_thing(roof, units)))
    for edge in roof.edges:
        with canvas.of(edge_thing(roof.id, edge, units)):
            canvas.add(*_edge_shapes(edge))
    for obstacle in roof.obstacles:
        if obstacle.outline:
            thing = obstacle_thing(roof.id, obstacle, units)
            canvas.add(Polygon(Layer.OBSTACLE, obstacle.outline, FILLED, of=thing))


def draw_anchors(canvas: Canvas, roof: Roof, units: Style) -> None:
    """Every anchor as a circle with its id; one that is not in service says so in words."""
    for anchor in roof.anchors:
        sign = ANCHOR_SIGN[anchor.standing]
        words = _anchor_words(anchor, canvas.language)
        with canvas.of(anchor_thing(roof.id, anchor, units)):
            canvas.add(Symbol(Layer.ANCHOR, sign, anchor.at, ANCHOR_SIZE))
            canvas.later(words, anchor.at, bold=True, rank=Rank.POINT)


def name_building(
    canvas: Canvas, roof: Roof, units: Style, *, taken: Mapping[str, float] = MappingProxyType({})
) -> None:
    """The words of edges and obstacles.

    `taken` is the paper outside each edge, in millimetres, that other things stand on.
    """
    for obstacle in roof.obstacles:
        middle = _middle(obstacle.outline)
        if middle is not None:
            at = canvas.frame.to_paper(middle)
            spots = (Spot(at, 0, 0), *_inside_spots(at))
            words = _obstacle_words(obstacle, units, canvas.language)
            narrow = tuple(part for line in words for part in halved(line))
            with canvas.of(obstacle_thing(roof.id, obstacle, units)):
                canvas.later(words, middle, spots=spots, rank=Rank.POINT, others=(narrow,))
    for edge in roof.edges:
        line = edge_line(edge)
        target = line.at(station=line.length / 2)
        narrow = _edge_words(edge, units, canvas.language)
        wide = tuple(" ".join(narrow[at : at + 2]) for at in range(0, len(narrow), 2))
        lying = abs(line.along[0]) > abs(line.along[1])
        slim = (*narrow[:-2], *halved(narrow[-2]), narrow[-1])
        words, *others = (wide, narrow, slim) if lying else (narrow, slim, wide)
        outside = tuple(_outside_spots(canvas, edge, taken.get(edge.id, 0.0)))
        spots = (*outside, *_edge_spots(canvas, edge))
        with canvas.of(edge_thing(roof.id, edge, units)):
            canvas.later(words, target, spots=spots, rank=Rank.PLACE, others=others)


def _edge_shapes(edge: Edge) -> tuple[Line | Polygon | Hatch, ...]:
    line = edge_line(edge)
    if edge.parapet is None:
        return (Line(Layer.EXISTING, edge.start, edge.end),)
    thick = edge.parapet.thickness.value
    band = (
        line.at(station=0.0),
        line.at(station=line.length),
        line.at(station=line.length, inward=thick),
        line.at(station=0.0, inward=thick),
    )
    return (Polygon(Layer.PARAPET, band, WHITE), Hatch(Layer.PARAPET, band, HATCH))


def edge_name(edge: Edge, language: Language) -> tuple[str, ...]:
    """The name of an edge and what it faces, a line each."""
    name = language.drawn("edge", edge=edge.id)
    return (name, language.drawn("faces", faces=edge.faces)) if edge.faces else (name,)


def _edge_words(edge: Edge, units: Style, language: Language) -> tuple[str, ...]:
    name = edge_name(edge, language)
    if edge.parapet is None:
        return (*name, language.drawn("parapet_not_stated"))
    _, high, thick = parapet_words(edge.parapet, units, language)
    return (*name, language.drawn("parapet_high", high=high), thick)


def parapet_words(parapet: Parapet, units: Style, language: Language) -> tuple[str, str, str]:
    """Material, height and thickness of a parapet, a line each."""
    material, high = parapet.material, length_text(parapet.height.value, units)
    thick = length_text(parapet.thickness.value, units)
    return (
        language.drawn("parapet_of", material=material) if material else language.drawn("parapet"),
        f"{language.drawn('high', height=high)},",
        language.drawn("thick", thickness=thick),
    )


def halved(line: str) -> tuple[str, ...]:
    """A line broken at the space nearest to its middle, never between a number and its unit."""
    spaces = [
        at
        for at, letter in enumerate(line)
        if letter == " " and not line[at + 1 :].startswith(_UNITS)
    ]
    if not spaces:
        return (line,)
    at = min(spaces, key=lambda at: abs(at - len(line) / 2))
    return (line[:at], line[at + 1 :])


def _outside_spots(canvas: Canvas, edge: Edge, taken: float) -> Iterator[Spot]:
    """Along the edge, outside all that is drawn there: it needs no leader to be understood."""
    line = edge_line(edge)
    across, up = round(line.outward[0]), round(line.outward[1])
    for away in (taken + 4.0, taken + 9.0):
        for place in _LABEL_STATIONS:
            at = canvas.frame.to_paper(line.at(station=line.length * place))
            at = moved(at, along=line.outward, by=away)
            yield Spot(at, across, up, (away - taken) * 0.2 + abs(place - 0.5) * 4.0, points_at=at)


def _edge_spots(canvas: Canvas, edge: Edge) -> Iterator[Spot]:
    line = edge_line(edge)
    side = (-line.outward[0], -line.outward[1])
    across, up = round(side[0]), round(side[1])
    for away in _LABEL_INWARD:
        for place in _LABEL_STATIONS:
            x, y = canvas.frame.to_paper(line.at(station=line.length * place))
            at = (x + side[0] * away, y + side[1] * away)
            yield Spot(at, across, up, away * 0.5 + abs(place - 0.5) * 8.0, points_at=(x, y))


def _inside_spots(at: Point) -> Iterator[Spot]:
    for spot in beside(at, side=(1.0, 0.0)):
        yield Spot(spot.at, spot.across, spot.up, spot.cost + 6.0)


def _obstacle_words(obstacle: Obstacle, units: Style, language: Language) -> tuple[str, ...]:
    height = obstacle.height
    words = (
        language.drawn("height_not_measured")
        if height is None
        else language.drawn("high", height=length_text(height.value, units))
    )
    return (f"{obstacle.id} {obstacle.name}", words)


def _anchor_words(anchor: Anchor, language: Language) -> tuple[str, ...]:
    if anchor.standing is AnchorStanding.IN_SERVICE:
        return (anchor.id,)
    return (anchor.id, language.word(anchor.standing))


def _middle(outline: tuple[Point, ...]) -> Point | None:
    box = bounds(outline)
    return None if box is None else ((box[0] + box[2]) / 2, (box[1] + box[3]) / 2)
