"""One view of a section: face of building, roof, support and its beam, line, stage."""

from __future__ import annotations

from backspan.core.model.project import Project
from backspan.core.model.rigs import Drop, OtherSupport
from backspan.drawings.canvas import TEXT, Canvas
from backspan.drawings.geometry import Box
from backspan.drawings.lettering import shortened, text_width
from backspan.drawings.scene import Layer, Point, Polygon, Text
from backspan.drawings.section_beam import draw_beam
from backspan.drawings.section_building import draw_building
from backspan.drawings.section_dimensions import draw_dimensions
from backspan.drawings.section_line import draw_line_and_stage, draw_tiebacks
from backspan.drawings.section_points import Section, View
from backspan.drawings.spots import Spot
from backspan.drawings.symbols import WHITE, answer_layer, answer_sign
from backspan.drawings.values import known_length_text
from backspan.drawings.wording import (
    ANSWER,
    NOT_JUDGED,
    NOT_MEASURED,
    NOT_STATED,
    points_title,
)

TITLE = 3.0
SIGN = 4.0


def draw_view(
    canvas: Canvas, project: Project, drop: Drop, view: View, *, at: Point, cell: Box
) -> None:
    """Draw one view with the corner of roof and face at `at` (paper), within its cell."""
    section = Section(canvas, project, drop, view, at, cell)
    _title(section)
    draw_building(section)
    draw_line_and_stage(section)
    point = view.first.point
    if point.counterweighted_beam is not None:
        draw_beam(section, point.counterweighted_beam)
        draw_dimensions(section)
        draw_tiebacks(section)
    else:
        _other_support(section, point.other_support)


def _title(section: Section) -> None:
    """The points of the view, and the worst answer on them as sign and word."""
    left, _, right, top = section.cell
    base = top - 7.0
    answer = section.view.first.answer
    layer = Layer.LABEL if answer is None else answer_layer(answer)
    word = section.view.first.no_answer if answer is None else ANSWER[answer]
    room = right - left - 60.0
    name = shortened(points_title(section.view.names), room=room, height=TITLE, bold=True)
    x = left + 5.0
    texts = [Text(Layer.LABEL, (x, base), name, TITLE, bold=True)]
    x += text_width(name, height=TITLE, bold=True) + 8.0
    texts.append(Text(Layer.LABEL, (x, base), "Answer:", TEXT))
    x += text_width("Answer:", height=TEXT) + 2.0
    if answer is not None:
        middle = section.canvas.frame.to_drawing((x + SIGN / 2, base + TEXT / 2))
        section.canvas.add(answer_sign(answer, middle, size=SIGN))
        x += SIGN + 1.5
    texts.append(Text(layer, (x, base), word, TEXT, bold=True))
    section.canvas.write(texts)


def _other_support(section: Section, support: OtherSupport | None) -> None:
    """A support this program does not judge: a dashed box from the line to the wall."""
    picture, bearing = section.view.first.picture, section.view.first.bearing
    low, high = bearing.x - section.real(2.5), bearing.x + section.real(2.5)
    right = max(picture.fulcrum.x, picture.line.x)
    box = tuple(
        section.at(inward=inward, above=above)
        for inward, above in (
            (picture.line.x, low),
            (right, low),
            (right, high),
            (picture.line.x, high),
        )
    )
    section.canvas.add(Polygon(Layer.NOT_KNOWN, box, WHITE))
    target = section.at(inward=right, above=bearing.x)
    if picture.reach is not None:
        reach = f"reach {known_length_text(picture.reach, section.project.units)}"
    else:
        reach = f"reach {NOT_MEASURED}"
    kind = f"Support {NOT_STATED}" if support is None else str(support.kind).capitalize()
    paper = None if support is None else support.document
    held = (
        f"tieback {tieback.id} to anchor {tieback.anchor}"
        for one in section.view.points
        for tieback in one.point.tied
    )
    lines = (kind, NOT_JUDGED, reach, f"paper: {paper or NOT_STATED}", *held)
    x, y = section.canvas.frame.to_paper(target)
    spots = [Spot((x + 5.0 + step, y + 6.0), 1, 1, step) for step in (0.0, 5.0, 10.0)]
    section.canvas.later(lines, target, spots=spots)
