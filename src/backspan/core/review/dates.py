"""A statement dated after the day of the review: refused, since nobody can have seen it yet."""

from __future__ import annotations

import datetime
from collections.abc import Iterator
from typing import Any

from backspan.core.errors import BackspanError
from backspan.core.model.evidence import day_of
from backspan.core.model.inherit import field_names
from backspan.core.model.project import Project

#: Fields that say on which day somebody saw, did or signed something.
_SAID_ON = frozenset({"at", "inspected", "certified"})
_MOST_TOLD = 20


class NoDayError(BackspanError, TypeError):
    """The day of a review that is no plain day; names what was found."""


class DatedAheadError(BackspanError, ValueError):
    """Statements of a later day than the review's; names each place and both days."""


def plain_day(on: datetime.date) -> datetime.date:
    """The day of a review. NoDayError for what is no day, a moment among that.

    A moment has a time zone or none, and is another day elsewhere: whoever asks says which day.
    """
    if isinstance(on, datetime.datetime) or not isinstance(on, datetime.date):
        raise NoDayError(f"found {on!r} as the day of the review, expected a datetime.date")
    return on


def refuse_days_ahead(project: Project, on: datetime.date) -> None:
    """Raise DatedAheadError where anything of the project is dated after the day of the review."""
    day = on.isoformat()
    found = [
        f"{place}: found {at}, expected {day} or earlier" for place, at in _ahead(project, day)
    ]
    if found:
        more = [f"and {len(found) - _MOST_TOLD} more"] if len(found) > _MOST_TOLD else []
        told = [f"a day after that of the review, {day}:", *found[:_MOST_TOLD], *more]
        raise DatedAheadError("\n  ".join(told))


def _ahead(value: Any, day: str, place: str = "") -> Iterator[tuple[str, str]]:
    if isinstance(value, tuple):
        for number, item in enumerate(value):
            yield from _ahead(item, day, f"{place}[{getattr(item, 'id', number)}]")
    elif hasattr(value, "__dataclass_fields__"):
        for name in field_names(value.__class__):
            inner = getattr(value, name)
            at = f"{place}.{name}" if place else name
            if not isinstance(inner, str):
                yield from _ahead(inner, day, at)
            elif name in _SAID_ON and day_of(inner).isoformat() > day:
                yield at, inner
