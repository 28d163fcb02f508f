"""The fulcrum in section: the triangle under the beam and what it stands on."""

from __future__ import annotations

from backspan.core.model.rigs import Fulcrum, FulcrumKind
from backspan.drawings.scene import Layer, Line, Point, Polygon, Shape, Symbol, SymbolName
from backspan.drawings.section_plates import draw_plate
from backspan.drawings.section_points import Section
from backspan.drawings.spots import Spot
from backspan.drawings.symbols import WHITE
from backspan.drawings.values import evidence_text, known, length_text, own_length

TRIANGLE = 4.0
HALF_WIDTH = 3.2


def draw_fulcrum(section: Section) -> None:
    """The triangle that bears the beam, what it stands on, and how high that is."""
    first = section.view.first
    bearing, inward = first.bearing, first.picture.fulcrum.x
    sure = bearing.known and first.picture.fulcrum.known
    foot = first.foot
    size = min(TRIANGLE, max(section.canvas.frame.drawn(bearing.x - foot) / 0.9, 1.5))
    under = bearing.x - section.real(size * 0.9)
    section.canvas.add(
        Symbol(Layer.FULCRUM, SymbolName.FULCRUM, section.at(inward=inward, above=bearing.x), size)
    )
    layer = Layer.FULCRUM if sure else Layer.NOT_KNOWN
    if under > foot + 1e-9:
        section.canvas.add(*_stand(section, layer, top=under, foot=foot))
    draw_plate(section, _stated(section), inward=inward, foot=foot, sure=sure)
    target = section.at(inward=inward, above=(under + foot) / 2)
    x, y = section.canvas.frame.to_paper(target)
    heights = (0.0, 4.0, -4.0, 8.0, -8.0, *((-2.0, -3.0) if section.layout.narrow else ()))
    spots = [
        Spot((x + 7.0 + step, y + up), 1, 0, step / 2 + abs(up) / 3)
        for step in (0.0, 5.0, 10.0)
        for up in heights
    ]
    words, *others = _fulcrum_words(section)
    section.canvas.later(words, target, spots=spots, others=others)


def _stated(section: Section) -> Fulcrum | None:
    beam = section.view.first.point.counterweighted_beam
    return None if beam is None else beam.fulcrum


def _fulcrum_words(section: Section) -> tuple[tuple[str, ...], ...]:
    """What it is and how high; then the same in more and shorter lines, for little room."""
    first = section.view.first
    language, kind = section.language, _kind_text(section)
    fulcrum = _stated(section)
    height = known(None if fulcrum is None else fulcrum.height)
    if height is not None:
        units = section.project.units
        length = length_text(height.value, units)
        evidence = evidence_text(height, units, language)
        return (
            (language.drawn("kind_high", kind=kind, height=length), evidence),
            (kind, language.drawn("high", height=length), evidence),
            (kind, language.drawn("high", height=own_length(height.value, units)), evidence),
        )
    if first.kind is FulcrumKind.PARAPET and first.bearing.known:
        return ((kind,),)
    unknown = language.drawn("kind_not_measured", kind=kind)
    first_line, colon, rest = unknown.partition(": ")
    return ((unknown,), (f"{first_line}{colon}".strip(), rest))


def _kind_text(section: Section) -> str:
    kind, language = section.view.first.kind, section.language
    if kind is None:
        return language.drawn("fulcrum")
    if kind is FulcrumKind.PARAPET:
        return language.drawn("on_the_parapet")
    return language.word(kind).capitalize()


def _stand(section: Section, layer: Layer, *, top: float, foot: float) -> tuple[Shape, ...]:
    """A picture of what carries the beam; its width is not to scale."""
    first = section.view.first
    x = first.picture.fulcrum.x
    half = section.real(HALF_WIDTH)
    if first.kind in {FulcrumKind.PAD, FulcrumKind.PARAPET}:
        box = tuple(
            section.at(inward=x + side * half, above=above)
            for side, above in ((-1.0, foot), (1.0, foot), (1.0, top), (-1.0, top))
        )
        return (Polygon(layer, box, WHITE),)
    left, right, bar, plate = stand_legs(section, layer, inward=x, top=top, foot=foot)
    if first.kind is FulcrumKind.TOWER:
        braces = (Line(layer, left.end, right.start), Line(layer, right.end, left.start))
        return (left, right, *braces, plate)
    return (left, right, bar, plate)


def stand_legs(
    section: Section, layer: Layer, *, inward: float, top: float, foot: float
) -> tuple[Line, Line, Line, Line]:
    """A stand at `inward`: its two legs from `top` to `foot` (metres), head and foot plate.

    Its width is not to scale.
    """
    half = section.real(HALF_WIDTH)

    def corner(side: float, above: float) -> Point:
        return section.at(inward=inward + side * half, above=above)

    return (
        Line(layer, corner(-0.5, top), corner(-1.0, foot)),
        Line(layer, corner(0.5, top), corner(1.0, foot)),
        Line(layer, corner(-0.5, top), corner(0.5, top)),
        Line(layer, corner(-1.5, foot), corner(1.5, foot)),
    )
