"""States of a drop, what happens to it and kinds of entries in words, by the ledger's own words."""

from __future__ import annotations

from collections.abc import Mapping

from backspan.core.words.language import ENGLISH, Language, WordsError


def say_state(state: str, *, language: Language = ENGLISH) -> str:
    """Where a drop stands, such as "in service"; WordsError when there are no words for it."""
    return _found("state", language.states, state)


def say_state_meaning(state: str, *, language: Language = ENGLISH) -> str:
    """What a state means for who stands beside the stage; WordsError when it has no sentence."""
    return _found("state", language.state_meanings, state)


def say_event(event: str, *, language: Language = ENGLISH) -> str:
    """What happened to a drop, as the end of a sentence; WordsError when it has no words."""
    return _found("event", language.events, event)


def say_kind(kind: str, *, language: Language = ENGLISH) -> str:
    """The title of a kind of entry, such as "stop of use"; WordsError when it has none."""
    return _found("kind of entry", language.entry_titles, kind)


def _found(what: str, table: Mapping[str, str], name: str) -> str:
    if name not in table:
        raise WordsError(f"{what} {str(name)!r} has no words")
    return table[name]
