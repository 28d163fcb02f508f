"""Do the inspection and the test of every anchor in use count to the end of the planned work.

Held against the last planned day, not today: a letter that lapses while the drop is in work stops
it then. Whether a lapsed letter may stand is the owner's to say; a rule set in force may say more.
"""

from __future__ import annotations

import datetime
from collections.abc import Iterator
from dataclasses import dataclass

from backspan.core.findings import Decider, DoesNotApply, Finding, Message, MessageValue, Need
from backspan.core.model.evidence import is_before
from backspan.core.model.site import Anchor, AnchorFixing
from backspan.core.model.topics import Topic
from backspan.core.quantities import RATIO
from backspan.core.rules.selected import SelectedRules, SelectedValue
from backspan.core.sheet.case import Case, Place
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.limits import limit_of, needed_value
from backspan.core.sheet.presence import judge_presence
from backspan.core.sheet.subjects import in_order
from backspan.core.sheet.witness import EvidenceClass

ID = "anchor-dates"


@dataclass(frozen=True, slots=True)
class Paper:
    """A paper of an anchor: its day, and the practice value that says how long it counts."""

    name: str
    said: str
    at: str | None
    key: str


def judge(case: Case) -> Iterator[Answer]:
    """Two findings for each anchor that a line of the drop goes to: inspection and test."""
    rig = case.drop.rig
    lines = () if rig is None else rig.lines
    tied = [line for point in case.points for line in point.tied]
    named = [*(line.anchor for line in tied), *(line.anchor for line in lines)]
    used = in_order(name for name in named if name is not None)
    if not used:
        yield DoesNotApply(ID, case.subject, case.place, Message("na.no-anchor"))
    for roof in case.project.site.roofs:
        for anchor in roof.anchors:
            if anchor.id in used:
                place = ("site", "roofs", roof.id, "anchors", anchor.id)
                for paper in _papers(anchor):
                    yield _counts(case, place, anchor, paper)


def lasting(anchor: Anchor, practice: SelectedRules) -> Iterator[tuple[Paper, str | None]]:
    """Each paper of an anchor with the last day on which it counts; None where it has no day.

    Raises RuleError where the values of practice do not say how long it counts.
    """
    for paper in _papers(anchor):
        yield paper, _last(paper, needed_value(practice, paper.key))


def _last(paper: Paper, rule: SelectedValue) -> str | None:
    if paper.at is None:
        return None
    counts = datetime.timedelta(days=limit_of(rule, RATIO) - 1)
    return (datetime.date.fromisoformat(paper.at) + counts).isoformat()


def _papers(anchor: Anchor) -> Iterator[Paper]:
    """How an anchor is fixed nobody knows is taken for the one that lasts the shortest."""
    lasting = anchor.fixed_by not in {None, AnchorFixing.ADHESIVE}
    yield Paper("inspected", "anchor_inspected", anchor.inspected, "age.anchor-letter")
    key = "age.anchor-test" if lasting else "age.adhesive-anchor-test"
    yield Paper("certified", "anchor_certified", anchor.certified, key)


def _counts(case: Case, place: Place, anchor: Anchor, paper: Paper) -> Finding:
    inputs, rule = Inputs(case), needed_value(case.practice, paper.key)
    at, name = (*place, paper.name), paper.said
    ends = case.work_ends
    words: tuple[tuple[str, MessageValue], ...] = (
        ("anchor", anchor.id),
        ("ends", ends),
        ("input", name),
    )
    met: bool | None = None
    refer: tuple[Need, ...] = ()
    ending = "missing"
    last = _last(paper, rule)
    if paper.at is None or last is None:
        inputs.want(name, EvidenceClass.OBSERVATION, at, Decider.OWNER)
    else:
        inputs.fact(name, paper.at, at)
        words = (*words, ("last", last))
        met, ending = True, "pass"
        if is_before(last, ends):
            required = case.project.anchor_dates_required_by
            if required is not None:
                met, ending, words = False, "refused", (*words, ("paper", required))
            else:
                ending = "lapses"
                refer = (Need(Decider.OWNER, Message(f"need.anchor-{paper.name}", words)),)
    return judge_presence(
        inputs,
        check=ID,
        subject=f"{case.subject}/{anchor.id}",
        place=at,
        message=Message(f"anchor-dates.{ending}", words),
        met=met,
        rules=(rule,),
        refer=refer,
        question=paper.name,
    )


CHECK = Check(ID, Topic.ANCHORS, judge)
