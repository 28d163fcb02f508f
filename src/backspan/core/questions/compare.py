"""The same beam under every counterweight rule at hand, the largest counterweight first."""

from __future__ import annotations

from dataclasses import replace

from backspan.core.findings import Message
from backspan.core.questions.choosing import rule_choice
from backspan.core.questions.imagined import case_for, rigged_of
from backspan.core.questions.judging import questioned
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
from backspan.core.questions.shape import Answer, Asked, Topic
from backspan.core.review.comparison import compare


def _answer(asked: Asked) -> Answer:
    choice = rule_choice(asked.word("rules") or DEFAULT_RULES, asked.library)
    case = case_for(asked, rigged_of(asked), (choice,))
    rows = compare(case, asked.library)
    if asked.count("pieces") is None:
        rows = tuple(replace(row, enough=None) for row in rows)
    counts = [row.pieces for row in rows if row.pieces is not None]
    message = Message("compare.none")
    if counts:
        message = Message("compare.range", (("least", min(counts)), ("most", max(counts))))
    return Answer(
        message=message,
        notes=(
            Message("note.one-beam"),
            *questioned(asked, case),
            Message("note.asker-vouches"),
        ),
        comparison=rows,
    )


TOPIC = Topic(
    "compare",
    "How many pieces does each rule set ask for?",
    (RATED, REACH, BACKSPAN, PIECE, STALL, optional(PIECES), RULES, *STAGE_LOADS, *BEAM_WEIGHT),
    "rated=1000lb stall=1250lb reach=4ft backspan=11ft6in piece=55lb dead=900lb live=700lb",
    _answer,
)
