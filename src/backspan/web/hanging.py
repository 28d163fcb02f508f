"""Where each thing with a tag hangs today: by drop and point, from the rigs as they stand."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from backspan.core.model.project import Project
from backspan.core.model.rigs import Rig
from backspan.core.model.units import UnitKind
from backspan.core.sheet.uses import Use, uses_of


@dataclass(frozen=True, slots=True)
class Hangs:
    """A thing at a place of a drop's rig; `path` leads to its name there, from the rig on."""

    kind: UnitKind
    name: str
    drop: str
    at: str
    path: tuple[str, ...]

    @property
    def key(self) -> str:
        """The path as forms carry it."""
        return "/".join(self.path)


def hanging(project: Project) -> tuple[Hangs, ...]:
    """Every place at which a rig that stands names a thing, drop by drop."""
    return tuple(one for drop, rig in project.standing_rigs for one in rig_places(rig, drop))


def rig_places(rig: Rig, drop: str) -> Iterator[Hangs]:
    """The places of one rig: points and stages, then ropes of tiebacks and lifelines."""
    for use in uses_of(rig, drop):
        if use.name and not use.of_life:
            yield Hangs(use.kind, use.name, drop, _at(use, drop), _path(use, rig))
    for point in rig.suspension_points:
        for tie in point.tied:
            if tie.rope is not None:
                steps = ("suspension_points", point.id, "tiebacks", tie.id, "rope")
                yield Hangs(UnitKind.ROPE, tie.rope, drop, f"tieback {tie.id}", steps)
    for line in rig.lines:
        if line.rope is not None:
            of_line = ("lifelines", line.id, "rope")
            yield Hangs(UnitKind.ROPE, line.rope, drop, f"lifeline {line.id}", of_line)


def _at(use: Use, drop: str) -> str:
    """The point, as people on the roof call it."""
    return "stage" if use.kind is UnitKind.STAGE else f"point {use.at.removeprefix(f'{drop}/')}"


def _path(use: Use, rig: Rig) -> tuple[str, ...]:
    """From the rig on. What has no id of its own, such as a stage, is led to by its number."""
    steps = tuple(str(one) for one in use.place[3:])
    if use.kind is not UnitKind.STAGE:
        return steps
    numbers = (number for number, hung in enumerate(rig.stages) if hung.stage == use.name)
    return ("stages", str(next(numbers)), "stage")


def anchor_lines(project: Project) -> dict[str, list[tuple[str, str]]]:
    """By anchor: each drop and line that goes to it today."""
    found: dict[str, list[tuple[str, str]]] = {}
    for drop, rig in project.standing_rigs:
        named = [(tie.anchor, tie.id) for point in rig.suspension_points for tie in point.tied]
        for anchor, line in (*named, *((one.anchor, one.id) for one in rig.lines)):
            if anchor is not None:
                found.setdefault(anchor, []).append((drop, line))
    return found
