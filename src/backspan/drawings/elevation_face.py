"""A facade seen from outside: where stations and levels lie, its outline, its levels.

x runs from the end of the edge, at the left, to its start, at the right; y is above the ground
datum; both in metres.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from backspan.core.model.rigs import Drop
from backspan.core.model.site import Edge, Roof
from backspan.core.quantities import Style
from backspan.drawings.canvas import TEXT, Canvas
from backspan.drawings.edges import edge_line
from backspan.drawings.lettering import LEADING
from backspan.drawings.plan_drops import Strip
from backspan.drawings.scene import Layer, Line, Point, Polygon, Polyline, Text
from backspan.drawings.site_things import edge_thing, parapet_thing
from backspan.drawings.values import length_text, own_length

LEVELS = 12.0
"""How far left of the facade the dimensions of its levels lie, in millimetres on paper."""

NAMES = 4.0
"""How far the lines of its levels go on beyond it, on paper."""

UNKNOWN_PART = 0.5
"""How much of the facade a strip takes of which nobody stated the height."""

NOTHING_KNOWN = 12.0
"""The depth of such a strip, in metres, where the facade has no known height either."""


@dataclass(frozen=True, slots=True)
class Face:
    """A facade: its roof and edge, and the strips of its drops."""

    roof: Roof
    edge: Edge
    strips: tuple[Strip, ...]

    @property
    def length(self) -> float:
        """How long the facade is."""
        return edge_line(self.edge).length

    @property
    def level(self) -> float:
        """Where the roof lies."""
        return self.roof.level.value

    @property
    def top(self) -> float:
        """The top of the parapet, or the roof where none is stated."""
        wall = self.edge.parapet
        return self.level if wall is None else self.level + wall.height.value

    @property
    def grounded(self) -> bool:
        """Whether the roof lies above the datum, so that the ground is known."""
        return self.level > 0.0

    @property
    def unknown_depth(self) -> float:
        """How deep a strip is drawn of which nobody stated the height."""
        known = [self.level, *(one.drop.height.value for one in self.strips if one.drop.height)]
        return max(known) * UNKNOWN_PART if max(known) > 0.0 else NOTHING_KNOWN

    @property
    def lowest(self) -> float:
        """The lowest level that is drawn."""
        below = [level for one in self.strips if (level := reached(self, one.drop)) is not None]
        dashed = self.level - self.unknown_depth
        open_ended = [] if self.grounded and self.strips else [dashed]
        return min([0.0, *below, *open_ended] if self.grounded else [*below, dashed])

    def across(self, station: float) -> float:
        """Where a station lies: the start of the edge is at the right."""
        return self.length - station

    def bottom(self, drop: Drop) -> float | None:
        """The lowest place of a drop; None where nobody stated its height."""
        return None if drop.height is None else self.level - drop.height.value

    def beneath_datum(self) -> Iterator[str]:
        """The drops whose stated lengths reach below the ground datum."""
        for one in self.strips:
            level = reached(self, one.drop)
            if self.grounded and level is not None and level < -0.01:  # noqa: PLR2004 - a tape's step
                yield one.drop.id


def reached(face: Face, drop: Drop) -> float | None:
    """How far down what is stated of a drop reaches: its lowest place, or what is clear below."""
    bottom, below = face.bottom(drop), drop.clear_below
    return bottom if bottom is None or below is None else bottom - below.value


def draw_face(canvas: Canvas, face: Face, units: Style) -> None:
    """The outline of the facade; down from the roof dashed where the ground is not known."""
    long, level = face.length, face.level
    corners = ((long, level), (0.0, level), (0.0, face.lowest), (long, face.lowest))
    with canvas.of(edge_thing(face.roof.id, face.edge, units)):
        if face.grounded:
            (end, start) = ((0.0, 0.0), (long, 0.0))
            canvas.add(Polygon(Layer.EXISTING, (*corners[:2], end, start)))
        else:
            canvas.add(Line(Layer.EXISTING, *corners[:2]))
            canvas.add(Polyline(Layer.NOT_KNOWN, (corners[1], corners[2])))
            canvas.add(Polyline(Layer.NOT_KNOWN, (corners[0], corners[3])))
    if face.edge.parapet is not None and face.top > level:
        wall = ((long, level), (0.0, level), (0.0, face.top), (long, face.top))
        with canvas.of(parapet_thing(face.roof.id, face.edge, units)):
            canvas.add(Polygon(Layer.PARAPET, wall))
    beyond = canvas.frame.real(NAMES)
    for at in (level, *((0.0,) if face.grounded else ())):
        canvas.add(Line(Layer.EXISTING, (long, at), (long + beyond, at)))


def measure_levels(canvas: Canvas, face: Face, units: Style) -> None:
    """The levels at the left as dimensions, and their names at the right."""
    away = -canvas.frame.real(LEVELS)
    through: Point = (away, face.level)
    if face.grounded:
        words = (length_text(face.level, units),)
        up = (0.0, 0.0), (0.0, face.level)
        canvas.dimension(*up, line_through=through, angle=90.0, lines=words)
    if face.edge.parapet is not None and face.top > face.level:
        words = (own_length(face.edge.parapet.height.value, units),)
        up = (0.0, face.level), (0.0, face.top)
        canvas.dimension(*up, line_through=through, angle=90.0, lines=words)


def name_levels(canvas: Canvas, face: Face) -> None:
    """The names of the levels, at the right; roof and parapet apart where they lie close."""
    language = canvas.language
    x, roof = canvas.frame.to_paper((face.length, face.level))
    top = canvas.frame.to_paper((face.length, face.top))[1]
    apart = max(0.0, TEXT * LEADING - (top - roof)) / 2 if face.top > face.level else 0.0
    told = [(language.drawn("level_of_roof"), roof - apart)]
    if face.edge.parapet is None:
        told.append((language.drawn("parapet_not_stated"), roof + TEXT * LEADING))
    elif face.top > face.level:
        told.append((language.drawn("top_of_parapet"), top + apart))
    if face.grounded:
        told.append((language.drawn("ground_datum"), canvas.frame.to_paper((0.0, 0.0))[1]))
    left = x + NAMES + 1.0
    canvas.write(Text(Layer.LABEL, (left, y - TEXT / 2), words, TEXT) for words, y in told)
