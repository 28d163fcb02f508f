"""An expression worked out with numbers, and how exact the outcome can be."""

from __future__ import annotations

from collections.abc import Mapping

from backspan.core.numbers import root
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

# Room for a value that went through a unit conversion, or was written with 15 digits.
NUMBER_WITHIN = 1e-14
UNBOUNDED = float("inf")


def evaluate(expression: Expression, values: Mapping[str, float]) -> float:
    """The value of an expression, by the same operations in the same order as the formula.

    `values` are by parameter name; one under a constant's name stands in for the constant, as
    when it is counted in another unit. Raises ZeroDivisionError and NumberError as the formula
    does.
    """
    match expression:
        case Name(name):
            return values[name]
        case Number(value):
            return value
        case Constant(name, standard):
            return values.get(name, standard)
        case Negative(operand):
            return -evaluate(operand, values)
        case Binary(operator, left, right):
            return _operate(operator, evaluate(left, values), evaluate(right, values))
        case Call(function, arguments):
            return _call(function, tuple(evaluate(one, values) for one in arguments))


def error_bound(expression: Expression, values: Mapping[str, float]) -> float:
    """How far off the value can be when each of `values` is off by 1e-14 of itself.

    Infinite where a divisor may be zero. This is arithmetic noise, not the tolerance of a
    measurement: it is large only where large numbers cancel.
    """
    return _bounded(expression, values)[1]


def _operate(operator: Operator, left: float, right: float) -> float:
    match operator:
        case Operator.PLUS:
            return left + right
        case Operator.MINUS:
            return left - right
        case Operator.TIMES:
            return left * right
        case Operator.OVER:
            return left / right


def _call(function: Function, arguments: tuple[float, ...]) -> float:
    match function:
        case Function.ROOT:
            return root(arguments[0])
        case Function.LARGER:
            return max(arguments)
        case Function.SMALLER:
            return min(arguments)


def _bounded(expression: Expression, values: Mapping[str, float]) -> tuple[float, float]:
    match expression:
        case Name() | Constant():
            value = evaluate(expression, values)
            return value, NUMBER_WITHIN * abs(value)
        case Number(value):
            return value, 0.0
        case Negative(operand):
            value, error = _bounded(operand, values)
            return -value, error
        case Binary(operator, left, right):
            return _bounded_operation(operator, _bounded(left, values), _bounded(right, values))
        case Call(function, arguments):
            bounded = tuple(_bounded(one, values) for one in arguments)
            value = _call(function, tuple(one for one, _ in bounded))
            return value, _error_of_call(function, bounded)


def _bounded_operation(
    operator: Operator, left: tuple[float, float], right: tuple[float, float]
) -> tuple[float, float]:
    (a, a_error), (b, b_error) = left, right
    value = _operate(operator, a, b)
    match operator:
        case Operator.PLUS | Operator.MINUS:
            return value, a_error + b_error
        case Operator.TIMES:
            return value, abs(a) * b_error + abs(b) * a_error + a_error * b_error
        case Operator.OVER:
            room = abs(b) - b_error
            return value, (a_error + abs(value) * b_error) / room if room > 0 else UNBOUNDED


def _error_of_call(function: Function, bounded: tuple[tuple[float, float], ...]) -> float:
    if function is not Function.ROOT:
        # The least it can be and the most: what is far from deciding brings no error.
        found, least, most = (
            _call(function, tuple(value + sign * error for value, error in bounded))
            for sign in (0, -1, 1)
        )
        return max(found - least, most - found)
    value, error = bounded[0]
    return root(value + error) - root(max(0.0, value - error))
