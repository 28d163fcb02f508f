"""A draft: acts in their order, as data and as the site they make."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Any

from backspan.core.drafting import building, rigging, standing
from backspan.core.drafting.acting import Act, DraftError, Hand
from backspan.core.errors import quoted
from backspan.core.model.project import Project
from backspan.core.wire import WireError, from_data, to_data

__all__ = ["Draft", "DraftError", "act_of", "data_of", "drawn"]

#: An act's name in a draft; never changed once a browser may hold a draft with it.
ACTS: Mapping[str, type[Any]] = MappingProxyType(
    {
        "draw roof": building.DrawRoof,
        "move corner": building.MoveCorner,
        "move edge": building.MoveEdge,
        "add corner": building.AddCorner,
        "raise parapet": building.RaiseParapet,
        "place obstacle": standing.PlaceObstacle,
        "move obstacle": standing.MoveObstacle,
        "take obstacle": standing.TakeObstacle,
        "place anchor": standing.PlaceAnchor,
        "move anchor": standing.MoveAnchor,
        "place drop": rigging.PlaceDrop,
        "move drop": rigging.MoveDrop,
        "place point": rigging.PlacePoint,
        "move point": rigging.MovePoint,
        "move beam": rigging.MoveBeam,
        "lead tieback": rigging.LeadTieback,
        "lead lifeline": rigging.LeadLifeline,
        "carry rig": rigging.CarryRig,
    }
)
_NAMES = {act: name for name, act in ACTS.items()}
#: So many acts before they are signed; each page carries them all.
MOST = 2_000


@dataclass(frozen=True, slots=True)
class Draft:
    """Acts that nobody signed yet, first to last."""

    acts: tuple[Act, ...] = ()

    def after(self, act: Act) -> Draft:
        """The draft with one more act. Raises DraftError where it has too many."""
        if len(self.acts) >= MOST:
            raise DraftError(f"found {MOST:,} acts not signed, expected them to be signed first")
        return Draft((*self.acts, act))

    def without_last(self) -> Draft:
        """The draft with its last act taken back."""
        return Draft(self.acts[:-1])


def act_of(data: Any) -> Act:
    """The act that a page sent. Raises DraftError where it is none."""
    name = data.get("act") if isinstance(data, dict) else None
    found = ACTS.get(name) if isinstance(name, str) else None
    if found is None:
        raise DraftError(f"found the act {quoted(name)}, expected one of: {', '.join(ACTS)}")
    try:
        act: Act = from_data(found, {one: data[one] for one in data if one != "act"})
    except WireError as error:
        raise DraftError(f"{name}: {error}; expected all that this act says, in SI") from error
    return act


def data_of(act: Act) -> dict[str, Any]:
    """An act as plain data, for a page to carry."""
    return {"act": _NAMES[type(act)], **to_data(act)}


def drawn(project: Project, acts: Iterable[Act], hand: Hand) -> Project:
    """The site with every act done, first to last.

    Raises DraftError, with the number of the act, where one cannot be done.
    """
    for number, act in enumerate(acts, start=1):
        try:
            project = act.on(project, hand)
        except DraftError as error:
            raise DraftError(f"{number}. {act.told(hand.style)}: {error}") from error
    return project
