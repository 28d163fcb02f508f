"""The expression of a formula as a tree, read from the formula's own source.

A formula is one return expression of its parameters, small whole numbers, named constants, the
four operations, a minus sign and a few calls. The tree keeps the order in which they are worked
out, so evaluating it makes the same float as the function.
"""

from __future__ import annotations

import ast
import inspect
import textwrap
from collections.abc import Callable, Collection, Iterator, Mapping
from dataclasses import dataclass
from enum import StrEnum
from typing import Any

from backspan.core.errors import BackspanError


class WorkedError(BackspanError, ValueError):
    """A formula or a step from which no text can be made; names the formula."""


class SourceMissingError(WorkedError):
    """The source of a formula is not at hand, as where only compiled files are shipped."""


class Operator(StrEnum):
    """An operation between two expressions."""

    PLUS = "+"
    MINUS = "-"
    TIMES = "*"
    OVER = "/"


class Function(StrEnum):
    """A function an expression may call."""

    ROOT = "root"
    LARGER = "larger"
    SMALLER = "smaller"


@dataclass(frozen=True, slots=True)
class Name:
    """A parameter of the formula."""

    name: str


@dataclass(frozen=True, slots=True)
class Number:
    """A whole number written in the formula."""

    value: int


@dataclass(frozen=True, slots=True)
class Constant:
    """A constant the formula names, with its value in SI."""

    name: str
    value: float


@dataclass(frozen=True, slots=True)
class Negative:
    """An expression with a minus sign in front."""

    operand: Expression


@dataclass(frozen=True, slots=True)
class Binary:
    """Two expressions and the operation between them."""

    operator: Operator
    left: Expression
    right: Expression


@dataclass(frozen=True, slots=True)
class Call:
    """A function of expressions."""

    function: Function
    arguments: tuple[Expression, ...]


Expression = Name | Number | Constant | Negative | Binary | Call

_OPERATORS: Mapping[type[ast.operator], Operator] = {
    ast.Add: Operator.PLUS,
    ast.Sub: Operator.MINUS,
    ast.Mult: Operator.TIMES,
    ast.Div: Operator.OVER,
}
_ARGUMENTS: Mapping[Function, int] = {
    Function.ROOT: 1,
    Function.LARGER: 2,
    Function.SMALLER: 2,
}


def from_source(function: Callable[..., Any]) -> Expression:
    """The expression that `function` returns, read from its source.

    Raises SourceMissingError when there is no source to read, WorkedError when the function is
    not one return expression of the kind described above.
    """
    place = f"{function.__module__}.{function.__qualname__}"
    try:
        source = inspect.getsource(function)
    except (OSError, TypeError) as error:
        raise SourceMissingError(f"{place}: the source is not at hand ({error})") from error
    statements = ast.parse(textwrap.dedent(source)).body
    body = statements[0].body if isinstance(statements[0], ast.FunctionDef) else []
    if body and _is_text(body[0]):
        body = body[1:]
    if len(body) != 1 or not isinstance(body[0], ast.Return) or body[0].value is None:
        raise WorkedError(f"{place}: a formula is a function of one return expression")
    parameters = inspect.signature(function).parameters
    return _Reader(place, parameters, function.__globals__).read(body[0].value)


def from_text(
    text: str, *, parameters: Collection[str], constants: Mapping[str, Any], place: str
) -> Expression:
    """The expression written in `text`, as the table of formulas holds it.

    `place` is named in errors. Raises WorkedError when the text is no such expression.
    """
    try:
        node = ast.parse(text, mode="eval").body
    except SyntaxError as error:
        raise WorkedError(f"{place}: {text!r} is not an expression ({error.msg})") from error
    return _Reader(place, parameters, constants).read(node)


def leaves(expression: Expression) -> Iterator[Name | Number | Constant]:
    """The names, numbers and constants of an expression from left to right, repeats included."""
    match expression:
        case Negative(operand):
            yield from leaves(operand)
        case Binary(_, left, right):
            yield from leaves(left)
            yield from leaves(right)
        case Call(_, arguments):
            for argument in arguments:
                yield from leaves(argument)
        case _:
            yield expression


def _is_text(statement: ast.stmt) -> bool:
    return (
        isinstance(statement, ast.Expr)
        and isinstance(statement.value, ast.Constant)
        and isinstance(statement.value.value, str)
    )


@dataclass(frozen=True, slots=True)
class _Reader:
    place: str
    parameters: Collection[str]
    constants: Mapping[str, Any]

    def read(self, node: ast.expr) -> Expression:
        match node:
            case ast.Name(id=name):
                return Name(name) if name in self.parameters else self._constant(name)
            case ast.Constant(value=value) if type(value) is int:
                return Number(value)
            case ast.UnaryOp(op=ast.USub(), operand=operand):
                return Negative(self.read(operand))
            case ast.BinOp(op=operator) if type(operator) in _OPERATORS:
                sides = self.read(node.left), self.read(node.right)
                return Binary(_OPERATORS[type(operator)], *sides)
            case ast.Call(func=ast.Name(id=name), keywords=[]) if name in tuple(Function):
                return self._call(Function(name), node.args)
            case _:
                raise WorkedError(
                    f"{self.place}: {ast.unparse(node)!r} cannot stand in a formula; there are "
                    "parameters, whole numbers, named constants, + - * /, "
                    f"and the calls {', '.join(Function)}"
                )

    def _call(self, function: Function, arguments: list[ast.expr]) -> Call:
        if len(arguments) != _ARGUMENTS[function]:
            raise WorkedError(
                f"{self.place}: {function} takes {_ARGUMENTS[function]}, not {len(arguments)}"
            )
        return Call(function, tuple(self.read(argument) for argument in arguments))

    def _constant(self, name: str) -> Constant:
        value = self.constants.get(name)
        if not name.isupper() or not isinstance(value, int | float) or isinstance(value, bool):
            raise WorkedError(f"{self.place}: {name!r} is neither a parameter nor a constant")
        return Constant(name, float(value))
