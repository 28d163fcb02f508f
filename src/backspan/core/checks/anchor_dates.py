"""Does the inspection of every anchor in use count to the end of the planned work.

Held against the last planned day, not today: a letter that lapses while the drop is in work stops
it then. Whether a lapsed letter may stand is the owner's to say; a rule set in force may say more.
"""

from __future__ import annotations

import datetime
from collections.abc import Iterator

from backspan.core.findings import Decider, DoesNotApply, Finding, Message, MessageValue, Need
from backspan.core.model.evidence import is_before
from backspan.core.model.site import Anchor
from backspan.core.model.topics import Topic
from backspan.core.quantities import RATIO
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.limits import limit_of, needed_value
from backspan.core.sheet.presence import judge_presence
from backspan.core.sheet.subjects import in_order
from backspan.core.sheet.witness import EvidenceClass

ID = "anchor-dates"
KEY = "age.anchor-letter"


def judge(case: Case) -> Iterator[Answer]:
    """One finding for each anchor that a line of the drop goes to."""
    rig = case.drop.rig
    lines = () if rig is None else rig.lines
    tied = [line.anchor for point in case.points for line in point.tied]
    used = in_order([*tied, *(line.anchor for line in lines)])
    if not used:
        yield DoesNotApply(ID, case.subject, case.place, Message("na.no-anchor"))
    for roof in case.project.site.roofs:
        for anchor in roof.anchors:
            if anchor.id in used:
                yield _of_anchor(case, roof.id, anchor)


def _of_anchor(case: Case, roof: str, anchor: Anchor) -> Finding:
    inputs, rule = Inputs(case), needed_value(case.practice, KEY)
    place = ("site", "roofs", roof, "anchors", anchor.id, "inspected")
    ends = case.work_ends
    words: tuple[tuple[str, MessageValue], ...] = (("anchor", anchor.id), ("ends", ends))
    met: bool | None = None
    refer: tuple[Need, ...] = ()
    ending = "missing"
    if anchor.inspected is None:
        inputs.want("anchor_inspected", EvidenceClass.OBSERVATION, place, Decider.OWNER)
    else:
        inputs.fact("anchor_inspected", anchor.inspected, place)
        counts = datetime.timedelta(days=limit_of(rule, RATIO) - 1)
        last = datetime.date.fromisoformat(anchor.inspected) + counts
        words = (*words, ("last", last.isoformat()))
        met, ending = True, "pass"
        if is_before(last.isoformat(), ends):
            ending = "lapses"
            refer = (Need(Decider.OWNER, Message("need.anchor-letter", words)),)
    return judge_presence(
        inputs,
        check=ID,
        subject=f"{case.subject}/{anchor.id}",
        place=place,
        message=Message(f"anchor-dates.{ending}", words),
        met=met,
        rules=(rule,),
        refer=refer,
    )


CHECK = Check(ID, Topic.ANCHORS, judge)
