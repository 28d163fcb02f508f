"""Formulas made up for the tests of worked lines."""

from __future__ import annotations

from backspan.core.quantities import (
    AREA,
    FORCE,
    LENGTH,
    LINEAR_MASS,
    MASS,
    PRESSURE,
    RATIO,
    Area,
    Force,
    Length,
    LinearMass,
    Mass,
    Pressure,
    Ratio,
)
from backspan.core.worked.formula import formula
from backspan.core.worked.symbols import Symbol

SYMBOLS = {
    name: Symbol(name, symbol, "made up", dimension)
    for name, symbol, dimension in (
        ("factor", "k", RATIO),
        ("load", "P", FORCE),
        ("reach", "a", LENGTH),
        ("backspan", "b", LENGTH),
        ("mass", "m", MASS),
        ("area", "A", AREA),
        ("pressure", "p", PRESSURE),
        ("mass_per_length", "q", LINEAR_MASS),
    )
}


@formula(symbol="W")
def counterweight_force(*, factor: Ratio, load: Force, reach: Length, backspan: Length) -> Force:
    """Counterweight that resists a load.

    It is the oldest line of the trade,
    and is made up here.

    Source: made up,
    for a test.
    """
    return factor * load * reach / backspan


@formula(symbol="d")
def difference(*, backspan: Length, reach: Length) -> Length:
    """Backspan less reach.

    Source: made up.
    """
    return backspan - reach


@formula(symbol="r")
def over_difference(*, backspan: Length, reach: Length) -> Ratio:
    """Reach over what the backspan has more.

    Source: made up.
    """
    return reach / (backspan - reach)


@formula(symbol="F")
def force_on_area(*, pressure: Pressure, area: Area) -> Force:
    """Force of a pressure on an area.

    Source: made up.
    """
    return pressure * area


@formula(symbol="l")
def length_of_mass(*, mass: Mass, mass_per_length: LinearMass) -> Length:
    """Length of rope that a mass is.

    Source: made up.
    """
    return mass / mass_per_length


@formula(symbol="X")
def nonsense(*, mass: Mass, load: Force) -> Force:
    """A mass taken for a force.

    Source: made up, wrong.
    """
    return mass + load
