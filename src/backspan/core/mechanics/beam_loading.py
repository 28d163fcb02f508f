"""What bends an outrigger beam, and how far it bends.

Loaded, the beam hogs: over the fulcrum the moment is P a, and falls in a straight line to nothing
at the counterweight, which holds it down. Idle it rests on its fulcrum and its rear stand: a stack
between the two lets it sag by W b (c - b) / c, most where b = c/2; a stack behind the rear stand
bends it over that by W (b - c). The beam's own weight goes on top of each.
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


@formula(symbol="M_Gt")
def own_moment_uneven(
    *, own_outboard: Moment, beam_weight: Force, beam_length: Length, centroid_from_tail: Length
) -> Moment:
    """The most that moment is where the centroid lies nearer the tip than the middle.

    Source: statics: moving weight outward by a length adds no more than the weight times it.
    """
    return own_outboard + beam_weight * (centroid_from_tail - beam_length / 2)


@formula(symbol="M")
def hogging_moment(*, factor: Ratio, load: Force, reach: Length, own_outboard: Moment) -> Moment:
    """Moment over the fulcrum, with the factor of a rule on the load of the line.

    Source: statics: load times its arm, and the beam's own weight outboard once.
    """
    return factor * load * reach + own_outboard


@formula(symbol="M_g")
def own_moment_between(*, beam_weight: Force, beam_length: Length, rear_stand: Length) -> Moment:
    """The most an even beam sags by itself between fulcrum and rear stand.

    Source: statics, an even load on a beam on two supports; what hangs out beyond them lifts it
    there, and is left out.
    """
    return beam_weight * rear_stand * rear_stand / (8 * beam_length)


@formula(symbol="M_g")
def own_moment_behind(
    *, beam_weight: Force, beam_length: Length, inboard: Length, rear_stand: Length
) -> Moment:
    """Moment over the rear stand of what an even beam itself weighs behind it.

    Source: statics: the weight of the length behind, at half that length.
    """
    return beam_weight * (inboard - rear_stand) * (inboard - rear_stand) / (2 * beam_length)


@formula(symbol="M_i")
def sagging_moment(
    *, counterweight: Force, backspan: Length, rear_stand: Length, own_idle: Moment
) -> Moment:
    """Moment under a stack between fulcrum and rear stand of an idle beam.

    Source: statics, a load on a beam on two supports, and the beam's own weight.
    """
    return counterweight * backspan * (rear_stand - backspan) / rear_stand + own_idle


@formula(symbol="M_i")
def sagging_halfway(*, counterweight: Force, rear_stand: Length, own_idle: Moment) -> Moment:
    """The most that moment is wherever the stack stands: halfway.

    Source: statics, as above with b = c/2.
    """
    return counterweight * rear_stand / 4 + own_idle


@formula(symbol="M_i")
def tail_moment(
    *, counterweight: Force, backspan: Length, rear_stand: Length, own_idle: Moment
) -> Moment:
    """Moment over the rear stand of an idle beam whose stack is behind it.

    Source: statics: the weight times its arm, and the beam's own weight.
    """
    return counterweight * (backspan - rear_stand) + own_idle


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
