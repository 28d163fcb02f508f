"""A project file as the entries that say the same, in the order in which they can be taken."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from backspan.core.ledger import bodies
from backspan.core.ledger.kinds import Body
from backspan.core.ledger.writes import skeleton
from backspan.core.model.project import Project
from backspan.core.model.rigs import Drop


def entries_of(project: Project) -> Iterator[Body]:
    """What a project says, entry by entry: folded, they make the same project again."""
    yield bodies.SiteDescribed(skeleton(project))
    for roof in project.site.roofs:
        for anchor in roof.anchors:
            yield bodies.AnchorRegistered(roof.id, anchor)
    for unit in project.kit.units:
        yield bodies.UnitRegistered(unit)
    if project.plan is not None:
        yield bodies.PlanReceived(project.plan)
    for drop in project.drops:
        yield from _of_drop(drop)
    yield from (bodies.TopicTakenOver(one) for one in project.taken_over)
    yield from (bodies.LimitsSigned(one) for one in project.signed_limits)


def _of_drop(drop: Drop) -> Iterator[Body]:
    yield bodies.DropDescribed(replace(drop, rig=None, plan=None))
    if drop.plan is not None:
        yield bodies.PlanReceived(drop.plan, drop.id)
    if drop.rig is not None:
        yield bodies.RigSetUp(drop.id, drop.rig)
