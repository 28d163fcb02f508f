"""What people read: the trade's way of writing, and nothing hidden by rounding."""

import math
from fractions import Fraction
from typing import Literal

import pytest

from backspan.core.quantities import (
    ACCELERATION,
    ANGLE,
    APPARENT_POWER,
    AREA,
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
    Amount,
    Dimension,
    QuantityError,
    Style,
    display,
    display_round,
    parse,
)


@pytest.mark.parametrize(
    ("text", "us", "metric"),
    [
        ("5'-6 1/2\"", "5'-6 1/2\"", "1.6891 m"),
        ("72 in", "6'-0\"", "1.8288 m"),
        ("6.5 in", '6 1/2"', "0.1651 m"),
        ("12 in", "1'-0\"", "0.3048 m"),
        ("12 1/2 in", "1'-0 1/2\"", "0.3175 m"),
        ("11 15/16 in", '11 15/16"', "0.3032 m"),
        ("1/2 in", '1/2"', "12.7 mm"),
        ("1/16 in", '1/16"', "1.5875 mm"),
        ("1/32 in", "0.03125 in", "0.79375 mm"),
        ("5'-6 1/32\"", "66.0313 in", "1.6772 m"),
        ("0 in", '0"', "0 mm"),
        ("-1'-2\"", "-1'-2\"", "-0.3556 m"),
        ("-1/2 in", '-1/2"', "-12.7 mm"),
        ("1,200 ft", "1,200'-0\"", "365.76 m"),
        ("1.69 m", "66.5354 in", "1.69 m"),
        ("1690 mm", "66.5354 in", "1.69 m"),
        ("500 mm", "19.685 in", "0.5 m"),
        ("12.3456 m", "486.047 in", "12.3456 m"),
        ("2000 m", "78,740.157 in", "2,000 m"),
    ],
)
def test_length(text: str, us: str, metric: str) -> None:
    value = parse(text, LENGTH)
    assert display(value, LENGTH, Style.US) == us
    assert display(value, LENGTH, Style.METRIC) == metric


@pytest.mark.parametrize(
    ("dimension", "text", "us", "metric"),
    [
        (FORCE, "1391 lb", "1,391 lb", "6.1875 kN"),
        (FORCE, "1391.304 lb", "1,391.3 lb", "6.1888 kN"),
        (FORCE, "123,456.7 lb", "123,457 lb", "549.16 kN"),
        (FORCE, "6.188 kN", "1,391.1 lb", "6.188 kN"),
        (FORCE, "50 N", "11.24 lb", "50 N"),
        (FORCE, "0 N", "0 lb", "0 N"),
        (FORCE, "-1391 lb", "-1,391 lb", "-6.1875 kN"),
        (MASS, "25 kg", "55.116 lb", "25 kg"),
        (MASS, "55 lb", "55 lb", "24.948 kg"),
        (MOMENT, "16,000 lb ft", "16,000 lb ft", "21.693 kN m"),
        (MOMENT, "60 in-lb", "5 lb ft", "6.7791 N m"),
        (PRESSURE, "60 psf", "60 psf", "2.8728 kPa"),
        (PRESSURE, "9 psi", "1,296 psf", "62.053 kPa"),
        (PRESSURE, "750 psi", "750 psi", "5.1711 MPa"),
        (SPEED, "25 mph", "25 mph", "11.176 m/s"),
        (ANGLE, "30 deg", "30 deg", "30 deg"),
        (RATIO, "4:1", "4", "4"),
        (RATIO, "80 %", "0.8", "0.8"),
        (AREA, "12 sq ft", "12 sq ft", "1.1148 m2"),
        (AREA, "40 sq in", "40 sq in", "0.025806 m2"),
        (AREA, "250 mm2", "0.3875 sq in", "250 mm2"),
        (LINEAR_MASS, "0.31 kg/m", "0.20831 lb/ft", "0.31 kg/m"),
        (SECTION_MODULUS, "7.31 in3", "7.31 cu in", "119.79 cm3"),
        (SECOND_MOMENT, "22.1 in4", "22.1 in4", "919.87 cm4"),
        (VOLTAGE, "230 volts", "230 V", "230 V"),
        (CURRENT, "8.5 amps", "8.5 A", "8.5 A"),
        (LINEAR_RESISTANCE, "1.24 ohm/kft", "1.24 ohm/kft", "4.0682 ohm/km"),
        (APPARENT_POWER, "6,500 VA", "6.5 kVA", "6.5 kVA"),
        (APPARENT_POWER, "5 kW", "5 kVA", "5 kVA"),
        (ACCELERATION, "1 g", "32.174 ft/s2", "9.8066 m/s2"),
    ],
)
def test_other_dimensions(dimension: Dimension, text: str, us: str, metric: str) -> None:
    value = parse(text, dimension)
    assert display(value, dimension, Style.US) == us
    assert display(value, dimension, Style.METRIC) == metric


@pytest.mark.parametrize(
    ("digits", "shown"), [(7, "1,391.304 lb"), (6, "1,391.3 lb"), (4, "1,391 lb"), (1, "1,391 lb")]
)
def test_digits_are_significant_but_whole_units_are_kept(digits: int, shown: str) -> None:
    assert display(parse("1391.304 lb", FORCE), FORCE, Style.US, digits=digits) == shown


def test_digits_of_lengths() -> None:
    value = parse("1.234567 m", LENGTH)
    assert display(value, LENGTH, Style.METRIC, digits=3) == "1.23 m"
    assert display(value, LENGTH, Style.US, digits=4) == "48.6 in"
    assert display(parse("66.5 in", LENGTH), LENGTH, Style.US, digits=1) == "5'-6 1/2\""


