"""What bends an outrigger beam, and how far it bends.

Loaded, the beam hogs: over the fulcrum the moment is P a, and falls in a straight line to nothing
at the counterweight, which holds it down. Idle it rests on its fulcrum and its rear stand: a stack
between the two lets it sag by W b (c - b) / c, most where b = c/2; a stack behind the rear stand
bends it over that by W (b - c).
"""

from __future__ import annotations

from backspan.core.numbers import root
from backspan.core.quantities import Force, Length, Moment, Pressure, Ratio, SecondMoment
from backspan.core.worked.formula import formula


@formula(symbol="M_G")
def own_moment_outboard(
    *, beam_weight: Force, beam_length: Length, reach: Length, tip_beyond_line: Length
) -> Moment:
    """Moment over the fulcrum of what an even beam itself weighs outboard of it.

    Source: statics: the weight of the length outboard, at half that length.
    """
    return beam_weight * (reach + tip_beyond_line) * (reach + tip_beyond_line) / (2 * beam_length)


@formula(symbol="M")
def hogging_moment(*, factor: Ratio, load: Force, reach: Length, own_outboard: Moment) -> Moment:
    """Moment over the fulcrum, with the factor of a rule on the load of the line.

    Source: statics: load times its arm, and the beam's own weight outboard once.
    """
    return factor * load * reach + own_outboard


@formula(symbol="M_i")
def sagging_moment(*, counterweight: Force, backspan: Length, rear_stand: Length) -> Moment:
    """Moment under a stack between fulcrum and rear stand of an idle beam.

    Largest where the stack stands halfway.

    Source: statics, a load on a beam on two supports.
    """
    return counterweight * backspan * (rear_stand - backspan) / rear_stand


@formula(symbol="M_i")
def tail_moment(*, counterweight: Force, backspan: Length, rear_stand: Length) -> Moment:
    """Moment over the rear stand of an idle beam whose stack is behind it.

    Source: statics: the weight times its arm.
    """
    return counterweight * (backspan - rear_stand)


@formula(symbol="delta")
def tip_deflection(
    *,
    load: Force,
    reach: Length,
    backspan: Length,
    elastic_constant: Pressure,
    second_moment: SecondMoment,
) -> Length:
    """How far the line's end of the beam goes down under the load, of one section all along.

    Source: any table of beams, overhanging beam with a load at its end: P a2 (a + b) / (3 E I).
    """
    return load * reach * reach * (reach + backspan) / (3 * elastic_constant * second_moment)


@formula(symbol="delta_b")
def backspan_bow(
    *,
    load: Force,
    reach: Length,
    backspan: Length,
    elastic_constant: Pressure,
    second_moment: SecondMoment,
) -> Length:
    """How far the beam bows up between fulcrum and counterweight under the load, at the most.

    Source: any table of beams, overhanging beam with a load at its end: P a b2 / (9 sqrt(3) E I).
    """
    return load * reach * backspan * backspan / (9 * root(3) * elastic_constant * second_moment)


@formula(symbol="M_a")
def allowed_moment(*, nominal_moment: Moment, safety_factor: Ratio) -> Moment:
    """Moment allowed in service.

    Source: AISC 360-16, B3.2, allowable strength (from memory).
    """
    return nominal_moment / safety_factor
