"""Where a drop stands by its entries: what is kept of it while they are folded, and what is told.

Each step away from people on the stage is kept by device. A step forward has to have seen all of
them: so a stop beats a permit whatever the order in which they came.
"""

from __future__ import annotations

import datetime
from dataclasses import dataclass, field, replace
from enum import StrEnum

from backspan.core.ledger.bodies import UsePermitted
from backspan.core.ledger.drop_states import FORWARD, TABLE, Event, Refusal, State
from backspan.core.ledger.entry import Entry


class Why(StrEnum):
    """Why a step forward was refused, or a drop is not in service, besides the table's reasons."""

    UNSEEN = "the one who signed it did not know of this entry"
    DISPUTED = "two statements differ and nobody has settled which holds"
    NOT_PLACED = "this entry states something that has no place in the site"
    DEFICIENT = "a deficiency that forbids use is open"
    CONCERN = "a concern about something of the rig is open"
    ON_HOLD = "use is on hold"
    OTHER_CONFIGURATION = "it names another configuration than is there"
    OTHER_BASIS = "it names another basis than is in force"
    NO_PASS = "the review it names is no pass"
    OWN_RIG = "nobody accepts the rig of their own employer"
    NOT_RIGGED = "there is no such line on the drop's rig"
    ONE_PERSON = "the second person is the one who signs"
    OTHER_DAY = "it was not written on the day that it is for"
    NOT_MENDED = "nobody who looked again found it mended"
    UNKNOWN = "there is no such thing"
    NO_TEST = "no test is named"
    NOT_TO_CORRECT = "what stops use, or happened, is not undone by a correction"
    NO_CHECK_TODAY = "no shift check of the day finds it fit"
    LAPSED = "something it leans on has lapsed"
    REFUSED = "the review of the day refuses it"
    STOPPED = "use was stopped"
    ENDED = "this entry ended the acceptance"


@dataclass(frozen=True, slots=True)
class Refused:
    """A step that was refused: the entry that asked for it, why, and what stands against it."""

    entry: Entry
    why: Why | Refusal
    by: Entry | None = None


@dataclass(frozen=True, slots=True)
class Ended:
    """An acceptance that holds no longer, with the entry that ended it."""

    permit: Entry
    by: Entry
    event: Event


@dataclass(frozen=True, slots=True)
class Permit:
    """A permit in force: its entry and what it says."""

    entry: Entry
    says: UsePermitted


@dataclass(slots=True)
class DropRecord:
    """What is known of a drop while its entries are folded."""

    id: str
    state: State = State.PLANNED
    connected: dict[str, Entry] = field(default_factory=dict)
    permit: Permit | None = None
    fit: Entry | None = None
    restrictions: list[Entry] = field(default_factory=list)
    stops: list[Entry] = field(default_factory=list)
    holds: list[Entry] = field(default_factory=list)
    refused: list[Refused] = field(default_factory=list)
    ended: list[Ended] = field(default_factory=list)
    lowered: dict[str, Entry] = field(default_factory=dict)
    changed: dict[str, Entry] = field(default_factory=dict)

    def happens(self, event: Event, entry: Entry) -> bool:
        """Take an event as the table says; False where it is refused, which is kept."""
        following = TABLE[(self.state, event)]
        if isinstance(following, Refusal):
            self.refused.append(Refused(entry, following))
            return False
        if event not in FORWARD:
            self.lowered[entry.envelope.device] = entry
        if self.permit is not None and following not in {State.ACCEPTED, State.IN_SERVICE}:
            self.ended.append(Ended(self.permit.entry, entry, event))
            self.permit = None
            self.restrictions.clear()
        if following is not State.IN_SERVICE:
            self.fit = None
        self.state = following
        return True

    def copied(self) -> DropRecord:
        """The same record to go on from."""
        return replace(
            self,
            connected=dict(self.connected),
            restrictions=list(self.restrictions),
            stops=list(self.stops),
            holds=list(self.holds),
            refused=list(self.refused),
            ended=list(self.ended),
            lowered=dict(self.lowered),
            changed=dict(self.changed),
        )

    def unseen(self, entry: Entry, *, values: bool = False) -> Entry | None:
        """A step away, or with `values` a change, that who signed this entry did not know of."""
        against = [*self.lowered.values(), *(self.changed.values() if values else ())]
        return next((one for one in against if not entry.has_seen(one)), None)

    def refuse(self, entry: Entry, why: Why | Refusal, by: Entry | None = None) -> None:
        """Keep that a step was refused."""
        self.refused.append(Refused(entry, why, by))


@dataclass(frozen=True, slots=True)
class Standing:
    """Where a drop stands on a day, with the reasons why it is not in service, worst first."""

    drop: str
    on: datetime.date
    state: State
    reasons: tuple[tuple[Why | Refusal, Entry | None], ...]
    permit: Permit | None
    restrictions: tuple[Entry, ...]
    connected: tuple[str, ...]
    refused: tuple[Refused, ...]
    ended: tuple[Ended, ...]

    @property
    def in_service(self) -> bool:
        """Whether the record holds nothing against people on it that day."""
        return self.state is State.IN_SERVICE and not self.reasons


@dataclass(frozen=True, slots=True)
class Unplaced:
    """An entry that states something which has no place in the site as it was by then.

    `drop` is the one that it is about; None where it may be about any.
    """

    entry: Entry
    says: str
    drop: str | None = None
