"""The dimensions of the program and the units each is read and shown in.

Exact definitions: the international yard and pound agreement of 1959 (1 yd = 0.9144 m,
1 lb = 0.453 592 37 kg) and NIST Special Publication 811 (2008), Appendix B: standard gravity
9.806 65 m/s2, pound-force and kilogram-force as those masses at standard gravity, nautical mile
1852 m, avoirdupois ounce 1/16 lb. Values typed from memory, checked in the tests against another
library's tables.
"""

from fractions import Fraction
from itertools import product
from typing import Annotated, TypeAlias

from backspan.core.quantities.dimension import Dimension, Unit, unit_key

FOOT = Fraction(3048, 10_000)
INCH = FOOT / 12
POUND = Fraction(45_359_237, 100_000_000)
STANDARD_GRAVITY = Fraction(980_665, 100_000)
POUND_FORCE = POUND * STANDARD_GRAVITY
MILE = 5280 * FOOT
NAUTICAL_MILE = Fraction(1852)
MINUTE = Fraction(60)
HOUR = Fraction(3600)
# The first 40 digits of pi, as any published table gives them.
PI = Fraction("3.141592653589793238462643383279502884197")
# Area of a circle of one mil (0.001 in) diameter.
CIRCULAR_MIL = PI / 4 * (INCH / 1000) ** 2

_POUNDS = ("lb", "lbs", "lbf", "pound", "pounds", "pound-force", "pounds-force")
_KIPS = ("kip", "kips")
_FEET = ("ft", "foot", "feet")
_INCHES = ("in", "inch", "inches")


def _unit(
    label: str,
    factor: Fraction | int,
    *,
    symbols: tuple[str, ...] = (),
    words: tuple[str, ...] = (),
) -> Unit:
    return Unit(
        label=label,
        factor=Fraction(factor),
        symbols=frozenset(map(unit_key, symbols)),
        words=frozenset(unit_key(word).casefold() for word in words),
    )


def _products(forces: tuple[str, ...], arms: tuple[str, ...]) -> tuple[str, ...]:
    either = [*product(forces, arms), *product(arms, forces)]
    return tuple(f"{first} {second}" for first, second in either)


def _quotients(tops: tuple[str, ...], *bottoms: str) -> tuple[str, ...]:
    return tuple(f"{top}/{bottom}" for top, bottom in product(tops, bottoms))


