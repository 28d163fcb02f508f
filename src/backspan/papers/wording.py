"""Dates, shares and citations as a letter writes them."""

from __future__ import annotations

import datetime
from math import isclose

from backspan.core.findings import Verdict
from backspan.core.numbers import EQUAL_WITHIN
from backspan.core.rules.selected import SelectedValue

#: Findings and drops in print: what needs a person first.
ORDER = (Verdict.FAIL, Verdict.MISSING, Verdict.REFER, Verdict.PASS)
NOT_STATED = "not stated"

HUNDRED = 100.0
MOST_DIGITS = 9

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
    """A utilisation in per cent, with more digits where a rounded 100 % would hide which side."""
    if share is None:
        return ""
    met = isclose(share, 1.0, rel_tol=EQUAL_WITHIN)
    texts = (f"{share * 100:.{digits}f}" for digits in range(MOST_DIGITS))
    return f"{next((text for text in texts if met or float(text) != HUNDRED), '100')} %"


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
