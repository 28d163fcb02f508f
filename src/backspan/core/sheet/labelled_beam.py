"""A beam that its label rates and whose section is stated as well: the label goes first.

Its section is reckoned all the same. Where that fails, label and section are not of one beam, or
its maker knew more than is stated: a qualified person says which. A section that holds, or of which
too little is known, adds nothing to the label.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import replace

from backspan.core.findings import Decider, DoesNotApply, Finding, Message, Need, Verdict
from backspan.core.sheet.beam_section import rated
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer
from backspan.core.sheet.decide import refused_by_a_person
from backspan.core.sheet.subjects import BeamSubject, counterweighted

SAYS = "section-under-label"


def unless_rated(
    check: str, judge: Callable[[Case], Iterator[Answer]]
) -> Callable[[Case], Iterator[Answer]]:
    """A check of sections, of beams that their label rates only what their section refuses."""

    def judged(case: Case) -> Iterator[Answer]:
        """As the check; of a beam that its label rates a refusal is referred, and nothing else."""
        labelled = {
            one.place: one
            for one in counterweighted(case, check)
            if isinstance(one, BeamSubject) and rated(case.beam(one.support.beam))
        }
        told = set()
        for answer in judge(case):
            subject = labelled.get(answer.place)
            if subject is None or isinstance(answer, DoesNotApply):
                yield answer
            elif answer.verdict is Verdict.FAIL:
                yield _to_who_knows(answer, case.beam(subject.support.beam).id)
            elif answer.place not in told:
                told.add(answer.place)
                reason = Message("na.rated-by-label")
                yield DoesNotApply(check, subject.name, subject.place, reason)

    return judged


def _to_who_knows(found: Finding, beam: str) -> Finding:
    need = Need(Decider.QUALIFIED_PERSON, Message(f"need.{SAYS}", (("beam", beam),)))
    left = refused_by_a_person(found, need)
    if left.verdict is Verdict.FAIL:
        return left
    return replace(left, message=Message(f"{SAYS}.refer", (("beam", beam),)))
