"""The expression of a worked line as math markup for the typesetter of the papers.

The markup holds symbols, numbers and units of this program only, never a text somebody typed.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping

from backspan.core.worked.expression import (
    Binary,
    Call,
    Constant,
    Expression,
    Function,
    Name,
    Negative,
    Number,
    Operator,
)
from backspan.core.worked.infix import Leaf
from backspan.core.worked.lines import WorkedLine
from backspan.core.worked.numerals import PrintedNumber

_SUM, _PRODUCT, _SIGNED, _WHOLE = range(1, 5)
_RANKS: Mapping[Operator, tuple[str, int]] = {
    Operator.PLUS: ("+", _SUM),
    Operator.MINUS: ("-", _SUM),
    Operator.TIMES: ("dot.c", _PRODUCT),
}
_FUNCTIONS: Mapping[Function, str] = {
    Function.ROOT: "sqrt",
    Function.LARGER: "max",
    Function.SMALLER: "min",
}

# A unit such as m/s2 or in4 at the end of a number, and its power.
_POWER = re.compile(r"(?<=\d )((?:[a-z]+/)?(?:[cm]?m|s|ft|in))([234])$")
_RAISED = str.maketrans("234", "²³⁴")


#: Greek letters that symbols begin with, by their names.
GREEK = frozenset({"delta"})


def typst_symbol(symbol: str) -> str:
    """The markup of a symbol such as W, P_r or M_req: the base in italics, the rest set low.

    A Greek letter is written by its name, which the markup knows too.
    """
    base, _, low = symbol.partition("_")
    letter = base if len(base) == 1 or base in GREEK else f'"{base}"'
    return f'{letter}_"{low}"' if low else letter


def typst_math(expression: Expression, names: Mapping[str, str]) -> str:
    """Markup of an expression in symbols, given by parameter or constant name."""
    return _write(
        expression,
        lambda leaf: (
            str(leaf.value) if isinstance(leaf, Number) else typst_symbol(names[leaf.name]),
            _WHOLE,
        ),
        times="dot.c",
    )[0]


def typst_numbers(line: WorkedLine) -> str:
    """Markup of the same expression with the printed numbers and their units put in."""
    numbers = {one.name: one for one in line.numbers}

    def leaf_text(leaf: Leaf) -> tuple[str, int]:
        if isinstance(leaf, Number):
            return str(leaf.value), _WHOLE
        number = numbers[leaf.name]
        return _quoted(number), _SIGNED if number.value.startswith("-") else _WHOLE

    return _write(line.expression, leaf_text, times="times")[0]


def typst_line(line: WorkedLine) -> str:
    """Markup of the whole line: symbol = expression = numbers = result."""
    names = {one.name: one.symbol for one in line.numbers}
    parts = (
        typst_symbol(line.result.symbol),
        typst_math(line.expression, names),
        typst_numbers(line),
        _quoted(line.result),
    )
    return " = ".join(parts)


def _quoted(number: PrintedNumber) -> str:
    text = _POWER.sub(lambda found: found[1] + found[2].translate(_RAISED), number.text)
    return f'"{text}"'


def _write(
    expression: Expression, leaf: Callable[[Leaf], tuple[str, int]], *, times: str
) -> tuple[str, int]:
    """Markup and its rank; a stacked fraction needs no brackets, within or around it."""
    match expression:
        case Negative(operand):
            text, rank = _write(operand, leaf, times=times)
            return f"-{_bracketed(text, bare=rank == _WHOLE)}", _SIGNED
        case Binary(Operator.OVER, left, right):
            over, under = (_write(side, leaf, times=times)[0] for side in (left, right))
            return f"frac({over}, {under})", _WHOLE
        case Binary(operator, left, right):
            sign, rank = _RANKS[operator]
            first, first_rank = _write(left, leaf, times=times)
            second, second_rank = _write(right, leaf, times=times)
            bare = second_rank == _WHOLE or (second_rank > rank and second_rank != _SIGNED)
            sides = _bracketed(first, bare=first_rank >= rank), _bracketed(second, bare=bare)
            return f" {times if operator is Operator.TIMES else sign} ".join(sides), rank
        case Call(function, arguments):
            texts = (_write(argument, leaf, times=times)[0] for argument in arguments)
            return f"{_FUNCTIONS[function]}({', '.join(texts)})", _WHOLE
        case Name() | Number() | Constant():
            return leaf(expression)


def _bracketed(text: str, *, bare: bool) -> str:
    return text if bare else f"({text})"
