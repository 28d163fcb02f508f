"""What the web of a steel beam takes: shear along it, and what presses it where the beam bears.

Shear is carried by the web alone. Over a support the force spreads from the length on which the
beam bears through the flange and its fillet into the web, which yields there or cripples: at an end
of the beam it has a web to one side only, and takes half as much.
"""

from __future__ import annotations

from backspan.core.numbers import root, smaller
from backspan.core.quantities import Area, Force, Length, Pressure, Ratio
from backspan.core.worked.formula import formula


@formula(symbol="G_o")
def own_weight_outboard(
    *, beam_weight: Force, beam_length: Length, reach: Length, tip_beyond_line: Length
) -> Force:
    """What an even beam itself weighs outboard of the fulcrum.

    Source: statics: the share of its length that is outboard.
    """
    return beam_weight * (reach + tip_beyond_line) / beam_length


@formula(symbol="V")
def shear_outboard(*, factor: Ratio, load: Force, outboard_weight: Force) -> Force:
    """Shear just outboard of the fulcrum, with the factor of a rule on the load of the line.

    Source: statics: the load, and the beam's own weight outboard once.
    """
    return factor * load + outboard_weight


@formula(symbol="V_i")
def shear_inboard(*, counterweight: Force, beam_weight: Force) -> Force:
    """The most shear that can be inboard of the fulcrum, as long as the front is pressed.

    Source: statics: what lies there, with nothing taken off for what the rear stand carries.
    """
    return counterweight + beam_weight


@formula(symbol="x_e")
def from_tip_end(*, reach: Length, tip_beyond_line: Length) -> Length:
    """Fulcrum to the front end of the beam.

    Source: geometry.
    """
    return reach + tip_beyond_line


@formula(symbol="x_t")
def from_tail_end(
    *, beam_length: Length, reach: Length, tip_beyond_line: Length, rear_stand: Length
) -> Length:
    """Rear stand to the tail end of the beam.

    Source: geometry.
    """
    return beam_length - reach - tip_beyond_line - rear_stand


@formula(symbol="h")
def web_height(*, section_depth: Length, fillet: Length) -> Length:
    """Clear height of a web between the fillets; where those are not known, between the flanges.

    Source: AISC 360-16, B4.1b (from memory).
    """
    return section_depth - 2 * fillet


@formula(symbol="h")
def web_height_of_tube(*, section_depth: Length, wall: Length) -> Length:
    """Flat of a tube's side: its depth less the round corners.

    Source: AISC 360-16, B4.1b(d) and G4: three walls where the corners are not known (from memory).
    """
    return section_depth - 3 * wall


@formula(symbol="v_w")
def slenderness_of_web(*, web_height: Length, web_thickness: Length) -> Ratio:
    """Clear height of a web over its thickness.

    Source: geometry.
    """
    return web_height / web_thickness


@formula(symbol="v_l")
def slenderness_up_to(
    *, slender_limit: Ratio, elastic_constant: Pressure, yield_strength: Pressure
) -> Ratio:
    """Slenderness up to which a web is what a rule value calls it.

    Source: AISC 360-16, G2.1 and G4, a number times the root of E / F_y (from memory).
    """
    return slender_limit * root(elastic_constant / yield_strength)


@formula(symbol="V_n")
def shear_of_web(
    *, yield_strength: Pressure, section_depth: Length, web_thickness: Length
) -> Force:
    """Shear at which the web of an I yields.

    Source: AISC 360-16, equation G2-1 with C_v1 = 1 (from memory).
    """
    return 3 * yield_strength * section_depth * web_thickness / 5


@formula(symbol="V_n")
def shear_of_tube(*, yield_strength: Pressure, web_height: Length, wall: Length) -> Force:
    """Shear at which both sides of a tube yield.

    Source: AISC 360-16, equation G4-1 with C_v2 = 1 (from memory).
    """
    return 6 * yield_strength * web_height * wall / 5


@formula(symbol="F_cr")
def shear_stress_of_pipe(
    *, yield_strength: Pressure, elastic_constant: Pressure, section_depth: Length, wall: Length
) -> Pressure:
    """Shear stress at which the wall of a pipe yields or buckles.

    Source: AISC 360-16, equation G5-2b (from memory); G5-2a, which may be used where it gives more,
    is left out.
    """
    return smaller(
        39 * elastic_constant * wall * root(wall / section_depth) / (50 * section_depth),
        3 * yield_strength / 5,
    )


