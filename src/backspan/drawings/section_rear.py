"""What carries the beam behind, in section, where somebody stated how far back it stands."""

from __future__ import annotations

from backspan.drawings.scene import Layer, Point
from backspan.drawings.section_fulcrum import stand_legs
from backspan.drawings.section_plates import draw_plate
from backspan.drawings.section_points import Section
from backspan.drawings.spots import Spot
from backspan.drawings.values import Known, evidence_text, known_length_text


def draw_rear_stand(section: Section) -> None:
    """A stand from the roof to the beam at its stated distance behind the fulcrum."""
    first = section.view.first
    rear, at = first.picture.rear, first.picture.rear_at
    if rear is None or at is None:
        return
    layer = Layer.FULCRUM if at.known and first.bearing.known else Layer.NOT_KNOWN
    top = first.bearing.x
    section.canvas.add(*stand_legs(section, layer, inward=at.x, top=top, foot=0.0))
    beam = first.point.counterweighted_beam
    bearing = None if beam is None else beam.rear
    draw_plate(section, bearing, inward=at.x, foot=0.0, sure=at.known)
    if section.layout.rear:
        _dimension(section, rear, inward=at.x)
    else:
        _words(section, rear, target=section.at(inward=at.x, above=top * 0.4))


def _dimension(section: Section, rear: Known, *, inward: float) -> None:
    """Below the roof, where a small figure has room: under the beam there is none for words."""
    units, language = section.project.units, section.language
    words = language.drawn("rear_stand_at", length=known_length_text(rear, units))
    section.canvas.dimension(
        section.at(inward=section.view.first.picture.fulcrum.x, above=0.0),
        section.at(inward=inward, above=0.0),
        line_through=section.at(inward=0.0, above=-section.real(section.layout.rear)),
        angle=0.0,
        lines=(words, evidence_text(rear, units, language)),
    )


def _words(section: Section, rear: Known, *, target: Point) -> None:
    x, y = section.canvas.frame.to_paper(target)
    spots = [
        Spot((x + side * (5.0 + step), y + up), side, 0, step / 2 + abs(up) / 3)
        for step in (0.0, 5.0, 10.0)
        for side in (1, -1)
        for up in (0.0, -3.0, 3.0, -6.0, 6.0)
    ]
    units, language = section.project.units, section.language
    words = (language.drawn("rear_stand"), known_length_text(rear, units))
    section.canvas.later((*words, evidence_text(rear, units, language)), target, spots=spots)
