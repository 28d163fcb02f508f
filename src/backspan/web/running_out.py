"""What runs out at a site: papers, tests of things; and which drops fall with it."""

from __future__ import annotations

import datetime
from collections.abc import Iterator
from dataclasses import dataclass

from backspan.core.checks.anchor_dates import lasting
from backspan.core.model.project import Project
from backspan.core.model.rigs import Rig
from backspan.core.model.site import AnchorStanding
from backspan.core.review.basis import PRACTICE, selected_rules
from backspan.core.rules.selected import RuleLibrary
from backspan.core.words import say_input
from backspan.web.hanging import anchor_lines

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


def running_out(project: Project, library: RuleLibrary, on: datetime.date) -> Iterator[RunsOut]:
    """What ends within six weeks, or has ended, the soonest first."""
    every = (*_ending(project, on), *_anchors(project, library, on))
    ending = sorted(every, key=lambda one: (one.until, one.what))
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


def _anchors(project: Project, library: RuleLibrary, on: datetime.date) -> Iterator[RunsOut]:
    """When the papers of anchors end: those of one day in one line, those in use apart."""
    practice, used = selected_rules(project, PRACTICE, library), anchor_lines(project)
    together: dict[tuple[str, str, str, bool], list[str]] = {}
    for roof in project.site.roofs:
        for anchor in roof.anchors:
            if anchor.standing is AnchorStanding.OUT_OF_SERVICE:
                continue
            for paper, last in lasting(anchor, practice):
                if last is not None:
                    row = (last, roof.id, paper.said, anchor.id in used)
                    together.setdefault(row, []).append(anchor.id)
    for (last, on_roof, said, _), names in together.items():
        drops = tuple(dict.fromkeys(drop for name in names for drop, _ in used.get(name, ())))
        several = "anchors" if len(names) > 1 else "anchor"
        what = f"{several} {', '.join(names)} on {on_roof}, by the {say_input(said)}"
        yield _one(what, last, drops, on)


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
