"""One site's record with what its pages ask again and again: the fold of the day, the reviews.

All of it follows from the entries and the day, so it is kept until either changes.
"""

from __future__ import annotations

import datetime
import threading
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from functools import cached_property
from typing import Any, TypeVar

from backspan.core.findings import Review
from backspan.core.ledger.day_told import told
from backspan.core.ledger.entry import Entry, Signer
from backspan.core.ledger.errors import LedgerError
from backspan.core.ledger.fold import fold, folded_on
from backspan.core.ledger.folded import Folded
from backspan.core.ledger.kinds import Body
from backspan.core.ledger.service import standing_on
from backspan.core.ledger.standing import Standing
from backspan.core.ledger.stop_list import Asked, Item, also_wanted, stop_list
from backspan.core.model.inherit import inherit
from backspan.core.model.project import Project
from backspan.core.review import review
from backspan.core.review.front import front_data
from backspan.core.review.plain import Data
from backspan.core.review.report import formula_descriptions, review_data
from backspan.core.rules.selected import RuleLibrary
from backspan.core.sheet.kept import Kept
from backspan.records.api import SiteRecord
from backspan.records.store import Statement

T = TypeVar("T")
Clock = Callable[[], datetime.datetime]


@dataclass(slots=False)
class DayState:
    """The site as it stands on a day by the entries up to a place; what is worked out of it."""

    place: int
    on: datetime.date
    entries: tuple[Entry, ...]
    library: RuleLibrary
    answered: Kept = field(default_factory=Kept)
    """The last answers of this site: recorded before, tried, or drawn."""
    _kept: dict[tuple[str, str], Any] = field(default_factory=dict)
    _lock: threading.Lock = field(default_factory=threading.Lock)

    def after(self, new: tuple[Entry, ...]) -> DayState:
        """The same day with entries that came since; only those are folded, where they may."""
        entries = (*self.entries, *new)
        following = DayState(self.place + len(new), self.on, entries, self.library, self.answered)
        folded = folded_on(self.folded, self.entries, new, on=self.on)
        if folded is not None:
            # In the place of the property below, which then never works it out.
            following.folded = folded
        return following

    @cached_property
    def folded(self) -> Folded:
        """The fold of the entries."""
        return fold(self.entries, on=self.on)

    @property
    def project(self) -> Project | None:
        """The project; None where no site is described yet."""
        try:
            return self.described
        except LedgerError:
            return None

    @cached_property
    def described(self) -> Project:
        """The project. Raises LedgerError where no site is described yet."""
        return self.folded.project

    @cached_property
    def with_statements(self) -> Project:
        """The project with who stated each value written beside it. Raises as `described`."""
        return inherit(self.described)

    @cached_property
    def day(self) -> Data:
        """Every drop's standing as a document."""
        standings = [self.standing(one.id) for one in self.described.drops]
        return told(self.folded, self.entries, standings, on=self.on)

    def standing(self, drop: str) -> Standing:
        """Where a drop stands on the day."""

        def made() -> Standing:
            site, reviewed = self.folded, self.review
            return standing_on(site, drop, self.library, on=self.on, reviewed=reviewed)

        return self.once("standing", drop, made)

    def review(self, drop: str) -> Review:
        """The review of a drop on the day, without comparison. Raises AbsentError, RuleError."""

        def made() -> Review:
            site, kept = self.described, self.answered
            return review(site, drop, self.library, on=self.on, compared=False, kept=kept)

        return self.once("review", drop, made)

    def stop_list(self, drop: str) -> tuple[Item, ...]:
        """The items of its stop list. Raises as its review does."""

        def made() -> tuple[Item, ...]:
            return stop_list(self.described, drop, self.review(drop))

        return self.once("stop list", drop, made)

    def also_wanted(self, drop: str) -> tuple[Asked, ...]:
        """The values that its review waits for besides those of the list."""

        def made() -> tuple[Asked, ...]:
            return also_wanted(self.described, drop, self.review(drop))

        return self.once("also wanted", drop, made)

    def front(self, drop: str) -> Data:
        """What of its review stands before all else."""
        return self.once("front", drop, lambda: front_data(self.review(drop)))

    def document(self, drop: str) -> Data:
        """All of its review."""

        def made() -> Data:
            formulas = formula_descriptions()
            return review_data(self.review(drop), formulas=formulas, front=self.front(drop))

        return self.once("document", drop, made)

    def once(self, what: str, drop: str, made: Callable[[], T]) -> T:
        """What follows from entries and day alone: worked out once; twice where two ask at once."""
        with self._lock:
            found: T | None = self._kept.get((what, drop))
        if found is None:
            found = made()
            with self._lock:
                self._kept[what, drop] = found
        return found


class Workbench:
    """The record that is open, its rules, and a clock that tells the time with its offset."""

    def __init__(self, record: SiteRecord, library: RuleLibrary, clock: Clock) -> None:
        self.record = record
        self.library = library
        self.clock = clock
        self.saying = threading.RLock()
        """Held by whoever looks at what stands and writes what follows from it."""
        self._lock = threading.Lock()
        self._state: DayState | None = None

    def today(self) -> DayState:
        """The site as it stands now."""
        on = self.clock().date()
        last = self.record.ledger.last()
        place = 0 if last is None else last.place
        with self._lock:
            there = self._state
            if there is None or there.on != on:
                there = DayState(place, on, self.record.entries(), self.library)
            elif there.place != place:
                there = there.after(self.record.entries(there.place))
            self._state = there
        return there

    def say(
        self, bodies: Sequence[Body], signer: Signer, evidence: Sequence[str] = ()
    ) -> tuple[Entry, ...]:
        """Write entries that this person states now. Raises as `SiteRecord.say` does."""
        at = self.clock().isoformat(timespec="seconds")
        statements = [Statement(body, signer, tuple(evidence)) for body in bodies]
        return self.record.say(statements, at=at)
