"""What moment a steel beam takes before it yields or buckles sideways, nominal.

A beam whose compressed flange is held at short intervals bends until all of it yields, Mp. Between
two places that hold it sideways an I of some length turns over first: the longer that unbraced
length L_b, the less it takes. Up to L_p nothing is lost, from L_r on it buckles while it is still
elastic, between the two the moment falls in a straight line. A thin flange buckles by itself before
the section is plastic. A tube hardly turns over.
"""

from __future__ import annotations

from backspan.core.numbers import root, smaller
from backspan.core.quantities import (
    Area,
    Length,
    Moment,
    Pressure,
    Ratio,
    SecondMoment,
    SectionModulus,
)
from backspan.core.worked.formula import formula


@formula(symbol="M_p")
def moment_of_plastic_section(
    *, yield_strength: Pressure, plastic_modulus: SectionModulus
) -> Moment:
    """Moment at which all of a section yields.

    Source: AISC 360-16, equation F2-1 (from memory).
    """
    return yield_strength * plastic_modulus


@formula(symbol="M_n")
def moment_at_the_edge(*, edge_strength: Pressure, elastic_modulus_x: SectionModulus) -> Moment:
    """Moment at which the outermost fibre of a section comes to a stress.

    Source: statics of an elastic section; what the section has beyond is given no credit.
    """
    return edge_strength * elastic_modulus_x


@formula(symbol="L_p")
def length_still_plastic(
    *, radius_y: Length, elastic_constant: Pressure, yield_strength: Pressure
) -> Length:
    """Longest unbraced length at which an I still becomes plastic.

    Source: AISC 360-16, equation F2-5 (from memory).
    """
    return 176 * radius_y * root(elastic_constant / yield_strength) / 100


@formula(symbol="s_t")
def share_of_torsion(
    *,
    torsion_constant: SecondMoment,
    elastic_modulus_x: SectionModulus,
    between_flanges: Length,
) -> Ratio:
    """How much of its resistance to turning over an I has from torsion alone.

    Source: AISC 360-16, equation F2-4, J c / (S_x h_o) with c = 1 (from memory).
    """
    return torsion_constant / (elastic_modulus_x * between_flanges)


@formula(symbol="s_t")
def share_of_torsion_of_channel(
    *,
    torsion_constant: SecondMoment,
    elastic_modulus_x: SectionModulus,
    warping_distance: Length,
) -> Ratio:
    """How much of its resistance to turning over a channel has from torsion alone.

    Source: AISC 360-16, equations F2-4 and F2-8b (from memory): J c / (S_x h_o) with
    c = h_o / 2 root(I_y / C_w), which is h_o / h_i.
    """
    return torsion_constant / (elastic_modulus_x * warping_distance)


@formula(symbol="L_el")
def length_elastic(
    *,
    effective_radius: Length,
    elastic_constant: Pressure,
    yield_strength: Pressure,
    torsion_share: Ratio,
) -> Length:
    """Unbraced length from which an I turns over while it is still elastic.

    Source: AISC 360-16, equation F2-6 (from memory): 0.7 of the yield strength, 6.76 x 0.49.
    """
    return (
        195
        * effective_radius
        * elastic_constant
        * root(
            torsion_share
            + root(
                torsion_share * torsion_share
                + 33124
                * yield_strength
                * yield_strength
                / (10000 * elastic_constant * elastic_constant)
            )
        )
        / (70 * yield_strength)
    )


@formula(symbol="M_n")
def inelastic_moment(
    *,
    moment_shape: Ratio,
    plastic_moment: Moment,
    yield_strength: Pressure,
    elastic_modulus_x: SectionModulus,
    unbraced_length: Length,
    plastic_length: Length,
    elastic_length: Length,
) -> Moment:
    """Moment of a beam between the two lengths, never above its plastic moment.

    Source: AISC 360-16, equations F2-2 and F7-10 (from memory).
    """
    return smaller(
        plastic_moment,
        moment_shape
        * (
            plastic_moment
            - (plastic_moment - 7 * yield_strength * elastic_modulus_x / 10)
            * (unbraced_length - plastic_length)
            / (elastic_length - plastic_length)
        ),
    )


