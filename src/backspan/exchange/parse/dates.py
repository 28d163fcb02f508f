"""Dates as a file may state them."""

from __future__ import annotations

import datetime
import re

DATE = "a date, such as 2026-11-25"
DATE_OR_TIME = "a date, such as 2026-11-25, with or without a time, such as 2026-11-25 14:05"

_DATE = re.compile(r"[0-9]{4}-[0-9]{2}-[0-9]{2}")
_TIME = re.compile(
    r"(?P<date>[0-9]{4}-[0-9]{2}-[0-9]{2})[T ][0-9]{2}:[0-9]{2}(:[0-9]{2})?"
    r"(Z|[+-][0-9]{2}:[0-9]{2})?"
)


def why_no_date(text: str, *, with_time: bool) -> str | None:
    """What is wrong with `text` as a date (YYYY-MM-DD), or None if it is one."""
    if not _DATE.fullmatch(text) and not (with_time and _TIME.fullmatch(text)):
        return "not written as year-month-day"
    try:
        datetime.datetime.fromisoformat(text)
    except ValueError:
        return "no day or time of the calendar"
    return None
