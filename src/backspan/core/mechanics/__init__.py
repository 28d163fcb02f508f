"""Formulas only: typed numbers in, numbers and worked steps out. Factors arrive as arguments."""

from __future__ import annotations

from collections.abc import Mapping

from backspan.core.mechanics import (
    beam_bending,
    beam_geometry,
    beam_loading,
    beam_web,
    bearing,
    channels,
    fall,
    hoist_share,
    loads,
    power,
    ropes,
    sections,
    share,
    stack,
    tiebacks,
    tipping,
)
from backspan.core.worked.formula import AnyFormula, Formula

_MODULES = (
    tipping,
    loads,
    beam_geometry,
    stack,
    share,
    bearing,
    ropes,
    tiebacks,
    hoist_share,
    fall,
    power,
    sections,
    channels,
    beam_bending,
    beam_loading,
    beam_web,
)


def _formulas() -> Mapping[str, AnyFormula]:
    found: dict[str, AnyFormula] = {}
    for module in _MODULES:
        for value in vars(module).values():
            if isinstance(value, Formula) and value.__wrapped__.__module__ == module.__name__:
                found[value.name] = value
    return found


#: Every recorded formula by its name, as steps name them.
FORMULAS: Mapping[str, AnyFormula] = _formulas()
