"""Is there a rig to judge: suspension points, each with exactly one support."""

from __future__ import annotations

from collections.abc import Iterator

from backspan.core.findings import Finding, Message
from backspan.core.model.rigs import SuspensionPoint
from backspan.core.model.topics import Topic
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.presence import judge_presence
from backspan.core.sheet.witness import EvidenceClass

ID = "rig-described"


def judge(case: Case) -> Iterator[Answer]:
    """One finding for the drop without suspension points or rig, else one for each of them."""
    if not case.points:
        inputs = Inputs(case)
        inputs.want("suspension_points", EvidenceClass.OBSERVATION, (*case.place, "rig"))
        yield judge_presence(
            inputs,
            check=ID,
            subject=case.subject,
            place=case.place,
            message=Message("rig.none"),
            met=None,
        )
    gone = case.project.moved_to(case.drop.id)
    if gone:
        yield judge_presence(
            Inputs(case),
            check=ID,
            subject=case.subject,
            place=(*case.place, "rig"),
            message=Message("rig.moved", (("to", gone),)),
            met=False,
            question="moved",
        )
    for point in case.points:
        yield _judge_point(case, point)


def _judge_point(case: Case, point: SuspensionPoint) -> Finding:
    inputs = Inputs(case)
    place = case.place_of(point)
    supports = [
        name
        for name, support in (
            ("counterweighted_beam", point.counterweighted_beam),
            ("other_support", point.other_support),
        )
        if support is not None
    ]
    for name in supports:
        inputs.fact("support", name.replace("_", " "), (*place, name))
    met: bool | None = len(supports) == 1
    if not supports:
        inputs.want("support", EvidenceClass.OBSERVATION, place)
        met = None
    ending = "none" if met is None else "one" if met else "several"
    return judge_presence(
        inputs,
        check=ID,
        subject=case.name_of(point),
        place=place,
        message=Message(f"support.{ending}", (("point", point.id),)),
        met=met,
    )


CHECK = Check(ID, Topic.TIPPING, judge)
