"""The fixed words of the drawings (English)."""

from __future__ import annotations

from types import MappingProxyType

from backspan.core.findings import Verdict
from backspan.core.model.rigs import FulcrumKind
from backspan.drawings.scene import Layer, SymbolName

CAUTION_HEAD = "Reviewed by program. Not a design."
CAUTION = (
    "This sheet shows what was stated and measured, and what the program found when it compared "
    "that with the rules named here. It is no permission to work. The qualified or licensed "
    "person and the local code decide. If the roof differs from this sheet, stop, keep people "
    "off the stage, and ask that person."
)
BRACKETS = "Figures in brackets are rounded; the first figure governs."
DASHED = 'Dashed and "not measured": nobody stated it, and its place here means nothing.'

NO_RIG = "No rig is stated for this drop."
NOT_TO_SCALE = (
    "Not to scale: below the break, the height of the pieces, the width of the stand, and where a "
    "tieback ends."
)
NOT_JUDGED = "not judged by this program"

PLANNED = "planned"
NOT_MEASURED = "not measured"
NOT_STATED = "not stated"
NOT_REVIEWED = "not reviewed"
NO_FINDING = "no finding"
ANGLES = (
    "The angle at a tieback is in plan, from the line of its beam; without a figure it is under "
    "5 degrees."
)
TAKEN_OVER = (
    "An answer covers every topic of its drop; what persons took over in writing is counted on "
    "the drop's section."
)

ANSWER = MappingProxyType(
    {
        Verdict.PASS: "pass",
        Verdict.FAIL: "fail",
        Verdict.REFER: "refer",
        Verdict.MISSING: "missing",
    }
)
ANSWER_MEANS = MappingProxyType(
    {
        Verdict.PASS: "every check that ran was met",
        Verdict.FAIL: "at least one check is not met",
        Verdict.REFER: "a named person has to decide",
        Verdict.MISSING: "a measurement or a paper is missing",
    }
)

ENVELOPE_HEAD = "Reach held at each backspan,"
HELD = "held by the pieces present"
NOT_HELD = "not held by the pieces present"
NO_ENVELOPE = "The review gave no line for this point."
ENVELOPE_CAUTION = (
    "One check only, at the worst corner of the tolerances. Not a design and no permission to "
    "work: the review of the whole drop, the qualified or licensed person and the local code "
    "decide."
)

FULCRUM = MappingProxyType(
    {
        FulcrumKind.PAD: "Pad",
        FulcrumKind.STAND: "Stand",
        FulcrumKind.TOWER: "Scaffold tower",
        FulcrumKind.PARAPET: "On the parapet",
    }
)

LEGEND_LAYERS = MappingProxyType(
    {
        Layer.EXISTING: "Existing building",
        Layer.PARAPET: "Parapet",
        Layer.OBSTACLE: "Obstacle",
        Layer.DROP: "Drop",
        Layer.BEAM: "Beam",
        Layer.COUNTERWEIGHT: "Counterweight",
        Layer.SUSPENSION: "Suspension line",
        Layer.STAGE: "Stage",
        Layer.TIEBACK: "Tieback",
        Layer.LIFELINE: "Lifeline",
        Layer.PLANNED: "Planned",
        Layer.NOT_KNOWN: "Not measured",
    }
)
LEGEND_SYMBOLS = MappingProxyType(
    {
        SymbolName.ANCHOR: "Anchor",
        SymbolName.ANCHOR_CONDITIONAL: "Conditional",
        SymbolName.ANCHOR_OUT: "Out of service",
        SymbolName.SUSPENSION_POINT: "Suspension point",
        SymbolName.FULCRUM: "Fulcrum",
        SymbolName.CENTROID: "Centroid of stack",
    }
)


def backward_note(edges: tuple[str, ...]) -> str:
    """An edge that seems to be entered from the wrong end."""
    return (
        f"By the outline, the roof lies on the other side of edge {', '.join(edges)}: an edge runs "
        "from its left end to its right end, seen from the roof."
    )


def no_room_note(labels: int) -> str:
    """Labels that this scale has no room for."""
    count = "1 label" if labels == 1 else f"{labels} labels"
    return f"{count} found no room at this scale: see the tables and the report."


def figure_room_note(count: int, sheet: str) -> str:
    """Labels that found no room in a figure, and the sheet that has them."""
    labels = "1 label" if count == 1 else f"{count} labels"
    return f"{labels} left out here: see {sheet}."


def more_views_note(points: tuple[str, ...]) -> str:
    """Suspension points that found no room on the sheet."""
    return f"Not drawn, for want of room: suspension points {', '.join(points)}."


def points_title(points: tuple[str, ...]) -> str:
    """The title of a view."""
    if len(points) == 1:
        return f"Suspension point {points[0]}"
    return f"Suspension points {', '.join(points[:-1])} and {points[-1]}, alike"
