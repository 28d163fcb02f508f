"""A drawing or letter of a licensed engineer, and how far it reaches."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, ClassVar

from backspan.core.model.evidence import STRICT
from backspan.core.quantities import Force, Length

#: The numbers a paper may limit.
LIMITS = ("most_reach", "least_backspan", "most_rated_load", "most_front", "most_rear")


@dataclass(frozen=True, slots=True)
class SignedLimits:
    """What an engineer signed for some drops until a day, and the limits it holds within.

    `most_front` and `most_rear` are what may come on the fulcrum and on the rear stand of a beam
    at the rated load of its hoist, or with nothing on the line, without any factor. A limit that
    is not stated is none of the paper's.
    """

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    by: str
    document: str
    at: str
    until: str
    drops: tuple[str, ...]
    revision: str | None = None
    most_reach: Length | None = None
    least_backspan: Length | None = None
    most_rated_load: Force | None = None
    most_front: Force | None = None
    most_rear: Force | None = None
    hoists: tuple[str, ...] = ()
    beams: tuple[str, ...] = ()
