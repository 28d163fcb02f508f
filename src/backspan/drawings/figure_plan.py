"""The part of a roof plan around one drop, as a figure for a page of text."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping
from dataclasses import replace

from backspan.core.findings import Review
from backspan.core.model.project import Project
from backspan.core.model.rigs import Drop
from backspan.core.model.site import Edge, Obstacle, Roof
from backspan.core.quantities import Style
from backspan.core.words import ENGLISH, Language
from backspan.drawings.canvas import Canvas, Rank
from backspan.drawings.clipping import outline_within, segment_within, within
from backspan.drawings.edges import EdgeLine, drop_named, edge_line, edge_of, roof_named
from backspan.drawings.figure_section import MARGIN, NOTE, TEXT
from backspan.drawings.geometry import Box, bounds, corners, grown, moved
from backspan.drawings.paper import Frame, centred, fitting_scale, ratio_to_fit
from backspan.drawings.plan_building import (
    draw_anchors,
    draw_building,
    edge_name,
    halved,
    name_building,
)
from backspan.drawings.plan_drops import draw_drops, drops_extent
from backspan.drawings.plan_rig import STUB, PlannedBeam, draw_rigs, planned_beams
from backspan.drawings.scalebar import north_arrow, scale_bar
from backspan.drawings.scene import Layer, Point, Polygon, Scale, Scene, Shape, Text
from backspan.drawings.spots import Spot
from backspan.drawings.values import answer_text
from backspan.drawings.wording import figure_room_note

WIDTH, HEIGHT = 86.0, 80.0
"""The most a plan takes of a page, in millimetres: half its width, beside a table."""

FOOT = 13.0
"""Paper below for north arrow and scale."""

AROUND = 4.0
"""Paper kept around what belongs to the drop."""

LARGEST = 48.0
"""No plan is drawn larger than 1/4 in to the foot, or the next metric scale to it."""

NORTH = 10.0
LEAST_HEIGHT = 42.0
STEPS = 64
FURTHER = (2.5, 6.0, 10.0, 15.0, 21.0, 28.0)
"""How far from its edge the words of an edge may stand, in millimetres."""


def plan_figure(
    project: Project, drop_id: str, review: Review | None, *, language: Language = ENGLISH
) -> Scene:
    """The roof around one drop in plan at a standard scale, 86 mm wide and up to 80 mm high.

    Other drops and their rigs are left out. Without a review it says so. Raises DrawingError for
    a drop, roof or edge that the project lacks.
    """
    drop = drop_named(project, drop_id)
    edge_of(project, drop)
    roof = roof_named(project, drop.roof)
    reviews = {} if review is None else {drop.id: review}
    beams = planned_beams(project, roof, (drop,), reviews)
    frame, window = _placed(project.units, roof, drop, beams)
    canvas = Canvas(frame, grown(window, -0.5), text=TEXT, language=language)
    _draw(canvas, roof, drop, beams, reviews, units=project.units, window=window)
    height = window[3] + MARGIN
    notes = _notes(canvas, roof, height)
    return Scene(
        title=language.drawn("plan_figure_title", site=project.site.name, drop=drop.id),
        description=_description(project, drop, review, language),
        width=WIDTH,
        height=height + (NOTE if notes else 0.0),
        units=project.units,
        sheet=(
            Polygon(Layer.SHEET, corners(window)),
            *_below(project, frame.scale, language),
            *notes,
        ),
        drawing=tuple(canvas.shapes),
        scale=frame.scale,
        origin=frame.origin,
        dated=None if review is None else review.on,
    )


def _placed(
    units: Style, roof: Roof, drop: Drop, beams: tuple[PlannedBeam, ...]
) -> tuple[Frame, Box]:
    """The largest standard scale at which the drop fits, and the window (mm) it is seen through."""
    most = (MARGIN, FOOT, WIDTH - MARGIN, HEIGHT - MARGIN)
    area = grown(most, -AROUND)
    scale = fitting_scale(units, least_ratio=LARGEST)
    # The strip outside the edge keeps its size on paper, whatever the scale.
    while True:
        frame = Frame(scale, (0.0, 0.0))
        content = bounds(_extent(frame, roof, drop, beams)) or (0.0, 0.0, 1.0, 1.0)
        if ratio_to_fit(content, area) <= scale.ratio * (1.0 + 1e-9):
            break
        scale = fitting_scale(units, least_ratio=scale.ratio * 1.001)
    tall = max(frame.drawn(content[3] - content[1]) + 2 * AROUND, LEAST_HEIGHT)
    window = (most[0], most[1], most[2], most[1] + tall)
    return centred(scale, content=content, area=window), window


def _extent(
    frame: Frame, roof: Roof, drop: Drop, beams: tuple[PlannedBeam, ...]
) -> Iterator[Point]:
    """Points (metres) of everything that must be seen."""
    yield from drops_extent(frame, roof, (drop,))
    for beam in beams:
        yield from (beam.at(beam.picture.left), beam.at(beam.picture.right))
    out = next(edge_line(edge) for edge in roof.edges if edge.id == drop.edge).outward
    stub = frame.real(STUB)
    for anchor in roof.anchors:
        if drop.rig is not None and anchor.id in drop.rig.anchors:
            yield anchor.at
            yield (anchor.at[0] + out[0] * stub, anchor.at[1] + out[1] * stub)


def _draw(
    canvas: Canvas,
    roof: Roof,
    drop: Drop,
    beams: tuple[PlannedBeam, ...],
    reviews: Mapping[str, Review],
    *,
    units: Style,
    window: Box,
) -> None:
    """All that shows in the window; the building is cut off at its sides."""
    left, bottom, right, top = window
    low, high = canvas.frame.to_drawing((left, bottom)), canvas.frame.to_drawing((right, top))
    seen = (*low, *high)
    building = Canvas(canvas.frame, window)
    draw_building(building, roof, units)
    canvas.add(*within(building.shapes, seen))
    draw_drops(canvas, roof, (drop,), reviews, units, gaps=False)
    draw_rigs(canvas, roof, (drop,), beams, units)
    names = frozenset[str]() if drop.rig is None else drop.rig.anchors
    own = tuple(anchor for anchor in roof.anchors if anchor.id in names)
    draw_anchors(canvas, replace(roof, anchors=own), units)
    obstacles = tuple(_obstacles_seen(roof, seen))
    name_building(canvas, replace(roof, edges=(), obstacles=obstacles), units)
    for edge in roof.edges:
        if edge.id == drop.edge:
            _name_edge(canvas, edge, seen)
    canvas.write_labels()


def _obstacles_seen(roof: Roof, seen: Box) -> Iterator[Obstacle]:
    for obstacle in roof.obstacles:
        outline = outline_within(obstacle.outline, seen)
        if outline:
            yield replace(obstacle, outline=outline)


def _name_edge(canvas: Canvas, edge: Edge, seen: Box) -> None:
    """The name of the drop's edge beside what is seen of it, best where nothing stands."""
    part = segment_within((edge.start, edge.end), seen)
    if part is None:
        return
    line = edge_line(replace(edge, start=part[0], end=part[1]))
    target = line.at(station=line.length / 2)
    spots = tuple(_edge_spots(canvas, line))
    words = edge_name(edge, canvas.language)
    name, faces = words[0], " ".join(words[1:])
    # Between the edge of the figure and the drop there may be room for one word in a line.
    others = ((name, *halved(faces)), (name, *faces.split())) if faces else ()
    canvas.later(words, target, spots=spots, rank=Rank.PLACE, others=others)


