"""The section of a drop: one view for each suspension point that differs from the others."""

from __future__ import annotations

from collections.abc import Sequence

from backspan.core.findings import SHORTER_BACKSPAN, Review, Verdict
from backspan.core.model.project import Project
from backspan.core.model.rigs import Drop
from backspan.core.words import ENGLISH, Language, drop_answer, say, say_check, settled
from backspan.drawings.canvas import TEXT, Canvas
from backspan.drawings.edges import drop_named, edge_of
from backspan.drawings.geometry import Box
from backspan.drawings.language_note import language_note
from backspan.drawings.legend import legend_rows
from backspan.drawings.lettering import LEADING, wrapped
from backspan.drawings.paper import Frame, fitting_scale
from backspan.drawings.scalebar import scale_bar
from backspan.drawings.scene import Layer, Scale, Scene, Shape, Text
from backspan.drawings.section_grid import Grid, cells, grids, parts_of
from backspan.drawings.section_joints import joint_notes, most_joints
from backspan.drawings.section_layout import WHOLE_SHEET, SectionLayout, with_joints
from backspan.drawings.section_points import SectionPoint, View, section_points, views_of
from backspan.drawings.section_softeners import softener_notes
from backspan.drawings.section_view import draw_views
from backspan.drawings.sheet import (
    SheetContent,
    SheetSize,
    SheetTable,
    basis_of,
    sheet,
    sheet_size,
)
from backspan.drawings.values import WORST_FIRST, answer_text, length_text, own_length
from backspan.drawings.wording import more_views_note, no_room_note

FOOT = 14.0
INDENT = 6.0
LARGEST = 12.0
MOST_VIEWS = 4
MOST_REFUSED = 4


def drop_section(
    project: Project, drop_id: str, review: Review | None, *, language: Language = ENGLISH
) -> Scene:
    """The rig of one drop in section, to scale, with what was stated and what was not.

    Without a review the sheet says so. Raises DrawingError for a drop, roof or edge that the
    project does not have.
    """
    drop = drop_named(project, drop_id)
    points = section_points(project, drop, review)
    views = views_of(points)
    shown = views[:MOST_VIEWS]
    size = sheet_size(project.units)
    left, bottom, right, top = size.drawing_area
    seen = _seen(project, drop, views, room=right - left - 2 * INDENT, language=language)
    foot = FOOT + len(seen) * TEXT * LEADING
    area = (left, bottom + foot, right, top)
    layout, grid = _divided(project, shown, area)
    canvas = Canvas(Frame(grid.scale, (left, bottom)), area, language=language)
    boxes = cells(grid, area, len(shown))
    draw_views(canvas, project, drop, tuple(zip(shown, boxes, strict=True)), layout)
    if not shown:
        middle = ((area[0] + area[2]) / 2, (area[1] + area[3]) / 2)
        no_rig = language.drawn("no_rig")
        canvas.label((no_rig,), canvas.frame.to_drawing(middle), bold=True)
    content = _content(project, drop, review, views, canvas)
    around, parts = sheet(project, content, size)
    return Scene(
        title=language.drawn("section_title", site=project.site.name, drop=drop.id),
        description=_description(project, drop, review, points, language),
        width=size.width,
        height=size.height,
        units=project.units,
        sheet=(*around, *_foot(project, grid.scale, size, seen, language)),
        drawing=tuple(canvas.shapes),
        scale=grid.scale,
        origin=canvas.frame.origin,
        dated=None if review is None else review.on,
        parts=(*parts, *parts_of(shown, boxes)),
    )


def _divided(project: Project, views: Sequence[View], area: Box) -> tuple[SectionLayout, Grid]:
    """A row of dimensions for each joint of a beam, if nothing is drawn smaller for that."""
    plain = _grid(project, views, area, WHOLE_SHEET)
    layout = with_joints(WHOLE_SHEET, most_joints(views))
    grid = _grid(project, views, area, layout)
    if grid.scale.ratio > plain.scale.ratio:
        return WHOLE_SHEET, plain
    return layout, grid


def _grid(project: Project, views: Sequence[View], area: Box, layout: SectionLayout) -> Grid:
    """The division of the paper at which the views come out largest."""
    size = (area[2] - area[0], area[3] - area[1])
    possible = grids(project.units, views, layout, room=lambda _: size, most_detail=LARGEST)
    nothing = Grid(1, 1, fitting_scale(project.units, least_ratio=LARGEST), LARGEST)
    return min(possible, key=lambda grid: grid.least_ratio, default=nothing)


