"""Is the way of a straight tieback free by the plan: from where it begins to its anchor.

Where the plan shows something in the way of a tieback that touches nothing, one of the two is
wrong. Nobody knows which, so nothing is refused: somebody looks again, or puts the plan right. A
tieback that was seen to pass above may do so where it begins higher than what it passes; where
either height is not known the word of who saw it stands.

Between the corners of what is doubtful the line sweeps a strip. What lies in it lies nearer to one
of its sides than the tolerance of the plan, unless the start is doubtful by twice that.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from backspan.core.findings import DoesNotApply, Finding, Message
from backspan.core.model.rigs import SuspensionPoint, Tieback
from backspan.core.model.seen import Route
from backspan.core.model.site import Obstacle
from backspan.core.model.topics import Topic
from backspan.core.numbers import meets
from backspan.core.quantities import LENGTH
from backspan.core.sheet.bearing_height import BearingReads, bearing_height, bearing_reads
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.compared import Compared
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.limits import needed_value
from backspan.core.sheet.plan_distance import Spot, line_to_outline
from backspan.core.sheet.question import Asked, Judged, Question, Told
from backspan.core.sheet.reads import Read, read_of
from backspan.core.sheet.sheet import Sheet
from backspan.core.sheet.tied import PLAN_POSITION, TieReads, begins_inboard, on_edge, ties_of
from backspan.core.sheet.witness import EvidenceClass

ID = "tieback-way"
WORDS = {Route.STRAIGHT: False, Route.ABOVE: True}


@dataclass(frozen=True, slots=True)
class InPlan:
    """An obstacle with its outline across and in from where the point's line hangs."""

    id: str
    outline: tuple[Spot, ...]
    height: Read


@dataclass(frozen=True, slots=True)
class Way:
    """A tieback, what the plan shows on its roof, and whether it was seen to pass above."""

    tie: TieReads
    obstacles: tuple[InPlan, ...]
    beam: BearingReads
    above: bool


@dataclass(slots=True, kw_only=True)
class Passed(Compared):
    """How a tieback passes one obstacle; `free` is None where nobody knows, and never a refusal."""

    says: str
    free: bool | None

    @property
    def met(self) -> bool | None:
        """Whether the way is free."""
        return self.free


def work(sheet: Sheet, one: Asked[Way]) -> Iterator[Passed]:
    """Each obstacle: its distance from the line in plan, or its height below the tieback."""
    way, tie = one.subject, one.subject.tie
    start, end = (0.0, begins_inboard(sheet, tie)), (tie.across, tie.inward)
    for obstacle in way.obstacles:
        apart = line_to_outline(start, end, obstacle.outline)
        words = (("tieback", tie.tie.id), ("obstacle", obstacle.id))
        far_enough = Compared(tie.off, apart).met
        if far_enough is None:
            yield Passed(tie.off, apart, words=words, says="missing", free=None)
        elif far_enough:
            numbers = (("apart", apart, LENGTH),)
            yield Passed(tie.off, apart, words, numbers, says="pass", free=True)
        elif way.above:
            yield _above(sheet, way, obstacle, words)
        else:
            sheet.want("route", (*tie.place, "route"))
            yield Passed(tie.off, apart, words=words, says="in-the-way", free=None)


def _above(sheet: Sheet, way: Way, obstacle: InPlan, words: tuple[tuple[str, str], ...]) -> Passed:
    needed = (obstacle.height, *_all_of(way.beam))
    if any(one.stated is None for one in needed):
        return Passed(0.0, 0.0, words=words, says="word", free=True)
    height, bearing = sheet.read(obstacle.height), bearing_height(sheet, way.beam)
    numbers = (("height", height, LENGTH), ("bearing", bearing, LENGTH))
    if meets(demand=bearing, capacity=height):
        sheet.want("route", (*way.tie.place, "route"))
        return Passed(height, bearing, words, numbers, says="too-high", free=None)
    return Passed(height, bearing, words, numbers, says="above", free=True)


def _all_of(beam: BearingReads) -> tuple[Read, ...]:
    return beam.setback, beam.height, beam.wall, beam.thickness


def tells(judged: Judged[Way, Passed]) -> Told:
    """What stands in the way; else what somebody's word lets pass; else the nearest."""
    weighed = judged.weighed
    for says in ("in-the-way", "too-high", "missing", "word"):
        found = next((one for one in weighed.branches if one.says == says), None)
        if found is not None:
            return Told(Message(f"{ID}.{says}", tuple(found.told())))
    shown = weighed.governing or weighed.branches[0]
    return Told(Message(f"{ID}.{shown.says}", tuple(shown.told())))


QUESTION = Question(ID, ID, LENGTH, work, tells, strength=False, share=False)


def judge(case: Case) -> Iterator[Answer]:
    """One finding a tieback that is said to run straight to an anchor of the plan."""
    if not case.points:
        yield DoesNotApply(ID, case.subject, case.place, Message("na.no-suspension-point"))
    for point in case.points:
        name, place = case.name_of(point), case.place_of(point)
        if not point.tied:
            yield DoesNotApply(ID, name, (*place, "tiebacks"), Message("na.no-tieback"))
            continue
        obstacles = _obstacles(case, point)
        for tie in ties_of(case, point).each:
            reason = _reason(tie.tie, obstacles)
            if reason is not None:
                yield DoesNotApply(ID, tie.name, tie.place, Message(f"na.{reason}"))
            else:
                yield _found(case, point, tie, obstacles)


def _reason(tie: Tieback, obstacles: tuple[InPlan, ...]) -> str | None:
    if tie.route is None:
        return "route-unsaid"
    if tie.route.value not in WORDS:
        return "not-straight"
    if tie.anchor is None:
        return "ends-on-no-anchor"
    return None if obstacles else "no-obstacle"


def _found(
    case: Case, point: SuspensionPoint, tie: TieReads, obstacles: tuple[InPlan, ...]
) -> Finding:
    inputs, at = Inputs(case), (*tie.place, "route")
    inputs.word("route", tie.tie.route, EvidenceClass.OBSERVATION, at)
    above = tie.tie.route is not None and WORDS[tie.tie.route.value]
    way = Way(tie, obstacles, bearing_reads(case, point), above)
    near = needed_value(case.practice, PLAN_POSITION)
    found = QUESTION.judge(case, Asked(way, tie.name, tie.place, (near,)))
    return replace(found, inputs=(*inputs.used, *found.inputs))


def _obstacles(case: Case, point: SuspensionPoint) -> tuple[InPlan, ...]:
    roof = next((one for one in case.project.site.roofs if one.id == case.drop.roof), None)
    place = ("site", "roofs", case.drop.roof, "obstacles")
    return tuple(
        InPlan(one.id, _beside(case, point, one), read_of("obstacle_height", one, (*place, one.id)))
        for one in (() if roof is None else roof.obstacles)
    )


def _beside(case: Case, point: SuspensionPoint, obstacle: Obstacle) -> tuple[Spot, ...]:
    spots = (on_edge(case, corner) for corner in obstacle.outline)
    return tuple((station - point.station, inward) for station, inward in spots)


CHECK = Check(ID, Topic.TIEBACK, judge)
