"""Every number of a project that a check may read, each said once.

One row gives the words people read, the symbol formulas print, where the number stands in the
project file, what evidence a check asks of it, what it is called in a question on the roof, the
band the trade expects it in, and how far off it may be where nobody says so. Reads, needs,
plausible-value questions, the nomenclature page and the values of `ask` come from here.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import partial
from types import MappingProxyType

from backspan.core.quantities.dimension import Dimension
from backspan.core.quantities.units import FORCE, LENGTH, MASS, PRESSURE, RATIO


@dataclass(frozen=True, slots=True, kw_only=True)
class Quantity:
    """One named number; `dimension` is None for a count.

    `evidence` and `tolerance` are keys of the practice rules, `least` and `most` too, less their
    "plausible.least-" and "plausible.most-". `record` and `field` say where it is stated: of
    derived numbers there is no record. `asked` is its name in a question, `hint` what is told
    beside it where its words do not say enough.
    """

    name: str
    words: str
    dimension: Dimension | None
    evidence: str = ""
    record: str = ""
    field: str = ""
    symbol: str = ""
    asked: str = ""
    hint: str = ""
    zero: bool = False
    """Whether none of it is a value like any other."""
    least: str = ""
    most: str = ""
    tolerance: str = ""


GEOMETRY, RATING, MASSES = "evidence.geometry", "evidence.rating", "evidence.mass"
COUNT, OBSERVATION = "evidence.count", "evidence.observation"


def _by_name(*quantities: Quantity) -> Mapping[str, Quantity]:
    return MappingProxyType({one.name: one for one in quantities})


#: A length that is measured on the roof.
_taped = partial(Quantity, dimension=LENGTH, evidence=GEOMETRY, tolerance="tolerance.taped-length")


#: Every quantity by its name.
QUANTITIES: Mapping[str, Quantity] = _by_name(
    # The beam where it stands
    _taped(
        name="reach",
        words="reach, fulcrum to suspension line",
        record="counterweighted_beam",
        field="reach",
        symbol="a",
        asked="reach",
        least="reach",
        most="reach",
    ),
    _taped(
        name="backspan",
        words="backspan, fulcrum to centroid of the counterweight",
        record="counterweighted_beam",
        field="backspan",
        symbol="b",
        asked="backspan",
        least="backspan",
        most="backspan",
    ),
    _taped(
        name="tip_beyond_line",
        words="suspension line to front end of the beam",
        record="counterweighted_beam",
        field="tip_beyond_line",
        symbol="t",
        asked="tip",
        zero=True,
    ),
    _taped(
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
    _taped(
        name="setback",
        words="face of the building to the middle of the fulcrum",
        record="fulcrum",
        field="setback",
        zero=True,
        most="setback",
    ),
    _taped(
        name="fulcrum_height",
        words="height of the fulcrum, from what it stands on",
        record="fulcrum",
        field="height",
        zero=True,
        most="fulcrum-height",
    ),
    _taped(
        name="parapet_height",
        words="height of the parapet above the roof",
        record="parapet",
        field="height",
        zero=True,
    ),
    _taped(
        name="parapet_thickness",
        words="thickness of the parapet",
        record="parapet",
        field="thickness",
        zero=True,
    ),
    # What it stands on
    _taped(
        name="rear_stand",
        words="fulcrum to rear stand",
        record="counterweighted_beam",
        field="rear_stand",
        symbol="c_r",
        asked="rear-stand",
        least="backspan",
        most="backspan",
    ),
    _taped(
        name="plate_length",
        words="length of the plate under the fulcrum",
        record="fulcrum",
        field="plate_length",
        symbol="l_f",
        asked="plate-length",
        most="plate",
    ),
    _taped(
        name="plate_width",
        words="width of the plate under the fulcrum",
        record="fulcrum",
        field="plate_width",
        symbol="w_f",
        asked="plate-width",
        most="plate",
    ),
    Quantity(
        name="surface_strength",
        words="pressure that the surface under the fulcrum carries without failure",
        dimension=PRESSURE,
        evidence=RATING,
        record="fulcrum",
        field="surface_strength",
        asked="surface",
        most="surface-strength",
    ),
    # The beam itself
    _taped(
        name="beam_length",
        words="length of the beam as assembled",
        record="beam",
        field="length",
        symbol="L",
        asked="beam",
    ),
    _taped(
        name="centroid_from_tail",
        words="beam's centroid from its tail end",
        record="beam",
        field="centroid_from_tail",
        symbol="c_G",
    ),
    Quantity(
        name="beam_mass",
        words="mass of the beam",
        dimension=MASS,
        evidence=MASSES,
        record="beam",
        field="mass",
        asked="beam-mass",
        hint="wanted where its own weight counts",
    ),
    Quantity(
        name="label_pieces",
        words="pieces the label allows",
        dimension=None,
        evidence=RATING,
        record="label",
        field="most_pieces",
    ),
    Quantity(
        name="label_mass",
        words="counterweight the label allows",
        dimension=MASS,
        evidence=RATING,
        record="label",
        field="most_mass",
    ),
    # Its counterweight
    Quantity(
        name="pieces",
        words="pieces on the beam",
        dimension=None,
        evidence=COUNT,
        record="group",
        field="count",
        symbol="n",
        asked="pieces",
        zero=True,
        most="pieces",
    ),
    Quantity(
        name="piece_mass",
        words="mass of one piece",
        dimension=MASS,
        evidence=MASSES,
        record="piece",
        field="mass",
        asked="piece",
        hint="from its stamp",
        least="piece-mass",
        most="piece-mass",
    ),
    _taped(
        name="piece_length",
        words="length of beam one row of pieces takes",
        record="piece",
        field="length_on_beam",
        symbol="l_p",
        asked="piece-length",
        tolerance="tolerance.piece-length",
    ),
    # What hangs from it
    Quantity(
        name="rated_load",
        words="rated load of the hoist",
        dimension=FORCE,
        evidence=RATING,
        record="hoist",
        field="rated_load",
        symbol="P_r",
        asked="rated",
        hint="from its label",
        least="rated-load",
        most="rated-load",
    ),
    Quantity(
        name="stall_load",
        words="stall load of the hoist",
        dimension=FORCE,
        evidence=RATING,
        record="hoist",
        field="stall_load",
        asked="stall",
        hint="or the load at which its limiter cuts power",
    ),
    Quantity(
        name="limiter_trip",
        words="load at which the hoist's limiter cuts power",
        dimension=FORCE,
        evidence=RATING,
        record="hoist",
        field="limiter_trip",
        asked="limiter",
    ),
    Quantity(
        name="rope_mass",
        words="mass of the suspension line",
        dimension=MASS,
        evidence=MASSES,
        record="suspension_point",
        field="rope_mass",
        asked="rope",
    ),
    Quantity(
        name="bottom_weight",
        words="weight hung on the line to steady it",
        dimension=MASS,
        evidence=MASSES,
        record="suspension_point",
        field="bottom_weight",
        asked="bottom",
        zero=True,
    ),
    Quantity(
        name="dead_mass",
        words="mass of all that hangs, without people and material",
        dimension=MASS,
        evidence=MASSES,
        record="stage",
        field="dead_mass",
        asked="dead",
    ),
    Quantity(
        name="intended_load",
        words="people, tools and material intended",
        dimension=MASS,
        evidence=MASSES,
        record="stage",
        field="intended_load",
        asked="live",
        zero=True,
        least="intended-load",
    ),
    _taped(
        name="stage_length",
        words="length of the stage",
        record="stage",
        field="length",
        most="stage-length",
    ),
    Quantity(
        name="stirrup_spacing",
        words="middle of one stirrup to that of the other",
        dimension=LENGTH,
        evidence=GEOMETRY,
        record="stage",
        field="stirrup_spacing",
        tolerance="tolerance.taped-length",
    ),
    # What is only looked at beside another number
    Quantity(
        name="backspan_apart",
        words="difference between the taped backspan and the stack's own centroid",
        dimension=LENGTH,
        most="backspan-against-stack",
    ),
    Quantity(
        name="stall_load_to_rated",
        words="stall load over rated load",
        dimension=RATIO,
        least="pull-to-rated-load",
    ),
    Quantity(
        name="limiter_trip_to_stall",
        words="load at which the limiter cuts power, over stall load",
        dimension=RATIO,
        most="trip-to-stall-load",
    ),
    Quantity(
        name="limiter_trip_to_rated",
        words="load at which the limiter cuts power, over rated load",
        dimension=RATIO,
        least="pull-to-rated-load",
    ),
    Quantity(
        name="hoist_mass",
        words="hoist's own weight over its rated load",
        dimension=RATIO,
        most="hoist-mass-to-rated-load",
    ),
)
