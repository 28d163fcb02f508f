"""What the rule values of beams say, and which of them nobody has seen in their text."""

from __future__ import annotations

from backspan.core.quantities import PRESSURE, RATIO, Dimension
from backspan.core.rules.shape import Section
from tests.unit.rulesets.shipped import BY_ID, OSHA

SHAPES, STEEL = "us-aisc-shapes", "us-aisc-360"
ALUMINIUM = "us-aluminum-design-manual"

STEEL_LIMITS: dict[str, tuple[str, Dimension]] = {
    "beam.safety-bending": ("1.67", RATIO),
    "beam.elastic-constant": ("29000 ksi", PRESSURE),
    "beam.slender-web": ("3.76", RATIO),
    "beam.slender-flange": ("1", RATIO),
    "beam.slender-tube-flange": ("1.12", RATIO),
    "beam.slender-tube-web": ("2.42", RATIO),
    "beam.slender-pipe": ("0.07", RATIO),
    "beam.safety-shear": ("1.67", RATIO),
    "beam.safety-shear-stocky": ("1.50", RATIO),
    "beam.stocky-web": ("2.24", RATIO),
    "beam.shear-web": ("2.54", RATIO),
    "beam.shear-tube": ("2.45", RATIO),
    "beam.safety-yielding": ("1.50", RATIO),
    "beam.safety-crippling": ("2", RATIO),
    "beam.safety-sideways": ("1.76", RATIO),
    "beam.sideways-ratio": ("1.7", RATIO),
    "beam.sideways-constant": ("480000 ksi", PRESSURE),
}
ALUMINIUM_LIMITS: dict[str, tuple[str, Dimension]] = {
    "beam.safety-aluminium-yielding": ("1.65", RATIO),
    "beam.safety-aluminium-rupture": ("1.95", RATIO),
    "beam.yield-6061-t6": ("35 ksi", PRESSURE),
    "beam.rupture-6061-t6": ("38 ksi", PRESSURE),
    "beam.yield-6061-t6-weld": ("15 ksi", PRESSURE),
    "beam.rupture-6061-t6-weld": ("24 ksi", PRESSURE),
    "beam.yield-6063-t6": ("25 ksi", PRESSURE),
    "beam.rupture-6063-t6": ("30 ksi", PRESSURE),
    "beam.yield-6063-t6-weld": ("8 ksi", PRESSURE),
    "beam.rupture-6063-t6-weld": ("17 ksi", PRESSURE),
}
STEEL_REMEMBERED = {
    *((STEEL, key) for key in STEEL_LIMITS),
    *((ALUMINIUM, key) for key in ALUMINIUM_LIMITS),
}
STEEL_LIMITS |= ALUMINIUM_LIMITS
STEEL_LIMITS |= {"beam.shape-sizes": ("8 %", RATIO)}
STEEL_COPIED = {
    (OSHA, "beam.four-times"),
    *(
        (SHAPES, one.key)
        for one in BY_ID[SHAPES].values
        if isinstance(one.readings[0].content, Section)
    ),
}
