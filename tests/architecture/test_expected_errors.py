"""Error text is public: a test that expects an error says which one."""

from __future__ import annotations

import ast
from collections.abc import Iterator

import pytest

from tests.architecture.source import Module, Offence, found, hold, modules_in

EXPECTING = frozenset({"raises", "warns"})


def is_expecting(called: ast.expr) -> bool:
    """Whether this is `pytest.raises`, `pytest.warns`, or either under its own name."""
    if isinstance(called, ast.Attribute):
        holder = called.value
        return called.attr in EXPECTING and isinstance(holder, ast.Name) and holder.id == "pytest"
    return isinstance(called, ast.Name) and called.id in EXPECTING


def errors_without_text(module: Module) -> Iterator[Offence]:
    """Expected errors without `match=`."""
    for node in ast.walk(module.tree):
        if not isinstance(node, ast.Call) or not is_expecting(node.func):
            continue
        if not any(keyword.arg == "match" for keyword in node.keywords):
            yield Offence(module.place, node.lineno, "expected error without match=")


@pytest.mark.parametrize(
    "text",
    [
        "with pytest.raises(ValueError):\n    f()",
        "with pytest.raises(ValueError) as caught:\n    f()",
        "with raises(ValueError):\n    f()",
        "pytest.raises(ValueError, f)",
        "with pytest.warns(UserWarning):\n    f()",
    ],
)
def test_an_expected_error_without_its_text_is_seen(text: str) -> None:
    assert found(errors_without_text, text) == ["expected error without match="]


@pytest.mark.parametrize(
    "text",
    [
        "with pytest.raises(ValueError, match='whole'):\n    f()",
        "@rule.raises(ValueError)\ndef f(): ...",
    ],
)
def test_an_expected_error_with_its_text_is_fine(text: str) -> None:
    assert found(errors_without_text, text) == []


def test_every_expected_error_says_its_text() -> None:
    hold(errors_without_text, modules_in("tests", "benchmarks"))
