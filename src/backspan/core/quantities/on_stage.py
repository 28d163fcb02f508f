"""Numbers of a stage and of what is on it. Rows of the table in named.py."""

from __future__ import annotations

from backspan.core.quantities.quantity import GEOMETRY, SIZE, Quantity
from backspan.core.quantities.rows import mass
from backspan.core.quantities.units import LENGTH

ON_STAGE: tuple[Quantity, ...] = (
    mass(
        name="dead_mass",
        words="mass of all that hangs, without people and material",
        record="stage",
        field="dead_mass",
        asked="dead",
    ),
    mass(
        name="intended_load",
        words="people, tools and material intended",
        record="stage",
        field="intended_load",
        asked="live",
        zero=True,
        least="intended-load",
    ),
    Quantity(
        name="stage_length",
        words="length of the stage",
        dimension=LENGTH,
        evidence=SIZE,
        record="stage",
        field="length",
        symbol="l_d",
        asked="stage",
        most="stage-length",
        tolerance="tolerance.taped-length",
    ),
    mass(
        name="load_mass",
        words="mass of what is placed on the stage",
        record="placed_load",
        field="mass",
    ),
    Quantity(
        name="stirrup_spacing",
        words="middle of one stirrup to that of the other",
        dimension=LENGTH,
        evidence=GEOMETRY,
        record="stage",
        field="stirrup_spacing",
        symbol="L_s",
        asked="apart",
        tolerance="tolerance.taped-length",
    ),
)
