"""Sentences by language: findings carry message ids and values, this room says them."""

from backspan.core.words.drop import counterweight, drop_answer, settled
from backspan.core.words.say import (
    SIGNS,
    WordsError,
    say,
    say_check,
    say_input,
    say_label,
    say_margin,
    say_margins,
    say_mend,
    say_verdict,
    shown,
)
from backspan.core.words.share import per_cent

__all__ = [
    "SIGNS",
    "WordsError",
    "counterweight",
    "drop_answer",
    "per_cent",
    "say",
    "say_check",
    "say_input",
    "say_label",
    "say_margin",
    "say_margins",
    "say_mend",
    "say_verdict",
    "settled",
    "shown",
]
