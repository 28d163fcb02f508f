"""What a paper needs to know of a formula: its name, symbol, units, expression, title, source."""

from __future__ import annotations

import inspect
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, get_type_hints

from backspan.core.quantities import SAME, Dimension
from backspan.core.worked.expression import (
    Expression,
    SourceMissingError,
    WorkedError,
    from_source,
    from_text,
)
from backspan.core.worked.formula import AnyFormula, Step

_SOURCE = "Source:"


@dataclass(frozen=True, slots=True)
class FormulaDescription:
    """A formula as it is printed; `parameters` are names with their dimensions, in order."""

    name: str
    symbol: str
    parameters: tuple[tuple[str, Dimension], ...]
    result: Dimension
    expression: Expression
    title: str
    source: str


def dimensions_of(step: Step, description: FormulaDescription) -> dict[str, Dimension]:
    """The dimension of each argument of a step; WorkedError where a general one is not named."""
    found = {}
    for name, dimension in description.parameters:
        if dimension == SAME and step.of is None:
            raise WorkedError(f"{step.formula}: the step does not say of which kind {name!r} is")
        found[name] = step.of if dimension == SAME and step.of is not None else dimension
    return found


def describe(formula: AnyFormula, table: Mapping[str, str] | None = None) -> FormulaDescription:
    """Describe a formula from its source, or from `table` where its source is not at hand.

    `table` gives the text of each expression by the formula's name. Raises SourceMissingError
    when neither is there, and WorkedError when the function is not a formula: a parameter or
    result without a dimension, no title, or no "Source:" paragraph.
    """
    function = formula.__wrapped__
    place = f"{function.__module__}.{function.__qualname__}"
    hints = get_type_hints(function, include_extras=True)
    parameters = tuple(
        (name, _dimension(hints.get(name), f"{place}: parameter {name!r}"))
        for name in inspect.signature(function).parameters
    )
    title, source = _title_and_source(function.__doc__, place)
    return FormulaDescription(
        name=formula.name,
        symbol=formula.symbol,
        parameters=parameters,
        result=_dimension(hints.get("return"), f"{place}: the result"),
        expression=_expression(formula, table or {}),
        title=title,
        source=source,
    )


def describe_all(
    formulas: Mapping[str, AnyFormula], table: Mapping[str, str] | None = None
) -> Mapping[str, FormulaDescription]:
    """Describe every formula, by name. Raises as `describe` does."""
    return {name: describe(formula, table) for name, formula in formulas.items()}


def _expression(formula: AnyFormula, table: Mapping[str, str]) -> Expression:
    function = formula.__wrapped__
    try:
        return from_source(function)
    except SourceMissingError:
        if formula.name not in table:
            raise
    return from_text(
        table[formula.name],
        parameters=inspect.signature(function).parameters,
        constants=function.__globals__,
        place=f"table of formulas, {formula.name}",
    )


def _dimension(hint: Any, place: str) -> Dimension:
    for mark in getattr(hint, "__metadata__", ()):
        if isinstance(mark, Dimension):
            return mark
    raise WorkedError(f"{place} has no dimension; annotate it with a quantity such as Length")


def _title_and_source(docstring: str | None, place: str) -> tuple[str, str]:
    paragraphs = [" ".join(one.split()) for one in inspect.cleandoc(docstring or "").split("\n\n")]
    source = next((one for one in paragraphs if one.startswith(_SOURCE)), "")
    title = paragraphs[0].rstrip(".")
    if not title or not source.removeprefix(_SOURCE).strip() or title.startswith(_SOURCE):
        raise WorkedError(f'{place}: the docstring needs a title and a "{_SOURCE}" paragraph')
    return title, source.removeprefix(_SOURCE).strip()
