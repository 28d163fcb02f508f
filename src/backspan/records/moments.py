"""Times as text: which are moments, and which of two is later."""

from __future__ import annotations

import datetime

from backspan.core.errors import quoted
from backspan.core.ledger.moments import moment
from backspan.records.errors import MomentError


def refuse_no_moment(text: str) -> None:
    """Raise MomentError for a text that is no day with a time and its offset."""
    _read(text)


def not_before(time: str, earliest: str) -> str:
    """The time, or the earliest it may be where it is before that. Raises MomentError."""
    return earliest if _read(time) < _read(earliest) else time


def seconds_of(time: str) -> float:
    """A time in seconds as files carry theirs, from the start of 1970. Raises MomentError."""
    return _read(time).timestamp()


def _read(text: str) -> datetime.datetime:
    found = moment(text)
    if found is None:
        raise MomentError(f"found {quoted(text)}, expected a day with a time and its offset")
    return found
