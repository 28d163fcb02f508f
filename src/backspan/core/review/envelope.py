"""The operating envelope: how far out the pieces that are there hold, for each backspan."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from backspan.core.findings import DoesNotApply, Envelope, EnvelopePoint, InputUsed
from backspan.core.judgement.beam_as_built import AsBuilt
from backspan.core.judgement.case import Case
from backspan.core.judgement.corners import results_at_corners
from backspan.core.judgement.inputs import Inputs
from backspan.core.judgement.subjects import BeamSubject, counterweighted
from backspan.core.judgement.tipping_sums import (
    Branch,
    FactorValues,
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


def _where_it_falls_shortest(
    case: Case, subject: BeamSubject, under: Sequence[FactorValues]
) -> tuple[AsBuilt, Branch] | None:
    """Beam and branch at the corner with least to spare; None where nothing is known."""

    def work(at: Case) -> tuple[tuple[AsBuilt, Branch] | None, list[InputUsed]]:
        inputs = Inputs(at)
        sums = [tipping_sums(inputs, subject, values) for values in under]
        branch = governing_branch([one.governing for one in sums if one.governing is not None])
        return None if branch is None else (sums[0].built, branch), inputs.used

    results = results_at_corners(case, work) or ()
    known = [one.found for one in results if one.found is not None]
    return max(known, key=lambda one: one[1].required - one[1].resisting, default=None)


def _envelopes(case: Case) -> Iterator[Envelope]:
    under = [values for rules in case.rules if (values := factor_values(rules))]
    for subject in counterweighted(case, "envelope"):
        if isinstance(subject, DoesNotApply) or not under:
            continue
        shortest = _where_it_falls_shortest(case, subject, under)
        if shortest is None:
            continue
        built, branch = shortest
        if built.reach is None or built.backspan is None:
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
