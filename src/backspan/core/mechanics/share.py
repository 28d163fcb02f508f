"""How much of what is there is asked for, whatever is compared."""

from __future__ import annotations

from backspan.core.quantities import Ratio, Same
from backspan.core.worked.formula import formula


@formula(symbol="U")
def utilisation(*, demand: Same, capacity: Same) -> Ratio:
    """Share of the capacity that the demand uses: 1 is exactly met.

    Source: definition.
    """
    return demand / capacity
