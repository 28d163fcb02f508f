"""May each anchor be used for what hangs on it, and does nothing else hang where a life does.

An anchor that a lifeline shares with any other line is no independent line of defence, whatever it
was tested for; two names of one thing are one anchor, so anchors that stand too close are measured
again. Two tiebacks on one anchor may be meant: an engineer has to say so, with the load.

What an anchor is is written freely. Pipes, vents, rails and the rig's own parts are refused by
their words, wherever they stand in that text, but in a phrase that is known to name an anchor.
One that the plan shows beside its roof is somewhere else.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from backspan.core.findings import Decider, DoesNotApply, Finding, Message, MessageValue, Need
from backspan.core.model.project import Project
from backspan.core.model.site import Anchor, AnchorStanding, AnchorUse
from backspan.core.model.topics import Topic
from backspan.core.numbers import root, smaller, surely_above, surely_below, total
from backspan.core.quantities import FORCE, LENGTH, Amount
from backspan.core.rules.selected import SelectedValue
from backspan.core.sheet.case import Case, Place
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.limits import limit_of, needed_value
from backspan.core.sheet.plan_distance import line_to_outline
from backspan.core.sheet.presence import judge_presence
from backspan.core.sheet.subjects import in_force_or_practice
from backspan.core.sheet.tied import PLAN_POSITION
from backspan.core.sheet.witness import EvidenceClass, words_of
from backspan.core.sheet.words_within import words_within

USE, ALONE = "anchor-use", "lifeline-alone"
KEY, APART, REFUSED = "anchor.lifeline-alone", "anchor.least-apart", "anchor.refused-kinds"
ACCEPTED = "anchor.accepted-kinds"
_USES = {"tieback": AnchorUse.TIEBACK, "lifeline": AnchorUse.FALL_ARREST}


@dataclass(frozen=True, slots=True)
class Line:
    """A tieback or a lifeline, and the anchor it goes to; the hoist of a tieback's point."""

    kind: str
    name: str
    anchor: str
    hoist: str = ""


def lines_of(project: Project) -> Iterator[tuple[str, Line]]:
    """Every line on the roof as it stands, with its drop."""
    for drop, rig in project.standing_rigs:
        for point in rig.suspension_points:
            for tie in point.tied:
                if tie.anchor is not None:
                    name = f"{drop}/{point.id}/{tie.id}"
                    yield drop, Line("tieback", name, tie.anchor, point.hoist)
        for life in rig.lines:
            yield drop, Line("lifeline", f"{drop}/{life.id}", life.anchor)


def _every(case: Case) -> list[tuple[str, Line]]:
    return case.once_for_all("lines", lambda: list(lines_of(case.project)))


def judge_use(case: Case) -> Iterator[Answer]:
    """For each line of the drop whether its anchor stands and is for it; two tiebacks on one."""
    mine = [line for drop, line in _every(case) if drop == case.drop.id]
    if not mine:
        yield DoesNotApply(USE, case.subject, case.place, Message("na.no-anchor"))
    anchors = _anchors(case)
    for line in mine:
        if line.anchor in anchors:
            yield _use(case, line, *anchors[line.anchor])
    yield from _two_tiebacks(case, mine)


def judge_alone(case: Case) -> Iterator[Answer]:
    """For each lifeline of the drop whether anything else goes to its anchor."""
    every = _every(case)
    mine = [line for drop, line in every if drop == case.drop.id and line.kind == "lifeline"]
    if not mine:
        yield DoesNotApply(ALONE, case.subject, case.place, Message("na.no-lifeline"))
    rules = in_force_or_practice(case, KEY)
    for line in mine:
        others = tuple(
            other.name
            for _, other in every
            if other.anchor == line.anchor and other.name != line.name
        )
        near = () if others else _near(case, line.anchor)
        for rule in rules:
            yield _too_near(case, line, near, rule) if near else _alone(case, line, others, rule)


def _near(case: Case, anchor: str) -> tuple[tuple[str, float], ...]:
    """The other anchors in use that stand so near that they may be the same thing."""
    least = limit_of(needed_value(case.practice, APART), LENGTH)
    known = _anchors(case)
    x, y = known[anchor][0].at
    found = []
    for other in _in_use(case):
        if other == anchor or other not in known:
            continue
        across, up = (there - here for there, here in zip(known[other][0].at, (x, y), strict=True))
        apart = root(across * across + up * up)
        if surely_below(apart, limit=least):
            found.append((other, apart))
    return tuple(found)


def _too_near(
    case: Case, line: Line, near: tuple[tuple[str, float], ...], rule: SelectedValue
) -> Finding:
    """A lifeline of whose anchor nobody can tell that it is another thing than its neighbour."""
    inputs, place = Inputs(case), _anchors(case)[line.anchor][1]
    inputs.fact("anchor", line.anchor, case.place)
    words: tuple[tuple[str, MessageValue], ...] = (
        ("anchor", line.anchor),
        ("others", tuple(name for name, _ in near)),
        ("apart", Amount(smaller(*(apart for _, apart in near)), LENGTH)),
    )
    inputs.not_stated.append(Need(Decider.MEASURER, Message("need.anchors-apart", words)))
    return judge_presence(
        inputs,
        check=ALONE,
        subject=line.name,
        place=place,
        message=Message("alone.near", words),
        met=None,
        rules=(rule, needed_value(case.practice, APART)),
    )


