"""A number that knows its dimension."""

import math
from dataclasses import dataclass

from backspan.core.quantities.dimension import Dimension
from backspan.core.quantities.errors import QuantityError


@dataclass(frozen=True, slots=True)
class Amount:
    """`value` in the SI unit of `dimension`.

    Raises QuantityError if the value is not finite.
    """

    value: float
    dimension: Dimension

    def __post_init__(self) -> None:
        if not math.isfinite(self.value):
            raise QuantityError(
                reason=f"{self.dimension.wanted} is a finite number",
                found=repr(self.value),
                expected=self.dimension.forms,
            )
