"""The building: roof levels with their edges, parapets, obstacles and anchors, in plan.

Plan coordinates are lengths from one datum of the site: x to the right of the sheet, y up it.
`north` is the angle of true north from the sheet's up direction, clockwise.
"""

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
from backspan.core.quantities import Angle, Force, Length

Point = tuple[Length, Length]


@dataclass(frozen=True, slots=True)
class Parapet:
    """The wall at an edge: height above the roof, thickness, what it is made of; none is 0 high."""

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    height: StatedNotNegative[Length]
    thickness: StatedNotNegative[Length]
    material: str | None = None


@dataclass(frozen=True, slots=True)
class Edge:
    """One side of a roof over a facade, from its left end to its right end seen from the roof."""

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    id: str
    start: Point
    end: Point
    parapet: Parapet | None = None
    faces: str | None = None


@dataclass(frozen=True, slots=True)
class Obstacle:
    """A thing on the roof that rigging must pass: plan outline and height."""

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    id: str
    name: str
    outline: tuple[Point, ...]
    height: StatedPositive[Length] | None = None


class AnchorUse(StrEnum):
    """What an anchor may be used for, by its papers."""

    FALL_ARREST = "fall arrest"
    TIEBACK = "tieback"
    SUSPENSION = "suspension"
    ROPE_DESCENT = "rope descent"
    SWAY_TIE = "sway tie"


class AnchorStanding(StrEnum):
    """Whether an anchor is in service."""

    IN_SERVICE = "in service"
    CONDITIONAL = "conditional"
    OUT_OF_SERVICE = "out of service"


class AnchorFixing(StrEnum):
    """How an anchor is held in the building."""

    THROUGH = "bolted through"
    CAST_IN = "cast in"
    WELDED = "welded"
    MECHANICAL = "expanding bolt"
    ADHESIVE = "adhesive"


@dataclass(frozen=True, slots=True)
class AnchorRating:
    """What an anchor carries without failure in one use, and in which direction of pull.

    `toward` is the direction in plan, clockwise from the sheet's up; `within` how far the pull may
    turn off it to either side: 180 degrees is any direction.
    """

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    use: AnchorUse
    load: StatedPositive[Force] | None = None
    toward: Stated[Angle] | None = None
    within: StatedNotNegative[Angle] | None = None


@dataclass(frozen=True, slots=True)
class Anchor:
    """A fixed point on the roof, with what its papers say.

    `certified` is the day of its last load test or certificate; `ratings` are what its papers say
    for each use.
    """

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    id: str
    at: Point
    kind: str
    uses: tuple[AnchorUse, ...] = ()
    standing: AnchorStanding = AnchorStanding.IN_SERVICE
    rating: StatedPositive[Force] | None = None
    ratings: tuple[AnchorRating, ...] = ()
    inspected: str | None = None
    certified: str | None = None
    fixed_by: AnchorFixing | None = None
    values_from: Statement | None = None


@dataclass(frozen=True, slots=True)
class Roof:
    """One roof level: outline, edges, obstacles, anchors, height above the ground datum."""

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    id: str
    name: str
    level: Stated[Length]
    outline: tuple[Point, ...]
    edges: tuple[Edge, ...]
    obstacles: tuple[Obstacle, ...] = ()
    anchors: tuple[Anchor, ...] = ()
    values_from: Statement | None = None


@dataclass(frozen=True, slots=True)
class Site:
    """The building and where it stands."""

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    name: str
    place: str
    roofs: tuple[Roof, ...]
    owner: str | None = None
    north: Angle = 0.0
    invented: str | None = None
    values_from: Statement | None = None
