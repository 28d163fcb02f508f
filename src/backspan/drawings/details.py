"""The detail sheet of a drop: what its beams bear on, its lines end to end, their schedule."""

from __future__ import annotations

from collections.abc import Sequence

from backspan.core.findings import Review
from backspan.core.model.project import Project
from backspan.core.model.rigs import Drop
from backspan.core.words import ENGLISH, Language, drop_answer
from backspan.drawings.canvas import Canvas
from backspan.drawings.details_bearing import Bearing, BearingRow, bearing_rows
from backspan.drawings.details_elevation import LARGEST_SIDE, Cell, draw_bearing
from backspan.drawings.details_lines import Strip, strips
from backspan.drawings.details_schedule import details_height, details_rows, details_schedule
from backspan.drawings.details_strips import draw_strip, strip_height
from backspan.drawings.edges import drop_named, edge_of
from backspan.drawings.geometry import Box
from backspan.drawings.language_note import language_note
from backspan.drawings.legend import legend_rows
from backspan.drawings.paper import MILLIMETRES, Frame, fitting_scale
from backspan.drawings.scalebar import scale_bar
from backspan.drawings.scene import Layer, Line, Scale, Scene, Text
from backspan.drawings.sheet import SheetContent, basis_of, sheet, sheet_size
from backspan.drawings.values import answer_text
from backspan.drawings.wording import more_views_note, no_room_note, points_title

FOOT = 14.0
INDENT = 6.0
LARGEST = 10.0
"""Nothing is drawn larger than 1:10, or 1 in to the foot."""

LEAST_ROW = 52.0
"""The least height of a row of bearings, in millimetres."""

AROUND = 26.0
"""Of a row, what its title and the dimensions of the plan take."""

TABLE_SHARE, STRIPS_SHARE = 0.34, 0.44


