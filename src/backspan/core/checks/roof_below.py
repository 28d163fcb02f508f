"""Does a lower roof lie in the way of a drop.

A drop says how far it goes down and how much is clear below that. Where the plan shows a lower roof
under the stage, both together go no further than down to it: else either the height or the plan is
wrong, and a fall, or the stage itself, ends on that roof.

The stage hangs about its line, and the plan is off by as much as the trade allows for. How far out
the line hangs follows from reach and setback; where either is not known, at the face.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from backspan.core.findings import DoesNotApply, Message
from backspan.core.model.site import Roof
from backspan.core.model.topics import Topic
from backspan.core.numbers import at_least, ends_around, surely_below
from backspan.core.quantities import LENGTH
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.compared import Compared
from backspan.core.sheet.decks import line_out
from backspan.core.sheet.limits import limit_of, needed_value
from backspan.core.sheet.plan_distance import line_to_outline
from backspan.core.sheet.question import Asked, Question
from backspan.core.sheet.reads import Read, read_of
from backspan.core.sheet.sheet import Sheet
from backspan.core.sheet.tied import PLAN_POSITION, on_edge

ID = "roof-below"


@dataclass(frozen=True, slots=True)
class Above:
    """A drop over a lower roof: how far it goes, what is clear below it, and both levels."""

    height: Read
    clear: Read
    ours: Read
    theirs: Read
    roof: str


def work(sheet: Sheet, one: Asked[Above]) -> Iterator[Compared]:
    """The height of the drop and what is clear below it, against the height above that roof."""
    above = one.subject
    down = sheet.read(above.height) + sheet.read(above.clear)
    there = sheet.read(above.ours) - sheet.read(above.theirs)
    numbers = (("down", down, LENGTH), ("there", there, LENGTH))
    yield Compared(down, there, words=(("roof", above.roof),), numbers=numbers)


QUESTION = Question(ID, ID, LENGTH, work, strength=False, share=False)


def judge(case: Case) -> Iterator[Answer]:
    """One finding a lower roof that the plan shows under the drop."""
    own = next(one for one in case.project.site.roofs if one.id == case.drop.roof)
    rule, none = needed_value(case.practice, PLAN_POSITION), True
    for roof in case.project.site.roofs:
        lower = surely_below(roof.level.value, limit=own.level.value)
        if roof.id == own.id or not lower or not _under(case, roof):
            continue
        none = False
        above = Above(
            read_of("drop_height", case.drop, case.place),
            read_of("clear_below", case.drop, case.place),
            read_of("roof_level", own, ("site", "roofs", own.id)),
            read_of("roof_level", roof, ("site", "roofs", roof.id)),
            roof.id,
        )
        yield QUESTION.judge(case, Asked(above, f"{case.subject}/{roof.id}", case.place, (rule,)))
    if none:
        yield DoesNotApply(ID, case.subject, case.place, Message("na.no-roof-below"))


def _under(case: Case, roof: Roof) -> bool:
    """Whether the stage of a drop would come to hang over this roof."""
    outline = tuple(
        (station, 0.0 - inward) for station, inward in (on_edge(case, one) for one in roof.outline)
    )
    near = limit_of(needed_value(case.practice, PLAN_POSITION), LENGTH)
    start = case.drop.start
    end = start + case.drop.width.value
    half = 0.0
    for hung in () if case.drop.rig is None else case.drop.rig.stages:
        wide = case.stage(hung.stage).width
        _, side = ends_around(0.0, long=0.0 if wide is None else wide.value)
        half = at_least(half, least=side)
    outs = [line_out(point) or 0.0 for point in case.points] or [0.0]
    return any(
        not surely_below(half + near, limit=line_to_outline((start, out), (end, out), outline))
        for out in outs
    )


CHECK = Check(ID, Topic.FALL_ARREST, judge)
