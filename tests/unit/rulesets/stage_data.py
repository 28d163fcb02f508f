"""What the rule values of stages and their hoists say, as the project file spells it."""

from __future__ import annotations

from collections.abc import Collection, Mapping

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
from backspan.core.model.units import TestOf
from backspan.core.quantities import LENGTH, LINEAR_MASS, MASS, RATIO, Dimension

#: What the paragraphs on stages ask for, known from copies.
STAGE_COPIED = (
    *("fixed", "bow", "sway", "overhead", "listed", "most-load", "most-width"),
    *("least-rail-height", "most-rail-height", "high-rail"),
)

STAGE_LIMITS: Mapping[str, tuple[str, Dimension]] = {
    "stage.most-width": ("36 in", LENGTH),
    "stage.least-width": ("18 in", LENGTH),
    "stage.least-rail-height": ("36 in", LENGTH),
    "stage.most-rail-height": ("45 in", LENGTH),
    "stage.most-to-face": ("14 in", LENGTH),
    "stage.most-beyond": ("4 ft", LENGTH),
    "load.least-hoist": ("80 lb", MASS),
    "load.at-one-place": ("500 lb", MASS),
    "load.close-together": ("2 ft", LENGTH),
    "plausible.least-deck-mass": ("10 lb/ft", LINEAR_MASS),
    "age.brake-test": ("366", RATIO),
}

STAGE_WORDS: Mapping[str, Collection[str]] = {
    "stage.hoist-tested": {LabTested.TESTED},
    "stage.second-brake": {SecondBrake.BY_ITSELF},
    "stage.brake-test": {TestOf.BRAKE},
    # Of light metal by its name.
    "stage.light-metals": {
        *("aluminium", "aluminum", "alu", "alloy", "light metal", "magnesium"),
        *("aluminio", "aleación", "metal ligero", "magnesio"),
    },
    "stage.test-says-failed": {"fail", "not hold"},
    "stage.control": {Control.EACH, Control.TESTED_SO},
    "stage.joints": {Joints.SOUND, Joints.ONE_PIECE},
    **{f"stage.{name}": {OnStage.SOUND} for name in ("fixed", "guardrail", "toeboard", "deck")},
    "stage.along": {Along.NOTHING, Along.GUIDED},
    "stage.sway": {Sway.TIED, Sway.EVALUATED},
    "stage.first-lift": {FirstLift.HELD},
    "stage.level": {Level.LEVEL},
    "stage.bow": {Bow.WITHIN},
    "stage.drives": {Drives.ENCLOSED},
    "stage.hot-work": {HotWork.NO, HotWork.INSULATED},
    "stage.overhead": {Overhead.NOTHING, Overhead.OWN_LINES},
    "stage.listed": {Listing.LISTED, Listing.NOT_LIGHT},
    "stage.high-rail": {HighRail.ALL},
    "stage.face-side": {FaceSide.RAIL, FaceSide.TIED},
}
