"""The section of a drop: one view for each suspension point that differs from the others."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from backspan.core.findings import SHORTER_BACKSPAN, Review, Verdict
from backspan.core.model.project import Project
from backspan.core.model.rigs import Drop
from backspan.core.words import drop_answer, say, say_check, settled
from backspan.drawings.canvas import Canvas
from backspan.drawings.edges import edge_of
from backspan.drawings.geometry import Box
from backspan.drawings.legend import legend_rows
from backspan.drawings.paper import MILLIMETRES, Frame, fitting_scale
from backspan.drawings.scalebar import scale_bar
from backspan.drawings.scene import DrawingError, Part, Scale, Scene, Shape
from backspan.drawings.section_points import SectionPoint, View, section_points, views_of
from backspan.drawings.section_view import draw_view
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

# Paper around what is drawn to scale: texts at the left, tieback at the right, dimensions above,
# the cut stage below.
LEFT, RIGHT, ABOVE, BELOW = 56.0, 42.0, 50.0, 44.0


@dataclass(frozen=True, slots=True)
class Grid:
    """How the views share the paper: columns, rows, and the scale at which all of them fit."""

    columns: int
    rows: int
    scale: Scale


def drop_section(project: Project, drop_id: str, review: Review | None) -> Scene:
    """The rig of one drop in section, to scale, with what was stated and what was not.

    Without a review the sheet says so. Raises DrawingError for a drop, roof or edge that the
    project does not have.
    """
    drop = _drop(project, drop_id)
    points = section_points(project, drop, review)
    views = views_of(points)
    shown = views[:MOST_VIEWS]
    size = sheet_size(project.units)
    left, bottom, right, top = size.drawing_area
    area = (left, bottom + FOOT, right, top)
    grid = _grid(project, shown, area)
    canvas = Canvas(Frame(grid.scale, (left, bottom)), area)
    boxes = _cells(grid, area, len(shown))
    for view, box in zip(shown, boxes, strict=True):
        canvas.placer.area = box
        draw_view(canvas, project, drop, view, at=_roof_corner(view, grid.scale, box), cell=box)
        canvas.write_labels()
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


def _drop(project: Project, drop_id: str) -> Drop:
    for drop in project.drops:
        if drop.id == drop_id:
            return drop
    names = ", ".join(drop.id for drop in project.drops) or "none"
    raise DrawingError(f"the project has no drop {drop_id!r}; its drops: {names}")


def _grid(project: Project, views: Sequence[View], area: Box) -> Grid:
    """The division of the paper at which the views come out largest."""
    width, height = area[2] - area[0], area[3] - area[1]
    best = Grid(1, 1, fitting_scale(project.units, least_ratio=LARGEST))
    least = None
    for columns in range(1, max(len(views), 1) + 1):
        rows = -(-len(views) // columns) or 1
        room = (width / columns - LEFT - RIGHT, height / rows - ABOVE - BELOW)
        if min(room) <= 0.0:
            continue
        ratio = max(
            (
                max(view.width * MILLIMETRES / room[0], view.height * MILLIMETRES / room[1])
                for view in views
            ),
            default=LARGEST,
        )
        if least is None or ratio < least:
            scale = fitting_scale(project.units, least_ratio=ratio, most_detail=LARGEST)
            least, best = ratio, Grid(columns, rows, scale)
    return best


def _cells(grid: Grid, area: Box, views: int) -> tuple[Box, ...]:
    width, height = (area[2] - area[0]) / grid.columns, (area[3] - area[1]) / grid.rows
    boxes = []
    for place in range(views):
        row, column = divmod(place, grid.columns)
        left, top = area[0] + column * width, area[3] - row * height
        boxes.append((left, top - height, left + width, top))
    return tuple(boxes)


def _roof_corner(view: View, scale: Scale, box: Box) -> tuple[float, float]:
    """Where the face of the building meets the roof surface, on paper: the view centred."""
    factor = MILLIMETRES / scale.ratio
    spare_x = (box[2] - box[0]) - LEFT - RIGHT - view.width * factor
    spare_y = (box[3] - box[1]) - ABOVE - BELOW - view.height * factor
    x = box[0] + LEFT + max(spare_x, 0.0) / 2 - view.left * factor
    y = box[1] + BELOW + max(spare_y, 0.0) / 2
    return (x, y)


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
        "Findings", ("Check", "At", "Answer"), (0.6, 0.165, 0.235), rows, "see the report"
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
