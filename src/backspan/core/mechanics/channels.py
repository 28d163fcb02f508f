"""What the section of a single channel is worth sideways and in torsion, from its plates.

Across its web it bends as an I of the same plates does.

A rolled channel has sloped flanges: more steel beside the web, less at the tips, which tell most
when it bends sideways or warps. Even plates of the mean thickness have too much of that: 14 to 22
in a hundred too much along the web. So its flanges are taken half as thick again at the web and
half as thick at the tip, more slope than the rolled ones of a table have; even plates, which have
more, get no credit for it.
"""

from __future__ import annotations

from backspan.core.numbers import root
from backspan.core.quantities import Length, Ratio, SecondMoment, SectionModulus
from backspan.core.worked.formula import formula


@formula(symbol="I_y")
def weak_second_moment_of_channel(
    *,
    section_depth: Length,
    flange_width: Length,
    web_thickness: Length,
    flange_thickness: Length,
) -> SecondMoment:
    """Second moment of a channel about the axis along its web, its flanges thinner at their tips.

    Source: geometry: about the back of the web, less its area times the square of the distance of
    its centroid. A flange that loses its own thickness t from web to tip, at an even rate over
    u = b - t_w, has t u2 / 12 less of first moment and t u2 (b + t_w) / 12 less of second.
    """
    return (
        (
            2 * flange_thickness * flange_width * flange_width * flange_width
            + (section_depth - 2 * flange_thickness) * web_thickness * web_thickness * web_thickness
        )
        / 3
        - flange_thickness
        * (flange_width - web_thickness)
        * (flange_width - web_thickness)
        * (flange_width + web_thickness)
        / 6
        - (
            flange_thickness * flange_width * flange_width
            + (section_depth - 2 * flange_thickness) * web_thickness * web_thickness / 2
            - flange_thickness * (flange_width - web_thickness) * (flange_width - web_thickness) / 6
        )
        * (
            flange_thickness * flange_width * flange_width
            + (section_depth - 2 * flange_thickness) * web_thickness * web_thickness / 2
            - flange_thickness * (flange_width - web_thickness) * (flange_width - web_thickness) / 6
        )
        / (
            2 * flange_width * flange_thickness
            + web_thickness * (section_depth - 2 * flange_thickness)
        )
    )


@formula(symbol="J")
def torsion_of_channel(
    *,
    section_depth: Length,
    flange_width: Length,
    web_thickness: Length,
    flange_thickness: Length,
) -> SecondMoment:
    """Torsion constant of a channel: a third of b t3 of each plate, along their middles.

    Source: Saint-Venant; any text-book on the strength of materials.
    """
    return (
        (2 * flange_width - web_thickness) * flange_thickness * flange_thickness * flange_thickness
        + (section_depth - flange_thickness) * web_thickness * web_thickness * web_thickness
    ) / 3


@formula(symbol="h_i")
def warping_distance_of_channel(
    *,
    web_thickness: Length,
    flange_thickness: Length,
    flange_width: Length,
    between_flanges: Length,
    weak_second_moment: SecondMoment,
) -> Length:
    """How far apart the flanges of an I are that warps as a channel does: h_i2 = 4 C_w / I_y.

    Source: thin-walled bars, any text-book: C_w is the integral of the squared sectorial area about
    the shear centre, h_o2 / 2 (I_f - Q_f2 / (A_f + h_o t_w / 6)), with A_f = t b, Q_f = 5 t b2 / 12
    and I_f = t b3 / 4 of a flange from the middle of the web on, of that slope.
    """
    return between_flanges * root(
        2
        * flange_thickness
        * (flange_width - web_thickness / 2)
        * (flange_width - web_thickness / 2)
        * (flange_width - web_thickness / 2)
        * (
            36
            - 25
            * flange_thickness
            * (flange_width - web_thickness / 2)
            / (
                flange_thickness * (flange_width - web_thickness / 2)
                + between_flanges * web_thickness / 6
            )
        )
        / (144 * weak_second_moment)
    )


@formula(symbol="r_ts")
def turning_radius_of_channel(
    *, weak_second_moment: SecondMoment, warping_distance: Length, elastic_modulus_x: SectionModulus
) -> Length:
    """Radius by which a channel buckles sideways.

    Source: AISC 360-16, equation F2-7 (from memory): r_ts2 = root(I_y C_w) / S_x.
    """
    return root(weak_second_moment * warping_distance / (2 * elastic_modulus_x))


@formula(symbol="v")
def slenderness_of_channel_flange(*, flange_width: Length, flange_thickness: Length) -> Ratio:
    """All of a channel's flange over its thickness.

    Source: AISC 360-16, B4.1(b) and table B4.1b, case 10 (from memory).
    """
    return flange_width / flange_thickness
