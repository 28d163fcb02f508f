"""Numbers of the load path from the hoist's rope to the roof: rope end, hardware, tieback, anchor.

Rows of the table in named.py.
"""

from __future__ import annotations

from backspan.core.quantities.quantity import GEOMETRY, Quantity
from backspan.core.quantities.rows import counted, rated, rated_force, seen, taped
from backspan.core.quantities.units import ANGLE, LENGTH, MASS, MOMENT, PRESSURE, RATIO

LOAD_PATH: tuple[Quantity, ...] = (
    # What it stands on behind
    taped(
        name="rear_plate_length",
        words="length of the plate under the rear stand",
        record="rear_bearing",
        field="plate_length",
        asked="rear-plate-length",
        most="plate",
    ),
    taped(
        name="rear_plate_width",
        words="width of the plate under the rear stand",
        record="rear_bearing",
        field="plate_width",
        asked="rear-plate-width",
        most="plate",
    ),
    rated(
        name="rear_surface_strength",
        words="strength of the surface under the rear stand",
        dimension=PRESSURE,
        record="rear_bearing",
        field="surface_strength",
        asked="rear-surface-strength",
        most="surface-strength",
    ),
    # A pad under either stand
    taped(
        name="pad_length",
        words="length of the pad under the plate",
        record="pad",
        field="length",
        asked="pad-length",
    ),
    taped(
        name="pad_width",
        words="width of the pad under the plate",
        record="pad",
        field="width",
        asked="pad-width",
    ),
    taped(
        name="pad_thickness",
        words="thickness of the pad under the plate",
        record="pad",
        field="thickness",
        symbol="t_p",
        asked="pad-thickness",
        tolerance="tolerance.piece-length",
    ),
    # The rope's end and what joins it
    rated(
        name="termination_diameter",
        words="rope diameter that the termination is made for",
        dimension=LENGTH,
        record="termination",
        field="rope_diameter",
    ),
    rated(
        name="sheet_clip_count",
        words="clips that their maker asks for",
        dimension=None,
        record="clip_sheet",
        field="count",
        symbol="n_m",
        asked="maker-clips",
    ),
    rated(
        name="sheet_turnback",
        words="turnback that the maker of the clips asks for",
        dimension=LENGTH,
        record="clip_sheet",
        field="turnback",
        asked="maker-turnback",
        symbol="t_m",
    ),
    rated(
        name="sheet_torque",
        words="torque that the maker of the clips asks for",
        dimension=MOMENT,
        record="clip_sheet",
        field="torque",
        asked="maker-torque",
        symbol="T_m",
    ),
    counted(
        name="clip_count",
        words="clips at the rope's end",
        record="clips",
        field="count",
        symbol="n_c",
        asked="clips",
        zero=True,
    ),
    taped(
        name="clip_spacing",
        words="spacing of the clips",
        record="clips",
        field="spacing",
        asked="spacing",
        tolerance="",
    ),
    taped(
        name="clip_turnback",
        words="rope turned back at the clips",
        record="clips",
        field="turnback",
        asked="turnback",
        tolerance="",
    ),
    seen(
        name="clip_torque",
        words="torque of the clips",
        dimension=MOMENT,
        record="clips",
        field="torque",
        asked="torque",
    ),
    rated_force(
        name="connector_breaking_force",
        words="breaking force of the connecting hardware",
        record="connector",
        field="breaking_force",
    ),
    rated_force(
        name="connector_working_load",
        words="working load limit of the connecting hardware",
        record="connector",
        field="working_load",
        symbol="F_w",
    ),
    rated(
        name="connector_factor",
        words="factor of the working load limit to the breaking force",
        dimension=RATIO,
        record="connector",
        field="working_load_factor",
        symbol="k_w",
    ),
    rated(
        name="connector_size",
        words="size of the connecting hardware",
        dimension=LENGTH,
        record="connector",
        field="size",
    ),
    # The state of a rope
    counted(
        name="drum_turns",
        words="turns of rope left on the drum with the stage at its lowest point",
        record="suspension_point",
        field="drum_turns",
        zero=True,
    ),
    counted(
        name="broken_in_lay",
        words="broken wires in one lay",
        record="rope_wear",
        field="broken_in_lay",
        zero=True,
    ),
    counted(
        name="broken_in_strand",
        words="broken wires in one strand of one lay",
        record="rope_wear",
        field="broken_in_strand",
        zero=True,
    ),
    seen(
        name="wire_worn",
        words="share of an outside wire's diameter that is gone",
        dimension=RATIO,
        record="rope_wear",
        field="wire_worn",
        zero=True,
    ),
    # The stage: what its plate says, what was found of it
    rated(
        name="most_load",
        words="most people and material by the stage's plate",
        dimension=MASS,
        record="stage",
        field="most_load",
    ),
    taped(
        name="rail_height",
        words="height of the top rail above the deck",
        record="stage_found",
        field="rail_height",
    ),
    taped(
        name="to_face",
        words="inner edge of the stage to the face",
        record="stage_found",
        field="to_face",
        zero=True,
    ),
    # Tieback and anchor
    Quantity(
        name="tieback_angle",
        words="angle of the tieback off the perpendicular to the face",
        dimension=ANGLE,
        evidence=GEOMETRY,
        record="tieback",
        field="angle",
        asked="angle",
        zero=True,
        tolerance="tolerance.tieback-angle",
    ),
    rated_force(
        name="anchor_load",
        words="load that the anchor is rated for in this use",
        record="anchor_rating",
        field="load",
    ),
    rated(
        name="anchor_toward",
        words="direction of pull that the anchor is rated for",
        dimension=ANGLE,
        record="anchor_rating",
        field="toward",
        zero=True,
    ),
    rated(
        name="anchor_within",
        words="how far the pull may turn off the direction the anchor is rated for",
        dimension=ANGLE,
        record="anchor_rating",
        field="within",
        zero=True,
    ),
)
