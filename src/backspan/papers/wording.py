"""Dates as a letter writes them, and what stands where nothing was stated."""

from __future__ import annotations

import datetime

NOT_STATED = "not stated"

MONTHS = (
    "January",
    "February",
    "March",
    "April",
    "May",
    "June",
    "July",
    "August",
    "September",
    "October",
    "November",
    "December",
)


def long_date(day: datetime.date) -> str:
    """A date as letters write it: November 25, 2026."""
    return f"{MONTHS[day.month - 1]} {day.day}, {day.year}"
