"""Which fields are dates, with or without a time, and what a date is written like."""

from __future__ import annotations

import datetime
import re
from typing import Any

from backspan.core.model.basis import Confirmation
from backspan.core.model.evidence import StatedValue, Statement
from backspan.core.model.plan import Plan
from backspan.core.model.signed import SignedLimits
from backspan.core.model.site import Anchor
from backspan.core.model.topics import TakeOver
from backspan.core.model.units import Test

DATE = "a date, such as 2026-11-25"
DATE_OR_TIME = "a date, such as 2026-11-25, with or without a time, such as 2026-11-25 14:05"

DATE_PATTERN = "[0-9]{4}-[0-9]{2}-[0-9]{2}"
TIME_PATTERN = (
    DATE_PATTERN + "[T ][0-9]{2}:[0-9]{2}(:[0-9]{2})?(Z|[+-][0-9]{2}:[0-9]{2})?"  # zone or none
)
_DATE, _TIME = re.compile(DATE_PATTERN), re.compile(TIME_PATTERN)


def why_no_date(text: str, *, with_time: bool) -> str | None:
    """What is wrong with `text` as a date (YYYY-MM-DD), or None if it is one."""
    if not _DATE.fullmatch(text) and not (with_time and _TIME.fullmatch(text)):
        return "not written as year-month-day"
    try:
        datetime.datetime.fromisoformat(text)
    except ValueError:
        return "no day or time of the calendar"
    return None


_TIMES = {(Statement, "at"), (StatedValue, "at"), (Confirmation, "at")}
_DATES = {
    (Anchor, "inspected"),
    (Anchor, "certified"),
    (Plan, "begins"),
    (Plan, "ends"),
    (SignedLimits, "at"),
    (SignedLimits, "until"),
    (TakeOver, "at"),
    (TakeOver, "until"),
    (Test, "at"),
    (Test, "until"),
}


def is_date(record: Any, name: str) -> bool:
    """Whether the field `name` of a record class is a date, with or without a time."""
    return (record, name) in _DATES or is_time(record, name)


def is_time(record: Any, name: str) -> bool:
    """Whether the field `name` of a record class is a date that may have a time."""
    return (record, name) in _TIMES
