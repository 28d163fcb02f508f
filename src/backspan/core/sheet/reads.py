"""One value a check may read: what it is called, where it stands, what evidence it asks for."""

from __future__ import annotations

from dataclasses import dataclass

from backspan.core.judgement.case import Case, Place
from backspan.core.judgement.inputs import EvidenceClass
from backspan.core.model.evidence import StatedValue
from backspan.core.model.rigs import CounterweightedBeam, SuspensionPoint
from backspan.core.quantities import FORCE, MASS, Dimension


@dataclass(frozen=True, slots=True)
class Read:
    """A stated number of the project; `dimension` is None for a count."""

    name: str
    stated: StatedValue[float] | StatedValue[int] | None
    asks: EvidenceClass
    place: Place
    dimension: Dimension | None


def hoist_reads(case: Case, point: SuspensionPoint) -> tuple[Read, Read]:
    """Rated load and stall load of the hoist on a suspension point."""
    hoist = case.hoist(point.hoist)
    place = ("kit", "hoists", hoist.id)
    rating = EvidenceClass.RATING
    return (
        Read("rated_load", hoist.rated_load, rating, (*place, "rated_load"), FORCE),
        Read("stall_load", hoist.stall_load, rating, (*place, "stall_load"), FORCE),
    )


def piece_reads(
    case: Case, support: CounterweightedBeam, place: Place
) -> tuple[tuple[Read, Read], ...]:
    """Count and mass of each group of pieces on a beam, from the tail inwards."""
    groups = []
    for index, group in enumerate(support.stack.groups):
        piece = case.piece(group.piece)
        at = (*place, "stack", "groups", index, "count")
        count = Read("pieces", group.count, EvidenceClass.COUNT, at, None)
        of_mass = ("kit", "pieces", piece.id, "mass")
        mass = Read("piece_mass", piece.mass, EvidenceClass.MASS, of_mass, MASS)
        groups.append((count, mass))
    return tuple(groups)
