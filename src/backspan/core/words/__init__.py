"""Sentences by language: findings carry message ids and values, this room says them."""

from backspan.core.words.say import (
    SIGNS,
    WordsError,
    say,
    say_check,
    say_input,
    say_margin,
    say_verdict,
    shown,
)

__all__ = [
    "SIGNS",
    "WordsError",
    "say",
    "say_check",
    "say_input",
    "say_margin",
    "say_verdict",
    "shown",
]
