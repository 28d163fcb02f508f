"""Joints that no beam has: beyond its end, or two at one place. One of the numbers is wrong."""

from __future__ import annotations

from collections.abc import Iterator

from backspan.core.model.identifiers import Path, ReferenceProblem
from backspan.core.model.project import Project
from backspan.core.model.rigs import Rig
from backspan.core.numbers import surely_below
from backspan.core.quantities import LENGTH, display


def impossible_joints(rig: Rig, path: Path, project: Project) -> Iterator[ReferenceProblem]:
    """A problem for each joint beyond its beam, and for each at the place of one before it."""
    yield from _beyond_the_beam(rig, path, project)
    for number, point in enumerate(rig.suspension_points):
        support = point.counterweighted_beam
        there: dict[float, str] = {}
        for index, splice in enumerate(() if support is None else support.splices):
            if splice.from_tail is None or splice.absent:
                continue
            at = splice.from_tail.value
            if at in there:
                way = ("suspension_points", number, "counterweighted_beam", "splices", index)
                told = display(at, LENGTH, project.units)
                found = f"joint {splice.id} {told} from the tail, where joint {there[at]} is"
                expected = "each joint at a place of its own"
                yield ReferenceProblem((*path, *way, "from_tail"), found, expected)
            there.setdefault(at, splice.id)


def _beyond_the_beam(rig: Rig, path: Path, project: Project) -> Iterator[ReferenceProblem]:
    """A problem for each joint that does not lie within its beam, where both are known."""
    for number, point in enumerate(rig.suspension_points):
        support = point.counterweighted_beam
        beam = None if support is None else project.kit.beam(support.beam)
        if support is None or beam is None or beam.length is None:
            continue
        long = beam.length.value
        for index, splice in enumerate(support.splices):
            at = splice.from_tail
            if at is None or surely_below(at.value, limit=long):
                continue
            way = ("suspension_points", number, "counterweighted_beam", "splices", index)
            found = f"a joint {display(at.value, LENGTH, project.units)} from the tail"
            expected = (
                f"a joint within beam {beam.id}, which is"
                f" {display(long, LENGTH, project.units)} long"
            )
            yield ReferenceProblem((*path, *way, "from_tail"), found, expected)
