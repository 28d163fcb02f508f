"""Numbers of a beam's label, of its section and its steel. Rows of the table in named.py."""

from __future__ import annotations

from functools import partial

from backspan.core.quantities.quantity import SIZE, Quantity
from backspan.core.quantities.rows import rated, rated_force, taped
from backspan.core.quantities.units import LENGTH, PRESSURE

_size = partial(Quantity, dimension=LENGTH, evidence=SIZE, record="beam_section")

BEAM_SECTION: tuple[Quantity, ...] = (
    _size(
        name="section_depth",
        field="section_depth",
        words="depth of the beam's section",
        symbol="d",
        asked="depth",
    ),
    _size(
        name="flange_width",
        field="flange_width",
        words="width of its flanges or of a tube",
        symbol="b_f",
        asked="width",
    ),
    _size(
        name="web_thickness",
        field="web_thickness",
        words="thickness of its web",
        symbol="t_w",
        asked="web",
    ),
    _size(
        name="flange_thickness",
        field="flange_thickness",
        words="thickness of its flanges",
        symbol="t_f",
        asked="flange",
    ),
    _size(
        name="wall",
        field="wall",
        words="wall of a tube or pipe, as it is designed",
        symbol="t_s",
        asked="wall",
    ),
    Quantity(
        name="yield_strength",
        words="yield strength of the beam's steel",
        dimension=PRESSURE,
        evidence="evidence.rating",
        record="beam_section",
        field="yield_strength",
        symbol="F_y",
        asked="yield",
        most="yield-strength",
    ),
    taped(
        name="unbraced_length",
        words="longest length of the beam between places that hold it sideways and upright",
        record="counterweighted_beam",
        field="unbraced_length",
        symbol="L_b",
        asked="unbraced",
    ),
    taped(
        name="bearing_length",
        words="length of the beam that lies on its fulcrum",
        record="fulcrum",
        field="bearing_length",
        symbol="l_b",
        most="bearing-length",
    ),
)

BEAM_LABEL: tuple[Quantity, ...] = (
    rated_force(
        name="label_load",
        words="largest rated load of a hoist that the label allows",
        record="beam_label",
        field="most_load",
        most="rated-load",
    ),
    rated(
        name="label_reach",
        words="longest reach that the label allows with that load",
        dimension=LENGTH,
        record="beam_label",
        field="most_reach",
        most="reach",
    ),
    rated(
        name="label_backspan",
        words="shortest backspan that the label allows with that load, 0 if it names none",
        dimension=LENGTH,
        record="beam_label",
        field="least_backspan",
        zero=True,
    ),
)
