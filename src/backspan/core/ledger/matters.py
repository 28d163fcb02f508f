"""What is raised and closed at a site: deficiencies and concerns.

A deficiency is closed by looking again, not by an answer; a concern by a named test, not by a
repair. Closing needs to have seen what it closes.
"""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass, field, replace
from typing import Any

from backspan.core.ledger import bodies
from backspan.core.ledger.document import mentions
from backspan.core.ledger.entry import Entry
from backspan.core.ledger.standing import Refused, Why


def meant(drops: Collection[str], there: Collection[str]) -> Collection[str]:
    """The drops that somebody means by these names, of those that are there.

    No name is every drop, and so is a name that none has: whoever stops a drop under a wrong name
    means one that is there.
    """
    return drops if drops and set(drops) <= set(there) else there


def touches(about: str, drop: str, rig: Any, units: Any) -> bool:
    """Whether a remark about that name is about a drop, a thing its rig names, or its type."""
    names = {about, *(one["id"] for one in units if one["of"] == about)}
    return drop in names or any(mentions(rig, name) for name in names)


@dataclass(slots=True)
class Deficiency:
    """One deficiency with what was said and found of it since."""

    raised: Entry
    says: bodies.DeficiencyRaised
    answers: list[Entry] = field(default_factory=list)
    looked: list[tuple[Entry, bool]] = field(default_factory=list)
    closed: Entry | None = None

    @property
    def forbids(self) -> bool:
        """Whether it is open and forbids use."""
        return self.closed is None and self.says.forbids_use


@dataclass(slots=True)
class Concern:
    """One concern until a test settles it."""

    noted: Entry
    says: bodies.ConcernNoted
    closed: Entry | None = None


@dataclass(slots=True)
class Matters:
    """All deficiencies and concerns of a site, by their ids; an id taken twice is two matters."""

    deficiencies: dict[str, list[Deficiency]] = field(default_factory=dict)
    concerns: dict[str, list[Concern]] = field(default_factory=dict)
    refused: list[Refused] = field(default_factory=list)

    def take(self, entry: Entry) -> None:
        """Keep what an entry says of a matter; what closes nothing is refused and kept as that."""
        match entry.body:
            case bodies.DeficiencyRaised() as says:
                self.deficiencies.setdefault(says.id, []).append(Deficiency(entry, says))
            case bodies.DeficiencyAnswered() as says:
                for one in self._known(entry, says.id):
                    one.answers.append(entry)
            case bodies.DeficiencyReinspected() as says:
                for one in self._known(entry, says.id):
                    one.looked.append((entry, says.mended))
                    one.closed = one.closed if says.mended else None
            case bodies.DeficiencyClosed() as says:
                for one in self._known(entry, says.id):
                    self._close(entry, one)
            case bodies.ConcernNoted() as says:
                self.concerns.setdefault(says.id, []).append(Concern(entry, says))
            case bodies.ConcernClosed() as says:
                self._settle(entry, says)
            case _:
                return

    def copied(self) -> Matters:
        """The same matters to go on from."""
        return Matters(
            {
                name: [
                    replace(one, answers=list(one.answers), looked=list(one.looked))
                    for one in several
                ]
                for name, several in self.deficiencies.items()
            },
            {name: [replace(one) for one in several] for name, several in self.concerns.items()},
            list(self.refused),
        )

    def forbidding(self, drop: str, there: Collection[str]) -> Entry | None:
        """An open deficiency that forbids the use of a drop, of those that are there."""
        found = (one for each in self.deficiencies.values() for one in each)
        against = (one for one in found if one.forbids and drop in meant(one.says.drops, there))
        return next((one.raised for one in against), None)

    def worrying(self, drop: str, rig: Any, units: Any) -> Entry | None:
        """An open concern about the drop, or about something that its rig names."""
        found = (one for each in self.concerns.values() for one in each if one.closed is None)
        return next((one.noted for one in found if self.meets(one, drop, rig, units)), None)

    @staticmethod
    def meets(concern: Concern, drop: str, rig: Any, units: Any) -> bool:
        """Whether a concern is about a drop, a thing its rig names, or the type of such a thing."""
        return touches(concern.says.about, drop, rig, units)

    def _known(self, entry: Entry, name: str) -> list[Deficiency]:
        found = [one for one in self.deficiencies.get(name, ()) if entry.has_seen(one.raised)]
        if not found:
            self.refused.append(Refused(entry, Why.UNKNOWN))
        return found

    def _close(self, entry: Entry, one: Deficiency) -> None:
        seen = [mended for looked, mended in one.looked if entry.has_seen(looked)]
        unseen = [mended for looked, mended in one.looked if not entry.has_seen(looked)]
        if not seen or not seen[-1] or not all(unseen):
            self.refused.append(Refused(entry, Why.NOT_MENDED, one.raised))
        else:
            one.closed = entry

    def _settle(self, entry: Entry, says: bodies.ConcernClosed) -> None:
        found = [one for one in self.concerns.get(says.id, ()) if entry.has_seen(one.noted)]
        if not found:
            self.refused.append(Refused(entry, Why.UNKNOWN))
        elif not says.test.strip():
            self.refused.append(Refused(entry, Why.NO_TEST))
        else:
            for one in found:
                one.closed = entry
