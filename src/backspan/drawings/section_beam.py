"""The support in section: fulcrum, beam, stack with its centroid, and their dimensions."""

from __future__ import annotations

from collections.abc import Sequence

from backspan.core.model.rigs import CounterweightedBeam, FulcrumKind
from backspan.drawings.beams import Place, StackedGroup, beam_named, count_text, piece_named
from backspan.drawings.placing import Spot
from backspan.drawings.scene import Hatch, Layer, Line, Point, Polygon, Shape, Symbol, SymbolName
from backspan.drawings.section_points import Section
from backspan.drawings.symbols import WHITE
from backspan.drawings.values import (
    Known,
    evidence_text,
    known,
    known_length_text,
    length_text,
    mass_text,
)
from backspan.drawings.wording import FULCRUM, NOT_MEASURED, NOT_STATED

TRIANGLE = 4.0
STACK_HEIGHT = 7.0
CENTROID = 4.0
TO_SCALE = 1e-6
"""What is drawn closer than this to its stated length is dimensioned, in metres."""

FIRST_TIER = 14.0
TIER = 10.0


def draw_beam(section: Section, support: CounterweightedBeam) -> None:
    """Fulcrum, beam and stack."""
    picture, bearing = section.view.first.picture, section.view.first.bearing
    _draw_fulcrum(section)
    ends = (picture.tip, picture.line, picture.fulcrum, picture.tail)
    for start, end in zip(ends, ends[1:], strict=False):
        far = end if end is picture.tail else start
        layer = (
            Layer.BEAM if far.known or (end is picture.fulcrum and start.known) else Layer.NOT_KNOWN
        )
        section.canvas.add(
            Line(
                layer,
                section.at(inward=start.x, above=bearing.x),
                section.at(inward=end.x, above=bearing.x),
            )
        )
    for group in picture.groups:
        section.canvas.add(*_stack(section, group))
    if picture.groups:
        layer = Layer.COUNTERWEIGHT if picture.backspan is not None else Layer.NOT_KNOWN
        middle = section.at(
            inward=picture.centroid.x, above=bearing.x + section.real(STACK_HEIGHT / 2)
        )
        if picture.backspan is not None:
            section.canvas.add(Symbol(layer, SymbolName.CENTROID, middle, CENTROID))
    _name_stack(section, support)


def _stack(section: Section, group: StackedGroup) -> tuple[Shape, ...]:
    picture, bearing = section.view.first.picture, section.view.first.bearing
    top = bearing.x + section.real(STACK_HEIGHT)
    box = (
        section.at(inward=group.inner, above=bearing.x),
        section.at(inward=group.outer, above=bearing.x),
        section.at(inward=group.outer, above=top),
        section.at(inward=group.inner, above=top),
    )
    if not picture.stack_known:
        return (Polygon(Layer.NOT_KNOWN, box, WHITE),)
    return (Polygon(Layer.COUNTERWEIGHT, box, WHITE), Hatch(Layer.COUNTERWEIGHT, box, 1.2))


def _name_stack(section: Section, support: CounterweightedBeam) -> None:
    picture, bearing = section.view.first.picture, section.view.first.bearing
    lines = []
    for group in support.stack.groups:
        piece = piece_named(section.project, group.piece)
        words = count_text(group.count.value)
        if piece is not None:
            words = f"{words} of {mass_text(piece.mass.value, section.project.units)}, {piece.name}"
        lines.append(words)
    if not lines:
        lines.append("No pieces")
    held = support.stack.fastening
    lines.append(f"held: {NOT_STATED if held is None else held.value}")
    if not picture.stack_known and picture.groups:
        lines.append(f"length of the stack {NOT_MEASURED}")
    middle = picture.centroid.x
    if picture.groups:
        middle = (picture.groups[0].outer + picture.groups[-1].inner) / 2
    target = section.at(inward=middle, above=bearing.x)
    x, y = section.canvas.frame.to_paper(target)
    spots = [
        Spot((x + across, y - down), 0, -1, down / 2 + abs(across) / 4)
        for down in (3.0, 5.5, 9.0, 13.0)
        for across in (0.0, -12.0, 12.0, -24.0)
    ]
    section.canvas.later(lines, target, spots=spots)


def _draw_fulcrum(section: Section) -> None:
    first = section.view.first
    bearing, inward = first.bearing, first.picture.fulcrum.x
    sure = bearing.known and first.picture.fulcrum.known
    foot = _foot_of(section)
    size = min(TRIANGLE, max(section.canvas.frame.drawn(bearing.x - foot) / 0.9, 1.5))
    under = bearing.x - section.real(size * 0.9)
    section.canvas.add(
        Symbol(Layer.FULCRUM, SymbolName.FULCRUM, section.at(inward=inward, above=bearing.x), size)
    )
    layer = Layer.FULCRUM if sure else Layer.NOT_KNOWN
    if under > foot + 1e-9:
        section.canvas.add(*_stand(section, layer, under, foot))
    kind = "Fulcrum" if first.kind is None else FULCRUM[first.kind]
    beam = first.point.counterweighted_beam
    fulcrum = None if beam is None else beam.fulcrum
    height = known(None if fulcrum is None else fulcrum.height)
    if height is not None:
        lines = (
            f"{kind} {length_text(height.value, section.project.units)} high",
            evidence_text(height, section.project.units),
        )
    elif first.kind is FulcrumKind.PARAPET and bearing.known:
        lines = (kind,)
    else:
        lines = (f"{kind}: height {NOT_MEASURED}",)
    target = section.at(inward=inward, above=(under + foot) / 2)
    x, y = section.canvas.frame.to_paper(target)
    spots = [
        Spot((x + 7.0 + step, y + up), 1, 0, step / 2 + abs(up) / 3)
        for step in (0.0, 5.0, 10.0)
        for up in (0.0, 4.0, -4.0, 8.0, -8.0)
    ]
    section.canvas.later(lines, target, spots=spots)


