"""What holds back, in section: each tieback from where it is made fast to its anchor."""

from __future__ import annotations

import math
from collections.abc import Iterator

from backspan.core.model.rigs import Tieback, TiebackStart
from backspan.core.model.site import AnchorStanding
from backspan.drawings.geometry import direction, moved
from backspan.drawings.plan_building import ANCHOR_SIGN, ANCHOR_SIZE
from backspan.drawings.rig_things import tieback_thing
from backspan.drawings.scene import Layer, Line, Point, Symbol
from backspan.drawings.section_building import break_across
from backspan.drawings.section_planned import STACK_HEIGHT
from backspan.drawings.section_points import Section
from backspan.drawings.spots import Spot
from backspan.drawings.things import Thing
from backspan.drawings.tie_starts import tie_start
from backspan.drawings.wording import tied_to

STEP = 11.0
CUT = 4.5
"""How far before its anchor a tieback has a break mark, in millimetres on paper."""

SHACKLE = 2.5
"""How far below the beam, in millimetres on paper, the shackle is drawn that a tieback holds."""


def draw_tiebacks(section: Section) -> None:
    """Each tieback from where it is made fast, cut before its anchor: that is for the plan."""
    picture = section.view.first.picture
    right = max(picture.right, picture.tail.x) + section.real(section.layout.tieback_end)
    tiebacks = [
        (tieback, tieback_thing(section.drop.id, one.point.id, tieback))
        for one in section.view.points
        for tieback in one.point.tied
    ]
    if not tiebacks:
        _none(section)
    low = section.real(ANCHOR_SIZE / 2)
    for place, (tieback, thing) in enumerate(tiebacks):
        end = section.at(inward=right, above=low + section.real(place * STEP))
        _draw(section, tieback, thing, end)
        words = _words(section, tieback)
        with section.canvas.of(thing):
            spots = _spots(section, end, under=not place)
            first, second, *rest = words
            wide = (f"{first} {second}", *rest)
            section.canvas.later(words, end, spots=spots, others=(wide,))


def _none(section: Section) -> None:
    first = section.view.first
    start = section.at(inward=first.picture.tail.x, above=first.bearing.x)
    x, y = section.canvas.frame.to_paper(start)
    spots = [Spot((x + 4.0, y - down), 1, -1, down) for down in (2.0, 6.0)]
    section.canvas.later((section.language.drawn("no_tieback"),), start, spots=spots)


def _draw(section: Section, tieback: Tieback, thing: Thing, end: Point) -> None:
    start, known = _start(section, tieback)
    layer = Layer.TIEBACK if known else Layer.NOT_KNOWN
    back = direction(end, start)
    cut = moved(end, along=back, by=min(section.real(CUT), math.dist(start, end) / 2))
    section.canvas.add(
        Line(layer, start, end, of=thing), break_across(section, cut, along=(-back[0], -back[1]))
    )
    sign = ANCHOR_SIGN[_standing(section, tieback)]
    section.canvas.add(Symbol(Layer.ANCHOR, sign, end, ANCHOR_SIZE))


def _start(section: Section, tieback: Tieback) -> tuple[Point, bool]:
    """Where a tieback is made fast, and whether somebody said so and the place is known."""
    first = section.view.first
    place = tie_start(first.picture, tieback)
    off = 0.0
    if tieback.attached is not None:
        if tieback.attached.value is TiebackStart.SHACKLE:
            off = -SHACKLE
        elif tieback.attached.value is TiebackStart.STACK:
            off = STACK_HEIGHT / 2
    at = section.at(inward=place.x, above=first.bearing.x + section.real(off))
    return at, place.known and first.bearing.known and first.picture.fulcrum.known


def _standing(section: Section, tieback: Tieback) -> AnchorStanding:
    named = (one for roof in section.project.site.roofs for one in roof.anchors)
    found = (one.standing for one in named if one.id == tieback.anchor)
    return next(found, AnchorStanding.IN_SERVICE)


def _words(section: Section, tieback: Tieback) -> tuple[str, ...]:
    language = section.language
    words = (tieback.id, tied_to(tieback, language), language.drawn("anchor_not_to_scale"))
    if tieback.attached is None:
        return (*words, language.drawn("tie_start_not_stated"))
    return words


def _spots(section: Section, end: Point, *, under: bool) -> Iterator[Spot]:
    """Right of the anchor; in a small figure above or below it too."""
    x, y = section.canvas.frame.to_paper(end)
    for up in (0, 3, -3, 6, -6, 9, 12):
        yield Spot((x + 3.0, y + up), 1, 0, abs(up) / 2)
    if section.layout.narrow:
        side = -1 if under else 1
        edge = section.cell[2] - 1.0
        yield Spot((x, y + side * 2.8), 0, side, 2.0, points_at=(x, y))
        yield Spot((edge, y + side * 2.8), -1, side, 2.2, points_at=(x, y + side * 2.8))
