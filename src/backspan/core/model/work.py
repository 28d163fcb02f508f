"""The work on a stage, step by step: who stands where, what lies where, when all ride down."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from typing import Any, ClassVar

from backspan.core.model.evidence import STRICT, StatedPositive
from backspan.core.quantities import Length, Mass


class LoadKind(StrEnum):
    """What stands or lies on a stage."""

    PERSON = "person"
    MATERIAL = "material"
    TOOLS = "tools"


@dataclass(frozen=True, slots=True)
class PlacedLoad:
    """A person or a thing on the stage in a step of the work.

    `at` is along the stage from its left stirrup as one looks out, less than zero beyond it; `to`
    is how far it goes from there in this step. What nobody placed may be anywhere on the deck; so
    may a person of whom nobody said where they go: who stays goes to the same place. A person whose
    mass nobody stated has the one that the rules plan with.
    """

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    id: str
    kind: LoadKind
    mass: StatedPositive[Mass] | None = None
    at: Length | None = None
    to: Length | None = None


@dataclass(frozen=True, slots=True)
class WorkStep:
    """What is on the stage at one time: at work, when it is packed, when all ride down."""

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    id: str
    loads: tuple[PlacedLoad, ...]
    name: str | None = None