def _content(
    project: Project,
    drop: Drop,
    review: Review | None,
    views: Sequence[View],
    canvas: Canvas,
) -> SheetContent:
    language = canvas.language
    notes = [
        language.drawn("not_to_scale"),
    ]
    if review is not None:
        notes += _refused(review, language)
    if canvas.placer.unplaced:
        notes.append(no_room_note(len(canvas.placer.unplaced), language))
    left_out = tuple(name for view in views[MOST_VIEWS:] for name in view.names)
    if left_out:
        notes.append(more_views_note(left_out, language))
    return SheetContent(
        name=language.drawn("section_name", drop=drop.id) + (f", {drop.name}" if drop.name else ""),
        number=language.drawn("section", drop=drop.id),
        scale=canvas.frame.scale,
        pairs=_pairs(project, drop, review, language),
        # The column is full; a plate has its row on the sheet of details.
        legend=tuple(row for row in legend_rows(canvas.shapes) if row is not Layer.PLATE),
        basis=basis_of(project, () if review is None else (review,)),
        verdict=None if review is None else review.verdict,
        counted="" if review is None else _counted(review, language),
        table=None if review is None else _findings(review, language),
        notes=tuple(notes),
        language=language,
    )


def _refused(review: Review, language: Language) -> list[str]:
    """What fails, and which of two backspans is judged, in the words of the findings."""
    told = [
        say(one.message, review.units, language=language)
        for one in review.findings
        if one.verdict is Verdict.FAIL
    ]
    notes = [note for one in review.findings for note in one.notes if note.id == SHORTER_BACKSPAN]
    told += [say(note, review.units, language=language) for note in notes]
    return list(dict.fromkeys(told))[:MOST_REFUSED]


def _counted(review: Review, language: Language) -> str:
    answer = drop_answer(review, language=language)
    return answer.removeprefix(language.word(review.verdict)).removeprefix(", ")


def _findings(review: Review, language: Language) -> SheetTable:
    """What was found, the worst first; one row for each check and answer."""
    own, taken = f"{review.drop}/", settled(review)
    found: dict[tuple[str, Verdict], list[str]] = {}
    for verdict in WORST_FIRST:
        for at, finding in enumerate(review.findings):
            if finding.verdict is verdict and at not in taken:
                found.setdefault((finding.check, verdict), []).append(
                    finding.subject.removeprefix(own)
                )
    rows = tuple(
        (say_check(check, language=language), ", ".join(dict.fromkeys(subjects)), verdict)
        for (check, verdict), subjects in found.items()
    )
    return SheetTable(
        language.drawn("findings"),
        (language.drawn("check"), language.drawn("at"), language.drawn("answer")),
        (0.593, 0.198, 0.209),
        rows,
        language.drawn("see_report"),
    )


def _pairs(
    project: Project, drop: Drop, review: Review | None, language: Language
) -> tuple[tuple[str, str], ...]:
    not_reviewed = language.drawn("not_reviewed")
    pairs = [
        (language.drawn("reviewed"), not_reviewed if review is None else review.on.isoformat()),
        (
            language.drawn("configuration"),
            not_reviewed if review is None else review.configuration,
        ),
    ]
    if review is not None and review.governing is not None:
        finding = review.findings[review.governing]
        check = say_check(finding.check, language=language)
        pairs.append((language.drawn("governing"), f"{check}, {finding.subject}"))
    edge = edge_of(project, drop)
    faced = edge.id
    if edge.faces:
        faced = language.drawn("edge_faces", edge=edge.id, faces=edge.faces)
    pairs.append((language.drawn("edge_pair"), faced))
    start = own_length(drop.start, project.units)
    end = own_length(drop.start + drop.width.value, project.units)
    pairs.append((language.drawn("along_edge"), language.drawn("from_to", start=start, end=end)))
    if drop.height is not None:
        height = length_text(drop.height.value, project.units)
        pairs.append((language.drawn("drop_height"), height))
    return tuple(pairs)


def _seen(
    project: Project, drop: Drop, views: Sequence[View], *, room: float, language: Language
) -> tuple[str, ...]:
    """What was seen of joints and softeners, in lines across the foot of the drawing."""
    notes = (*joint_notes(project, views, language), *softener_notes(drop.rig, language))
    return tuple(line for note in notes for line in wrapped(note, room=room, height=TEXT))


def _foot(
    project: Project, scale: Scale, size: SheetSize, seen: Sequence[str], language: Language
) -> tuple[Shape, ...]:
    left, bottom, right, _ = size.drawing_area
    bar = scale_bar(scale, project.units, (left + INDENT, bottom + 4.0), language=language)
    lines = tuple(
        Text(Layer.LABEL, (left + INDENT, bottom + FOOT + row * TEXT * LEADING), line, TEXT)
        for row, line in enumerate(reversed(seen))
    )
    return (*bar, *lines, *language_note(language, right=right - 3.0, bottom=bottom + 1.0))


def _description(
    project: Project,
    drop: Drop,
    review: Review | None,
    points: Sequence[SectionPoint],
    language: Language,
) -> str:
    return language.drawn(
        "section_told",
        drop=drop.id,
        site=project.site.name,
        count=str(len(points)),
        answer=answer_text(review, language),
    )
