"""The equipment brought to the roof: hoists, ropes, terminations, beams, pieces, stages."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from typing import Any, ClassVar

from backspan.core.model.evidence import (
    STRICT,
    Stated,
    StatedNotNegative,
    StatedPositive,
    Statement,
)
from backspan.core.quantities import Force, Length, LinearMass, Mass, Ratio


@dataclass(frozen=True, slots=True)
class Hoist:
    """A powered hoist: rated and stall load, the trip point of its limiter, its own mass.

    `limiter_trip` is the load at which power is cut; a hoist without a limiter trips at its
    stall load.
    """

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    id: str
    name: str
    rated_load: StatedPositive[Force]
    stall_load: StatedPositive[Force] | None = None
    limiter_trip: StatedPositive[Force] | None = None
    mass: StatedPositive[Mass] | None = None
    serial: str | None = None
    values_from: Statement | None = None


class RopeKind(StrEnum):
    """What a rope is made of."""

    WIRE = "wire"
    SYNTHETIC = "synthetic fibre"
    NATURAL = "natural fibre"


@dataclass(frozen=True, slots=True)
class Rope:
    """A rope as its certificate describes it."""

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    id: str
    name: str
    kind: RopeKind
    diameter: StatedPositive[Length]
    breaking_force: StatedPositive[Force] | None = None
    mass_per_length: StatedPositive[LinearMass] | None = None
    values_from: Statement | None = None


@dataclass(frozen=True, slots=True)
class Termination:
    """How a rope end is made, and the share of the rope's strength it keeps."""

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    id: str
    name: str
    efficiency: StatedPositive[Ratio] | None = None
    values_from: Statement | None = None


class LabelState(StrEnum):
    """Whether the maker's label on a beam can be read."""

    READABLE = "readable"
    UNREADABLE = "unreadable"
    NONE = "no label"


@dataclass(frozen=True, slots=True)
class BeamLabel:
    """The maker's label on a beam: how many pieces of counterweight it allows."""

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    state: Stated[LabelState]
    most_pieces: StatedPositive[int] | None = None
    most_mass: StatedPositive[Mass] | None = None


@dataclass(frozen=True, slots=True)
class Beam:
    """An outrigger beam: full length as assembled, own mass, label."""

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    id: str
    name: str
    length: StatedPositive[Length] | None = None
    mass: StatedPositive[Mass] | None = None
    centroid_from_tail: StatedPositive[Length] | None = None
    label: BeamLabel | None = None
    values_from: Statement | None = None


class PieceKind(StrEnum):
    """What a counterweight piece is."""

    STEEL_PLATE = "purpose-made steel plate"
    CAST_IRON = "purpose-made cast iron"
    CONCRETE_CAST = "purpose-made concrete block"
    SAND = "sand"
    GRAVEL = "gravel"
    WATER = "water"
    MASONRY_UNIT = "masonry unit"
    ROOFING_ROLL = "roll of roofing felt"
    SCRAP = "scrap or site material"


@dataclass(frozen=True, slots=True)
class Piece:
    """One counterweight: stamped mass, how much of the beam's length it takes."""

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    id: str
    name: str
    kind: PieceKind
    mass: StatedPositive[Mass]
    length_on_beam: StatedPositive[Length] | None = None
    values_from: Statement | None = None


@dataclass(frozen=True, slots=True)
class Stage:
    """A suspended stage: size, and its masses for rules that count what hangs.

    `dead_mass` is all that hangs without people and material: stage, stirrups, hoists, ropes
    and cord. `intended_load` is the people, tools and material expected at any one time.
    """

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    id: str
    name: str
    length: StatedPositive[Length]
    width: StatedPositive[Length] | None = None
    dead_mass: StatedPositive[Mass] | None = None
    intended_load: StatedNotNegative[Mass] | None = None
    values_from: Statement | None = None


@dataclass(frozen=True, slots=True)
class Kit:
    """All equipment a project names."""

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    hoists: tuple[Hoist, ...] = ()
    ropes: tuple[Rope, ...] = ()
    terminations: tuple[Termination, ...] = ()
    beams: tuple[Beam, ...] = ()
    pieces: tuple[Piece, ...] = ()
    stages: tuple[Stage, ...] = ()
    values_from: Statement | None = None
