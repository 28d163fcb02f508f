"""Does the maker's label on the beam allow the counterweight on it and the load of its line.

A label rates a beam up to a reach, with a backspan of its own: beyond either its load says nothing.
That a label asks for no backspan somebody has to have seen on it.

A beam whose kind has a label and which has lost it, or on which it cannot be read, is not used. One
of a kind for which no label is known - a box or twin channels put together as a kit - is rated by
nobody, and nothing here can: an engineer does. A plain rolled beam is reckoned by its section.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from backspan.core.findings import DoesNotApply, Finding, Message
from backspan.core.model.kit import Beam, BeamLabel
from backspan.core.model.topics import Topic
from backspan.core.model.units import LabelState, Unit, UnitKind
from backspan.core.numbers import total
from backspan.core.quantities import FORCE, LENGTH, MASS, RATIO
from backspan.core.sheet.beam_as_built import BeamReads, arms, beam_reads
from backspan.core.sheet.beam_section import by_its_section
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.compared import Compared
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.limits import needed_value
from backspan.core.sheet.plain_beam import left_to_engineer
from backspan.core.sheet.question import Asked, Question
from backspan.core.sheet.reads import GroupReads, Read, hoist_reads, piece_reads, read_of
from backspan.core.sheet.sheet import Sheet
from backspan.core.sheet.subjects import BeamSubject, counterweighted
from backspan.core.sheet.witness import EvidenceClass
from backspan.core.sheet.words_allowed import judge_words

ID = "beam-label"
STATE = "equipment.label-state"
COUNT, RATED = "equipment.label-count", "beam.label-load"


@dataclass(frozen=True, slots=True)
class Labelled:
    """The groups of pieces on a beam, and the most its label allows of them."""

    groups: tuple[GroupReads, ...]
    most: Read


@dataclass(frozen=True, slots=True)
class Rated:
    """A beam as built, what hangs on its line, and what its label allows of both."""

    beam: BeamReads
    rated_load: Read
    most_load: Read
    most_reach: Read
    least_backspan: Read


def pieces(sheet: Sheet, one: Asked[Labelled]) -> Iterator[Compared]:
    """All pieces on the beam against the number its label allows."""
    on_beam = total([sheet.read(group.count) for group in one.subject.groups])
    most = sheet.read(one.subject.most)
    yield Compared(on_beam, most, counts=(("pieces", on_beam), ("most", most)))


def mass(sheet: Sheet, one: Asked[Labelled]) -> Iterator[Compared]:
    """The mass of all pieces on the beam against the mass its label allows."""
    on_beam = total(
        [sheet.read(group.count) * sheet.read(group.mass) for group in one.subject.groups]
    )
    most = sheet.read(one.subject.most)
    yield Compared(on_beam, most, numbers=(("mass", on_beam, MASS), ("most_mass", most, MASS)))


def load(sheet: Sheet, one: Asked[Rated]) -> Iterator[Compared]:
    """The rated load of the hoist on the line against the largest that the label allows."""
    hung, most = sheet.read(one.subject.rated_load), sheet.read(one.subject.most_load)
    yield Compared(hung, most, numbers=(("load", hung, FORCE), ("most_load", most, FORCE)))


def reach(sheet: Sheet, one: Asked[Rated]) -> Iterator[Compared]:
    """The reach as built against the longest that the label allows with that load."""
    built = sheet.read(one.subject.beam.reach)
    most = sheet.read(one.subject.most_reach)
    yield Compared(built, most, numbers=(("reach", built, LENGTH), ("most_reach", most, LENGTH)))


def backspan(sheet: Sheet, one: Asked[Rated]) -> Iterator[Compared]:
    """The shortest backspan that the label allows against the one as built."""
    _, built = arms(sheet, one.subject.beam)
    least = sheet.read(one.subject.least_backspan)
    numbers = (("least_backspan", least, LENGTH), ("backspan", built, LENGTH))
    yield Compared(least, built, numbers=numbers)


PIECES = Question(ID, "label-limit", RATIO, pieces, strength=False)
WHOLE_MASS = Question(ID, "label-limit-mass", MASS, mass, strength=False)
LOAD = Question(ID, "label-load", FORCE, load, strength=False)
REACH = Question(ID, "label-reach", LENGTH, reach, strength=False)
BACKSPAN = Question(ID, "label-backspan", LENGTH, backspan, strength=False)


def judge(case: Case) -> Iterator[Answer]:
    """The label's state for each beam, then each of its limits where it can be read."""
    for subject in counterweighted(case, ID):
        if isinstance(subject, DoesNotApply):
            yield subject
            continue
        beam = case.beam(subject.support.beam)
        unit = case.project.kit.unit(UnitKind.BEAM, subject.support.beam)
        none_known = (beam.label or BeamLabel()) == BeamLabel()
        if _no_label(unit) and none_known and by_its_section(beam):
            # A plain rolled beam has no maker's label to lose: its section is reckoned.
            reason = Message("na.by-its-section")
            yield DoesNotApply(ID, subject.name, subject.place, reason)
            continue
        if _no_label(unit) and none_known:
            yield left_to_engineer(case, ID, "no-rating", subject, "no-rating")
            continue
        yield _judge_state(case, subject, unit)
        if unit is not None and unit.label and unit.label.value is LabelState.READABLE:
            for question, limit in _limits(beam, beam.label or BeamLabel()):
                groups = piece_reads(case, subject.support, subject.place)
                rule = needed_value(case.practice, COUNT)
                asked = Asked(Labelled(groups, limit), subject.name, subject.place, (rule,))
                yield question.judge(case, asked)
            yield from _rated(case, subject, beam)


