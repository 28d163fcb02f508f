"""How the views of a section share the paper: columns, rows, scale, and where each view lies."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass

from backspan.core.quantities import Style
from backspan.drawings.geometry import Box
from backspan.drawings.paper import MILLIMETRES, fitting_scale
from backspan.drawings.scene import Part, Point, Scale
from backspan.drawings.section_layout import SectionLayout
from backspan.drawings.section_points import View


@dataclass(frozen=True, slots=True)
class Grid:
    """A division of the paper, and the scale at which all views fit."""

    columns: int
    rows: int
    scale: Scale
    least_ratio: float
    """How many times smaller the views must at least be drawn."""


def grids(
    units: Style,
    views: Sequence[View],
    layout: SectionLayout,
    *,
    room: Callable[[int], tuple[float, float]],
    most_detail: float,
) -> Iterator[Grid]:
    """Each division that has room for the views; `room` is the paper (mm) for so many rows.

    Nothing is drawn larger than 1 to `most_detail`.
    """
    for columns in range(1, len(views) + 1):
        rows = -(-len(views) // columns)
        width, height = room(rows)
        across = width / columns - layout.left - layout.right
        up = height / rows - layout.above - layout.below
        if min(across, up) <= 0.0:
            continue
        ratio = max(
            max(view.width * MILLIMETRES / across, view.height * MILLIMETRES / up) for view in views
        )
        scale = fitting_scale(units, least_ratio=ratio, most_detail=most_detail)
        yield Grid(columns, rows, scale, ratio)


def cells(grid: Grid, area: Box, views: int) -> tuple[Box, ...]:
    """The boxes of so many views, row by row from the top left."""
    width, height = (area[2] - area[0]) / grid.columns, (area[3] - area[1]) / grid.rows
    boxes = []
    for place in range(views):
        row, column = divmod(place, grid.columns)
        left, top = area[0] + column * width, area[3] - row * height
        boxes.append((left, top - height, left + width, top))
    return tuple(boxes)


def parts_of(views: Sequence[View], boxes: Sequence[Box]) -> tuple[Part, ...]:
    """The pictures of some views as named parts of a sheet or figure."""
    return tuple(
        Part(f"point-{place + 1}", ", ".join(view.names), box)
        for place, (view, box) in enumerate(zip(views, boxes, strict=True))
    )


def roof_corner(view: View, scale: Scale, box: Box, layout: SectionLayout) -> Point:
    """Where the face of the building meets the roof surface, on paper."""
    factor = MILLIMETRES / scale.ratio
    spare_x = (box[2] - box[0]) - layout.left - layout.right - view.width * factor
    spare_y = (box[3] - box[1]) - layout.above - layout.below - view.height * factor
    aside = max(spare_x, 0.0) / 2
    if layout.narrow:
        aside = min(max(spare_x - layout.first_right, 0.0), layout.widest_left - layout.left)
    x = box[0] + layout.left + aside - view.left * factor
    y = box[1] + layout.below + max(spare_y, 0.0) / 2
    return (x, y)
