"""Was it built as planned: each value found beside the planned one, where the file states both.

A difference is nobody's fail: the rig is no longer the one that was designed, so whoever designed
it says whether it may stay. What the checks make of the value found, they say themselves.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

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


@dataclass(frozen=True, slots=True)
class Planned:
    """A number of the rig with what was found and what was planned, in SI."""

    read: Read
    found: float
    planned: float


def judge(case: Case) -> Iterator[Answer]:
    """One finding a value that differs; one for all that do not; or that nothing was planned."""
    both = list(_planned(case))
    differing = [one for one in both if _apart(case, one)]
    for one in differing:
        yield _differs(case, one)
    if not both:
        yield DoesNotApply(ID, case.subject, case.place, Message("na.nothing-planned"))
    elif not differing:
        inputs = Inputs(case)
        for one in both:
            inputs.number(one.read)
        yield judge_presence(
            inputs,
            check=ID,
            subject=case.subject,
            place=case.place,
            message=Message("as-planned.pass", (("count", len(both)),)),
            met=True,
            question="all",
        )


def _planned(case: Case) -> Iterator[Planned]:
    for read in _reads(case):
        stated = read.stated
        if stated is not None and stated.planned is not None:
            yield Planned(read, stated.value, stated.planned)


def _differs(case: Case, one: Planned) -> Finding:
    inputs = Inputs(case)
    inputs.number(one.read)
    words: tuple[tuple[str, MessageValue], ...] = (
        ("input", one.read.quantity.name),
        ("found", _told(one.read, one.found)),
        ("planned", _told(one.read, one.planned)),
    )
    return judge_presence(
        inputs,
        check=ID,
        subject=case.subject,
        place=one.read.place,
        message=Message("as-planned.differs", words),
        met=True,
        rules=(needed_value(case.practice, WITHIN),),
        refer=(Need(Decider.QUALIFIED_PERSON, Message("need.as-planned", words)),),
        question="/".join(str(step) for step in one.read.place),
    )


def _told(read: Read, number: float) -> Amount | int:
    dimension = read.quantity.dimension
    return int(number) if dimension is None else Amount(number, dimension)


def _apart(case: Case, one: Planned) -> bool:
    """Whether what was found is further from the plan than a tape may be; else not the same."""
    within = 0.0
    if one.read.quantity.dimension is LENGTH:
        within = limit_of(needed_value(case.practice, WITHIN), LENGTH)
    return surely_above(abs(one.found - one.planned), limit=within)


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
