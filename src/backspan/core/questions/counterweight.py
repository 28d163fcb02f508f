"""How many pieces does this beam need; with the pieces given: do they hold."""

from __future__ import annotations

from dataclasses import replace

from backspan.core.findings import Message, MessageValue
from backspan.core.mechanics.constants import STANDARD_GRAVITY
from backspan.core.quantities import FORCE, MASS, Amount
from backspan.core.questions.choosing import rule_choice
from backspan.core.questions.counting import (
    AtMostStall,
    Counted,
    at_most_stall,
    counted,
    stall_lines,
)
from backspan.core.questions.imagined import case_for, rigged_of, with_rig
from backspan.core.questions.judging import (
    Worked,
    answer_of,
    factor_line,
    factor_on_load,
    findings_of,
    governing_line,
    not_known,
    worked_of,
)
from backspan.core.questions.parameters import (
    BACKSPAN,
    BEAM_WEIGHT,
    DEFAULT_RULES,
    PIECE,
    PIECES,
    RATED,
    REACH,
    RULES,
    STAGE_LOADS,
    STALL,
    optional,
)
from backspan.core.questions.shape import Answer, Asked, Line, Topic


def _answer(asked: Asked) -> Answer:
    rigged = rigged_of(asked)
    choice = rule_choice(asked.word("rules") or DEFAULT_RULES, asked.library)
    worked = worked_of(case_for(asked, rigged, (choice,)))
    count = counted(worked, rigged)
    if count is None or count.needed is None:
        return not_known(asked, worked)
    most = at_most_stall(asked, worked, rigged)
    at_cap = None if most is None else counted(most.worked, most.rigged)
    given = asked.count("pieces")
    judged = worked.case
    if given is None:
        judged = with_rig(judged, asked, replace(rigged, pieces=count.needed))
    findings = findings_of(judged)
    lines = [
        *_count_lines(count),
        *_given_lines(worked, given),
        *factor_line(findings),
        governing_line(count.branch, asked.style),
        *stall_lines(most, at_cap),
    ]
    message = None if given is not None else _message(asked, worked, count, most, at_cap)
    notes = (Message("note.one-beam"), Message("note.label"))
    return answer_of(asked, judged, findings, message, lines, first_steps=count.steps, notes=notes)


def _count_lines(count: Counted) -> list[Line]:
    lines = []
    if count.required is not None:
        lines.append(Line("required", Amount(count.required, MASS)))
    if count.needed is not None:
        lines.append(Line("pieces-needed", count.needed))
    return lines


def _given_lines(worked: Worked, given: int | None) -> list[Line]:
    if given is None:
        return []
    there = worked.built.counterweight
    return [
        Line("pieces", given),
        Line("counterweight", Amount(there / STANDARD_GRAVITY, MASS)),
    ]


def _message(
    asked: Asked,
    worked: Worked,
    count: Counted,
    most: AtMostStall | None,
    at_cap: Counted | None,
) -> Message:
    words: tuple[tuple[str, MessageValue], ...] = (("pieces", count.needed or 0),)
    if most is not None and at_cap is not None and at_cap.needed is not None:
        stall = ("stall", Amount(most.stall, FORCE))
        return Message("counterweight.open", (*words, ("most_pieces", at_cap.needed), stall))
    words = (
        *words,
        ("piece", Amount(asked.needed("piece"), MASS)),
        *factor_on_load(count.branch),
    )
    if worked.weighed.met is None or worked.inputs.not_stated:
        return Message("counterweight.at-least", words)
    return Message(
        "counterweight.needed", (*words, ("required", Amount(count.required or 0.0, MASS)))
    )


TOPIC = Topic(
    "counterweight",
    "How many pieces does this beam need, or do these hold?",
    (RATED, REACH, BACKSPAN, PIECE, STALL, optional(PIECES), RULES, *STAGE_LOADS, *BEAM_WEIGHT),
    "rated=1000lb stall=1250lb reach=4ft backspan=11ft6in piece=55lb",
    _answer,
)
