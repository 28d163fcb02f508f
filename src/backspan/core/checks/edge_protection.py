"""Is the parapet high enough to protect those who rig at it; else they need more than it."""

from __future__ import annotations

from collections.abc import Iterator

from backspan.core.findings import Decider, DoesNotApply, Message, MessageValue, Need
from backspan.core.model.topics import Topic
from backspan.core.numbers import surely_below
from backspan.core.quantities import LENGTH, Amount
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.limits import limit_of
from backspan.core.sheet.presence import judge_presence
from backspan.core.sheet.reads import read_of
from backspan.core.sheet.subjects import in_force, no_rule

ID = "edge-protection"
KEY = "geometry.least-parapet"


def judge(case: Case) -> Iterator[Answer]:
    """One finding for the drop's edge under each rule set that has a height."""
    place, wall = (*case.edge_place, "parapet"), case.edge.parapet
    having = in_force(case, KEY)
    if not having:
        yield DoesNotApply(ID, case.subject, case.place, no_rule(case, KEY))
    for _, rule in having:
        inputs, least = Inputs(case), limit_of(rule, LENGTH)
        height = inputs.number(read_of("parapet_height", wall, place))
        low = surely_below(height, limit=least)
        words: list[tuple[str, MessageValue]] = [("least", Amount(least, LENGTH))]
        if wall is not None:
            words.append(("height", Amount(height, LENGTH)))
        need = Need(Decider.COMPETENT_PERSON, Message("need.edge-protection", tuple(words)))
        ending = "missing" if wall is None else "low" if low else "pass"
        yield judge_presence(
            inputs,
            check=ID,
            subject=case.subject,
            place=place,
            message=Message(f"edge-protection.{ending}", tuple(words)),
            met=None if wall is None else True,
            rules=(rule,),
            refer=(need,) if low else (),
        )


CHECK = Check(ID, Topic.EDGES, judge)
