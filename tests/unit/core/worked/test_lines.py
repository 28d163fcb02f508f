from __future__ import annotations

from dataclasses import replace

import pytest

from backspan.core.mechanics import FORMULAS
from backspan.core.quantities import AREA, FORCE, LENGTH, LINEAR_MASS, MASS, PRESSURE, Style, parse
from backspan.core.worked.expression import WorkedError
from backspan.core.worked.formula import AnyFormula, Step
from backspan.core.worked.lines import WorkedLine, recompute, worked_line
from backspan.core.worked.numerals import PrintedNumber, read_number
from backspan.core.worked.table import describe
from tests.unit.core.worked.made_up import (
    SYMBOLS,
    counterweight_force,
    difference,
    force_on_area,
    length_of_mass,
    nonsense,
    over_difference,
)

EXAMPLE = {
    "factor": 4.0,
    "load": parse("1,000 lb", FORCE),
    "reach": parse("4 ft", LENGTH),
    "backspan": parse("11 ft 6 in", LENGTH),
}


def line_of(formula: AnyFormula, style: Style, **arguments: float) -> WorkedLine:
    return worked_line(formula(**arguments), describe(formula), style, symbols=SYMBOLS)


def test_a_line_in_feet_and_pounds() -> None:
    line = line_of(counterweight_force, Style.US, **EXAMPLE)
    assert line.plain == (
        "W = k · P · a / b = 4 × 1,000 lb × 4 ft / 11.5 ft = 1,391.3 lb"  # 16,000 / 11.5
    )
    assert line.symbolic == "k · P · a / b"
    assert line.substituted == "4 × 1,000 lb × 4 ft / 11.5 ft"
    assert line.result == PrintedNumber("counterweight_force", "W", "1,391.3", "lb")
    assert line.title == "Counterweight that resists a load"
    assert line.source == "made up, for a test."
    assert line.numbers == (
        PrintedNumber("factor", "k", "4", ""),
        PrintedNumber("load", "P", "1,000", "lb"),
        PrintedNumber("reach", "a", "4", "ft"),
        PrintedNumber("backspan", "b", "11.5", "ft"),
    )


def test_the_same_line_in_metres_and_newtons() -> None:
    line = line_of(counterweight_force, Style.METRIC, **EXAMPLE)
    assert line.plain == ("W = k · P · a / b = 4 × 4,448.22 N × 1.2192 m / 3.5052 m = 6,188.83 N")


def test_recomputing_gives_the_printed_result() -> None:
    line = line_of(counterweight_force, Style.US, **EXAMPLE)
    assert recompute(line) == pytest.approx(1391.304348, rel=1e-9)
    assert abs(recompute(line) - read_number(line.result.value)) <= line.agrees_within


def test_recomputing_uses_the_printed_numbers() -> None:
    line = line_of(counterweight_force, Style.US, **EXAMPLE)
    tampered = (replace(line.numbers[0], value="8"), *line.numbers[1:])
    assert recompute(replace(line, numbers=tampered)) == pytest.approx(2 * 1391.304348, rel=1e-9)


@pytest.mark.parametrize(
    ("formula", "arguments", "style", "plain"),
    [
        (
            force_on_area,
            {"pressure": parse("20 psf", PRESSURE), "area": parse("12 sq ft", AREA)},
            Style.US,
            "F = p · A = 20 psf × 12 sq ft = 240 lb",
        ),
        (
            force_on_area,
            {"pressure": 958.0, "area": 1.1},
            Style.METRIC,
            "F = p · A = 958 Pa × 1.1 m2 = 1,053.8 N",
        ),
        (
            length_of_mass,
            {"mass": parse("27 lb", MASS), "mass_per_length": parse("0.18 lb/ft", LINEAR_MASS)},
            Style.US,
            "l = m / q = 27 lb / (0.18 lb/ft) = 150 ft",
        ),
        (
            difference,
            {"backspan": parse("11.5 ft", LENGTH), "reach": parse("-2 ft", LENGTH)},
            Style.US,
            "d = b - a = 11.5 ft - (-2 ft) = 13.5 ft",
        ),
        (
            over_difference,
            {"backspan": 3.0, "reach": 1.0},
            Style.METRIC,
            "r = a / (b - a) = 1 m / (3 m - 1 m) = 0.5",
        ),
    ],
)
def test_every_number_has_its_unit_and_a_ratio_has_none(
    formula: AnyFormula, arguments: dict[str, float], style: Style, plain: str
) -> None:
    assert line_of(formula, style, **arguments).plain == plain


