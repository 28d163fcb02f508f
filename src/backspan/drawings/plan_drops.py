"""The drops along the edges of a roof: numbered strips with their answers, and their widths."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass

from backspan.core.findings import Review, Verdict
from backspan.core.model.rigs import Drop
from backspan.core.model.site import Edge, Roof
from backspan.core.quantities import Style
from backspan.core.words import Language
from backspan.drawings.canvas import TEXT, Canvas
from backspan.drawings.dimensions import OVERSHOOT
from backspan.drawings.edges import EdgeLine, edge_line
from backspan.drawings.geometry import (
    angle_of,
    corners_around,
    left_of,
    moved,
    readable,
    text_quad,
    turned,
)
from backspan.drawings.lettering import plain, text_width
from backspan.drawings.paper import Frame
from backspan.drawings.rig_things import drop_thing
from backspan.drawings.scene import Align, Layer, Point, Polygon, Text
from backspan.drawings.spots import beside
from backspan.drawings.symbols import WHITE, answer_layer, answer_sign
from backspan.drawings.values import length_text, own_length

GAP = 2.0
DEPTH = 11.0
MOST_TIERS = 4
"""Drops that overlap one another lie further out, up to this many deep."""

CHAIN = 5.5
SIGN = 4.0
SMALLEST = 0.02
"""A gap between drops that is not dimensioned, in metres."""

TITLE = 3.0


@dataclass(frozen=True, slots=True)
class Strip:
    """A drop in plan: its edge, and how many strips lie between it and the face."""

    drop: Drop
    line: EdgeLine
    tier: int
    verdict: Verdict | None


def draw_drops(
    canvas: Canvas,
    roof: Roof,
    drops: Sequence[Drop],
    reviews: Mapping[str, Review],
    units: Style,
    *,
    gaps: bool = True,
) -> None:
    """The strips of all drops of a roof, outside its edges, and a chain of their widths.

    Without `gaps` only the drops are dimensioned, not what lies before and between them.
    """
    for edge in roof.edges:
        strips = strips_over(edge, drops, reviews)
        for strip in strips:
            draw_strip(canvas, strip, reviews.get(strip.drop.id), units)
        draw_widths(canvas, strips, units, gaps=gaps)


def draw_strip(canvas: Canvas, strip: Strip, review: Review | None, units: Style) -> None:
    """One strip with its answer."""
    middle = strip.line.at(station=strip.drop.start + strip.drop.width.value / 2)
    with canvas.of(drop_thing(strip.drop, review, units, at=middle)):
        _draw_strip(canvas, strip)


def drops_extent(frame: Frame, roof: Roof, drops: Sequence[Drop]) -> Iterator[Point]:
    """Points (metres) as far out as the strips of a roof and their dimensions reach on paper."""
    for edge in roof.edges:
        for strip in strips_over(edge, drops, {}):
            far = frame.real(GAP + (strip.tier + 1) * (DEPTH + GAP) + CHAIN + OVERSHOOT)
            end = strip.drop.start + strip.drop.width.value
            yield strip.line.at(station=strip.drop.start, inward=-far)
            yield strip.line.at(station=end, inward=-far)


def strips_depth(roof: Roof, drops: Sequence[Drop]) -> dict[str, float]:
    """How far out, in millimetres on paper, strips and their dimensions lie, by edge id."""
    depths = {}
    for edge in roof.edges:
        strips = strips_over(edge, drops, {})
        tiers = max((strip.tier + 1 for strip in strips), default=0)
        depths[edge.id] = GAP + tiers * (DEPTH + GAP) + CHAIN + OVERSHOOT if tiers else 0.0
    return depths


def strips_over(
    edge: Edge, drops: Iterable[Drop], reviews: Mapping[str, Review]
) -> tuple[Strip, ...]:
    """The strips of those of the drops that lie over an edge."""
    on_edge = sorted((drop for drop in drops if drop.edge == edge.id), key=lambda drop: drop.start)
    return strips_on(edge_line(edge), on_edge, reviews)


def strips_on(
    line: EdgeLine, drops: Sequence[Drop], reviews: Mapping[str, Review]
) -> tuple[Strip, ...]:
    """The strips of an edge's drops, sorted by their starts; those that overlap in tiers."""
    ends: list[float] = []
    strips = []
    for drop in drops:
        free = (place for place, end in enumerate(ends) if drop.start >= end - 1e-6)
        tier = min(next(free, len(ends)), MOST_TIERS - 1)
        if tier == len(ends):
            ends.append(0.0)
        ends[tier] = drop.start + drop.width.value
        review = reviews.get(drop.id)
        strips.append(Strip(drop, line, tier, None if review is None else review.verdict))
    return tuple(strips)