def _foot_of(section: Section) -> float:
    first = section.view.first
    if first.kind is FulcrumKind.PARAPET and first.edge.parapet is not None:
        return min(first.edge.parapet.height.value, first.bearing.x)
    return 0.0


def _stand(section: Section, layer: Layer, top: float, foot: float) -> tuple[Shape, ...]:
    """A picture of what carries the beam; its width is not to scale."""
    first = section.view.first
    x = first.picture.fulcrum.x
    half = section.real(3.2)

    def corner(side: float, above: float) -> Point:
        return section.at(inward=x + side * half, above=above)

    legs = (
        Line(layer, corner(-0.5, top), corner(-1.0, foot)),
        Line(layer, corner(0.5, top), corner(1.0, foot)),
    )
    plate = Line(layer, corner(-1.5, foot), corner(1.5, foot))
    if first.kind in {FulcrumKind.PAD, FulcrumKind.PARAPET}:
        box = (corner(-1.0, foot), corner(1.0, foot), corner(1.0, top), corner(-1.0, top))
        return (Polygon(layer, box, WHITE),)
    if first.kind is FulcrumKind.TOWER:
        braces = (
            Line(layer, corner(-1.0, foot), corner(0.5, top)),
            Line(layer, corner(1.0, foot), corner(-0.5, top)),
        )
        return (*legs, *braces, plate)
    return (*legs, Line(layer, corner(-0.5, top), corner(0.5, top)), plate)


def draw_dimensions(section: Section) -> None:
    """Setback, ends, reach and backspan, length of the beam; what is not known is said."""
    picture = section.view.first.picture
    _setback(section)
    outer = picture.groups[0].outer if picture.groups else picture.tail.x
    tail_known = picture.tail_gap is not None and picture.stack_known
    _span(section, 0, picture.tip, picture.line, "Tip beyond line", picture.tip_beyond_line)
    _span(section, 0, Place(outer, tail_known), picture.tail, "Tail gap", picture.tail_gap)
    _span(section, 1, picture.line, picture.fulcrum, "Reach", picture.reach)
    _span(section, 1, picture.fulcrum, picture.centroid, "Backspan", picture.backspan)
    beam = section.view.first.point.counterweighted_beam
    kit = None if beam is None else beam_named(section.project, beam.beam)
    name = "Beam" if kit is None else f"Beam {kit.id}, {kit.name}:"
    _span(section, 2, picture.tip, picture.tail, name, picture.length)


def _span(
    section: Section, tier: int, start: Place, end: Place, name: str, value: Known | None
) -> None:
    """A dimension above the beam; in words only where its ends are not both known."""
    above = section.view.first.bearing.x
    line = above + section.real(FIRST_TIER + tier * TIER)
    words = _span_words(section, name, value)
    if value is None or abs(abs(end.x - start.x) - value.value) > TO_SCALE:
        middle = section.at(inward=(start.x + end.x) / 2, above=above)
        section.canvas.later(words, middle, spots=_near_beam(section, middle))
        return
    section.canvas.dimension(
        section.at(inward=start.x, above=above),
        section.at(inward=end.x, above=above),
        line_through=section.at(inward=start.x, above=line),
        angle=0.0,
        lines=words,
    )


def _span_words(section: Section, name: str, value: Known | None) -> tuple[str, ...]:
    if value is None:
        return (f"{name}{' length' if name.endswith(':') else ''} {NOT_MEASURED}",)
    units = section.project.units
    return (f"{name} {known_length_text(value, units)}", evidence_text(value, units))


def _near_beam(section: Section, target: Point) -> tuple[Spot, ...]:
    """Close above or below the beam; what stands here is not dimensioned."""
    x, y = section.canvas.frame.to_paper(target)
    return tuple(
        Spot((x + across, y + up), 0, 1 if up > 0.0 else -1, abs(up) / 2 + abs(across) / 4)
        for up in (3.0, -3.0, 6.0, -6.0, 10.0, -10.0, STACK_HEIGHT + 2.0)
        for across in (0.0, 10.0, -10.0, 20.0, -20.0)
    )


def _setback(section: Section) -> None:
    picture = section.view.first.picture
    at = section.at(inward=picture.fulcrum.x, above=0.0)
    if picture.setback is None:
        section.canvas.later(
            (f"Setback {NOT_MEASURED}: place on the roof not known",), at, spots=_below(section, at)
        )
        return
    section.canvas.dimension(
        section.at(inward=0.0, above=0.0),
        at,
        line_through=section.at(inward=0.0, above=-section.real(9.0)),
        angle=0.0,
        lines=_setback_words(section, picture.setback),
    )


def _setback_words(section: Section, setback: Known) -> Sequence[str]:
    return (
        f"Setback {known_length_text(setback, section.project.units)}",
        evidence_text(setback, section.project.units),
    )


def _below(section: Section, target: Point) -> tuple[Spot, ...]:
    x, y = section.canvas.frame.to_paper(target)
    return tuple(Spot((x + step, y - 6.0), 1, -1, step) for step in (0.0, 6.0, 12.0))
