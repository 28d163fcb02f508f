"""Softeners in section: a sleeve where a line passes the edge, solid where somebody saw it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from backspan.core.model.evidence import StatedValue
from backspan.core.model.rigs import Found, Rig, Tieback
from backspan.core.model.seen import Route
from backspan.core.words import Language
from backspan.drawings.scene import Layer, Polyline
from backspan.drawings.section_points import Section

LEG = 3.0
"""How long a sleeve is, in millimetres: down the face, or along a tieback."""

LIP = 1.4
"""How far a sleeve reaches over the corner, in millimetres."""

OFF = 0.9
"""Paper between the corner and the sleeve, in millimetres."""

#: Of these nothing is there to be drawn; the words tell it.
NOTHING = frozenset({Found.ABSENT, Found.NONE_NEEDED})

State = StatedValue[Found] | None


def draw_softeners(section: Section) -> None:
    """The sleeve of the lifelines at the edge, and of each tieback that passes over one.

    Lifelines are of the whole drop: the view of its first point has them. Of which lines they are
    and what was found stands beside the drawing: see `softener_notes`.
    """
    rig = section.drop.rig
    if rig is None:
        return
    _lifelines(section, [one.softener for one in rig.lines])
    for one in section.view.points:
        for tieback in one.point.tied:
            if passes_an_edge(tieback):
                _tieback(section, tieback.softener)


def passes_an_edge(tieback: Tieback) -> bool:
    """Whether somebody said that a tieback passes over an edge, or spoke of its softener."""
    over = tieback.route is not None and tieback.route.value is Route.OVER_AN_EDGE
    return over or tieback.softener is not None


def softener_layer(stated: Sequence[State]) -> Layer | None:
    """Solid where all were seen, dashed where one was not, None where nothing is there."""
    if any(one is None for one in stated):
        return Layer.NOT_KNOWN
    if all(one is not None and one.value in NOTHING for one in stated):
        return None
    return Layer.SOFTENER


def softener_notes(rig: Rig | None, language: Language) -> Iterator[str]:
    """For each state the lines it was found of."""
    if rig is None:
        return
    ties = [one for point in rig.suspension_points for one in point.tied if passes_an_edge(one)]
    by_state: dict[str, list[str]] = {}
    states = [(line.id, line.softener) for line in rig.lines]
    for name, state in (*states, *((tie.id, tie.softener) for tie in ties)):
        word = language.drawn("not_stated") if state is None else language.word(state.value)
        by_state.setdefault(word, []).append(name)
    for found, names in by_state.items():
        yield language.drawn("softener", lines=", ".join(names), found=found)


def _lifelines(section: Section, stated: Sequence[State]) -> None:
    rig = section.drop.rig
    points = () if rig is None else rig.suspension_points
    first = min(points, key=lambda one: one.station, default=None)
    if not stated or first is None or first.id not in section.view.names:
        return
    wall = section.view.first.edge.parapet
    top = 0.0 if wall is None else wall.height.value
    off, leg = section.real(OFF), section.real(LEG)
    layer = softener_layer(stated)
    if layer is not None:
        places = ((section.real(LIP), top + off), (-off, top + off), (-off, top - leg))
        points_of = tuple(section.at(inward=inward, above=above) for inward, above in places)
        section.canvas.add(Polyline(layer, points_of))


def _tieback(section: Section, state: State) -> None:
    """A sleeve on the way of a tieback; where the edge lies that it passes is for the plan."""
    picture, above = section.view.first.picture, section.view.first.bearing.x
    x = max(picture.right, picture.tail.x) + section.real(section.layout.tieback_end / 2)
    layer = softener_layer([state])
    place, half = section.at(inward=x, above=above / 2), section.real(LEG / 2)
    if layer is not None:
        ends = tuple((place[0] + side * half, place[1]) for side in (-1.0, 1.0))
        section.canvas.add(Polyline(layer, ends))
