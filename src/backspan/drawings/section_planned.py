"""The planned place of a beam in section: a thin outline behind the one that was found."""

from __future__ import annotations

from backspan.drawings.scene import Layer, Point, Polygon
from backspan.drawings.section_points import Section
from backspan.drawings.spots import around

STACK_HEIGHT = 7.0
DEPTH = 2.4
"""How deep a planned beam is drawn, in millimetres: wider than the line of the found one."""

BEARING = 4.0


def draw_planned(section: Section) -> None:
    """Beam, fulcrum and stack where the plan has them, with the word; nothing where it agrees."""
    planned, bearing = section.view.first.planned, section.view.first.bearing.x
    if planned is None:
        return
    half = section.real(DEPTH / 2)
    top = bearing + section.real(STACK_HEIGHT)
    boxes = [(planned.tip.x, planned.tail.x, bearing - half, bearing + half)]
    boxes += [(group.inner, group.outer, bearing, top) for group in planned.groups]
    for left, right, low, high in boxes:
        corners = ((left, low), (right, low), (right, high), (left, high))
        _outline(section, *corners)
    side, down = section.real(BEARING / 2), section.real(BEARING * 0.9)
    foot = planned.fulcrum.x
    _outline(section, (foot, bearing), (foot - side, bearing - down), (foot + side, bearing - down))
    end = section.at(inward=planned.tail.x, above=bearing + half)
    spots = tuple(around(section.canvas.frame.to_paper(end), away=1.0))
    section.canvas.later((section.language.drawn("planned"),), end, spots=spots)


def _outline(section: Section, *places: Point) -> None:
    points = tuple(section.at(inward=inward, above=above) for inward, above in places)
    section.canvas.add(Polygon(Layer.PLANNED, points))
