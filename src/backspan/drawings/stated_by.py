"""Who saw what a drawing tells, and on which day."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

from backspan.core.model.evidence import StatedValue
from backspan.core.model.project import Project
from backspan.core.words import Language


def seen_by(project: Project, stated: Iterable[StatedValue[Any] | None], language: Language) -> str:
    """Each name with its day: "seen by J. Doe, 2026-11-20"; where nobody is named, that."""
    names = {one.id: one.name for one in project.people}
    said = dict.fromkeys(
        (names.get(one.by, one.by), "" if one.at is None else one.at[:10])
        for one in stated
        if one is not None and one.by is not None
    )
    if not said:
        return language.drawn("seen_by_nobody")
    who = "; ".join(f"{name}, {day}" if day else name for name, day in said)
    return language.drawn("seen_by", who=who)
