"""A recorded formula is one expression with a source and known names.

What is printed on a sheet is read from the function itself, so it must be one return expression;
its docstring says which publication it comes from; each name it takes is on the nomenclature page.
"""

from __future__ import annotations

import ast
import re
from collections.abc import Callable, Iterator

import pytest

from tests.architecture.source import (
    ROOT,
    FunctionNode,
    Module,
    Offence,
    found,
    functions,
    hold,
    source_modules,
)

ROOM = "backspan.core.mechanics"
NOMENCLATURE = ROOT / "docs" / "nomenclature.md"
SOURCE_LINE = re.compile(r"^Source: \S", re.MULTILINE)
TABLE_ROW = re.compile(r"^\|\s*`?(\w+)`?\s*\|", re.MULTILINE)


def terms(page: str) -> frozenset[str]:
    """The names in the first column of the page's tables."""
    return frozenset(TABLE_ROW.findall(page))


def is_formula(function: FunctionNode) -> bool:
    """Whether `@formula` or `@formula(...)` stands over the function."""
    called = [one.func if isinstance(one, ast.Call) else one for one in function.decorator_list]
    return any(
        (isinstance(one, ast.Name) and one.id == "formula")
        or (isinstance(one, ast.Attribute) and one.attr == "formula")
        for one in called
    )


def parameters(function: FunctionNode) -> list[str]:
    """The names of all parameters."""
    given = function.args
    named = [*given.posonlyargs, *given.args, *given.kwonlyargs]
    rest = [one for one in (given.vararg, given.kwarg) if one is not None]
    return [one.arg for one in [*named, *rest]]


def problems(function: FunctionNode, known: frozenset[str]) -> Iterator[str]:
    """What is wrong with one formula."""
    if not SOURCE_LINE.search(ast.get_docstring(function) or ""):
        yield "has no line `Source: ...` in its docstring"
    rest = function.body[1:] if ast.get_docstring(function) is not None else function.body
    if len(rest) != 1 or not isinstance(rest[0], ast.Return) or rest[0].value is None:
        yield "is not one return expression"
    names = parameters(function)
    if names != [one.arg for one in function.args.kwonlyargs]:
        yield "takes parameters that are not keyword-only"
    yield from (f"takes {name}, not in docs/nomenclature.md" for name in names if name not in known)


def formulas_that_break(known: frozenset[str]) -> Callable[[Module], Iterator[Offence]]:
    """The rule over formulas, given the names on the nomenclature page."""

    def rule(module: Module) -> Iterator[Offence]:
        if not module.within(ROOM):
            return
        for function in functions(module):
            if is_formula(function):
                for problem in problems(function, known):
                    yield Offence(module.place, function.lineno, f"{function.name} {problem}")

    return rule


KNOWN = terms("| name | symbol | unit |\n|---|---|---|\n| `load` | P | N |\n| reach | a | m |\n")
GOOD = '''
@formula(symbol="M")
def moment(*, load: Force, reach: Length) -> Moment:
    """Moment of a load.

    Source: statics.
    """
    return load * reach
'''


def in_mechanics(text: str) -> list[str]:
    """What the rule says about a made-up formula."""
    return found(formulas_that_break(KNOWN), text, name="backspan.core.mechanics.made_up")


def test_names_are_read_from_the_first_column_of_the_tables() -> None:
    assert {"load", "reach"} <= KNOWN
    assert "symbol" not in KNOWN


def test_a_good_formula_is_left_alone() -> None:
    assert in_mechanics(GOOD) == []


@pytest.mark.parametrize(
    ("before", "after", "what"),
    [
        ("Source: statics.", "From statics.", "moment has no line `Source: ...` in its docstring"),
        ("Source: statics.", "Source:", "moment has no line `Source: ...` in its docstring"),
        (
            "return load * reach",
            "x = load\n    return x * reach",
            "moment is not one return expression",
        ),
        ("return load * reach", "return", "moment is not one return expression"),
        ("*, load", "load", "moment takes parameters that are not keyword-only"),
        ("reach", "arm", "moment takes arm, not in docs/nomenclature.md"),
    ],
)
def test_a_bad_formula_is_seen(before: str, after: str, what: str) -> None:
    assert what in in_mechanics(GOOD.replace(before, after))


@pytest.mark.parametrize("decorator", ["@formula", "@worked.formula(symbol='M')"])
def test_a_formula_is_known_however_it_is_decorated(decorator: str) -> None:
    assert in_mechanics(f"{decorator}\ndef f(*, load):\n    return load\n") != []


def test_a_plain_function_of_mechanics_is_no_formula() -> None:
    assert in_mechanics("def pick(a, b):\n    x = a\n    return x\n") == []


def test_every_formula_is_one_sourced_expression_of_known_names() -> None:
    page = NOMENCLATURE.read_text(encoding="utf-8")
    hold(formulas_that_break(terms(page)), source_modules())
