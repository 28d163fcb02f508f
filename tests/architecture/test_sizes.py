"""A file is one idea and a function fits a screen."""

from __future__ import annotations

import ast
from collections.abc import Iterator

from tests.architecture.source import (
    FunctionNode,
    Module,
    Offence,
    found,
    functions,
    hold,
    modules_in,
)

MOST_LINES_OF_A_FILE = 400
MOST_LINES_OF_A_FUNCTION = 60


def lines_without_docstring(function: FunctionNode) -> int:
    """Lines of a function from `def` to its end, its docstring not counted."""
    lines = (function.end_lineno or function.lineno) - function.lineno + 1
    if ast.get_docstring(function) is None:
        return lines
    described = function.body[0]
    return lines - ((described.end_lineno or described.lineno) - described.lineno + 1)


def too_long(module: Module) -> Iterator[Offence]:
    """The file if it is too long, and its functions that are."""
    lines = len(module.text.splitlines())
    if lines > MOST_LINES_OF_A_FILE:
        what = f"{lines} lines, at most {MOST_LINES_OF_A_FILE}"
        yield Offence(module.place, 1, what)
    for function in functions(module):
        lines = lines_without_docstring(function)
        if lines > MOST_LINES_OF_A_FUNCTION:
            what = f"{function.name} has {lines} lines, at most {MOST_LINES_OF_A_FUNCTION}"
            yield Offence(module.place, function.lineno, what)


def made_up(*, statements: int, docstring_lines: int = 0) -> str:
    """A function of so many statements under a docstring of so many lines."""
    described = ['    """Text.', *["    more"] * (docstring_lines - 2), '    """']
    return "\n".join(
        ["def f():", *(described if docstring_lines else []), *["    x = 1"] * statements]
    )


def test_a_file_of_too_many_lines_is_seen() -> None:
    assert found(too_long, "x = 1\n" * 400) == []
    assert found(too_long, "x = 1\n" * 401) == ["401 lines, at most 400"]


def test_a_function_of_too_many_lines_is_seen() -> None:
    assert found(too_long, made_up(statements=59)) == []
    assert found(too_long, made_up(statements=60)) == ["f has 61 lines, at most 60"]


def test_the_docstring_of_a_function_is_not_counted() -> None:
    assert found(too_long, made_up(statements=59, docstring_lines=100)) == []
    assert found(too_long, made_up(statements=60, docstring_lines=100)) != []


def test_files_and_functions_are_short() -> None:
    hold(too_long, modules_in("src", "tests", "tools", "benchmarks"))
