"""One value a check may read: what it is called, where it stands, what evidence it asks for."""

from __future__ import annotations

import math
from dataclasses import dataclass, field

from backspan.core.model.evidence import StatedValue
from backspan.core.model.rigs import CounterweightedBeam, SuspensionPoint
from backspan.core.quantities import FORCE, LENGTH, MASS, Dimension
from backspan.core.sheet.case import Case, Place
from backspan.core.sheet.inputs import EvidenceClass

UNKNOWN = math.nan


@dataclass(frozen=True, slots=True)
class Read:
    """A stated number of the project; `dimension` is None for a count."""

    name: str
    stated: StatedValue[float] | StatedValue[int] | None
    asks: EvidenceClass
    place: Place
    dimension: Dimension | None
    as_stated: float = field(init=False)
    """The number in SI as stated; NaN where nobody stated it."""

    def __post_init__(self) -> None:
        """Take the number out once: searches read it thousands of times."""
        number = UNKNOWN if self.stated is None else self.stated.value
        object.__setattr__(self, "as_stated", number)


def hoist_reads(case: Case, point: SuspensionPoint) -> tuple[Read, Read]:
    """Rated load and stall load of the hoist on a suspension point."""
    hoist = case.hoist(point.hoist)
    place = ("kit", "hoists", hoist.id)
    rating = EvidenceClass.RATING
    return (
        Read("rated_load", hoist.rated_load, rating, (*place, "rated_load"), FORCE),
        Read("stall_load", hoist.stall_load, rating, (*place, "stall_load"), FORCE),
    )


@dataclass(frozen=True, slots=True)
class GroupReads:
    """A group of equal pieces on a beam, and how many of them share one place."""

    count: Read
    mass: Read
    length: Read
    per_row: int


def piece_reads(case: Case, support: CounterweightedBeam, place: Place) -> tuple[GroupReads, ...]:
    """The groups of pieces on a beam, from the tail inwards."""
    groups = []
    for index, group in enumerate(support.stack.groups):
        piece = case.piece(group.piece)
        at = (*place, "stack", "groups", index, "count")
        kit = ("kit", "pieces", piece.id)
        long = piece.length_on_beam
        groups.append(
            GroupReads(
                Read("pieces", group.count, EvidenceClass.COUNT, at, None),
                Read("piece_mass", piece.mass, EvidenceClass.MASS, (*kit, "mass"), MASS),
                Read(
                    "piece_length", long, EvidenceClass.GEOMETRY, (*kit, "length_on_beam"), LENGTH
                ),
                group.per_row,
            )
        )
    return tuple(groups)
