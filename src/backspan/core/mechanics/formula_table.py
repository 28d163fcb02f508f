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
        "backspan_to_stack": "inboard - stack_centroid",
        "beam_centroid": "inboard - centroid_from_tail",
        "bearing_pressure": "factor * reaction / plate_area",
        "cord_mass": "cord_linear_mass * cord_length",
        "current_on_cord": "running_hoists * running_current + starting_hoists * starting_current",
        "deck_beyond_line": "(stage_length - stirrup_spacing) / 2",
        "drop_by_least": "supply_voltage - least_voltage",
        "drop_by_share": "most_drop * supply_voltage",
        "drop_single_phase": "2 * cord_length * conductor_resistance * current",
        "drop_three_phase": "root(3) * cord_length * conductor_resistance * current",
        "factor_reached": "resisting / tipping",
        "fall_distance": (
            "falls_free + deceleration + grab_slide + harness_shift + line_stretch + fall_margin"
        ),
        "free_fall": "lanyard_length - above_ring",
        "front_reaction": "load + counterweight + beam_weight - carried_behind",
        "half_dead_full_live": "dead_load / 2 + live_load",
        "half_dead_half_live": "dead_load / 2 + live_load / 2",
        "half_of_dead": "dead_load / 2",
        "half_way": "whole / 2",
        "hardware_strength": "connector_factor * connector_working_load",
        "hoist_share": "dead_load / 2 + shares",
        "imposed_load": "factor * reaction",
        "inboard_length": "beam_length - tip_beyond_line - reach",
        "inboard_to_outboard": "inboard / reach",
        "largest_rope_tension": "hoist_pull + rope_weight + bottom_weight",
        "least_clip_spacing": "factor * rope_diameter",
        "lifeline_length": "line_run + 2 * wall_height + drop_height",
        "lifeline_stretch": "elongation * lifeline",
        "load_to_carry": "factor * load",
        "longest_single_phase": "allowed_drop / (2 * conductor_resistance * current)",
        "longest_three_phase": "allowed_drop / (root(3) * conductor_resistance * current)",
        "lowest_in_time": "(distance + elongation * above_level) / (1 + elongation)",
        "metal_area": "metal_share * rope_diameter * rope_diameter",
        "moment_about_tail": "moment_before + counterweight * centroid",
        "most_clip_torque": "factor * sheet_torque",
        "pair_tension": (
            "held * other_slope / (own_slope + other_slope) * root(1 + own_slope * own_slope)"
        ),
        "pieces_in_weight": "counterweight / piece_weight",
        "pieces_weight": "pieces * piece_weight",
        "plate_area": "plate_length * plate_width",
        "power_single_phase": "supply_voltage * current",
        "power_three_phase": "root(3) * supply_voltage * current",
        "pressed_area": "pressed_length * pressed_width",
        "pull_aside": "held * own_slope",
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
        "rope_stretch": "hung * hanging_length / (metal * rope_modulus)",
        "rope_to_reach": "drop_height + height_above_roof",
        "rows_centroid": "outer_end + stack_length / 2",
        "rows_length": "rows * piece_length",
        "share_lost": "drop / supply_voltage",
        "share_of_load": "placed_load * arm / stirrup_spacing",
        "sling_leg": "hung / 2 * root(1 + own_slope * own_slope)",
        "spread_side": "plate_side + 2 * pad_spread * pad_thickness",
        "stack_centroid": "moment / counterweight",
        "stall_cap": "cap_factor * rated_load",
        "strength_at_end": "efficiency * breaking_force",
        "tipping_moment": "load * reach",
        "turnback_for_clips": "sheet_turnback * clip_count / sheet_clip_count",
        "turned_pull": "held * root(1 + own_slope * own_slope)",
        "uniform_beam_centroid": "beam_length / 2 - tip_beyond_line - reach",
        "utilisation": "demand / capacity",
        "voltage_left": "supply_voltage - drop",
        "weight": "mass * STANDARD_GRAVITY",
    }
)
