"""The elevation of a facade: its drops to scale, with their answers and their standing of the day.

It is seen from outside, from the street. An edge runs from its left end to its right end as seen
from the roof looking out; who stands in the street has the start of the edge at the right. So left
and right are exchanged against the view from the roof: a drop at a station lies that far from the
RIGHT end of the facade drawn, its point L right of its point R, and the sheet says so. (Against
the roof plan only a facade at its top is turned round: one at its bottom is read as it lies.)
"""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from backspan.core.findings import Review
from backspan.core.model.project import Project
from backspan.core.model.site import Edge, Roof
from backspan.core.words import ENGLISH, Language
from backspan.drawings.canvas import TEXT, Canvas
from backspan.drawings.edges import edge_line, roof_named
from backspan.drawings.elevation_drops import (
    CHAIN,
    Shown,
    draw_strips,
    measure_heights,
    measure_widths,
    name_points,
    name_strips,
    tiers_of,
)
from backspan.drawings.elevation_face import (
    LEVELS,
    Face,
    draw_face,
    measure_levels,
    name_levels,
)
from backspan.drawings.elevation_told import (
    description_of,
    foot_of,
    notes_of,
    pairs_of,
    title_of,
)
from backspan.drawings.geometry import Box
from backspan.drawings.language_note import language_note
from backspan.drawings.legend import legend_rows
from backspan.drawings.lettering import LEADING, text_width, wrapped
from backspan.drawings.paper import MILLIMETRES, centred, fitting_scale, ratio_to_fit
from backspan.drawings.plan import answers_table
from backspan.drawings.plan_drops import strips_on
from backspan.drawings.scene import Align, DrawingError, Layer, Scene, Text
from backspan.drawings.sheet import SheetContent, basis_of, sheet, sheet_size

FOOT = 26.0
"""Paper below the facade for the scale and for how it is seen, in millimetres."""

BELOW = 8.0
"""Paper between the lowest level and that, for the names of the edge's ends."""

ABOVE = 12.0
"""Paper above the dimensions of the drops, for those whose words stand beside their line."""

LEFT, RIGHT = LEVELS + 16.0, 36.0
"""Paper at the sides of the facade, for its levels and their names."""

LARGEST = 48.0
"""No facade is drawn larger than 1/4 in to the foot, or the next metric scale to it."""

FIGURE = (320.0, 310.0)
"""The most a facade takes without the column of a sheet, in millimetres."""

NOBODY: Mapping[str, str] = MappingProxyType({})


def edge_named(roof: Roof, edge_id: str) -> Edge:
    """The edge of that id; DrawingError names the edges of the roof."""
    for edge in roof.edges:
        if edge.id == edge_id:
            return edge
    names = ", ".join(edge.id for edge in roof.edges) or "none"
    raise DrawingError(f"roof {roof.id!r} has no edge {edge_id!r}; its edges: {names}")


def elevation(
    project: Project,
    roof_id: str,
    edge_id: str,
    reviews: Mapping[str, Review],
    *,
    standings: Mapping[str, str] = NOBODY,
    language: Language = ENGLISH,
) -> Scene:
    """The facade under one edge as a sheet; reviews and standings (in words) are by drop id.

    A drop without a review is drawn and said to be not reviewed. Raises DrawingError for a roof
    or an edge that the site lacks.
    """
    face, shown = _asked(project, roof_id, edge_id, reviews, standings)
    size = sheet_size(project.units)
    canvas = _drawn(face, shown, size.drawing_area, language)
    drops = tuple(one.drop for one in face.strips)
    made = tuple(reviews[one.id] for one in drops if one.id in reviews)
    content = SheetContent(
        name=language.drawn("elevation_name", edge=face.edge.id, roof=face.roof.name),
        number=language.drawn("elevation", roof=face.roof.id, edge=face.edge.id),
        scale=canvas.frame.scale,
        pairs=pairs_of(project, face, made, language),
        legend=legend_rows(canvas.shapes),
        basis=basis_of(project, made),
        table=answers_table(drops, reviews, language),
        notes=notes_of(canvas, face, shown),
        language=language,
    )
    around, parts = sheet(project, content, size)
    left, bottom, right, _ = size.drawing_area
    note = language_note(language, right=right - 3.0, bottom=bottom + 1.0)
    foot = foot_of(canvas, face, project, at=(left + 6.0, bottom), right=right)
    return Scene(
        title=title_of(project, face, language),
        description=description_of(project, face, reviews, standings, language),
        width=size.width,
        height=size.height,
        units=project.units,
        sheet=(*around, *foot, *note),
        drawing=tuple(canvas.shapes),
        scale=canvas.frame.scale,
        origin=canvas.frame.origin,
        dated=max((one.on for one in made), default=None),
        parts=parts,
    )


