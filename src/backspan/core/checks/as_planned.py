"""Was it built as planned: each value found beside the planned one, where the file states both.

A difference is nobody's fail: the rig is no longer the one that was designed, so whoever designed
it says whether it may stay. What the checks make of the value found, they say themselves.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from backspan.core.findings import Decider, DoesNotApply, Finding, Message, MessageValue, Need
from backspan.core.model.topics import Topic
from backspan.core.numbers import surely_above
from backspan.core.quantities import LENGTH, Amount
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.leans_on import StatedAt, stated_values
from backspan.core.sheet.limits import limit_of, needed_value
from backspan.core.sheet.presence import judge_presence
from backspan.core.sheet.witness import EvidenceClass

ID = "as-planned"
WITHIN = "tolerance.as-planned"


def judge(case: Case) -> Iterator[Answer]:
    """One finding a value that differs; one for all that do not; or that nothing was planned."""
    both = [one for one in stated_values(case) if one.stated.planned is not None]
    differing = [one for one in both if _apart(case, one)]
    for one in differing:
        yield _differs(case, one)
    if not both:
        yield DoesNotApply(ID, case.subject, case.place, Message("na.nothing-planned"))
    elif not differing:
        inputs = Inputs(case)
        for one in both:
            _note(inputs, one)
        yield judge_presence(
            inputs,
            check=ID,
            subject=case.subject,
            place=case.place,
            message=Message("as-planned.pass", (("count", len(both)),)),
            met=True,
            question="all",
        )


def _differs(case: Case, one: StatedAt) -> Finding:
    inputs = Inputs(case)
    _note(inputs, one)
    words: tuple[tuple[str, MessageValue], ...] = (
        ("input", one.name),
        ("found", _told(one, one.stated.value)),
        ("planned", _told(one, one.stated.planned)),
    )
    return judge_presence(
        inputs,
        check=ID,
        subject=case.subject,
        place=one.place,
        message=Message("as-planned.differs", words),
        met=True,
        rules=(needed_value(case.practice, WITHIN),),
        refer=(Need(Decider.QUALIFIED_PERSON, Message("need.as-planned", words)),),
        question="/".join(str(step) for step in one.place),
    )


def _note(inputs: Inputs, one: StatedAt) -> None:
    """Note the value found as an input, with what its evidence lacks."""
    if one.read is None:
        inputs.word(one.name, one.stated, EvidenceClass.OBSERVATION, one.place)
    else:
        inputs.number(one.read)


def _told(one: StatedAt, value: Any) -> MessageValue:
    """The value found or the planned one, as it is printed."""
    if one.read is None:
        return str(value)
    dimension = one.read.quantity.dimension
    return int(value) if dimension is None else Amount(value, dimension)


def _apart(case: Case, one: StatedAt) -> bool:
    """Whether what was found is further from the plan than a tape may be; else not the same."""
    found, planned, within = one.stated.value, one.stated.planned, 0.0
    if one.read is None:
        return found is not planned
    if one.read.quantity.dimension is LENGTH:
        within = limit_of(needed_value(case.practice, WITHIN), LENGTH)
    return surely_above(abs(found - planned), limit=within)


CHECK = Check(ID, Topic.DESIGN, judge)
