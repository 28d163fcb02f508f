"""The fulcrum moves inboard and the pieces stay: does it still hold."""

from __future__ import annotations

from dataclasses import replace

from backspan.core.findings import Message
from backspan.core.quantities import LENGTH, MASS, Amount
from backspan.core.questions.choosing import rule_choice
from backspan.core.questions.counting import counted
from backspan.core.questions.imagined import case_for, rigged_of, with_rig
from backspan.core.questions.judging import (
    answer_of,
    factor_line,
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
    SHIFT,
    STAGE_LOADS,
    STALL,
)
from backspan.core.questions.shape import Answer, Asked, Line, QuestionError, Topic


def _answer(asked: Asked) -> Answer:
    before = rigged_of(asked)
    shift = asked.needed("shift")
    reach, backspan = before.reach + shift, asked.needed("backspan") - shift
    if reach <= 0.0 or backspan <= 0.0:
        passed = "suspension line" if reach <= 0.0 else "middle of the counterweight"
        raise QuestionError(f"shift: the fulcrum would pass the {passed}; give a smaller one")
    choice = rule_choice(asked.word("rules") or DEFAULT_RULES, asked.library)
    case = case_for(asked, before, (choice,))
    after = replace(before, reach=reach, backspan=backspan)
    worked = worked_of(with_rig(case, asked, after))
    count = counted(worked, after)
    if count is None:
        return not_known(asked, worked)
    findings = findings_of(worked.case)
    lines = [
        Line("reach-after", Amount(reach, LENGTH)),
        Line("backspan-after", Amount(backspan, LENGTH)),
    ]
    if count.required is not None:
        lines.append(Line("required", Amount(count.required, MASS)))
    if count.needed is not None:
        lines.append(Line("pieces-needed", count.needed))
    lines += [
        Line("pieces", before.pieces),
        *factor_line(findings_of(case), "factor-before"),
        *factor_line(findings, "factor-after"),
        governing_line(count.branch, asked.style),
    ]
    notes = (Message("note.shift"), Message("note.one-beam"))
    return answer_of(
        asked, worked.case, findings, None, lines, first_steps=count.steps, notes=notes
    )


TOPIC = Topic(
    "shift",
    "The fulcrum moves and the pieces stay: does it still hold?",
    (SHIFT, RATED, REACH, BACKSPAN, PIECE, PIECES, STALL, RULES, *STAGE_LOADS, *BEAM_WEIGHT),
    "shift=6in rated=1000lb stall=1250lb reach=2ft backspan=11ft pieces=18 piece=55lb",
    _answer,
)
