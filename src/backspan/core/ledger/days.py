"""On which day an entry counts, and which clocks are in doubt.

A device's clock may be wrong. An entry counts on no day after it reached the ledger; one whose
clock runs ahead is told, and so is one that goes back against the entry before it.
"""

from __future__ import annotations

import datetime
from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from backspan.core.ledger.chain import in_order
from backspan.core.ledger.entry import Entry

#: Clocks that agree this well are in no doubt; common practice, no source.
_USUAL = datetime.timedelta(minutes=10)


@dataclass(frozen=True, slots=True)
class ClockDoubt:
    """An entry whose clock is `ahead` of the ledger's, or else goes back, and by how much."""

    entry: Entry
    by: datetime.timedelta
    ahead: bool


def day_of(entry: Entry) -> str:
    """The day on which an entry counts, as an ISO date: its own, or the one it came on if earlier.

    Each day is the one of the clock that told it, in that clock's own zone.
    """
    at = _told(entry)
    came = _came(entry)
    return min(at, came).astimezone(at.tzinfo).date().isoformat()


def clock_doubts(entries: Iterable[Entry]) -> Iterator[ClockDoubt]:
    """The entries whose clock is in doubt, in their order."""
    last: dict[str, datetime.datetime] = {}
    for entry in in_order(entries):
        at, device = _told(entry), entry.envelope.device
        came = _came(entry)
        if at - came > _USUAL:
            yield ClockDoubt(entry, at - came, ahead=True)
        if device in last and last[device] - at > _USUAL:
            yield ClockDoubt(entry, last[device] - at, ahead=False)
        last[device] = at


def _told(entry: Entry) -> datetime.datetime:
    """The time on the device's clock."""
    return datetime.datetime.fromisoformat(entry.envelope.at)


def _came(entry: Entry) -> datetime.datetime:
    """The time it reached the ledger; its own where it never did."""
    return datetime.datetime.fromisoformat(entry.received or entry.envelope.at)
