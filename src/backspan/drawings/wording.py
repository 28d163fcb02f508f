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
DASHED = "Dashed and \"not measured\": nobody stated it, and its place here means nothing."

NOT_MEASURED = "not measured"
NOT_STATED = "not stated"
NOT_REVIEWED = "not reviewed"

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
        Layer.OBSTACLE: "Obstacle, with its height",
        Layer.DROP: "Drop: one stage width of facade",
        Layer.BEAM: "Beam",
        Layer.COUNTERWEIGHT: "Counterweight stack",
        Layer.SUSPENSION: "Suspension line",
        Layer.STAGE: "Stage",
        Layer.TIEBACK: "Tieback, angle from the beam",
        Layer.LIFELINE: "Lifeline",
        Layer.NOT_KNOWN: "Not measured or not stated",
    }
)
LEGEND_SYMBOLS = MappingProxyType(
    {
        SymbolName.ANCHOR: "Anchor, with its id",
        SymbolName.ANCHOR_CONDITIONAL: "Anchor, conditional",
        SymbolName.ANCHOR_OUT: "Anchor, out of service",
        SymbolName.FULCRUM: "Fulcrum",
        SymbolName.CENTROID: "Centroid of the stack",
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
    return f"{labels} labels found no room at this scale: see the sections and the schedule."
