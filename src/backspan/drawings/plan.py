"""The roof plan: building, anchors, drops with their answers, and all rigs in plan."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping

from backspan.core.findings import Review
from backspan.core.model.project import Project
from backspan.core.model.rigs import Drop
from backspan.core.model.site import Roof
from backspan.core.quantities import Style
from backspan.core.words import ENGLISH, Language
from backspan.drawings.canvas import Canvas
from backspan.drawings.edges import backward_edges, roof_named
from backspan.drawings.geometry import bounds, grown
from backspan.drawings.language_note import language_note
from backspan.drawings.legend import legend_rows
from backspan.drawings.paper import Frame, centred, fitting_scale, ratio_to_fit
from backspan.drawings.plan_building import draw_anchors, draw_building, name_building
from backspan.drawings.plan_drops import draw_drops, drops_extent, strips_depth
from backspan.drawings.plan_rig import PlannedBeam, draw_rigs, planned_beams
from backspan.drawings.scalebar import north_arrow, scale_bar
from backspan.drawings.scene import Point, Scale, Scene, Shape
from backspan.drawings.schedule import schedule, schedule_height
from backspan.drawings.sheet import (
    SheetContent,
    SheetSize,
    SheetTable,
    basis_of,
    sheet,
    sheet_size,
)
from backspan.drawings.tables import Cell
from backspan.drawings.values import answer_text, length_text
from backspan.drawings.wording import backward_note, no_room_note

BORDER = 5.0
"""Paper left outside the drops and their dimensions, in millimetres."""

FOOT_ROOM = 14.0
LARGEST = 24.0
"""No roof is drawn larger than 1/2 in to the foot, or the next metric scale to it."""


def roof_plan(
    project: Project,
    reviews: Mapping[str, Review],
    roof_id: str,
    *,
    language: Language = ENGLISH,
) -> Scene:
    """The plan of one roof with every drop on it; `reviews` are by drop id.

    A drop without a review is drawn and said to be not reviewed.
    Raises DrawingError when the site has no such roof.
    """
    roof = roof_named(project, roof_id)
    drops = tuple(drop for drop in project.drops if drop.roof == roof.id)
    beams = planned_beams(project, roof, drops, reviews)
    size = sheet_size(project.units)
    room = size.drawing_area[3] - size.drawing_area[1]
    table = schedule_height(project, beams, language, room=room)
    canvas = _canvas(project, roof, drops, beams, size, table=table, language=language)
    _draw(canvas, roof, drops, beams, reviews=reviews, units=project.units)
    made = tuple(reviews[drop.id] for drop in drops if drop.id in reviews)
    scale = canvas.frame.scale
    content = SheetContent(
        name=language.drawn("plan_name", roof=roof.name),
        number=language.drawn("plan", roof=roof.id),
        scale=scale,
        pairs=_pairs(project, roof, made, language),
        legend=legend_rows(canvas.shapes),
        basis=basis_of(project, made),
        table=answers_table(drops, reviews, language),
        notes=_notes(roof, language, unplaced=len(canvas.placer.unplaced)),
        language=language,
    )
    around, parts = sheet(project, content, size)
    return Scene(
        title=language.drawn("plan_title", site=project.site.name, roof=roof.name),
        description=_description(project, roof, drops, reviews, language),
        width=size.width,
        height=size.height,
        units=project.units,
        sheet=(*around, *_foot(project, beams, size, scale, table=table, language=language)),
        drawing=tuple(canvas.shapes),
        scale=scale,
        origin=canvas.frame.origin,
        dated=max((review.on for review in made), default=None),
        parts=parts,
    )


def _canvas(
    project: Project,
    roof: Roof,
    drops: tuple[Drop, ...],
    beams: tuple[PlannedBeam, ...],
    size: SheetSize,
    *,
    table: float,
    language: Language,
) -> Canvas:
    """A canvas at the largest standard scale at which the roof fits above the schedule."""
    left, bottom, right, top = size.drawing_area
    whole = (left, bottom + table + FOOT_ROOM, right, top)
    area = grown(whole, -BORDER)
    built = tuple(_extent(roof, beams))
    content = bounds(built) or (0.0, 0.0, 1.0, 1.0)
    scale = fitting_scale(
        project.units, least_ratio=ratio_to_fit(content, area), most_detail=LARGEST
    )
    # The strips outside the edges keep their size on paper, whatever the scale.
    while True:
        frame = Frame(scale, (0.0, 0.0))
        content = bounds((*built, *drops_extent(frame, roof, drops))) or content
        needed = ratio_to_fit(content, area)
        if needed <= scale.ratio * (1.0 + 1e-9):
            frame = centred(scale, content=content, area=area)
            return Canvas(frame, grown(whole, -2.0), language=language)
        scale = fitting_scale(project.units, least_ratio=scale.ratio * 1.001)


def _draw(
    canvas: Canvas,
    roof: Roof,
    drops: tuple[Drop, ...],
    beams: tuple[PlannedBeam, ...],
    *,
    reviews: Mapping[str, Review],
    units: Style,
) -> None:
    draw_building(canvas, roof, units)
    draw_drops(canvas, roof, drops, reviews, units)
    draw_rigs(canvas, roof, drops, beams, units)
    draw_anchors(canvas, roof, units)
    name_building(canvas, roof, units, taken=strips_depth(roof, drops))
    canvas.write_labels()


def _extent(roof: Roof, beams: tuple[PlannedBeam, ...]) -> Iterator[Point]:
    yield from roof.outline
    for edge in roof.edges:
        yield from (edge.start, edge.end)
    for obstacle in roof.obstacles:
        yield from obstacle.outline
    yield from (anchor.at for anchor in roof.anchors)
    for beam in beams:
        yield from (beam.at(beam.picture.left), beam.at(beam.picture.right))


def answers_table(
    drops: tuple[Drop, ...], reviews: Mapping[str, Review], language: Language
) -> SheetTable:
    """Every drop with its answer, configuration code and date."""
    return SheetTable(
        language.drawn("answers"),
        (
            language.drawn("drop"),
            language.drawn("answer"),
            language.drawn("configuration"),
            language.drawn("reviewed"),
        ),
        (0.15, 0.28, 0.32, 0.25),
        tuple(_answer(drop.id, reviews.get(drop.id)) for drop in drops),
        language.drawn("see_sections"),
    )


def _answer(drop: str, review: Review | None) -> tuple[Cell, ...]:
    if review is None:
        return (drop, None, "-", "-")
    return (drop, review.verdict, review.configuration, review.on.isoformat())


def _pairs(
    project: Project, roof: Roof, reviews: tuple[Review, ...], language: Language
) -> tuple[tuple[str, str], ...]:
    level = length_text(roof.level.value, project.units)
    return (
        (language.drawn("reviewed"), reviewed_on(reviews, language)),
        (language.drawn("configuration"), language.drawn("by_drop")),
        (language.drawn("roof_level"), level),
    )


def reviewed_on(reviews: tuple[Review, ...], language: Language) -> str:
    """The day of the reviews, or the first and the last of their days."""
    dates = sorted(review.on.isoformat() for review in reviews)
    if not dates:
        return language.drawn("not_reviewed")
    if dates[0] == dates[-1]:
        return dates[0]
    return language.drawn("from_to", start=dates[0], end=dates[-1])


def _notes(roof: Roof, language: Language, *, unplaced: int) -> tuple[str, ...]:
    notes = [language.drawn("angles"), language.drawn("taken_over")]
    if backward_edges(roof):
        notes.append(backward_note(backward_edges(roof), language))
    if unplaced:
        notes.append(no_room_note(unplaced, language))
    return tuple(notes)


def _foot(
    project: Project,
    beams: tuple[PlannedBeam, ...],
    size: SheetSize,
    scale: Scale,
    *,
    table: float,
    language: Language,
) -> tuple[Shape, ...]:
    """North arrow, scale bar and schedule, below the plan."""
    left, bottom, right, top = size.drawing_area
    at = (left + 6.0, bottom + table)
    bar = scale_bar(scale, project.units, (at[0], at[1] + 5.0), language=language)
    north = north_arrow((left + 11.0, top - 14.0), clockwise=math.degrees(project.site.north))
    note = language_note(language, right=right - 3.0, bottom=at[1] + 2.0)
    if not beams:
        return (*bar, *north, *note)
    width = right - left - 12.0
    return (
        *bar,
        *north,
        *note,
        *schedule(project, beams, language, at=at, width=width, height=table),
    )


def _description(
    project: Project,
    roof: Roof,
    drops: tuple[Drop, ...],
    reviews: Mapping[str, Review],
    language: Language,
) -> str:
    said = "; ".join(f"{drop.id} {answer_text(reviews.get(drop.id), language)}" for drop in drops)
    return language.drawn(
        "plan_told",
        roof=roof.name,
        site=project.site.name,
        anchors=str(len(roof.anchors)),
        drops=str(len(drops)),
        answers=said or language.drawn("no_drops"),
    )
