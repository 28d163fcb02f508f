"""The operating envelope: how far out the pieces that are there hold, for each backspan.

Drawn for the rule of the basis with least to spare as the beam is built, at the worst corner of
what is doubtful. Each point is a boundary of the check's own sums, so that the curve bends where
the beam's own weight begins to pull outboard, and ends where it would have to be known.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from backspan.core.checks.tipping.question import QUESTION, Held, asked
from backspan.core.findings import DoesNotApply, Envelope, EnvelopePoint
from backspan.core.mechanics.constants import STANDARD_GRAVITY
from backspan.core.model.evidence import StatedValue
from backspan.core.numbers import furthest
from backspan.core.quantities import LENGTH, MASS, Amount, roof_step
from backspan.core.sheet.case import Case
from backspan.core.sheet.moments import TOPIC, Branch
from backspan.core.sheet.question import Asked, Worst
from backspan.core.sheet.subjects import BeamSubject, counterweighted

#: The curve is drawn from no backspan to half as much again as there is, in this many parts.
_PARTS = 6
_FURTHEST = 1.5


def envelopes(case: Case) -> tuple[Envelope, ...]:
    """One envelope for each beam, under the rule of the basis that asks for most as it is built."""
    return tuple(_envelopes(case))


def _envelopes(case: Case) -> Iterator[Envelope]:
    for subject in counterweighted(case, "envelope"):
        if isinstance(subject, DoesNotApply):
            continue
        shortest = _where_it_falls_shortest(case, subject)
        if shortest is None:
            continue
        one, worst, branch = shortest
        built = branch.built
        if built.counterweight > 0.0 and built.backspan > 0.0 and branch.value is not None:
            yield Envelope(
                subject=subject.name,
                rule=branch.value,
                pieces=int(built.pieces),
                counterweight=Amount(built.counterweight / STANDARD_GRAVITY, MASS),
                points=tuple(_points(case, replace(one, values=(branch.value,)), worst, branch)),
                backspan_now=Amount(built.backspan, LENGTH),
                reach_now=Amount(built.reach, LENGTH),
            )


def _where_it_falls_shortest(
    case: Case, subject: BeamSubject
) -> tuple[Asked[Held], Worst[Branch], Branch] | None:
    """The rule, the corner and the branch with least to spare; None where nothing is known."""
    shortest = None
    for rules in case.under(TOPIC):
        one = asked(case, subject, rules)
        worst = QUESTION.worst(case, one) if one.values else None
        branch = None if worst is None else worst.found.governing
        if worst is not None and branch is not None:
            less = shortest is None or branch.ratio > shortest[2].ratio
            shortest = (one, worst, branch) if less else shortest
    return shortest


def _points(
    case: Case, one: Asked[Held], worst: Worst[Branch], branch: Branch
) -> Iterator[EnvelopePoint]:
    """The furthest reach that holds at each backspan, taken as exact."""
    step = roof_step(LENGTH, case.project.units)
    count = 0
    support = one.subject.support
    beam = support.beam
    for part in range(_PARTS + 1):
        backspan = branch.built.backspan * _FURTHEST * part / _PARTS
        at = replace(beam.backspan, stated=StatedValue(backspan))
        taped = replace(beam, backspan=at, from_stack=False, both=False)
        there = replace(one, subject=replace(one.subject, support=replace(support, beam=taped)))

        def holds(count: int, there: Asked[Held] = there) -> bool:
            reach = {beam.reach.place: count * step, beam.backspan.place: _backspan(there)}
            found = QUESTION.bare({**worst.corner, **reach}, there, {})
            return not found.outside and all(one.met for one in found.branches)

        near = count * part // (part - 1) if part > 1 else 0
        count = max(0, furthest(holds, near=near))
        yield EnvelopePoint(Amount(backspan, LENGTH), Amount(count * step, LENGTH))


def _backspan(there: Asked[Held]) -> float:
    return there.subject.support.beam.backspan.as_stated
