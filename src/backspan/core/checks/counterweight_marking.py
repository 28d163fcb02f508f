"""Is the mass of each piece known from its stamp, where the rule asks for a stamp."""

from __future__ import annotations

from collections.abc import Iterator

from backspan.core.findings import DoesNotApply, Finding
from backspan.core.judgement.case import Case
from backspan.core.judgement.check import Answer, Check
from backspan.core.judgement.inputs import EvidenceClass, Inputs
from backspan.core.judgement.limits import needed_value
from backspan.core.judgement.subjects import BeamSubject, counterweighted
from backspan.core.judgement.words_allowed import judge_words
from backspan.core.quantities import MASS
from backspan.core.rules.selected import SelectedValue

ID = "counterweight-marking"
KEY = "counterweight.mass-evidence"


def judge(case: Case) -> Iterator[Answer]:
    """One finding a beam: under the rules that ask for a stamp, else under trade practice."""
    asked = [value for rules in case.rules if (value := rules.find(KEY)) is not None]
    values = asked or [needed_value(case.practice, str(EvidenceClass.MASS))]
    for subject in counterweighted(case, ID):
        if isinstance(subject, DoesNotApply):
            yield subject
        else:
            for value in values:
                yield _judge_pieces(case, subject, value, custom=not asked)


def _judge_pieces(
    case: Case, subject: BeamSubject, value: SelectedValue, *, custom: bool
) -> Finding:
    inputs = Inputs(case)
    words: list[str] = []
    for group in subject.support.stack.groups:
        piece = case.piece(group.piece)
        place = ("kit", "pieces", piece.id, "mass")
        inputs.measure("piece_mass", piece.mass, MASS, EvidenceClass.MASS, place)
        words.append("not stated" if piece.mass.evidence is None else str(piece.mass.evidence))
    if not words:
        inputs.want("pieces", EvidenceClass.COUNT, (*subject.place, "stack", "groups"))
    return judge_words(
        check=ID,
        subject=subject.name,
        place=subject.place,
        message="marking",
        words=tuple(words) or None,
        rule=value,
        inputs=inputs,
        never_fails=custom,
    )


CHECK = Check(ID, judge)