@formula(symbol="M_n")
def buckling_moment(
    *,
    moment_shape: Ratio,
    elastic_constant: Pressure,
    elastic_modulus_x: SectionModulus,
    effective_radius: Length,
    unbraced_length: Length,
    torsion_share: Ratio,
    plastic_moment: Moment,
) -> Moment:
    """Moment at which a long I turns over, never above its plastic moment.

    Source: AISC 360-16, equations F2-3 and F2-4 (from memory); 9.8696 for the square of pi.
    """
    return smaller(
        plastic_moment,
        moment_shape
        * 98696
        * elastic_constant
        * elastic_modulus_x
        * effective_radius
        * effective_radius
        * root(
            1
            + 78
            * torsion_share
            * unbraced_length
            * unbraced_length
            / (1000 * effective_radius * effective_radius)
        )
        / (10000 * unbraced_length * unbraced_length),
    )


@formula(symbol="v_p")
def slenderness_compact(*, elastic_constant: Pressure, yield_strength: Pressure) -> Ratio:
    """Slenderness up to which a flange lets its section become plastic.

    Source: AISC 360-16 table B4.1b, case 10 (from memory).
    """
    return 38 * root(elastic_constant / yield_strength) / 100


@formula(symbol="v_r")
def slenderness_noncompact(*, elastic_constant: Pressure, yield_strength: Pressure) -> Ratio:
    """Slenderness from which a flange buckles while it is still elastic.

    Source: AISC 360-16 table B4.1b, case 10 (from memory).
    """
    return root(elastic_constant / yield_strength)


@formula(symbol="v_r")
def slenderness_noncompact_of_plates(
    *, elastic_constant: Pressure, yield_strength: Pressure
) -> Ratio:
    """Slenderness from which a flange of plates, held least by its web, buckles still elastic.

    Source: AISC 360-16 table B4.1b, case 11 (from memory): 0.95 root(k_c E / F_L), with k_c at its
    least, 0.35, and F_L = 0.7 F_y.
    """
    return 95 * root(elastic_constant / (2 * yield_strength)) / 100


@formula(symbol="M_n")
def flange_moment(
    *,
    plastic_moment: Moment,
    yield_strength: Pressure,
    elastic_modulus_x: SectionModulus,
    flange_slenderness: Ratio,
    compact_flange: Ratio,
    noncompact_flange: Ratio,
) -> Moment:
    """Moment at which a noncompact flange buckles, never above the plastic moment.

    Source: AISC 360-16, equation F3-1 (from memory).
    """
    return smaller(
        plastic_moment,
        plastic_moment
        - (plastic_moment - 7 * yield_strength * elastic_modulus_x / 10)
        * (flange_slenderness - compact_flange)
        / (noncompact_flange - compact_flange),
    )


@formula(symbol="L_p")
def plastic_length_of_tube(
    *,
    elastic_constant: Pressure,
    radius_y: Length,
    torsion_constant: SecondMoment,
    area: Area,
    plastic_moment: Moment,
) -> Length:
    """Longest unbraced length at which a rectangular tube still becomes plastic.

    Source: AISC 360-16, equation F7-12 (from memory).
    """
    return 13 * elastic_constant * radius_y * root(torsion_constant * area) / (100 * plastic_moment)


@formula(symbol="L_el")
def elastic_length_of_tube(
    *,
    elastic_constant: Pressure,
    radius_y: Length,
    torsion_constant: SecondMoment,
    area: Area,
    yield_strength: Pressure,
    elastic_modulus_x: SectionModulus,
) -> Length:
    """Unbraced length from which a rectangular tube turns over while it is still elastic.

    Source: AISC 360-16, equation F7-13 (from memory).
    """
    return (
        20
        * elastic_constant
        * radius_y
        * root(torsion_constant * area)
        / (7 * yield_strength * elastic_modulus_x)
    )


@formula(symbol="M_n")
def buckling_moment_of_tube(
    *,
    moment_shape: Ratio,
    elastic_constant: Pressure,
    torsion_constant: SecondMoment,
    area: Area,
    radius_y: Length,
    unbraced_length: Length,
    plastic_moment: Moment,
) -> Moment:
    """Moment at which a long rectangular tube turns over, never above its plastic moment.

    Source: AISC 360-16, equation F7-11 (from memory).
    """
    return smaller(
        plastic_moment,
        2
        * moment_shape
        * elastic_constant
        * root(torsion_constant * area)
        * radius_y
        / unbraced_length,
    )
