"""The rigging schedule under a roof plan: what was measured at every suspension point."""

from __future__ import annotations

from collections.abc import Sequence

from backspan.core.model.project import Project
from backspan.core.quantities import Style
from backspan.drawings.beams import count_text, piece_named
from backspan.drawings.plan_rig import PlannedBeam
from backspan.drawings.scene import Point, Shape
from backspan.drawings.tables import ROW, Cell, Column, table
from backspan.drawings.values import (
    Known,
    answer_of,
    force_text,
    known_length_text,
    mass_text,
    no_answer,
)
from backspan.drawings.wording import NOT_MEASURED, NOT_STATED

SHARE = 0.34
"""The most of the drawing area's height that the schedule takes."""

#: Headings, and the share of the width each column takes.
COLUMNS = (
    Column("Point", 0.09),
    Column("Reach", 0.2),
    Column("Backspan", 0.22),
    Column("Counterweight", 0.225),
    Column("Hoist rated load", 0.155),
    Column("Answer", 0.11),
)


def schedule_height(project: Project, beams: Sequence[PlannedBeam], *, room: float) -> float:
    """Height the schedule takes under a drawing that is `room` high; nothing without a rig."""
    if not beams:
        return 0.0
    return min(ROW * (len(schedule_rows(project, beams)) + 1), room * SHARE) + 3.0


def schedule_rows(project: Project, beams: Sequence[PlannedBeam]) -> list[tuple[Cell, ...]]:
    """One row for each suspension point; the points of a drop that are alike share one."""
    found: dict[tuple[str, tuple[Cell, ...]], list[str]] = {}
    for beam in beams:
        found.setdefault((beam.drop.id, _row(project, beam)), []).append(beam.point.id)
    return [(f"{drop}/{', '.join(points)}", *cells) for (drop, cells), points in found.items()]


def schedule(
    project: Project, beams: Sequence[PlannedBeam], *, at: Point, width: float, height: float
) -> tuple[Shape, ...]:
    """The table with its upper left corner at `at`."""
    rows = schedule_rows(project, beams)
    columns = [Column(column.heading, column.width * width) for column in COLUMNS]
    shapes, _ = table(
        columns, rows, left=at[0], top=at[1], room=height, more="see the section of each drop"
    )
    return shapes


def _row(project: Project, beam: PlannedBeam) -> tuple[Cell, ...]:
    units = project.units
    return (
        _length(beam.picture.reach, units),
        _length(beam.picture.backspan, units),
        _counterweight(project, beam),
        _rated(project, beam),
        answer_of(beam.findings) or no_answer(beam.review),
    )


def _length(value: Known | None, units: Style) -> str:
    if value is None:
        return NOT_MEASURED
    words = known_length_text(value, units)
    if value.worked_out:
        return f"{words} worked out"
    if value.evidence is None:
        return words
    return f"{words} {value.evidence}"


def _counterweight(project: Project, beam: PlannedBeam) -> str:
    support = beam.point.counterweighted_beam
    if support is None:
        other = beam.point.other_support
        return NOT_STATED if other is None else str(other.kind)
    parts = []
    for group in support.stack.groups:
        piece = piece_named(project, group.piece)
        mass = "" if piece is None else f" of {mass_text(piece.mass.value, project.units)}"
        parts.append(f"{count_text(group.count.value)}{mass}")
    return " + ".join(parts) or "no pieces"


def _rated(project: Project, beam: PlannedBeam) -> str:
    hoist = project.kit.hoist(beam.point.hoist)
    return NOT_STATED if hoist is None else force_text(hoist.rated_load.value, project.units)
