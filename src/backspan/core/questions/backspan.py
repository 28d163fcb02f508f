"""How short may the backspan be with the pieces that are there."""

from __future__ import annotations

from dataclasses import replace

from backspan.core.findings import Message
from backspan.core.mechanics.tipping import least_backspan
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
    BEAM_WEIGHT,
    PIECE,
    PIECES,
    RATED,
    REACH,
    RULES,
    STAGE_LOADS,
    STALL,
)
from backspan.core.questions.search import least_that_holds
from backspan.core.questions.shape import Answer, Asked, Line, Topic
from backspan.core.questions.sought import Trial, plain, trial_of


def _answer(asked: Asked) -> Answer:
    step = roof_step(LENGTH, asked.style)
    # As long inboard as outboard: there the beam's own weight plays no part.
    first = asked.needed("reach")
    trial = trial_of(asked, lambda backspan: rigged_of(asked, backspan=backspan), first=first)
    if trial.at(first).governing is None:
        return not_known(asked, trial.at(first), judges=OF_A_TRIAL)
    found = least_that_holds(trial.holds, step=step)
    told = step if found is None else found
    worked = trial.at(told)
    branch, counterweight = worked.governing, worked.built.counterweight
    if branch is None:
        return not_known(asked, worked, judges=OF_A_TRIAL)
    findings = findings_of(worked.case)
    if found is None or not counterweight:
        message = Message("backspan.none", factor_on_load(branch))
        return answer_of(asked, worked.case, findings, message, ())
    backspan = Line("least-backspan", Amount(found, LENGTH))
    message = Message("backspan.least", (("backspan", backspan.value), *factor_on_load(branch)))
    lines = [backspan, *factor_line(findings), governing_line(branch, asked.style)]
    at_cap = _at_most_stall(asked, trial, told)
    if at_cap:
        stall, most = at_cap
        lines += at_cap
        words = (
            ("backspan", backspan.value),
            ("most_backspan", most.value),
            ("stall", stall.value),
        )
        message = Message("backspan.open", words)
    solved = least_backspan(required=branch.demand - branch.own_moment, counterweight=counterweight)
    return answer_of(
        asked,
        worked.case,
        findings,
        message,
        lines,
        first_steps=(solved,) if plain(branch) else (),
        notes=(Message("note.rounded-up"), Message("note.one-beam"), Message("note.label")),
    )


def _at_most_stall(asked: Asked, trial: Trial, backspan: float) -> tuple[Line, Line] | None:
    most = at_most_stall(asked, trial.at(backspan), trial.rig(backspan))
    if most is None:
        return None
    at_cap = Trial(asked, trial.case, lambda one: replace(most.rigged, backspan=one))
    found = least_that_holds(at_cap.holds, step=roof_step(LENGTH, asked.style))
    if found is None:
        return None
    return (
        Line("most-stall", Amount(most.stall, FORCE)),
        Line("least-backspan-at-most-stall", Amount(found, LENGTH)),
    )


TOPIC = Topic(
    "backspan",
    "How short may the backspan be with these pieces?",
    (RATED, REACH, PIECE, PIECES, STALL, RULES, *STAGE_LOADS, *BEAM_WEIGHT),
    "rated=1000lb stall=1250lb reach=2ft pieces=20 piece=55lb",
    _answer,
)