def drop_details(
    project: Project, drop_id: str, review: Review | None, *, language: Language = ENGLISH
) -> Scene:
    """Bearings of one drop to scale, its lines at no scale, and the schedule of lines and hardware.

    Raises DrawingError for a drop or edge that the project does not have.
    """
    drop = drop_named(project, drop_id)
    edge_of(project, drop)
    size = sheet_size(project.units)
    left, bottom, right, top = size.drawing_area
    width, tall = right - left - 2 * INDENT, top - bottom
    rows = details_rows(project, drop, language)
    table = details_height(rows, width=width, room=tall * TABLE_SHARE) if rows else 0.0
    lines = tuple(strips(project, drop, language))
    each = strip_height(lines)
    shown_lines = lines[: 2 * max(int(tall * STRIPS_SHARE / each), 1)]
    deep = each * -(-len(shown_lines) // 2)
    floor = bottom + FOOT + table
    bearings = bearing_rows(project, drop, language)
    most = max(int((top - floor - deep) / LEAST_ROW), 1)
    shown = bearings[:most]
    area = (left, floor + deep, right, top)
    scale = _scale(project, shown, area)
    canvas = Canvas(Frame(scale, (left, bottom)), (left, floor, right, top), language=language)
    _draw_bearings(canvas, project, shown, area)
    _draw_strips(canvas, shown_lines, (left, floor, right, floor + deep))
    left_out = [name for row in bearings[most:] for name in row.names]
    notes = _notes(canvas, left_out, lines[len(shown_lines) :])
    content = _content(project, drop, review, canvas, notes)
    around, parts = sheet(project, content, size)
    at = (left + INDENT, floor)
    schedule = details_schedule(project, drop, language, at=at, width=width, height=table)
    bar = scale_bar(scale, project.units, (left + INDENT, bottom + 4.0), language=language)
    note = language_note(language, right=right - 3.0, bottom=bottom + 1.0)
    return Scene(
        title=language.drawn("details_title", site=project.site.name, drop=drop.id),
        description=language.drawn(
            "details_told",
            drop=drop.id,
            site=project.site.name,
            answer=answer_text(review, language),
        ),
        width=size.width,
        height=size.height,
        units=project.units,
        sheet=(*around, *(schedule if rows else ()), *bar, *note),
        drawing=tuple(canvas.shapes),
        scale=scale,
        origin=canvas.frame.origin,
        dated=None if review is None else review.on,
        parts=parts,
    )


def _scale(project: Project, rows: Sequence[BearingRow], area: Box) -> Scale:
    """The largest standard scale at which every plate and pad has room in its cell."""
    every: list[Bearing] = [one for row in rows for one in row.bearings]
    widest = max((one.widest for one in every), default=0.0)
    high = (area[3] - area[1]) / max(len(rows), 1) - AROUND
    least = widest * MILLIMETRES / min(LARGEST_SIDE, max(high, 12.0))
    return fitting_scale(project.units, least_ratio=least, most_detail=LARGEST)


def _draw_bearings(canvas: Canvas, project: Project, rows: Sequence[BearingRow], area: Box) -> None:
    left, low, right, top = area
    if not rows:
        words = canvas.language.drawn("no_bearing")
        at = (left + INDENT, (low + top) / 2)
        canvas.write([Text(Layer.LABEL, at, words, canvas.text, bold=True)])
        return
    high, half = (top - low) / len(rows), (right - left) / 2
    for place, row in enumerate(rows):
        ceiling = top - place * high
        name = points_title(row.names, canvas.language)
        at = (left + INDENT, ceiling - 6.0)
        canvas.write([Text(Layer.LABEL, at, name, canvas.text * 1.2, bold=True)])
        for column, bearing in enumerate(row.bearings):
            x = left + column * half
            box = (x, ceiling - high, x + half, ceiling - 6.0)
            draw_bearing(Cell(canvas, project, bearing, box))


def _draw_strips(canvas: Canvas, lines: Sequence[Strip], area: Box) -> None:
    left, _, right, top = area
    half, each = (right - left) / 2, strip_height(lines)
    if lines:
        ends = (canvas.frame.to_drawing((left, top)), canvas.frame.to_drawing((right, top)))
        canvas.add(Line(Layer.DIMENSION, *ends))
    for place, strip in enumerate(lines):
        row, column = divmod(place, 2)
        x, ceiling = left + column * half, top - row * each
        draw_strip(canvas, strip, (x, ceiling - each, x + half, ceiling))


def _notes(canvas: Canvas, left_out: Sequence[str], lines_left: Sequence[Strip]) -> tuple[str, ...]:
    """What is to scale, and what is left out for want of room."""
    language = canvas.language
    notes = [language.drawn("details_scale")]
    if left_out:
        notes.append(more_views_note(tuple(left_out), language))
    if lines_left:
        titles = ", ".join(one.title for one in lines_left)
        notes.append(language.drawn("lines_left_out", lines=titles))
    if canvas.placer.unplaced:
        notes.append(no_room_note(len(canvas.placer.unplaced), language))
    return tuple(notes)


def _content(
    project: Project,
    drop: Drop,
    review: Review | None,
    canvas: Canvas,
    notes: tuple[str, ...],
) -> SheetContent:
    language = canvas.language
    not_reviewed = language.drawn("not_reviewed")
    counted = ""
    if review is not None:
        answer = drop_answer(review, language=language)
        counted = answer.removeprefix(language.word(review.verdict)).removeprefix(", ")
    return SheetContent(
        name=language.drawn("details_name", drop=drop.id) + (f", {drop.name}" if drop.name else ""),
        number=language.drawn("details", drop=drop.id),
        scale=canvas.frame.scale,
        pairs=(
            (language.drawn("reviewed"), not_reviewed if review is None else review.on.isoformat()),
            (
                language.drawn("configuration"),
                not_reviewed if review is None else review.configuration,
            ),
            (language.drawn("edge_pair"), drop.edge),
        ),
        legend=legend_rows(canvas.shapes),
        basis=basis_of(project, () if review is None else (review,)),
        verdict=None if review is None else review.verdict,
        counted=counted,
        notes=notes,
        language=language,
    )
