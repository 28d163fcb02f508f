"""In a coherent set, products of units are units: no factor hides in a worked line."""

from fractions import Fraction

import pytest

from backspan.core.quantities import (
    ACCELERATION,
    AREA,
    CONDUCTOR_AREA,
    DIMENSIONS,
    FORCE,
    LENGTH,
    LINEAR_MASS,
    MASS,
    MOMENT,
    PRESSURE,
    RATIO,
    SPEED,
    CoherentSet,
    Dimension,
    coherent_unit,
)


def factor(dimension: Dimension, system: CoherentSet) -> Fraction:
    return coherent_unit(dimension, system)[1]


@pytest.mark.parametrize("system", CoherentSet)
def test_products_need_no_factor(system: CoherentSet) -> None:
    length, force, mass = (factor(dimension, system) for dimension in (LENGTH, FORCE, MASS))
    assert factor(AREA, system) == length**2
    assert factor(CONDUCTOR_AREA, system) == length**2
    assert factor(MOMENT, system) == force * length
    assert factor(PRESSURE, system) == force / length**2
    assert factor(LINEAR_MASS, system) == mass / length
    assert factor(ACCELERATION, system) == force / mass
    assert factor(SPEED, system) == length
    assert factor(RATIO, system) == 1


@pytest.mark.parametrize("system", CoherentSet)
@pytest.mark.parametrize("dimension", DIMENSIONS, ids=lambda dimension: dimension.name)
def test_every_text_is_that_unit_when_parsed(dimension: Dimension, system: CoherentSet) -> None:
    text, si = coherent_unit(dimension, system)
    readable = AREA if dimension == CONDUCTOR_AREA else dimension
    unit = readable.unit(text)
    assert unit is not None
    assert (unit.label, unit.factor) == (text, si)


@pytest.mark.parametrize(
    ("system", "texts"),
    [
        (CoherentSet.FEET_POUNDS, ("ft", "lb", "lb", "lb ft", "psf", "sq ft", "g")),
        (CoherentSet.INCHES_POUNDS, ("in", "lb", "lb", "lb in", "psi", "sq in", "g")),
        (CoherentSet.METRES_NEWTONS, ("m", "kg", "N", "N m", "Pa", "m2", "m/s2")),
    ],
)
def test_texts(system: CoherentSet, texts: tuple[str, ...]) -> None:
    dimensions = (LENGTH, MASS, FORCE, MOMENT, PRESSURE, AREA, ACCELERATION)
    assert tuple(coherent_unit(dimension, system)[0] for dimension in dimensions) == texts
