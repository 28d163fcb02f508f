"""What each kind of entry writes of the project: its places, with the values that then stand there.

An entry that states nothing of the project (a stop, a check, a remark) writes nothing.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, replace
from types import MappingProxyType
from typing import Any

from backspan.core.ledger import bodies
from backspan.core.ledger.document import Path, PlaceError, at, checked, drop_of, put
from backspan.core.ledger.kinds import Body
from backspan.core.model.beams import BeamFound, BeamSplice, JointThere
from backspan.core.model.project import Project
from backspan.core.model.site import AnchorStanding
from backspan.core.model.stages import StageFound
from backspan.core.wire import to_data


@dataclass(frozen=True, slots=True)
class Write:
    """A value at a place; with `add` the place is made where a list does not hold it yet.

    With `joins` the value joins a list whose things have no id, such as papers.
    """

    path: Path
    value: Any
    add: bool = False
    joins: bool = False

    def on(self, data: Any) -> Any:
        """The data with it. Raises PlaceError where its path leads nowhere."""
        if self.joins:
            return put(data, self.path, [*at(data, self.path), self.value])
        return put(data, self.path, self.value, add=self.add)

    @property
    def drop(self) -> str | None:
        """The drop it is about; None where it may be about any."""
        return drop_of(self.path)


def writes_of(body: Body, data: Any) -> tuple[Write, ...]:
    """What an entry writes onto the data. Raises PlaceError where something cannot stand there."""
    found = _WRITES.get(type(body))
    return () if found is None else tuple(found(body, data))


def skeleton(project: Project) -> Project:
    """A project without what entries of their own say: drops, anchors, units, plans, papers."""
    roofs = tuple(replace(roof, anchors=()) for roof in project.site.roofs)
    return replace(
        project,
        site=replace(project.site, roofs=roofs),
        kit=replace(project.kit, units=()),
        drops=(),
        plan=None,
        taken_over=(),
        signed_limits=(),
    )


def _described(project: Project, data: Any) -> Any:
    """A new description around what entries of their own said before."""
    if skeleton(project) != project:
        raise PlaceError(
            "the site is described without drops, anchors, units, plans and papers: each is an"
            " entry of its own"
        )
    new = to_data(project)
    if data is None:
        return new
    kept = {name: data[name] for name in ("drops", "plan", "taken_over", "signed_limits")}
    anchors = {roof["id"]: roof["anchors"] for roof in data["site"]["roofs"]}
    roofs = [{**roof, "anchors": anchors.get(roof["id"], [])} for roof in new["site"]["roofs"]]
    return {
        **new,
        **kept,
        "kit": {**new["kit"], "units": data["kit"]["units"]},
        "site": {**new["site"], "roofs": roofs},
    }


def _drop(body: bodies.DropDescribed, data: Any) -> Iterator[Write]:
    if body.drop.rig is not None:
        raise PlaceError(f"drops/{body.drop.id}: a drop is described without its rig")
    drop = to_data(body.drop)
    standing = next((one for one in at(data, ("drops",)) if one["id"] == drop["id"]), None)
    if standing is not None:
        drop = {**drop, "rig": standing["rig"], "plan": drop["plan"] or standing["plan"]}
    yield Write(("drops", drop["id"]), drop, add=True)


def _anchors(roof: str) -> Path:
    return ("site", "roofs", roof, "anchors")


def _inspected(body: bodies.AnchorInspected, data: Any) -> Iterator[Write]:
    path = (*_anchors(body.roof), body.anchor)
    certified = body.certified or at(data, (*path, "certified"))
    said = {"inspected": body.inspected, "certified": certified, "standing": str(body.standing)}
    for name, value in said.items():
        yield Write((*path, name), checked((*path, name), value))


def _exchanged(body: bodies.UnitExchanged, data: Any) -> Iterator[Write]:
    path = ("drops", body.drop, "rig", *body.path)
    found = at(data, path)
    if found != body.taken_out:
        raise PlaceError(f"{'/'.join(path)}: {found!r} is there, not {body.taken_out!r}")
    at(data, ("kit", "units", body.put_in))
    yield Write(path, checked(path, body.put_in))
    # What was found of a beam, and where its sections met, was of the one that was taken out.
    if body.path[-2:] == ("counterweighted_beam", "beam"):
        for name, blank in (("joined", None), ("splices", []), ("found", to_data(BeamFound()))):
            yield Write((*path[:-1], name), blank)
    # What was found of a stage was found of the one that hung there, with the hoists it had.
    for number, hung in enumerate(at(data, ("drops", body.drop, "rig", "stages"))):
        found = ("drops", body.drop, "rig", "stages", str(number), "found")
        if body.path[:2] == ("stages", str(number)):
            yield Write(found, to_data(StageFound()))
        elif hung["found"]["first_lift"] is not None:
            yield Write((*found, "first_lift"), None)


def _site(body: bodies.SiteDescribed, data: Any) -> Iterator[Write]:
    yield Write((), _described(body.project, data))


def _registered(body: bodies.AnchorRegistered, _data: Any) -> Iterator[Write]:
    yield Write((*_anchors(body.roof), body.anchor.id), to_data(body.anchor), add=True)


def _withdrawn(body: bodies.AnchorWithdrawn, _data: Any) -> Iterator[Write]:
    standing = (*_anchors(body.roof), body.anchor, "standing")
    yield Write(standing, str(AnchorStanding.OUT_OF_SERVICE))


def _plan(body: bodies.PlanReceived, _data: Any) -> Iterator[Write]:
    path = ("plan",) if body.drop is None else ("drops", body.drop, "plan")
    yield Write(path, to_data(body.plan))


def _unit(body: bodies.UnitRegistered | bodies.UnitLookedAt, _data: Any) -> Iterator[Write]:
    add = isinstance(body, bodies.UnitRegistered)
    yield Write(("kit", "units", body.unit.id), to_data(body.unit), add=add)


def _rig(body: bodies.RigSetUp, _data: Any) -> Iterator[Write]:
    yield Write(("drops", body.drop, "rig"), to_data(body.rig))


def _moved(body: bodies.RigMoved, data: Any) -> Iterator[Write]:
    at(data, ("drops", body.to))
    yield Write(("drops", body.drop, "rig"), None)


def _work(body: bodies.WorkPlanned, data: Any) -> Iterator[Write]:
    stages = ("drops", body.drop, "rig", "stages")
    hung = enumerate(at(data, stages))
    number = next((number for number, one in hung if one["stage"] == body.stage), None)
    if number is None:
        raise PlaceError(f"{'/'.join(stages)}: no stage {body.stage!r} hangs there")
    path = (*stages, str(number), "work")
    yield Write(path, checked(path, to_data(body)["steps"]))


def _found(
    body: bodies.NumberFound | bodies.CountFound | bodies.WordFound, data: Any
) -> Iterator[Write]:
    match body.path:
        case (*_, "splices", joint, "from_tail") if body.path[:1] == ("drops",):
            # A distance of a joint that is not listed is of one more than anybody knew of.
            if all(one["id"] != joint for one in at(data, body.path[:-2])):
                yield Write(body.path[:-1], to_data(BeamSplice(joint)), add=True)
        case (*_, "splices", _, "there") if body.found.value == JointThere.NOT_THERE:
            # What was seen of a joint is nothing of one that is not there.
            for name in ("pins", "order", "marks"):
                yield Write((*body.path[:-1], name), None)
    yield Write(body.path, checked(body.path, to_data(body)["found"]))


def _taken(body: bodies.TopicTakenOver, _data: Any) -> Iterator[Write]:
    yield Write(("taken_over",), to_data(body.taken), joins=True)


def _limits(body: bodies.LimitsSigned, _data: Any) -> Iterator[Write]:
    yield Write(("signed_limits",), to_data(body.limits), joins=True)


#: Kinds that write; Any, since each function takes the one record it stands beside.
_WRITES: Mapping[type[Body], Callable[[Any, Any], Iterator[Write]]] = MappingProxyType(
    {
        bodies.SiteDescribed: _site,
        bodies.DropDescribed: _drop,
        bodies.AnchorRegistered: _registered,
        bodies.AnchorInspected: _inspected,
        bodies.AnchorWithdrawn: _withdrawn,
        bodies.PlanReceived: _plan,
        bodies.UnitRegistered: _unit,
        bodies.UnitLookedAt: _unit,
        bodies.UnitExchanged: _exchanged,
        bodies.RigSetUp: _rig,
        bodies.RigMoved: _moved,
        bodies.WorkPlanned: _work,
        bodies.NumberFound: _found,
        bodies.CountFound: _found,
        bodies.WordFound: _found,
        bodies.TopicTakenOver: _taken,
        bodies.LimitsSigned: _limits,
    }
)
