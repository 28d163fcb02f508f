"""Is there a softener wherever a line passes an edge: lifelines always do, other lines may.

The line of a counterweighted beam hangs clear of the building, which its own check asks. A
tieback passes an edge where somebody saw that it does.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from backspan.core.findings import DoesNotApply, Message
from backspan.core.model.evidence import StatedValue
from backspan.core.model.rigs import Found
from backspan.core.model.seen import Route
from backspan.core.model.topics import Topic
from backspan.core.sheet.case import Case, Place
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.limits import needed_value
from backspan.core.sheet.witness import EvidenceClass
from backspan.core.sheet.words_allowed import judge_words

ID, KEY = "softeners", "presence.softeners"


@dataclass(frozen=True, slots=True)
class AtAnEdge:
    """A line that passes an edge, and what was found there."""

    kind: str
    name: str
    place: Place
    found: StatedValue[Found] | None


def judge(case: Case) -> Iterator[Answer]:
    """One finding a line that passes an edge."""
    accepted = needed_value(case.practice, KEY)
    there = False
    for line in lines(case):
        there, inputs = True, Inputs(case)
        place = (*line.place, "softener")
        word = inputs.word(line.kind, line.found, EvidenceClass.OBSERVATION, place)
        yield judge_words(
            check=ID,
            subject=line.name,
            place=place,
            message="seen",
            words=None if word is None else (word,),
            rule=accepted,
            inputs=inputs,
        )
    if not there:
        yield DoesNotApply(ID, case.subject, case.place, Message("na.no-edge"))


def lines(case: Case) -> Iterator[AtAnEdge]:
    """The lifelines; tiebacks that run over an edge; the lines of supports at the face."""
    rig, place = case.drop.rig, (*case.place, "rig", "lifelines")
    for life in () if rig is None else rig.lines:
        name = f"{case.subject}/{life.id}"
        yield AtAnEdge("lifeline_softener", name, (*place, life.id), life.softener)
    for point in case.points:
        name, at = case.name_of(point), case.place_of(point)
        if point.counterweighted_beam is None:
            yield AtAnEdge("line_softener", name, at, point.softener)
        for tie in point.tied:
            if tie.route is not None and tie.route.value is Route.OVER_AN_EDGE:
                there = (*at, "tiebacks", tie.id)
                yield AtAnEdge("tieback_softener", f"{name}/{tie.id}", there, tie.softener)


CHECK = Check(ID, Topic.EDGES, judge)
