"""Times as text: a moment is a day with a time and its offset."""

from __future__ import annotations

import datetime


def moment(text: str) -> datetime.datetime | None:
    """The moment that a text names; None where it names none."""
    try:
        found = datetime.datetime.fromisoformat(text)
    except ValueError:
        return None
    return None if found.tzinfo is None else found


def is_moment(text: str) -> bool:
    """Whether a text names a moment."""
    return moment(text) is not None
