"""Every dimension but length: its units, and what is refused.

Expected factors are written out from the definitions: the international yard and pound agreement
of 1959 and NIST Special Publication 811 (2008), Appendix B (from memory).
"""

from fractions import Fraction

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
    QuantityError,
    parse,
    parse_exact,
)

IN = Fraction("0.0254")
FT = Fraction("0.3048")
LB = Fraction("0.45359237")
G = Fraction("9.80665")
LBF = Fraction("4.4482216152605")
# Enough digits that the error is far below a float's own.
PI = Fraction("3.14159265358979323846264338327950288")

ACCEPTED = [
    (FORCE, "1391 lb", 1391 * LBF),
    (FORCE, "1,391 lb", 1391 * LBF),
    (FORCE, "1,391.5 lbs", Fraction("1391.5") * LBF),
    (FORCE, "1 lbf", LBF),
    (FORCE, "1 LB", LBF),
    (FORCE, "1 lb.", LBF),
    (FORCE, "1 pound", LBF),
    (FORCE, "2 pounds", 2 * LBF),
    (FORCE, "1000#", 1000 * LBF),
    (FORCE, "1,000 #", 1000 * LBF),
    (FORCE, "1.5 kip", 1500 * LBF),
    (FORCE, "2 1/2 kips", 2500 * LBF),
    (FORCE, "5000 N", Fraction(5000)),
    (FORCE, "6.2 kN", Fraction(6200)),
    (FORCE, "6.2kN", Fraction(6200)),
    (FORCE, "6.2 KN", Fraction(6200)),
    (FORCE, "500 kg", 500 * G),
    (FORCE, "500 KG", 500 * G),
    (FORCE, "1.2 t", 1200 * G),
    (FORCE, "1 tonne", 1000 * G),
    (FORCE, "-50 lb", -50 * LBF),
    (MASS, "50 lb", 50 * LB),
    (MASS, "50 lbs", 50 * LB),
    (MASS, "50#", 50 * LB),
    (MASS, "25 kg", Fraction(25)),
    (MASS, "500 g", Fraction("0.5")),
    (MASS, "1.2 t", Fraction(1200)),
    (MASS, "1.2 tonnes", Fraction(1200)),
    (MASS, "8 oz", LB / 2),
    (MOMENT, "16,000 lb ft", 16_000 * LBF * FT),
    (MOMENT, "1 ft lb", LBF * FT),
    (MOMENT, "1 ft-lb", LBF * FT),
    (MOMENT, "1 lb-ft", LBF * FT),
    (MOMENT, "1 lbf·ft", LBF * FT),
    (MOMENT, "1 ft-lbs", LBF * FT),
    (MOMENT, "1 ft. lb.", LBF * FT),
    (MOMENT, "1 foot-pound", LBF * FT),
    (MOMENT, "1 in-lb", LBF * IN),
    (MOMENT, "1 lb in", LBF * IN),
    (MOMENT, "1 lb-in", LBF * IN),
    (MOMENT, "1 in.-lb", LBF * IN),
    (MOMENT, "1 kip ft", 1000 * LBF * FT),
    (MOMENT, "1 kip-ft", 1000 * LBF * FT),
    (MOMENT, "1 ft-kip", 1000 * LBF * FT),
    (MOMENT, "1 kip-in", 1000 * LBF * IN),
    (MOMENT, "1 N m", Fraction(1)),
    (MOMENT, "1 Nm", Fraction(1)),
    (MOMENT, "1 N·m", Fraction(1)),
    (MOMENT, "1 N⋅m", Fraction(1)),
    (MOMENT, "1 kN m", Fraction(1000)),
    (MOMENT, "1 kNm", Fraction(1000)),
    (MOMENT, "1 kN-m", Fraction(1000)),
    (PRESSURE, "60 psf", 60 * LBF / FT**2),
    (PRESSURE, "60 lb/ft2", 60 * LBF / FT**2),
    (PRESSURE, "60 lb / sq ft", 60 * LBF / FT**2),
    (PRESSURE, "60 lb/ft²", 60 * LBF / FT**2),
    (PRESSURE, "60 lb per sq ft", 60 * LBF / FT**2),
    (PRESSURE, "750 psi", 750 * LBF / IN**2),
    (PRESSURE, "750 PSI", 750 * LBF / IN**2),
    (PRESSURE, "3 ksi", 3000 * LBF / IN**2),
    (PRESSURE, "3 ksf", 3000 * LBF / FT**2),
    (PRESSURE, "3 Pa", Fraction(3)),
    (PRESSURE, "3 kPa", Fraction(3000)),
    (PRESSURE, "3 kN/m2", Fraction(3000)),
    (PRESSURE, "3 MPa", Fraction(3_000_000)),
    (PRESSURE, "3 N/mm2", Fraction(3_000_000)),
    (PRESSURE, "3 N/mm²", Fraction(3_000_000)),
    (SPEED, "25 mph", 25 * Fraction("0.44704")),
    (SPEED, "11 m/s", Fraction(11)),
    (SPEED, "36 km/h", Fraction(10)),
    (SPEED, "60 ft/min", FT),
    (SPEED, "60 fpm", FT),
    (SPEED, "1 ft/s", FT),
    (SPEED, "9 m/min", Fraction("0.15")),
    (SPEED, "36 knots", Fraction(1852, 100)),
    (SPEED, "36 kn", Fraction(1852, 100)),
    (SPEED, "1 knot", Fraction(1852, 3600)),
    (AREA, "2 sq ft", 2 * FT**2),
    (AREA, "2 sq. ft.", 2 * FT**2),
    (AREA, "2 ft2", 2 * FT**2),
    (AREA, "2 ft²", 2 * FT**2),
    (AREA, "2 ft^2", 2 * FT**2),
    (AREA, "2 SQ FT", 2 * FT**2),
    (AREA, "2 sq in", 2 * IN**2),
    (AREA, "2 in2", 2 * IN**2),
    (AREA, "2 in²", 2 * IN**2),
    (AREA, "2 m2", Fraction(2)),
    (AREA, "2 m²", Fraction(2)),
    (AREA, "200 mm2", Fraction(2, 10_000)),
    (AREA, "2 cm2", Fraction(2, 10_000)),
    (LINEAR_MASS, "1 lb/ft", LB / FT),
    (LINEAR_MASS, "1 lbs/ft", LB / FT),
    (LINEAR_MASS, "1 lb per foot", LB / FT),
    (LINEAR_MASS, "21 lb/100 ft", Fraction(21, 100) * LB / FT),
    (LINEAR_MASS, "21 lb / 100 ft", Fraction(21, 100) * LB / FT),
    (LINEAR_MASS, "21 lb per 100 ft", Fraction(21, 100) * LB / FT),
    (LINEAR_MASS, "0.31 kg/m", Fraction("0.31")),
    (LINEAR_MASS, "31 kg/100 m", Fraction("0.31")),
    (LINEAR_MASS, "310 g/m", Fraction("0.31")),
    (RATIO, "4", Fraction(4)),
    (RATIO, "0.8", Fraction("0.8")),
    (RATIO, "3.5", Fraction("3.5")),
    (RATIO, "80 %", Fraction("0.8")),
    (RATIO, "80%", Fraction("0.8")),
    (RATIO, "4:1", Fraction(4)),
    (RATIO, "4 : 1", Fraction(4)),
    (RATIO, "3:2", Fraction("1.5")),
    (RATIO, "1/2", Fraction("0.5")),
    (RATIO, "1 1/2", Fraction("1.5")),
    (RATIO, "½", Fraction("0.5")),
    (RATIO, "-0.5", Fraction("-0.5")),
    (ACCELERATION, "1 g", G),
    (SECTION_MODULUS, "2 cu. in", 2 * (FT / 12) ** 3),
    (SECOND_MOMENT, "12 in^4", 12 * (FT / 12) ** 4),
    (SECOND_MOMENT, "920 cm4", Fraction(920, 10**8)),
    (VOLTAGE, "208 V", Fraction(208)),
    (CURRENT, "10 amps", Fraction(10)),
    (LINEAR_RESISTANCE, "1.24 ohms/1000 ft", Fraction("1.24") / (1000 * FT)),
    (APPARENT_POWER, "5 KVA", Fraction(5000)),
    (ACCELERATION, "9.81 m/s2", Fraction("9.81")),
    (ACCELERATION, "9.81 m/s²", Fraction("9.81")),
    (ACCELERATION, "32 ft/s2", 32 * FT),
    (ANGLE, "0.5 rad", Fraction("0.5")),
]
REFUSED = [
    (MASS, "1 kN", '"kN" is a unit of force; a mass is wanted'),
    (MASS, "50 kip", '"kip" is a unit of force; a mass is wanted'),
    (MASS, "50 lbf", '"lbf" is a unit of force; a mass is wanted'),
    (MASS, "50", "bare number"),
    (MASS, "1 ton", "ambiguous ton"),
    (MASS, "1 T", "ambiguous ton"),
    (MASS, "10 lb 5 oz", "mixed units"),
    (MASS, "1 G", '"g" is: letter case'),
    (FORCE, "1000", "bare number"),
    (FORCE, "1 tons", "ambiguous ton"),
    (FORCE, "10 kn", '"kN" is: letter case'),
    (FORCE, "10 n", '"N" is: letter case'),
    (FORCE, "10 kN 5 N", "mixed units"),
    (FORCE, "10 psf", '"psf" is a unit of pressure; a force is wanted'),
    (FORCE, "#10", "no number"),
    (FORCE, "1e3 lb", "powers of ten"),
    (FORCE, "1,5 kN", "ambiguous comma"),
    (MOMENT, "100 lb", '"lb" is a unit of force or mass; a moment is wanted'),
    (MOMENT, "100 nm", '"N m" is: letter case'),
    (MOMENT, "100 lb/ft", '"lb/ft" is a unit of linear mass; a moment is wanted'),
    (PRESSURE, "5 mPa", '"MPa" is: letter case'),
    (PRESSURE, "5 mpa", '"MPa" is: letter case'),
    (PRESSURE, "5 pa", '"Pa" is: letter case'),
    (PRESSURE, "5 lb", '"lb" is a unit of force or mass; a pressure is wanted'),
    (SPEED, "20 kN", '"kn" is: letter case'),
    (SPEED, "20 KN", '"kn" is: letter case'),
    (SPEED, "25", "bare number"),
    (SPEED, "9.81 m/s2", '"m/s2" is a unit of acceleration; a speed is wanted'),
    (ANGLE, "30", "bare number"),
    (ANGLE, "3:12", "slope is not read"),
    (ANGLE, "3 in 12", "slope is not read"),
    (ANGLE, "3 in / ft", "slope is not read"),
    (ANGLE, "10 %", "slope is not read"),
    (ANGLE, "30 deg 15", "mixed units"),
    (AREA, "5 ft", '"ft" is a unit of length; an area is wanted'),
    (AREA, "2 Mm2", '"mm2" is: letter case'),
    (LINEAR_MASS, "5 lb", '"lb" is a unit of force or mass; a linear mass is wanted'),
    (LINEAR_MASS, "5 plf", "not a known unit"),
    (RATIO, "4:0", "proportion to zero"),
    (RATIO, "4:1:1", "not a known unit"),
    (RATIO, "4 lb:1 lb", "beside the two numbers"),
    (RATIO, "4:-1", "no number"),
    (RATIO, ":1", "no number"),
    (RATIO, "1,5", "ambiguous comma"),
    (RATIO, "4 lb", '"lb" is a unit of force or mass; a ratio is wanted'),
    (RATIO, "NaN", "no number"),
    (RATIO, "1e3", "powers of ten"),
    (VOLTAGE, "208", "bare number"),
    (CURRENT, "10 V", "a unit of voltage"),
    (APPARENT_POWER, "5 hp", "not a known unit"),
    (ACCELERATION, "9.81", "bare number"),
    (ACCELERATION, "1 G", '"g" is: letter case'),
]


