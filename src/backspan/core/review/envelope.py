"""The operating envelope: how far out the pieces that are there hold, for each backspan."""

from __future__ import annotations

from collections.abc import Iterator

from backspan.core.findings import DoesNotApply, Envelope, EnvelopePoint
from backspan.core.judgement.case import Case
from backspan.core.judgement.inputs import Inputs
from backspan.core.judgement.subjects import counterweighted
from backspan.core.judgement.tipping_sums import (
    HARMFUL,
    factor_values,
    governing_branch,
    tipping_sums,
)
from backspan.core.mechanics.constants import STANDARD_GRAVITY
from backspan.core.mechanics.tipping import most_reach
from backspan.core.quantities import LENGTH, MASS, Amount

#: The curve is drawn from no backspan to half as much again as there is, in this many parts.
_PARTS = 6
_FURTHEST = 1.5


def envelopes(case: Case) -> tuple[Envelope, ...]:
    """One envelope for each beam, under the rule of the basis that asks for most as it is built."""
    return tuple(_envelopes(case))


def _envelopes(case: Case) -> Iterator[Envelope]:
    under = [values for rules in case.rules if (values := factor_values(rules))]
    for subject in counterweighted(case, "envelope"):
        if isinstance(subject, DoesNotApply) or not under:
            continue
        sums = [tipping_sums(Inputs(case, HARMFUL), subject, values) for values in under]
        branches = [one.governing for one in sums if one.governing is not None]
        built, branch = sums[0].built, governing_branch(branches)
        if branch is None or built.reach is None or built.backspan is None:
            continue
        if not built.counterweight or built.backspan <= 0.0:
            continue
        points = []
        for part in range(_PARTS + 1):
            backspan = built.backspan * _FURTHEST * part / _PARTS
            held = built.counterweight * backspan + branch.held_by_beam
            reach = most_reach(
                resisting=max(0.0, held), factor=branch.rule.factor, load=branch.load
            )
            points.append(EnvelopePoint(Amount(backspan, LENGTH), Amount(reach.value, LENGTH)))
        yield Envelope(
            subject=subject.name,
            rule=branch.value,
            pieces=built.pieces,
            counterweight=Amount(built.counterweight / STANDARD_GRAVITY, MASS),
            points=tuple(points),
            backspan_now=Amount(built.backspan, LENGTH),
            reach_now=Amount(built.reach, LENGTH),
        )
