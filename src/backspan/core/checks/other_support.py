"""Supports this program does not judge: a licensed engineer decides, with the reasons named."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from backspan.core.findings import Decider, DoesNotApply, Message, Need
from backspan.core.model.topics import Topic
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.presence import judge_presence

ID = "other-support"


def judge(case: Case) -> Iterator[Answer]:
    """One finding for each suspension point that does not hang from a counterweighted beam."""
    if not case.points:
        yield DoesNotApply(ID, case.subject, case.place, Message("na.no-suspension-point"))
    for point in case.points:
        name, place = case.name_of(point), case.place_of(point)
        support = point.other_support
        if support is None:
            yield DoesNotApply(ID, name, place, Message("na.counterweighted"))
            continue
        inputs = Inputs(case)
        inputs.fact("support", str(support.kind), (*place, "other_support", "kind"))
        words = (("kind", str(support.kind)), ("document", support.document or "-"))
        refer = Need(Decider.LICENSED_ENGINEER, Message("need.other-support", words))
        found = judge_presence(
            inputs,
            check=ID,
            subject=name,
            place=place,
            message=Message("other-support", words),
            met=True,
            refer=(refer,),
        )
        yield replace(found, not_judged=True)


CHECK = Check(ID, Topic.TIPPING, judge)