def _draw_strip(canvas: Canvas, strip: Strip) -> None:
    near = canvas.frame.real(GAP + strip.tier * (DEPTH + GAP))
    far = near + canvas.frame.real(DEPTH)
    start, end = strip.drop.start, strip.drop.start + strip.drop.width.value
    corners = tuple(
        strip.line.at(station=station, inward=-out)
        for station, out in ((start, near), (end, near), (end, far), (start, far))
    )
    canvas.add(Polygon(Layer.DROP, corners, WHITE))
    middle = strip.line.at(station=(start + end) / 2, inward=-(near + far) / 2)
    room = canvas.frame.drawn(end - start)
    if not _name_inside(canvas, strip, middle, room):
        _name_outside(canvas, strip, middle)


def _words(strip: Strip, language: Language) -> str:
    verdict = strip.verdict
    return language.drawn("not_reviewed") if verdict is None else language.word(verdict)


def _name_inside(canvas: Canvas, strip: Strip, middle: Point, room: float) -> bool:
    """Id in the first row, sign and word in the second, along the strip; False without room."""
    angle = readable(angle_of(strip.line.along))
    along = turned((1.0, 0.0), degrees=angle)
    up = left_of(along)
    name, words = plain(strip.drop.id), _words(strip, canvas.language)
    word_room = text_width(words, height=TEXT, bold=True)
    sign_room = 0.0 if strip.verdict is None else SIGN + 1.5
    widest = max(text_width(name, height=TITLE, bold=True), sign_room + word_room)
    if widest + 3.0 > room:
        return False
    centre = canvas.frame.to_paper(middle)
    layer = Layer.LABEL if strip.verdict is None else answer_layer(strip.verdict)
    left = moved(moved(centre, along=up, by=-3.9), along=along, by=-(sign_room + word_room) / 2)
    texts = (
        Text(
            Layer.LABEL,
            moved(centre, along=up, by=1.2),
            name,
            TITLE,
            Align.MIDDLE,
            angle,
            bold=True,
        ),
        Text(
            layer,
            moved(left, along=along, by=sign_room),
            words,
            TEXT,
            Align.START,
            angle,
            bold=True,
        ),
    )
    if not all(canvas.placer.free(text_quad(text)) for text in texts):
        return False
    if strip.verdict is not None:
        on_base = moved(moved(left, along=along, by=SIGN / 2), along=up, by=TEXT / 2)
        sign = answer_sign(strip.verdict, canvas.frame.to_drawing(on_base), size=SIGN)
        canvas.add(sign)
    canvas.write(texts)
    return True


def _name_outside(canvas: Canvas, strip: Strip, middle: Point) -> None:
    lines = (plain(strip.drop.id), _words(strip, canvas.language))
    at = canvas.frame.to_paper(middle)
    spots = tuple(beside(at, side=strip.line.outward, away=DEPTH))
    layer = Layer.LABEL if strip.verdict is None else answer_layer(strip.verdict)
    placed = canvas.label(lines, middle, spots=spots, bold=True, layer=layer)
    if placed is not None and strip.verdict is not None:
        left, bottom, right, top = placed.box
        for x in (left - SIGN / 2 - 1.0, right + SIGN / 2 + 1.0):
            sign = (x, (bottom + top) / 2)
            if canvas.placer.free(corners_around(sign, SIGN)):
                at_sign = canvas.frame.to_drawing(sign)
                canvas.add(answer_sign(strip.verdict, at_sign, size=SIGN))
                return


def draw_widths(
    canvas: Canvas, strips: Sequence[Strip], units: Style, *, gaps: bool = True
) -> None:
    """Dimensions along an edge: the corner, the drops next to the face, the gaps between them."""
    if not strips:
        return
    line = strips[0].line
    depth = GAP + (max(strip.tier for strip in strips) + 1) * (DEPTH + GAP)
    near, out = canvas.frame.real(depth), canvas.frame.real(depth + CHAIN)
    # The longer first: a short one whose text stands aside must not take a long one's place.
    for first, last in sorted(spans(strips, gaps=gaps), key=lambda span: span[0] - span[1]):
        canvas.dimension(
            line.at(station=first, inward=-near),
            line.at(station=last, inward=-near),
            line_through=line.at(station=first, inward=-out),
            angle=angle_of(line.along),
            lines=(width_text(canvas, last - first, units),),
        )


def spans(strips: Sequence[Strip], *, gaps: bool) -> Iterator[tuple[float, float]]:
    """What a chain of dimensions measures: drops of the first tier, with `gaps` those between."""
    end = 0.0
    for strip in strips:
        start, width = strip.drop.start, strip.drop.width.value
        if strip.tier == 0:
            if gaps and start > end + SMALLEST:
                yield (end, start)
            yield (start, start + width)
            end = start + width


def width_text(canvas: Canvas, width: float, units: Style) -> str:
    """A width in both systems, or in the project's own where both have no room on the line."""
    both = length_text(width, units)
    fits = text_width(both, height=TEXT) + 2.0 <= canvas.frame.drawn(width)
    return both if fits else own_length(width, units)
