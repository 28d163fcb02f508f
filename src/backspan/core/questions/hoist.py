"""How large a hoist may hang here with the pieces that are there."""

from __future__ import annotations

from dataclasses import replace

from backspan.core.findings import Message
from backspan.core.mechanics.tipping import most_load
from backspan.core.quantities import FORCE, RATIO, Amount, roof_step
from backspan.core.questions.imagined import Rigged, rigged_of
from backspan.core.questions.judging import (
    OF_A_TRIAL,
    Worked,
    answer_of,
    factor_line,
    factor_on_load,
    findings_of,
    governing_line,
    not_known,
    stall_cap_of,
    stall_open,
)
from backspan.core.questions.parameters import (
    BACKSPAN,
    BEAM_WEIGHT,
    PIECE,
    PIECES,
    REACH,
    RULES,
    STALL_RATIO,
    SUPPLIES,
)
from backspan.core.questions.search import most_that_holds
from backspan.core.questions.shape import Answer, Asked, Line, QuestionError, Topic
from backspan.core.questions.sought import Trial, plain, trial_of
from backspan.core.rules.shape import FactorOnLoad, LoadBasis

_OF_THE_HOIST = {LoadBasis.HOIST_RATED, LoadBasis.HOIST_STALL}
_SUPPLIES = {**SUPPLIES, "stall_load": "stall-ratio"}


def _answer(asked: Asked) -> Answer:
    step = roof_step(FORCE, asked.style)
    trial = trial_of(asked, lambda rated: _rig(asked, rated), first=step)
    first = trial.at(step)
    _refuse_other_loads(first)
    found = most_that_holds(trial.holds, step=step) if first.values else None
    worked = trial.at(found or step)
    branch = worked.governing
    if branch is None:
        return not_known(asked, worked, _SUPPLIES, OF_A_TRIAL)
    findings = findings_of(worked.case)
    if not found:
        message = Message("hoist.any" if found is None else "hoist.none", factor_on_load(branch))
        return answer_of(asked, worked.case, findings, message, (), supplies=_SUPPLIES)
    rated = Line("most-rated", Amount(found, FORCE))
    message = Message("hoist.most", (("rated", rated.value), *factor_on_load(branch)))
    lines = [rated, *factor_line(findings), governing_line(branch, asked.style)]
    at_cap = _at_most_stall(asked, trial, worked)
    if at_cap:
        ratio, least = at_cap
        lines += at_cap
        words = (
            ("rated", rated.value),
            ("least_rated", least.value),
            ("stall_ratio", ratio.value),
        )
        message = Message("hoist.open", words)
    solved = most_load(
        resisting=branch.capacity,
        factor=branch.rule.factor,
        reach=asked.needed("reach"),
    )
    return answer_of(
        asked,
        worked.case,
        findings,
        message,
        lines,
        first_steps=(solved,) if plain(branch) else (),
        notes=_notes(asked),
        supplies=_SUPPLIES,
    )


def _rig(asked: Asked, rated: float, ratio: float | None = None) -> Rigged:
    stalls_at = asked.number("stall-ratio") if ratio is None else ratio
    stall = None if stalls_at is None else stalls_at * rated
    return replace(rigged_of(asked, rated=rated), stall=stall)


def _refuse_other_loads(worked: Worked) -> None:
    rules = [value.content for value in worked.values]
    loads = [rule.load for rule in rules if isinstance(rule, FactorOnLoad)]
    others = [load for load in loads if load not in _OF_THE_HOIST]
    if others:
        raise QuestionError(
            f"{worked.rule_set} multiplies {others[0]}, not the hoist's load, so it sets no"
            " hoist; ask counterweight instead"
        )


def _at_most_stall(asked: Asked, trial: Trial, worked: Worked) -> tuple[Line, Line] | None:
    ratio = stall_cap_of(worked.case)
    if ratio is None or not stall_open(worked):
        return None
    at_cap = Trial(asked, trial.case, lambda rated: _rig(asked, rated, ratio))
    found = most_that_holds(at_cap.holds, step=roof_step(FORCE, asked.style))
    if found is None:
        return None
    return (
        Line("most-stall-ratio", Amount(ratio, RATIO)),
        Line("most-rated-at-most-stall", Amount(found, FORCE)),
    )


def _notes(asked: Asked) -> tuple[Message, ...]:
    notes = [Message("note.rounded-down"), Message("note.one-beam")]
    ratio = asked.number("stall-ratio")
    if ratio is not None:
        words = (("stall_ratio", Amount(ratio, RATIO)),)
        notes.append(Message("note.stall-ratio", words))
    return tuple(notes)


TOPIC = Topic(
    "hoist",
    "How large a hoist may hang here with these pieces?",
    (REACH, BACKSPAN, PIECE, PIECES, STALL_RATIO, RULES, *BEAM_WEIGHT),
    "reach=4ft backspan=11ft6in pieces=26 piece=55lb stall-ratio=1.25",
    _answer,
)
