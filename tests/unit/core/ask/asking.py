"""Asks topics as the command line does, and reads their answers."""

from __future__ import annotations

import datetime
from collections.abc import Sequence

from backspan.core.ask import Answer, answer, read_values, topic_of
from backspan.core.model.basis import Confirmation
from backspan.core.quantities import Amount, Style
from backspan.exchange.files import load_rule_library

LIBRARY = load_rule_library()
ON = datetime.date(2026, 11, 25)
POUND = 0.45359237
POUND_FORCE = 4.4482216152605
FOOT = 0.3048
INCH = 0.0254


def ask(
    topic: str,
    *words: str,
    style: Style = Style.US,
    confirmations: Sequence[Confirmation] = (),
) -> Answer:
    """The answer of a topic to `name=value` words."""
    found = topic_of(topic)
    values = read_values(found, words)
    return answer(found, values, LIBRARY, style=style, on=ON, confirmations=confirmations)


def amount(found: Answer, line: str) -> float:
    """The number of a line, SI."""
    (value,) = (one.value for one in found.lines if one.id == line)
    assert isinstance(value, Amount)
    return value.value


def count(found: Answer, line: str) -> int:
    """The whole number of a line."""
    (value,) = (one.value for one in found.lines if one.id == line)
    assert isinstance(value, int)
    return value


def ids(found: Answer) -> set[str]:
    """The ids of an answer's lines."""
    return {one.id for one in found.lines}


def notes(found: Answer) -> set[str]:
    """The ids of an answer's notes."""
    return {one.id for one in found.notes}


def wanted(found: Answer) -> set[object]:
    """The parameters that would settle an answer."""
    return {dict(need.what.values).get("parameter") for need in found.needs}