@pytest.mark.parametrize(
    ("style", "plain"),
    [
        (Style.US, "W = m · g = 50 lb × 1 g = 50 lb"),
        (Style.METRIC, "W = m · g = 22.6796 kg × 9.80665 m/s2 = 222.411 N"),
    ],
)
def test_a_constant_is_printed_in_the_unit_of_the_line(style: Style, plain: str) -> None:
    weight = FORMULAS["weight"]
    line = worked_line(weight(mass=parse("50 lb", MASS)), describe(weight), style)
    assert line.plain == plain
    assert line.numbers[1].name == "STANDARD_GRAVITY"


def test_more_digits_are_printed_where_numbers_cancel() -> None:
    line = line_of(difference, Style.METRIC, backspan=3.0000012345678, reach=3.0)
    assert line.plain == "d = b - a = 3.000001235 m - 3 m = 0.000001235 m"
    assert abs(recompute(line) - 0.000001235) <= line.agrees_within


def test_noise_is_told_where_a_divisor_nearly_cancels() -> None:
    step = over_difference(backspan=3.0 + 3e-9, reach=3.0)
    line = worked_line(step, describe(over_difference), Style.METRIC, symbols=SYMBOLS)
    assert read_number(line.result.value) == round(step.value)
    assert 1e3 < line.agrees_within < 1e5  # of 1e9: the difference keeps five digits


def test_a_difference_of_nothing_is_zero() -> None:
    line = line_of(difference, Style.US, backspan=3.0 + 4e-16, reach=3.0)
    assert line.plain.endswith(" = 0 ft")


def test_what_is_below_a_billionth_of_its_unit_is_zero() -> None:
    line = line_of(over_difference, Style.METRIC, backspan=1000.0, reach=4e-7)
    assert line.plain == "r = a / (b - a) = 0.0000004 m / (1,000 m - 0.0000004 m) = 0"


def test_units_that_do_not_fit_together_are_refused() -> None:
    with pytest.raises(WorkedError, match=r"nonsense: the printed numbers do not give 3\.37213 lb"):
        line_of(nonsense, Style.US, mass=5.0, load=10.0)


def test_a_result_the_expression_does_not_give_is_refused() -> None:
    step = replace(counterweight_force(**EXAMPLE), value=6188.0)
    with pytest.raises(WorkedError, match=r"expression does not give the recorded result 6188\.0"):
        worked_line(step, describe(counterweight_force), Style.US, symbols=SYMBOLS)


def test_the_description_of_another_formula_is_refused() -> None:
    with pytest.raises(WorkedError, match="difference: described as counterweight_force"):
        worked_line(difference(backspan=2.0, reach=1.0), describe(counterweight_force), Style.US)


def test_a_step_with_other_arguments_is_refused() -> None:
    step = Step("difference", (("backspan", 2.0),), 1.0)
    with pytest.raises(WorkedError, match="difference: described as difference"):
        worked_line(step, describe(difference), Style.US, symbols=SYMBOLS)


def test_a_name_without_a_symbol_is_refused() -> None:
    with pytest.raises(WorkedError, match="'reach' has no symbol as a length; add it to the"):
        worked_line(
            difference(backspan=2.0, reach=1.0),
            describe(difference),
            Style.US,
            symbols={"backspan": SYMBOLS["backspan"]},
        )


def test_a_name_in_another_dimension_than_its_symbol_is_refused() -> None:
    symbols = {**SYMBOLS, "reach": SYMBOLS["load"]}
    with pytest.raises(WorkedError, match="'reach' has no symbol as a length"):
        worked_line(
            difference(backspan=2.0, reach=1.0), describe(difference), Style.US, symbols=symbols
        )


def test_a_constant_without_a_symbol_is_refused() -> None:
    weight = FORMULAS["weight"]
    with pytest.raises(WorkedError, match="'STANDARD_GRAVITY' has no symbol; add it to the"):
        worked_line(weight(mass=5.0), describe(weight), Style.US, constants={})


def test_a_result_that_is_not_finite_is_refused() -> None:
    step = counterweight_force(factor=1e200, load=1e200, reach=1.0, backspan=1.0)
    with pytest.raises(WorkedError, match="counterweight_force: inf cannot be printed"):
        worked_line(step, describe(counterweight_force), Style.US, symbols=SYMBOLS)
