"""What a tolerance does to an answer: every check is made at the adverse end, and says so."""

from __future__ import annotations

from dataclasses import replace

from backspan.core.findings import Finding, Message
from backspan.core.judgement.case import Case, End
from backspan.core.judgement.check import Answer, Check


def answers_at_adverse_end(check: Check, case: Case) -> tuple[Answer, ...]:
    """A check's answers, with a note on each finding that the values as stated would change."""
    answers = tuple(check.judge(case))
    if not any(_toleranced(answer) for answer in answers):
        return answers
    as_stated = tuple(check.judge(replace(case, end=End.STATED)))
    return tuple(
        _noted(adverse, stated) for adverse, stated in zip(answers, as_stated, strict=True)
    )


def _toleranced(answer: Answer) -> bool:
    return isinstance(answer, Finding) and any(one.used != one.stated for one in answer.inputs)


def _noted(adverse: Answer, stated: Answer) -> Answer:
    if not isinstance(adverse, Finding) or not isinstance(stated, Finding):
        return adverse
    if adverse.verdict is stated.verdict:
        return adverse
    return replace(adverse, notes=(*adverse.notes, Message("note.within-tolerance")))
