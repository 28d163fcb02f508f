"""The expression of every formula by its name, for where only compiled files are shipped.

Written by `tools/write_formula_table.py` from the formulas; change them, not this file.
"""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

#: Formula name to the text of its return expression.
FORMULA_TABLE: Mapping[str, str] = MappingProxyType(
    {
        "added_length": "length_before + stack_length",
        "added_weight": "weight_before + counterweight",
        "allowed_force": "nominal_force / safety_factor",
        "allowed_moment": "nominal_moment / safety_factor",
        "area_of_i": (
            "2 * flange_width * flange_thickness + web_thickness * (section_depth - 2 * flange_thickness)"
        ),
        "area_of_pipe": "355 * wall * (section_depth - wall) / 113",
        "area_of_tube": (
            "2 * wall * (section_depth + flange_width - 2 * wall) - 2575 * wall * wall / 1000"
        ),
        "backspan_bow": (
            "load * reach * backspan * backspan / (9 * root(3) * elastic_constant * second_moment)"
        ),
        "backspan_to_stack": "inboard - stack_centroid",
        "beam_centroid": "inboard - centroid_from_tail",
        "bearing_pressure": "factor * reaction / plate_area",
        "buckling_moment": (
            "smaller(plastic_moment, moment_shape * 98696 * elastic_constant * elastic_modulus_x * effective_radius * effective_radius * root(1 + 78 * torsion_share * unbraced_length * unbraced_length / (1000 * effective_radius * effective_radius)) / (10000 * unbraced_length * unbraced_length))"
        ),
        "buckling_moment_of_tube": (
            "smaller(plastic_moment, 2 * moment_shape * elastic_constant * root(torsion_constant * area) * radius_y / unbraced_length)"
        ),
        "cord_mass": "cord_linear_mass * cord_length",
        "current_on_cord": "running_hoists * running_current + starting_hoists * starting_current",
        "deck_beyond_line": "(stage_length - stirrup_spacing) / 2",
        "drop_by_least": "supply_voltage - least_voltage",
        "drop_by_share": "most_drop * supply_voltage",
        "drop_single_phase": "2 * cord_length * conductor_resistance * current",
        "drop_three_phase": "root(3) * cord_length * conductor_resistance * current",
        "elastic_length_of_tube": (
            "20 * elastic_constant * radius_y * root(torsion_constant * area) / (7 * yield_strength * elastic_modulus_x)"
        ),
        "elastic_modulus": "2 * second_moment / section_depth",
        "factor_reached": "resisting / tipping",
        "fall_distance": (
            "falls_free + deceleration + grab_slide + harness_shift + line_stretch + line_slack + fall_margin"
        ),
        "flange_moment": (
            "smaller(plastic_moment, plastic_moment - (plastic_moment - 7 * yield_strength * elastic_modulus_x / 10) * (flange_slenderness - compact_flange) / (noncompact_flange - compact_flange))"
        ),
        "flanges_apart": "section_depth - flange_thickness",
        "free_fall": "lanyard_length - above_ring",
        "from_tail_end": "beam_length - reach - tip_beyond_line - rear_stand",
        "from_tip_end": "reach + tip_beyond_line",
        "front_reaction": "load + counterweight + beam_weight - carried_behind",
        "half_dead_full_live": "dead_load / 2 + live_load",
        "half_dead_half_live": "dead_load / 2 + live_load / 2",
        "half_of_dead": "dead_load / 2",
        "half_way": "whole / 2",
        "hardware_strength": "connector_factor * connector_working_load",
        "hogging_moment": "factor * load * reach + own_outboard",
        "hoist_share": "dead_load / 2 + shares",
        "imposed_load": "factor * reaction",
        "inboard_length": "beam_length - tip_beyond_line - reach",
        "inboard_to_outboard": "inboard / reach",
        "inelastic_moment": (
            "smaller(plastic_moment, moment_shape * (plastic_moment - (plastic_moment - 7 * yield_strength * elastic_modulus_x / 10) * (unbraced_length - plastic_length) / (elastic_length - plastic_length)))"
        ),
        "largest_rope_tension": "hoist_pull + rope_weight + bottom_weight",
        "least_clip_spacing": "factor * rope_diameter",
        "length_elastic": (
            "195 * effective_radius * elastic_constant * root(torsion_share + root(torsion_share * torsion_share + 33124 * yield_strength * yield_strength / (10000 * elastic_constant * elastic_constant))) / (70 * yield_strength)"
        ),
        "length_still_plastic": "176 * radius_y * root(elastic_constant / yield_strength) / 100",
        "lifeline_length": "line_run + 2 * wall_height + drop_height",
        "lifeline_stretch": "elongation * lifeline",
        "line_slack": "root(line_aside * line_aside + line_inward * line_inward) - line_inward",
        "load_to_carry": "factor * load",
        "longest_single_phase": "allowed_drop / (2 * conductor_resistance * current)",
        "longest_three_phase": "allowed_drop / (root(3) * conductor_resistance * current)",
        "lowest_in_time": "(distance + elongation * above_level) / (1 + elongation)",
        "metal_area": "metal_share * rope_diameter * rope_diameter",
        "moment_about_tail": "moment_before + counterweight * centroid",
        "moment_at_the_edge": "edge_strength * elastic_modulus_x",
        "moment_of_plastic_section": "yield_strength * plastic_modulus",
        "most_clip_torque": "factor * sheet_torque",
        "opening_needed": "rider_weight * (falls_free + grab_slide) / slows",
        "own_moment_behind": (
            "beam_weight * (inboard - rear_stand) * (inboard - rear_stand) / (2 * beam_length)"
        ),
        "own_moment_between": "beam_weight * rear_stand * rear_stand / (8 * beam_length)",
        "own_moment_outboard": (
            "beam_weight * (reach + tip_beyond_line) * (reach + tip_beyond_line) / (2 * beam_length)"
        ),
        "own_moment_uneven": "own_outboard + beam_weight * (centroid_from_tail - beam_length / 2)",
        "own_weight_outboard": "beam_weight * (reach + tip_beyond_line) / beam_length",
        "pair_tension": (
            "held * other_slope / (own_slope + other_slope) * root(1 + own_slope * own_slope)"
        ),
        "pieces_in_weight": "counterweight / piece_weight",
        "pieces_weight": "pieces * piece_weight",
        "plastic_length_of_tube": (
            "13 * elastic_constant * radius_y * root(torsion_constant * area) / (100 * plastic_moment)"
        ),
        "plastic_modulus_of_i": (
            "flange_width * flange_thickness * (section_depth - flange_thickness) + web_thickness * (section_depth - 2 * flange_thickness) * (section_depth - 2 * flange_thickness) / 4"
        ),
        "plastic_modulus_of_pipe": (
            "(section_depth * section_depth * section_depth - (section_depth - 2 * wall) * (section_depth - 2 * wall) * (section_depth - 2 * wall)) / 6"
        ),
        "plastic_modulus_of_tube": (
            "(flange_width * section_depth * section_depth - (flange_width - 2 * wall) * (section_depth - 2 * wall) * (section_depth - 2 * wall)) / 4 - 34336 * wall * wall * (section_depth / 2 - 4468 * wall / 10000) / 10000 + 8584 * wall * wall * (section_depth / 2 - 12234 * wall / 10000) / 10000"
        ),
        "power_single_phase": "supply_voltage * current",
        "power_three_phase": "root(3) * supply_voltage * current",
        "pressed_area": "pressed_length * pressed_width",
        "pull_aside": "held * own_slope",
        "radius_of_gyration": "root(weak_second_moment / area)",
        "rear_reaction": "(resisting - load * reach) / rear_stand",
        "required_counterweight": "required / backspan",
        "required_counterweight_with_beam": (
            "(required - beam_weight * beam_centroid_inboard) / backspan"
        ),
        "required_moment": "factor * load * reach",
        "resisting_moment": "counterweight * backspan",
        "resisting_moment_with_beam": (
            "counterweight * backspan + beam_weight * beam_centroid_inboard"
        ),
        "room_across": "2 * (to_edge - in_doubt)",
        "rope_stretch": "hung * hanging_length / (metal * rope_modulus)",
        "rope_to_reach": "drop_height + height_above_roof",
        "rows_centroid": "outer_end + stack_length / 2",
        "rows_length": "rows * piece_length",
        "sagging_halfway": "counterweight * rear_stand / 4 + own_idle",
        "sagging_moment": (
            "counterweight * backspan * (rear_stand - backspan) / rear_stand + own_idle"
        ),
        "second_moment_of_i": (
            "(flange_width * section_depth * section_depth * section_depth - (flange_width - web_thickness) * (section_depth - 2 * flange_thickness) * (section_depth - 2 * flange_thickness) * (section_depth - 2 * flange_thickness)) / 12"
        ),
        "second_moment_of_pipe": (
            "355 * (section_depth * section_depth * section_depth * section_depth - (section_depth - 2 * wall) * (section_depth - 2 * wall) * (section_depth - 2 * wall) * (section_depth - 2 * wall)) / 7232"
        ),
        "second_moment_of_tube": (
            "(flange_width * section_depth * section_depth * section_depth - (flange_width - 2 * wall) * (section_depth - 2 * wall) * (section_depth - 2 * wall) * (section_depth - 2 * wall)) / 12 - 34336 * wall * wall * (section_depth / 2 - 4468 * wall / 10000) * (section_depth / 2 - 4468 * wall / 10000) / 10000 + 8584 * wall * wall * (section_depth / 2 - 12234 * wall / 10000) * (section_depth / 2 - 12234 * wall / 10000) / 10000 - 4527 * wall * wall * wall * wall / 10000"
        ),
        "share_lost": "drop / supply_voltage",
        "share_of_load": "placed_load * arm / stirrup_spacing",
        "share_of_torsion": "torsion_constant / (elastic_modulus_x * between_flanges)",
        "share_of_torsion_of_channel": "torsion_constant / (elastic_modulus_x * warping_distance)",
        "shear_inboard": "counterweight + beam_weight",
        "shear_of_pipe": "shear_stress * area / 2",
        "shear_of_tube": "6 * yield_strength * web_height * wall / 5",
        "shear_of_web": "3 * yield_strength * section_depth * web_thickness / 5",
        "shear_outboard": "factor * load + outboard_weight",
        "shear_stress_of_pipe": (
            "smaller(39 * elastic_constant * wall * root(wall / section_depth) / (50 * section_depth), 3 * yield_strength / 5)"
        ),
        "sideways_slenderness": "web_slenderness * flange_width / unbraced_length",
        "slenderness_compact": "38 * root(elastic_constant / yield_strength) / 100",
        "slenderness_noncompact": "root(elastic_constant / yield_strength)",
        "slenderness_noncompact_of_plates": (
            "95 * root(elastic_constant / (2 * yield_strength)) / 100"
        ),
        "slenderness_of_channel_flange": "flange_width / flange_thickness",
        "slenderness_of_flange": "flange_width / (2 * flange_thickness)",
        "slenderness_of_web": "web_height / web_thickness",
        "slenderness_up_to": "slender_limit * root(elastic_constant / yield_strength)",
        "sling_leg": "hung / 2 * root(1 + own_slope * own_slope)",
        "slowing_force": "mean_share * most_force - rider_weight",
        "spread_side": "plate_side + 2 * pad_spread * pad_thickness",
        "stack_centroid": "moment / counterweight",
        "stall_cap": "cap_factor * rated_load",
        "strength_at_end": "efficiency * breaking_force",
        "tail_moment": "counterweight * (backspan - rear_stand) + own_idle",
        "tip_deflection": (
            "load * reach * reach * (reach + backspan) / (3 * elastic_constant * second_moment)"
        ),
        "tipping_moment": "load * reach",
        "torsion_of_channel": (
            "((2 * flange_width - web_thickness) * flange_thickness * flange_thickness * flange_thickness + (section_depth - flange_thickness) * web_thickness * web_thickness * web_thickness) / 3"
        ),
        "torsion_of_i": (
            "(2 * flange_width * flange_thickness * flange_thickness * flange_thickness + (section_depth - flange_thickness) * web_thickness * web_thickness * web_thickness) / 3"
        ),
        "torsion_of_tube": (
            "2 * wall * (section_depth - wall) * (section_depth - wall) * (flange_width - wall) * (flange_width - wall) / (section_depth + flange_width - 2 * wall)"
        ),
        "turnback_for_clips": "sheet_turnback * clip_count / sheet_clip_count",
        "turned_pull": "held * root(1 + own_slope * own_slope)",
        "turning_radius": "root(weak_second_moment * between_flanges / (2 * elastic_modulus_x))",
        "turning_radius_of_channel": (
            "root(weak_second_moment * warping_distance / (2 * elastic_modulus_x))"
        ),
        "uniform_beam_centroid": "beam_length / 2 - tip_beyond_line - reach",
        "utilisation": "demand / capacity",
        "voltage_left": "supply_voltage - drop",
        "warping_distance_of_channel": (
            "between_flanges * root(2 * flange_thickness * (flange_width - web_thickness / 2) * (flange_width - web_thickness / 2) * (flange_width - web_thickness / 2) * (36 - 25 * flange_thickness * (flange_width - web_thickness / 2) / (flange_thickness * (flange_width - web_thickness / 2) + between_flanges * web_thickness / 6)) / (144 * weak_second_moment))"
        ),
        "weak_second_moment_by_radius": "area * radius_y * radius_y",
        "weak_second_moment_of_channel": (
            "(2 * flange_thickness * flange_width * flange_width * flange_width + (section_depth - 2 * flange_thickness) * web_thickness * web_thickness * web_thickness) / 3 - flange_thickness * (flange_width - web_thickness) * (flange_width - web_thickness) * (flange_width + web_thickness) / 6 - (flange_thickness * flange_width * flange_width + (section_depth - 2 * flange_thickness) * web_thickness * web_thickness / 2 - flange_thickness * (flange_width - web_thickness) * (flange_width - web_thickness) / 6) * (flange_thickness * flange_width * flange_width + (section_depth - 2 * flange_thickness) * web_thickness * web_thickness / 2 - flange_thickness * (flange_width - web_thickness) * (flange_width - web_thickness) / 6) / (2 * flange_width * flange_thickness + web_thickness * (section_depth - 2 * flange_thickness))"
        ),
        "weak_second_moment_of_i": (
            "(2 * flange_thickness * flange_width * flange_width * flange_width + (section_depth - 2 * flange_thickness) * web_thickness * web_thickness * web_thickness) / 12"
        ),
        "web_cripples": (
            "4 * web_thickness * web_thickness * (1 + 3 * bearing_length * web_thickness * root(web_thickness / flange_thickness) / (section_depth * flange_thickness)) * root(elastic_constant * yield_strength * flange_thickness / web_thickness) / 5"
        ),
        "web_cripples_at_end": (
            "2 * web_thickness * web_thickness * (1 + 3 * bearing_length * web_thickness * root(web_thickness / flange_thickness) / (section_depth * flange_thickness)) * root(elastic_constant * yield_strength * flange_thickness / web_thickness) / 5"
        ),
        "web_height": "section_depth - 2 * fillet",
        "web_height_of_tube": "section_depth - 3 * wall",
        "web_sideways": (
            "2 * sideways_constant * web_thickness * web_thickness * web_thickness * flange_thickness * sideways_slenderness * sideways_slenderness * sideways_slenderness / (5 * web_height * web_height)"
        ),
        "web_yields": "yield_strength * web_thickness * (5 * fillet + bearing_length)",
        "web_yields_at_end": "yield_strength * web_thickness * (5 * fillet / 2 + bearing_length)",
        "weight": "mass * STANDARD_GRAVITY",
    }
)
