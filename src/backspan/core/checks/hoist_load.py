"""Do the hoists lift what hangs: all of it together, and the half that comes on the weaker one.

Where people and material stand, which may bring more than half on one hoist, is not asked here.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from backspan.core.findings import DoesNotApply, Message
from backspan.core.mechanics.tipping import weight
from backspan.core.model.topics import Topic
from backspan.core.numbers import total
from backspan.core.quantities import FORCE
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.compared import Compared
from backspan.core.sheet.limits import needed_value
from backspan.core.sheet.placed import SIDES
from backspan.core.sheet.question import Asked, Question
from backspan.core.sheet.reads import Read, hoist_reads, read_of
from backspan.core.sheet.sheet import Sheet

ID = "hoist-load"
KEY = "load.hoist-rating"


@dataclass(frozen=True, slots=True)
class Lifted:
    """A stage, what it weighs and carries, and the hoists it hangs from."""

    dead: Read
    live: Read
    rated: tuple[Read, ...]


def in_sum(sheet: Sheet, one: Asked[Lifted]) -> Iterator[Compared]:
    """All that hangs against what the hoists are rated for together."""
    yield _compared(_hanging(sheet, one.subject), total(_rated(sheet, one.subject)))


def the_half(sheet: Sheet, one: Asked[Lifted]) -> Iterator[Compared]:
    """Half of all that hangs against each hoist, of which the weaker governs.

    With more than two lines half of it may come on one of them all the same.
    """
    for hoist in _rated(sheet, one.subject):
        yield _compared(_hanging(sheet, one.subject) / len(SIDES), hoist)


def _hanging(sheet: Sheet, lifted: Lifted) -> float:
    return sheet.do(weight, mass=sheet.read(lifted.dead) + sheet.read(lifted.live))


def _rated(sheet: Sheet, lifted: Lifted) -> list[float]:
    return [sheet.read(one) for one in lifted.rated]


def _compared(load: float, rated: float) -> Compared:
    return Compared(load, rated, numbers=(("load", load, FORCE), ("rated", rated, FORCE)))


QUESTIONS = (
    Question(ID, "hoists-in-sum", FORCE, in_sum, strength=False),
    Question(ID, "hoists-by-half", FORCE, the_half, strength=False),
)


def judge(case: Case) -> Iterator[Answer]:
    """Two findings a stage that hangs from points of the rig; one where it is a single point."""
    points = {point.id: point for point in case.points}
    hung = () if case.drop.rig is None else case.drop.rig.stages
    rule = needed_value(case.practice, KEY)
    if not hung:
        yield DoesNotApply(ID, case.subject, case.place, Message("na.nothing-of-it"))
    for one in hung:
        stage = case.stage(one.stage)
        place = ("kit", "stages", stage.id)
        rated = [hoist_reads(case, points[name])[0] for name in one.from_points if name in points]
        if not rated:
            reason = Message("na.no-suspension-point")
            yield DoesNotApply(ID, f"{case.subject}/{one.stage}", place, reason)
            continue
        lifted = Lifted(
            read_of("dead_mass", stage, place),
            read_of("intended_load", stage, place),
            tuple(rated),
        )
        for question in QUESTIONS if rated[1:] else QUESTIONS[:1]:
            name = f"{case.subject}/{one.stage}"
            yield question.judge(case, Asked(lifted, name, place, (rule,)))


CHECK = Check(ID, Topic.PEOPLE, judge)