LENGTH = Dimension(
    name="length",
    si="m",
    units=(
        _unit("in", INCH, symbols=('"',), words=_INCHES),
        _unit("ft", FOOT, symbols=("'",), words=_FEET),
        _unit("m", 1, symbols=("m",), words=("metre", "metres", "meter", "meters")),
        _unit(
            "mm",
            Fraction(1, 1000),
            symbols=("mm", "MM"),
            words=("millimetre", "millimetres", "millimeter", "millimeters"),
        ),
        _unit(
            "cm",
            Fraction(1, 100),
            words=("cm", "centimetre", "centimetres", "centimeter", "centimeters"),
        ),
    ),
    forms=("5'-6 1/2\"", "66.5 in", "1.69 m", "1690 mm"),
)
AREA = Dimension(
    name="area",
    si="m2",
    units=(
        _unit("sq ft", FOOT**2, words=("sq ft", "ft2", "sf", "square feet", "square foot")),
        _unit("sq in", INCH**2, words=("sq in", "in2", "square inches", "square inch")),
        _unit("m2", 1, symbols=("m2",), words=("sq m", "square metres", "square meters")),
        _unit("cm2", Fraction(1, 10_000), words=("cm2", "sq cm")),
        _unit("mm2", Fraction(1, 1_000_000), symbols=("mm2", "MM2", "sq mm")),
    ),
    forms=("12 sq ft", "40 sq in", "1.2 m2", "250 mm2"),
)
FORCE = Dimension(
    name="force",
    si="N",
    units=(
        _unit("lb", POUND_FORCE, symbols=("#",), words=_POUNDS),
        _unit("kip", 1000 * POUND_FORCE, words=_KIPS),
        _unit("N", 1, symbols=("N",), words=("newton", "newtons")),
        _unit("kN", 1000, symbols=("kN", "KN"), words=("kilonewton", "kilonewtons")),
        # The weight of that mass at standard gravity: metric hoists are stamped in kg.
        _unit("kg", STANDARD_GRAVITY, words=("kg", "kgs", "kgf", "kilogram", "kilograms")),
        _unit("t", 1000 * STANDARD_GRAVITY, symbols=("t",), words=("tonne", "tonnes")),
    ),
    forms=("1,000 lb", "1.5 kip", "6.2 kN", "500 kg"),
)
MASS = Dimension(
    name="mass",
    si="kg",
    units=(
        _unit("lb", POUND, symbols=("#",), words=("lb", "lbs", "lbm", "pound", "pounds")),
        _unit("oz", POUND / 16, words=("oz", "ounce", "ounces")),
        _unit("kg", 1, words=("kg", "kgs", "kilogram", "kilograms")),
        _unit("g", Fraction(1, 1000), symbols=("g",), words=("gram", "grams")),
        _unit("t", 1000, symbols=("t",), words=("tonne", "tonnes")),
    ),
    forms=("50 lb", "25 kg", "1.2 t", "8 oz"),
)
MOMENT = Dimension(
    name="moment",
    si="N m",
    units=(
        _unit("lb ft", POUND_FORCE * FOOT, words=_products(_POUNDS, _FEET)),
        _unit("lb in", POUND_FORCE * INCH, words=_products(_POUNDS, _INCHES)),
        _unit("kip ft", 1000 * POUND_FORCE * FOOT, words=_products(_KIPS, _FEET)),
        _unit("kip in", 1000 * POUND_FORCE * INCH, words=_products(_KIPS, _INCHES)),
        _unit("N m", 1, symbols=("N m", "Nm"), words=("newton metres", "newton meters")),
        _unit("kN m", 1000, symbols=("kN m", "kNm", "KN m", "KNm")),
    ),
    forms=("16,000 lb ft", "190 in-lb", "16 kip-ft", "21.7 kN m"),
)
PRESSURE = Dimension(
    name="pressure",
    si="Pa",
    units=(
        _unit("psf", POUND_FORCE / FOOT**2, words=("psf", *_quotients(_POUNDS, "ft2", "sq ft"))),
        _unit("psi", POUND_FORCE / INCH**2, words=("psi", *_quotients(_POUNDS, "in2", "sq in"))),
        _unit("ksf", 1000 * POUND_FORCE / FOOT**2, words=("ksf",)),
        _unit("ksi", 1000 * POUND_FORCE / INCH**2, words=("ksi",)),
        _unit("Pa", 1, symbols=("Pa", "N/m2"), words=("pascal", "pascals")),
        _unit("kPa", 1000, symbols=("kN/m2", "KN/m2"), words=("kpa",)),
        # "mPa" is a thousandth of a pascal, so the case must be right.
        _unit("MPa", 1_000_000, symbols=("MPa", "MPA", "N/mm2")),
    ),
    forms=("60 psf", "750 psi", "3 kPa", "5 MPa"),
)
SPEED = Dimension(
    name="speed",
    si="m/s",
    units=(
        _unit("mph", MILE / HOUR, words=("mph", "mi/h", "miles per hour")),
        _unit("m/s", 1, words=("m/s",)),
        _unit("km/h", Fraction(1000) / HOUR, words=("km/h", "kph", "kmh")),
        _unit("ft/min", FOOT / MINUTE, words=("fpm", *_quotients(_FEET, "min", "minute"))),
        _unit("ft/s", FOOT, words=("fps", *_quotients(_FEET, "s", "sec", "second"))),
        _unit("in/s", INCH, words=_quotients(_INCHES, "s", "sec", "second")),
        _unit("m/min", 1 / MINUTE, words=("m/min",)),
        _unit("kn", NAUTICAL_MILE / HOUR, symbols=("kn", "kt"), words=("knot", "knots")),
    ),
    forms=("25 mph", "11 m/s", "40 km/h", "35 ft/min"),
)
ANGLE = Dimension(
    name="angle",
    si="rad",
    units=(
        _unit("deg", PI / 180, symbols=("°",), words=("deg", "degs", "degree", "degrees")),
        _unit("rad", 1, words=("rad", "rads", "radian", "radians")),
    ),
    forms=("30 deg", "30°", "0.52 rad"),
)
RATIO = Dimension(
    name="ratio",
    si="",
    units=(
        _unit("", 1, words=("",)),
        _unit("%", Fraction(1, 100), symbols=("%",), words=("percent",)),
    ),
    forms=("4", "4:1", "0.8", "80 %"),
)
LINEAR_MASS = Dimension(
    name="linear mass",
    si="kg/m",
    units=(
        _unit("lb/ft", POUND / FOOT, words=_quotients(("lb", "lbs", "lbm"), *_FEET)),
        _unit("lb/100 ft", POUND / (100 * FOOT), words=_quotients(("lb", "lbs", "lbm"), "100 ft")),
        _unit("lb/in", POUND / INCH, words=_quotients(("lb", "lbs", "lbm"), "in", "inch")),
        _unit("kg/m", 1, words=("kg/m",)),
        _unit("kg/100 m", Fraction(1, 100), words=("kg/100 m",)),
        _unit("g/m", Fraction(1, 1000), symbols=("g/m",)),
    ),
    forms=("0.21 lb/ft", "21 lb/100 ft", "0.31 kg/m", "310 g/m"),
)
CONDUCTOR_AREA = Dimension(
    name="conductor area",
    si="m2",
    units=(
        _unit("mm2", Fraction(1, 1_000_000), symbols=("mm2", "MM2", "sq mm")),
        _unit("kcmil", 1000 * CIRCULAR_MIL, words=("kcmil", "mcm")),
    ),
    forms=("10 AWG", "1/0 AWG", "250 kcmil", "4 mm2"),
)
ACCELERATION = Dimension(
    name="acceleration",
    si="m/s2",
    units=(
        _unit("g", STANDARD_GRAVITY, symbols=("g",), words=("standard gravity",)),
        _unit("m/s2", 1, words=("m/s2", "m/s/s")),
        _unit("ft/s2", FOOT, words=("ft/s2", "ft/s/s")),
    ),
    forms=("1 g", "9.81 m/s2", "32.2 ft/s2"),
)
SECTION_MODULUS = Dimension(
    name="section modulus",
    si="m3",
    units=(
        _unit("cu in", INCH**3, words=("cu in", "in3", "cubic inch", "cubic inches")),
        _unit("cu ft", FOOT**3, words=("cu ft", "ft3")),
        _unit("cm3", Fraction(1, 10**6), words=("cm3", "cu cm")),
        _unit("mm3", Fraction(1, 10**9), words=("mm3", "cu mm")),
        _unit("m3", 1, symbols=("m3",), words=("cu m",)),
    ),
    forms=("7.31 in3", "120 cm3", "120,000 mm3"),
)
SECOND_MOMENT = Dimension(
    name="second moment of area",
    si="m4",
    units=(
        _unit("in4", INCH**4, words=("in4",)),
        _unit("ft4", FOOT**4, words=("ft4",)),
        _unit("cm4", Fraction(1, 10**8), words=("cm4",)),
        _unit("mm4", Fraction(1, 10**12), words=("mm4",)),
        _unit("m4", 1, symbols=("m4",)),
    ),
    forms=("22.1 in4", "920 cm4", "9,200,000 mm4"),
)
VOLTAGE = Dimension(
    name="voltage",
    si="V",
    units=(
        _unit("V", 1, symbols=("V",), words=("volt", "volts", "vac")),
        _unit("kV", 1000, symbols=("kV", "KV"), words=("kilovolt", "kilovolts")),
    ),
    forms=("208 V", "230 volts", "0.4 kV"),
)
CURRENT = Dimension(
    name="current",
    si="A",
    units=(_unit("A", 1, symbols=("A",), words=("amp", "amps", "ampere", "amperes")),),
    forms=("10 A", "8.5 amps", "17 amperes"),
)
LINEAR_RESISTANCE = Dimension(
    name="linear resistance",
    si="ohm/m",
    units=(
        _unit(
            "ohm/kft",
            1 / (1000 * FOOT),
            words=_quotients(("ohm", "ohms"), "kft", "1000 ft", "1,000 ft"),
        ),
        _unit("ohm/ft", 1 / FOOT, words=_quotients(("ohm", "ohms"), *_FEET)),
        _unit("ohm/in", 1 / INCH, words=_quotients(("ohm", "ohms"), *_INCHES)),
        _unit("ohm/km", Fraction(1, 1000), words=_quotients(("ohm", "ohms"), "km")),
        _unit("ohm/m", 1, symbols=("ohm/m", "ohms/m")),
    ),
    forms=("1.24 ohm/kft", "0.00124 ohm/ft", "4.07 ohm/km"),
)
APPARENT_POWER = Dimension(
    name="apparent power",
    si="VA",
    units=(
        _unit("kVA", 1000, words=("kva", "kilovolt-ampere", "kilovolt-amperes")),
        _unit("VA", 1, words=("va", "volt-ampere", "volt-amperes")),
        # What a generator of so many kW gives at least: as many kVA, at power factor 1.
        _unit("kW", 1000, words=("kw", "kilowatt", "kilowatts")),
    ),
    forms=("5 kVA", "6,500 VA", "5 kW"),
)
DIMENSIONS = (
    LENGTH,
    AREA,
    FORCE,
    MASS,
    MOMENT,
    PRESSURE,
    SPEED,
    ANGLE,
    RATIO,
    LINEAR_MASS,
    CONDUCTOR_AREA,
    ACCELERATION,
    SECTION_MODULUS,
    SECOND_MOMENT,
    VOLTAGE,
    CURRENT,
    LINEAR_RESISTANCE,
    APPARENT_POWER,
)

