"""Histories of a made-up site: what devices write, together or apart, from one sound rig."""

from __future__ import annotations

import datetime
from collections.abc import Iterable
from dataclasses import dataclass, field

from backspan.core.ledger import bodies
from backspan.core.ledger.chain import Chains, take_all
from backspan.core.ledger.described import entries_of
from backspan.core.ledger.drop_states import Refusal, State
from backspan.core.ledger.entry import Entry, Signer, read_entry
from backspan.core.ledger.fold import fold
from backspan.core.ledger.folded import Folded
from backspan.core.ledger.kinds import Body
from backspan.core.ledger.service import standing_on
from backspan.core.ledger.standing import DropRecord, Standing, Why
from backspan.core.model.evidence import Evidence, StatedValue
from backspan.core.model.project import Project
from backspan.core.model.rigs import Rig
from tests.unit.core.ledger.writing import ENGINEER, SITE
from tests.unit.core.rigs import LIBRARY, ON, PROJECT, TODAY

DROP = "D"
TOMORROW = ON + datetime.timedelta(days=1)
RIG = PROJECT.drops[0].rig or Rig()
ROOF = PROJECT.site.roofs[0]
#: The anchor that one of the tiebacks goes to.
TIED = "A1"
PAPERS = PROJECT.taken_over
REACH = ("drops", "D", "rig", "suspension_points", "L", "counterweighted_beam", "reach")
NOON = f"{TODAY}T12:00:00+00:00"


@dataclass
class History:
    """A device with all that it knows; `entries` are in the order it got them."""

    device: str = "pad"
    chains: Chains = field(default_factory=lambda: Chains(SITE))
    entries: list[Entry] = field(default_factory=list)

    def says(self, body: Body, *, at: str = NOON, signer: Signer = ENGINEER) -> Entry:
        """Write the next entry of this device."""
        entry = read_entry(self.chains.following(self.device, body, at=at, signer=signer))
        assert self.chains.take(entry)
        self.entries.append(entry)
        return entry

    def apart(self, device: str) -> History:
        """Another device that knows what this one does, from now on by itself."""
        links = {name: list(one) for name, one in self.chains.links.items()}
        return History(device, Chains(SITE, links), list(self.entries))

    def gets(self, other: History) -> None:
        """Take all that another device has."""
        self.entries += list(take_all(self.chains, other.entries))

    @property
    def site(self) -> Folded:
        """The site by what this device knows."""
        return fold(self.entries)

    @property
    def drop(self) -> DropRecord:
        """What is known of the drop of the rig."""
        return self.site.record(DROP)

    @property
    def state(self) -> State:
        """Where the drop stands."""
        return self.drop.state

    def standing(self, on: datetime.date = ON) -> Standing:
        """Where the drop stands on a day."""
        return standing_on(fold(self.entries, on=on), DROP, LIBRARY, on=on)


def described(project: Project = PROJECT) -> History:
    """A site whose drop is rigged."""
    history = History()
    for body in entries_of(project):
        history.says(body)
    return history


def lines() -> Iterable[str]:
    """The lines of the rig."""
    points = [one.id for one in RIG.suspension_points]
    return [*points, *(one.id for one in RIG.lines)]


def connected(project: Project = PROJECT) -> History:
    """A site whose drop's lines are connected."""
    history = described(project)
    for line in lines():
        history.says(bodies.LineConnected(DROP, line, "bo"))
    return history


def permit(history: History) -> bodies.UsePermitted:
    """A permit for the drop as this device knows it."""
    codes = history.site.codes(DROP)
    assert codes is not None
    return bodies.UsePermitted(DROP, *codes, answer="pass")


def accepted(project: Project = PROJECT) -> History:
    """A site whose drop is accepted."""
    history = connected(project)
    history.says(permit(history))
    return history


def in_service(project: Project = PROJECT) -> History:
    """A site whose drop is in service that day."""
    history = accepted(project)
    history.says(bodies.ShiftChecked(DROP, TODAY, fit=True))
    return history


def reach(metres: float) -> bodies.NumberFound:
    """A reach that somebody taped."""
    return bodies.NumberFound(REACH, StatedValue(metres, 0.0, Evidence.MEASURED, "MT", TODAY))


def reasons(history: History, on: datetime.date = ON) -> list[Why | Refusal]:
    """Why the drop is not in service, worst first."""
    return [why for why, _ in history.standing(on).reasons]


def refusals(history: History) -> list[Why | Refusal]:
    """Why steps of the drop were refused."""
    return [one.why for one in history.drop.refused]
