"""Rigs on plain beams: each brings up other sentences on a beam's strength."""

from __future__ import annotations

from dataclasses import replace

from backspan.core.model.beams import (
    BeamBow,
    BeamSection,
    Channels,
    Holes,
    Joined,
    Metal,
    Upright,
    Web,
)
from tests.unit.core.checks.test_beam_aluminium import ALLOY
from tests.unit.core.checks.test_beam_aluminium import of as of_alloy
from tests.unit.core.checks.test_beam_sideways import NEAR_CHANNEL
from tests.unit.core.checks.test_beam_strength import (
    CHANNEL,
    FIFTY,
    SIZES,
    SOUND,
    TEXTS,
    W6X12,
    by,
    on_label,
)
from tests.unit.core.checks.test_beam_web import (
    HELD,
    PIPE,
    PLAIN,
    TUBE,
    in_service,
    of,
    of_steel,
    pieces,
)
from tests.unit.core.rigs import ARM, BEAM, STACK, count, labelled, length, put, seen

_HEAVY = put(SOUND, (*STACK, "groups", "LOT", "count"), count(60))
_WIDE = BeamSection(
    material=Metal.STEEL,
    section_depth=on_label(length("8 in")),
    flange_width=on_label(length("8 in")),
    wall=on_label(length("0.06 in")),
    yield_strength=FIFTY,
)
_OURS = tuple(one for one in TEXTS if one.rule_set != "us-osha-1926-subpart-l")

BY_SECTION = (
    SOUND,
    put(SOUND, (*ARM, "reach"), length("6 ft")),
    put(SOUND, (*ARM, "unbraced_length"), None),
    put(_HEAVY, (*ARM, "rear_stand"), length("2 ft")),
    put(put(_HEAVY, (*ARM, "rear_stand"), length("8 ft")), (*ARM, "reach"), length("1 in")),
    by(replace(W6X12, yield_strength=None), SOUND),
    by(_WIDE, SOUND),
    by(replace(_WIDE, material=None), SOUND),
    by(replace(W6X12, flange_thickness=on_label(length("0.2 in"))), SOUND),
    by(CHANNEL, SOUND),
    NEAR_CHANNEL,
    put(SOUND, (*ARM, "unbraced_length"), length("1 ft")),
    put(SOUND, (*ARM, "found", "web"), seen(Web.NONE)),
    put(SOUND, (*ARM, "found", "beam_bow"), seen(BeamBow.ALLOWED)),
    put(SOUND, (*ARM, "found", "channels"), seen(Channels.FASTENED)),
    *(put(SOUND, (*ARM, "found", "upright"), one) for one in (None, seen(Upright.CAN_ROLL))),
    *(put(SOUND, (*ARM, "found", "holes"), one) for one in (None, seen(Holes.SOME))),
    of_alloy(ALLOY),
    of_alloy(replace(ALLOY, weld=None)),
    put(of_alloy(ALLOY), (*ARM, "joined"), seen(Joined.SECTIONS)),
    by(replace(SIZES, flange_width=on_label(length("0.2 in")))),
    put(SOUND, (*ARM, "joined"), seen(Joined.SECTIONS)),
    replace(SOUND, basis=replace(SOUND.basis, beam=())),
    replace(SOUND, basis=replace(SOUND.basis, beam=_OURS)),
    put(replace(SOUND, basis=replace(SOUND.basis, beam=_OURS)), (*ARM, "reach"), length("14 ft")),
    put(SOUND, (*BEAM, "mass"), None),
    put(SOUND, (*BEAM, "label"), labelled()),
    put(put(SOUND, (*ARM, "reach"), length("6 ft")), (*BEAM, "label"), labelled()),
    put(SOUND, (*BEAM, "section"), None),
)

_NEAR, _FAR = (put(SOUND, (*ARM, "unbraced_length"), length(text)) for text in ("3 ft", "15 ft"))
_NONE = put(SOUND, (*ARM, "unbraced_length"), length("1 in", tolerance="1 in"))
#: Each brings up another sentence on the web that buckles sideways.
SIDEWAYS = (
    *(_NEAR, _FAR, _NONE, put(SOUND, (*ARM, "unbraced_length"), length("7 ft"))),
    put(in_service(SOUND), (*ARM, "unbraced_length"), length("7 ft")),
    put(in_service(SOUND), (*ARM, "unbraced_length"), length("17 ft")),
    put(_FAR, (*ARM, "rear_stand"), None),
)
#: Each brings up another sentence on the web.
OF_WEB = (
    PLAIN,
    HELD,
    of(of_steel("5 ksi", W6X12)),
    of(of_steel("4 ksi", TUBE)),
    of(TUBE, pieces(60)),
    of(of_steel("5 ksi", TUBE), pieces(60)),
    in_service(of(TUBE, pieces(4))),
    in_service(of(of_steel("1 ksi", TUBE), pieces(4))),
    in_service(pieces(4)),
    in_service(of(of_steel("2 ksi", W6X12), pieces(4))),
    pieces(60),
    in_service(of(of_steel("5 ksi", W6X12), pieces(60))),
    of(PIPE),
    of(CHANNEL),
    of(replace(SIZES, web_thickness=on_label(length("0.08 in")))),
    of(replace(TUBE, wall=on_label(length("1.4 in")))),
)