@pytest.mark.parametrize(("dimension", "text", "value"), ACCEPTED)
def test_reads(dimension: Dimension, text: str, value: Fraction) -> None:
    assert parse_exact(text, dimension) == value
    assert parse(text, dimension) == float(value)


@pytest.mark.parametrize(("dimension", "text", "telling"), REFUSED)
def test_refuses(dimension: Dimension, text: str, telling: str) -> None:
    with pytest.raises(QuantityError, match=telling):
        parse(text, dimension)


@pytest.mark.parametrize("text", ["45 deg", "45°", "45 degrees", "45º", "45 DEG"])
def test_reads_degrees(text: str) -> None:
    assert parse(text, ANGLE) == float(PI / 4)


def test_pi_is_good_far_beyond_a_float() -> None:
    assert abs(parse_exact("180 deg", ANGLE) - PI) < Fraction(1, 10**33)


@pytest.mark.parametrize("dimension", DIMENSIONS, ids=lambda dimension: dimension.name)
def test_every_form_shown_to_a_person_is_accepted(dimension: Dimension) -> None:
    assert 3 <= len(dimension.forms) <= 4
    assert all(parse(form, dimension) > 0 for form in dimension.forms)


@pytest.mark.parametrize("dimension", DIMENSIONS, ids=lambda dimension: dimension.name)
def test_every_label_is_a_spelling_of_its_own_unit(dimension: Dimension) -> None:
    assert [dimension.unit(unit.label) for unit in dimension.units] == list(dimension.units)


