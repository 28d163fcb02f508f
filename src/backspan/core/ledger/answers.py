"""What a permit says of its review, and whether this version of the program still answers so.

A permit keeps the answer of its day as text. After an upgrade the same site, as whoever signed it
knew it then, is reviewed again for that day: where another answer comes, a person has to decide.
"""

from __future__ import annotations

import datetime
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from backspan.core.errors import BackspanError
from backspan.core.findings import Review, Verdict
from backspan.core.ledger.days import day_of
from backspan.core.ledger.entry import Entry
from backspan.core.ledger.fold import fold
from backspan.core.ledger.standing import Permit
from backspan.core.review import review
from backspan.core.rules.selected import RuleLibrary


@dataclass(frozen=True, slots=True)
class Rechecked:
    """A drop with a permit in force: what its review said then, and what it says now.

    `verdict` is None where it cannot be reviewed any more, and `answers` says why.
    """

    drop: str
    permit: Entry
    said: str
    answers: str
    verdict: Verdict | None

    @property
    def differs(self) -> bool:
        """Whether a person has to decide."""
        return self.said != self.answers


def answer_of(found: Review) -> str:
    """A review's answer as a permit says it: "pass", "pass, 2 topics taken over", "fail"."""
    taken = len([one for one in found.topics if one.taken_over is not None])
    if found.verdict is not Verdict.PASS or not taken:
        return str(found.verdict)
    return f"pass, {taken} topic{'s' if taken > 1 else ''} taken over"


def papers_of(found: Review) -> tuple[str, ...]:
    """The documents that a review's answer leans on, each once, in order."""
    told = (one.taken_over for one in found.topics if one.taken_over is not None)
    return tuple(sorted({str(dict(one.values)["document"]) for one in told}))


def recheck(
    entries: Sequence[Entry], library: RuleLibrary, *, on: datetime.date
) -> Iterator[Rechecked]:
    """Each drop that has a permit in force on a day, reviewed again as its signer knew it.

    Raises LedgerError where no site is described.
    """
    site = fold(entries, on=on)
    for drop in site.project.drops:
        permit = site.record(drop.id).permit
        if permit is not None:
            yield _rechecked(entries, drop.id, permit, library)


def _rechecked(
    entries: Sequence[Entry], drop: str, permit: Permit, library: RuleLibrary
) -> Rechecked:
    known = fold(one for one in entries if permit.entry.has_seen(one))
    day = datetime.date.fromisoformat(day_of(permit.entry))
    said = permit.says.answer
    try:
        found = review(known.project, drop, library, on=day, compared=False)
    except BackspanError as error:
        return Rechecked(drop, permit.entry, said, f"cannot be reviewed: {error}", None)
    return Rechecked(drop, permit.entry, said, answer_of(found), found.verdict)
