"""What the rule values of power say."""

from __future__ import annotations

from collections.abc import Mapping

from backspan.core.quantities import LINEAR_RESISTANCE, RATIO, Dimension

#: Resistances of stranded copper at 75 C, by gage, in ohm/kft.
RESISTANCES = {
    "14": "3.14",
    "12": "1.98",
    "10": "1.24",
    "8": "0.778",
    "6": "0.491",
    "4": "0.308",
    "2": "0.194",
}
POWER_REMEMBERED = tuple(f"power.resistance-{gage}-awg" for gage in RESISTANCES)
POWER_LIMITS: Mapping[str, tuple[str, Dimension]] = {
    "power.most-cord-drop": ("0.03", RATIO),
    **{
        f"power.resistance-{gage}-awg": (f"{ohms} ohm/kft", LINEAR_RESISTANCE)
        for gage, ohms in RESISTANCES.items()
    },
}
