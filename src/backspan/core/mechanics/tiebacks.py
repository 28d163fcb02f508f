"""What a rope pulls that runs off the line it holds: a tieback, one of a pair, a leg of a sling.

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


@formula(symbol="T_turn")
def turned_pull(*, held: Force, own_slope: Ratio) -> Force:
    """Pull in one rope that turns off the direction of the force it holds.

    Source: statics: the part along that direction is the force held.
    """
    return held * root(1 + own_slope * own_slope)


@formula(symbol="T_side")
def pull_aside(*, held: Force, own_slope: Ratio) -> Force:
    """What such a rope pulls across the direction of the force it holds.

    Source: statics.
    """
    return held * own_slope


@formula(symbol="T_leg")
def sling_leg(*, hung: Force, own_slope: Ratio) -> Force:
    """Pull in each of two equal legs of a sling, by their slope off the vertical.

    Source: statics: each leg holds half of the load upwards.
    """
    return hung / 2 * root(1 + own_slope * own_slope)
