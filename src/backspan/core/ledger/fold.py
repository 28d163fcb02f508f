"""Entries to the site as it stood on a day: the same whatever the order in which they came.

Entries are taken in the order of chain.in_order, where none stands before what it rests on. What
they state is written onto the project (folded.py, writes.py); what happens to a drop goes through
the table of its states (happenings.py, drop_states.py), once nothing stands against it.
"""

from __future__ import annotations

import datetime
from collections.abc import Iterable, Sequence

from backspan.core.ledger.chain import in_order
from backspan.core.ledger.days import day_of
from backspan.core.ledger.entry import Entry
from backspan.core.ledger.folded import Folded
from backspan.core.ledger.happenings import HAPPENS


def fold(entries: Iterable[Entry], *, on: datetime.date | None = None) -> Folded:
    """The site as its entries make it; with `on` as it stood at the end of that day."""
    folded = Folded()
    for entry in in_order(entries):
        if on is None or day_of(entry) <= on.isoformat():
            take(folded, entry)
    return folded


def folded_on(
    site: Folded, before: Sequence[Entry], new: Sequence[Entry], *, on: datetime.date
) -> Folded | None:
    """The fold of a day's entries with some that came since; `site` stays as it is.

    None where one of them stands before one that was folded: then all is folded anew.
    """
    late = in_order(new)
    if before and late and in_order([*before, late[0]])[-1] is not late[0]:
        return None
    following = site.copied()
    for entry in late:
        if day_of(entry) <= on.isoformat():
            take(following, entry)
    return following


def take(site: Folded, entry: Entry) -> None:
    """Take one entry more, that stands after all others in their order."""
    site.by_hash[entry.hash] = entry
    handler = HAPPENS.get(type(entry.body))
    if site.writes(entry) and handler is not None:
        handler(site, entry, entry.body)
