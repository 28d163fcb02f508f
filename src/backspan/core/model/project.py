"""All that one project file, or one folded ledger, holds."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Any, ClassVar

from backspan.core.model.basis import Basis, Confirmation
from backspan.core.model.evidence import STRICT, Statement
from backspan.core.model.kit import Kit
from backspan.core.model.people import Person
from backspan.core.model.plan import Plan
from backspan.core.model.rigs import Drop, Rig
from backspan.core.model.signed import SignedLimits
from backspan.core.model.site import Site
from backspan.core.model.topics import TakeOver
from backspan.core.quantities import Angle, Style

#: The format number this program writes and reads.
FORMAT = 1


@dataclass(frozen=True, slots=True)
class Ages:
    """For how many days an observation counts, its own day included, where not as usual.

    `observation` is what was seen (fastening, condition), `count` what was counted, `rig_geometry`
    what was taped on a rig, `geometry` what was taped on a roof or a thing of the kit.
    """

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    observation: int | None = None
    count: int | None = None
    rig_geometry: int | None = None
    geometry: int | None = None


@dataclass(frozen=True, slots=True)
class Project:
    """A site, its kit, its people, its drops and the basis they are reviewed on.

    `anchor_dates_required_by` names the owner's or project's paper under which no anchor is used
    past its dates. `most_tieback_angle` is how far a single tieback may turn off the perpendicular
    to the face, where that is not as usual.
    """

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    format: int
    site: Site
    basis: Basis
    kit: Kit = field(default_factory=Kit)
    drops: tuple[Drop, ...] = ()
    people: tuple[Person, ...] = ()
    confirmations: tuple[Confirmation, ...] = ()
    units: Style = Style.US
    prepared_by: str | None = None
    number: str | None = None
    plan: Plan | None = None
    taken_over: tuple[TakeOver, ...] = ()
    signed_limits: tuple[SignedLimits, ...] = ()
    ages: Ages | None = None
    anchor_dates_required_by: str | None = None
    most_tieback_angle: Angle | None = None
    values_from: Statement | None = None

    def moved_to(self, drop: str) -> tuple[str, ...]:
        """The drops that the rig of a drop was moved to: where any is, it hangs there no longer."""
        rigs = [(one.id, one.rig) for one in self.drops if one.rig is not None]
        return tuple(name for name, rig in rigs if rig.moved_from == drop)

    @property
    def standing_rigs(self) -> tuple[tuple[str, Rig], ...]:
        """The rigs on the roof as it stands, each with its drop: those moved away are not there."""
        rigs = [(drop.id, drop.rig) for drop in self.drops if drop.rig is not None]
        left = {rig.moved_from for _, rig in rigs}
        return tuple((drop, rig) for drop, rig in rigs if drop not in left)
