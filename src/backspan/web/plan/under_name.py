"""The name of a file that is laid under a plan."""

from __future__ import annotations

from backspan.core.errors import quoted
from backspan.web.pages.common import FormError

LONGEST_NAME = 80


def a_name(text: str) -> str:
    """The name of a file on one line. Raises FormError for one that is none."""
    text = text.strip()
    if not text or len(text) > LONGEST_NAME or not text.isprintable():
        raise FormError(
            f"The file's name: found {quoted(text)}, expected one line of 1 to {LONGEST_NAME} signs"
        )
    return text
