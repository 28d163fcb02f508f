"""The section of a drop as a figure for a page of text: no border, legend, table or title block."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from functools import partial

from backspan.core.findings import Review
from backspan.core.model.project import Project
from backspan.core.model.rigs import Drop
from backspan.core.quantities import Style
from backspan.core.words import ENGLISH, Language
from backspan.drawings.canvas import Canvas
from backspan.drawings.edges import drop_named, edge_of
from backspan.drawings.geometry import Box, corners
from backspan.drawings.paper import MILLIMETRES, Frame, fitting_scale
from backspan.drawings.scalebar import bar_room, scale_bar
from backspan.drawings.scene import Layer, Point, Scene, Text
from backspan.drawings.section_grid import Grid, cells, grids, parts_of
from backspan.drawings.section_layout import IN_A_FIGURE
from backspan.drawings.section_points import View, section_points, views_of
from backspan.drawings.section_view import draw_views
from backspan.drawings.values import WORST_FIRST, answer_text
from backspan.drawings.wording import figure_room_note, more_views_note

WIDTH = 176.0
"""What a letter page has between its margins, in millimetres."""

ONE_ROW = 90.0
EACH_ROW = 80.0
MOST_VIEWS = 1
"""A page has room for one: points that differ are drawn on the drop's own sheet."""

TEXT = 2.1
"""Height of a capital letter in millimetres: a page is read in the hand, not pinned up."""

LARGEST = 24.0
SMALLER = 2
"""How many scales further down are tried where labels find no room."""

MARGIN = 1.0
BAR = 9.0
SEGMENTS = 2
NOTE = 4.0


@dataclass(frozen=True, slots=True)
class _Figure:
    """The views at one scale: where they lie on the paper, and how high that is (mm)."""

    canvas: Canvas
    boxes: tuple[Box, ...]
    bar: Point
    height: float

    @property
    def left_out(self) -> int:
        """How many labels found no room."""
        return len(self.canvas.placer.unplaced)


def section_figure(
    project: Project, drop_id: str, review: Review | None, *, language: Language = ENGLISH
) -> Scene:
    """The rig of one drop in section at a standard scale, 176 mm wide.

    It is as high as its views need: up to 90 mm for one row of them, else 80 mm for each. Without
    a review it says so. Raises DrawingError for a drop, roof or edge the project lacks.
    """
    drop = drop_named(project, drop_id)
    edge_of(project, drop)
    views = views_of(section_points(project, drop, review))
    scene = Scene(
        title=language.drawn("section_title", site=project.site.name, drop=drop.id),
        description=_description(project, drop, review, views, language),
        width=WIDTH,
        height=BAR,
        units=project.units,
        sheet=(),
        dated=None if review is None else review.on,
    )
    if not views:
        words = language.drawn("no_rig")
        said = Text(Layer.LABEL, (MARGIN, BAR / 2), words, TEXT, bold=True)
        return scene.with_sheet((said,))
    shown = sorted(views, key=_rank)[:MOST_VIEWS]
    figure = _figure(project, drop, shown, language)
    frame = figure.canvas.frame
    bar = scale_bar(frame.scale, project.units, figure.bar, segments=SEGMENTS, language=language)
    notes = _notes(drop, figure, [view for view in views if view not in shown])
    return replace(
        scene,
        height=figure.height + len(notes) * NOTE + (MARGIN if notes else 0.0),
        sheet=(*bar, *notes),
        drawing=tuple(figure.canvas.shapes),
        scale=frame.scale,
        origin=frame.origin,
        parts=parts_of(shown, figure.boxes),
    )


def _rank(view: View) -> int:
    """The worst answer first; points without one come last."""
    answer = view.first.answer
    return len(WORST_FIRST) if answer is None else WORST_FIRST.index(answer)


def _figure(project: Project, drop: Drop, views: Sequence[View], language: Language) -> _Figure:
    """The views at the largest scale at which all their labels find room, or nearly all."""
    # One column always has room, so there is a first.
    first, *others = _possible(project.units, views)
    best = _drawn(project, drop, views, first, language)
    for grid in others:
        if best.left_out == 0:
            break
        figure = _drawn(project, drop, views, grid, language)
        if figure.left_out < best.left_out:
            best = figure
    return best


def _possible(units: Style, views: Sequence[View]) -> Iterator[Grid]:
    """Divisions and scales, the largest drawing first and of equal ones the lowest."""
    found = []
    for grid in grids(units, views, IN_A_FIGURE, room=_room, most_detail=LARGEST):
        scale = grid.scale
        for _ in range(1 + SMALLER):
            found.append(replace(grid, scale=scale))
            scale = fitting_scale(units, least_ratio=scale.ratio * 1.001)
    yield from sorted(found, key=lambda grid: (grid.scale.ratio, grid.rows))


def _room(rows: int) -> tuple[float, float]:
    return (WIDTH, ONE_ROW if rows == 1 else rows * EACH_ROW)


def _drawn(
    project: Project, drop: Drop, views: Sequence[View], grid: Grid, language: Language
) -> _Figure:
    tallest = max(view.height for view in views) * MILLIMETRES / grid.scale.ratio
    rows = grid.rows * (IN_A_FIGURE.above + IN_A_FIGURE.below + tallest)
    # Without room for a row of its own the scale bar stands below the last roof surface.
    own = grid.columns > 1 or rows + BAR <= _room(grid.rows)[1]
    foot = BAR if own else MARGIN
    # There the dimension of the rear stand keeps above it, in one row with the setback.
    layout = IN_A_FIGURE if own else replace(IN_A_FIGURE, rear=IN_A_FIGURE.setback)
    height = foot + rows
    canvas = Canvas(
        Frame(grid.scale, (0.0, 0.0)), (0.0, 0.0, WIDTH, height), text=TEXT, language=language
    )
    boxes = cells(grid, (0.0, foot, WIDTH, height), len(views))
    room_at = partial(bar_room, grid.scale, project.units, segments=SEGMENTS, language=language)
    room = room_at((0.0, 0.0))
    bar = (WIDTH - 2 * MARGIN - room[2], MARGIN - room[1])
    canvas.placer.block(corners(room_at(bar)))
    draw_views(canvas, project, drop, tuple(zip(views, boxes, strict=True)), layout)
    return _Figure(canvas, boxes, bar, height)


def _notes(drop: Drop, figure: _Figure, not_drawn: Sequence[View]) -> tuple[Text, ...]:
    """What the figure leaves out, above it."""
    said, language = [], figure.canvas.language
    if figure.left_out:
        sheet = language.drawn("section", drop=drop.id)
        said.append(figure_room_note(figure.left_out, sheet, language))
    if not_drawn:
        names = tuple(name for view in not_drawn for name in view.names)
        said.append(more_views_note(names, language))
    return tuple(
        Text(Layer.LABEL, (MARGIN, figure.height + MARGIN + place * NOTE), words, TEXT, bold=True)
        for place, words in enumerate(reversed(said))
    )


def _description(
    project: Project,
    drop: Drop,
    review: Review | None,
    views: Sequence[View],
    language: Language,
) -> str:
    names = ", ".join(name for view in views for name in view.names)
    return language.drawn(
        "section_figure_told",
        drop=drop.id,
        site=project.site.name,
        points=names or language.drawn("no_points"),
        answer=answer_text(review, language),
    )
