"""Where the sections of a beam meet: not under the counterweight, and not where it reaches out.

Distances are from the tail. The stack lies from its tail gap inwards, or around a backspan that was
taped, and both where both are known. A joint outboard of the fulcrum is not refused: its maker may
allow it, which a qualified person says. How long the sleeve of a joint is nobody is asked here: the
distance is of the joint itself.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from backspan.core.findings import Decider, DoesNotApply, Finding, Message, Need, Verdict
from backspan.core.model.beams import BeamSplice, Joined
from backspan.core.model.topics import Topic
from backspan.core.numbers import surely_below
from backspan.core.quantities import LENGTH
from backspan.core.sheet.beam_as_built import BeamReads, beam_reads, inboard_of, stack_rows
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.limits import needed_value
from backspan.core.sheet.presence import judge_presence
from backspan.core.sheet.question import Asked, Compared, Question
from backspan.core.sheet.reads import Read, read_of
from backspan.core.sheet.sheet import Sheet
from backspan.core.sheet.stack import inner_end, placed_stack
from backspan.core.sheet.subjects import BeamSubject, counterweighted
from backspan.core.sheet.witness import EvidenceClass

ID = "splice-clear"


@dataclass(frozen=True, slots=True)
class Joint:
    """A joint of a beam: where it lies, and what may be read of the beam."""

    at: Read
    beam: BeamReads


def under_stack(sheet: Sheet, one: Asked[Joint]) -> Iterator[Compared]:
    """The joint against the nearer end of the stack, by each way in which that is known."""
    at = sheet.read(one.subject.at)
    for outer, inner in _stacks(sheet, one.subject.beam):
        yield _clear(at, outer, inner)


def outboard(sheet: Sheet, one: Asked[Joint]) -> Iterator[Compared]:
    """The joint against the fulcrum, or the line where it lies nearer to that."""
    at, beam = sheet.read(one.subject.at), one.subject.beam
    reach = sheet.read(beam.reach)
    fulcrum = sheet.positive("inboard", inboard_of(sheet, beam, reach))
    yield _clear(at, fulcrum, fulcrum + reach)


def _clear(at: float, outer: float, inner: float) -> Compared:
    """Whether a place lies outside of two others: tailwards of the outer, or beyond the inner."""
    tailwards = surely_below(at + at, limit=outer + inner)
    demand, capacity = (at, outer) if tailwards else (inner, at)
    told = (("at", at, LENGTH), ("outer", outer, LENGTH), ("inner", inner, LENGTH))
    return Compared(demand, capacity, numbers=told)


def _stacks(sheet: Sheet, beam: BeamReads) -> Iterator[tuple[float, float]]:
    """The outer and the inner end of the stack."""
    by_gap = beam.from_stack or beam.tail_gap.stated is not None
    if by_gap:
        yield sheet.part("by-gap", lambda sheet: _by_gap(sheet, beam))
    if beam.both or not by_gap:
        yield sheet.part("as-taped", lambda sheet: _as_taped(sheet, beam))


def _by_gap(sheet: Sheet, beam: BeamReads) -> tuple[float, float]:
    gap = sheet.read(beam.tail_gap)
    return gap, inner_end(sheet, stack_rows(sheet, beam), tail_gap=gap)


def _as_taped(sheet: Sheet, beam: BeamReads) -> tuple[float, float]:
    backspan, reach = sheet.read(beam.backspan), sheet.read(beam.reach)
    inboard = sheet.positive("inboard", inboard_of(sheet, beam, reach))
    stack = placed_stack(sheet, stack_rows(sheet, beam), tail_gap=0.0)
    outer = inboard - backspan - stack.centroid_from_tail
    return outer, outer + stack.inner_end_from_tail


UNDER_STACK = Question(ID, "splice-clear", LENGTH, under_stack, strength=False)
OUTBOARD = Question(ID, "splice-reach", LENGTH, outboard, strength=False)


def judge(case: Case) -> Iterator[Answer]:
    """Two findings a joint; of a beam of sections without any, that nobody said where they meet."""
    for one in counterweighted(case, ID):
        if isinstance(one, DoesNotApply):
            yield one
            continue
        joined, splices = one.support.joined, one.support.joints
        if not splices and joined is not None and joined.value is Joined.ONE_PIECE:
            yield DoesNotApply(ID, one.name, one.place, Message("na.one-piece"))
        elif not splices:
            yield _not_said(case, one)
        for splice in splices:
            yield from _of_splice(case, one, splice)


def _not_said(case: Case, beam: BeamSubject) -> Finding:
    inputs, at = Inputs(case), (*beam.place, "splices")
    inputs.want("beam_splices", EvidenceClass.OBSERVATION, at)
    return judge_presence(
        inputs,
        check=ID,
        subject=beam.name,
        place=at,
        message=Message("splices.not-said"),
        met=None,
        rules=(needed_value(case.practice, "beam.splice-clear"),),
        question="splices",
    )


def _of_splice(case: Case, beam: BeamSubject, splice: BeamSplice) -> Iterator[Finding]:
    place, name = (*beam.place, "splices", splice.id), f"{beam.name}/{splice.id}"
    joint = Joint(read_of("splice_from_tail", splice, place), beam_reads(case, beam))
    for question in (UNDER_STACK, OUTBOARD):
        rule = needed_value(case.practice, f"beam.{question.says}")
        found = question.judge(case, Asked(joint, name, place, (rule,)))
        yield found if question is UNDER_STACK else _to_a_person(found, splice)


def _to_a_person(found: Finding, splice: BeamSplice) -> Finding:
    """A joint that reaches out is its maker's to allow, as far as it is known to lie there."""
    if found.verdict is not Verdict.FAIL or found.message.id.startswith("outside."):
        return found
    need = Need(Decider.QUALIFIED_PERSON, Message("need.splice-reach", (("splice", splice.id),)))
    return replace(
        found,
        verdict=Verdict.MISSING if found.needs else Verdict.REFER,
        message=Message("splice-reach.refer", found.message.values),
        needs=(*found.needs, need),
        not_judged=not found.needs,
    )


CHECK = Check(ID, Topic.BEAM, judge)
