"""Where every drop of a site stands on a day, as one document that terminal and pages render.

In service is what the record holds nothing against; it is no word of safety. What is in doubt of
clocks is told beside: the day on which an entry counts hangs on them.
"""

from __future__ import annotations

import datetime
from collections.abc import Sequence
from typing import Any

from backspan.core.ledger.days import ClockDoubt, clock_doubts, day_of
from backspan.core.ledger.entry import Entry
from backspan.core.ledger.entry_lines import entry_line
from backspan.core.ledger.fold import fold
from backspan.core.ledger.folded import Folded
from backspan.core.ledger.reasons_in_words import say_reason, say_refused
from backspan.core.ledger.service import standing_on
from backspan.core.ledger.standing import Standing
from backspan.core.rules.selected import RuleLibrary
from backspan.core.words import ENGLISH, Language, say_state, say_state_meaning

#: The format number of the document.
FORMAT = 1


def day_data(
    entries: Sequence[Entry],
    library: RuleLibrary,
    *,
    on: datetime.date,
    language: Language = ENGLISH,
) -> dict[str, Any]:
    """Plain data of the day: each drop's state with its reasons, clocks in doubt, the caution.

    Raises LedgerError where no site was described by then, RuleError for a rule set that is not
    at hand.
    """
    site = fold(entries, on=on)
    standings = [standing_on(site, one.id, library, on=on) for one in site.project.drops]
    return told(site, entries, standings, on=on, language=language)


def told(
    site: Folded,
    entries: Sequence[Entry],
    standings: Sequence[Standing],
    *,
    on: datetime.date,
    language: Language = ENGLISH,
) -> dict[str, Any]:
    """The same, of a site that was folded to the end of the day, and of where its drops stand."""
    project = site.project
    drops = [
        {"name": one.name, **_drop(standing, language)}
        for one, standing in zip(project.drops, standings, strict=True)
    ]
    known = [one for one in entries if one.hash in site.by_hash]
    return {
        "format": FORMAT,
        "site": project.site.name,
        "on": on.isoformat(),
        "in_service": len([one for one in drops if one["in_service"]]),
        "drops": drops,
        "refused": [say_refused(one, language) for one in site.refused],
        "clocks": [_clock(one, language) for one in clock_doubts(known)],
        "caution": language.one_line_caution,
    }


def _drop(standing: Standing, language: Language) -> dict[str, Any]:
    permit = standing.permit
    today = standing.on.isoformat()
    return {
        "drop": standing.drop,
        "state": str(standing.state),
        "state_text": say_state(standing.state, language=language),
        "in_service": standing.in_service,
        "text": say_state_meaning(standing.state, language=language),
        "reasons": [say_reason(why, by, language) for why, by in standing.reasons],
        "restrictions": [entry_line(one, language) for one in standing.restrictions],
        "refused": [
            say_refused(one, language) for one in standing.refused if day_of(one.entry) == today
        ],
        "permit": None if permit is None else entry_line(permit.entry, language),
        "permit_by": None if permit is None else permit.entry.envelope.signer.name,
        "permit_at": None if permit is None else permit.entry.envelope.at,
    }


def _clock(doubt: ClockDoubt, language: Language) -> str:
    name = "record-clock-ahead" if doubt.ahead else "record-clock-back"
    line = entry_line(doubt.entry, language).removesuffix(".")
    device = doubt.entry.envelope.device
    return language.phrase(name, device=device, by=_hours(doubt.by), entry=line)


def _hours(lasts: datetime.timedelta) -> str:
    """Hours and minutes, such as "26:03 h"."""
    minutes = lasts // datetime.timedelta(minutes=1)
    return f"{minutes // 60}:{minutes % 60:02d} h"
