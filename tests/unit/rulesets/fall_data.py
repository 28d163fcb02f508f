"""What the rule values of what arrests a fall say in words, as the project file spells them."""

from __future__ import annotations

from collections.abc import Collection, Mapping

from backspan.core.model.kit import RopeKind, TerminationKind, TerminationMaker
from backspan.core.model.seen import Grab, GrabHeight, HarnessState, Splices, Swing, TiedTo
from backspan.core.model.stages import Along, Overhead
from backspan.core.quantities import ANGLE, FORCE, LENGTH, MASS, RATIO, Dimension

FALL_WORDS: Mapping[str, Collection[str]] = {
    "fall.tied-to": {TiedTo.LIFELINE},
    "fall.tied-by-person": {TiedTo.SUPPORT_LINES},
    "fall.refused-rope": {RopeKind.NATURAL},
    "fall.end-kind": {TerminationKind.SEWN, TerminationKind.SPLICED, TerminationKind.KNOT},
    "fall.wire-end-kind": {
        *(TerminationKind.SWAGED, TerminationKind.SPLICED, TerminationKind.POURED_SOCKET)
    },
    "fall.end-maker": {TerminationMaker.ROPE_MAKER, TerminationMaker.QUALIFIED_PERSON},
    "fall.along": {Along.NOTHING},
    "fall.along-by-person": {Along.GUIDED},
    "fall.overhead": {Overhead.NOTHING},
    "fall.overhead-by-person": {Overhead.OWN_LINES},
    "fall.grab": {Grab.MATCHED},
    "fall.grab-height": {GrabHeight.ABOVE, GrabHeight.LEVEL},
    "fall.splices": {Splices.NONE},
    "fall.swing": {Swing.NEAR},
    "fall.harness": {HarnessState.SOUND},
}

#: How far aside, how heavy and how hard; what of all that is looked at again.
FALL_LIMITS: Mapping[str, tuple[str, Dimension]] = {
    "fall.most-line-angle": ("30 deg", ANGLE),
    "fall.most-beside": ("6 ft", LENGTH),
    "fall.mean-to-most-force": ("0.875", RATIO),
    "fall.least-rider-mass": ("220 lb", MASS),
    "plausible.least-person-mass": ("130 lb", MASS),
    "plausible.least-lanyard-length": ("1 ft", LENGTH),
    "plausible.least-elongation": ("1 %", RATIO),
    "plausible.most-elongation": ("25 %", RATIO),
    "plausible.least-most-force": ("400 lb", FORCE),
    "plausible.least-deceleration": ("3 in", LENGTH),
    "plausible.most-lifeline-breaking-force": ("30000 lb", FORCE),
    "plausible.least-drop-height": ("8 ft", LENGTH),
    "plausible.most-below-ground": ("3 ft", LENGTH),
}

#: What is no anchor, as a project may spell it.
BARRED = frozenset(
    {
        "vent",
        "vents",
        "vent pipe",
        "drain pipe",
        "gas pipe",
        "water pipe",
        "soil pipe",
        "piping",
        "standpipe",
        "standpipes",
        "conduit",
        "conduits",
        "outrigger beam",
        "outrigger beams",
        "counterweight",
        "counterweights",
        "parapet clamp",
        "parapet clamps",
        "tubería",
        "tuberías",
        "tuberia",
        "tuberias",
        "respiradero",
        "respiraderos",
        "conducto",
        "conductos",
        "bajante",
        "bajantes",
        "columna seca",
        "columna húmeda",
        "contrapeso",
        "contrapesos",
        "mordaza de pretil",
        "abrazadera de pretil",
    }
)