#: Of a formula that holds for any kind of quantity: its arguments share one, which the step names.
SAME = Dimension(name="one kind of quantity", si="", units=(), forms=())

# To the type checker each is a plain float, in the SI unit of its dimension.
Length: TypeAlias = Annotated[float, LENGTH]
Area: TypeAlias = Annotated[float, AREA]
Force: TypeAlias = Annotated[float, FORCE]
Mass: TypeAlias = Annotated[float, MASS]
Moment: TypeAlias = Annotated[float, MOMENT]
Pressure: TypeAlias = Annotated[float, PRESSURE]
Speed: TypeAlias = Annotated[float, SPEED]
Angle: TypeAlias = Annotated[float, ANGLE]
Ratio: TypeAlias = Annotated[float, RATIO]
LinearMass: TypeAlias = Annotated[float, LINEAR_MASS]
ConductorArea: TypeAlias = Annotated[float, CONDUCTOR_AREA]
Acceleration: TypeAlias = Annotated[float, ACCELERATION]
SectionModulus: TypeAlias = Annotated[float, SECTION_MODULUS]
SecondMoment: TypeAlias = Annotated[float, SECOND_MOMENT]
Voltage: TypeAlias = Annotated[float, VOLTAGE]
Current: TypeAlias = Annotated[float, CURRENT]
LinearResistance: TypeAlias = Annotated[float, LINEAR_RESISTANCE]
ApparentPower: TypeAlias = Annotated[float, APPARENT_POWER]
Same: TypeAlias = Annotated[float, SAME]
