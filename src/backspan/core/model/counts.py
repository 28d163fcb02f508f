"""Which counts are no statement of a person, and never less than one."""

from __future__ import annotations

from typing import Any

from backspan.core.model.inherit import field_names
from backspan.core.model.project import Ages
from backspan.core.model.rigs import PieceGroup

_AT_LEAST_ONE: frozenset[tuple[type, str]] = frozenset(
    {(PieceGroup, "per_row"), *((Ages, name) for name in field_names(Ages))}
)


def at_least_one(record: Any, name: str) -> bool:
    """Whether the field `name` of a record class is such a count."""
    return (record, name) in _AT_LEAST_ONE
