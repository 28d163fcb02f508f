"""Where the sections of a beam meet: not under the counterweight, and not where it reaches out.

Distances are from the tail. The stack lies from its tail gap inwards, or around a backspan that was
taped, and both where both are known. A joint over the fulcrum or outboard of it is not refused: its
maker may allow it, which a qualified person says. Half of the sleeve of a joint lies on either side
of it. How long it is is asked only where a sleeve as long as any would not lie clear.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from backspan.core.findings import Decider, DoesNotApply, Finding, Message, Need
from backspan.core.model.beams import BeamSplice, Joined
from backspan.core.model.topics import Topic
from backspan.core.numbers import ends_around, meets, surely_below
from backspan.core.quantities import LENGTH, Amount, Dimension
from backspan.core.sheet.beam_as_built import (
    BeamReads,
    beam_reads,
    inboard_of,
    stack_at_tail,
    stack_rows,
)
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.compared import Compared
from backspan.core.sheet.decide import refused_by_a_person
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.limits import limit_of, needed_value
from backspan.core.sheet.presence import judge_presence
from backspan.core.sheet.question import Asked, Question
from backspan.core.sheet.reads import Read, read_of
from backspan.core.sheet.sheet import Sheet
from backspan.core.sheet.stack import inner_end
from backspan.core.sheet.subjects import BeamSubject, counterweighted
from backspan.core.sheet.witness import EvidenceClass

ID = "splice-clear"
SLEEVE = "beam.longest-sleeve"


@dataclass(frozen=True, slots=True)
class Joint:
    """A joint of a beam: where it lies, and what may be read of the beam."""

    at: Read
    sleeve: Read
    beam: BeamReads


@dataclass(slots=True)
class Apart(Compared):
    """A comparison that what only just reaches does not meet: over the fulcrum is not beside it."""

    @property
    def met(self) -> bool | None:
        """Whether the capacity is more than the demand; None where either is unknown."""
        enough = Compared(self.demand, self.capacity).met
        return enough and not meets(demand=self.capacity, capacity=self.demand)


def under_stack(sheet: Sheet, one: Asked[Joint]) -> Iterator[Compared]:
    """The joint against the nearer end of the stack, by each way in which that is known."""
    yield from by_its_gap(sheet, one)
    yield from as_it_was_taped(sheet, one)


def by_its_gap(sheet: Sheet, one: Asked[Joint]) -> Iterator[Compared]:
    """The joint against the stack from its tail gap inwards, unless only the backspan is known."""
    beam = one.subject.beam
    if beam.from_stack or beam.tail_gap.stated is not None:
        outer, inner = sheet.part("by-gap", lambda sheet: _by_gap(sheet, beam))
        yield _clear(sheet, one, outer, inner, Compared)


def as_it_was_taped(sheet: Sheet, one: Asked[Joint]) -> Iterator[Compared]:
    """The joint against the stack around its taped backspan, where that is known."""
    beam = one.subject.beam
    if beam.both or not (beam.from_stack or beam.tail_gap.stated is not None):
        outer, inner = sheet.part("as-taped", lambda sheet: _as_taped(sheet, beam))
        yield _clear(sheet, one, outer, inner, Compared)


def outboard(sheet: Sheet, one: Asked[Joint]) -> Iterator[Compared]:
    """The joint against the fulcrum, or the line where it lies nearer to that."""
    at, beam = one.subject.at, one.subject.beam
    reach = sheet.read(beam.reach)
    fulcrum = sheet.positive("inboard", inboard_of(sheet, beam, reach))
    sheet.positive("joint", beam.length.as_stated - at.as_stated)
    yield _clear(sheet, one, fulcrum, fulcrum + reach, Apart)


def _clear(
    sheet: Sheet, one: Asked[Joint], outer: float, inner: float, kind: type[Compared]
) -> Compared:
    """A joint with its sleeve, or at its place where a sleeve of any length would lie clear."""
    at, sleeve = sheet.read(one.subject.at), one.subject.sleeve
    told = _told(sheet, one, outer, inner)
    if sleeve.stated is None:
        there = kind(*_nearer((at, at), outer, inner), numbers=told)
        longest = ends_around(at, long=limit_of(one.values[1], LENGTH))
        if not there.met or kind(*_nearer(longest, outer, inner)).met:
            return there
    ends = ends_around(at, long=sheet.read(sleeve))
    return kind(*_nearer(ends, outer, inner), numbers=told)


def _nearer(ends: tuple[float, float], outer: float, inner: float) -> tuple[float, float]:
    """What has to lie clear of what: a joint tailwards of the outer end, or beyond the inner."""
    start, end = ends
    tailwards = surely_below(start + end, limit=outer + inner)
    return (end, outer) if tailwards else (inner, start)


def _told(
    sheet: Sheet, one: Asked[Joint], outer: float, inner: float
) -> tuple[tuple[str, float, Dimension], ...]:
    at = sheet.read(one.subject.at)
    return (("at", at, LENGTH), ("outer", outer, LENGTH), ("inner", inner, LENGTH))


def _by_gap(sheet: Sheet, beam: BeamReads) -> tuple[float, float]:
    gap = sheet.read(beam.tail_gap)
    return gap, inner_end(sheet, stack_rows(sheet, beam), tail_gap=gap)


def _as_taped(sheet: Sheet, beam: BeamReads) -> tuple[float, float]:
    backspan, reach = sheet.read(beam.backspan), sheet.read(beam.reach)
    inboard = sheet.positive("inboard", inboard_of(sheet, beam, reach))
    stack = stack_at_tail(sheet, beam)
    outer = inboard - backspan - stack.centroid_from_tail
    return outer, outer + stack.inner_end_from_tail


UNDER_STACK = Question(
    ID,
    "splice-clear",
    LENGTH,
    under_stack,
    strength=False,
    share=False,
    apart=(by_its_gap, as_it_was_taped),
)
OUTBOARD = Question(ID, "splice-reach", LENGTH, outboard, strength=False, share=False)


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
    at, sleeve = (read_of(one, splice, place) for one in ("splice_from_tail", "splice_sleeve"))
    joint, longest = Joint(at, sleeve, beam_reads(case, beam)), needed_value(case.practice, SLEEVE)
    for question in (UNDER_STACK, OUTBOARD):
        rules = (needed_value(case.practice, f"beam.{question.says}"), longest)
        found = question.judge(case, Asked(joint, name, place, rules))
        if splice.sleeve is not None:
            long = Message("note.splice-sleeve", (("sleeve", Amount(splice.sleeve.value, LENGTH)),))
            found = replace(found, notes=(*found.notes, long))
        yield found if question is UNDER_STACK else _to_a_person(found, splice)


def _to_a_person(found: Finding, splice: BeamSplice) -> Finding:
    """A joint that reaches out is its maker's to allow, as far as it is known to lie there."""
    need = Need(Decider.QUALIFIED_PERSON, Message("need.splice-reach", (("splice", splice.id),)))
    return refused_by_a_person(found, need)


CHECK = Check(ID, Topic.BEAM, judge)
