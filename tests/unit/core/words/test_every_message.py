"""Every message the core can send has a sentence with exactly its values, and none is idle."""

from __future__ import annotations

import ast
import functools
import re
import string
from collections.abc import Iterator, Mapping

import pytest

from backspan.core.findings import DoesNotApply, Finding, Message
from backspan.core.quantities import Style
from backspan.core.quantities.named import QUANTITIES
from backspan.core.review import review
from backspan.core.words import ENGLISH, language_of, say
from backspan.core.words.english import CHECKS, INPUTS, MARGINS, SENTENCES
from backspan.core.words.say import NO_NAME, WORD_VALUES
from tests.architecture.source import SRC, read_module
from tests.unit.core.rigs import (
    LIBRARY,
    ON,
)
from tests.unit.core.words.many_rigs import RIGS

ROOMS = ("sheet", "checks", "review")
TREES = [
    read_module(path, under=SRC).tree
    for room in ROOMS
    for path in sorted((SRC / "backspan" / "core" / room).rglob("*.py"))
]


def first_arguments(called: str) -> Iterator[ast.expr]:
    """The first argument of every call of that name."""
    for tree in TREES:
        for node in ast.walk(tree):
            if not isinstance(node, ast.Call) or not node.args:
                continue
            if isinstance(node.func, ast.Name) and node.func.id == called:
                yield node.args[0]


def ids(node: ast.expr) -> Iterator[str]:
    """The ids an argument can be, as patterns."""
    if isinstance(node, ast.Constant):
        yield re.escape(str(node.value))
    elif isinstance(node, ast.IfExp):
        yield from ids(node.body)
        yield from ids(node.orelse)
    elif isinstance(node, ast.JoinedStr):
        parts = (
            re.escape(str(part.value)) if isinstance(part, ast.Constant) else r"[a-z-]+"
            for part in node.values
        )
        yield "".join(parts)


MESSAGES = sorted({one for node in first_arguments("Message") for one in ids(node)})


def places(sentence: str) -> set[str]:
    """The names of the values a sentence shows."""
    return {name for _, name, _, _ in string.Formatter().parse(sentence) if name}


@functools.cache
def sent() -> tuple[Message, ...]:
    """The messages of the reviews of all these rigs, each once; asked for when a test needs them.

    Reviewing so many rigs takes long, and whoever only lists the tests does not need it.
    """
    return tuple(dict.fromkeys(all_sent()))


@functools.cache
def sent_as() -> Mapping[str, tuple[Message, ...]]:
    """These messages by their id."""
    found: dict[str, list[Message]] = {}
    for message in sent():
        found.setdefault(message.id, []).append(message)
    return {name: tuple(messages) for name, messages in found.items()}


def all_sent() -> Iterator[Message]:
    """The messages as they come."""
    for rig in RIGS:
        made = review(rig, "D", LIBRARY, on=ON)
        for answer in made.topics:
            yield from answer.notes
            yield from () if answer.taken_over is None else (answer.taken_over,)
        for one in (*made.findings, *made.not_applicable):
            if isinstance(one, DoesNotApply):
                yield one.reason
            elif isinstance(one, Finding):
                yield one.message
                yield from one.notes
                yield from (need.what for need in one.needs)
        yield from (row.reason for row in made.comparison if row.reason is not None)


SPANISH = language_of("es")


def test_messages_are_found_in_the_source() -> None:
    assert len(MESSAGES) > 40


@pytest.mark.parametrize("pattern", MESSAGES)
def test_a_message_of_the_source_has_a_sentence(pattern: str) -> None:
    assert [name for name in SENTENCES if re.fullmatch(pattern, name)]


@pytest.mark.slow
@pytest.mark.long
@pytest.mark.parametrize("name", SENTENCES)
def test_a_sentence_is_said_somewhere_with_all_its_values(name: str) -> None:
    carried = [dict(message.values) for message in sent_as().get(name, ())]
    assert carried, "no rig of this file brings it up"
    for values in carried:
        assert places(SENTENCES[name]) <= set(values)


@pytest.mark.slow
@pytest.mark.long
def test_every_message_that_was_sent_has_a_sentence() -> None:
    assert {message.id for message in sent()} <= set(SENTENCES)


def told_words(message: Message) -> Iterator[tuple[str, str]]:
    """The texts a message carries, each with the name of its value."""
    for name, value in message.values:
        if isinstance(value, str | tuple):
            yield from ((name, one) for one in ([value] if isinstance(value, str) else value))


@pytest.mark.slow
@pytest.mark.long
def test_every_message_that_was_sent_is_said_in_spanish() -> None:
    for message in sent():
        spanish = say(message, Style.US, language=SPANISH)
        assert spanish != say(message, Style.US, language=ENGLISH), message


@pytest.mark.slow
@pytest.mark.long
def test_a_word_that_was_sent_has_a_spanish_one_or_is_a_persons_own() -> None:
    sent_words = {
        one for message in sent() for name, one in told_words(message) if name in WORD_VALUES
    }
    assert sent_words - set(SPANISH.words) == {"", "painter"}


@pytest.mark.slow
@pytest.mark.long
def test_a_word_of_the_model_is_sent_under_a_name_that_is_put_into_words() -> None:
    under = {
        name for message in sent() for name, one in told_words(message) if one in SPANISH.words
    }
    unnamed = {name for message in sent() for name, one in told_words(message) if one in NO_NAME}
    assert under - unnamed - {"input", "inputs"} <= WORD_VALUES


def constants() -> set[str]:
    """Every text constant of these rooms."""
    return {
        node.value
        for tree in TREES
        for node in ast.walk(tree)
        if isinstance(node, ast.Constant) and isinstance(node.value, str)
    }


def test_every_margin_of_the_source_has_words_and_no_words_are_idle() -> None:
    made = {one for node in first_arguments("Margin") for one in ids(node)}
    assert made
    for pattern in made:
        assert [name for name in MARGINS if re.fullmatch(pattern, name)]
    prefixes = tuple(text for text in constants() if text.endswith("-") and len(text) > 1)
    idle = [name for name in MARGINS if name not in constants() and not name.startswith(prefixes)]
    assert idle == []


#: Words a project file may state that no check reads yet.
AWAITED = {"connector", "connectors", "damage", "end_stop", "pin", "saddle", "thimble", "tightened"}


def test_no_words_for_inputs_or_checks_are_idle() -> None:
    told_by_row = {one.name for one in QUANTITIES.values() if one.record or one.asked}
    assert set(INPUTS) - told_by_row - AWAITED <= constants()
    assert set(CHECKS) <= constants()
