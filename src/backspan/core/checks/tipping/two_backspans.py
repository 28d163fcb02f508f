"""A backspan that was taped beside the one that beam and stack give: does the shorter hold too.

Where both are known and only the taped one holds, one of the measurements is wrong, and nobody can
tell from here which.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from backspan.core.checks.tipping.question import QUESTION, Held, asked
from backspan.core.findings import Decider, DoesNotApply, Finding, Message, MessageValue, Need
from backspan.core.quantities import LENGTH, Amount
from backspan.core.sheet.beam_as_built import BeamReads, as_built
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.moments import TOPIC
from backspan.core.sheet.presence import judge_presence
from backspan.core.sheet.question import Asked
from backspan.core.sheet.sheet import BareSheet
from backspan.core.sheet.subjects import BeamSubject, counterweighted

ID = "two-backspans"


def judge(case: Case) -> Iterator[Answer]:
    """One finding a beam and rule set where both backspans are known."""
    for subject in counterweighted(case, ID):
        if isinstance(subject, DoesNotApply):
            yield subject
            continue
        for rules in case.under(TOPIC):
            one = asked(case, subject, rules)
            beam = one.subject.support.beam
            if one.values and not beam.from_stack and _all_known(beam):
                yield _both(case, subject, one)
            else:
                reason = Message("na.one-backspan")
                yield DoesNotApply(ID, subject.name, subject.place, reason)


def _both(case: Case, subject: BeamSubject, one: Asked[Held]) -> Finding:
    beam = one.subject.support.beam
    by_stack = replace(beam, from_stack=True)
    held = replace(one.subject, support=replace(one.subject.support, beam=by_stack))
    taped = QUESTION.worst(case, one)
    # As stated: that the two may differ within what a tape is off by says nothing of a slip.
    stacked = QUESTION.bare({}, replace(one, subject=held), {})
    holds = taped is not None and taped.found.met is True
    differ = holds and stacked.met is not True
    inputs = Inputs(case)
    for read in (beam.backspan, beam.length, beam.tip, beam.tail_gap):
        inputs.number(read)
    words: tuple[tuple[str, MessageValue], ...] = (
        ("taped", Amount(beam.backspan.as_stated, LENGTH)),
        ("computed", Amount(as_built(BareSheet({}, {}), by_stack).backspan, LENGTH)),
    )
    need = Need(Decider.MEASURER, Message("need.two-backspans", words))
    return judge_presence(
        inputs,
        check=ID,
        subject=subject.name,
        place=subject.place,
        message=Message("two-backspans.differ" if differ else "two-backspans.pass", words),
        met=True,
        refer=(need,) if differ else (),
        question=one.values[0].rule_set,
    )


def _all_known(beam: BeamReads) -> bool:
    """Whether all is stated that either backspan would follow from."""
    needed = (beam.backspan, beam.reach, beam.length, beam.tip, beam.tail_gap)
    of_pieces = [read for group in beam.groups for read in (group.length, group.mass, group.count)]
    return bool(beam.groups) and all(one.stated is not None for one in (*needed, *of_pieces))
