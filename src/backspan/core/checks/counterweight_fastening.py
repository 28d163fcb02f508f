"""Are the pieces fastened to the beam the way the rule asks."""

from __future__ import annotations

from collections.abc import Iterator

from backspan.core.findings import DoesNotApply
from backspan.core.judgement.case import Case
from backspan.core.judgement.check import Answer, Check
from backspan.core.judgement.inputs import EvidenceClass, Inputs
from backspan.core.judgement.subjects import under_value
from backspan.core.judgement.words_allowed import judge_words

ID = "counterweight-fastening"
KEY = "counterweight.accepted-fastening"


def judge(case: Case) -> Iterator[Answer]:
    """One finding a beam and rule set that says how pieces are held."""
    for one in under_value(case, ID, KEY):
        if isinstance(one, DoesNotApply):
            yield one
            continue
        inputs = Inputs(case)
        place = (*one.beam.place, "stack", "fastening")
        word = inputs.word(
            "fastening", one.beam.support.stack.fastening, EvidenceClass.OBSERVATION, place
        )
        yield judge_words(
            check=ID,
            subject=one.beam.name,
            place=one.beam.place,
            message="fastening",
            words=None if word is None else (word,),
            rule=one.value,
            inputs=inputs,
        )


CHECK = Check(ID, judge)
