"""Sentences by language: findings carry message ids and values, this room says them."""

from backspan.core.words.drop import counterweight, drop_answer, settled
from backspan.core.words.language import ENGLISH, Language, WordsError
from backspan.core.words.languages import LANGUAGES, language_of
from backspan.core.words.record import say_event, say_kind, say_state, say_state_meaning
from backspan.core.words.say import (
    SIGNS,
    say,
    say_check,
    say_decider,
    say_input,
    say_label,
    say_margin,
    say_margins,
    say_mend,
    say_stated,
    say_verdict,
    shown,
)
from backspan.core.words.share import per_cent

__all__ = [
    "ENGLISH",
    "LANGUAGES",
    "SIGNS",
    "Language",
    "WordsError",
    "counterweight",
    "drop_answer",
    "language_of",
    "per_cent",
    "say",
    "say_check",
    "say_decider",
    "say_event",
    "say_input",
    "say_kind",
    "say_label",
    "say_margin",
    "say_margins",
    "say_mend",
    "say_state",
    "say_state_meaning",
    "say_stated",
    "say_verdict",
    "settled",
    "shown",
]
