"""Rigs whose stage or hoists lack one thing each, so that every sentence on them is said."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from backspan.core.model.kit import LabTested, Listing, SecondBrake
from backspan.core.model.stages import (
    Along,
    Bow,
    Control,
    Drives,
    FaceSide,
    FirstLift,
    HighRail,
    HotWork,
    Joints,
    Level,
    OnStage,
    Overhead,
    Sway,
)
from backspan.core.model.units import LabelState, TestFound
from backspan.core.sheet.case import Place
from tests.unit.core.rigs import HOIST, LEFT, PROJECT, RIG, STAGE, at, length, mass, put, seen

HUNG: Place = (*RIG, "stages", 0)
FOUND: Place = (*HUNG, "found")
#: Every word that may be said of the stage as it was found.
WORDS = {
    "joints": Joints,
    "fixed": OnStage,
    "guardrail": OnStage,
    "toeboard": OnStage,
    "along": Along,
    "sway": Sway,
    "first_lift": FirstLift,
    "hot_work": HotWork,
    "deck": OnStage,
    "running": Level,
    "bow": Bow,
    "drives": Drives,
}
H_1: Place = ("kit", "units", "H-1")
(TEST,) = at(PROJECT, (*H_1, "tests"))
#: Tests of a hoist that did not hold, may not have, or count no longer when the work ends.
TESTS: tuple[dict[str, Any], ...] = (
    {"found": TestFound.NOT_HELD},
    {"what": "brake trip test, failed"},
    {"at": "2025-12-01", "until": "2099-09-30"},
)
LACKS: tuple[tuple[Place, Any], ...] = (
    *(((*FOUND, name), None) for name in (*WORDS, "rail_height", "to_face")),
    *(((*FOUND, name), seen(word)) for name, kind in WORDS.items() for word in kind),
    *(((*HUNG, "control"), word) for word in (None, *map(seen, Control))),
    *(((*HUNG, "overhead"), word) for word in (None, *map(seen, Overhead))),
    *(((*HOIST, "tested_by"), word) for word in (None, LabTested.NOT_TESTED)),
    *(((*HOIST, "secondary_brake"), word) for word in (None, SecondBrake.NONE)),
    *(((*STAGE, "listed"), word) for word in (None, *Listing)),
    *(((*STAGE, "width"), width) for width in (None, *map(length, ("6 in", "40 in")))),
    ((*STAGE, "length"), length("9 ft")),
    ((*STAGE, "length"), length("40 ft")),
    *(((*STAGE, "most_load"), most) for most in (None, mass("400 lb"))),
    *(((*FOUND, "rail_height"), length(text)) for text in ("30 in", "50 in")),
    ((*FOUND, "high_rail"), seen(HighRail.NOT_ALL)),
    ((*LEFT, "hoist"), "WEAK"),
)
FAR = put(PROJECT, (*FOUND, "to_face"), length("20 in"))
HIGH = put(PROJECT, (*FOUND, "rail_height"), length("50 in"))
STAGES = (
    *(put(PROJECT, (*H_1, "tests"), (replace(TEST, **one),)) for one in TESTS),
    *(put(PROJECT, (*H_1, "label"), seen(word)) for word in LabelState),
    *(put(PROJECT, place, value) for place, value in LACKS),
    FAR,
    put(put(PROJECT, (*STAGE, "name"), "aluminium stage"), (*STAGE, "listed"), Listing.NOT_LIGHT),
    *(put(FAR, (*FOUND, "face_side"), seen(word)) for word in FaceSide),
    *(put(HIGH, (*FOUND, "high_rail"), seen(word)) for word in HighRail),
)
