"""Every formula is dimensionally right: in other base units it gives the same quantity.

Mass, length, time and current are counted in units 4, 16 or 64 times smaller or larger. Scaling by
powers of four is exact in floats, also under a root, so the result must scale exactly by its
dimension.
"""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as some

from backspan.core.mechanics import FORMULAS
from backspan.core.quantities import DIMENSIONS, RATIO, SAME, Dimension, Force, Length, Mass, Moment
from backspan.core.worked.arithmetic import evaluate
from backspan.core.worked.expression import Constant, leaves
from backspan.core.worked.formula import AnyFormula, formula
from backspan.core.worked.symbols import CONSTANTS
from backspan.core.worked.table import FormulaDescription, describe

#: Powers of mass, length, time and current in each dimension. Source: ISO 80000-3, -4 and -6 (from
#: memory).
EXPONENTS = {
    "length": (0, 1, 0, 0),
    "area": (0, 2, 0, 0),
    "force": (1, 1, -2, 0),
    "mass": (1, 0, 0, 0),
    "moment": (1, 2, -2, 0),
    "pressure": (1, -1, -2, 0),
    "speed": (0, 1, -1, 0),
    "angle": (0, 0, 0, 0),
    "ratio": (0, 0, 0, 0),
    "linear mass": (1, -1, 0, 0),
    "conductor area": (0, 2, 0, 0),
    "acceleration": (0, 1, -2, 0),
    "section modulus": (0, 3, 0, 0),
    "second moment of area": (0, 4, 0, 0),
    "voltage": (1, 2, -3, -1),
    "current": (0, 0, 0, 1),
    "linear resistance": (1, 1, -3, -2),
    "apparent power": (1, 2, -3, 0),
    "one kind of quantity": (3, -2, 5, -1),  # any: a formula of it holds for all
}

#: Formulas that name a constant with a unit, and the constant: a new one is added by hand.
UNIT_BOUND = {"weight": {"STANDARD_GRAVITY"}}

STEPS = some.tuples(*[some.integers(-3, 3)] * 4)


def scale_of(dimension: Dimension, steps: tuple[int, ...]) -> float:
    """The factor by which a number of this dimension grows."""
    exponents = EXPONENTS[dimension.name]
    return 4.0 ** sum(step * exponent for step, exponent in zip(steps, exponents, strict=True))


def constants_of(described: FormulaDescription) -> dict[str, float]:
    return {
        one.name: one.value for one in leaves(described.expression) if isinstance(one, Constant)
    }


def scales(described: FormulaDescription, values: dict[str, float], steps: tuple[int, ...]) -> bool:
    """Whether the result scales by its dimension when everything in it is scaled."""
    constants = constants_of(described)
    dimensions = dict(described.parameters) | {one: CONSTANTS[one].dimension for one in constants}
    scaled = {
        name: value * scale_of(dimensions[name], steps)
        for name, value in (values | constants).items()
    }
    before = evaluate(described.expression, values)
    return evaluate(described.expression, scaled) == before * scale_of(described.result, steps)


@pytest.mark.parametrize("name", FORMULAS)
@given(data=some.data(), steps=STEPS)
def test_every_formula_scales_by_its_dimensions(
    name: str, data: some.DataObject, steps: tuple[int, int, int, int]
) -> None:
    described = describe(FORMULAS[name])
    values = {
        parameter: data.draw(some.floats(1 + at, 2 + at), parameter)
        for at, (parameter, _) in enumerate(described.parameters)
    }
    assert scales(described, values, steps)


@formula(symbol="X")
def sum_of_length_and_load(*, reach: Length, load: Force) -> Length:
    """A length and a load added up.

    Source: made up, wrong.
    """
    return reach + load


@formula(symbol="X")
def moment_called_force(*, reach: Length, load: Force) -> Force:
    """A moment whose unit is wrong.

    Source: made up, wrong.
    """
    return load * reach


@formula(symbol="X")
def mass_called_force(*, mass: Mass) -> Force:
    """A mass without its gravity.

    Source: made up, wrong.
    """
    return mass * 10


@formula(symbol="X")
def moment_over_nothing(*, resisting: Moment, load: Force) -> Moment:
    """A moment divided by a bare number and a load lost.

    Source: made up, wrong.
    """
    return resisting / 2 - load


@pytest.mark.parametrize(
    "wrong", [sum_of_length_and_load, moment_called_force, mass_called_force, moment_over_nothing]
)
def test_a_formula_with_wrong_dimensions_is_seen(wrong: AnyFormula) -> None:
    described = describe(wrong)
    values = {name: 3.0 for name, _ in described.parameters}
    assert not scales(described, values, (1, 2, 3, 0))


def test_constants_with_units_are_known_by_name() -> None:
    bound = {
        name: {one for one in constants_of(describe(each)) if CONSTANTS[one].dimension != RATIO}
        for name, each in FORMULAS.items()
    }
    assert {name: constants for name, constants in bound.items() if constants} == UNIT_BOUND


def test_every_dimension_has_its_exponents() -> None:
    assert {one.name for one in (*DIMENSIONS, SAME)} == set(EXPONENTS)
