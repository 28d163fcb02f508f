"""The section of a drop: one view for each suspension point that differs from the others."""

from __future__ import annotations

from collections.abc import Sequence

from backspan.core.findings import SHORTER_BACKSPAN, Review, Verdict
from backspan.core.model.project import Project
from backspan.core.model.rigs import Drop
from backspan.core.words import drop_answer, say, say_check, settled
from backspan.drawings.canvas import Canvas
from backspan.drawings.edges import drop_named, edge_of
from backspan.drawings.geometry import Box
from backspan.drawings.legend import legend_rows
from backspan.drawings.paper import Frame, fitting_scale
from backspan.drawings.scalebar import scale_bar
from backspan.drawings.scene import Part, Scale, Scene, Shape
from backspan.drawings.section_grid import Grid, cells, grids
from backspan.drawings.section_layout import WHOLE_SHEET
from backspan.drawings.section_points import SectionPoint, View, section_points, views_of
from backspan.drawings.section_view import draw_views
from backspan.drawings.sheet import (
    SheetContent,
    SheetSize,
    SheetTable,
    basis_of,
    sheet,
    sheet_size,
)
from backspan.drawings.values import WORST_FIRST, length_text, own_length
from backspan.drawings.wording import (
    NO_RIG,
    NOT_REVIEWED,
    NOT_TO_SCALE,
    more_views_note,
    no_room_note,
)

FOOT = 14.0
LARGEST = 12.0
MOST_VIEWS = 4
MOST_REFUSED = 4


def drop_section(project: Project, drop_id: str, review: Review | None) -> Scene:
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
    area = (left, bottom + FOOT, right, top)
    grid = _grid(project, shown, area)
    canvas = Canvas(Frame(grid.scale, (left, bottom)), area)
    boxes = cells(grid, area, len(shown))
    draw_views(canvas, project, drop, tuple(zip(shown, boxes, strict=True)), WHOLE_SHEET)
    if not shown:
        middle = ((area[0] + area[2]) / 2, (area[1] + area[3]) / 2)
        canvas.label((NO_RIG,), canvas.frame.to_drawing(middle), bold=True)
    content = _content(project, drop, review, views, canvas)
    around, parts = sheet(project, content, size)
    return Scene(
        title=f"{project.site.name}: section of drop {drop.id}",
        description=_description(project, drop, review, points),
        width=size.width,
        height=size.height,
        units=project.units,
        sheet=(*around, *_foot(project, grid.scale, size)),
        drawing=tuple(canvas.shapes),
        scale=grid.scale,
        origin=canvas.frame.origin,
        dated=None if review is None else review.on,
        parts=(*parts, *_parts(shown, boxes)),
    )


def _grid(project: Project, views: Sequence[View], area: Box) -> Grid:
    """The division of the paper at which the views come out largest."""
    size = (area[2] - area[0], area[3] - area[1])
    possible = grids(project.units, views, WHOLE_SHEET, room=lambda _: size, most_detail=LARGEST)
    nothing = Grid(1, 1, fitting_scale(project.units, least_ratio=LARGEST), LARGEST)
    return min(possible, key=lambda grid: grid.least_ratio, default=nothing)


def _content(
    project: Project,
    drop: Drop,
    review: Review | None,
    views: Sequence[View],
    canvas: Canvas,
) -> SheetContent:
    notes = [NOT_TO_SCALE, *(() if review is None else _refused(review))]
    if canvas.placer.unplaced:
        notes.append(no_room_note(len(canvas.placer.unplaced)))
    left_out = tuple(name for view in views[MOST_VIEWS:] for name in view.names)
    if left_out:
        notes.append(more_views_note(left_out))
    return SheetContent(
        name=f"Section: drop {drop.id}" + (f", {drop.name}" if drop.name else ""),
        number=f"Section {drop.id}",
        scale=canvas.frame.scale,
        pairs=_pairs(project, drop, review),
        legend=legend_rows(canvas.shapes),
        basis=basis_of(project, () if review is None else (review,)),
        verdict=None if review is None else review.verdict,
        counted="" if review is None else _counted(review),
        table=None if review is None else _findings(review),
        notes=tuple(notes),
    )


def _refused(review: Review) -> list[str]:
    """What fails, and which of two backspans is judged, in the words of the findings."""
    told = [
        say(one.message, review.units) for one in review.findings if one.verdict is Verdict.FAIL
    ]
    notes = [note for one in review.findings for note in one.notes if note.id == SHORTER_BACKSPAN]
    told += [say(note, review.units) for note in notes]
    return list(dict.fromkeys(told))[:MOST_REFUSED]


def _counted(review: Review) -> str:
    return drop_answer(review).removeprefix(str(review.verdict)).removeprefix(", ")


def _findings(review: Review) -> SheetTable:
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
        (say_check(check), ", ".join(dict.fromkeys(subjects)), verdict)
        for (check, verdict), subjects in found.items()
    )
    return SheetTable(
        "Findings", ("Check", "At", "Answer"), (0.593, 0.198, 0.209), rows, "see the report"
    )


def _pairs(project: Project, drop: Drop, review: Review | None) -> tuple[tuple[str, str], ...]:
    pairs = [
        ("Reviewed", NOT_REVIEWED if review is None else review.on.isoformat()),
        ("Configuration", NOT_REVIEWED if review is None else review.configuration),
    ]
    if review is not None and review.governing is not None:
        finding = review.findings[review.governing]
        pairs.append(("Governing", f"{say_check(finding.check)}, {finding.subject}"))
    edge = edge_of(project, drop)
    faces = f", faces {edge.faces}" if edge.faces else ""
    pairs.append(("Edge", f"{edge.id}{faces}"))
    ends = (drop.start, drop.start + drop.width.value)
    pairs.append(("Along the edge", " to ".join(own_length(end, project.units) for end in ends)))
    if drop.height is not None:
        pairs.append(("Drop height", length_text(drop.height.value, project.units)))
    return tuple(pairs)


def _foot(project: Project, scale: Scale, size: SheetSize) -> tuple[Shape, ...]:
    left, bottom, _, _ = size.drawing_area
    return scale_bar(scale, project.units, (left + 6.0, bottom + 4.0))


def _parts(views: Sequence[View], boxes: Sequence[Box]) -> tuple[Part, ...]:
    return tuple(
        Part(f"point-{place + 1}", ", ".join(view.names), box)
        for place, (view, box) in enumerate(zip(views, boxes, strict=True))
    )


def _description(
    project: Project, drop: Drop, review: Review | None, points: Sequence[SectionPoint]
) -> str:
    answer = NOT_REVIEWED if review is None else drop_answer(review)
    return (
        f"Section through drop {drop.id} at {project.site.name}, to scale, with "
        f"{len(points)} suspension points. Answer: {answer}."
    )
