"""The support in section: fulcrum, beam, stack with its centroid."""

from __future__ import annotations

from collections.abc import Sequence

from backspan.core.model.rigs import CounterweightedBeam
from backspan.drawings.beams import StackedGroup, piece_named
from backspan.drawings.lettering import wrapped
from backspan.drawings.scene import (
    Hatch,
    Layer,
    Line,
    Point,
    Polygon,
    Shape,
    Symbol,
    SymbolName,
)
from backspan.drawings.section_fulcrum import draw_fulcrum
from backspan.drawings.section_joints import draw_joints
from backspan.drawings.section_planned import STACK_HEIGHT, draw_planned
from backspan.drawings.section_points import Section
from backspan.drawings.section_rear import draw_rear_stand
from backspan.drawings.spots import Spot
from backspan.drawings.symbols import WHITE
from backspan.drawings.values import mass_text
from backspan.drawings.wording import count_text

CENTROID = 4.0
SHORTEST = 26.0
"""To what width, in millimetres, the words of a stack are broken where room is shortest."""


def draw_beam(section: Section, support: CounterweightedBeam) -> None:
    """Fulcrum, rear stand, beam and stack; behind them the plan, where it is another."""
    things = section.view.things
    draw_planned(section)
    with section.canvas.of(things.fulcrum):
        draw_fulcrum(section)
    with section.canvas.of(things.rear):
        draw_rear_stand(section)
    with section.canvas.of(things.beam):
        _draw_line(section)
    draw_joints(section, support)
    with section.canvas.of(things.stack):
        _draw_stack(section)
        _name_stack(section, support)


def _draw_line(section: Section) -> None:
    """The beam itself, dashed where an end of a part of it is not known."""
    picture, bearing = section.view.first.picture, section.view.first.bearing
    for start, end, sure in (
        (picture.tip, picture.line, picture.tip.known),
        (picture.line, picture.fulcrum, picture.line.known),
        (picture.fulcrum, picture.tail, picture.tail.known),
    ):
        outer, inner = (section.at(inward=place.x, above=bearing.x) for place in (start, end))
        section.canvas.add(Line(Layer.BEAM if sure else Layer.NOT_KNOWN, outer, inner))


def _draw_stack(section: Section) -> None:
    picture, bearing = section.view.first.picture, section.view.first.bearing
    for group in picture.groups:
        section.canvas.add(*_stack(section, group))
    if picture.groups and picture.backspan is not None:
        middle = bearing.x + section.real(STACK_HEIGHT / 2)
        at = section.at(inward=picture.centroid.x, above=middle)
        section.canvas.add(Symbol(Layer.COUNTERWEIGHT, SymbolName.CENTROID, at, CENTROID))


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
    lines = _stack_words(section, support)
    inner = outer = picture.centroid.x
    if picture.groups:
        inner, outer = picture.groups[-1].inner, picture.groups[0].outer
    target = section.at(inward=(inner + outer) / 2, above=bearing.x)
    x, y = section.canvas.frame.to_paper(target)
    half = section.canvas.frame.drawn(outer - inner) / 2
    spots = [
        Spot(
            (x + across, y - down),
            0,
            -1,
            down / 2 + abs(across) / 4,
            points_at=(x + max(-half, min(half, across)), y),
        )
        for down in (3.0, 5.5, 9.0, 13.0)
        for across in (side * step * 4.0 for step in range(13) for side in (1.0, -1.0))
    ]
    spots += _elsewhere(section, (x, y))
    spots += _above(section)
    narrow = [part for line in lines for part in _at_commas(line)]
    section.canvas.later(lines, target, spots=spots, others=[narrow, _shortest(section, lines)])


def _shortest(section: Section, lines: Sequence[str]) -> tuple[str, ...]:
    """For the tightest place: number and mass, in one unit; the table has the rest."""
    broken: list[str] = []
    for line in lines:
        first, _, _ = line.partition(" [")
        broken += wrapped(first, room=SHORTEST, height=section.canvas.text)
    return tuple(broken)


def _stack_words(section: Section, support: CounterweightedBeam) -> list[str]:
    """The pieces, how they are held, and whether the length of their stack is known."""
    picture, language = section.view.first.picture, section.language
    lines = []
    for group in support.stack.groups:
        piece = piece_named(section.project, group.piece)
        words = count_text(group.count.value, language)
        if piece is not None:
            mass = mass_text(piece.mass.value, section.project.units)
            words = f"{language.drawn('pieces_of', pieces=words, mass=mass)}, {piece.name}"
        lines.append(words)
    if not lines:
        lines.append(language.drawn("no_pieces").capitalize())
    held = support.stack.fastening
    fastening = language.drawn("not_stated") if held is None else language.word(held.value)
    lines.append(language.drawn("held", fastening=fastening))
    if not picture.stack_known and picture.groups:
        lines.append(language.drawn("stack_not_measured"))
    return lines


def _elsewhere(section: Section, at: Point) -> list[Spot]:
    """Clear of the wall at the left; or below the roof surface, where the beam lies low."""
    x, y = at
    _, roof = section.canvas.frame.to_paper(section.at(inward=0.0, above=0.0))
    found = [
        Spot((x + across, y - down), 0, -1, down / 2 + abs(across) / 4)
        for down in (9.0, 11.0, 13.0, 15.0)
        for across in (4.0, 8.0, -8.0, -16.0, -20.0)
    ]
    found += [
        Spot((x + across, roof - down), 0, -1, 6.0 + down / 2 + abs(across) / 8)
        for down in (3.0, 5.0, 7.0, 9.0, 11.0, 13.0)
        for across in (0.0, 12.0, 20.0, 24.0, 30.0, 36.0, -12.0)
    ]
    return found


def _above(section: Section) -> list[Spot]:
    """Above the beam on either side of the stack, under the dimensions."""
    picture, bearing = section.view.first.picture, section.view.first.bearing
    if not picture.groups:
        return []
    middle = bearing.x + section.real(STACK_HEIGHT / 2)
    found = []
    for inward, side in ((picture.groups[-1].inner, -1), (picture.groups[0].outer, 1)):
        side_of = section.canvas.frame.to_paper(section.at(inward=inward, above=middle))
        x, y = section.canvas.frame.to_paper(section.at(inward=inward, above=bearing.x))
        spot = Spot((x + side * 2.5, y + 1.8), side, 1, 1.5 + (side > 0), points_at=side_of)
        found.append(spot)
    return found


def _at_commas(line: str) -> list[str]:
    """A line broken after its commas."""
    *first, last = line.split(", ")
    return [*(f"{part}," for part in first), last]
