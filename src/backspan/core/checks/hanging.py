"""Does every stage hang from two suspension points, and every suspension point hold one stage."""

from __future__ import annotations

from collections.abc import Iterator

from backspan.core.findings import Decider, DoesNotApply, Finding, Message, Need
from backspan.core.model.rigs import SuspensionPoint
from backspan.core.model.stages import HungStage
from backspan.core.model.topics import Topic
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.presence import judge_presence
from backspan.core.sheet.subjects import in_order
from backspan.core.sheet.witness import EvidenceClass

ID = "hanging"
#: By how many points a stage hangs; with more than two its load is no longer statics alone.
_ENDINGS = dict(enumerate(("one", "one", "two")))


def judge(case: Case) -> Iterator[Answer]:
    """One finding a suspension point, one a stage; the reason where there is no rig."""
    if not case.points:
        yield DoesNotApply(ID, case.subject, case.place, Message("na.no-suspension-point"))
        return
    for point in case.points:
        yield _judge_point(case, point)
    for hung in () if case.drop.rig is None else case.drop.rig.stages:
        yield _judge_stage(case, hung)


def _judge_point(case: Case, point: SuspensionPoint) -> Finding:
    inputs = Inputs(case)
    place = case.place_of(point)
    hung = () if case.drop.rig is None else case.drop.rig.stages
    stages = tuple(one.stage for one in hung if point.id in one.from_points)
    for name in stages:
        inputs.fact("stage", name, (*case.place, "rig", "stages", name))
    met: bool | None = len(stages) == 1
    if not stages:
        inputs.want("stage", EvidenceClass.OBSERVATION, (*case.place, "rig", "stages"))
        met = None
    ending = "none" if met is None else "one" if met else "several"
    return judge_presence(
        inputs,
        check=ID,
        subject=case.name_of(point),
        place=place,
        message=Message(f"stage-on-point.{ending}", (("stages", stages),)),
        met=met,
    )


def _judge_stage(case: Case, hung: HungStage) -> Finding:
    inputs = Inputs(case)
    place = (*case.place, "rig", "stages", hung.stage)
    points = in_order(hung.from_points)
    inputs.fact("from_points", ", ".join(points), (*place, "from_points"))
    words = (("stage", hung.stage), ("points", points))
    ending = _ENDINGS.get(len(points), "several")
    refer = Need(Decider.LICENSED_ENGINEER, Message("need.several-points", words))
    return judge_presence(
        inputs,
        check=ID,
        subject=f"{case.subject}/{hung.stage}",
        place=place,
        message=Message(f"stage-hangs.{ending}", words),
        met=ending in {"two", "several"},
        refer=(refer,) if ending == "several" else (),
    )


CHECK = Check(ID, Topic.STAGE, judge)