def _alone(case: Case, line: Line, others: tuple[str, ...], rule: SelectedValue) -> Finding:
    inputs = Inputs(case)
    inputs.fact("anchor", line.anchor, case.place)
    words: tuple[tuple[str, MessageValue], ...] = (("anchor", line.anchor), ("others", others))
    return judge_presence(
        inputs,
        check=ALONE,
        subject=line.name,
        place=(*case.place, "rig", "lifelines"),
        message=Message("alone.shared" if others else "alone.pass", words),
        met=not others,
        rules=(rule,),
    )


def _use(case: Case, line: Line, anchor: Anchor, place: Place) -> Finding:
    inputs, wanted = Inputs(case), _USES[line.kind]
    inputs.fact("anchor_standing", str(anchor.standing), (*place, "standing"))
    inputs.fact("anchor_kind", anchor.kind, (*place, "kind"))
    refused = needed_value(case.practice, REFUSED)
    accepted = needed_value(case.practice, ACCEPTED)
    barred = words_within(anchor.kind, words_of(refused), but=words_of(accepted))
    words: tuple[tuple[str, MessageValue], ...] = (
        ("anchor", anchor.id),
        ("called", anchor.kind),
        ("use", str(wanted)),
        ("uses", tuple(str(use) for use in anchor.uses)),
    )
    met: bool | None = True
    ending, refer = "pass", tuple[Need, ...]()
    if anchor.standing is AnchorStanding.OUT_OF_SERVICE:
        met, ending = False, "out"
    elif barred:
        met, ending = False, "barred"
    elif not anchor.uses:
        inputs.want("anchor_uses", EvidenceClass.OBSERVATION, (*place, "uses"), Decider.OWNER)
        met, ending = None, "missing"
    elif wanted not in anchor.uses:
        met, ending = False, "not-for-it"
    elif _off_roof(case, anchor):
        inputs.not_stated.append(Need(Decider.MEASURER, Message("need.anchor-off-roof", words)))
        met, ending = None, "off-roof"
    elif anchor.standing is AnchorStanding.CONDITIONAL:
        ending = "conditional"
        refer = (Need(Decider.OWNER, Message("need.anchor-condition", words)),)
    return judge_presence(
        inputs,
        check=USE,
        subject=line.name,
        place=place,
        message=Message(f"anchor-use.{ending}", words),
        met=met,
        rules=(refused,) if barred else (),
        refer=refer,
    )


def _off_roof(case: Case, anchor: Anchor) -> bool:
    """Whether the plan shows an anchor beside its own roof, further than a plan is off."""
    off = limit_of(needed_value(case.practice, PLAN_POSITION), LENGTH)
    roof = next(one for one in case.project.site.roofs if anchor in one.anchors)
    return surely_above(line_to_outline(anchor.at, anchor.at, roof.outline), limit=off)


def _two_tiebacks(case: Case, mine: list[Line]) -> Iterator[Finding]:
    """Tiebacks that share an anchor, on this drop or another, with what their hoists may pull."""
    ties = [line for _, line in _every(case) if line.kind == "tieback"]
    for name in dict.fromkeys(line.anchor for line in mine if line.kind == "tieback"):
        there = [line for line in ties if line.anchor == name]
        if there[1:]:
            pull = total(case.hoist(line.hoist).rated_load.value for line in there)
            words: tuple[tuple[str, MessageValue], ...] = (
                ("anchor", name),
                ("lines", tuple(line.name for line in there)),
                ("load", Amount(pull, FORCE)),
            )
            yield judge_presence(
                Inputs(case),
                check=USE,
                subject=f"{case.subject}/{name}",
                place=(*case.place, "rig"),
                message=Message("anchor-use.two-tiebacks", words),
                met=True,
                refer=(Need(Decider.LICENSED_ENGINEER, Message("need.two-tiebacks", words)),),
                question="two tiebacks",
            )


def _in_use(case: Case) -> list[str]:
    """The anchors that a line goes to, each once."""
    return case.once_for_all(
        "anchors-in-use", lambda: list(dict.fromkeys(line.anchor for _, line in _every(case)))
    )


def _anchors(case: Case) -> dict[str, tuple[Anchor, Place]]:
    """Every anchor of the project by its id, with where it stands."""
    return case.once_for_all(
        "anchors",
        lambda: {
            anchor.id: (anchor, ("site", "roofs", roof.id, "anchors", anchor.id))
            for roof in case.project.site.roofs
            for anchor in roof.anchors
        },
    )


CHECKS = (Check(USE, Topic.ANCHORS, judge_use), Check(ALONE, Topic.INDEPENDENCE, judge_alone))
