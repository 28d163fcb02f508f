"""The case a check looks at: one drop of a project under chosen rules on a date."""

from __future__ import annotations

import datetime
from collections.abc import Callable, Hashable, Mapping
from dataclasses import dataclass, field
from typing import Any, TypeVar

from backspan.core.errors import BackspanError
from backspan.core.model.evidence import is_before
from backspan.core.model.kit import Beam, Hoist, Piece, Stage
from backspan.core.model.people import Person
from backspan.core.model.plan import Plan
from backspan.core.model.project import Project
from backspan.core.model.rigs import Drop, SuspensionPoint
from backspan.core.model.site import Edge
from backspan.core.rules.selected import SelectedRules
from backspan.core.sheet.kept import Ground, Kept


class AbsentError(BackspanError, LookupError):
    """A name that the project does not have; names what has it."""


N = TypeVar("N")
T = TypeVar("T")
Place = tuple[str | int, ...]


#: Values taken in place of the stated ones, by their place in the project.
Corner = Mapping[Place, float]


def _there(found: N | None, wanted: str, what: str) -> N:
    if found is None:
        raise AbsentError(f"the project has no {what} {wanted!r}")
    return found


@dataclass(frozen=True, slots=True)
class Case:
    """One drop with the rules it is held against; `practice` holds the trade's own bands."""

    project: Project
    drop: Drop
    topics: Mapping[str, tuple[SelectedRules, ...]]
    practice: SelectedRules
    on: datetime.date
    of_project: dict[Any, Any] = field(default_factory=dict, repr=False, compare=False)
    """What was worked out of the whole project, for the cases of all its drops."""
    kept: Kept = field(default_factory=Kept, repr=False, compare=False)
    """Answers to the same questions of an earlier state of the site."""
    _known: dict[Any, Any] = field(default_factory=dict, init=False, repr=False, compare=False)
    """What was worked out of the project once: every check of a drop asks the same of it."""

    def once(self, key: Hashable, make: Callable[[], T]) -> T:
        """What `make` gives, worked out the first time it is asked for by that key."""
        if key not in self._known:
            self._known[key] = make()
        found: T = self._known[key]
        return found

    def once_for_all(self, key: Hashable, make: Callable[[], T]) -> T:
        """The same for what is of the whole project and no drop's own."""
        if key not in self.of_project:
            self.of_project[key] = make()
        found: T = self.of_project[key]
        return found

    @property
    def ground(self) -> Ground:
        """What weighs the evidence of every answer."""
        return self.once("ground", self._ground)

    def _ground(self) -> Ground:
        site = self.project
        made = Ground(self.practice, self.on, site.people, site.ages, site.units)
        # The very one of before where it is equal, so that comparing it is one look.
        return self.kept.same("ground", (made,), lambda: made)

    def under(self, key: str) -> tuple[SelectedRules, ...]:
        """The rule sets of a topic, or of the topic a rule value belongs to."""
        return self.topics[key.partition(".")[0]]

    @property
    def rules(self) -> tuple[SelectedRules, ...]:
        """All rule sets of the basis, those of tipping first."""
        found: list[SelectedRules] = []
        for rules in self.topics.values():
            found += [one for one in rules if not any(one is other for other in found)]
        return tuple(found)

    @property
    def subject(self) -> str:
        """The drop as findings name it."""
        return self.drop.id

    @property
    def place(self) -> Place:
        """Path of the drop in the project."""
        return ("drops", self.drop.id)

    @property
    def points(self) -> tuple[SuspensionPoint, ...]:
        """The suspension points of the drop's rig; none where there is no rig."""
        return () if self.drop.rig is None else self.drop.rig.suspension_points

    @property
    def edge(self) -> Edge:
        """The edge of the drop; AbsentError where its roof or edge is not there."""
        roof = next((one for one in self.project.site.roofs if one.id == self.drop.roof), None)
        edges = () if roof is None else roof.edges
        found = next((one for one in edges if one.id == self.drop.edge), None)
        return _there(found, self.drop.edge, "edge")

    @property
    def edge_place(self) -> Place:
        """Path of that edge in the project."""
        return ("site", "roofs", self.drop.roof, "edges", self.drop.edge)

    @property
    def plan(self) -> Plan | None:
        """The contractor's plan of the drop's rig: its own, else the project's."""
        return self.drop.plan or self.project.plan

    @property
    def work_ends(self) -> str:
        """The last planned day of work, or the day of the review where that is later."""
        today, plan = self.on.isoformat(), self.plan
        planned = None if plan is None else plan.ends
        return planned if planned is not None and is_before(today, planned) else today

    def person(self, name: str) -> Person | None:
        """The person of that id; None where the project names nobody so."""
        return next((one for one in self.project.people if one.id == name), None)

    def hoist(self, name: str) -> Hoist:
        """The type of hoist of that name or tag; AbsentError when there is none."""
        return _there(self.project.kit.hoist(name), name, "hoist")

    def beam(self, name: str) -> Beam:
        """The type of beam of that name or tag; AbsentError when there is none."""
        return _there(self.project.kit.beam(name), name, "beam")

    def piece(self, name: str) -> Piece:
        """The type of piece of that name or tag; AbsentError when there is none."""
        return _there(self.project.kit.piece(name), name, "piece")

    def stage(self, name: str) -> Stage:
        """The type of stage of that name or tag; AbsentError when there is none."""
        return _there(self.project.kit.stage(name), name, "stage")

    def stages_on(self, point: SuspensionPoint) -> tuple[Stage, ...]:
        """The stages that hang from a suspension point."""
        hung = () if self.drop.rig is None else self.drop.rig.stages
        return tuple(self.stage(one.stage) for one in hung if point.id in one.from_points)

    def name_of(self, point: SuspensionPoint) -> str:
        """A suspension point as findings name it."""
        return f"{self.drop.id}/{point.id}"

    def place_of(self, point: SuspensionPoint) -> Place:
        """Path of a suspension point in the project."""
        return (*self.place, "rig", "suspension_points", point.id)
