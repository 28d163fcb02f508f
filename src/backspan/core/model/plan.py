"""The contractor's plan of a rig: who rigs, who designed it, on which drawing, for which days."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, ClassVar

from backspan.core.model.evidence import STRICT


@dataclass(frozen=True, slots=True)
class Plan:
    """What the contractor handed in; `begins` and `ends` are the planned days of work.

    `designer` is one of the project's people. Planned values stand beside those found, as
    `planned` of each value.
    """

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    contractor: str
    designer: str | None = None
    drawing: str | None = None
    revision: str | None = None
    begins: str | None = None
    ends: str | None = None
