"""One view of a section: face of building, roof, support and its beam, line, stage."""

from __future__ import annotations

from collections.abc import Sequence

from backspan.core.model.project import Project
from backspan.core.model.rigs import Drop, OtherSupport
from backspan.drawings.canvas import Canvas, Rank
from backspan.drawings.geometry import Box
from backspan.drawings.lettering import LEADING, shortened, text_width, wrapped
from backspan.drawings.scene import Layer, Polygon, Text
from backspan.drawings.section_beam import draw_beam
from backspan.drawings.section_building import draw_building
from backspan.drawings.section_dimensions import draw_dimensions
from backspan.drawings.section_grid import roof_corner
from backspan.drawings.section_layout import SectionLayout
from backspan.drawings.section_line import draw_line_and_stage
from backspan.drawings.section_points import Section, View
from backspan.drawings.section_softeners import draw_softeners
from backspan.drawings.section_ties import draw_tiebacks
from backspan.drawings.spots import Spot
from backspan.drawings.symbols import WHITE, answer_layer, answer_sign
from backspan.drawings.values import known_length_text
from backspan.drawings.wording import points_title, tied_to

TITLE = 3.0
SIGN = 4.0


def draw_views(
    canvas: Canvas,
    project: Project,
    drop: Drop,
    views: Sequence[tuple[View, Box]],
    layout: SectionLayout,
) -> None:
    """Draw each view within its box (paper, in millimetres), with its labels."""
    for view, cell in views:
        canvas.placer.area = cell
        corner = roof_corner(view, canvas.frame.scale, cell, layout)
        _draw_view(Section(canvas, project, drop, view, corner, cell, layout))
        canvas.write_labels()


def _draw_view(section: Section) -> None:
    _title(section)
    draw_building(section)
    with section.canvas.of(section.view.things.point):
        draw_line_and_stage(section)
    point = section.view.first.point
    if point.counterweighted_beam is not None:
        draw_beam(section, point.counterweighted_beam)
        with section.canvas.of(section.view.things.point):
            draw_dimensions(section)
        draw_tiebacks(section)
    else:
        with section.canvas.of(section.view.things.point):
            _other_support(section, point.other_support)
    if not section.layout.narrow:
        draw_softeners(section)


def _title(section: Section) -> None:
    """The points of the view, and the worst answer on them as sign and word."""
    left, _, right, top = section.cell
    narrow, language = section.layout.narrow, section.language
    base, text = top - (TITLE + 1.0 if narrow else 7.0), section.canvas.text
    answer = section.view.first.answer
    layer = Layer.LABEL if answer is None else answer_layer(answer)
    none = section.view.first.no_answer
    word = language.drawn(none) if answer is None else language.word(answer)
    name = points_title(section.view.names, language)
    x = left + (1.0 if narrow else 5.0)
    if narrow:
        room = section.left_room
        rows = wrapped(name, room=room, height=text, bold=True, most=2)
        texts = [
            Text(Layer.LABEL, (x, base - row * text * LEADING), words, text, bold=True)
            for row, words in enumerate(rows)
        ]
        base = texts[-1].at[1] - SIGN - 1.0
    else:
        name = shortened(name, room=right - left - 60.0, height=TITLE, bold=True)
        texts = [Text(Layer.LABEL, (x, base), name, TITLE, bold=True)]
        x += text_width(name, height=TITLE, bold=True) + 8.0
        said = f"{language.drawn('answer')}:"
        texts.append(Text(Layer.LABEL, (x, base), said, text))
        x += text_width(said, height=text) + 2.0
    if answer is not None:
        middle = section.canvas.frame.to_drawing((x + SIGN / 2, base + text / 2))
        section.canvas.add(answer_sign(answer, middle, size=SIGN))
        x += SIGN + 1.5
    texts.append(Text(layer, (x, base), word, text, bold=True))
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
    lines = _other_words(section, support)
    x, y = section.canvas.frame.to_paper(target)
    spots = [Spot((x + 5.0 + step, y + 6.0), 1, 1, step) for step in (0.0, 5.0, 10.0)]
    rank = Rank.POINT if section.layout.narrow else Rank.NAME
    section.canvas.later(lines, target, spots=spots, rank=rank)


def _other_words(section: Section, support: OtherSupport | None) -> tuple[str, ...]:
    """Its kind, that nothing here judges it, its reach, its paper and its tiebacks."""
    language, reach = section.language, section.view.first.picture.reach
    if support is None:
        kind = language.drawn("support_not_stated")
    else:
        kind = language.word(support.kind).capitalize()
    paper = None if support is None else support.document
    return (
        kind,
        language.drawn("not_judged"),
        language.drawn("reach_not_measured")
        if reach is None
        else language.drawn("reach_of", length=known_length_text(reach, section.project.units)),
        language.drawn("paper", paper=paper or language.drawn("not_stated")),
        *(
            language.drawn("tieback_to", tieback=tieback.id, end=tied_to(tieback, language))
            for one in section.view.points
            for tieback in one.point.tied
        ),
    )
