"""Dates as a letter writes them."""

from __future__ import annotations

import datetime

from backspan.core.words import Language


def long_date(day: datetime.date, language: Language) -> str:
    """A date as letters write it: November 25, 2026; 25 de noviembre de 2026."""
    month = language.paper["months"].split()[day.month - 1]
    return language.paper["long_date"].format(day=day.day, month=month, year=day.year)
