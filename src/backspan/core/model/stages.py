"""A stage as it hangs: how its hoists are worked, and what somebody found who looked at it."""

from __future__ import annotations

from dataclasses import dataclass, field
from enum import StrEnum
from typing import Any, ClassVar

from backspan.core.model.evidence import STRICT, Stated, StatedNotNegative, StatedPositive
from backspan.core.model.work import WorkStep
from backspan.core.quantities import Length


class Control(StrEnum):
    """What the hoists of a stage are worked with."""

    EACH = "each hoist its own"
    TESTED_SO = "both on one control, tested so"
    ONE = "both on one control"


class Overhead(StrEnum):
    """What a stage has above its riders, and what that hangs from."""

    NOTHING = "nothing overhead"
    OWN_LINES = "a second level or canopy, with support lines of its own"
    ON_ITS_LINES = "a second level or canopy"


class Joints(StrEnum):
    """The joints and pins between the modules of a stage."""

    SOUND = "there and sound"
    DEFECTIVE = "defective"
    ONE_PIECE = "none needed"


class OnStage(StrEnum):
    """A part that every stage has."""

    SOUND = "there and sound"
    DEFECTIVE = "defective"
    ABSENT = "not there"


class FaceSide(StrEnum):
    """What keeps riders from falling between the stage and the face."""

    RAIL = "a rail on that side too"
    TIED = "every rider tied"
    NEITHER = "neither rail nor tie"


class HighRail(StrEnum):
    """Whether a top rail that is higher than usual meets all else that is asked of a guardrail."""

    ALL = "all else of the rail is met"
    NOT_ALL = "not all else of the rail is met"


class Along(StrEnum):
    """What the stage can catch on along its travel."""

    NOTHING = "nothing along its way"
    GUIDED = "kept clear by guides"
    CATCHES = "something it has to be held off"


class Sway(StrEnum):
    """What keeps the stage from swaying."""

    TIED = "tied against sway"
    EVALUATED = "not needed, evaluated"
    WINDOW_ANCHORS = "tied to window cleaners' anchors"
    CUPS = "held by suction cups"
    LOOSE = "not tied"


class FirstLift(StrEnum):
    """Whether the stage was tried a few feet up since it was set up."""

    HELD = "lifted and held, both brakes"
    NOT_YET = "not yet"


class HotWork(StrEnum):
    """Welding and cutting from the stage, whose current must not go by its ropes."""

    NO = "no hot work"
    INSULATED = "insulated and grounded"
    BARE = "not insulated or not grounded"


class Level(StrEnum):
    """Whether both hoists bring the stage along together."""

    LEVEL = "runs level"
    OUT = "runs out of level"


class Bow(StrEnum):
    """How far the loaded stage bends between its stirrups."""

    WITHIN = "bends within a sixtieth of its span"
    MORE = "bends more than a sixtieth"


class Drives(StrEnum):
    """What drives the hoists, and whether somebody can reach into it."""

    ENCLOSED = "gears and brakes enclosed"
    OPEN = "gears or brakes open"
    FUEL = "fuel burnt on the stage"


@dataclass(frozen=True, slots=True)
class StageFound:
    """What was found of a stage where it hangs.

    `fixed` is of the stage on its stirrups. `rail_height` is from the deck to the top rail,
    `to_face` from the stage's inner edge to the face.
    """

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    joints: Stated[Joints] | None = None
    fixed: Stated[OnStage] | None = None
    guardrail: Stated[OnStage] | None = None
    rail_height: StatedPositive[Length] | None = None
    high_rail: Stated[HighRail] | None = None
    toeboard: Stated[OnStage] | None = None
    to_face: StatedNotNegative[Length] | None = None
    face_side: Stated[FaceSide] | None = None
    along: Stated[Along] | None = None
    sway: Stated[Sway] | None = None
    first_lift: Stated[FirstLift] | None = None
    hot_work: Stated[HotWork] | None = None
    deck: Stated[OnStage] | None = None
    running: Stated[Level] | None = None
    bow: Stated[Bow] | None = None
    drives: Stated[Drives] | None = None


@dataclass(frozen=True, slots=True)
class HungStage:
    """A stage and the suspension points it hangs from.

    `work` is who and what is on it when. `control` and `overhead` are of the rig as it is made,
    `found` is what was seen on a day.
    """

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    stage: str
    from_points: tuple[str, ...]
    control: Stated[Control] | None = None
    overhead: Stated[Overhead] | None = None
    found: StageFound = field(default_factory=StageFound)
    work: tuple[WorkStep, ...] | None = None
