"""The very things that came to the roof: each with its tag, its condition and its tests.

What a maker's plate says of a kind stands once, with the type (kit.py). What belongs to one thing
and to the day it was looked at stands here: a rig that names the tag names both.
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
from backspan.core.quantities import Ratio


class UnitKind(StrEnum):
    """What kinds of things carry a tag; of pieces it is a lot."""

    HOIST = "hoist"
    ROPE = "rope"
    BEAM = "beam"
    PIECE = "piece"
    STAGE = "stage"


class Condition(StrEnum):
    """In which state a thing was found."""

    SOUND = "sound"
    DEFECTIVE = "defective"
    WITHDRAWN = "withdrawn"


class LabelState(StrEnum):
    """Whether the maker's label on a thing can be read."""

    READABLE = "readable"
    UNREADABLE = "unreadable"
    NONE = "no label"


class TestOf(StrEnum):
    """What of a thing a test tried, where more than its name has to say so."""

    __test__ = False

    BRAKE = "secondary brake"
    LOADED = "hoist under load"
    OTHER = "other"


class TestFound(StrEnum):
    """How a test ended."""

    __test__ = False

    HELD = "held"
    NOT_HELD = "did not hold"


@dataclass(frozen=True, slots=True)
class Test:
    """A test of one thing: what was tested, by whom, when, and until when it counts.

    `what` is its name in anybody's words; `of` is what a check goes by. `found` is how it ended:
    one that did not hold counts for nothing, and speaks against the thing until a later one held.
    """

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT
    __test__: ClassVar[bool] = False

    what: str
    by: str
    at: str
    until: str
    document: str | None = None
    of: TestOf | None = None
    found: TestFound | None = None


class RopeDamage(StrEnum):
    """What somebody who looked along a rope saw of it; one thing of it is enough to refuse it."""

    NONE = "none seen"
    KINK = "kink"
    HEAT = "heat"
    BRAKE = "the secondary brake has gripped it"
    CRUSHED = "crushed, flattened or bird-caged"
    CORRODED = "corroded"
    REPAIRED = "repaired"


@dataclass(frozen=True, slots=True)
class RopeWear:
    """What was counted and seen of a wire rope where it is worst.

    Broken wires are those of one lay, and those in one strand of one lay; `wire_worn` is the
    share of an outside wire's diameter that is gone.
    """

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    broken_in_lay: StatedNotNegative[int] | None = None
    broken_in_strand: StatedNotNegative[int] | None = None
    wire_worn: StatedNotNegative[Ratio] | None = None
    damage: Stated[RopeDamage] | None = None


@dataclass(frozen=True, slots=True)
class Unit:
    """One thing with its tag as `id`, or one lot of equal pieces; `of` names its type.

    `count` is how many pieces a lot has; `wear` is of a wire rope.
    """

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    id: str
    kind: UnitKind
    of: str
    serial: str | None = None
    condition: Stated[Condition] | None = None
    label: Stated[LabelState] | None = None
    count: StatedPositive[int] | None = None
    wear: RopeWear | None = None
    tests: tuple[Test, ...] = ()
    values_from: Statement | None = None
