"""The answer of a topic that seeks one number, at whatever value of the stall load is open."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import replace

from backspan.core.ask.answering import (
    Found,
    Posed,
    Sought,
    answer_of,
    at_most_stall,
    boundary,
    factor_line,
    factor_on_load,
    findings_of,
    governing_line,
    having,
    posed,
)
from backspan.core.ask.shape import (
    Answer,
    Asked,
    Given,
    Line,
)
from backspan.core.checks import beam_length, beam_proportion, stall_cap, tipping
from backspan.core.checks.tipping import most_that_fit
from backspan.core.findings import Message, MessageValue, Verdict
from backspan.core.mechanics.constants import STANDARD_GRAVITY
from backspan.core.numbers import at_least, meets
from backspan.core.quantities import LENGTH, MASS, MOMENT, Amount
from backspan.core.quantities.named import QUANTITIES
from backspan.core.words.roof_questions import AT_MOST_STALL

#: The checks whose subject a question describes.
JUDGES = (tipping.CHECK, beam_length.CHECK, stall_cap.CHECK, beam_proportion.CHECK)

PIECES = Sought("pieces", "pieces-needed", most=False)
REACH = Sought("reach", "most-reach", most=True)
BACKSPAN = Sought("backspan", "least-backspan", most=False)
HOIST = Sought("rated_load", "most-rated", most=True, by_ratio=True)
STACK = replace(PIECES, from_stack=True)


def answer_sought(asked: Asked, what: Sought, notes: Sequence[str] = ()) -> Answer:
    """The number that is sought, judged where it was given already."""
    name = QUANTITIES[what.name].asked
    found = boundary(asked, what)
    given = asked.values.get(name)
    if given is not None:
        at = posed(asked, from_stack=what.from_stack)
        findings = findings_of(at.case, JUDGES)
        lines = [*required_line(at), *found_line(what, found), Line(name, given)]
        lines += [*stack_lines(at), *factor_line(findings), *governing_line(at)]
        return answer_of(at, findings, None, lines, notes=notes)
    if not isinstance(found, Amount | int):
        return none_holds(asked, what, found, notes)
    at = posed(having(asked, what, found), from_stack=what.from_stack)
    findings = findings_of(at.case, JUDGES)
    words = (("input", what.name), ("value", found), *_by_branch(at))
    message = Message("ask.least" if not what.most else "ask.most", words)
    if any(need.what.id == "need.input" for one in findings for need in one.needs):
        message = Message("ask.by-what-is-known", words)
    lines = [*required_line(at), Line(what.line, found), *stack_lines(at)]
    lines += [*factor_line(findings), *governing_line(at)]
    at_cap = at_most_stall(at, what)
    if at_cap is not None:
        there = boundary(_less(at_cap, name), what)
        message, more = _open(what, found, there, at_cap)
        lines += more
    notes = (*notes, "note.rounded-down" if what.most else "note.rounded-up")
    return answer_of(at, findings, message, lines, notes=notes, by_ratio=what.by_ratio)


def _open(what: Sought, found: Given, there: Found, at_cap: Asked) -> tuple[Message, list[Line]]:
    """Both ends of what the stall load may be."""
    ratio = at_cap.values["stall-ratio"] if what.by_ratio else None
    stall = at_cap.values["stall"] if ratio is None else ratio
    lines = [Line("most-stall" if ratio is None else "most-stall-ratio", stall)]
    words: tuple[tuple[str, MessageValue], ...]
    words = (("input", what.name), ("value", found), ("stall", stall))
    if not isinstance(there, Amount | int):
        return Message("ask.open-none", words), lines
    lines += [Line(f"{what.line}{AT_MOST_STALL}", there)]
    lines += [
        replace(one, id=f"{one.id}{AT_MOST_STALL}")
        for one in required_line(posed(at_cap, from_stack=what.from_stack))
    ]
    said = "ask.open" if ratio is None else "ask.open-ratio"
    return Message(said, (*words, ("there", there))), lines


def none_holds(asked: Asked, what: Sought, found: Found, notes: Sequence[str]) -> Answer:
    """Nothing is known, or no number holds, or every one that was tried does."""
    dimension = QUANTITIES[what.name].dimension
    tried: Given = 1 if dimension is None else Amount(1.0, dimension)
    at = posed(having(asked, what, tried), from_stack=what.from_stack)
    words: tuple[tuple[str, MessageValue], ...]
    if at.weighed.governing is None:
        words = (("rule_set", at.case.under(tipping.TOPIC)[0].rule_set.id),)
        message = Message("ask.not-known" if at.one.values else "ask.no-number", words)
        findings = findings_of(at.case, (tipping.CHECK,))
        return answer_of(at, findings, message, (), by_ratio=what.by_ratio)
    if what.from_stack:
        most = most_that_fit(at.case, at.one)
        at = posed(having(asked, what, most), from_stack=True)
        branch = at.weighed.governing
        held, required = (0.0, 0.0) if branch is None else (branch.capacity, branch.demand)
        words = (
            ("most", most),
            ("held", Amount(at_least(held, least=0.0), MOMENT)),
            ("required", Amount(required, MOMENT)),
        )
        findings = findings_of(at.case, JUDGES)
        lines = [*stack_lines(at), Line("most-that-fit", most)]
        lines += [*factor_line(findings), *governing_line(at)]
        message = Message("ask.too-short", words)
        answer = answer_of(at, findings, message, lines, notes=notes)
        return replace(answer, message=message, verdict=Verdict.FAIL)
    words = (("input", what.name), *_by_branch(at))
    message = Message("ask.none" if found is None else "ask.any", words)
    answer = answer_of(at, findings_of(at.case, JUDGES), message, (), notes=notes)
    return answer if found is not None else replace(answer, message=message, verdict=Verdict.FAIL)


def _by_branch(at: Posed) -> tuple[tuple[str, MessageValue], ...]:
    branch = at.weighed.governing
    return () if branch is None else factor_on_load(branch)


def found_line(what: Sought, found: Found) -> tuple[Line, ...]:
    """The number sought, where there is one."""
    return (Line(what.line, found),) if isinstance(found, Amount | int) else ()


def _less(asked: Asked, name: str) -> Asked:
    return replace(asked, values={one: value for one, value in asked.values.items() if one != name})


def required_line(at: Posed) -> tuple[Line, ...]:
    """The mass of counterweight needed at a backspan that is given."""
    branch = at.weighed.governing
    if branch is None or at.one.subject.support.beam.from_stack or not branch.built.backspan > 0.0:
        return ()
    wanted = (branch.demand - branch.own_moment) / branch.built.backspan
    return (Line("required", Amount(at_least(wanted, least=0.0) / STANDARD_GRAVITY, MASS)),)


def stack_lines(at: Posed) -> tuple[Line, ...]:
    """Where the stack stands on its beam."""
    built = at.built
    inboard, end = built.inboard, built.stack_inner_end
    if not at.one.subject.support.beam.from_stack or math.isnan(built.backspan):
        return ()
    lengths = {
        "inboard": inboard,
        "stack-length": end - built.tail_gap,
        "room-left": inboard - end,
        "stack-centroid": inboard - built.backspan,
        "backspan": built.backspan,
    }
    if not meets(demand=end, capacity=inboard):
        del lengths["room-left"]
    return tuple(
        Line(name, Amount(length if name == "backspan" else at_least(length, least=0.0), LENGTH))
        for name, length in lengths.items()
    )
