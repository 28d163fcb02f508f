"""Rigs whose beam or whose joint lacks one thing each, so that every sentence on them is said."""

from __future__ import annotations

from enum import StrEnum
from typing import Any

from backspan.core.model.beams import (
    BeamBow,
    BeamLevel,
    BeamSplice,
    Channels,
    Joined,
    JointThere,
    Restraint,
    Shackle,
    SpliceMarks,
    SpliceOrder,
    SplicePins,
    Square,
    StopBolts,
    Web,
)
from backspan.core.sheet.case import Place
from tests.unit.core.rigs import ARM, PROJECT, length, put, seen

FOUND: Place = (*ARM, "found")
#: Every word that may be said of the beam as it was found.
WORDS: dict[str, type[StrEnum]] = {
    "web": Web,
    "stop_bolts": StopBolts,
    "square": Square,
    "shackle": Shackle,
    "beam_level": BeamLevel,
    "beam_bow": BeamBow,
    "restrained": Restraint,
    "channels": Channels,
}
OF_SPLICE: dict[str, type[StrEnum]] = {
    "pins": SplicePins,
    "order": SpliceOrder,
    "marks": SpliceMarks,
}
JOINT = BeamSplice(
    "J1",
    length("9 ft"),
    seen(SplicePins.LOCKED),
    seen(SpliceOrder.MAKERS),
    seen(SpliceMarks.MATCH),
)
#: The left beam of two sections that meet 9 ft from its tail; its stack ends at 7 ft 6 in.
JOINED = put(put(PROJECT, (*ARM, "joined"), seen(Joined.SECTIONS)), (*ARM, "splices"), (JOINT,))
SPLICE: Place = (*ARM, "splices", "J1")
LACKS: tuple[tuple[Place, Any], ...] = (
    *(((*FOUND, name), None) for name in WORDS),
    *(((*FOUND, name), seen(word)) for name, kind in WORDS.items() for word in kind),
    ((*ARM, "joined"), None),
    ((*ARM, "joined"), seen(Joined.SECTIONS)),
)
#: Words of a beam that stop a drop; that it is of sections does where none of its joints is listed.
REFUSED = frozenset(
    {
        *("web leaning", "one end lacks one", "at neither end", "at an angle to its bearing"),
        *("to one side of the stirrup", "tail high", "leans sideways", "bowed more, or kinked"),
        *("free to move", "not fastened together", "flanges in", "sections joined"),
    }
)
BEAM_FAULTS = tuple(
    (place, value) for place, value in LACKS if value is None or str(value.value) in REFUSED
)
OF_JOINT: tuple[tuple[Place, Any], ...] = (
    *(((*SPLICE, name), None) for name in (*OF_SPLICE, "from_tail")),
    *(((*SPLICE, name), seen(word)) for name, kind in OF_SPLICE.items() for word in kind),
    *(((*SPLICE, "there"), seen(word)) for word in JointThere),
    *(((*SPLICE, "from_tail"), length(text)) for text in ("5 ft", "16 ft", "19 ft")),
    *(((*SPLICE, "sleeve"), length(text)) for text in ("1 ft", "4 ft")),
)
BEAMS = (
    *(put(PROJECT, place, value) for place, value in LACKS),
    JOINED,
    *(put(JOINED, place, value) for place, value in OF_JOINT),
)