def elevation_figure(
    project: Project,
    roof_id: str,
    edge_id: str,
    reviews: Mapping[str, Review],
    *,
    standings: Mapping[str, str] = NOBODY,
    language: Language = ENGLISH,
) -> Scene:
    """The same without the column of a sheet, for a page: only as much paper as it needs."""
    face, shown = _asked(project, roof_id, edge_id, reviews, standings)
    canvas = _drawn(face, shown, (0.0, 0.0, *FIGURE), language, tight=True)
    width, height = canvas.placer.area[2], canvas.placer.area[3]
    made = [reviews[one.drop.id] for one in face.strips if one.drop.id in reviews]
    notes = " ".join(notes_of(canvas, face, shown))
    lines = wrapped(notes, room=width - 8.0, height=TEXT)
    more = TEXT * LEADING * len(lines)
    foot = foot_of(canvas, face, project, at=(4.0, 0.0), right=width, below=lines)
    return Scene(
        title=title_of(project, face, language),
        description=description_of(project, face, reviews, standings, language),
        width=width,
        height=height + more,
        units=project.units,
        sheet=foot,
        drawing=tuple(canvas.shapes),
        scale=canvas.frame.scale,
        origin=(canvas.frame.origin[0], canvas.frame.origin[1] + more),
        dated=max((one.on for one in made), default=None),
    )


def _asked(
    project: Project,
    roof_id: str,
    edge_id: str,
    reviews: Mapping[str, Review],
    standings: Mapping[str, str],
) -> tuple[Face, Shown]:
    roof = roof_named(project, roof_id)
    edge = edge_named(roof, edge_id)
    there = (one for one in project.drops if one.roof == roof.id and one.edge == edge.id)
    drops = sorted(there, key=lambda one: one.start)
    strips = strips_on(edge_line(edge), drops, reviews)
    return Face(roof, edge, strips), Shown(project, reviews, standings)


def _drawn(
    face: Face, shown: Shown, paper: Box, language: Language, *, tight: bool = False
) -> Canvas:
    """The facade at the largest standard scale at which it fits; with `tight` on less paper."""
    content = _content(face)
    above = CHAIN * tiers_of(face) + ABOVE
    left, bottom, right, top = paper
    area = (left + LEFT, bottom + FOOT + BELOW, right - RIGHT, top - above)
    ratio = ratio_to_fit(content, area)
    scale = fitting_scale(shown.units, least_ratio=ratio, most_detail=LARGEST)
    if tight:
        wide = (content[2] - content[0]) * MILLIMETRES / scale.ratio
        high = (content[3] - content[1]) * MILLIMETRES / scale.ratio
        right = max(left + LEFT + wide + RIGHT, min(150.0, right))
        top = area[1] + high + above
        area = (area[0], area[1], right - RIGHT, area[1] + high)
    frame = centred(scale, content=content, area=area)
    canvas = Canvas(frame, (left, bottom + FOOT, right, top), language=language)
    draw_face(canvas, face, shown.units)
    draw_strips(canvas, face, shown)
    _name_ends(canvas, face)
    name_levels(canvas, face)
    measure_heights(canvas, face, shown.units)
    name_strips(canvas, face, shown)
    name_points(canvas, face, shown)
    measure_levels(canvas, face, shown.units)
    measure_widths(canvas, face, shown.units)
    canvas.write_labels()
    return canvas


def _content(face: Face) -> Box:
    """All that is drawn to scale, in metres."""
    starts = [face.across(one.drop.start) for one in face.strips]
    ends = [face.across(one.drop.start + one.drop.width.value) for one in face.strips]
    right = max([face.length, *starts])
    left = min([0.0, *ends])
    low = face.lowest
    return (left, low, max(right, left + 1.0), max(face.top, low + 1.0))


def _name_ends(canvas: Canvas, face: Face) -> None:
    """Which end of the edge is where, below the facade."""
    y = canvas.frame.to_paper((0.0, face.lowest))[1] - BELOW / 2 - TEXT / 2
    ends = (("end_of_edge", 0.0, Align.START), ("start_of_edge", face.length, Align.END))
    texts = []
    for name, at, align in ends:
        words = canvas.language.drawn(name, edge=face.edge.id)
        x = canvas.frame.to_paper((at, 0.0))[0]
        texts.append(Text(Layer.LABEL, (x, y), words, TEXT, align))
    room = canvas.frame.drawn(face.length)
    if sum(text_width(one.text, height=TEXT) for one in texts) + 4.0 > room:
        # One below the other where the facade is narrow.
        x, low = texts[1].at
        texts[1] = Text(Layer.LABEL, (x, low - TEXT * LEADING), texts[1].text, TEXT, Align.END)
    canvas.write(texts)