@formula(symbol="V_n")
def shear_of_pipe(*, shear_stress: Pressure, area: Area) -> Force:
    """Shear that a pipe takes: half of its area carries it.

    Source: AISC 360-16, equation G5-1 (from memory).
    """
    return shear_stress * area / 2


@formula(symbol="R_y")
def web_yields(
    *, yield_strength: Pressure, web_thickness: Length, fillet: Length, bearing_length: Length
) -> Force:
    """Force on a flange at which the web beside it yields, further than the depth from an end.

    Source: AISC 360-16, equation J10-2 (from memory).
    """
    return yield_strength * web_thickness * (5 * fillet + bearing_length)


@formula(symbol="R_y")
def web_yields_at_end(
    *, yield_strength: Pressure, web_thickness: Length, fillet: Length, bearing_length: Length
) -> Force:
    """Force on a flange at which the web beside it yields, within the depth from an end.

    Source: AISC 360-16, equation J10-3 (from memory).
    """
    return yield_strength * web_thickness * (5 * fillet / 2 + bearing_length)


@formula(symbol="R_c")
def web_cripples(
    *,
    elastic_constant: Pressure,
    yield_strength: Pressure,
    section_depth: Length,
    web_thickness: Length,
    flange_thickness: Length,
    bearing_length: Length,
) -> Force:
    """Force on a flange at which the web beside it cripples, half the depth or more from an end.

    A thicker flange helps by the root of its thickness and harms by its inverse: the least can lie
    inside a doubtful thickness, where its ends give more by a quarter of that doubt's square.

    Source: AISC 360-16, equation J10-4 with Q_f = 1 (from memory).
    """
    return (
        4
        * web_thickness
        * web_thickness
        * (
            1
            + 3
            * bearing_length
            * web_thickness
            * root(web_thickness / flange_thickness)
            / (section_depth * flange_thickness)
        )
        * root(elastic_constant * yield_strength * flange_thickness / web_thickness)
        / 5
    )


@formula(symbol="R_c")
def web_cripples_at_end(
    *,
    elastic_constant: Pressure,
    yield_strength: Pressure,
    section_depth: Length,
    web_thickness: Length,
    flange_thickness: Length,
    bearing_length: Length,
) -> Force:
    """Force on a flange at which the web beside it cripples, within half the depth from an end.

    Source: AISC 360-16, equation J10-5a (from memory); J10-5b, for bearing longer than a fifth of
    the depth, gives more and is left out.
    """
    return (
        2
        * web_thickness
        * web_thickness
        * (
            1
            + 3
            * bearing_length
            * web_thickness
            * root(web_thickness / flange_thickness)
            / (section_depth * flange_thickness)
        )
        * root(elastic_constant * yield_strength * flange_thickness / web_thickness)
        / 5
    )


@formula(symbol="v_s")
def sideways_slenderness(
    *, web_slenderness: Ratio, unbraced_length: Length, flange_width: Length
) -> Ratio:
    """Slenderness of a web over that of its flange between what holds it sideways.

    Source: AISC 360-16, J10.4: (h / t_w) / (L_b / b_f) (from memory).
    """
    return web_slenderness * flange_width / unbraced_length


@formula(symbol="R_s")
def web_sideways(
    *,
    sideways_constant: Pressure,
    web_thickness: Length,
    flange_thickness: Length,
    web_height: Length,
    sideways_slenderness: Ratio,
) -> Force:
    """Force on the pressed flange at which the web buckles sideways, where that flange may turn.

    Source: AISC 360-16, equation J10-7 (from memory).
    """
    return (
        2
        * sideways_constant
        * web_thickness
        * web_thickness
        * web_thickness
        * flange_thickness
        * sideways_slenderness
        * sideways_slenderness
        * sideways_slenderness
        / (5 * web_height * web_height)
    )


@formula(symbol="R_a")
def allowed_force(*, nominal_force: Force, safety_factor: Ratio) -> Force:
    """Force allowed in service.

    Source: AISC 360-16, B3.2, allowable strength (from memory).
    """
    return nominal_force / safety_factor
