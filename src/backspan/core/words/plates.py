"""What stands on a plate, told in the plate's own unit first.

A maker writes a hoist's load in kilograms or in pounds; who compares a paper with the plate looks
for that number. So a rated value is told as it was written, with the project's own unit behind it;
and in a metric project a load that hangs is told in kilograms first, then in kilonewtons.
"""

from __future__ import annotations

import re

from backspan.core.quantities import FORCE, MASS, Amount, Style, display, display_round
from backspan.core.quantities.units import STANDARD_GRAVITY

#: The unit at the end of what somebody wrote.
_UNIT = re.compile(r"[^\d\s.,/][^\d]*$")

#: What plates and stamps rate.
PLATED = frozenset({FORCE, MASS})
#: Values of messages, and margins, that people compare with what a plate says.
ON_A_PLATE = frozenset({"stall", "cap", "rated", "load", "trip"})
MARGINS_ON_A_PLATE = frozenset({"most-rated-load", "most-stall-load", "most-stall-load-allowed"})


def as_written(written: str, amount: Amount, style: Style) -> str:
    """A value in the unit it was written in, with the style's own unit behind it if that differs.

    `written` is the text of the statement; without one, or where its unit is not known, the style's
    own unit stands alone.
    """
    told = display(amount.value, amount.dimension, style)
    found = _UNIT.search(written.strip())
    unit = None if found is None else amount.dimension.unit(found[0].strip())
    if unit is None or told.endswith(f" {unit.label}"):
        return told
    return f"{display(amount.value, amount.dimension, style, unit=unit.label)} ({told})"


def load(amount: Amount, style: Style) -> str:
    """A load that hangs: in a metric project in kilograms first."""
    told = display(amount.value, amount.dimension, style)
    if style is not Style.METRIC or amount.dimension != FORCE:
        return told
    return f"{display(amount.value, FORCE, style, unit='kg')} ({told})"


def most_load(amount: Amount, style: Style) -> str:
    """The same of a most: in kilograms rounded down."""
    told = display(amount.value, amount.dimension, style)
    if style is not Style.METRIC or amount.dimension != FORCE:
        return told
    whole = Amount(amount.value / float(STANDARD_GRAVITY), MASS)
    return f"{display_round(whole, style, direction='down')} ({told})"
