"""The site as its entries make it so far: the project they state, and what is known of each drop.

What an entry states is written onto the project. A permit ends with the first entry that changes
what it names: its configuration or its basis.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from typing import Any

from backspan.core.ledger import bodies
from backspan.core.ledger.codes import basis_code
from backspan.core.ledger.disputes import Disputes
from backspan.core.ledger.document import PlaceError, changes_a_fact, project_of
from backspan.core.ledger.drop_states import Event
from backspan.core.ledger.entry import Entry
from backspan.core.ledger.errors import LedgerError
from backspan.core.ledger.matters import Matters
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

    @property
    def project(self) -> Project:
        """The project as it stands. Raises LedgerError where no site is described yet."""
        if self.data is None:
            raise LedgerError("no site is described: expected an entry 'site described' first")
        return project_of(self.data)

    @property
    def _drops(self) -> Sequence[Any]:
        """The drops as plain data."""
        return () if self.data is None else tuple(self.data["drops"])

    def record(self, drop: str) -> DropRecord:
        """What is known of a drop."""
        return self.drops.setdefault(drop, DropRecord(drop))

    def named(self, drops: Iterable[str]) -> list[DropRecord]:
        """The drops of those names; no name is every drop, and so is a name that none has.

        Whoever stops a drop under a wrong name means one that is there.
        """
        names, there = tuple(drops), tuple(one["id"] for one in self._drops)
        if not names or not set(names) <= set(there):
            names = there
        return [self.record(name) for name in names]

    def rig(self, drop: str) -> Any:
        """The rig of a drop as plain data; None where nothing is rigged."""
        found = (one["rig"] for one in self._drops if one["id"] == drop)
        return next(found, None)

    def against(self, drop: str) -> tuple[Why, Entry] | None:
        """What stands against people on a drop's stage, besides the state it is in."""
        there = {one["id"] for one in self._drops}
        for unplaced in self.unplaced:
            meant = unplaced.path[1:2] if unplaced.path[:1] == ("drops",) else ()
            if drop in meant or there.isdisjoint(meant):
                return Why.NOT_PLACED, unplaced.entry
        for dispute in self.disputes.unsettled:
            if dispute.drop in {None, drop}:
                return Why.DISPUTED, dispute.other
        units = () if self.data is None else self.data["kit"]["units"]
        worry = self.matters.worrying(drop, self.rig(drop), units)
        if worry is not None:
            return Why.CONCERN, worry
        wrong = self.matters.forbidding(drop)
        return None if wrong is None else (Why.DEFICIENT, wrong)

    def codes(self, drop: str) -> tuple[str, str] | None:
        """Both codes of a drop; None where it refers to what is not there."""
        project = self.project
        one = next((one for one in project.drops if one.id == drop), None)
        try:
            return (
                None
                if one is None
                else (configuration_code(project, one), basis_code(project, one))
            )
        except WireError:
            return None

    def writes(self, entry: Entry) -> bool:
        """Write what an entry states; False, and kept as unplaced, where it has no place."""
        placed = self._placed(entry)
        if placed is None:
            return False
        writes, data = placed
        before, self.data = self.data, data
        if writes:
            self.stating.append(entry)
        for one in writes:
            for dispute in tuple(self.disputes.take(entry, one)):
                for record in self.named(() if dispute.drop is None else (dispute.drop,)):
                    record.happens(Event.CHANGED, entry)
        if before is not None and changes_a_fact(before, data):
            self._changed(entry, {one.drop for one in writes})
        return True

    def take_back(self, wrong: Entry, by: Entry) -> None:
        """Write anew what all others state, without one that was corrected."""
        if wrong not in self.stating:
            return
        self.disputes.withdraw(wrong)
        drops = {one.drop for one in writes_of(wrong.body, self.data)}
        stating, before = [one for one in self.stating if one is not wrong], self.data
        self.data, self.stating = None, []
        for one in stating:
            placed = self._placed(one)
            if placed is not None:
                self.data = placed[1]
                self.stating.append(one)
        if changes_a_fact(before, self.data):
            for record in self.named(() if None in drops else (one for one in drops if one)):
                record.happens(Event.CHANGED, by)

    def _placed(self, entry: Entry) -> tuple[tuple[Write, ...], Any] | None:
        """What an entry writes, and the data with it; None where it has no place."""
        data, body = self.data, entry.body
        path = getattr(body, "path", ())
        if data is None and not isinstance(body, bodies.SiteDescribed):
            self.unplaced.append(Unplaced(entry, "no site is described yet"))
            return None
        try:
            writes = writes_of(body, data)
            for one in writes:
                data = one.on(data)
        except PlaceError as error:
            drop = getattr(body, "drop", None)
            path = ("drops", drop) if isinstance(drop, str) else path
            self.unplaced.append(Unplaced(entry, str(error), path))
            for record in self.named(path[1:2] if path[:1] == ("drops",) else ()):
                record.happens(Event.CHANGED, entry)
            return None
        return writes, data

    def _changed(self, entry: Entry, drops: set[str | None]) -> None:
        """End the permits that name what was changed; a drop's own change has to be seen later."""
        for record in tuple(self.drops.values()):
            if record.id in drops:
                record.changed[entry.envelope.device] = entry
            if record.permit is not None and not drops.isdisjoint({None, record.id}):
                says = record.permit.says
                if self.codes(record.id) != (says.configuration, says.basis):
                    record.happens(Event.CHANGED, entry)
