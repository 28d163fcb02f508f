"""Are the pieces made as counterweights, and of nothing that flows."""

from __future__ import annotations

from collections.abc import Iterator

from backspan.core.findings import DoesNotApply
from backspan.core.judgement.case import Case
from backspan.core.judgement.check import Answer, Check
from backspan.core.judgement.inputs import EvidenceClass, Inputs
from backspan.core.judgement.subjects import RuledSubject, under_value
from backspan.core.judgement.words_allowed import judge_words

ID = "counterweight-kind"
FLOWABLE = "counterweight.refused-flowable"
PURPOSE_MADE = "counterweight.purpose-made"


def judge(case: Case) -> Iterator[Answer]:
    """Two findings a beam and rule set: nothing flowable, everything purpose-made."""
    for key in (FLOWABLE, PURPOSE_MADE):
        for one in under_value(case, ID, key):
            if isinstance(one, DoesNotApply):
                yield one
            else:
                yield _judge_stack(case, one, refused=key == FLOWABLE)


def _judge_stack(case: Case, one: RuledSubject, *, refused: bool) -> Answer:
    inputs = Inputs(case)
    kinds: list[str] = []
    for group in one.beam.support.stack.groups:
        piece = case.piece(group.piece)
        kinds.append(str(piece.kind))
        inputs.fact("piece_kind", str(piece.kind), ("kit", "pieces", piece.id, "kind"))
    if not kinds:
        place = (*one.beam.place, "stack", "groups")
        inputs.want("pieces", EvidenceClass.COUNT, place)
    return judge_words(
        check=ID,
        subject=one.beam.name,
        place=one.beam.place,
        message="flowable" if refused else "purpose-made",
        words=tuple(kinds) or None,
        rule=one.value,
        inputs=inputs,
        refused=refused,
    )


CHECK = Check(ID, judge)
