"""Another library's unit tables as second opinion on every factor."""

import math

import pint
import pytest

from backspan.core.quantities import (
    ACCELERATION,
    ANGLE,
    APPARENT_POWER,
    AREA,
    CONDUCTOR_AREA,
    CURRENT,
    DIMENSIONS,
    FORCE,
    LENGTH,
    LINEAR_MASS,
    LINEAR_RESISTANCE,
    MASS,
    MOMENT,
    PRESSURE,
    RATIO,
    SECOND_MOMENT,
    SECTION_MODULUS,
    SPEED,
    VOLTAGE,
    Dimension,
    Unit,
)

# Unit text here -> expression there, where "lb" is always a mass and a "g" is a gram.
THEIRS: dict[Dimension, dict[str, str]] = {
    LENGTH: {"in": "inch", "ft": "foot", "m": "meter", "mm": "millimeter", "cm": "centimeter"},
    AREA: {
        "sq ft": "foot**2",
        "sq in": "inch**2",
        "m2": "meter**2",
        "cm2": "centimeter**2",
        "mm2": "millimeter**2",
    },
    FORCE: {
        "lb": "pound_force",
        "kip": "kip",
        "N": "newton",
        "kN": "kilonewton",
        "kg": "kilogram_force",
        "t": "1000 * kilogram_force",
    },
    MASS: {"lb": "pound", "oz": "ounce", "kg": "kilogram", "g": "gram", "t": "metric_ton"},
    MOMENT: {
        "lb ft": "pound_force * foot",
        "lb in": "pound_force * inch",
        "kip ft": "kip * foot",
        "kip in": "kip * inch",
        "N m": "newton * meter",
        "kN m": "kilonewton * meter",
    },
    PRESSURE: {
        "psf": "pound_force / foot**2",
        "psi": "psi",
        "ksf": "kip / foot**2",
        "ksi": "ksi",
        "Pa": "pascal",
        "kPa": "kilopascal",
        "MPa": "megapascal",
    },
    SPEED: {
        "mph": "mile / hour",
        "m/s": "meter / second",
        "km/h": "kilometer / hour",
        "ft/min": "foot / minute",
        "ft/s": "foot / second",
        "in/s": "inch / second",
        "m/min": "meter / minute",
        "kn": "knot",
    },
    ANGLE: {"deg": "degree", "rad": "radian"},
    RATIO: {"": "dimensionless", "%": "percent"},
    LINEAR_MASS: {
        "lb/ft": "pound / foot",
        "lb/100 ft": "pound / (100 * foot)",
        "lb/in": "pound / inch",
        "kg/m": "kilogram / meter",
        "kg/100 m": "kilogram / (100 * meter)",
        "g/m": "gram / meter",
    },
    CONDUCTOR_AREA: {"mm2": "millimeter**2", "kcmil": "1000 * circular_mil"},
    ACCELERATION: {
        "g": "standard_gravity",
        "m/s2": "meter / second**2",
        "ft/s2": "foot / second**2",
    },
    SECTION_MODULUS: {
        "cu in": "inch ** 3",
        "cu ft": "foot ** 3",
        "cm3": "centimeter ** 3",
        "mm3": "millimeter ** 3",
        "m3": "meter ** 3",
    },
    SECOND_MOMENT: {
        "in4": "inch ** 4",
        "ft4": "foot ** 4",
        "cm4": "centimeter ** 4",
        "mm4": "millimeter ** 4",
        "m4": "meter ** 4",
    },
    VOLTAGE: {"V": "volt", "kV": "kilovolt"},
    CURRENT: {"A": "ampere"},
    LINEAR_RESISTANCE: {
        "ohm/kft": "ohm / (1000 * foot)",
        "ohm/ft": "ohm / foot",
        "ohm/in": "ohm / inch",
        "ohm/km": "ohm / kilometer",
        "ohm/m": "ohm / meter",
    },
    APPARENT_POWER: {"kVA": "kilovolt * ampere", "VA": "volt * ampere", "kW": "kilowatt"},
}


SI: dict[Dimension, str] = {
    LENGTH: "meter",
    AREA: "meter**2",
    FORCE: "newton",
    MASS: "kilogram",
    MOMENT: "newton * meter",
    PRESSURE: "pascal",
    SPEED: "meter / second",
    ANGLE: "radian",
    RATIO: "dimensionless",
    LINEAR_MASS: "kilogram / meter",
    CONDUCTOR_AREA: "meter**2",
    ACCELERATION: "meter / second**2",
    SECTION_MODULUS: "meter ** 3",
    SECOND_MOMENT: "meter ** 4",
    VOLTAGE: "volt",
    CURRENT: "ampere",
    LINEAR_RESISTANCE: "ohm / meter",
    APPARENT_POWER: "volt * ampere",
}
UNITS = [(dimension, unit) for dimension in DIMENSIONS for unit in dimension.units]


@pytest.fixture(scope="module")
def registry() -> pint.UnitRegistry[float]:
    return pint.UnitRegistry()


@pytest.mark.parametrize(
    ("dimension", "unit"),
    UNITS,
    ids=[f"{dimension.name} {unit.label}" for dimension, unit in UNITS],
)
def test_factor(dimension: Dimension, unit: Unit, registry: pint.UnitRegistry[float]) -> None:
    theirs: float = registry.Quantity(THEIRS[dimension][unit.label]).to(SI[dimension]).magnitude
    assert math.isclose(float(unit.factor), theirs, rel_tol=1e-12)
