"""Every stage that hangs from points of a drop's rig, as findings name it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from backspan.core.findings import DoesNotApply, Message
from backspan.core.model.kit import Stage
from backspan.core.model.stages import HungStage
from backspan.core.sheet.case import Case, Place


@dataclass(frozen=True, slots=True)
class Hung:
    """A stage where it hangs, and its kind with the place of its plate."""

    hung: HungStage
    stage: Stage
    name: str
    place: Place

    @property
    def plate(self) -> Place:
        """Where its kind stands in the project."""
        return ("kit", "stages", self.stage.id)


def each_hung(case: Case, check: str) -> Iterator[Hung | DoesNotApply]:
    """Every stage of a rig that has suspension points, or why there is none to judge."""
    hung = () if case.drop.rig is None else case.drop.rig.stages
    if not case.points:
        yield DoesNotApply(check, case.subject, case.place, Message("na.no-suspension-point"))
        return
    if not hung:
        # A point without a stage is stopped by the check on hanging.
        yield DoesNotApply(check, case.subject, case.place, Message("na.nothing-of-it"))
    for number, one in enumerate(hung):
        place = (*case.place, "rig", "stages", number)
        yield Hung(one, case.stage(one.stage), f"{case.subject}/{one.stage}", place)
