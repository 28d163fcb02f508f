"""What runs out at a site: papers, tests of things; and which drops fall with it."""

from __future__ import annotations

import datetime
from collections.abc import Iterator
from dataclasses import dataclass

from backspan.core.model.project import Project
from backspan.core.model.rigs import Rig

#: How many days before it ends something is told: a tester is booked six weeks ahead (common
#: practice, no source).
AHEAD = 42


@dataclass(frozen=True, slots=True)
class RunsOut:
    """Something that ends: on which day, in how many days from now, and whose drops fall."""

    what: str
    until: str
    days: int
    drops: tuple[str, ...]


def running_out(project: Project, on: datetime.date) -> Iterator[RunsOut]:
    """What ends within six weeks, or has ended, the soonest first."""
    ending = sorted(_ending(project, on), key=lambda one: (one.until, one.what))
    return (one for one in ending if one.days <= AHEAD)


def _ending(project: Project, on: datetime.date) -> Iterator[RunsOut]:
    for paper in project.taken_over:
        drops = tuple(one.drop for one in paper.drops)
        yield _one(f"{paper.document} ({', '.join(paper.topics)})", paper.until, drops, on)
    for limits in project.signed_limits:
        yield _one(f"{limits.document} (signed limits)", limits.until, limits.drops, on)
    for unit in project.kit.units:
        for test in unit.tests:
            drops = tuple(drop for drop, rig in project.standing_rigs if _uses(rig, unit.id))
            yield _one(f"{unit.kind} {unit.id}, {test.what}", test.until, drops, on)


def _one(what: str, until: str, drops: tuple[str, ...], on: datetime.date) -> RunsOut:
    return RunsOut(what, until, (datetime.date.fromisoformat(until) - on).days, drops)


def _uses(rig: Rig, tag: str) -> bool:
    """Whether a rig has a thing in it, by its tag."""
    for point in rig.suspension_points:
        beam = point.counterweighted_beam
        pieces = () if beam is None else tuple(one.piece for one in beam.stack.groups)
        there = (point.hoist, point.rope, point.termination, beam and beam.beam, *pieces)
        if tag in there or any(tag in (tie.rope, tie.termination) for tie in point.tied):
            return True
    lines = any(one.rope == tag for one in rig.lines)
    return lines or any(one.stage == tag for one in rig.stages)
