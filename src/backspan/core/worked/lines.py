"""A recorded step as one line of text: symbols, the numbers put in, the result.

Each line uses one coherent unit set, so that the printed numbers, worked by the printed
expression, give the printed result; `worked_line` writes no line for which they do not.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from fractions import Fraction

from backspan.core.numbers import NumberError
from backspan.core.quantities import SAME, CoherentSet, Dimension, Style, coherent_unit
from backspan.core.worked.arithmetic import error_bound, evaluate
from backspan.core.worked.expression import (
    Constant,
    Expression,
    Function,
    Number,
    Operator,
    WorkedError,
    leaves,
)
from backspan.core.worked.formula import Step
from backspan.core.worked.infix import Leaf, LeafText, Signs, infix
from backspan.core.worked.numerals import (
    PrintedNumber,
    half_of_last,
    places_for,
    read_number,
    write_number,
)
from backspan.core.worked.symbols import CONSTANTS, SYMBOLS, Symbol
from backspan.core.worked.table import FormulaDescription, dimensions_of

DIGITS = 6
MOST_DIGITS = 15
MOST_PLACES = 9  # below 1e-9 of its unit a result is written 0

_UNIT_SETS: Mapping[Style, CoherentSet] = {
    Style.US: CoherentSet.FEET_POUNDS,
    Style.METRIC: CoherentSet.METRES_NEWTONS,
}
#: A steel section is told in inches; whoever reckons it has a table in inches beside it.
_OF_A_SECTION = frozenset(
    {
        *("section_depth", "wall", "radius_y", "effective_radius", "between_flanges"),
        *("second_moment", "weak_second_moment", "elastic_modulus_x", "flange_thickness"),
        *("yield_strength", "web_thickness", "warping_distance"),
    }
)
_FUNCTIONS = {Function.ROOT: "√", Function.LARGER: "max", Function.SMALLER: "min"}
_OPERATORS = {Operator.PLUS: "+", Operator.MINUS: "-", Operator.OVER: "/"}
_IN_SYMBOLS = Signs({**_OPERATORS, Operator.TIMES: "·"}, _FUNCTIONS)
_IN_NUMBERS = Signs({**_OPERATORS, Operator.TIMES: "×"}, _FUNCTIONS)


@dataclass(frozen=True, slots=True)
class WorkedLine:
    """One computed step as it is printed.

    `numbers` are the parameters in the formula's order, then its constants; `symbolic` and
    `substituted` are the right-hand side in symbols and in numbers; `plain` is the whole line.
    `agrees_within` is how far the recomputed result may lie from the printed one, in its unit.
    """

    formula: str
    title: str
    expression: Expression
    symbolic: str
    numbers: tuple[PrintedNumber, ...]
    substituted: str
    result: PrintedNumber
    plain: str
    source: str
    agrees_within: float


def worked_line(
    step: Step,
    description: FormulaDescription,
    style: Style,
    *,
    symbols: Mapping[str, Symbol] = SYMBOLS,
    constants: Mapping[str, Symbol] = CONSTANTS,
) -> WorkedLine:
    """The line of one step, in feet and pounds or in metres and newtons.

    Numbers carry six significant digits, and more where large numbers cancel, until the printed
    ones give the printed result. Raises WorkedError when they never do, when the description is
    not that of the step, or when a name has no symbol.
    """
    _same_formula(step, description)
    units = unit_set(description, style)
    quantities = _quantities(step, description, units, symbols, constants)
    in_units = {one.name: one.value for one in quantities}
    result = _in_unit(
        step.value, Symbol(step.formula, description.symbol, "", description.result), units
    )
    noise = error_bound(description.expression, in_units)
    places = _result_places(result.value, noise)
    printed = result.printed(places=places)
    within = half_of_last(places) + noise
    for digits in range(DIGITS, MOST_DIGITS + 1):
        numbers = tuple(
            one.printed(places=places_for(one.value, digits=digits)) for one in quantities
        )
        again = _worked_again(description.expression, numbers)
        if again is not None and abs(again - read_number(printed.value)) <= within:
            return _line(description, numbers, printed, within)
    raise WorkedError(
        f"{step.formula}: the printed numbers do not give {printed.text}; "
        f"its units do not fit together in {units}"
    )


def recompute(line: WorkedLine) -> float:
    """The result that the printed numbers give by the printed expression, in its printed unit."""
    values = {one.name: read_number(one.value) for one in line.numbers}
    return evaluate(line.expression, values)


def unit_set(description: FormulaDescription, style: Style) -> CoherentSet:
    """The units in which a formula's line is printed."""
    of_section = any(name in _OF_A_SECTION for name, _ in description.parameters)
    return CoherentSet.INCHES_POUNDS if of_section and style is Style.US else _UNIT_SETS[style]


