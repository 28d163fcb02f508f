"""Every number of a project that a check may read, each said once.

One row gives the words people read, the symbol formulas print, where the number stands in the
project file, what evidence a check asks of it, what it is called in a question on the roof, the
band the trade expects it in, and how far off it may be where nobody says so. Reads, needs,
plausible-value questions, the nomenclature page and the values of `ask` come from here.
"""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from backspan.core.quantities.beam_section import BEAM_LABEL, BEAM_SECTION
from backspan.core.quantities.beside import BESIDE
from backspan.core.quantities.load_path import LOAD_PATH
from backspan.core.quantities.on_stage import ON_STAGE
from backspan.core.quantities.power import POWER
from backspan.core.quantities.quantity import COUNT, MASSES, Quantity
from backspan.core.quantities.rows import mass, rated, rated_force, taped
from backspan.core.quantities.units import (
    LENGTH,
    LINEAR_MASS,
    MASS,
    PRESSURE,
    RATIO,
)


def _by_name(*quantities: Quantity) -> Mapping[str, Quantity]:
    return MappingProxyType({one.name: one for one in quantities})


#: Every quantity by its name.
QUANTITIES: Mapping[str, Quantity] = _by_name(
    # The beam where it stands
    taped(
        name="reach",
        words="reach, fulcrum to suspension line",
        record="counterweighted_beam",
        field="reach",
        symbol="a",
        asked="reach",
        least="reach",
        most="reach",
    ),
    taped(
        name="backspan",
        words="backspan, fulcrum to centroid of the counterweight",
        record="counterweighted_beam",
        field="backspan",
        symbol="b",
        asked="backspan",
        least="backspan",
        most="backspan",
    ),
    taped(
        name="tip_beyond_line",
        words="suspension line to front end of the beam",
        record="counterweighted_beam",
        field="tip_beyond_line",
        symbol="t",
        asked="tip",
        zero=True,
    ),
    taped(
        name="tail_gap",
        words="tail end to outer end of the stack",
        record="stack",
        field="tail_gap",
        asked="tail-gap",
        zero=True,
    ),
    # Who rides
    Quantity(
        name="riders",
        words="people on the stage at once",
        dimension=None,
        evidence=COUNT,
        record="rig",
        field="riders",
    ),
    taped(
        name="setback",
        words="face of the building to the middle of the fulcrum",
        record="fulcrum",
        field="setback",
        zero=True,
        most="setback",
    ),
    taped(
        name="fulcrum_height",
        words="height of the fulcrum, from what it stands on",
        record="fulcrum",
        field="height",
        zero=True,
        most="fulcrum-height",
    ),
    taped(
        name="parapet_height",
        words="height of the parapet above the roof",
        record="parapet",
        field="height",
        zero=True,
    ),
    taped(
        name="parapet_thickness",
        words="thickness of the parapet",
        record="parapet",
        field="thickness",
        zero=True,
    ),
    # What it stands on
    taped(
        name="rear_stand",
        words="fulcrum to rear stand",
        record="counterweighted_beam",
        field="rear_stand",
        symbol="c_r",
        asked="rear-stand",
        least="backspan",
        most="backspan",
    ),
    taped(
        name="plate_length",
        words="length of the plate under the fulcrum",
        record="fulcrum",
        field="plate_length",
        asked="plate-length",
        most="plate",
    ),
    taped(
        name="plate_width",
        words="width of the plate under the fulcrum",
        record="fulcrum",
        field="plate_width",
        asked="plate-width",
        most="plate",
    ),
    rated(
        name="surface_strength",
        words="pressure that the surface under the fulcrum carries without failure",
        dimension=PRESSURE,
        record="fulcrum",
        field="surface_strength",
        asked="surface",
        most="surface-strength",
    ),
    # The beam itself
    taped(
        name="beam_length",
        words="length of the beam as assembled",
        record="beam",
        field="length",
        symbol="L",
        asked="beam",
    ),
    taped(
        name="centroid_from_tail",
        words="beam's centroid from its tail end",
        record="beam",
        field="centroid_from_tail",
        symbol="c_G",
    ),
    mass(
        name="beam_mass",
        words="mass of the beam",
        record="beam",
        field="mass",
        asked="beam-mass",
        hint="wanted where its own weight counts",
    ),
    rated(
        name="label_pieces",
        words="pieces the label allows",
        dimension=None,
        record="beam_label",
        field="most_pieces",
        most="label-pieces",
    ),
    rated(
        name="label_mass",
        words="counterweight the label allows",
        dimension=MASS,
        record="beam_label",
        field="most_mass",
        most="label-mass",
    ),
    *BEAM_LABEL,
    # Its counterweight
    Quantity(
        name="pieces",
        words="pieces on the beam",
        dimension=None,
        evidence=COUNT,
        record="piece_group",
        field="count",
        symbol="n",
        asked="pieces",
        zero=True,
        most="pieces",
    ),
    mass(
        name="piece_mass",
        words="mass of one piece",
        record="piece",
        field="mass",
        asked="piece",
        hint="from its stamp",
        least="piece-mass",
        most="piece-mass",
    ),
    taped(
        name="piece_length",
        words="length of beam one row of pieces takes",
        record="piece",
        field="length_on_beam",
        symbol="l_p",
        asked="piece-length",
        tolerance="tolerance.piece-length",
    ),
    # What hangs from it
    rated_force(
        name="rated_load",
        words="rated load of the hoist",
        record="hoist",
        field="rated_load",
        symbol="P_r",
        asked="rated",
        hint="from its label",
        least="rated-load",
        most="rated-load",
    ),
    rated_force(
        name="stall_load",
        words="stall load of the hoist",
        record="hoist",
        field="stall_load",
        asked="stall",
        hint="or the load at which its limiter cuts power",
    ),
    rated_force(
        name="limiter_trip",
        words="load at which the hoist's limiter cuts power",
        record="hoist",
        field="limiter_trip",
        asked="limiter",
    ),
    mass(
        name="rope_mass",
        words="mass of the suspension line",
        record="suspension_point",
        field="rope_mass",
        asked="rope",
    ),
    mass(
        name="bottom_weight",
        words="weight hung on the line to steady it",
        record="suspension_point",
        field="bottom_weight",
        asked="bottom",
        zero=True,
    ),
    *ON_STAGE,
    # The beam's section
    *BEAM_SECTION,
    # The hoists' power
    *POWER,
    # What stands in papers and plans, and no sum reads yet
    taped(name="drop_width", words="width of the drop", record="drop", field="width"),
    taped(
        name="drop_height",
        words="height of the drop",
        record="drop",
        field="height",
        symbol="H_d",
        least="drop-height",
    ),
    taped(name="roof_level", words="level of the roof", record="roof", field="level", zero=True),
    taped(
        name="obstacle_height",
        words="height of the obstacle above the roof",
        record="obstacle",
        field="height",
    ),
    rated_force(
        name="anchor_rating", words="rating of the anchor", record="anchor", field="rating"
    ),
    taped(name="stage_width", words="width of the stage", record="stage", field="width"),
    mass(name="hoist_own_mass", words="mass of the hoist", record="hoist", field="mass"),
    rated(
        name="rope_diameter",
        words="diameter of the rope",
        dimension=LENGTH,
        record="rope",
        field="diameter",
        symbol="d_r",
        asked="diameter",
    ),
    rated_force(
        name="breaking_force",
        words="breaking force of the rope",
        record="rope",
        field="breaking_force",
        symbol="F_b",
        asked="breaking",
    ),
    Quantity(
        name="mass_per_length",
        words="mass of the rope for its length",
        dimension=LINEAR_MASS,
        evidence=MASSES,
        record="rope",
        field="mass_per_length",
    ),
    taped(
        name="rope_length",
        words="length of the suspension rope",
        record="suspension_point",
        field="rope_length",
    ),
    rated(
        name="efficiency",
        words="share of the rope's strength that its termination keeps",
        dimension=RATIO,
        record="termination",
        field="efficiency",
        symbol="e_t",
        asked="keeps",
        share=True,
    ),
    Quantity(
        name="lot_count",
        words="pieces in the lot",
        dimension=None,
        evidence=COUNT,
        record="unit",
        field="count",
    ),
    taped(
        name="other_reach",
        words="reach of the other support",
        record="other_support",
        field="reach",
    ),
    # What is only looked at beside another number
    *BESIDE,
    *LOAD_PATH,
)
