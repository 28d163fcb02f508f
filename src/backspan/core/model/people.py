"""The people a project names: who measured, who confirmed, who rides."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, ClassVar

from backspan.core.model.evidence import STRICT


@dataclass(frozen=True, slots=True)
class Person:
    """A person with role and card, as on every statement they sign."""

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    id: str
    name: str
    role: str
    employer: str | None = None
    card: str | None = None
