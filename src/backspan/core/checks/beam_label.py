"""Does the maker's label on the beam allow the counterweight that is on it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from backspan.core.findings import DoesNotApply, Finding
from backspan.core.model.kit import Beam, BeamLabel
from backspan.core.model.topics import Topic
from backspan.core.model.units import LabelState, Unit, UnitKind
from backspan.core.numbers import total
from backspan.core.quantities import MASS, RATIO
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.limits import needed_value
from backspan.core.sheet.question import Asked, Compared, Question
from backspan.core.sheet.reads import GroupReads, Read, piece_reads, read_of
from backspan.core.sheet.sheet import Sheet
from backspan.core.sheet.subjects import BeamSubject, counterweighted
from backspan.core.sheet.witness import EvidenceClass
from backspan.core.sheet.words_allowed import judge_words

ID = "beam-label"
STATE = "equipment.label-state"
COUNT = "equipment.label-count"


@dataclass(frozen=True, slots=True)
class Labelled:
    """The groups of pieces on a beam, and the most its label allows of them."""

    groups: tuple[GroupReads, ...]
    most: Read


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


PIECES = Question(ID, "label-limit", RATIO, pieces, strength=False)
WHOLE_MASS = Question(ID, "label-limit-mass", MASS, mass, strength=False)


def judge(case: Case) -> Iterator[Answer]:
    """The label's state for each beam, then each of its limits where it can be read."""
    for subject in counterweighted(case, ID):
        if isinstance(subject, DoesNotApply):
            yield subject
            continue
        beam = case.beam(subject.support.beam)
        unit = case.project.kit.unit(UnitKind.BEAM, subject.support.beam)
        yield _judge_state(case, subject, unit)
        if unit is not None and unit.label and unit.label.value is LabelState.READABLE:
            for question, limit in _limits(beam, beam.label or BeamLabel()):
                groups = piece_reads(case, subject.support, subject.place)
                rule = needed_value(case.practice, COUNT)
                asked = Asked(Labelled(groups, limit), subject.name, subject.place, (rule,))
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
