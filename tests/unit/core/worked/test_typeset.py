from __future__ import annotations

from dataclasses import replace

import pytest
import typst

from backspan.core.mechanics import FORMULAS
from backspan.core.mechanics.beam_loading import tip_deflection
from backspan.core.mechanics.tipping import weight
from backspan.core.quantities import LENGTH, Style, parse
from backspan.core.worked.expression import from_text
from backspan.core.worked.lines import worked_line
from backspan.core.worked.table import describe
from backspan.core.worked.typeset import typst_line, typst_math, typst_numbers, typst_symbol
from tests.unit.core.worked.made_up import SYMBOLS, counterweight_force, difference

NAMES = {"a": "a", "b": "b_0", "c": "M_req"}


@pytest.mark.parametrize(
    ("symbol", "markup"),
    [
        ("W", "W"),
        ("P_r", 'P_"r"'),
        ("M_req", 'M_"req"'),
        ("μ", "μ"),
        ("dn", '"dn"'),
        ("dn_max", '"dn"_"max"'),
    ],
)
def test_a_symbol_has_its_index_set_low(symbol: str, markup: str) -> None:
    assert typst_symbol(symbol) == markup


@pytest.mark.parametrize(
    ("text", "markup"),
    [
        ("a * b / c", 'frac(a dot.c b_"0", M_"req")'),
        ("a / (b * c)", 'frac(a, b_"0" dot.c M_"req")'),
        ("a * (b / c)", 'a dot.c frac(b_"0", M_"req")'),
        ("(a + b) / 2", 'frac(a + b_"0", 2)'),
        ("(a + b) * c", '(a + b_"0") dot.c M_"req"'),
        ("a - (b - c)", 'a - (b_"0" - M_"req")'),
        ("a * (b * c)", 'a dot.c (b_"0" dot.c M_"req")'),
        ("-a * (-b)", '-a dot.c (-b_"0")'),
        ("-(a * b)", '-(a dot.c b_"0")'),
        ("-(a / b)", '-frac(a, b_"0")'),
        ("root(a + b)", 'sqrt(a + b_"0")'),
        ("larger(a, b) - smaller(a, 2)", 'max(a, b_"0") - min(a, 2)'),
    ],
)
def test_fractions_are_stacked_and_brackets_are_few(text: str, markup: str) -> None:
    tree = from_text(text, parameters=NAMES, constants={}, place="test")
    assert typst_math(tree, NAMES) == markup


def test_a_line_is_symbol_expression_numbers_result() -> None:
    step = counterweight_force(factor=4.0, load=5000.0, reach=1.25, backspan=3.5)
    line = worked_line(step, describe(counterweight_force), Style.METRIC, symbols=SYMBOLS)
    numbers = 'frac("4" times "5,000 N" times "1.25 m", "3.5 m")'
    assert typst_numbers(line) == numbers
    assert typst_line(line) == f'W = frac(k dot.c P dot.c a, b) = {numbers} = "7,142.86 N"'


@pytest.mark.parametrize(("units", "raised"), [(Style.US, "in⁴"), (Style.METRIC, "m⁴")])
def test_a_unit_of_a_fourth_power_is_set_as_one(units: Style, raised: str) -> None:
    numbers = {"load": 4000.0, "reach": 0.5, "backspan": 3.0, "elastic_constant": 2e11}
    step = tip_deflection(**numbers, second_moment=1e-6)
    shown = typst_numbers(worked_line(step, describe(tip_deflection), units))
    assert raised in shown
    assert raised.replace("⁴", "4") not in shown


def test_a_squared_unit_is_set_as_one() -> None:
    line = worked_line(weight(mass=2.0), describe(weight), Style.METRIC)
    assert typst_numbers(line) == '"2 kg" times "9.80665 m/s²"'


def test_a_negative_number_stands_in_brackets() -> None:
    step = difference(backspan=parse("10 ft", LENGTH), reach=parse("-2 ft", LENGTH))
    line = worked_line(step, describe(difference), Style.US, symbols=SYMBOLS)
    assert typst_numbers(line) == '"10 ft" - ("-2 ft")'


def test_the_typesetter_takes_the_line_of_every_formula() -> None:
    lines = []
    for formula in FORMULAS.values():
        description = describe(formula)
        arguments = {name: 2.0 + at for at, (name, _) in enumerate(description.parameters)}
        for style in Style:
            line = worked_line(replace(formula(**arguments), of=LENGTH), description, style)
            lines.append(f"$ {typst_line(line)} $")
    tree = from_text("-root(a) * larger(b, c)", parameters=NAMES, constants={}, place="test")
    lines.append(f"$ {typst_math(tree, NAMES)} $")
    pages = typst.compile("\n\n".join(lines).encode(), format="pdf")
    assert isinstance(pages, bytes)
    assert pages.startswith(b"%PDF")
