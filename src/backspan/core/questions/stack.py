"""Where is the middle of the stack, does it fit; with a hoist: how many pieces in all."""

from __future__ import annotations

import math
from dataclasses import replace

from backspan.core.checks import beam_length
from backspan.core.checks.tipping import most_that_fit
from backspan.core.findings import Message, Verdict
from backspan.core.numbers import at_least, meets
from backspan.core.quantities import FORCE, LENGTH, MASS, MOMENT, Amount
from backspan.core.questions.choosing import rule_choice
from backspan.core.questions.counting import Counted, at_most_stall, counted, stall_lines
from backspan.core.questions.imagined import Rigged, case_for, rigged_of, with_rig
from backspan.core.questions.judging import (
    Worked,
    answer_of,
    factor_line,
    findings_of,
    governing_line,
    not_known,
    worked_of,
)
from backspan.core.questions.parameters import (
    BEAM,
    BEAM_MASS,
    DEFAULT_RULES,
    PER_ROW,
    PIECE,
    PIECE_LENGTH,
    PIECES,
    RATED,
    REACH,
    RULES,
    STAGE_LOADS,
    STALL,
    TAIL_GAP,
    TIP,
    optional,
)
from backspan.core.questions.shape import Answer, Asked, Line, QuestionError, Topic
from backspan.core.sheet.beam_as_built import AsBuilt


def _answer(asked: Asked) -> Answer:
    given, rated = asked.count("pieces"), asked.number("rated")
    if given is None and rated is None:
        raise QuestionError("give pieces=... for where they stand, or rated=... for how many")
    rigged = replace(rigged_of(asked, rated=rated or 0.0), from_stack=True)
    choice = rule_choice(asked.word("rules") or DEFAULT_RULES, asked.library)
    worked = worked_of(case_for(asked, rigged, (choice,)))
    if rated is None:
        return _where_it_stands(asked, worked)
    count = counted(worked, rigged)
    if count is None:
        return not_known(asked, worked)
    if given is None:
        return _how_many(asked, worked, rigged, count)
    findings = findings_of(worked.case)
    needed = () if count.needed is None else (Line("pieces-needed", count.needed),)
    lines = [*_stack_lines(worked.built), *needed, Line("pieces", given)]
    lines += [*factor_line(findings), governing_line(count.branch, asked.style)]
    return answer_of(asked, worked.case, findings, None, lines, notes=_notes())


def _where_it_stands(asked: Asked, worked: Worked) -> Answer:
    """Only geometry: no hoist is named, so nothing is said of tipping."""
    findings = findings_of(worked.case, (beam_length.CHECK,))
    return answer_of(asked, worked.case, findings, None, _stack_lines(worked.built), notes=_notes())


def _how_many(asked: Asked, worked: Worked, rigged: Rigged, count: Counted) -> Answer:
    most_fit = most_that_fit(worked.case, worked.asked)
    pieces = most_fit if count.needed is None else count.needed
    case = with_rig(worked.case, asked, replace(rigged, pieces=pieces))
    findings, rigged_up = findings_of(case), worked_of(case)
    most = at_most_stall(asked, worked, rigged)
    at_cap = None if most is None else counted(most.worked, most.rigged)
    lines = [*_stack_lines(rigged_up.built), Line("pieces-needed", pieces)]
    if count.needed is None:
        lines.pop()
    lines += [
        Line("most-that-fit", most_fit),
        *factor_line(findings),
        governing_line(count.branch, asked.style),
        *stall_lines(most, at_cap),
    ]
    if count.needed is None:
        return replace(
            answer_of(asked, case, findings, None, lines, notes=_notes()),
            message=_too_short(rigged_up, most_fit),
            verdict=Verdict.FAIL,
            margins=(),
        )
    message = Message("stack.needed", (("pieces", pieces), ("piece", Amount(rigged.piece, MASS))))
    if most is not None and at_cap is not None:
        stall = ("stall", Amount(most.stall, FORCE))
        message = Message("stack.open-too-short", (("pieces", pieces), stall))
        if at_cap.needed is not None:
            words = (("pieces", pieces), ("most_pieces", at_cap.needed), stall)
            message = Message("stack.open", words)
    return answer_of(asked, case, findings, message, lines, notes=_notes())


def _too_short(worked: Worked, most_fit: int) -> Message:
    branch = worked.governing
    held = 0.0 if branch is None else max(0.0, branch.capacity)
    required = 0.0 if branch is None else branch.demand
    words = (
        ("most", most_fit),
        ("held", Amount(held, MOMENT)),
        ("required", Amount(required, MOMENT)),
    )
    return Message("stack.too-short", words)


def _stack_lines(built: AsBuilt) -> list[Line]:
    inboard, end = built.inboard, built.stack_inner_end
    if math.isnan(built.backspan):
        return []
    lines = [
        Line("inboard", Amount(inboard, LENGTH)),
        Line("stack-length", Amount(end - built.tail_gap, LENGTH)),
    ]
    if meets(demand=end, capacity=inboard):
        lines.append(Line("room-left", Amount(at_least(inboard - end, least=0.0), LENGTH)))
    return [
        *lines,
        Line("stack-centroid", Amount(inboard - built.backspan, LENGTH)),
        Line("backspan", Amount(built.backspan, LENGTH)),
    ]


def _notes() -> tuple[Message, ...]:
    return (Message("note.one-beam"), Message("note.label"))


TOPIC = Topic(
    "stack",
    "Where is the middle of the stack, does it fit, how many pieces?",
    (
        BEAM,
        TIP,
        REACH,
        TAIL_GAP,
        PIECE_LENGTH,
        PIECE,
        optional(PIECES),
        PER_ROW,
        optional(RATED),
        STALL,
        RULES,
        BEAM_MASS,
        *STAGE_LOADS,
    ),
    "beam=18ft tip=0in reach=3ft tail-gap=0in piece-length=12in piece=55lb rated=1000lb",
    _answer,
)
