"""Dates, shares and citations as a letter writes them."""

from __future__ import annotations

import datetime

from backspan.core.rules.selected import SelectedValue
from backspan.core.words import per_cent

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


def percent(share: float | None) -> str:
    """A utilisation in per cent; nothing where there is none."""
    return "" if share is None else per_cent(share)


def citation(rule: SelectedValue) -> dict[str, str]:
    """A rule value as papers cite it: text, edition, clause, mark, who confirmed it."""
    confirmed = rule.confirmed
    return {
        "rule_set": rule.rule_set,
        "edition": rule.edition,
        "clause": rule.provenance.clause,
        "mark": mark_of(rule),
        "description": rule.description,
        "reading": rule.reading if rule.of_readings > 1 else "",
        "confirmed": ""
        if confirmed is None
        else f"confirmed by {confirmed.by} on {confirmed.at} in {confirmed.copy_seen}",
        "source": rule.provenance.source,
    }


def mark_of(rule: SelectedValue) -> str:
    """The mark of a value, with the confirmation beside a remembered one."""
    return f"{rule.provenance.mark}, confirmed" if rule.confirmed else str(rule.provenance.mark)