@pytest.mark.parametrize(
    ("dimension", "text", "unit", "shown"),
    [
        (LENGTH, "5'-6 1/2\"", "in", "66.5 in"),
        (LENGTH, "5'-6 1/2\"", "ft", "5.5417 ft"),
        (LENGTH, "5'-6 1/2\"", "mm", "1,689.1 mm"),
        (FORCE, "16,000 lb", "kip", "16 kip"),
        (FORCE, "500 kg", "kg", "500 kg"),
        (RATIO, "0.8", "%", "80 %"),
        (MOMENT, "16,000 lb ft", "ft-lb", "16,000 lb ft"),
    ],
)
def test_a_unit_may_be_asked_for(dimension: Dimension, text: str, unit: str, shown: str) -> None:
    assert display(parse(text, dimension), dimension, Style.US, unit=unit) == shown


def test_refuses_a_unit_of_another_dimension() -> None:
    with pytest.raises(QuantityError, match=r"found 'kN': not a unit of length; .* in, ft, m, mm"):
        display(1.0, LENGTH, Style.US, unit="kN")


@pytest.mark.parametrize("value", [math.nan, math.inf, -math.inf])
def test_refuses_what_is_not_finite(value: float) -> None:
    with pytest.raises(QuantityError, match="a length is a finite number"):
        display(value, LENGTH, Style.US)


@pytest.mark.parametrize("dimension", DIMENSIONS, ids=lambda dimension: dimension.name)
@pytest.mark.parametrize("style", Style)
def test_noise_is_shown_as_zero_without_a_sign(dimension: Dimension, style: Style) -> None:
    noise = display(-1e-30, dimension, style)
    assert noise == display(0.0, dimension, style)
    assert noise.startswith("0")


@pytest.mark.parametrize("text", ["66.501 in", "66.500003 in", "100,039.5001 in", "0.062502 in"])
def test_what_is_no_sixteenth_is_not_shown_as_one(text: str) -> None:
    assert display(parse(text, LENGTH), LENGTH, Style.US) == text


def test_places_of_inches_end_where_reading_ends() -> None:
    just_beyond = (Fraction(1, 2) + Fraction(1, 1_000_000) + Fraction(1, 10**17)) * Fraction(
        "0.0254"
    )
    shown = display(float(just_beyond), LENGTH, Style.US)
    assert parse(shown, LENGTH) == pytest.approx(float(just_beyond), rel=1e-14)


def test_float_noise_does_not_spoil_a_sixteenth() -> None:
    assert display(0.1 * 3 * 0.0254 * 10, LENGTH, Style.US) == '3"'


@pytest.mark.parametrize(
    ("number", "digits", "shown"),
    [
        (9.99999, 3, "10"),
        (0.0999999, 3, "0.1"),
        (0.1, 1, "0.1"),
        (0.01, 1, "0.01"),
        (0.5, 1, "0.5"),
        (0.012345, 3, "0.0123"),
        (999.9996, 6, "1,000"),
        (-0.00049, 1, "-0.0005"),
        (2.5, 1, "2"),
        (1234567.5, 9, "1,234,567.5"),
        (0.00000123456789123456, 15, "0.000001234567891"),
        (0.1, 40, "0.1"),
    ],
)
def test_decimals(number: float, digits: int, shown: str) -> None:
    assert display(number, RATIO, Style.US, digits=digits) == shown


@pytest.mark.parametrize(
    ("dimension", "text", "style", "direction", "shown"),
    [
        (LENGTH, "1.53 in", Style.US, "down", '1 1/2"'),
        (LENGTH, "1.53 in", Style.US, "up", '1 9/16"'),
        (LENGTH, "1.5 in", Style.US, "up", '1 1/2"'),
        (LENGTH, "66.53 in", Style.US, "down", "5'-6 1/2\""),
        (LENGTH, "1690.4 mm", Style.METRIC, "down", "1,690 mm"),
        (LENGTH, "1690.4 mm", Style.METRIC, "up", "1,691 mm"),
        (LENGTH, "-0.03 in", Style.US, "down", '-1/16"'),
        (LENGTH, "-0.03 in", Style.US, "up", '0"'),
        (FORCE, "1391.3 lb", Style.US, "down", "1,391 lb"),
        (FORCE, "1391.3 lb", Style.US, "up", "1,392 lb"),
        (FORCE, "6.188 kN", Style.METRIC, "down", "6.18 kN"),
        (FORCE, "6.188 kN", Style.METRIC, "up", "6.19 kN"),
        (MASS, "54.2 lb", Style.US, "down", "54 lb"),
        (MASS, "24.6 kg", Style.METRIC, "up", "25 kg"),
        (SPEED, "24.6 mph", Style.US, "down", "24 mph"),
        (RATIO, "1.239", Style.US, "down", "1.23"),
    ],
)
def test_display_round(
    dimension: Dimension,
    text: str,
    style: Style,
    direction: Literal["up", "down"],
    shown: str,
) -> None:
    amount = Amount(value=parse(text, dimension), dimension=dimension)
    assert display_round(amount, style, direction=direction) == shown


@pytest.mark.parametrize("dimension", DIMENSIONS, ids=lambda dimension: dimension.name)
@pytest.mark.parametrize("style", Style)
def test_display_round_knows_every_dimension(dimension: Dimension, style: Style) -> None:
    amount = Amount(value=parse(dimension.forms[0], dimension), dimension=dimension)
    down = parse(display_round(amount, style, direction="down"), dimension)
    up = parse(display_round(amount, style, direction="up"), dimension)
    assert down <= amount.value * (1 + 1e-9)
    assert up >= amount.value * (1 - 1e-9)