def _no_label(unit: Unit | None) -> bool:
    return unit is not None and unit.label is not None and unit.label.value is LabelState.NONE


def _rated(case: Case, subject: BeamSubject, beam: Beam) -> Iterator[Finding]:
    """The load on the line, then the reach and the backspan with which the label allows it.

    Of a beam that its section answers for only what its label states.
    """
    label, place = beam.label or BeamLabel(), ("kit", "beams", beam.id, "label")
    rated_load, _ = hoist_reads(case, subject.point)
    names = ("label_load", "label_reach", "label_backspan")
    rated = Rated(
        beam_reads(case, subject), rated_load, *(read_of(name, label, place) for name in names)
    )
    rule = needed_value(case.practice, RATED)
    asked = Asked(rated, subject.name, subject.place, (rule,))
    for question, limit in zip(
        (LOAD, REACH, BACKSPAN),
        (rated.most_load, rated.most_reach, rated.least_backspan),
        strict=True,
    ):
        if limit.stated is not None or not by_its_section(beam):
            yield question.judge(case, asked)


def _limits(beam: Beam, label: BeamLabel) -> Iterator[tuple[Question[Labelled, Compared], Read]]:
    """Each limit the label states; the number of pieces, to be asked for, where it states none."""
    place = ("kit", "beams", beam.id, "label")
    if label.most_mass is not None:
        yield WHOLE_MASS, read_of("label_mass", label, place)
    if label.most_pieces is not None or label.most_mass is None:
        yield PIECES, read_of("label_pieces", label, place)


def _judge_state(case: Case, subject: BeamSubject, unit: Unit | None) -> Finding:
    inputs = Inputs(case)
    place = (*subject.place, "beam") if unit is None else ("kit", "units", unit.id, "label")
    stated = None if unit is None else unit.label
    word = inputs.word("label_state", stated, EvidenceClass.OBSERVATION, place)
    return judge_words(
        check=ID,
        subject=subject.name,
        place=subject.place,
        message="label-state",
        words=None if word is None else (word,),
        rule=needed_value(case.practice, STATE),
        inputs=inputs,
    )


CHECK = Check(ID, Topic.BEAM, judge)
