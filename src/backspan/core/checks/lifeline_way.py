"""Does a lifeline run free over the roof, by the plan: from its anchor to where it passes the edge.

A line that lies over a machine or round a bulkhead wears there, gets longer when it slips off, and
pulls its anchor from elsewhere. Where the plan shows something in its way, who knows how it runs
says so; the plan may be off by as much as the trade allows for.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from backspan.core.findings import Decider, DoesNotApply, Finding, Message, Need
from backspan.core.model.rigs import Lifeline
from backspan.core.model.topics import Topic
from backspan.core.numbers import surely_above
from backspan.core.quantities import LENGTH
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.lifelines import Life, anchored, each_lifeline
from backspan.core.sheet.limits import limit_of, needed_value
from backspan.core.sheet.plan_distance import line_to_outline
from backspan.core.sheet.presence import judge_presence
from backspan.core.sheet.tied import PLAN_POSITION, on_edge

ID = "lifeline-way"


def judge(case: Case) -> Iterator[Answer]:
    """One finding a lifeline whose anchor and place over the edge the plan shows."""
    for one in each_lifeline(case, ID):
        if isinstance(one, DoesNotApply):
            yield one
        elif one.line.station is None:
            # Where it passes the edge is asked with the clearance.
            yield DoesNotApply(ID, one.name, one.place, Message("na.line-not-placed"))
        else:
            yield _found(case, one, _in_the_way(case, one.line, one.line.station))


def _in_the_way(case: Case, line: Lifeline, station: float) -> tuple[str, ...]:
    """The obstacles of the anchor's roof that the line meets in plan."""
    near = limit_of(needed_value(case.practice, PLAN_POSITION), LENGTH)
    roof, anchor = anchored(case, line)
    start, end = on_edge(case, anchor.at), (station, 0.0)
    found = []
    for obstacle in roof.obstacles:
        outline = [on_edge(case, corner) for corner in obstacle.outline]
        if not surely_above(line_to_outline(start, end, outline), limit=near):
            found.append(obstacle.id)
    return tuple(found)


def _found(case: Case, one: Life, met: tuple[str, ...]) -> Finding:
    inputs = Inputs(case)
    inputs.fact("anchor", one.line.anchor, (*one.place, "anchor"))
    words = (("line", one.line.id), ("obstacles", met))
    need = Need(Decider.QUALIFIED_PERSON, Message("need.lifeline-way", words))
    found = judge_presence(
        inputs,
        check=ID,
        subject=one.name,
        place=one.place,
        message=Message(f"lifeline-way.{'in-the-way' if met else 'pass'}", words),
        met=True,
        rules=(needed_value(case.practice, PLAN_POSITION),),
        refer=(need,) if met else (),
    )
    return replace(found, not_judged=bool(met))


CHECK = Check(ID, Topic.FALL_ARREST, judge)
