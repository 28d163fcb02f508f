"""The units of a drawing: what its header says, what the caller says, and whether it can be so."""

from __future__ import annotations

import re
from collections.abc import Iterator
from enum import StrEnum
from fractions import Fraction

from backspan.core.quantities import Length, Style
from backspan.core.quantities.units import FOOT, INCH

#: The overall size of a drawing of a roof: from a shed's to that of the longest buildings.
SMALLEST: Length = 2.0
LARGEST: Length = 2_000.0


class DrawingUnit(StrEnum):
    """A unit in which a roof is drawn."""

    INCHES = "in"
    FEET = "ft"
    SURVEY_FEET = "survey ft"
    MILLIMETRES = "mm"
    CENTIMETRES = "cm"
    METRES = "m"

    @property
    def factor(self) -> Fraction:
        """Metres in one of it, exactly."""
        return _FACTORS[self]

    @property
    def style(self) -> Style:
        """The way of writing quantities that it belongs to."""
        metric = {DrawingUnit.MILLIMETRES, DrawingUnit.CENTIMETRES, DrawingUnit.METRES}
        return Style.METRIC if self in metric else Style.US


_FACTORS = {
    DrawingUnit.INCHES: INCH,
    DrawingUnit.FEET: FOOT,
    DrawingUnit.SURVEY_FEET: Fraction(1200, 3937),
    DrawingUnit.MILLIMETRES: Fraction(1, 1000),
    DrawingUnit.CENTIMETRES: Fraction(1, 100),
    DrawingUnit.METRES: Fraction(1),
}
#: What the open format calls its units in a file's header.
_CODES = {
    1: DrawingUnit.INCHES,
    2: DrawingUnit.FEET,
    4: DrawingUnit.MILLIMETRES,
    5: DrawingUnit.CENTIMETRES,
    6: DrawingUnit.METRES,
    21: DrawingUnit.SURVEY_FEET,
}
_OTHERS = {
    3: "miles",
    7: "kilometres",
    8: "microinches",
    9: "mils",
    10: "yards",
    11: "angstroms",
    12: "nanometres",
    13: "micrometres",
    14: "decimetres",
    15: "decametres",
    16: "hectometres",
    17: "gigametres",
    18: "astronomical units",
    19: "light years",
    20: "parsecs",
    22: "US survey inches",
    23: "US survey yards",
    24: "US survey miles",
}
_METRIC = 1


def header_number(content: bytes, name: str) -> int | None:
    """The whole number of a variable in a file's header; None where it has none."""
    pattern = rb"^[ \t]*9[ \t]*\r?\n[ \t]*\$" + name.encode("ascii")
    value = rb"[ \t]*\r?\n[ \t]*70[ \t]*\r?\n[ \t]*(-?\d+)"
    header, _, _ = content.partition(b"ENDSEC")
    found = re.search(pattern + value, header, re.MULTILINE)
    return None if found is None else int(found[1])


def unit_of(code: int | None) -> DrawingUnit | None:
    """The unit that a header's number stands for; None where it is none that a roof is drawn in."""
    return None if code is None else _CODES.get(code)


def said_of(code: int | None) -> str:
    """What a header says of its units, in words."""
    if code is None:
        return "no units ($INSUNITS is not in its header)"
    if code == 0:
        return "no units ($INSUNITS is 0)"
    if code in _CODES:
        return f"{_CODES[code]} ($INSUNITS is {code})"
    return f"{_OTHERS.get(code, 'a unit that is not known')} ($INSUNITS is {code})"


def disagreement(unit: DrawingUnit, measurement: int | None) -> str | None:
    """What is told where a header's kind of measurement is not that of its units."""
    if measurement is None or (measurement == _METRIC) == (unit.style is Style.METRIC):
        return None
    kind = "metric" if measurement == _METRIC else "feet and inches"
    return f"$MEASUREMENT is {measurement} ({kind}), which is not what {unit} is"


def is_plausible(overall: Length) -> bool:
    """Whether a drawing of a roof may be of this overall size."""
    return SMALLEST <= overall <= LARGEST


def plausible_units(overall: Length, unit: DrawingUnit) -> Iterator[DrawingUnit]:
    """The units in which a drawing that is this large in `unit` would be of a roof's size."""
    for other in DrawingUnit:
        if other is not unit and is_plausible(overall / float(unit.factor) * float(other.factor)):
            yield other
