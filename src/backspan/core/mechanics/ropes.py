"""What a suspension line must carry, and what it carries where its end is made."""

from __future__ import annotations

from backspan.core.quantities import Area, Force, Length, Moment, Pressure, Ratio
from backspan.core.worked.formula import formula


@formula(symbol="F_req")
def load_to_carry(*, factor: Ratio, load: Force) -> Force:
    """Force that a suspension line has to be able to carry, with the factor of the rule.

    Source: 29 CFR 1926.451(a)(4), a multiple of the load on the rope.
    """
    return factor * load


@formula(symbol="F_end")
def strength_at_end(*, breaking_force: Force, efficiency: Ratio) -> Force:
    """Force that a rope carries where its end is made: the share of its breaking force kept there.

    Source: rope makers' tables of end terminations: efficiency times breaking force.
    """
    return efficiency * breaking_force


@formula(symbol="F_hw")
def hardware_strength(*, connector_working_load: Force, connector_factor: Ratio) -> Force:
    """Force at which a piece of hardware fails, from its working load limit and maker's factor.

    Source: the meaning of a working load limit: breaking force divided by the maker's factor.
    """
    return connector_factor * connector_working_load


@formula(symbol="s_req")
def least_clip_spacing(*, factor: Ratio, rope_diameter: Length) -> Length:
    """Least spacing of clips, as a multiple of the rope's diameter.

    Source: 29 CFR 1926.451(d)(12)(i), 6 rope diameters.
    """
    return factor * rope_diameter


@formula(symbol="t_req")
def turnback_for_clips(
    *, sheet_turnback: Length, clip_count: Ratio, sheet_clip_count: Ratio
) -> Length:
    """Rope to turn back where there are more clips than the maker's sheet asks for.

    Source: California Title 8 section 8497, note to table 1: it grows in proportion to the clips.
    """
    return sheet_turnback * clip_count / sheet_clip_count


@formula(symbol="T_max")
def most_clip_torque(*, factor: Ratio, sheet_torque: Moment) -> Moment:
    """Most torque of clips, as a multiple of what their maker asks for.

    Source: common practice, no source: more crushes the rope, and tells of another maker's sheet.
    """
    return factor * sheet_torque


@formula(symbol="L_req")
def rope_to_reach(*, drop_height: Length, height_above_roof: Length) -> Length:
    """Rope from where the beam bears down to the level below.

    Source: 29 CFR 1926.451(d)(6): the rope reaches the level below, or its end is stopped.
    """
    return drop_height + height_above_roof


@formula(symbol="A_m")
def metal_area(*, metal_share: Ratio, rope_diameter: Length) -> Area:
    """Section of the wires of a rope, as a share of the square of its diameter.

    Source: rope makers' tables.
    """
    return metal_share * rope_diameter * rope_diameter


@formula(symbol="e")
def rope_stretch(
    *, hung: Force, hanging_length: Length, rope_modulus: Pressure, metal: Area
) -> Length:
    """Length by which a rope that has been worked in stretches under a load, and comes back.

    Source: elasticity of a bar, P L / (A E).
    """
    return hung * hanging_length / (metal * rope_modulus)
