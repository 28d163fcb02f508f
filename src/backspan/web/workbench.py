"""One site's record with what its pages ask again and again: the fold of the day, the reviews.

All of it follows from the entries and the day, so it is kept until either changes.
"""

from __future__ import annotations

import datetime
import threading
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from functools import cached_property

from backspan.core.findings import Review
from backspan.core.ledger.day_told import day_data
from backspan.core.ledger.entry import Entry, Signer
from backspan.core.ledger.errors import LedgerError
from backspan.core.ledger.fold import fold
from backspan.core.ledger.folded import Folded
from backspan.core.ledger.kinds import Body
from backspan.core.model.project import Project
from backspan.core.review import review
from backspan.core.review.front import front_data
from backspan.core.review.plain import Data
from backspan.core.review.report import formula_descriptions, review_data
from backspan.core.rules.selected import RuleLibrary
from backspan.records.api import SiteRecord
from backspan.records.store import Statement

Clock = Callable[[], datetime.datetime]


@dataclass(slots=False)
class DayState:
    """The site as it stands on a day by the entries up to a place; what is worked out of it."""

    place: int
    on: datetime.date
    entries: tuple[Entry, ...]
    library: RuleLibrary
    _reviews: dict[str, Review] = field(default_factory=dict)
    _lock: threading.Lock = field(default_factory=threading.Lock)

    @cached_property
    def folded(self) -> Folded:
        """The fold of the entries."""
        return fold(self.entries, on=self.on)

    @property
    def project(self) -> Project | None:
        """The project; None where no site is described yet."""
        try:
            return self._project
        except LedgerError:
            return None

    @cached_property
    def _project(self) -> Project:
        return self.folded.project

    @cached_property
    def day(self) -> Data:
        """Every drop's standing as a document."""
        return day_data(self.entries, self.library, on=self.on)

    def review(self, drop: str) -> Review:
        """The review of a drop on the day, without comparison. Raises AbsentError, RuleError."""
        with self._lock:
            found = self._reviews.get(drop)
        if found is None:
            found = review(self._project, drop, self.library, on=self.on, compared=False)
            with self._lock:
                self._reviews[drop] = found
        return found

    def front(self, drop: str) -> Data:
        """What of its review stands before all else."""
        return front_data(self.review(drop))

    def document(self, drop: str) -> Data:
        """All of its review."""
        return review_data(self.review(drop), formulas=formula_descriptions())


class Workbench:
    """The record that is open, its rules, and a clock that tells the time with its offset."""

    def __init__(self, record: SiteRecord, library: RuleLibrary, clock: Clock) -> None:
        self.record = record
        self.library = library
        self.clock = clock
        self._lock = threading.Lock()
        self._state: DayState | None = None

    def today(self) -> DayState:
        """The site as it stands now."""
        on = self.clock().date()
        last = self.record.ledger.last()
        place = 0 if last is None else last.place
        with self._lock:
            there = self._state
            if there is None or (there.place, there.on) != (place, on):
                there = DayState(place, on, self.record.entries(), self.library)
                self._state = there
        return there

    def say(
        self, bodies: Sequence[Body], signer: Signer, evidence: Sequence[str] = ()
    ) -> tuple[Entry, ...]:
        """Write entries that this person states now. Raises as `SiteRecord.say` does."""
        at = self.clock().isoformat(timespec="seconds")
        statements = [Statement(body, signer, tuple(evidence)) for body in bodies]
        return self.record.say(statements, at=at)
