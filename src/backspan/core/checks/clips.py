"""The clips at a rope's end: how many, how far apart, how much rope turned back, how tight.

The rule has a floor, and the maker's sheet says more: rope turned back grows with every clip beyond
the sheet's. Too little torque slips; far too much is another maker's number and crushes the rope.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from backspan.core.findings import DoesNotApply, Message
from backspan.core.mechanics.ropes import least_clip_spacing, most_clip_torque, turnback_for_clips
from backspan.core.model.kit import CLIPPED, TerminationKind
from backspan.core.model.topics import Topic
from backspan.core.quantities import LENGTH, MOMENT, RATIO
from backspan.core.rules.selected import SelectedValue
from backspan.core.rules.shape import Limit
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.compared import Compared
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.limits import limit_of
from backspan.core.sheet.question import Asked, Question
from backspan.core.sheet.reads import Read, read_of
from backspan.core.sheet.rope_end import end_of
from backspan.core.sheet.rope_of import diameter_of
from backspan.core.sheet.sheet import Sheet
from backspan.core.sheet.subjects import in_force_or_practice
from backspan.core.sheet.witness import EvidenceClass
from backspan.core.sheet.words_seen import Point, WordSeen, each_point

ID = "clips"


@dataclass(frozen=True, slots=True)
class AtTheEnd:
    """What was found of the clips, what their maker asks for, and the rope they are on."""

    count: Read
    spacing: Read
    turnback: Read
    torque: Read
    sheet_count: Read
    sheet_turnback: Read
    sheet_torque: Read
    diameter: Read


def _limits(one: Asked[AtTheEnd]) -> Iterator[tuple[SelectedValue, float]]:
    """The rule values with a number; the others say that the maker's sheet is kept."""
    for value in one.values:
        if isinstance(value.content, Limit):
            yield value, limit_of(value, RATIO)


def count(sheet: Sheet, one: Asked[AtTheEnd]) -> Iterator[Compared]:
    """The clips against the rule's floor, and against their maker's count."""
    found, makers = sheet.read(one.subject.count), sheet.read(one.subject.sheet_count)
    for value, least in (*_limits(one), (one.values[-1], makers)):
        yield Compared(least, found, counts=(("count", found), ("least", least)), value=value)


def spacing(sheet: Sheet, one: Asked[AtTheEnd]) -> Iterator[Compared]:
    """Their spacing against a multiple of the rope's diameter."""
    found, diameter = sheet.read(one.subject.spacing), sheet.read(one.subject.diameter)
    for value, factor in _limits(one):
        least = sheet.do(least_clip_spacing, factor=factor, rope_diameter=diameter)
        numbers = (("apart", found, LENGTH), ("least", least, LENGTH), ("factor", factor, RATIO))
        yield Compared(least, found, numbers=numbers, value=value)


def turnback(sheet: Sheet, one: Asked[AtTheEnd]) -> Iterator[Compared]:
    """The rope turned back against the maker's, which grows with the clips; never below it."""
    clips = one.subject
    found, makers = sheet.read(clips.turnback), sheet.read(clips.sheet_turnback)
    grown = sheet.do(
        turnback_for_clips,
        sheet_turnback=makers,
        clip_count=sheet.read(clips.count),
        sheet_clip_count=sheet.read(clips.sheet_count),
    )
    for least in (grown, makers):
        yield Compared(least, found, numbers=(("turned", found, LENGTH), ("least", least, LENGTH)))


def torque(sheet: Sheet, one: Asked[AtTheEnd]) -> Iterator[Compared]:
    """Their torque against the maker's, from below and from above."""
    found, makers = sheet.read(one.subject.torque), sheet.read(one.subject.sheet_torque)
    for value, factor in _limits(one):
        most = sheet.do(most_clip_torque, factor=factor, sheet_torque=makers)
        numbers = (("torque", found, MOMENT), ("makers", makers, MOMENT), ("most", most, MOMENT))
        yield Compared(found, most, numbers=numbers, value=value)
        yield Compared(makers, found, numbers=numbers, value=one.values[-1])


#: Each number of the clips: its sentences, its sum, the rule values it is held against.
MEASURES: tuple[tuple[Question[AtTheEnd, Compared], tuple[str, ...]], ...] = (
    (
        Question(ID, "clip-count", RATIO, count, strength=False),
        ("line.least-clips", "line.clips-by-maker"),
    ),
    (Question(ID, "clip-spacing", LENGTH, spacing, strength=False), ("line.clip-spacing",)),
    (Question(ID, "clip-turnback", LENGTH, turnback, strength=False), ("line.clips-by-maker",)),
    (
        Question(ID, "clip-torque", MOMENT, torque, strength=False),
        ("line.most-clip-torque", "line.clips-by-maker"),
    ),
)

#: The sentences of those numbers: count, spacing, turnback, torque.
NUMBERS = tuple(question.says for question, _ in MEASURES)


def judge(case: Case) -> Iterator[Answer]:
    """Numbers and words of the clips at each point whose rope ends in clips."""
    for one in each_point(case, ID):
        if isinstance(one, DoesNotApply):
            yield one
            continue
        end, _ = end_of(case, one.point, one.place)
        kind = None if end is None else end.kind
        if kind not in CLIPPED:
            # An end of which nobody said how it is made is stopped by `termination-kind`.
            yield DoesNotApply(ID, one.name, one.place, Message("na.no-clips"))
            continue
        for question, keys in MEASURES:
            values = tuple(value for key in keys for value in in_force_or_practice(case, key))
            yield question.judge(case, Asked(_clips(case, one), one.name, one.place, values))
        yield from _words(case, one, kind)


def _words(case: Case, one: Point, kind: TerminationKind | None) -> Iterator[Answer]:
    grips = kind is TerminationKind.FIST_GRIP_CLIPS
    for name, key in (
        ("saddle", "line.saddle-of-fist-grips" if grips else "line.saddle"),
        ("tightened", "line.tightened"),
    ):
        inputs, at = Inputs(case), (*one.place, "clips", name)
        stated = None if one.point.clips is None else getattr(one.point.clips, name)
        word = inputs.word(name, stated, EvidenceClass.OBSERVATION, at)
        yield from WordSeen(ID, one.name, at, inputs, word).against(key, name)


def _clips(case: Case, one: Point) -> AtTheEnd:
    end, place = end_of(case, one.point, one.place)
    found, at = one.point.clips, (*one.place, "clips")
    makers, by = None if end is None else end.clips, (*place, "clips")
    return AtTheEnd(
        read_of("clip_count", found, at),
        read_of("clip_spacing", found, at),
        read_of("clip_turnback", found, at),
        read_of("clip_torque", found, at),
        read_of("sheet_clip_count", makers, by),
        read_of("sheet_turnback", makers, by),
        read_of("sheet_torque", makers, by),
        diameter_of(case, one.point, one.place),
    )


CHECK = Check(ID, Topic.LINE, judge)
