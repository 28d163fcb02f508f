"""Terminal and papers print a review from its data; neither reads or words a finding itself."""

from __future__ import annotations

import ast
from collections.abc import Iterator

import pytest

from tests.architecture.source import Module, Offence, found, hold, source_modules

ROOMS = ("backspan.cli", "backspan.papers")
#: What a printed form may take from there. The answers have signs and an order.
ALLOWED = {
    "backspan.core.findings": frozenset({"Verdict", "WORST_FIRST"}),
    "backspan.core.words": frozenset(
        {"ENGLISH", "Language", "SIGNS", "english", "language_of", "say_verdict"}
    ),
    "backspan.core.worked.lines": frozenset[str](),
}
#: Reviews pass through on their way to the drawings; a question has margins of its own.
PASS_ON = {
    "backspan.cli.package": frozenset({"Review"}),
    "backspan.cli.review_command": frozenset({"Review"}),
    "backspan.cli.running": frozenset({"WordsError"}),
    "backspan.cli.ask_command": frozenset({"say_margins"}),
}


def read_by_itself(module: Module) -> Iterator[Offence]:
    """Imports by which terminal or papers would word a finding a second time."""
    if not any(module.within(room) for room in ROOMS):
        return
    more = PASS_ON.get(module.name, frozenset())
    for node in ast.walk(module.tree):
        if isinstance(node, ast.ImportFrom) and node.module in ALLOWED:
            for name in node.names:
                if name.name not in ALLOWED[node.module] | more:
                    yield Offence(module.place, node.lineno, f"{name.name}: read the data")


@pytest.mark.parametrize("room", ROOMS)
@pytest.mark.parametrize(
    "text",
    [
        "from backspan.core.findings import Finding",
        "from backspan.core.words import say",
        "def f():\n    from backspan.core.worked.lines import worked_line as say",
    ],
)
def test_a_second_form_of_a_finding_is_seen(room: str, text: str) -> None:
    (what,) = found(read_by_itself, text, name=f"{room}.made_up")
    assert what.endswith("read the data")


def test_a_finding_is_put_into_words_in_one_place() -> None:
    hold(read_by_itself, source_modules())
