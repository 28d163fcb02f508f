"""Which drawing or picture lies under the plan of a roof by the record."""

from __future__ import annotations

from backspan.core.ledger import bodies
from backspan.core.ledger.entry import Entry
from backspan.core.ledger.folded import Folded
from backspan.core.model.underlay import Underlay


def underlay_of(site: Folded, roof: str) -> tuple[Entry, Underlay] | None:
    """The last entry that lays something under a roof and was not corrected, and what it lays.

    That it was stated is all that this says: whether it holds, `laid_under` tells.
    """
    for entry in reversed(site.by_hash.values()):
        match entry.body:
            case bodies.UnderlayLaid(roof=name, underlay=found) if name == roof:
                if entry.hash not in site.corrected:
                    return entry, found
    return None
