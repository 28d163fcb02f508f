"""What the rule values of beams as they were found say, as the project file spells it."""

from __future__ import annotations

from collections.abc import Collection, Mapping

from backspan.core.model.beams import (
    BeamBow,
    BeamLevel,
    Channels,
    Holes,
    Joined,
    JointThere,
    Restraint,
    Shackle,
    SpliceMarks,
    SpliceOrder,
    SplicePins,
    Square,
    StopBolts,
    Upright,
    Web,
)
from backspan.core.quantities import LENGTH, PRESSURE, Dimension

#: What the paragraphs on outrigger beams ask for, known from copies.
BEAM_COPIED = ("web", "stops", "square", "shackle", "restrained", "channels")

#: The bands of numbers of a beam and what it stands on, and other limits of the trade.
BEAM_BANDS: Mapping[str, tuple[str, Dimension]] = {
    "plausible.most-surface-strength": ("10000 psi", PRESSURE),
    "plausible.most-to-face-apart": ("12 in", LENGTH),
    "plausible.most-yield-strength": ("65 ksi", PRESSURE),
    "beam.longest-sleeve": ("36 in", LENGTH),
    "plausible.most-bearing-length": ("12 in", LENGTH),
}

BEAM_WORDS: Mapping[str, Collection[str]] = {
    "beam.web": {Web.VERTICAL, Web.NONE},
    "beam.stops": {StopBolts.BOTH_ENDS},
    "beam.square": {Square.SQUARE, Square.OBSTRUCTED},
    "beam.shackle": {Shackle.OVER},
    "beam.level": {BeamLevel.AS_MADE},
    "beam.bow": {BeamBow.STRAIGHT, BeamBow.ALLOWED},
    "beam.restrained": {Restraint.RESTRAINED},
    "beam.upright": {Upright.HELD},
    "beam.holes": {Holes.NONE},
    "beam.channels": {Channels.FASTENED, Channels.NO_PAIR},
    "beam.joined": set(Joined),
    "beam.joint-there": set(JointThere),
    "beam.pins": {SplicePins.LOCKED},
    "beam.order": {SpliceOrder.MAKERS},
    "beam.marks": {SpliceMarks.MATCH},
}
