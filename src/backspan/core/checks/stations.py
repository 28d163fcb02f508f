"""Do the suspension lines hang where the stage has its stirrups, and within the drop's strip."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from backspan.core.findings import DoesNotApply, Finding, Message, MessageValue
from backspan.core.model.rigs import SuspensionPoint
from backspan.core.model.topics import Topic
from backspan.core.numbers import surely_above, surely_below
from backspan.core.quantities import LENGTH, Amount
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.compared import Compared
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.limits import limit_of, needed_value
from backspan.core.sheet.presence import judge_presence
from backspan.core.sheet.question import Asked, Question
from backspan.core.sheet.reads import Read, read_of
from backspan.core.sheet.sheet import Sheet

ID = "stations"
WITHIN = "tolerance.line-over-stirrup"


@dataclass(frozen=True, slots=True)
class Hung:
    """A stage on two points: how far apart its stirrups are, and the points."""

    stirrups: Read
    apart: float
    within: float


def work(sheet: Sheet, one: Asked[Hung]) -> Iterator[Compared]:
    """How far the points' distance is from the stirrups', against what may be."""
    stirrups, apart = sheet.read(one.subject.stirrups), one.subject.apart
    off = abs(apart - stirrups)
    numbers = (("apart", apart, LENGTH), ("stirrups", stirrups, LENGTH))
    yield Compared(off, one.subject.within, numbers=numbers)


SPACING = Question(ID, "spacing", LENGTH, work, strength=False)


def judge(case: Case) -> Iterator[Answer]:
    """One finding a point, one a stage on two points."""
    if not case.points:
        yield DoesNotApply(ID, case.subject, case.place, Message("na.no-suspension-point"))
    for point in case.points:
        yield _in_strip(case, point)
    stations = {point.id: point.station for point in case.points}
    rule = needed_value(case.practice, WITHIN)
    for hung in () if case.drop.rig is None else case.drop.rig.stages:
        match [stations[name] for name in hung.from_points if name in stations]:
            case [one, other]:
                apart = abs(other - one)
            case _:
                continue  # how many there are is asked by the check on hanging
        stage = case.stage(hung.stage)
        place = ("kit", "stages", stage.id)
        spacing = read_of("stirrup_spacing", stage, place)
        subject = Hung(spacing, apart, limit_of(rule, LENGTH))
        name = f"{case.subject}/{hung.stage}"
        yield SPACING.judge(case, Asked(subject, name, spacing.place, (rule,)))


def _in_strip(case: Case, point: SuspensionPoint) -> Finding:
    """Whether a point stands between the ends of its drop."""
    start, end = case.drop.start, case.drop.start + case.drop.width.value
    outside = surely_below(point.station, limit=start) or surely_above(point.station, limit=end)
    inputs, place = Inputs(case), (*case.place_of(point), "station")
    inputs.fact("station", Amount(point.station, LENGTH), place)
    words: tuple[tuple[str, MessageValue], ...] = (
        ("station", Amount(point.station, LENGTH)),
        ("start", Amount(start, LENGTH)),
        ("end", Amount(end, LENGTH)),
    )
    return judge_presence(
        inputs,
        check=ID,
        subject=case.name_of(point),
        place=place,
        message=Message("strip.outside" if outside else "strip.pass", words),
        met=not outside,
        question="strip",
    )


CHECK = Check(ID, Topic.STAGE, judge)
