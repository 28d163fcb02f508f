from __future__ import annotations

from collections.abc import Callable

import pytest

from backspan.core.numbers import root
from backspan.core.worked.expression import (
    Binary,
    Call,
    Constant,
    Function,
    Name,
    Negative,
    Number,
    Operator,
    SourceMissingError,
    WorkedError,
    from_source,
    from_text,
    leaves,
)

LIMIT = 2.5
SWITCH = True
WORD = "four"
lower = 3.0


def larger(first: float, second: float) -> float:
    return max(first, second)


def mean_of_two(*, first: float, second: float) -> float:
    """A docstring is no part of the expression."""
    return (first + second) / 2


def with_everything(*, a: float, b: float) -> float:
    return -a * LIMIT - larger(root(b), a)


def two_statements(*, a: float) -> float:
    b = a + a
    return b * b


def returns_nothing(*, a: float) -> None:
    """No expression at all."""


def bare_return() -> None:
    return


def power(*, a: float) -> float:
    return a**2


def decimal(*, a: float) -> float:
    return a * 0.5


def truth(*, a: float) -> float:
    return a * True


def other_name(*, a: float) -> float:
    return a * lower


def switch(*, a: float) -> float:
    return a * SWITCH


def word(*, a: float) -> str:
    return WORD * int(a)


def other_call(*, a: float) -> float:
    return abs(a)


def named_argument(*, a: float) -> float:
    return larger(a, second=a)


def one_argument(*, a: float) -> float:
    return larger(a)  # type: ignore[call-arg]  # the mistake under test


def branch(*, a: float) -> float:
    return a if a > 0 else -a


def test_a_return_expression_becomes_a_tree() -> None:
    expected = Binary(
        Operator.OVER, Binary(Operator.PLUS, Name("first"), Name("second")), Number(2)
    )
    assert from_source(mean_of_two) == expected


def test_signs_constants_and_calls_are_read() -> None:
    product = Binary(Operator.TIMES, Negative(Name("a")), Constant("LIMIT", 2.5))
    call = Call(Function.LARGER, (Call(Function.ROOT, (Name("b"),)), Name("a")))
    assert from_source(with_everything) == Binary(Operator.MINUS, product, call)


@pytest.mark.parametrize(
    ("function", "what"),
    [
        (two_statements, r"two_statements: a formula is a function of one return expression"),
        (returns_nothing, "one return expression"),
        (bare_return, "one return expression"),
        (power, r"'a \*\* 2' cannot stand in a formula; there are parameters"),
        (decimal, r"'0\.5' cannot stand in a formula"),
        (truth, "'True' cannot stand in a formula"),
        (other_name, "'lower' is neither a parameter nor a constant"),
        (switch, "'SWITCH' is neither a parameter nor a constant"),
        (word, "'WORD' is neither a parameter nor a constant"),
        (other_call, r"'abs\(a\)' cannot stand in a formula"),
        (named_argument, r"'larger\(a, second=a\)' cannot stand in a formula"),
        (one_argument, "larger takes 2, not 1"),
        (branch, "cannot stand in a formula"),
    ],
)
def test_what_is_no_formula_is_refused_by_name(function: Callable[..., object], what: str) -> None:
    with pytest.raises(WorkedError, match=what):
        from_source(function)


def test_an_error_names_module_and_function() -> None:
    with pytest.raises(WorkedError, match=rf"{__name__}\.power: "):
        from_source(power)


def test_a_lambda_is_no_formula() -> None:
    half: Callable[..., float] = lambda a: a / 2  # noqa: E731 the shape under test
    with pytest.raises(WorkedError, match="one return expression"):
        from_source(half)


def test_a_function_without_source_says_so() -> None:
    made: dict[str, Callable[..., float]] = {}
    exec("def double(*, a):\n    return a * 2\n", made)  # noqa: S102 a function with no file
    with pytest.raises(SourceMissingError, match=r"double: the source is not at hand"):
        from_source(made["double"])


def test_a_built_in_function_has_no_source() -> None:
    with pytest.raises(SourceMissingError, match="the source is not at hand"):
        from_source(abs)


def test_text_of_the_table_is_read_like_source() -> None:
    text = "-a * LIMIT - larger(root(b), a)"
    read = from_text(text, parameters=("a", "b"), constants=globals(), place="table")
    assert read == from_source(with_everything)


def test_text_that_is_no_expression_is_refused_with_its_place() -> None:
    with pytest.raises(WorkedError, match=r"table, made_up: 'a \+' is not an expression"):
        from_text("a +", parameters=("a",), constants={}, place="table, made_up")


def test_leaves_come_from_left_to_right_with_repeats() -> None:
    assert list(leaves(from_source(with_everything))) == [
        Name("a"),
        Constant("LIMIT", 2.5),
        Name("b"),
        Name("a"),
    ]
