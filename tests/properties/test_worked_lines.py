"""The printed formula is the computed formula: a reader with a calculator gets the printed result.

For random arguments of every formula, in both styles, the printed text is taken apart and worked
out again by Python, and must give the printed result within its printed digits.
"""

from __future__ import annotations

import math
import re
from dataclasses import replace
from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as some

from backspan.core.mechanics import (
    FORMULAS,
    beam_bending,
    beam_loading,
    beam_web,
    channels,
    sections,
)
from backspan.core.quantities import (
    DIMENSIONS,
    FORCE,
    LENGTH,
    MASS,
    MOMENT,
    RATIO,
    SAME,
    CoherentSet,
    Dimension,
    Style,
    coherent_unit,
)
from backspan.core.worked.arithmetic import evaluate
from backspan.core.worked.formula import AnyFormula, Step
from backspan.core.worked.lines import WorkedLine, recompute, unit_set, worked_line
from backspan.core.worked.numerals import read_number
from backspan.core.worked.table import FormulaDescription, describe_all

DESCRIPTIONS = describe_all(FORMULAS)
#: Each law is asked of every formula, in both units: a third of the usual examples do.
A_THIRD = settings(max_examples=settings().max_examples // 3)

#: Sizes of a section and what follows from them: below nothing they are none.
OF_SECTIONS = {one.__name__ for one in (sections, channels, beam_bending, beam_loading, beam_web)}
THICK = (0.003, 0.02)
SIZES = {
    "section_depth": (0.1, 0.5),
    "flange_width": (0.05, 0.3),
    "web_thickness": THICK,
    "flange_thickness": THICK,
    "wall": THICK,
}

#: Least and most of what a roof has, in SI, with room on both sides.
RANGES = {LENGTH: (1e-4, 1e3), MASS: (1e-2, 1e5), FORCE: (1e-1, 1e7), MOMENT: (1e-1, 1e8)}
OTHERWISE = (1e-3, 1e4)
ROUND = (1.0, 2.0, 4.0, 0.3048, 4448.2216152605)

UNITS = sorted({coherent_unit(one, unit)[0] for one in DIMENSIONS for unit in CoherentSet} - {""})
NUMBER_WITH_UNIT = re.compile(
    r"(?P<number>[0-9][0-9,]*(?:\.[0-9]+)?)"
    rf"(?: (?:{'|'.join(map(re.escape, sorted(UNITS, key=len, reverse=True)))})(?![A-Za-z]))?"
)


def values(dimension: Dimension) -> some.SearchStrategy[float]:
    least, most = RANGES.get(dimension, OTHERWISE)
    sizes = some.one_of(some.floats(least, most), some.sampled_from(ROUND))
    return some.builds(lambda size, sign: size * sign, sizes, some.sampled_from((1.0, 1.0, -1.0)))


def step_of(data: some.DataObject, formula: AnyFormula, description: FormulaDescription) -> Step:
    """A use of the formula; where it divides by nothing, the same numbers a little apart."""
    general = any(one == SAME for _, one in description.parameters)
    of = data.draw(some.sampled_from((LENGTH, MOMENT, RATIO)), "of") if general else None
    arguments = {name: data.draw(values(of or one), name) for name, one in description.parameters}
    if formula.__wrapped__.__module__ in OF_SECTIONS:
        arguments = {
            name: data.draw(some.floats(*SIZES[name]), name) if name in SIZES else abs(value)
            for name, value in arguments.items()
        }
    try:
        return replace(formula(**arguments), of=of)
    except ZeroDivisionError:
        spread = {name: value * (1 + at / 8) for at, (name, value) in enumerate(arguments.items())}
        return replace(formula(**spread), of=of)


def worked_from_text(text: str) -> float:
    """The value of a right-hand side as it is printed, without its units."""
    plain = NUMBER_WITH_UNIT.sub(lambda match: match["number"].replace(",", ""), text)
    known = {"__builtins__": {}, "root": math.sqrt, "min": min, "max": max}
    return float(eval(plain.replace("×", "*").replace("√", "root"), known))  # noqa: S307 own text


def last_place(text: str) -> float:
    """One unit of the last printed digit."""
    return float(f"1e-{len(text.partition('.')[2])}")


@pytest.mark.parametrize("style", Style)
@pytest.mark.parametrize("name", FORMULAS)
@A_THIRD
@given(data=some.data())
def test_the_printed_numbers_give_the_printed_result(
    name: str, style: Style, data: some.DataObject
) -> None:
    step = step_of(data, FORMULAS[name], DESCRIPTIONS[name])
    line = worked_line(step, DESCRIPTIONS[name], style)
    printed = read_number(line.result.value)
    for again in (recompute(line), worked_from_text(line.plain.split(" = ")[2])):
        assert abs(again - printed) <= line.agrees_within
        assert abs(again - printed) <= last_place(line.result.value) + noise(line)
    unit, factor = coherent_unit(DESCRIPTIONS[name].result, unit_set(DESCRIPTIONS[name], style))
    assert line.result.unit == unit
    assert abs(Fraction(step.value) / factor - Fraction(printed)) <= line.agrees_within


def noise(line: WorkedLine) -> float:
    """What floats lose in the largest number of the line, generously."""
    sizes = [abs(read_number(one.value)) for one in (*line.numbers, line.result)]
    return 1e-9 * max(sizes)


@pytest.mark.parametrize("name", FORMULAS)
@A_THIRD
@given(data=some.data())
def test_the_tree_gives_the_very_float_of_the_function(name: str, data: some.DataObject) -> None:
    step = step_of(data, FORMULAS[name], DESCRIPTIONS[name])
    assert evaluate(DESCRIPTIONS[name].expression, dict(step.arguments)) == step.value


@pytest.mark.parametrize("style", Style)
@pytest.mark.parametrize("name", FORMULAS)
@A_THIRD
@given(data=some.data())
def test_six_digits_of_the_result_are_printed_where_nothing_cancels(
    name: str, style: Style, data: some.DataObject
) -> None:
    step = step_of(data, FORMULAS[name], DESCRIPTIONS[name])
    line = worked_line(step, DESCRIPTIONS[name], style)
    signs = {value > 0 for _, value in step.arguments}
    if "-" not in line.symbolic and signs == {True}:  # two negatives multiply to what may cancel
        printed = abs(read_number(line.result.value))
        assert line.agrees_within <= max(5.001e-6 * printed, 5.001e-10)
