"""An expression as one line of text, with brackets where the order of working needs them."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass

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

Leaf = Name | Number | Constant

_SUM, _PRODUCT, _SIGNED, _WHOLE = range(1, 5)


@dataclass(frozen=True, slots=True)
class Signs:
    """How the operations and calls are written."""

    operators: Mapping[Operator, str]
    functions: Mapping[Function, str]


@dataclass(frozen=True, slots=True)
class LeafText:
    """A leaf as text; `divides_badly` where it cannot stand bare after a division sign."""

    text: str
    negative: bool = False
    divides_badly: bool = False


def infix(expression: Expression, signs: Signs, leaf: Callable[[Leaf], LeafText]) -> str:
    """The text of an expression; read back, it is the same tree.

    Brackets stand round a right-hand side of equal rank, so that the order of working is kept,
    and round a negative number anywhere but at the start of its side.
    """
    return _write(expression, signs, leaf)[0]


def source_text(expression: Expression) -> str:
    """The expression as the formula's source has it, for the table of formulas."""
    return infix(expression, _SOURCE, lambda leaf: LeafText(_as_in_source(leaf)))


_SOURCE = Signs({one: str(one) for one in Operator}, {one: str(one) for one in Function})


def _as_in_source(leaf: Leaf) -> str:
    return str(leaf.value) if isinstance(leaf, Number) else leaf.name


def _write(
    expression: Expression, signs: Signs, leaf: Callable[[Leaf], LeafText]
) -> tuple[str, int, bool]:
    """Text, rank, and whether it needs brackets behind a division sign."""
    match expression:
        case Negative(operand):
            text, rank, _ = _write(operand, signs, leaf)
            return f"-{_bracketed(text, bare=rank == _WHOLE)}", _SIGNED, False
        case Binary(operator, left, right):
            rank = _SUM if operator in {Operator.PLUS, Operator.MINUS} else _PRODUCT
            first, first_rank, _ = _write(left, signs, leaf)
            second, second_rank, divides_badly = _write(right, signs, leaf)
            bare = second_rank == _WHOLE or (second_rank > rank and second_rank != _SIGNED)
            bare = bare and not (divides_badly and operator is Operator.OVER)
            sides = _bracketed(first, bare=first_rank >= rank), _bracketed(second, bare=bare)
            return f" {signs.operators[operator]} ".join(sides), rank, False
        case Call(function, arguments):
            texts = (_write(argument, signs, leaf)[0] for argument in arguments)
            return f"{signs.functions[function]}({', '.join(texts)})", _WHOLE, False
        case Name() | Number() | Constant():
            written = leaf(expression)
            rank = _SIGNED if written.negative else _WHOLE
            return written.text, rank, written.divides_badly


def _bracketed(text: str, *, bare: bool) -> str:
    return text if bare else f"({text})"
