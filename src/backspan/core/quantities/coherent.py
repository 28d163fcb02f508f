"""Unit sets in which a worked line needs no conversion factor between its terms."""

from collections.abc import Mapping
from enum import StrEnum
from fractions import Fraction
from types import MappingProxyType

from backspan.core.quantities.dimension import Dimension
from backspan.core.quantities.units import (
    ACCELERATION,
    ANGLE,
    APPARENT_POWER,
    AREA,
    CONDUCTOR_AREA,
    CURRENT,
    FOOT,
    FORCE,
    INCH,
    LENGTH,
    LINEAR_MASS,
    LINEAR_RESISTANCE,
    MASS,
    MOMENT,
    POUND,
    POUND_FORCE,
    PRESSURE,
    RATIO,
    SECOND_MOMENT,
    SECTION_MODULUS,
    SPEED,
    STANDARD_GRAVITY,
    VOLTAGE,
)


class CoherentSet(StrEnum):
    """The unit sets a worked line may be printed in.

    In the two pound sets accelerations are counted in standard gravities, so that a mass in lb
    times an acceleration is a force in lb. Only there: speed squared over length is not in g.
    """

    FEET_POUNDS = "feet-pounds"
    INCHES_POUNDS = "inches-pounds"
    METRES_NEWTONS = "metres-newtons"


_Units = Mapping[Dimension, tuple[str, Fraction]]
_ONE = Fraction(1)


def coherent_unit(dimension: Dimension, system: CoherentSet) -> tuple[str, Fraction]:
    """The unit of `dimension` in `system`: its text and its exact factor to SI."""
    return _SETS[system][dimension]


def _pounds_with(length: str, metres: Fraction, *, pressure: str) -> _Units:
    area = (f"sq {length}", metres**2)
    return {
        LENGTH: (length, metres),
        AREA: area,
        CONDUCTOR_AREA: area,
        FORCE: ("lb", POUND_FORCE),
        MASS: ("lb", POUND),
        MOMENT: (f"lb {length}", POUND_FORCE * metres),
        PRESSURE: (pressure, POUND_FORCE / metres**2),
        SPEED: (f"{length}/s", metres),
        ANGLE: ("rad", _ONE),
        RATIO: ("", _ONE),
        LINEAR_MASS: (f"lb/{length}", POUND / metres),
        ACCELERATION: ("g", STANDARD_GRAVITY),
        SECTION_MODULUS: (f"cu {length}", metres**3),
        SECOND_MOMENT: (f"{length}4", metres**4),
        VOLTAGE: ("V", _ONE),
        CURRENT: ("A", _ONE),
        LINEAR_RESISTANCE: (f"ohm/{length}", 1 / metres),
        APPARENT_POWER: ("VA", _ONE),
    }


_METRES_NEWTONS: _Units = {
    LENGTH: ("m", _ONE),
    AREA: ("m2", _ONE),
    CONDUCTOR_AREA: ("m2", _ONE),
    FORCE: ("N", _ONE),
    MASS: ("kg", _ONE),
    MOMENT: ("N m", _ONE),
    PRESSURE: ("Pa", _ONE),
    SPEED: ("m/s", _ONE),
    ANGLE: ("rad", _ONE),
    RATIO: ("", _ONE),
    LINEAR_MASS: ("kg/m", _ONE),
    ACCELERATION: ("m/s2", _ONE),
    SECTION_MODULUS: ("m3", _ONE),
    SECOND_MOMENT: ("m4", _ONE),
    VOLTAGE: ("V", _ONE),
    CURRENT: ("A", _ONE),
    LINEAR_RESISTANCE: ("ohm/m", _ONE),
    APPARENT_POWER: ("VA", _ONE),
}
_SETS: Mapping[CoherentSet, _Units] = MappingProxyType(
    {
        CoherentSet.FEET_POUNDS: _pounds_with("ft", FOOT, pressure="psf"),
        CoherentSet.INCHES_POUNDS: _pounds_with("in", INCH, pressure="psi"),
        CoherentSet.METRES_NEWTONS: _METRES_NEWTONS,
    }
)
