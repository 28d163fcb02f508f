"""Is the beam long enough for its stack: does the counterweight stand inboard of the fulcrum."""

from __future__ import annotations

from collections.abc import Iterator

from backspan.core.findings import DoesNotApply, Message, Verdict
from backspan.core.model.topics import Topic
from backspan.core.sheet.beam_as_built import beam_reads
from backspan.core.sheet.beam_fits import BACKSPAN_FITS, STACK_FITS, STACK_STANDS
from backspan.core.sheet.beam_fits import CHECK as ID
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.question import Asked
from backspan.core.sheet.subjects import BeamSubject, counterweighted


def judge(case: Case) -> Iterator[Answer]:
    """One finding a beam whose length is stated: the stack, or the taped backspan, fits."""
    for subject in counterweighted(case, ID):
        if isinstance(subject, DoesNotApply):
            yield subject
            continue
        yield _judge_beam(case, subject)


def judge_stack(case: Case) -> Iterator[Answer]:
    """One finding a beam whose backspan was taped and whose pieces' lengths are known."""
    for subject in counterweighted(case, STACK_STANDS.check):
        if isinstance(subject, DoesNotApply):
            yield subject
            continue
        beam = beam_reads(case, subject)
        sizes = [beam.length, beam.tip, beam.backspan, *(group.length for group in beam.groups)]
        if beam.groups and not beam.from_stack and all(one.stated for one in sizes):
            yield STACK_STANDS.judge(case, Asked(beam, subject.name, subject.place))
        else:
            reason = Message("na.stack-not-known")
            yield DoesNotApply(STACK_STANDS.check, subject.name, subject.place, reason)


def _judge_beam(case: Case, subject: BeamSubject) -> Answer:
    beam = beam_reads(case, subject)
    if beam.from_stack:
        return STACK_FITS.judge(case, Asked(beam, subject.name, subject.place))
    if beam.length.stated is None:
        return DoesNotApply(ID, subject.name, subject.place, Message("na.beam-length"))
    found = BACKSPAN_FITS.judge(case, Asked(beam, subject.name, subject.place))
    if beam.tip.stated is None and found.verdict is Verdict.PASS:
        # A beam that reaches beyond the line has less inboard than the finding could take.
        reason = Message("na.beam-tip")
        return DoesNotApply(ID, subject.name, subject.place, reason, found.inputs)
    return found


CHECK = Check(ID, Topic.TIPPING, judge)
STANDS = Check(STACK_STANDS.check, Topic.TIPPING, judge_stack)
