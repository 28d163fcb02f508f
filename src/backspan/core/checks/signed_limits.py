"""Does a licensed engineer's paper reach as far as the beam: who signed, until when, which limits.

Inside its limits it is the drawing's authority that passes. Outside one it says nothing of the
beam, neither that it holds nor that it does not: whoever may sign has to say more.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from backspan.core.findings import Decider, DoesNotApply, Finding, Message, Need, Verdict
from backspan.core.model.evidence import is_before
from backspan.core.model.signed import SignedLimits
from backspan.core.model.topics import Topic
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.signed import (
    ID,
    Words,
    limits_of,
    off_the_list,
    papers_of,
    said,
    who_may,
    why_not,
    within,
)
from backspan.core.sheet.subjects import BeamSubject, counterweighted


def judge(case: Case) -> Iterator[Answer]:
    """One finding for each beam and each paper that names the drop."""
    papers = papers_of(case)
    for beam in counterweighted(case, ID):
        if isinstance(beam, DoesNotApply):
            yield beam
        elif not papers:
            yield DoesNotApply(ID, beam.name, beam.place, Message("na.nothing-signed"))
        else:
            for at, paper in papers:
                yield _finding(case, beam, at, paper)


def _finding(case: Case, beam: BeamSubject, at: int, paper: SignedLimits) -> Finding:
    found = replace(within(case, beam, at, paper), question=f"{ID} {at}")
    words, reason = said(case, paper), why_not(case, paper)
    if reason is not None:
        more: Words = (("who", who_may(case)),) if reason == "role" else ()
        return _refer(found, f"signed.{reason}", (*words, *more))
    off = off_the_list(case, beam, paper)
    if off:
        return _refer(found, "signed.off-the-list", (*words, ("names", off)))
    told = (*words, *found.message.values)
    listed = bool(paper.hoists or paper.beams)
    inside = found.verdict is Verdict.PASS or (listed and not limits_of(paper))
    if inside and is_before(paper.until, case.work_ends):
        return _refer(found, "signed.lapses", told)
    if inside:
        return replace(found, verdict=Verdict.PASS, message=Message("signed.pass", told))
    if found.message.id == "signed.fail":
        return _refer(found, "signed.outside", told, open_needs=found.needs)
    need = Need(Decider.LICENSED_ENGINEER, Message("need.signed", words))
    return replace(
        found,
        verdict=Verdict.MISSING,
        message=Message("signed.missing", told),
        needs=found.needs or (need,),
    )


def _refer(
    found: Finding, message: str, words: Words, open_needs: tuple[Need, ...] = ()
) -> Finding:
    """Neither pass nor fail: whoever may sign says more. What nobody stated stays missing."""
    need = Need(Decider.LICENSED_ENGINEER, Message("need.signed", words))
    return replace(
        found,
        verdict=Verdict.MISSING if open_needs else Verdict.REFER,
        message=Message(message, words),
        needs=(*open_needs, need),
    )


CHECK = Check(ID, Topic.STANDS_ON, judge)
