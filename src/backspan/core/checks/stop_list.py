"""What has to be there before anybody rides: a word for what somebody found who went to look.

One row a thing: which topic it belongs to, and where its word stands. What was looked for and is
not there is a fail, what nobody stated is missing: they are not the same.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass

from backspan.core.findings import DoesNotApply, Message
from backspan.core.model.evidence import StatedValue
from backspan.core.model.rigs import Found, OtherSupportKind
from backspan.core.model.topics import Topic
from backspan.core.sheet.case import Case, Place
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.limits import needed_value
from backspan.core.sheet.witness import EvidenceClass
from backspan.core.sheet.words_allowed import judge_words


@dataclass(frozen=True, slots=True)
class Looked:
    """A thing that was looked for: its name, where its word stands, what was found if stated."""

    subject: str
    place: Place
    found: StatedValue[Found] | None = None
    absent: bool = False
    """Whether it was stated that there is none."""


Things = Callable[[Case], Iterator[Looked | DoesNotApply]]


def tiebacks(case: Case) -> Iterator[Looked | DoesNotApply]:
    """Each tieback; of a point without any, that there is none or that nobody said."""
    for point in case.points:
        name, place = case.name_of(point), (*case.place_of(point), "tiebacks")
        other = point.other_support
        if other is not None and other.kind is OtherSupportKind.BOLTED_TAIL:
            yield DoesNotApply("tieback", name, place, Message("na.bolted"))
        elif not point.tied:
            yield Looked(name, place, absent=point.tiebacks is not None)
        for line in point.tied:
            yield Looked(f"{name}/{line.id}", (*place, line.id, "found"), line.found)


def rope_ends(case: Case) -> Iterator[Looked | DoesNotApply]:
    """The ends of each suspension rope."""
    for point in case.points:
        place = (*case.place_of(point), "rope_ends")
        yield Looked(case.name_of(point), place, point.rope_ends)


def lifelines(case: Case) -> Iterator[Looked | DoesNotApply]:
    """Each lifeline; of a rig without any, that there is none or that nobody said."""
    rig, place = case.drop.rig, (*case.place, "rig", "lifelines")
    lines = () if rig is None else rig.lines
    if not lines:
        yield Looked(case.subject, place, absent=rig is not None and rig.lifelines is not None)
    for line in lines:
        yield Looked(f"{case.subject}/{line.id}", (*place, line.id, "found"), line.found)


def _of_rig(name: str) -> Things:
    def looked(case: Case) -> Iterator[Looked | DoesNotApply]:
        found = None if case.drop.rig is None else getattr(case.drop.rig, name)
        yield Looked(case.subject, (*case.place, "rig", name), found)

    return looked


def _check(name: str, topic: Topic, things: Things) -> Check:
    def judge(case: Case) -> Iterator[Answer]:
        accepted = needed_value(case.practice, f"presence.{name}")
        if not case.points:
            yield DoesNotApply(name, case.subject, case.place, Message("na.no-suspension-point"))
            return
        for one in things(case):
            if isinstance(one, DoesNotApply):
                yield one
                continue
            inputs = Inputs(case)
            word: str | None = str(Found.ABSENT) if one.absent else None
            if not one.absent:
                said = name.replace("-", "_")
                word = inputs.word(said, one.found, EvidenceClass.OBSERVATION, one.place)
            yield judge_words(
                check=name,
                subject=one.subject,
                place=one.place,
                message="seen",
                words=None if word is None else (word,),
                rule=accepted,
                inputs=inputs,
            )

    return Check(name, topic, judge)


CHECKS: tuple[Check, ...] = (
    _check("tieback", Topic.TIEBACK, tiebacks),
    _check("rope-ends", Topic.LINE, rope_ends),
    _check("lifeline", Topic.FALL_ARREST, lifelines),
    _check("power", Topic.POWER, _of_rig("power")),
    _check("rescue", Topic.RESCUE, _of_rig("rescue")),
)
