"""What a draft says once it is signed: the entries that lead from one site to the other."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from backspan.core.drafting.acting import DraftError
from backspan.core.ledger import bodies
from backspan.core.ledger.kinds import Body
from backspan.core.ledger.writes import skeleton
from backspan.core.model.evidence import StatedValue
from backspan.core.model.order import in_order, ordered
from backspan.core.model.project import Project
from backspan.core.model.rigs import CounterweightedBeam, Drop, Rig, SuspensionPoint
from backspan.core.quantities import Length

_LENGTHS = ("reach", "backspan", "tip_beyond_line", "rear_stand")


def entries_between(before: Project, after: Project) -> tuple[Body, ...]:
    """The entries that say what differs, in an order in which they can be taken.

    A length of a beam that was drawn is a number found; any other change of a rig is the rig set
    up as it stands. Raises DraftError where an anchor or a drop is no longer there: neither goes
    away by drawing.
    """
    return tuple(_between(before, after))


def _between(before: Project, after: Project) -> Iterator[Body]:
    if skeleton(before) != skeleton(after):
        yield bodies.SiteDescribed(ordered(skeleton(after)))
    stood = {(roof.id, one.id): one for roof in before.site.roofs for one in roof.anchors}
    for roof in after.site.roofs:
        for anchor in roof.anchors:
            if stood.pop((roof.id, anchor.id), None) != anchor:
                yield bodies.AnchorRegistered(roof.id, anchor)
    drops = {one.id: one for one in before.drops}
    changed = [(drops.pop(drop.id, None), drop) for drop in after.drops]
    gone = [*(name for _, name in stood), *drops]
    if gone:
        raise DraftError(f"found {', '.join(gone)} no longer there, expected all that was there")
    for was, drop in changed:
        if was is None or replace(was, rig=None) != replace(drop, rig=None):
            yield bodies.DropDescribed(in_order(replace(drop, rig=None)))
    yield from _carried(changed)
    for was, drop in changed:
        if drop.rig is not None and (was is None or was.rig != drop.rig):
            yield from _of_rig(drop.id, None if was is None else was.rig, drop.rig)


def _carried(changed: list[tuple[Drop | None, Drop]]) -> Iterator[Body]:
    """Rigs that left their drop: each names where it went."""
    for was, drop in changed:
        if was is not None and was.rig is not None and drop.rig is None:
            to = [one.id for _, one in changed if one.rig and one.rig.moved_from == drop.id]
            if len(to) != 1:
                raise DraftError(f"found drop {drop.id} without its rig, expected it carried")
            yield bodies.RigMoved(drop.id, to[0])


def _of_rig(drop: str, was: Rig | None, rig: Rig) -> Iterator[Body]:
    points = {} if was is None else {one.id: one for one in was.suspension_points}
    lengths = [
        body
        for point in rig.suspension_points
        for body in _lengths(drop, points.get(point.id), point)
    ]
    if was is not None and _bare(was) == _bare(rig):
        yield from lengths
    else:
        yield bodies.RigSetUp(drop, in_order(rig))


def _lengths(drop: str, was: SuspensionPoint | None, point: SuspensionPoint) -> Iterator[Body]:
    """The lengths of a beam that were drawn anew."""
    old, new = (None if one is None else one.counterweighted_beam for one in (was, point))
    if old is None or new is None:
        return
    path = ("drops", drop, "rig", "suspension_points", point.id, "counterweighted_beam")
    for name in _LENGTHS:
        stood, found = getattr(old, name), getattr(new, name)
        if found is not None and stood != found:
            yield bodies.NumberFound((*path, name), found)
    stood, found = _setback(old), _setback(new)
    if found is not None and stood != found:
        yield bodies.NumberFound((*path, "fulcrum", "setback"), found)


def _setback(beam: CounterweightedBeam) -> StatedValue[Length] | None:
    return None if beam.fulcrum is None else beam.fulcrum.setback


def _bare(rig: Rig) -> Rig:
    """A rig without the lengths of its beams that a number found says by itself."""
    return replace(rig, suspension_points=tuple(map(_without_lengths, rig.suspension_points)))


def _without_lengths(point: SuspensionPoint) -> SuspensionPoint:
    beam = point.counterweighted_beam
    if beam is None:
        return point
    fulcrum = None if beam.fulcrum is None else replace(beam.fulcrum, setback=None)
    bare = replace(
        beam, reach=None, backspan=None, tip_beyond_line=None, rear_stand=None, fulcrum=fulcrum
    )
    return replace(point, counterweighted_beam=bare)
