"""The nomenclature of formulas: one name, one symbol, one meaning, one dimension.

The symbols are this program's own choice, near those of statics text-books; common practice, no
source.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType

from backspan.core.quantities import (
    ACCELERATION,
    AREA,
    CURRENT,
    FORCE,
    LENGTH,
    MASS,
    MOMENT,
    PRESSURE,
    RATIO,
    SAME,
    SECOND_MOMENT,
    SECTION_MODULUS,
    VOLTAGE,
    Dimension,
)
from backspan.core.quantities.named import QUANTITIES


@dataclass(frozen=True, slots=True)
class Symbol:
    """What a name stands for in print."""

    name: str
    symbol: str
    meaning: str
    dimension: Dimension


def _by_name(*symbols: Symbol) -> Mapping[str, Symbol]:
    return MappingProxyType({one.name: one for one in symbols})


#: Every parameter name of every formula.
SYMBOLS: Mapping[str, Symbol] = _by_name(
    # What a project states, as its row says
    *(
        Symbol(one.name, one.symbol, one.words, one.dimension or RATIO)
        for one in QUANTITIES.values()
        if one.symbol
    ),
    # Lengths along the beam
    Symbol("inboard", "L_in", "fulcrum to the tail end of the beam", LENGTH),
    Symbol("beam_centroid_inboard", "x_G", "fulcrum to centroid of the beam, inboard", LENGTH),
    # What a stand presses
    Symbol("plate_side", "d_f", "length or width of the plate of a stand", LENGTH),
    Symbol("pad_spread", "k_s", "how far a load spreads to each side in a pad's thickness", RATIO),
    Symbol("to_edge", "e", "from the middle of a plate to the edge of what it stands on", LENGTH),
    Symbol("in_doubt", "u", "how far off taped lengths may be together", LENGTH),
    Symbol("pressed_length", "l_s", "length of the plate or pad that presses the surface", LENGTH),
    Symbol("pressed_width", "w_s", "width of the plate or pad that presses the surface", LENGTH),
    # The stack
    Symbol("height_above_roof", "h_b", "height above the roof at which the beam bears", LENGTH),
    Symbol("stack_length", "l", "length of beam that a group of rows takes", LENGTH),
    Symbol("length_before", "x_0", "tail end to the inner end of the rows before", LENGTH),
    Symbol("outer_end", "x_out", "tail end to the outer end of a group of rows", LENGTH),
    Symbol("centroid", "c_row", "tail end to centroid of a group of rows", LENGTH),
    Symbol("stack_centroid", "c", "tail end to centroid of the whole stack", LENGTH),
    Symbol("rows", "n_row", "number of rows of pieces", RATIO),
    # Masses and forces
    Symbol("mass", "m", "mass of a thing that is weighed", MASS),
    Symbol("load", "P", "load at the suspension line that a rule names", FORCE),
    Symbol("dead_load", "P_D", "weight of all that hangs without people and material", FORCE),
    Symbol("placed_load", "W_x", "weight of a person or a thing on the stage", FORCE),
    Symbol("shares", "P_s", "what people and things on the stage bring on a hoist", FORCE),
    Symbol("whole", "l_w", "a length that is halved", LENGTH),
    Symbol("arm", "x", "distance of a load from the other line", LENGTH),
    Symbol("live_load", "P_L", "weight of people, tools and material on the stage", FORCE),
    Symbol("hoist_pull", "T_h", "pull of the hoist on its line", FORCE),
    Symbol("rope_weight", "G_r", "weight of the suspension line below the support", FORCE),
    Symbol("bottom_weight", "G_b", "weight hung on the line to steady it", FORCE),
    Symbol("counterweight", "W", "weight of counterweight", FORCE),
    Symbol("weight_before", "W_0", "weight of the groups before", FORCE),
    Symbol("piece_weight", "w", "weight of one piece", FORCE),
    Symbol("beam_weight", "G", "weight of the beam", FORCE),
    Symbol("carried_behind", "N", "what the rear stand carries, none where the tail lifts", FORCE),
    Symbol("held", "H", "force along the beam that tiebacks hold", FORCE),
    Symbol("own_slope", "s", "how far a line runs across for its length along", RATIO),
    Symbol("other_slope", "s_o", "the same of the other tieback of a pair", RATIO),
    Symbol("hung", "P_h", "load that hangs on a rope or on a sling", FORCE),
    Symbol("reaction", "R", "what a stand carries", FORCE),
    Symbol("hanging_length", "L_r", "length of rope that the load hangs on", LENGTH),
    # A fall
    Symbol("above_ring", "h_y", "attachment of the lanyard above the D-ring", LENGTH),
    Symbol("line_run", "L_x", "lifeline across the roof, from its anchor to the edge", LENGTH),
    Symbol("wall_height", "h_w", "height of the wall that a lifeline goes over", LENGTH),
    Symbol("lifeline", "L_l", "lifeline down to the lowest place", LENGTH),
    Symbol("falls_free", "h_ff", "free fall before the lanyard is taut", LENGTH),
    Symbol("line_stretch", "d_l", "stretch of the lifeline", LENGTH),
    Symbol("line_slack", "d_k", "lifeline that goes slack along the edge", LENGTH),
    Symbol("line_aside", "x_l", "anchor along the edge from where its lifeline passes", LENGTH),
    Symbol("line_inward", "y_l", "anchor in from the face of the edge", LENGTH),
    Symbol("mean_share", "c_f", "mean force of an absorber over the most it arrests with", RATIO),
    Symbol("rider_weight", "G_p", "weight of a rider with tools", FORCE),
    Symbol("slows", "F_d", "force that slows a rider down", FORCE),
    Symbol("fall_margin", "d_m", "margin left below the feet", LENGTH),
    Symbol("distance", "h_req", "height below the feet that a fall takes", LENGTH),
    Symbol("above_level", "h_d", "height of the deck above the level below", LENGTH),
    Symbol("metal", "A_m", "section of the wires of a rope", AREA),
    Symbol("metal_share", "c_m", "section of the wires over the rope's diameter squared", RATIO),
    Symbol("rope_modulus", "E_r", "modulus of elasticity of a rope", PRESSURE),
    Symbol("plate_area", "A", "area on which a stand stands", AREA),
    # Power of the hoists
    Symbol("running_hoists", "n_r", "number of hoists that run", RATIO),
    Symbol("starting_hoists", "n_l", "number of hoists that start", RATIO),
    Symbol("current", "I", "current of all hoists on the cord", CURRENT),
    Symbol("drop", "U_d", "voltage lost in the cord", VOLTAGE),
    Symbol("allowed_drop", "U_a", "voltage that the cord may lose", VOLTAGE),
    # The beam's section
    Symbol("area", "A_s", "area of the beam's section", AREA),
    Symbol("second_moment", "I_x", "second moment of the section across its web", SECOND_MOMENT),
    Symbol("weak_second_moment", "I_y", "second moment along its web", SECOND_MOMENT),
    Symbol("torsion_constant", "J", "torsion constant of the section", SECOND_MOMENT),
    Symbol("elastic_modulus_x", "S_x", "elastic modulus of the section", SECTION_MODULUS),
    Symbol("plastic_modulus", "Z_x", "plastic modulus of the section", SECTION_MODULUS),
    Symbol("radius_y", "r_y", "radius of gyration along the web", LENGTH),
    Symbol("effective_radius", "r_ts", "radius by which the beam turns over", LENGTH),
    Symbol("between_flanges", "h_o", "distance between the middles of the flanges", LENGTH),
    Symbol("warping_distance", "h_i", "between flanges of an I that warps as much", LENGTH),
    Symbol("edge_strength", "F_t", "stress at which aluminium yields or breaks", PRESSURE),
    Symbol("elastic_constant", "E", "modulus of elasticity of steel", PRESSURE),
    Symbol("flange_slenderness", "v", "half a flange's width over its thickness", RATIO),
    Symbol("compact_flange", "v_p", "slenderness of a flange that still yields", RATIO),
    Symbol("noncompact_flange", "v_r", "slenderness of one that buckles elastic", RATIO),
    Symbol("torsion_share", "s_t", "share of torsion alone against turning over", RATIO),
    Symbol("moment_shape", "C_b", "how the moment is spread along the unbraced length", RATIO),
    Symbol("plastic_length", "L_p", "unbraced length up to which nothing is lost", LENGTH),
    Symbol("elastic_length", "L_el", "unbraced length from which it turns over elastic", LENGTH),
    Symbol("safety_factor", "k_O", "factor between nominal and allowed strength", RATIO),
    # The beam's web
    Symbol("outboard_weight", "G_o", "weight of the beam outboard of the fulcrum", FORCE),
    Symbol("fillet", "k_f", "outer face of a flange to the end of its fillet in the web", LENGTH),
    Symbol("web_height", "h", "clear height of the web, or of a tube's side", LENGTH),
    Symbol("slender_limit", "c_w", "slenderness of a web times the root of F_y / E", RATIO),
    Symbol("shear_stress", "F_cr", "shear stress at which a pipe yields or buckles", PRESSURE),
    Symbol("web_slenderness", "v_w", "clear height of the web over its thickness", RATIO),
    Symbol("sideways_slenderness", "v_s", "slenderness of web over that of its flange", RATIO),
    Symbol("sideways_constant", "C_r", "constant by which a web buckles sideways", PRESSURE),
    Symbol("nominal_force", "R_n", "force at which the web gives way", FORCE),
    # Moments
    Symbol("plastic_moment", "M_p", "moment at which all of the section yields", MOMENT),
    Symbol("nominal_moment", "M_n", "moment at which the beam yields or turns over", MOMENT),
    Symbol("own_outboard", "M_G", "moment of the beam's own weight outboard", MOMENT),
    Symbol("own_idle", "M_g", "what the beam's own weight adds to its idle moment", MOMENT),
    Symbol("tipping", "M", "moment that turns the support about its fulcrum", MOMENT),
    Symbol("required", "M_req", "moment the counterweight must resist", MOMENT),
    Symbol("resisting", "M_res", "moment that holds the support down", MOMENT),
    Symbol("demand", "D", "what is asked for", SAME),
    Symbol("capacity", "C", "what is there to meet it", SAME),
    Symbol("moment", "S", "moment of the stack about the tail end", MOMENT),
    Symbol("moment_before", "S_0", "moment of the groups before about the tail end", MOMENT),
    # Ratios
    Symbol("factor", "k", "factor that a rule puts on a load", RATIO),
    Symbol("cap_factor", "k_cap", "most stall load over rated load that a rule allows", RATIO),
)

#: Every constant that formulas name.
CONSTANTS: Mapping[str, Symbol] = _by_name(
    Symbol(
        "STANDARD_GRAVITY", "g", "standard gravity, 9.80665 m/s2 (3rd CGPM, 1901)", ACCELERATION
    ),
)
