"""Rigs whose suspension line lacks one thing each, so that every sentence on it is said."""

from __future__ import annotations

from typing import Any

from backspan.core.model.kit import HoistRope, RopeKind, TerminationKind, TerminationMaker
from backspan.core.model.rigs import (
    Found,
)
from backspan.core.model.seen import (
    Pin,
    Route,
    Saddle,
    Tightened,
)
from backspan.core.model.units import RopeDamage
from backspan.core.sheet.case import Place
from tests.unit.core.rigs import ARM, LEFT, PROJECT, RIGHT, count, force, length, put, seen

ROOF: Place = ("site", "roofs", "ROOF")
EYE, GRIPS = ("kit", "terminations", "EYE"), ("kit", "terminations", "GRIPS")
SHACKLE, FITTED = ("kit", "connectors", "SH"), (*LEFT, "connectors", 0)
CLIPS, WEAR = (*RIGHT, "clips"), ("kit", "units", "W-1", "wear")
#: What a suspension line lacks, part by part.
LACKS: tuple[tuple[Place, Any], ...] = (
    ((*SHACKLE, "breaking_force"), force("5000 lb")),
    ((*SHACKLE, "breaking_force"), None),
    ((*LEFT, "connectors"), ()),
    ((*LEFT, "connectors"), None),
    ((*FITTED, "pin"), seen(Pin.OPEN)),
    ((*FITTED, "pin"), None),
    ((*FITTED, "found"), seen(Found.DEFECTIVE)),
    ((*FITTED, "found"), None),
    ((*LEFT, "thimble"), seen(Found.ABSENT)),
    ((*LEFT, "thimble"), None),
    ((*EYE, "kind"), TerminationKind.KNOT),
    ((*EYE, "kind"), None),
    ((*EYE, "made_by"), TerminationMaker.CREW),
    ((*EYE, "made_by"), None),
    ((*EYE, "rope_diameter"), length("9 mm")),
    ((*EYE, "rope_diameter"), None),
    ((*GRIPS, "kind"), TerminationKind.U_BOLT_CLIPS),
    (CLIPS, None),
    ((*CLIPS, "count"), count(2)),
    ((*CLIPS, "spacing"), length("1 in")),
    ((*CLIPS, "turnback"), length("1 in")),
    ((*CLIPS, "torque", "value"), 6.0),
    ((*CLIPS, "saddle"), seen(Saddle.DEAD)),
    ((*CLIPS, "tightened"), seen(Tightened.NOT_AGAIN)),
    (WEAR, None),
    ((*WEAR, "broken_in_lay"), count(6)),
    ((*WEAR, "broken_in_strand"), count(3)),
    ((*WEAR, "wire_worn", "value"), 0.5),
    ((*WEAR, "damage"), seen(RopeDamage.KINK)),
    (("kit", "ropes", "W", "kind"), RopeKind.SYNTHETIC),
    ((*RIGHT, "rope_length"), length("60 ft")),
    ((*RIGHT, "rope_length"), None),
    ((*ARM, "fulcrum", "surface_strength", "value"), 1000.0),
    (("kit", "hoists", "H", "takes_rope"), None),
    (("kit", "hoists", "H", "rope_diameter"), None),
    (("kit", "hoists", "H", "rope_diameter"), length("3/8 in")),
    (("kit", "hoists", "H", "takes_rope"), HoistRope.WINDS),
)
WOUND = put(PROJECT, ("kit", "hoists", "H", "takes_rope"), HoistRope.WINDS)
ROUTE, VENT = (*LEFT, "tiebacks", "TL", "route"), (*ROOF, "obstacles", "VENT")
#: The vent stands in the way of the left tieback; how that passes it was seen, or not.
CLOSE = put(PROJECT, (*VENT, "outline"), ((17.8, 6.0), (18.2, 6.0), (18.2, 6.5)))
OVER = put(CLOSE, ROUTE, seen(Route.ABOVE))
WAYS = (
    CLOSE,
    OVER,
    put(OVER, (*VENT, "height"), length("4 ft")),
    put(OVER, (*VENT, "height"), None),
    put(PROJECT, (*VENT, "outline"), ()),
    put(PROJECT, (*ROOF, "obstacles"), ()),
    put(PROJECT, ROUTE, None),
    put(PROJECT, ROUTE, seen(Route.BENT)),
    put(PROJECT, (*LEFT, "tiebacks", "TL", "anchor"), None),
)
LINES = (
    *WAYS,
    *(put(PROJECT, place, value) for place, value in LACKS),
    *(put(WOUND, (*LEFT, "drum_turns"), count(turns)) for turns in (3, 4)),
)
