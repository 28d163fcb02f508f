"""One order for every list of named records, so that the order in a file changes no answer."""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Any, TypeVar, cast

from backspan.core.model.evidence import StatedValue
from backspan.core.model.inherit import field_names
from backspan.core.model.project import Project

T = TypeVar("T")
_DIGITS = re.compile(r"([0-9]+)")


def ordered(project: Project) -> Project:
    """`project` with every list of records that have an `id` sorted by it: D2 before D10.

    Lists whose order means something (the groups of a stack, the points of an outline) stay.
    """
    return in_order(project)


def in_order(record: T) -> T:
    """The same for one record and all it holds."""
    return cast("T", _sorted(record))


def id_order(identifier: str) -> tuple[tuple[tuple[bool, int, str], ...], str]:
    """Sort key of an id: runs of digits count as numbers."""
    parts = tuple(
        (False, int(part), "") if part.isdigit() else (True, 0, part)
        for part in _DIGITS.split(identifier)
        if part
    )
    return parts, identifier


def _sorted(value: Any) -> Any:
    if isinstance(value, str | float | int | StatedValue | None):
        return value
    if isinstance(value, tuple):
        items = [_sorted(item) for item in value]
        if items and all(hasattr(item, "id") for item in items):
            items.sort(key=lambda item: id_order(item.id))
        unchanged = all(new is old for new, old in zip(items, value, strict=True))
        return value if unchanged else tuple(items)
    old = {name: getattr(value, name) for name in field_names(value.__class__)}
    new = {name: _sorted(content) for name, content in old.items()}
    changes = {name: content for name, content in new.items() if content is not old[name]}
    return replace(value, **changes) if changes else value
