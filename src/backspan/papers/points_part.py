"""The suspension points of a drop as the project states them, one row each."""

from __future__ import annotations

from backspan.core.model.project import Project
from backspan.core.model.rigs import SuspensionPoint
from backspan.core.quantities import LENGTH, Style, display
from backspan.papers.wording import NOT_STATED


def points_part(project: Project, drop: str, units: Style) -> list[dict[str, str]]:
    """One row for each suspension point of a drop's rig."""
    rig = next((one.rig for one in project.drops if one.id == drop), None)
    return [] if rig is None else [_point(project, one, units) for one in rig.suspension_points]


def _point(project: Project, point: SuspensionPoint, units: Style) -> dict[str, str]:
    beam, other = point.counterweighted_beam, point.other_support
    hoist = project.kit.hoist(point.hoist)
    row = {
        "point": point.id,
        "station": display(point.station, LENGTH, units),
        "hoist": point.hoist if hoist is None else f"{point.hoist}, {hoist.name}",
        "support": "not recorded",
        "reach": "",
        "backspan": "",
        "pieces": "",
    }
    if other is not None:
        row["support"] = str(other.kind)
    if beam is not None:
        row["support"] = f"counterweighted beam {beam.beam}"
        row["reach"] = NOT_STATED if beam.reach is None else _length(beam.reach.value, units)
        taped = NOT_STATED if beam.backspan is None else _length(beam.backspan.value, units)
        row["backspan"] = taped if beam.backspan_from == "measured" else "from the stack"
        row["pieces"] = ", ".join(
            f"{group.count.value} x {group.piece}" for group in beam.stack.groups
        )
    return row


def _length(metres: float, units: Style) -> str:
    return display(metres, LENGTH, units)
