"""Unknown is NaN and goes through every sum: what would lose it is not written where sums are.

`max(4.0, nan)` is 4.0 and `nan < 4.0` is False, so that an unknown demand could come out as met.
core/numbers has ones that carry NaN, or say that they do not know.
"""

from __future__ import annotations

import ast
from collections.abc import Iterator

import pytest

from tests.architecture.source import Module, Offence, found, hold, source_modules

#: Where numbers of a rig are worked with; the rest of core/sheet handles NaN in the open.
ROOMS = (
    "backspan.core.checks",
    "backspan.core.mechanics",
    "backspan.core.sheet.beam_as_built",
    "backspan.core.sheet.beam_fits",
    "backspan.core.sheet.load_on_line",
    "backspan.core.sheet.moments",
    "backspan.core.sheet.stack",
)
LOSE_IT = {"max", "min", "round", "sorted"}
ORDERS = (ast.Lt, ast.LtE, ast.Gt, ast.GtE)


def unknown_lost(module: Module) -> Iterator[Offence]:
    """Built-ins and comparisons that give an answer although a number is unknown."""
    if not any(module.within(room) for room in ROOMS):
        return
    for node in ast.walk(module.tree):
        if isinstance(node, ast.Name) and node.id in LOSE_IT:
            yield Offence(module.place, node.lineno, f"{node.id} loses what is unknown")
        elif isinstance(node, ast.Compare):
            if any(isinstance(one, ORDERS) for one in node.ops):
                yield Offence(module.place, node.lineno, "comparison with what may be unknown")
            parts = [node.left, *node.comparators]
            if any(isinstance(one, ast.Constant) and type(one.value) is float for one in parts):
                yield Offence(module.place, node.lineno, "equal to a number that may be unknown")


@pytest.mark.parametrize(
    ("text", "what"),
    [
        ("x = max(4.0, y)", "max loses what is unknown"),
        ("x = list(map(min, y))", "min loses what is unknown"),
        ("x = round(y)", "round loses what is unknown"),
        ("x = sorted(y)", "sorted loses what is unknown"),
        ("x = y if y > z else z", "comparison with what may be unknown"),
        ("x = 0 <= y < z", "comparison with what may be unknown"),
        ("x = y == 0.0", "equal to a number that may be unknown"),
    ],
)
def test_what_loses_the_unknown_is_seen(text: str, what: str) -> None:
    assert found(unknown_lost, text, name="backspan.core.checks.made_up") == [what]
    assert found(unknown_lost, text, name="backspan.core.mechanics.made_up") == [what]
    assert found(unknown_lost, text, name="backspan.core.numbers") == []


def test_what_carries_it_is_allowed() -> None:
    text = "x = at_least(y, least=0.0) if surely_below(y, limit=z) else total(w)"
    assert found(unknown_lost, text, name="backspan.core.checks.made_up") == []
    assert found(unknown_lost, "x = y == 'a' and z != 0", name="backspan.core.checks.x") == []


def test_no_sum_loses_what_is_unknown() -> None:
    hold(unknown_lost, source_modules())
