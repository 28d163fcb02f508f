"""What a tieback pulls: alone, or as one of a pair that holds a beam from both sides.

Along the beam the two share what is held; across it their pulls are equal and opposite. With the
slopes s = tan(angle) off the line of the beam: T1 / sqrt(1 + s1 s1) = H s2 / (s1 + s2).
"""

from __future__ import annotations

from backspan.core.numbers import root
from backspan.core.quantities import Force, Ratio
from backspan.core.worked.formula import formula


@formula(symbol="T_pair")
def pair_tension(*, held: Force, own_slope: Ratio, other_slope: Ratio) -> Force:
    """Pull in one of two tiebacks on opposite sides that hold a force along the beam together.

    Source: statics: forces along and across the beam.
    """
    return held * other_slope / (own_slope + other_slope) * root(1 + own_slope * own_slope)
