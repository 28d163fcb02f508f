"""What the contractor's plan says of a beam, as a picture, where the roof was found otherwise."""

from __future__ import annotations

from dataclasses import replace
from typing import TypeVar

from backspan.core.findings import Finding
from backspan.core.model.evidence import StatedValue
from backspan.core.model.project import Project
from backspan.core.model.rigs import CounterweightedBeam, SuspensionPoint
from backspan.core.model.site import Edge
from backspan.drawings.beams import BeamPicture, beam_picture

T = TypeVar("T")


def planned_picture(
    project: Project, edge: Edge, point: SuspensionPoint, findings: tuple[Finding, ...]
) -> BeamPicture | None:
    """Where the parts of the beam would lie by the plan; None where it says nothing else."""
    found = point.counterweighted_beam
    if found is None:
        return None
    planned = _by_plan(found)
    if planned == found:
        return None
    by_plan = replace(point, counterweighted_beam=planned)
    picture = beam_picture(project, edge, by_plan, findings)
    return None if _same_places(picture, beam_picture(project, edge, point, findings)) else picture


def _by_plan(found: CounterweightedBeam) -> CounterweightedBeam:
    fulcrum = found.fulcrum
    groups = tuple(
        replace(group, count=_planned(group.count) or group.count) for group in found.stack.groups
    )
    stack = replace(found.stack, groups=groups, tail_gap=_planned(found.stack.tail_gap))
    return replace(
        found,
        fulcrum=None if fulcrum is None else replace(fulcrum, setback=_planned(fulcrum.setback)),
        reach=_planned(found.reach),
        backspan=_planned(found.backspan),
        tip_beyond_line=_planned(found.tip_beyond_line),
        rear_stand=_planned(found.rear_stand),
        stack=stack,
    )


def _planned(stated: StatedValue[T] | None) -> StatedValue[T] | None:
    if stated is None or stated.planned is None or stated.planned == stated.value:
        return stated
    return replace(stated, value=stated.planned)


def _same_places(one: BeamPicture, other: BeamPicture) -> bool:
    """Whether the parts lie where they were found, so that an outline would show nothing."""
    return (one.tip, one.line, one.fulcrum, one.tail, one.centroid, one.rear_at, one.groups) == (
        other.tip,
        other.line,
        other.fulcrum,
        other.tail,
        other.centroid,
        other.rear_at,
        other.groups,
    )
