"""Joints of a beam that lie beyond its end: no such beam is there, so one of the two is wrong."""

from __future__ import annotations

from collections.abc import Iterator

from backspan.core.model.identifiers import Path, ReferenceProblem
from backspan.core.model.project import Project
from backspan.core.model.rigs import Rig
from backspan.core.numbers import surely_below
from backspan.core.quantities import LENGTH, display


def beyond_the_beam(rig: Rig, path: Path, project: Project) -> Iterator[ReferenceProblem]:
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
