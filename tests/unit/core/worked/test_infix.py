from __future__ import annotations

import pytest

from backspan.core.worked.expression import (
    Expression,
    Function,
    Name,
    Operator,
    from_text,
)
from backspan.core.worked.infix import Leaf, LeafText, Signs, infix, source_text

SIGNS = Signs(
    {Operator.PLUS: "+", Operator.MINUS: "-", Operator.TIMES: "×", Operator.OVER: "/"},
    {Function.ROOT: "√", Function.LARGER: "max", Function.SMALLER: "min"},
)


def read(text: str) -> Expression:
    return from_text(text, parameters="abcd", constants={}, place="test")


@pytest.mark.parametrize(
    "text",
    [
        "a",
        "2",
        "a + b - c",
        "a - (b - c)",
        "a + (b + c)",
        "a * b / c",
        "a * (b / c)",
        "a / (b * c)",
        "a / (b / c)",
        "(a + b) * c",
        "a + b * c",
        "a - b * c / d",
        "(a - b) / (c + d)",
        "-a * b",
        "a * (-b)",
        "-(a * b)",
        "-(a + b)",
        "-(-a)",
        "a - (-b)",
        "-a - b",
        "root(a + b) * c",
        "larger(a, b - c) / smaller(a, 2)",
        "-root(a)",
    ],
)
def test_the_text_is_the_source_with_no_bracket_more_or_less(text: str) -> None:
    assert source_text(read(text)) == text


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("a * b", "-3 m × (-3 m)"),
        ("a + b", "-3 m + (-3 m)"),
        ("c - a", "5 lb/ft - (-3 m)"),
        ("-a", "-(-3 m)"),
        ("a / c", "-3 m / (5 lb/ft)"),
        ("a * c", "-3 m × 5 lb/ft"),
        ("c / a", "5 lb/ft / (-3 m)"),
        ("a / (c * b)", "-3 m / (5 lb/ft × (-3 m))"),
        ("root(a)", "√(-3 m)"),
        ("(a + c) * 2", "(-3 m + 5 lb/ft) × 2"),
    ],
)
def test_numbers_get_brackets_where_their_sign_or_unit_would_mislead(
    text: str, expected: str
) -> None:
    def numbers(leaf: Leaf) -> LeafText:
        if not isinstance(leaf, Name):
            return LeafText("2")
        if leaf.name == "c":
            return LeafText("5 lb/ft", divides_badly=True)
        return LeafText("-3 m", negative=True)

    assert infix(read(text), SIGNS, numbers) == expected
