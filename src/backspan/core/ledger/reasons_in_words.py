"""Why a drop may not carry people, and why an entry has no effect, as sentences in a language."""

from __future__ import annotations

from backspan.core.ledger.drop_states import Refusal
from backspan.core.ledger.entry import Entry
from backspan.core.ledger.entry_lines import entry_line
from backspan.core.ledger.standing import Ended, Refused, Why
from backspan.core.words import ENGLISH, Language, say_event

_BY = "{by}"
#: A sentence has one of its own.
_STOP = "."


def say_reason(why: Why | Refusal, by: Entry | None = None, language: Language = ENGLISH) -> str:
    """Why nobody rides, and what settles it; `by` is the entry that stands against it.

    Raises WordsError where the language has no words for the reason or for the entry.
    """
    line = language.phrase("record-by-unknown") if by is None else _within(by, language)
    reason = language.reason(why, by=line)
    if by is None or _BY in language.reasons[why]:
        return reason
    return language.phrase("record-beside", reason=reason, by=line)


def say_refused(refused: Refused, language: Language = ENGLISH) -> str:
    """That an entry has no effect, and why. Raises as `say_reason` does."""
    reason = say_reason(refused.why, refused.by, language)
    return language.phrase("record-refused", entry=_within(refused.entry, language), reason=reason)


def say_ended(ended: Ended, language: Language = ENGLISH) -> str:
    """That a permit holds no longer, and by what. Raises as `say_reason` does."""
    return language.phrase(
        "record-ended",
        event=say_event(ended.event, language=language),
        permit=_within(ended.permit, language),
        by=_within(ended.by, language),
    )


def _within(entry: Entry, language: Language) -> str:
    """The line of an entry, to stand in a sentence."""
    return entry_line(entry, language).removesuffix(_STOP)
