"""Tipping of a support about its fulcrum: what turns it over, what holds it down, what is left.

The moment rule is one line of statics, load x reach against counterweight x backspan; what the
texts disagree about is the factor and the load, which arrive here as arguments.
"""

from __future__ import annotations

from backspan.core.mechanics.constants import STANDARD_GRAVITY
from backspan.core.quantities import Force, Length, Mass, Moment, Ratio
from backspan.core.worked.formula import formula


@formula(symbol="M")
def tipping_moment(*, load: Force, reach: Length) -> Moment:
    """Moment with which a load at the suspension line turns the support about its fulcrum.

    Source: statics; 29 CFR 1926.451(a)(2) calls it the tipping moment.
    """
    return load * reach


@formula(symbol="M_req")
def required_moment(*, factor: Ratio, load: Force, reach: Length) -> Moment:
    """Moment the counterweight must resist: a factor times the tipping moment of a load.

    Source: 29 CFR 1926.451(a)(2); the same form in every text of rules that give a factor.
    """
    return factor * load * reach


@formula(symbol="W")
def weight(*, mass: Mass) -> Force:
    """Weight of a mass at standard gravity.

    Source: 3rd CGPM (1901), Resolution 2.
    """
    return mass * STANDARD_GRAVITY


@formula(symbol="M_res")
def resisting_moment(*, counterweight: Force, backspan: Length) -> Moment:
    """Moment with which the counterweight holds the support down about its fulcrum.

    Source: statics; the trade's counterweight formula of 1996 (W = 4 L a / b) solved for W b.
    """
    return counterweight * backspan


@formula(symbol="M_res")
def resisting_moment_with_beam(
    *,
    counterweight: Force,
    backspan: Length,
    beam_weight: Force,
    beam_centroid_inboard: Length,
) -> Moment:
    """Resisting moment with the beam's own weight: it helps inboard, harms outboard (negative).

    Source: statics; EN 1808:2015 counts it as Sw x Lb (from memory).
    """
    return counterweight * backspan + beam_weight * beam_centroid_inboard


@formula(symbol="W_req")
def required_counterweight(*, required: Moment, backspan: Length) -> Force:
    """Weight of counterweight that resists a moment at a backspan.

    Source: the trade's counterweight formula of 1996, W = F L a / b.
    """
    return required / backspan


@formula(symbol="W_req")
def required_counterweight_with_beam(
    *,
    required: Moment,
    backspan: Length,
    beam_weight: Force,
    beam_centroid_inboard: Length,
) -> Force:
    """Weight of counterweight needed beside the beam's own moment about the fulcrum.

    Source: statics; the EN 1808:2015 relation Cwr x Wll x Lo <= Mw x Li + Sw x Lb (from memory).
    """
    return (required - beam_weight * beam_centroid_inboard) / backspan


@formula(symbol="k_has")
def factor_reached(*, resisting: Moment, tipping: Moment) -> Ratio:
    """Factor that the resisting moment has over a tipping moment.

    Source: statics.
    """
    return resisting / tipping


@formula(symbol="n")
def pieces_in_weight(*, counterweight: Force, piece_weight: Force) -> Ratio:
    """Pieces that make up a weight, before rounding to whole ones.

    Source: arithmetic.
    """
    return counterweight / piece_weight
