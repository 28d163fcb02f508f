"""A project file as the entries that say the same, in the order in which they can be taken.

A file that is taken in again says only what is new in it. What it said before is held against the
last entry that described the same thing, not against the site as it stands: or a file that nobody
changed would undo what was found on the roof since.
"""

from __future__ import annotations

from collections.abc import Hashable, Iterable, Iterator
from dataclasses import replace

from backspan.core.ledger import bodies
from backspan.core.ledger.entry import Entry
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


def not_said_yet(project: Project, entries: Iterable[Entry]) -> Iterator[Body]:
    """What a project says that its site's entries, in their order, do not say already."""
    said = {}
    for entry in entries:
        about = describes(entry.body)
        if about is not None:
            said[about] = entry.body
    return (body for body in entries_of(project) if said.get(describes(body)) != body)


def no_longer_named(project: Project, there: Project) -> tuple[str, ...]:
    """What the site has and a project does not name: it stays until an entry says otherwise."""
    named, before = _names(project), _names(there)
    return tuple(f"{kind} {name}" for kind, name in before if (kind, name) not in set(named))


def _names(project: Project) -> list[tuple[str, str]]:
    anchors = [("anchor", one.id) for roof in project.site.roofs for one in roof.anchors]
    units = [("unit", one.id) for one in project.kit.units]
    drops = [("drop", one.id) for one in project.drops]
    papers = [("paper", one.document) for one in project.taken_over]
    signed = [("paper", one.document) for one in project.signed_limits]
    return [*anchors, *units, *drops, *papers, *signed]


def describes(body: Body) -> Hashable | None:
    """What a describing entry describes, so that a later one takes its place; None for others."""
    match body:
        case bodies.SiteDescribed():
            about: Hashable = "site"
        case bodies.DropDescribed(drop=drop):
            about = ("drop", drop.id)
        case bodies.RigSetUp(drop=name):
            about = ("rig", name)
        case bodies.WorkPlanned(drop=name, stage=stage):
            about = ("work", name, stage)
        case bodies.PlanReceived(drop=name):
            about = ("plan", name)
        case bodies.AnchorRegistered(roof=roof, anchor=anchor):
            about = ("anchor", roof, anchor.id)
        case bodies.UnitRegistered(unit=unit):
            about = ("unit", unit.id)
        case bodies.TopicTakenOver() | bodies.LimitsSigned():
            about = body
        case _:
            about = None
    return about


def _of_drop(drop: Drop) -> Iterator[Body]:
    yield bodies.DropDescribed(replace(drop, rig=None, plan=None))
    if drop.plan is not None:
        yield bodies.PlanReceived(drop.plan, drop.id)
    if drop.rig is not None:
        yield bodies.RigSetUp(drop.id, drop.rig)
