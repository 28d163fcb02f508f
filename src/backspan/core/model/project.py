"""All that one project file, or one folded ledger, holds."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Any, ClassVar

from backspan.core.model.basis import Basis, Confirmation
from backspan.core.model.evidence import STRICT
from backspan.core.model.kit import Kit
from backspan.core.model.people import Person
from backspan.core.model.plan import Plan
from backspan.core.model.rigs import Drop
from backspan.core.model.site import Site
from backspan.core.model.topics import TakeOver
from backspan.core.quantities import Style

#: The format number this program writes and reads.
FORMAT = 1


@dataclass(frozen=True, slots=True)
class Project:
    """A site, its kit, its people, its drops and the basis they are reviewed on."""

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