@dataclass(frozen=True, slots=True)
class _Quantity:
    name: str
    symbol: str
    value: float
    unit: str

    def printed(self, *, places: int) -> PrintedNumber:
        return PrintedNumber(
            self.name, self.symbol, write_number(self.value, places=places), self.unit
        )


def _same_formula(step: Step, description: FormulaDescription) -> None:
    names = {name for name, _ in step.arguments}
    if step.formula != description.name or names != {name for name, _ in description.parameters}:
        raise WorkedError(f"{step.formula}: described as {description.name}, another formula")
    if evaluate(description.expression, dict(step.arguments)) != step.value:
        raise WorkedError(
            f"{step.formula}: its expression does not give the recorded result {step.value!r}"
        )


def _quantities(
    step: Step,
    description: FormulaDescription,
    units: CoherentSet,
    symbols: Mapping[str, Symbol],
    constants: Mapping[str, Symbol],
) -> tuple[_Quantity, ...]:
    values = dict(step.arguments)
    found = [
        _in_unit(values[name], _symbol(name, symbols, dimension), units)
        for name, dimension in dimensions_of(step, description).items()
    ]
    named = {one.name: one for one in leaves(description.expression) if isinstance(one, Constant)}
    found += [
        _in_unit(one.value, _symbol(one.name, constants, None), units) for one in named.values()
    ]
    return tuple(found)


def _symbol(name: str, symbols: Mapping[str, Symbol], dimension: Dimension | None) -> Symbol:
    symbol = symbols.get(name)
    if symbol is not None and dimension is not None and symbol.dimension == SAME:
        return replace(symbol, dimension=dimension)
    if symbol is None or dimension not in {None, symbol.dimension}:
        kind = "" if dimension is None else f" as {dimension.wanted}"
        raise WorkedError(f"{name!r} has no symbol{kind}; add it to the nomenclature")
    return symbol


def _in_unit(value: float, symbol: Symbol, units: CoherentSet) -> _Quantity:
    unit, factor = coherent_unit(symbol.dimension, units)
    try:
        in_unit = float(Fraction(value) / factor)
    except (OverflowError, ValueError) as error:
        raise WorkedError(f"{symbol.name}: {value!r} cannot be printed ({error})") from error
    return _Quantity(symbol.name, symbol.symbol, in_unit, unit)


def _result_places(value: float, noise: float) -> int:
    places = min(MOST_PLACES, places_for(value, digits=DIGITS))
    while places and noise > half_of_last(places):
        places -= 1
    return places


def _worked_again(expression: Expression, numbers: tuple[PrintedNumber, ...]) -> float | None:
    try:
        return evaluate(expression, {one.name: read_number(one.value) for one in numbers})
    except (ZeroDivisionError, NumberError):
        return None  # a divisor or a root that needs more digits


def _line(
    description: FormulaDescription,
    numbers: tuple[PrintedNumber, ...],
    result: PrintedNumber,
    within: float,
) -> WorkedLine:
    by_name = {one.name: one for one in numbers}

    def in_symbols(leaf: Leaf) -> LeafText:
        return LeafText(str(leaf.value) if isinstance(leaf, Number) else by_name[leaf.name].symbol)

    def in_numbers(leaf: Leaf) -> LeafText:
        if isinstance(leaf, Number):
            return LeafText(str(leaf.value))
        number = by_name[leaf.name]
        several = " " in number.unit or "/" in number.unit
        return LeafText(number.text, number.value.startswith("-"), several)

    symbolic = infix(description.expression, _IN_SYMBOLS, in_symbols)
    substituted = infix(description.expression, _IN_NUMBERS, in_numbers)
    return WorkedLine(
        formula=description.name,
        title=description.title,
        expression=description.expression,
        symbolic=symbolic,
        numbers=numbers,
        substituted=substituted,
        result=result,
        plain=f"{result.symbol} = {symbolic} = {substituted} = {result.text}",
        source=description.source,
        agrees_within=within,
    )