@pytest.mark.parametrize("dimension", DIMENSIONS, ids=lambda dimension: dimension.name)
def test_no_spelling_has_two_meanings_in_one_dimension(dimension: Dimension) -> None:
    spellings = [word for unit in dimension.units for word in {*unit.symbols, *unit.words}]
    assert all(sum(unit.is_written(text) for unit in dimension.units) == 1 for text in spellings)


@pytest.mark.parametrize("dimension", DIMENSIONS, ids=lambda dimension: dimension.name)
def test_the_si_unit_has_factor_one(dimension: Dimension) -> None:
    unit = dimension.unit(dimension.si)
    if dimension == CONDUCTOR_AREA:
        assert unit is None  # no cable is sold by the square metre
    else:
        assert unit is not None
        assert unit.factor == 1


def test_only_a_ratio_may_be_a_bare_number() -> None:
    for dimension in DIMENSIONS:
        if dimension != RATIO:
            with pytest.raises(QuantityError, match="bare number, without its unit"):
                parse("4", dimension)


def test_the_error_says_what_was_found_wanted_and_would_do() -> None:
    with pytest.raises(QuantityError, match="found '66'") as caught:
        parse("66", LENGTH)
    assert caught.value.found == "66"
    assert caught.value.expected == ("5'-6 1/2\"", "66.5 in", "1.69 m", "1690 mm")
    assert str(caught.value) == (
        "found '66': a bare number, without its unit; a length is wanted; "
        "write for example 5'-6 1/2\", 66.5 in, 1.69 m, 1690 mm"
    )


def test_a_very_long_text_is_cut_in_the_error() -> None:
    with pytest.raises(QuantityError, match="longer than 64 characters") as caught:
        parse("9" * 1_000_000, LENGTH)
    assert caught.value.found == "9" * 64 + "..."
