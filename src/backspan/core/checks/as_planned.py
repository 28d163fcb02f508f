"""Was it built as planned: each value found beside the planned one, where the file states both.

A difference is nobody's fail: the rig is no longer the one that was designed, so whoever designed
it says whether it may stay. What the checks make of the value found, they say themselves.
"""

from __future__ import annotations

from collections.abc import Iterator

from backspan.core.findings import Decider, DoesNotApply, Finding, Message, MessageValue, Need
from backspan.core.model.topics import Topic
from backspan.core.numbers import surely_above
from backspan.core.quantities import LENGTH, Amount
from backspan.core.quantities.named import QUANTITIES
from backspan.core.sheet.case import Case, Place
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.limits import limit_of, needed_value
from backspan.core.sheet.presence import judge_presence
from backspan.core.sheet.reads import Read, read_of

ID = "as-planned"
WITHIN = "tolerance.as-planned"


def judge(case: Case) -> Iterator[Answer]:
    """One finding a value that differs; one for all that do not; or that nothing was planned."""
    both = [
        one for one in _reads(case) if one.stated is not None and one.stated.planned is not None
    ]
    differing = [one for one in both if _apart(case, one)]
    for one in differing:
        yield _differs(case, one)
    if not both:
        yield DoesNotApply(ID, case.subject, case.place, Message("na.nothing-planned"))
    elif not differing:
        inputs = Inputs(case)
        for one in both:
            inputs.number(one)
        yield judge_presence(
            inputs,
            check=ID,
            subject=case.subject,
            place=case.place,
            message=Message("as-planned.pass", (("count", len(both)),)),
            met=True,
            question="all",
        )


def _differs(case: Case, one: Read) -> Finding:
    inputs = Inputs(case)
    inputs.number(one)
    found = None if one.stated is None else _told(one, one.stated.value)
    planned = None if one.stated is None else _told(one, one.stated.planned)
    words: tuple[tuple[str, MessageValue], ...] = (
        ("input", one.quantity.name),
        ("found", found or 0),
        ("planned", planned or 0),
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


def _told(one: Read, number: float | None) -> Amount | int:
    dimension = one.quantity.dimension
    value = 0.0 if number is None else number
    return int(value) if dimension is None else Amount(value, dimension)


def _apart(case: Case, one: Read) -> bool:
    """Whether what was found is further from the plan than a tape may be; else not the same."""
    stated = one.stated
    if stated is None or stated.planned is None:
        return False
    within = 0.0
    if one.quantity.dimension is LENGTH:
        within = limit_of(needed_value(case.practice, WITHIN), LENGTH)
    return surely_above(abs(stated.value - stated.planned), limit=within)


def _reads(case: Case) -> Iterator[Read]:
    """Every number of the rig that the table of quantities knows."""
    rig = case.drop.rig
    if rig is not None:
        yield from _of("rig", rig, (*case.place, "rig"))
    for point in case.points:
        place = case.place_of(point)
        yield from _of("suspension_point", point, place)
        beam, of_beam = point.counterweighted_beam, (*place, "counterweighted_beam")
        if beam is None:
            continue
        yield from _of("counterweighted_beam", beam, of_beam)
        yield from _of("fulcrum", beam.fulcrum, (*of_beam, "fulcrum"))
        yield from _of("stack", beam.stack, (*of_beam, "stack"))
        for index, group in enumerate(beam.stack.groups):
            yield from _of("group", group, (*of_beam, "stack", "groups", index))


def _of(record: str, holder: object | None, place: Place) -> Iterator[Read]:
    for name, one in QUANTITIES.items():
        if holder is not None and one.record == record:
            yield read_of(name, holder, place)


CHECK = Check(ID, Topic.DESIGN, judge)
