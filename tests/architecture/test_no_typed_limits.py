"""No limit, factor or clause number is typed in a check: they come from the rule sets."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator

import pytest

from tests.architecture.source import Module, Offence, docstrings, found, hold, source_modules

ROOMS = ("backspan.core.checks", "backspan.core.sheet")
#: Counting, signs and nothing else.
PLAIN_NUMBERS = (0, 1)
#: A number with a unit, a ratio, or a number of a clause, as text.
LIMIT_IN_TEXT = re.compile(
    r"\d+\.\d+"
    r"|\d+:\d+"
    r"|\d\s*(?:ft|in|mm|cm|m|lb|lbf|kip|kg|N|kN|psf|psi|kPa|MPa|mph|deg|°|%|'|\")(?![A-Za-z0-9_-])"
    r"|§"
)


def typed_limits(module: Module) -> Iterator[Offence]:
    """Numbers other than 0 and 1, and texts that hold a limit or a clause."""
    if not any(module.within(room) for room in ROOMS):
        return
    described = docstrings(module.tree)
    for node in ast.walk(module.tree):
        if not isinstance(node, ast.Constant) or node in described:
            continue
        value = node.value
        if isinstance(value, bool):
            continue
        if isinstance(value, int | float | complex) and value not in PLAIN_NUMBERS:
            yield Offence(module.place, node.lineno, f"number {value!r} typed in a check")
        elif isinstance(value, str) and LIMIT_IN_TEXT.search(value):
            yield Offence(module.place, node.lineno, f"limit or clause {value!r} typed in a check")


def in_a_check(text: str) -> list[str]:
    """What the rule says about a made-up check."""
    return found(typed_limits, text, name="backspan.core.checks.made_up")


@pytest.mark.parametrize(
    ("text", "what"),
    [
        ("required = 4 * moment", "number 4 typed in a check"),
        ("limit = 0.5", "number 0.5 typed in a check"),
        ("step = -2", "number 2 typed in a check"),
        ("limit = parse('16 ft')", "limit or clause '16 ft' typed in a check"),
        ("limit = '4:1'", "limit or clause '4:1' typed in a check"),
        ("clause = '1926.451(a)(2)'", "limit or clause '1926.451(a)(2)' typed in a check"),
    ],
)
def test_a_typed_limit_is_seen(text: str, what: str) -> None:
    assert in_a_check(text) == [what]


def test_counting_signs_truth_and_names_are_no_limits() -> None:
    text = '"""Holds 4 times the load, see 1926.451(a)(2)."""\n'
    text += "x = (0, 1, -1, 0.0, 1.0, True, 'tipping', 'point 2 of drop', 'check-1')"
    assert in_a_check(text) == []


def test_the_frame_is_held_to_it_and_other_rooms_are_not() -> None:
    assert found(typed_limits, "limit = 4", name="backspan.core.sheet.decide") != []
    assert found(typed_limits, "limit = 4", name="backspan.core.mechanics.loads") == []


def test_no_check_types_a_limit() -> None:
    hold(typed_limits, source_modules())
