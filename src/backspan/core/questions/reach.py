"""How far out may the suspension line hang with the pieces that are there."""

from __future__ import annotations

from dataclasses import replace

from backspan.core.findings import Message
from backspan.core.mechanics.tipping import most_reach
from backspan.core.quantities import FORCE, LENGTH, Amount, roof_step
from backspan.core.questions.counting import at_most_stall
from backspan.core.questions.imagined import rigged_of
from backspan.core.questions.judging import (
    OF_A_TRIAL,
    answer_of,
    factor_line,
    factor_on_load,
    findings_of,
    governing_line,
    not_known,
)
from backspan.core.questions.parameters import (
    BACKSPAN,
    BEAM_WEIGHT,
    PIECE,
    PIECES,
    RATED,
    RULES,
    STAGE_LOADS,
    STALL,
)
from backspan.core.questions.search import most_that_holds
from backspan.core.questions.shape import Answer, Asked, Line, Topic
from backspan.core.questions.sought import Trial, plain, trial_of


def _answer(asked: Asked) -> Answer:
    step = roof_step(LENGTH, asked.style)
    trial = trial_of(asked, lambda reach: rigged_of(asked, reach=reach), first=step)
    if trial.at(step).governing is None:
        return not_known(asked, trial.at(step), judges=OF_A_TRIAL)
    found = most_that_holds(trial.holds, step=step)
    told = found or step
    worked = trial.at(told)
    branch = worked.governing
    if branch is None:
        return not_known(asked, worked, judges=OF_A_TRIAL)
    if not found:
        message = Message("reach.any" if found is None else "reach.none", factor_on_load(branch))
        return answer_of(asked, worked.case, findings_of(worked.case), message, ())
    reach = Line("most-reach", Amount(found, LENGTH))
    message = Message("reach.most", (("reach", reach.value), *factor_on_load(branch)))
    findings = findings_of(worked.case)
    lines = [reach, *factor_line(findings), governing_line(branch, asked.style)]
    at_cap = _at_most_stall(asked, trial, told)
    if at_cap:
        stall, least = at_cap
        lines += at_cap
        words = (("reach", reach.value), ("least_reach", least.value), ("stall", stall.value))
        message = Message("reach.open", words)
    solved = most_reach(resisting=branch.capacity, factor=branch.rule.factor, load=branch.load)
    return answer_of(
        asked,
        worked.case,
        findings,
        message,
        lines,
        first_steps=(solved,) if plain(branch) else (),
        notes=(Message("note.rounded-down"), Message("note.one-beam"), Message("note.label")),
    )


def _at_most_stall(asked: Asked, trial: Trial, reach: float) -> tuple[Line, Line] | None:
    most = at_most_stall(asked, trial.at(reach), trial.rig(reach))
    if most is None:
        return None
    at_cap = Trial(asked, trial.case, lambda one: replace(most.rigged, reach=one))
    found = most_that_holds(at_cap.holds, step=roof_step(LENGTH, asked.style))
    if found is None:
        return None
    return (
        Line("most-stall", Amount(most.stall, FORCE)),
        Line("most-reach-at-most-stall", Amount(found, LENGTH)),
    )


TOPIC = Topic(
    "reach",
    "How far out may the suspension line hang with these pieces?",
    (RATED, BACKSPAN, PIECE, PIECES, STALL, RULES, *STAGE_LOADS, *BEAM_WEIGHT),
    "rated=1000lb stall=1250lb backspan=11ft6in pieces=40 piece=55lb",
    _answer,
)
