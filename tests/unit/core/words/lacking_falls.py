"""Rigs on which what arrests a fall lacks one thing each, so that every sentence on it is said."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from backspan.core.model.kit import RopeKind, TerminationKind, TerminationMaker
from backspan.core.model.seen import (
    Grab,
    GrabHeight,
    HarnessState,
    Hooks,
    LowEnd,
    Splices,
    Swing,
    TiedTo,
)
from backspan.core.model.stages import HungStage
from backspan.core.model.work import LoadKind, PlacedLoad, WorkStep
from backspan.core.sheet.case import Place
from tests.unit.core.rigs import PROJECT, RIG, force, length, put, seen

LINE: Place = (*RIG, "lifelines", "LL1")
LANYARD: Place = ("kit", "lanyards", "LAN")
ROPE: Place = ("kit", "ropes", "LIFE")
END: Place = ("kit", "terminations", "SEWN")
STAGE = HungStage("ST-1", ("L", "R"))
FAR = PlacedLoad("P1", LoadKind.PERSON, at=length("0 ft").value, to=length("18 ft").value)
LACKS: tuple[tuple[Place, Any], ...] = (
    ((*ROPE, "breaking_force"), force("5000 lb")),
    ((*ROPE, "kind"), RopeKind.NATURAL),
    ((*ROPE, "kind"), RopeKind.WIRE),
    ((*LINE, "rope"), None),
    ((*END, "kind"), TerminationKind.U_BOLT_CLIPS),
    ((*END, "kind"), None),
    ((*END, "made_by"), TerminationMaker.CREW),
    ((*END, "made_by"), None),
    ((*END, "rope_diameter"), length("1/2 in")),
    ((*LINE, "grab"), seen(Grab.UPSIDE_DOWN)),
    ((*LINE, "grab_height"), seen(GrabHeight.BELOW)),
    ((*LINE, "splices"), seen(Splices.KNOTTED)),
    ((*LINE, "swing"), seen(Swing.WIDE)),
    ((*LINE, "station"), length("40 ft").value),
    ((*LINE, "station"), None),
    ((*LINE, "harness"), seen(HarnessState.WORN)),
    *(((*LINE, name), None) for name in ("swing", "harness", "hooks", "low_end")),
    ((*LINE, "hooks"), seen(Hooks.NOT_LOCKING)),
    ((*LINE, "low_end"), seen(LowEnd.ABOVE)),
    *(((*LANYARD, "breaking_force"), one) for one in (None, force("4999 lb"))),
    ((*LINE, "tied_to"), seen(TiedTo.STAGE)),
    ((*LINE, "tied_to"), seen(TiedTo.SUPPORT_LINES)),
    *(((*LINE, name), None) for name in ("termination", "grab", "grab_height", "splices")),
    *(((*LINE, name), None) for name in ("tied_to", "lanyard")),
    ((*LANYARD, "length"), length("7 ft")),
    ((*LANYARD, "deceleration"), length("4 ft")),
    ((*LANYARD, "most_force"), force("2000 lb")),
    ((*LANYARD, "most_force"), force("200 lb")),
    ((*LANYARD, "deceleration"), length("3 in")),
    ((*RIG, "stages"), (replace(STAGE, work=(WorkStep("UP", (FAR,)),)),)),
    (("drops", "D", "clear_below"), length("3 ft")),
)
FALLS = tuple(put(PROJECT, place, value) for place, value in LACKS)
