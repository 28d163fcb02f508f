"""The site as its entries make it so far: the project they state, and what is known of each drop.

What an entry states is written onto the project. A permit ends with the first entry that changes
what it names: its configuration or its basis.
"""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import dataclass, field
from typing import Any

from backspan.core.ledger import bodies
from backspan.core.ledger.codes import basis_code
from backspan.core.ledger.disputes import Dispute, Disputes
from backspan.core.ledger.document import (
    Known,
    PlaceError,
    changes_a_fact,
    drop_of,
    project_of,
)
from backspan.core.ledger.drop_states import Event
from backspan.core.ledger.entry import Entry
from backspan.core.ledger.errors import LedgerError
from backspan.core.ledger.matters import Matters, meant
from backspan.core.ledger.standing import DropRecord, Refused, Unplaced, Why
from backspan.core.ledger.writes import Write, writes_of
from backspan.core.model.project import Project
from backspan.core.wire import WireError, configuration_code


@dataclass(slots=True)
class Folded:
    """A site while its entries are taken, one after the other in their order."""

    data: Any = None
    drops: dict[str, DropRecord] = field(default_factory=dict)
    disputes: Disputes = field(default_factory=Disputes)
    matters: Matters = field(default_factory=Matters)
    unplaced: list[Unplaced] = field(default_factory=list)
    refused: list[Refused] = field(default_factory=list)
    papers: list[Entry] = field(default_factory=list)
    by_hash: dict[str, Entry] = field(default_factory=dict)
    stating: list[Entry] = field(default_factory=list)
    corrected: set[str] = field(default_factory=set)
    _known: Known | None = field(default=None, compare=False, repr=False)

    @property
    def project(self) -> Project:
        """The project as it stands. Raises LedgerError where no site is described yet."""
        if self.data is None:
            raise LedgerError("no site is described: expected an entry 'site described' first")
        return self.project_with(self.data)

    def project_with(self, data: Any) -> Project:
        """The project that data is which was written onto this site's.

        Raises PlaceError where it is none.
        """
        known = self._known
        if self.data is None:
            return project_of(data)
        if known is None or known[0] is not self.data:
            known = self._known = self.data, project_of(self.data, known)
        return known[1] if data is self.data else project_of(data, known)

    def copied(self) -> Folded:
        """The same site to go on from, while others still read this one."""
        return Folded(
            self.data,
            {name: record.copied() for name, record in self.drops.items()},
            self.disputes.copied(),
            self.matters.copied(),
            list(self.unplaced),
            list(self.refused),
            list(self.papers),
            dict(self.by_hash),
            list(self.stating),
            set(self.corrected),
            self._known,
        )

    @property
    def _drops(self) -> Sequence[Any]:
        """The drops as plain data."""
        return () if self.data is None else tuple(self.data["drops"])

    @property
    def _names(self) -> tuple[str, ...]:
        return tuple(one["id"] for one in self._drops)

    def record(self, drop: str) -> DropRecord:
        """What is known of a drop."""
        return self.drops.setdefault(drop, DropRecord(drop))

    def named(self, drops: Collection[str]) -> list[DropRecord]:
        """The drops that are meant by these names (matters.py): no name is every drop."""
        return [self.record(name) for name in meant(drops, self._names)]

    def about(self, drop: str | None) -> list[DropRecord]:
        """A drop, or all where it may be about any."""
        return self.named(() if drop is None else (drop,))

    def rig(self, drop: str) -> Any:
        """The rig of a drop as plain data; None where nothing is rigged."""
        found = (one["rig"] for one in self._drops if one["id"] == drop)
        return next(found, None)

    def against(self, drop: str) -> tuple[Why, Entry] | None:
        """What stands against people on a drop's stage, besides the state it is in."""
        there = self._names
        for unplaced in self.unplaced:
            if drop in meant(() if unplaced.drop is None else (unplaced.drop,), there):
                return Why.NOT_PLACED, unplaced.entry
        for dispute in self.disputes.unsettled:
            if dispute.drop in {None, drop}:
                return Why.DISPUTED, dispute.other
        units = () if self.data is None else self.data["kit"]["units"]
        worry = self.matters.worrying(drop, self.rig(drop), units)
        if worry is not None:
            return Why.CONCERN, worry
        wrong = self.matters.forbidding(drop, there)
        return None if wrong is None else (Why.DEFICIENT, wrong)

    def codes(self, drop: str) -> tuple[str, str] | None:
        """Both codes of a drop; None where it refers to what is not there."""
        project = self.project
        one = next((one for one in project.drops if one.id == drop), None)
        if one is None:
            return None
        try:
            return configuration_code(project, one), basis_code(project, one)
        except WireError:
            return None

    def writes(self, entry: Entry) -> bool:
        """Write what an entry states; False, and kept as unplaced, where it has no place."""
        before = self.data
        try:
            writes, disputes = self._place(entry)
        except PlaceError as error:
            for record in self.about(self._keep_unplaced(entry, error)):
                record.happens(Event.CHANGED, entry)
            return False
        for dispute in disputes:
            for record in self.about(dispute.drop):
                record.happens(Event.CHANGED, entry)
        if before is not None and changes_a_fact(before, self.data):
            self._changed(entry, {one.drop for one in writes})
        return True

    def take_back(self, wrong: Entry, by: Entry) -> None:
        """Write anew what all others state, without one that was corrected."""
        others = [one for one in self.stating if one is not wrong]
        if len(others) == len(self.stating):
            return
        before = self.data
        drops = {one.drop for one in writes_of(wrong.body, before)}
        self.data, self.stating, self.disputes = None, [], Disputes()
        lost = set()
        for one in others:
            try:
                self._place(one)
            except PlaceError as error:
                lost.add(self._keep_unplaced(one, error))
        if changes_a_fact(before, self.data):
            lost |= drops
        touched = {record.id: record for drop in lost for record in self.about(drop)}
        for record in touched.values():
            record.happens(Event.CHANGED, by)

    def _place(self, entry: Entry) -> tuple[tuple[Write, ...], tuple[Dispute, ...]]:
        """Write what an entry states; what it wrote, and what is in dispute by it.

        Raises PlaceError, with nothing written, where something has no place.
        """
        if self.data is None and not isinstance(entry.body, bodies.SiteDescribed):
            raise PlaceError("no site is described yet")
        writes, data = writes_of(entry.body, self.data), self.data
        for one in writes:
            data = one.on(data)
        self.data = data
        if writes:
            self.stating.append(entry)
        return writes, tuple(new for one in writes for new in self.disputes.take(entry, one))

    def _keep_unplaced(self, entry: Entry, error: PlaceError) -> str | None:
        """Keep that an entry has no place; the drop that it is about."""
        drop = getattr(entry.body, "drop", None)
        about = drop if isinstance(drop, str) else drop_of(getattr(entry.body, "path", ()))
        self.unplaced.append(Unplaced(entry, str(error), about))
        return about

    def _changed(self, entry: Entry, drops: set[str | None]) -> None:
        """End the permits that name what was changed; a drop's own change has to be seen later."""
        for record in tuple(self.drops.values()):
            if record.id in drops:
                record.changed[entry.envelope.device] = entry
            if record.permit is not None and not drops.isdisjoint({None, record.id}):
                says = record.permit.says
                if self.codes(record.id) != (says.configuration, says.basis):
                    record.happens(Event.CHANGED, entry)
