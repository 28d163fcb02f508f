"""One number a check may read: which quantity it is, where it stands, what is stated."""

from __future__ import annotations

import math
from dataclasses import dataclass, field

from backspan.core.findings import Message
from backspan.core.model.evidence import StatedValue
from backspan.core.model.rigs import CounterweightedBeam, SuspensionPoint
from backspan.core.quantities import FORCE, Amount
from backspan.core.quantities.named import QUANTITIES
from backspan.core.quantities.quantity import Quantity
from backspan.core.sheet.case import Case, Place

UNKNOWN = math.nan


@dataclass(frozen=True, slots=True)
class Read:
    """A number of the project that may be read; nobody need have stated it."""

    quantity: Quantity
    stated: StatedValue[float] | StatedValue[int] | None
    place: Place
    as_stated: float = field(init=False)
    """The number in SI as stated; NaN where nobody stated it."""
    refer: Message | None = None
    """What a qualified person has to say of it, where it stands in for what was not stated."""

    def __post_init__(self) -> None:
        """Take the number out once: searches read it thousands of times."""
        number = UNKNOWN if self.stated is None else self.stated.value
        object.__setattr__(self, "as_stated", number)


def read_of(name: str, record: object | None, place: Place) -> Read:
    """The quantity of that name as the record at `place` states it, if there is one."""
    quantity = QUANTITIES[name]
    stated = None if record is None else getattr(record, quantity.field)
    return Read(quantity, stated, (*place, quantity.field))


def beside(
    name: str, number: float, stated: StatedValue[float] | StatedValue[int], place: Place
) -> Read:
    """A number worked out of a stated one: who looked at that one again looked at this."""
    worked_out = StatedValue(number, by=stated.by, checked_by=stated.checked_by)
    return Read(QUANTITIES[name], worked_out, place)


@dataclass(frozen=True, slots=True)
class GroupReads:
    """A group of equal pieces on a beam, and how many of them share one place."""

    count: Read
    mass: Read
    length: Read
    per_row: int


def hoist_reads(case: Case, point: SuspensionPoint) -> tuple[Read, Read]:
    """Rated load and stall load of the hoist on a suspension point."""
    hoist = case.hoist(point.hoist)
    place = ("kit", "hoists", hoist.id)
    stall = read_of("stall_load", hoist, place)
    if stall.stated is None and hoist.limiter_trip is not None:
        # Power is cut there, which is a stall too; whether the hoist stalls later is not known.
        trip = Amount(hoist.limiter_trip.value, FORCE)
        said = Message("need.limiter-as-stall", (("hoist", hoist.id), ("trip", trip)))
        stall = Read(stall.quantity, hoist.limiter_trip, (*place, "limiter_trip"), refer=said)
    return read_of("rated_load", hoist, place), stall


def piece_reads(case: Case, support: CounterweightedBeam, place: Place) -> tuple[GroupReads, ...]:
    """The groups of pieces on a beam, from the tail inwards."""
    groups = []
    for index, group in enumerate(support.stack.groups):
        piece = case.piece(group.piece)
        kit = ("kit", "pieces", piece.id)
        groups.append(
            GroupReads(
                read_of("pieces", group, (*place, "stack", "groups", index)),
                read_of("piece_mass", piece, kit),
                read_of("piece_length", piece, kit),
                group.per_row,
            )
        )
    return tuple(groups)
