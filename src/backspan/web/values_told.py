"""Values that may be stated, grouped: by what they are of, by the topic that waits for them."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from backspan.core.findings import Review
from backspan.core.ledger.document import Path
from backspan.core.ledger.fields import Stateable, rig_fields
from backspan.core.ledger.stop_list import Asked, Item, wanting_topics
from backspan.core.model.project import Project
from backspan.core.model.topics import Topic
from backspan.web.shown import Shown, shown_value
from backspan.web.topics_told import slug_of

_PARTS = {
    "suspension_points": "Suspension point",
    "stages": "Stage",
    "lifelines": "Lifeline",
}
_WHOLE = "The rig as a whole"


@dataclass(frozen=True, slots=True)
class Group:
    """Values that stand under one heading."""

    slug: str
    title: str
    values: tuple[Shown, ...]

    @property
    def names(self) -> str:
        """What is stated under it, each name once."""
        return ", ".join(dict.fromkeys(one.name for one in self.values))


def other_values(
    project: Project, drop: str, items: Iterable[Item], wanted: Iterable[Asked]
) -> list[Stateable]:
    """What may be stated of a rig besides what its stop list and its review ask for."""
    asked = {one.value.path for item in items for one in item.asked}
    asked |= {one.value.path for one in wanted}
    return [one for one in rig_fields(project, drop) if one.path not in asked]


def by_part(values: Iterable[Stateable], project: Project) -> list[Group]:
    """Values of a rig by the suspension point, stage or lifeline that they are of."""
    parts: dict[tuple[str, str], list[Shown]] = {}
    for one in values:
        parts.setdefault((part_of(one.path), _title_of(one.path)), []).append(
            shown_value(one, project)
        )
    return [Group(slug, title, tuple(several)) for (slug, title), several in parts.items()]


def part_of(path: Path) -> str:
    """What names the group of a value by its path under `drops/<drop>/rig`."""
    part, *after = (*path[3:], "")
    return f"{part}-{after[0]}" if part in _PARTS else "rig"


def by_topic(wanted: Sequence[Asked], review: Review, project: Project) -> list[Group]:
    """Values that a review waits for, by the topic of the finding that does, in their order."""
    waiting = wanting_topics(review)
    topics: dict[Topic, list[Shown]] = {one: [] for one in Topic}
    for one in wanted:
        topics[waiting[one.value.path]].append(shown_value(one.value, project, one.known))
    return [
        Group(slug_of(topic), str(topic), tuple(several))
        for topic, several in topics.items()
        if several
    ]


def opened(groups: Sequence[Group], asked: str) -> str:
    """Which group stands open: the one that is asked for, else the first; empty where none is."""
    slugs = [one.slug for one in groups]
    return asked if asked in slugs else next(iter(slugs), "")


def _title_of(path: Path) -> str:
    """The heading of that group."""
    part, *after = path[3:]
    if part not in _PARTS:
        return _WHOLE
    name = f"no. {int(after[0]) + 1}" if after[0].isdigit() and part == "stages" else after[0]
    return f"{_PARTS[part]} {name}"
