"""The topics a drop must be judged on, and the record of one that a person judged instead."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from typing import Any, ClassVar

from backspan.core.model.evidence import STRICT


class Topic(StrEnum):
    """What the answer of a drop must cover, built into the program or not."""

    DESIGN = "design and papers"
    TIPPING = "tipping"
    BEAM = "beam"
    STANDS_ON = "what it stands on"
    LINE = "suspension line and hardware"
    TIEBACK = "tieback"
    ANCHORS = "anchors"
    STAGE = "stage and hoists"
    PEOPLE = "people and loads"
    FALL_ARREST = "fall arrest"
    INDEPENDENCE = "independence"
    EDGES = "edges and softeners"
    POWER = "power"
    WIND = "wind"
    POWER_LINES = "power lines"
    PUBLIC = "public below"
    RESCUE = "rescue"
    SHIFT = "shift inspection"


@dataclass(frozen=True, slots=True)
class DropTaken:
    """A drop of a take-over, with the code of the configuration it was given for."""

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    drop: str
    configuration: str


@dataclass(frozen=True, slots=True)
class TakeOver:
    """Topics that a named person judged in writing instead of the program, until a day."""

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    by: str
    document: str
    at: str
    until: str
    topics: tuple[Topic, ...]
    drops: tuple[DropTaken, ...]
