"""Every state, reason and kind of entry of the ledger has its own words in every language."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Mapping
from dataclasses import replace
from enum import StrEnum

import pytest

from backspan.core.ledger.drop_states import Event, Refusal, State
from backspan.core.ledger.kinds import KINDS
from backspan.core.ledger.standing import Why
from backspan.core.words import (
    ENGLISH,
    LANGUAGES,
    Language,
    WordsError,
    language_of,
    say_event,
    say_kind,
    say_state,
    say_state_meaning,
)

SPANISH = language_of("es")
EVERY = pytest.mark.parametrize("language", LANGUAGES.values(), ids=list(LANGUAGES))
NAMES = {kind for kind, _ in KINDS}

#: A table of the record, and the words of the ledger that it is asked for.
TABLES: dict[str, Iterable[str]] = {
    "states": State,
    "state_meanings": State,
    "events": Event,
    "reasons": (*Why, *Refusal),
    "entry_titles": NAMES,
}
#: Words of four letters and more that are the same in both languages.
COGNATES = {"plan"}


def told(language: Language) -> Iterable[str]:
    """Every text of the record."""
    for table in (*TABLES, "entry_lines"):
        found: Mapping[str, str] = getattr(language, table)
        yield from found.values()
    yield from (text for name, text in language.phrases.items() if name.startswith("record-"))


def words(language: Language) -> set[str]:
    """The words of all those texts, without the names of values."""
    text = " ".join(re.sub(r"\{\w+\}", " ", one) for one in told(language)).casefold()
    return {one for one in re.findall(r"\w+", text) if len(one) > 3}


@EVERY
@pytest.mark.parametrize("table", TABLES)
def test_every_word_of_the_ledger_has_words_of_its_own_and_no_text_is_idle(
    table: str, language: Language
) -> None:
    found = getattr(language, table)
    assert set(found) == {str(one) for one in TABLES[table]}
    assert len(set(found.values())) == len(found)


@EVERY
def test_every_kind_has_a_line_and_every_line_a_kind(language: Language) -> None:
    lines = language.entry_lines
    assert {name.split("/")[0] for name in lines} == NAMES
    assert set(lines) >= NAMES
    assert len(set(lines.values())) >= len(lines) - 4  # a number, a count and a word are told alike


@EVERY
@pytest.mark.parametrize("why", [*Why, *Refusal])
def test_a_reason_says_why_and_what_settles_it(why: StrEnum, language: Language) -> None:
    sentences = language.reason(why, by="this").split(". ")
    assert len(sentences) == 2
    assert sentences[-1].endswith(".")


def test_no_reason_of_the_table_of_states_is_also_one_besides_it() -> None:
    assert not {str(one) for one in Why} & {str(one) for one in Refusal}


@pytest.mark.parametrize("state", State)
def test_every_state_but_one_tells_that_nobody_rides(state: State) -> None:
    for language, nobody in ((ENGLISH, "nobody rides"), (SPANISH, "nadie sube")):
        meaning = say_state_meaning(state, language=language).casefold()
        assert (nobody in meaning) is (state is not State.IN_SERVICE)


def test_the_spanish_has_no_english_left_in_it() -> None:
    assert words(ENGLISH) & words(SPANISH) <= COGNATES
    english = re.compile(
        r"\b(?:the|of|and|is|are|it|use|drop|rig|by|at|in|not|to)\b", re.IGNORECASE
    )
    assert [text for text in told(SPANISH) if english.search(re.sub(r"\{\w+\}", "", text))] == []


def test_states_and_kinds_are_told_by_their_titles() -> None:
    assert say_state(State.IN_SERVICE) == "in service"
    assert say_state(State.IN_SERVICE, language=SPANISH) == "en servicio"
    assert say_kind("use stopped") == "stop of use"
    assert say_kind("use stopped", language=SPANISH) == "parada del uso"
    assert say_event(Event.STOPPED, language=SPANISH) == "se paró el uso"
    assert say_state_meaning(State.MOVING).startswith("A rig is on its way here")


@pytest.mark.parametrize(
    ("say", "message"),
    [
        (say_state, "state 'open' has no words"),
        (say_state_meaning, "state 'open' has no words"),
        (say_event, "event 'open' has no words"),
        (say_kind, "kind of entry 'open' has no words"),
    ],
)
def test_a_word_that_is_none_is_an_error(say: Callable[[str], str], message: str) -> None:
    with pytest.raises(WordsError, match=message):
        say("open")


def test_a_language_without_a_line_or_a_reason_is_an_error_and_never_english() -> None:
    mute = replace(SPANISH, code="xx", reasons={}, entry_lines={})
    with pytest.raises(WordsError, match="reason 'use was stopped' has no words in 'xx'"):
        mute.reason(Why.STOPPED, by="this")
    with pytest.raises(WordsError, match="line of an entry 'use stopped' has no words in 'xx'"):
        mute.line_of_entry("use stopped")
    with pytest.raises(WordsError, match="line of an entry 'use stopped' lacks the value 'where'"):
        ENGLISH.line_of_entry("use stopped")