def _edge_spots(canvas: Canvas, line: EdgeLine) -> Iterator[Spot]:
    """All along an edge, outside it first; upright edges have their words at a side."""
    wall = line.edge.parapet
    thick = 0.0 if wall is None else canvas.frame.drawn(wall.thickness.value)
    for step in range(1, STEPS):
        place = canvas.frame.to_paper(line.at(station=line.length * step / STEPS))
        for away in FURTHER:
            for side, by in ((line.outward, away), (line.outward, -away - thick)):
                at = moved(place, along=side, by=by)
                sign = 1.0 if by > 0.0 else -1.0
                across, up = round(sign * side[0]), round(sign * side[1])
                cost = away / 2 + (0.0 if by > 0.0 else 1.0) + abs(step / STEPS - 0.5) * 4.0
                yield Spot(at, across, up, cost, points_at=place)


def _below(project: Project, scale: Scale, language: Language) -> tuple[Shape, ...]:
    """Scale bar and north arrow, below the window."""
    north = (WIDTH - MARGIN - NORTH / 2, FOOT / 2)
    return (
        *scale_bar(scale, project.units, (AROUND, 2 * MARGIN), segments=1, language=language),
        *north_arrow(north, clockwise=math.degrees(project.site.north), size=NORTH),
    )


def _notes(canvas: Canvas, roof: Roof, height: float) -> tuple[Text, ...]:
    missing = len(canvas.placer.unplaced)
    if not missing:
        return ()
    sheet = canvas.language.drawn("plan", roof=roof.id)
    words = figure_room_note(missing, sheet, canvas.language)
    return (Text(Layer.LABEL, (MARGIN, height), words, TEXT, bold=True),)


def _description(project: Project, drop: Drop, review: Review | None, language: Language) -> str:
    return language.drawn(
        "plan_figure_told",
        drop=drop.id,
        site=project.site.name,
        answer=answer_text(review, language),
    )
