"""Rigs that bring up every message between them: each lacks or breaks one thing."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from backspan.core.model.basis import ReadingChoice
from backspan.core.model.evidence import Evidence, StatedValue
from backspan.core.model.kit import PieceKind
from backspan.core.model.plan import Plan
from backspan.core.model.project import Project
from backspan.core.model.rigs import (
    Fastening,
    FulcrumKind,
    OtherSupport,
    OtherSupportKind,
    Rig,
    Tieback,
    TiebackEnd,
)
from backspan.core.model.signed import SignedLimits
from backspan.core.model.site import AnchorStanding, AnchorUse
from backspan.core.model.stages import HungStage
from backspan.core.model.units import Condition, LabelState
from backspan.core.model.work import LoadKind, PlacedLoad, WorkStep
from backspan.core.quantities import ANGLE
from tests.unit.core.checks.test_deck_clear import LONG, beside
from tests.unit.core.checks.test_lifeline_way import behind
from tests.unit.core.checks.test_roof_below import with_roof
from tests.unit.core.rigs import (
    ARM,
    BEAM,
    BEAM_UNIT,
    EN,
    HOIST,
    HONG_KONG,
    LEFT,
    OSHA,
    PIECE,
    PROJECT,
    QUEBEC,
    RIG,
    STACK,
    STACKED,
    STAGE,
    TODAY,
    at,
    count,
    force,
    labelled,
    length,
    mass,
    on_basis,
    put,
    seen,
    stated,
    without_stall,
)
from tests.unit.core.words.lacking_beams import BEAMS
from tests.unit.core.words.lacking_falls import FALLS
from tests.unit.core.words.lacking_lines import LINES
from tests.unit.core.words.lacking_stages import STAGES
from tests.unit.core.words.plain_beams import BY_SECTION, OF_WEB, SIDEWAYS

GROUP = (*STACK, "groups", 0, "count")
OUTBOARD = put(put(PROJECT, (*ARM, "reach"), length("9 ft")), (*ARM, "backspan"), length("8 ft"))
CREDITED = replace(EN, readings=(ReadingChoice("tipping.working-load-limit", "beam credited"),))
PLAN = PROJECT.plan or Plan("")
UNTIED = tuple(
    replace(one, tiebacks=()) for one in (PROJECT.drops[0].rig or Rig()).suspension_points
)
RATED_FROM = replace(length("9 ft"), evidence=Evidence.LABEL)
UNIT = ("kit", "units", "H-1")
SETBACK = (*ARM, "fulcrum", "setback")
EDGE = ("site", "roofs", "ROOF", "edges", "S")
ANCHOR = ("site", "roofs", "ROOF", "anchors", "A1")
#: What of a person leaves a take-over without effect.
BELOW_AND_BESIDE = (
    beside("20 ft"),
    beside("25 ft", put(LONG, (*STAGE, "length"), None)),
    behind(50.0, 30.0),
    with_roof("120 ft"),
    with_roof("90 ft"),
    put(with_roof("150 ft"), ("drops", "D", "clear_below"), None),
    put(PROJECT, SETBACK, length("0 in", tolerance="0 in")),
    put(PROJECT, (*ANCHOR, "at"), (3.0, -3.0)),
)
WITHOUT_EFFECT: tuple[dict[str, Any], ...] = (
    {"role": "painter"},
    {"card": None},
    {"employer": None},
    {"employer": "Upline Access"},
)


PERSON, MATERIAL = LoadKind.PERSON, LoadKind.MATERIAL
#: What is on the stage in one step: each brings up other sentences on people and loads.
WORK: tuple[tuple[PlacedLoad, ...], ...] = (
    (PlacedLoad("P1", PERSON), PlacedLoad("P2", PERSON)),
    (PlacedLoad("P1", PERSON, at=1.0), PlacedLoad("P2", PERSON, at=9.0)),
    (PlacedLoad("P1", PERSON), PlacedLoad("U", MATERIAL)),
    (PlacedLoad("P1", PERSON), PlacedLoad("U", MATERIAL, mass("900 lb"), at=0.5)),
)


def at_work(*loads: PlacedLoad) -> tuple[HungStage, ...]:
    """The stage with one step of work."""
    return (HungStage("ST-1", ("L", "R"), work=(WorkStep("UP", loads),)),)


def with_person(**changes: Any) -> Project:
    """The rig with the engineer who took it over changed."""
    people = (replace(one, **changes) if one.id == "LE" else one for one in PROJECT.people)
    return replace(PROJECT, people=tuple(people))


TIE = (*LEFT, "tiebacks", "TL")
TIED_TO_STRUCTURE = put(
    put(PROJECT, (*TIE, "anchor"), None), (*TIE, "ends_on"), seen(TiebackEnd.STRUCTURE)
)


def turned(degrees: float) -> StatedValue[float]:
    """An angle that somebody measured."""
    return stated(f"{degrees} deg", ANGLE)


OF_PAIR = replace(at(PROJECT, TIE), id="T2", anchor="A2", angle=turned(30))
PAIR = put(
    put(PROJECT, (*LEFT, "tiebacks"), (at(PROJECT, TIE), OF_PAIR)),
    (*TIE, "angle"),
    turned(30),
)
WEAK_TIE = put(
    replace(
        PROJECT,
        kit=replace(
            PROJECT.kit,
            ropes=(
                *PROJECT.kit.ropes,
                replace(PROJECT.kit.ropes[0], id="T", breaking_force=force("5000 lb")),
            ),
        ),
    ),
    (*TIE, "rope"),
    "T",
)
SIGNED = SignedLimits(
    "LE", "S-301", TODAY, "2026-12-20", ("D",), "C", most_front=1e6, most_rear=1e6
)
NO_STRENGTH = put(PROJECT, (*ARM, "fulcrum", "surface_strength"), None)
#: Papers that do not reach so far, that ended or will, that nobody may sign.
PAPERS: tuple[dict[str, Any], ...] = (
    {},
    {"most_reach": 0.1},
    {"hoists": ("WEAK",)},
    {"until": "2026-12-01"},
    {"until": "2026-11-24"},
    {"by": "PE"},
)
ON_TOWER = put(PROJECT, (*ARM, "fulcrum", "kind"), FulcrumKind.TOWER)

RIGS = [
    PROJECT,
    *BELOW_AND_BESIDE,
    STACKED,
    OUTBOARD,
    on_basis(PROJECT, OSHA, EN, QUEBEC),
    on_basis(put(PROJECT, (*ARM, "reach"), length("9 ft")), QUEBEC),
    on_basis(put(PROJECT, (*ARM, "reach"), None), QUEBEC),
    put(PROJECT, RIG, None),
    put(PROJECT, ARM, None),
    put(PROJECT, (*LEFT, "other_support"), OtherSupport(OtherSupportKind.DAVIT)),
    put(put(PROJECT, ARM, None), (*LEFT, "other_support"), OtherSupport(OtherSupportKind.DAVIT)),
    put(PROJECT, (*LEFT, "tiebacks"), (Tieback("T", "A1"),)),
    put(PROJECT, (*RIG, "stages"), ()),
    put(PROJECT, (*RIG, "stages"), (HungStage("ST", ("L",)), HungStage("ST", ("L", "R")))),
    put(PROJECT, (*RIG, "stages"), (HungStage("ST", ("L", "M", "R")),)),
    put(PROJECT, (*STACK, "groups"), ()),
    put(PROJECT, (*STACK, "fastening"), None),
    put(
        PROJECT,
        (*STACK, "fastening"),
        StatedValue(Fastening.WIRE_TIE, evidence=Evidence.TOLD),
    ),
    put(PROJECT, GROUP, count(50)),
    put(PROJECT, GROUP, count(16, tolerance=2)),
    put(PROJECT, GROUP, count(5000, tolerance=4000)),
    put(PROJECT, (*PIECE, "kind"), PieceKind.SAND),
    put(PROJECT, (*PIECE, "mass", "evidence"), Evidence.TOLD),
    put(PROJECT, (*BEAM, "label"), None),
    put(PROJECT, (*BEAM_UNIT, "label"), seen(LabelState.UNREADABLE)),
    put(PROJECT, (*BEAM_UNIT, "label"), None),
    put(PROJECT, (*BEAM, "label"), labelled(10, "500 lb")),
    put(PROJECT, (*BEAM, "label"), labelled(None, "5000 lb")),
    *BY_SECTION,
    *OF_WEB,
    *SIDEWAYS,
    put(PROJECT, (*BEAM, "label", "most_load"), force("999 lb")),
    put(PROJECT, (*BEAM, "label", "least_backspan"), RATED_FROM),
    put(put(PROJECT, (*ARM, "backspan"), None), (*BEAM, "label", "least_backspan"), RATED_FROM),
    put(PROJECT, (*BEAM, "label", "least_backspan"), replace(RATED_FROM, value=4.0)),
    put(PROJECT, (*BEAM, "length"), None),
    put(PROJECT, (*ARM, "tip_beyond_line"), None),
    put(PROJECT, (*BEAM, "length"), length("10 ft")),
    without_stall(PROJECT),
    put(PROJECT, ("kit", "ropes", "W", "breaking_force"), force("5000 lb")),
    *BEAMS,
    *FALLS,
    *LINES,
    *STAGES,
    put(PROJECT, (*HOIST, "stall_load"), force("3001 lb")),
    put(PROJECT, (*HOIST, "rated_load"), force("499 lb")),
    put(PROJECT, (*ARM, "backspan"), None),
    put(PROJECT, (*ARM, "reach", "value"), 5.0),
    put(put(PROJECT, (*ARM, "reach", "value"), 5.0), (*ARM, "reach", "checked_by"), "PE"),
    on_basis(put(PROJECT, (*PIECE, "mass", "evidence"), Evidence.MEASURED), HONG_KONG),
    on_basis(PROJECT, CREDITED),
    put(STACKED, (*BEAM, "length"), None),
    put(STACKED, (*ARM, "reach"), length("18 ft")),
    put(STACKED, (*ARM, "reach"), length("15 ft 5 in")),
    put(STACKED, (*PIECE, "length_on_beam"), length("1 ft")),
    on_basis(put(PROJECT, (*ARM, "reach"), length("0 in")), QUEBEC),
    put(PROJECT, (*ARM, "rear_stand"), length("0 in")),
    put(PROJECT, (*ARM, "rear_stand"), length("16 ft")),
    put(PROJECT, (*ARM, "rear_stand"), length("2 ft")),
    put(PROJECT, (*ARM, "rear", "plate_length"), length("0 in")),
    put(PROJECT, (*ARM, "rear", "plate_length"), length("3 in")),
    put(PROJECT, (*ARM, "rear"), None),
    put(ON_TOWER, ("signed_limits",), (SIGNED,)),
    *(put(NO_STRENGTH, ("signed_limits",), (replace(SIGNED, **one),)) for one in PAPERS),
    put(put(PROJECT, ("people", "LE", "card"), None), ("signed_limits",), (SIGNED,)),
    put(put(PROJECT, (*BEAM, "mass"), None), ("signed_limits",), (SIGNED,)),
    put(PROJECT, (*ARM, "fulcrum", "plate_length"), length("0 in")),
    put(PROJECT, (*ARM, "fulcrum", "plate_length"), length("3 in")),
    put(PROJECT, (*ARM, "fulcrum"), None),
    replace(PROJECT, plan=None),
    put(PROJECT, (*HOIST, "stall_load"), None),
    put(PROJECT, SETBACK, length("24 in")),
    put(PROJECT, SETBACK, None),
    put(PROJECT, (*EDGE, "parapet", "height"), length("30 in")),
    put(PROJECT, (*EDGE, "parapet"), None),
    put(PROJECT, SETBACK, length("23 in", tolerance="1 in")),
    put(PROJECT, (*ARM, "fulcrum", "height"), length("1 in")),
    put(PROJECT, SETBACK, length("1 in")),
    put(put(PROJECT, SETBACK, length("1 in")), (*BEAM, "mass"), None),
    put(PROJECT, ("drops", "D", "width"), length("18 ft")),
    put(PROJECT, (*STAGE, "stirrup_spacing"), length("16 ft")),
    put(PROJECT, (*STAGE, "stirrup_spacing"), None),
    put(PROJECT, (*STAGE, "intended_load"), None),
    put(PROJECT, (*STAGE, "intended_load"), mass("2000 lb")),
    put(PROJECT, (*ANCHOR, "standing"), AnchorStanding.OUT_OF_SERVICE),
    put(PROJECT, (*ANCHOR, "standing"), AnchorStanding.CONDITIONAL),
    put(PROJECT, (*ANCHOR, "uses"), ()),
    put(PROJECT, (*ANCHOR, "kind"), "vent pipe"),
    put(PROJECT, ("site", "roofs", "ROOF", "anchors", "A3", "at"), at(PROJECT, (*ANCHOR, "at"))),
    replace(
        put(PROJECT, (*ANCHOR, "inspected"), "2025-12-01"), anchor_dates_required_by="roof rules"
    ),
    put(PROJECT, (*ANCHOR, "certified"), "2012-01-01"),
    put(PROJECT, (*ANCHOR, "uses"), (AnchorUse.SWAY_TIE,)),
    put(PROJECT, (*LEFT, "tiebacks", "TL", "anchor"), "A2"),
    put(PROJECT, (*RIG, "lifelines", "LL1", "anchor"), "A1"),
    replace(
        PROJECT,
        drops=(*PROJECT.drops, replace(PROJECT.drops[0], id="E", rig=Rig(moved_from="D"))),
    ),
    put(PROJECT, (*LEFT, "hoist"), "H"),
    put(PROJECT, (*LEFT, "hoist"), "H-2"),
    put(PROJECT, (*UNIT, "condition"), None),
    put(PROJECT, (*UNIT, "condition"), seen(Condition.WITHDRAWN)),
    put(PROJECT, ("kit", "units", "LOT", "count"), count(31)),
    put(put(PROJECT, (*UNIT, "serial"), "S-7"), ("kit", "units", "H-2", "serial"), "S-7"),
    put(PROJECT, (*UNIT, "tests", 0, "at"), "1999-09-01"),
    put(PROJECT, (*UNIT, "tests", 0, "until"), "2026-12-01"),
    put(PROJECT, (*UNIT, "tests", 0, "until"), "2026-11-24"),
    replace(PROJECT, plan=replace(PLAN, ends="2026-11-24")),
    put(PROJECT, ("people", "QP", "role"), "painter"),
    put(PROJECT, (*ARM, "reach", "planned"), 0.5),
    put(PROJECT, (*ARM, "reach", "planned"), 0.61),
    put(PROJECT, ("site", "roofs", "ROOF", "anchors", "A1", "inspected"), "2025-12-01"),
    put(PROJECT, ("site", "roofs", "ROOF", "anchors", "A1", "inspected"), None),
    put(put(PROJECT, (*RIG, "lifelines"), ()), (*LEFT, "tiebacks"), ()),
    put(put(PROJECT, (*RIG, "lifelines"), None), (*LEFT, "tiebacks"), None),
    put(put(PROJECT, (*RIG, "lifelines"), None), (*RIG, "suspension_points"), UNTIED),
    put(
        put(PROJECT, ARM, None),
        (*LEFT, "other_support"),
        OtherSupport(OtherSupportKind.BOLTED_TAIL),
    ),
    put(PROJECT, (*ARM, "reach", "by"), None),
    put(PROJECT, (*STACK, "tail_gap"), length("6 ft")),
    put(ON_TOWER, (*ARM, "rear_stand"), None),
    put(PROJECT, (*ARM, "reach", "at"), "2026-11-01"),
    put(PROJECT, ("people", "MT", "role"), "painter"),
    *(with_person(**changes) for changes in WITHOUT_EFFECT),
    replace(
        PROJECT, taken_over=tuple(replace(one, until="2026-11-24") for one in PROJECT.taken_over)
    ),
    replace(
        PROJECT, taken_over=tuple(replace(one, until="2026-12-01") for one in PROJECT.taken_over)
    ),
    put(
        put(PROJECT, (*ARM, "rear_stand"), length("9 ft 9 in")),
        (*PIECE, "mass"),
        mass("55 lb", tolerance="1 lb"),
    ),
    put(TIED_TO_STRUCTURE, (*TIE, "ends_on"), None),
    put(TIED_TO_STRUCTURE, (*TIE, "ends_on"), seen(TiebackEnd.VENT)),
    TIED_TO_STRUCTURE,
    *(put(PAIR, (*LEFT, "tiebacks", "T2", "angle"), turned(one)) for one in (-30, 30, -100)),
    WEAK_TIE,
    put(PROJECT, (*ANCHOR, "ratings", 0, "load"), force("3000 lb")),
    put(PROJECT, (*ANCHOR, "ratings", 0, "toward", "value"), 0.0),
    put(PROJECT, (*ANCHOR, "ratings"), ()),
    put(put(PROJECT, (*TIE, "angle"), None), (*TIE, "attached"), None),
    put(PROJECT, (*TIE, "angle"), turned(30)),
    put(PROJECT, (*TIE, "rope"), None),
    put(PROJECT, (*STAGE, "intended_load"), mass("700 lb")),
    put(
        put(PROJECT, (*STAGE, "intended_load"), mass("700 lb")), (*STAGE, "length"), length("60 ft")
    ),
    put(PROJECT, (*STAGE, "intended_load"), mass("400 lb")),
    put(PROJECT, (*RIG, "stages"), (HungStage("ST-1", ("L",)),)),
    *(put(PROJECT, (*RIG, "stages"), at_work(*loads)) for loads in WORK),
    put(PROJECT, (*RIG, "stages"), at_work(PlacedLoad("M", LoadKind.TOOLS, mass("501 lb")))),
    put(put(PROJECT, (*RIG, "stages"), at_work(*WORK[0])), (*RIG, "riders"), None),
    put(put(PROJECT, (*RIG, "stages"), at_work(*WORK[1])), (*STAGE, "stirrup_spacing"), None),
    put(put(PROJECT, (*RIG, "stages"), at_work(*WORK[0])), (*STAGE, "length"), length("60 ft")),
]
