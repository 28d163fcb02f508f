"""The two styles of writing quantities, and the unit each uses for what size."""

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
    POUND_FORCE,
    PRESSURE,
    RATIO,
    SECOND_MOMENT,
    SECTION_MODULUS,
    SPEED,
    VOLTAGE,
)


class Style(StrEnum):
    """Whose units a text is written in."""

    US = "us"
    METRIC = "metric"


# For each dimension: units with the smallest size (SI) each is used for, largest first. Feet with
# inches and wire gages are written by their own rules. Common practice, no source.
USUAL_UNITS: Mapping[Style, Mapping[Dimension, tuple[tuple[str, Fraction], ...]]] = (
    MappingProxyType(
        {
            Style.US: {
                AREA: (("sq ft", FOOT**2), ("sq in", Fraction(0))),
                FORCE: (("lb", Fraction(0)),),
                MASS: (("lb", Fraction(0)),),
                MOMENT: (("lb ft", Fraction(0)),),
                PRESSURE: (("psi", 10 * POUND_FORCE / INCH**2), ("psf", Fraction(0))),
                SPEED: (("mph", Fraction(0)),),
                ANGLE: (("deg", Fraction(0)),),
                RATIO: (("", Fraction(0)),),
                LINEAR_MASS: (("lb/ft", Fraction(0)),),
                CONDUCTOR_AREA: (("mm2", Fraction(0)),),
                ACCELERATION: (("ft/s2", Fraction(0)),),
                SECTION_MODULUS: (("cu in", Fraction(0)),),
                SECOND_MOMENT: (("in4", Fraction(0)),),
                VOLTAGE: (("V", Fraction(0)),),
                CURRENT: (("A", Fraction(0)),),
                LINEAR_RESISTANCE: (("ohm/kft", Fraction(0)),),
                APPARENT_POWER: (("kVA", Fraction(1000)), ("VA", Fraction(0))),
            },
            Style.METRIC: {
                LENGTH: (("m", Fraction(1, 10)), ("mm", Fraction(0))),
                AREA: (("m2", Fraction(1, 100)), ("mm2", Fraction(0))),
                FORCE: (("kN", Fraction(100)), ("N", Fraction(0))),
                MASS: (("kg", Fraction(0)),),
                MOMENT: (("kN m", Fraction(100)), ("N m", Fraction(0))),
                PRESSURE: (("MPa", Fraction(1_000_000)), ("kPa", Fraction(0))),
                SPEED: (("m/s", Fraction(0)),),
                ANGLE: (("deg", Fraction(0)),),
                RATIO: (("", Fraction(0)),),
                LINEAR_MASS: (("kg/m", Fraction(0)),),
                CONDUCTOR_AREA: (("mm2", Fraction(0)),),
                ACCELERATION: (("m/s2", Fraction(0)),),
                SECTION_MODULUS: (("cm3", Fraction(0)),),
                SECOND_MOMENT: (("m4", Fraction(1)), ("cm4", Fraction(0))),
                VOLTAGE: (("V", Fraction(0)),),
                CURRENT: (("A", Fraction(0)),),
                LINEAR_RESISTANCE: (("ohm/km", Fraction(0)),),
                APPARENT_POWER: (("kVA", Fraction(1000)), ("VA", Fraction(0))),
            },
        }
    )
)

# One step beyond, in the unit people use on a roof. Common practice, no source.
ROOF_STEPS: Mapping[Style, Mapping[Dimension, tuple[str, float]]] = MappingProxyType(
    {
        Style.US: {
            LENGTH: ("in", 1 / 16),
            AREA: ("sq ft", 0.1),
            FORCE: ("lb", 1.0),
            MASS: ("lb", 1.0),
            MOMENT: ("lb ft", 1.0),
            PRESSURE: ("psf", 1.0),
            SPEED: ("mph", 1.0),
            ANGLE: ("deg", 0.1),
            RATIO: ("", 0.01),
            LINEAR_MASS: ("lb/ft", 0.01),
            CONDUCTOR_AREA: ("mm2", 0.1),
            ACCELERATION: ("ft/s2", 0.1),
            SECTION_MODULUS: ("cu in", 0.01),
            SECOND_MOMENT: ("in4", 0.1),
            VOLTAGE: ("V", 0.1),
            CURRENT: ("A", 0.1),
            LINEAR_RESISTANCE: ("ohm/kft", 0.01),
            APPARENT_POWER: ("kVA", 0.1),
        },
        Style.METRIC: {
            LENGTH: ("mm", 1.0),
            AREA: ("m2", 0.01),
            FORCE: ("kN", 0.01),
            MASS: ("kg", 1.0),
            MOMENT: ("kN m", 0.01),
            PRESSURE: ("kPa", 0.1),
            SPEED: ("m/s", 0.1),
            ANGLE: ("deg", 0.1),
            RATIO: ("", 0.01),
            LINEAR_MASS: ("kg/m", 0.01),
            CONDUCTOR_AREA: ("mm2", 0.1),
            ACCELERATION: ("m/s2", 0.1),
            SECTION_MODULUS: ("cm3", 0.1),
            SECOND_MOMENT: ("cm4", 1.0),
            VOLTAGE: ("V", 0.1),
            CURRENT: ("A", 0.1),
            LINEAR_RESISTANCE: ("ohm/km", 0.01),
            APPARENT_POWER: ("kVA", 0.1),
        },
    }
)
