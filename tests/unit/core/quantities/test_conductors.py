"""Wire gages."""

from decimal import Context, Decimal
from fractions import Fraction

import pytest

from backspan.core.quantities import CONDUCTOR_AREA, QuantityError, Style, display, parse_exact
from backspan.core.quantities.conductors import CIRCULAR_MILS
from backspan.core.quantities.units import CIRCULAR_MIL

GAGE_NUMBERS = {"4/0": -3, "3/0": -2, "2/0": -1, "1/0": 0, **{str(n): n for n in range(1, 21)}}


@pytest.mark.parametrize(("gage", "number"), GAGE_NUMBERS.items())
def test_table_is_the_formula_of_astm_b258_to_five_figures(gage: str, number: int) -> None:
    """ASTM B258 (formula from memory): d = 0.005 in x 92^((36 - n)/39), area in circular mils."""
    exact = Context(prec=40)
    mils = exact.multiply(5, exact.power(92, exact.divide(36 - number, 39)))
    rounded = Context(prec=5).plus(exact.multiply(mils, mils))
    assert CIRCULAR_MILS[gage] == Fraction(Decimal(rounded))


def test_table_has_no_other_gage() -> None:
    assert set(CIRCULAR_MILS) == set(GAGE_NUMBERS)


def test_a_circular_mil_is_the_area_of_a_circle_of_one_mil() -> None:
    assert float(CIRCULAR_MIL) == pytest.approx(3.141592653589793 / 4 * 0.0000254**2, rel=1e-15)


@pytest.mark.parametrize(
    ("text", "circular_mils"),
    [
        ("10 AWG", "10383"),
        ("10AWG", "10383"),
        ("10 awg", "10383"),
        ("AWG 10", "10383"),
        ("AWG #10", "10383"),
        ("#10 AWG", "10383"),
        ("10-AWG", "10383"),
        ("2 AWG", "66371"),
        ("1/0 AWG", "105530"),
        ("#1/0 AWG", "105530"),
        ("AWG 2/0", "133080"),
        ("3/0 AWG", "167810"),
        ("4/0 AWG", "211600"),
        ("250 kcmil", "250000"),
        ("250 MCM", "250000"),
    ],
)
def test_reads_gages(text: str, circular_mils: str) -> None:
    assert parse_exact(text, CONDUCTOR_AREA) == Fraction(circular_mils) * CIRCULAR_MIL


@pytest.mark.parametrize("text", ["4 mm2", "4 mm²", "4 mm^2", "4 sq mm", "4.0 mm2"])
def test_reads_square_millimetres(text: str) -> None:
    assert parse_exact(text, CONDUCTOR_AREA) == Fraction(4, 1_000_000)


@pytest.mark.parametrize(
    ("text", "telling"),
    [
        ("10", "bare number"),
        ("#10", 'written with "AWG"'),
        ("12/3 AWG", "no gage 12/3|count of conductors"),
        ("12/3", "count of conductors"),
        ("5/0 AWG", "no gage 5/0"),
        ("99 AWG", "no gage 99"),
        ("00 AWG", "no gage 00"),
        ("10 ga", "not a known unit"),
        ("4 mm", "unit of length; a conductor area is wanted"),
        ("4 sq in", "unit of area; a conductor area is wanted"),
    ],
)
def test_refuses(text: str, telling: str) -> None:
    with pytest.raises(QuantityError, match=telling):
        parse_exact(text, CONDUCTOR_AREA)


@pytest.mark.parametrize("gage", GAGE_NUMBERS)
def test_a_gage_is_shown_by_its_name_in_us_style(gage: str) -> None:
    area = float(parse_exact(f"{gage} AWG", CONDUCTOR_AREA))
    assert display(area, CONDUCTOR_AREA, Style.US) == f"{gage} AWG"


@pytest.mark.parametrize(
    ("text", "us", "metric"),
    [
        ("10 AWG", "10 AWG", "5.2611 mm2"),
        ("250 kcmil", "250 kcmil", "126.68 mm2"),
        ("1,000 kcmil", "1,000 kcmil", "506.71 mm2"),
        ("4 mm2", "4 mm2", "4 mm2"),
    ],
)
def test_display(text: str, us: str, metric: str) -> None:
    area = float(parse_exact(text, CONDUCTOR_AREA))
    assert display(area, CONDUCTOR_AREA, Style.US) == us
    assert display(area, CONDUCTOR_AREA, Style.METRIC) == metric
