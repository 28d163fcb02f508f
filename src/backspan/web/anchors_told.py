"""Anchors as pages tell them: papers with their last days, ratings, lines, what reviews say."""

from __future__ import annotations

import datetime
from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any

from backspan.core.checks.anchor_dates import lasting
from backspan.core.findings import WORST_FIRST
from backspan.core.ledger.matters import Concern
from backspan.core.model.project import Project
from backspan.core.model.site import Anchor
from backspan.core.quantities import ANGLE, FORCE, display
from backspan.core.review.basis import PRACTICE, selected_rules
from backspan.core.words import say, say_input
from backspan.web.hanging import anchor_lines
from backspan.web.kit_told import open_concerns
from backspan.web.running_out import AHEAD
from backspan.web.workbench import DayState


@dataclass(frozen=True, slots=True)
class Lasts:
    """A paper of an anchor: its day, the last day it counts, days left; None where not stated."""

    name: str
    day: str | None
    last: str | None
    left: int | None

    @property
    def soon(self) -> bool:
        """Whether it has ended, or ends within six weeks."""
        return self.left is not None and self.left <= AHEAD


@dataclass(frozen=True, slots=True)
class Told:
    """An anchor as pages tell it."""

    roof: str
    anchor: Anchor
    papers: tuple[Lasts, ...]
    lines: tuple[tuple[str, str], ...]
    ratings: tuple[tuple[str, str], ...]
    concerns: tuple[Concern, ...]

    @property
    def soon(self) -> bool:
        """Whether one of its days has passed or passes soon."""
        return any(one.soon for one in self.papers)

    @property
    def rank(self) -> tuple[bool, int, bool, str]:
        """Concerns, then what ends first, then what no line needs."""
        left = [one.left for one in self.papers if one.left is not None and one.soon]
        return not self.concerns, min(left, default=AHEAD + 1), not self.lines, self.anchor.id


def told_anchors(state: DayState) -> Iterator[Told]:
    """Every anchor of the site; none where no site is described."""
    if state.project is None:
        return
    project = state.with_statements
    practice, lines = selected_rules(project, PRACTICE, state.library), anchor_lines(project)
    for roof in project.site.roofs:
        for anchor in roof.anchors:
            papers = tuple(
                _lasts(paper.said, paper.at, last, state.on)
                for paper, last in lasting(anchor, practice)
            )
            yield Told(
                roof.id,
                anchor,
                papers,
                tuple(lines.get(anchor.id, ())),
                tuple(_ratings(anchor, project)),
                open_concerns(state, anchor.id),
            )


def _lasts(said: str, day: str | None, last: str | None, on: datetime.date) -> Lasts:
    left = None if last is None else (datetime.date.fromisoformat(last) - on).days
    return Lasts(say_input(said), day, last, left)


def _ratings(anchor: Anchor, project: Project) -> Iterator[tuple[str, str]]:
    """What its papers say it carries, use by use, with the evidence."""
    rows: list[tuple[str, Any, Any]] = [("any use", anchor.rating, None)]
    rows += [(str(one.use), one.load, one.within) for one in anchor.ratings]
    for use, load, within in rows:
        if load is not None:
            text = display(load.value, FORCE, project.units)
            turned = "" if within is None else display(within.value, ANGLE, project.units)
            seen = ", ".join(one for one in (load.evidence, load.document, load.by, load.at) if one)
            yield use, f"{text}{f', within {turned}' if turned else ''} ({seen or 'no evidence'})"


def findings_about(state: DayState, told: Told) -> Iterator[tuple[str, str, str]]:
    """What the reviews of today say of it, worst first: drop, answer, sentence."""
    place, style = (
        ("site", "roofs", told.roof, "anchors", told.anchor.id),
        state.described.units,
    )
    found = [
        (drop, one.verdict, say(one.message, style, places=False))
        for drop in dict.fromkeys(drop for drop, _ in told.lines)
        for one in state.review(drop).findings
        if one.place[: len(place)] == place
    ]
    for drop, verdict, text in sorted(found, key=lambda row: WORST_FIRST.index(row[1])):
        yield drop, str(verdict), text
