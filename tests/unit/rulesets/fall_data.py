"""What the rule values of what arrests a fall say in words, as the project file spells them."""

from __future__ import annotations

from collections.abc import Collection, Mapping

from backspan.core.model.kit import RopeKind
from backspan.core.model.seen import Grab, GrabHeight, HarnessState, Splices, Swing, TiedTo

FALL_WORDS: Mapping[str, Collection[str]] = {
    "fall.tied-to": {TiedTo.LIFELINE},
    "fall.tied-by-person": {TiedTo.SUPPORT_LINES},
    "fall.refused-rope": {RopeKind.NATURAL},
    "fall.grab": {Grab.MATCHED},
    "fall.grab-height": {GrabHeight.ABOVE, GrabHeight.LEVEL},
    "fall.splices": {Splices.NONE},
    "fall.swing": {Swing.NEAR},
    "fall.harness": {HarnessState.SOUND},
}
