"""What a file need not say: names, an outline, the equipment of a rig that was moved here.

A rig moved from another drop brings its hoists, ropes and those of its tiebacks and lifelines with
their ends and lanyards, beams, stages and kinds of pieces, and what was read from their
plates, with who read it and when; its drop is as
wide. Whatever is of the roof or was looked at stays blank: reach, backspan, rear stand, counts,
pins, anchors, lines. How the clips at a rope's end were set comes along, how tight they are and
their saddles do not. Whether a beam is of one piece comes along, and which joints it has if not;
where they lie and how they are is looked at anew. A line
without a name of its own has that of its anchor, a thing without one is called by its id, and a
roof without an outline has the one that its edges draw. A stage of no stated points hangs from all
of its rig.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from backspan.core.model.kit import (
    Beam,
    Connector,
    Hoist,
    Lanyard,
    Piece,
    Rope,
    Stage,
    Termination,
)
from backspan.core.model.rigs import (
    CounterweightedBeam,
    Drop,
    Fitted,
    Fulcrum,
    Lifeline,
    PieceGroup,
    SuspensionPoint,
    Tieback,
)
from backspan.core.model.site import Roof
from backspan.core.model.stages import HungStage

#: Fields that a file may leave out although the model has them always.
FILLED: frozenset[tuple[type, str]] = frozenset(
    {
        (Roof, "name"),
        (Roof, "outline"),
        *(
            (kind, "name")
            for kind in (Hoist, Rope, Termination, Connector, Beam, Piece, Stage, Lanyard)
        ),
        (Drop, "roof"),
        (Drop, "width"),
        (HungStage, "from_points"),
        (Tieback, "id"),
        (Lifeline, "id"),
        (SuspensionPoint, "hoist"),
        (CounterweightedBeam, "beam"),
        (Fulcrum, "kind"),
        (PieceGroup, "piece"),
        (Fitted, "connector"),
    }
)

_Data = dict[str, Any]
_OF_POINT = ("hoist", "rope", "termination")
_OF_TIEBACK = ("rope", "termination")
_OF_LIFELINE = ("rope", "termination", "lanyard")
_READ_OF_BEAM = ("joined",)
_READ_OF_POINT = ("rope_length", "rope_mass", "bottom_weight")
_READ_OF_FULCRUM = ("height", "plate_length", "plate_width")
_READ_OF_REAR = ("plate_length", "plate_width")
_READ_OF_CLIPS = ("count", "spacing", "turnback")
_TYPES = ("hoists", "ropes", "terminations", "connectors", "beams", "pieces", "stages", "lanyards")
_WITNESS = ("evidence", "by", "at", "document")


def filled(data: _Data) -> _Data:
    """The data of a project file with what it need not say; what is no record stays as it is."""
    said = dict(data)
    drops, kit, site = data.get("drops"), data.get("kit"), data.get("site")
    if isinstance(drops, list):
        named = {one["id"]: one for one in _records(drops) if isinstance(one.get("id"), str)}
        said["drops"] = [_filled_drop(one, named, data) for one in drops]
    if isinstance(kit, dict):
        called = {name: _each(kit[name], _called) for name in _TYPES if name in kit}
        said["kit"] = {**kit, **called}
    if isinstance(site, dict) and "roofs" in site:
        said["site"] = {**site, "roofs": _each(site["roofs"], _roof)}
    return said


def _each(items: Any, change: Callable[[_Data], _Data]) -> Any:
    if not isinstance(items, list):
        return items
    return [change(one) if isinstance(one, dict) else one for one in items]


def _called(record: _Data) -> _Data:
    """A thing by its id where it has no name."""
    return {"name": record["id"], **record} if isinstance(record.get("id"), str) else record


def _roof(record: _Data) -> _Data:
    """A roof with the outline that its edges draw, where it has none."""
    edges = _records(record.get("edges"))
    corners = [one["start"] for one in edges if "start" in one]
    corners += [one["end"] for one in edges[-1:] if one.get("end") not in (*corners, None)]
    return _called({"outline": corners, **record} if corners else record)


def _filled_drop(drop: Any, named: _Data, data: _Data) -> Any:
    rig = drop.get("rig") if isinstance(drop, dict) else None
    if not isinstance(rig, dict):
        return drop
    return {**_strip(drop, named), "rig": _with_names(_rig(rig, named, data))}


def _strip(drop: _Data, named: _Data, seen: tuple[str, ...] = ()) -> _Data:
    """A drop with roof and width of the one its rig came from, where it says nothing else."""
    rig = drop.get("rig")
    name = rig.get("moved_from") if isinstance(rig, dict) else None
    if not isinstance(name, str) or name in seen or name not in named:
        return drop
    source = _strip(named[name], named, (*seen, name))
    return {**_kept(source, ("roof", "width")), **drop}


def _rig(own: _Data, named: _Data, data: _Data, seen: tuple[str, ...] = ()) -> _Data:
    """A rig with what it brought along, however often it was moved before."""
    name = own.get("moved_from")
    source = named.get(name) if isinstance(name, str) and name not in seen else None
    rig = source.get("rig") if isinstance(source, dict) else None
    if source is None or not isinstance(rig, dict) or rig is own:
        return own
    before = _rig(rig, named, data, (*seen, str(name)))
    return _moved(own, before, _statement(data, source, rig))


def _moved(own: _Data, source: _Data, statement: _Data) -> _Data:
    """A rig with the equipment of the one that was moved, where it says nothing else."""
    before = {one.get("id"): one for one in _records(source.get("suspension_points"))}
    kept = _kept(source, ("stages",))
    if isinstance(kept.get("stages"), list):
        # How it is worked, what is above it and what was found of it were seen where it hung; who
        # is on it when hangs on no roof.
        on = ("stage", "from_points", "work")
        kept["stages"] = _each(kept["stages"], lambda one: _kept(one, on))
    moved = {**kept, **own}
    lines, old_lines = own.get("lifelines"), _records(source.get("lifelines"))
    if isinstance(lines, list) and len(lines) == len(old_lines):
        moved["lifelines"] = [
            {**_kept(old, _OF_LIFELINE), **new} if isinstance(new, dict) else new
            for new, old in zip(lines, old_lines, strict=True)
        ]
    points = own.get("suspension_points")
    if isinstance(points, list):
        moved["suspension_points"] = [
            _point(one, before[one.get("id")], statement)
            if isinstance(one, dict) and one.get("id") in before
            else one
            for one in points
        ]
    return moved


def _point(own: _Data, source: _Data, statement: _Data) -> _Data:
    point = {
        **_kept(source, _OF_POINT),
        **_witnessed(_kept(source, _READ_OF_POINT), statement),
        **own,
    }
    ties, old_ties = own.get("tiebacks"), _records(source.get("tiebacks"))
    if isinstance(ties, list) and len(ties) == len(old_ties):
        point["tiebacks"] = [
            {**_kept(old, _OF_TIEBACK), **new} if isinstance(new, dict) else new
            for new, old in zip(ties, old_ties, strict=True)
        ]
    _rope_end(point, own, source, statement)
    beam, before = own.get("counterweighted_beam"), source.get("counterweighted_beam")
    if isinstance(beam, dict) and isinstance(before, dict):
        point["counterweighted_beam"] = _beam(beam, before, statement)
    return point


def _rope_end(point: _Data, own: _Data, source: _Data, statement: _Data) -> None:
    """The hardware by its kinds, and how the clips were set, of an end that is spoken of anew."""
    fitted, before = own.get("connectors"), _records(source.get("connectors"))
    if isinstance(fitted, list) and len(fitted) == len(before):
        pairs = zip(fitted, before, strict=True)
        point["connectors"] = [
            {**_kept(old, ("connector",)), **new} if isinstance(new, dict) else new
            for new, old in pairs
        ]
    clips, old = own.get("clips"), source.get("clips")
    same = point.get("termination") == source.get("termination")
    if isinstance(clips, dict) and isinstance(old, dict) and same:
        point["clips"] = {**_witnessed(_kept(old, _READ_OF_CLIPS), statement), **clips}


def _beam(own: _Data, source: _Data, statement: _Data) -> _Data:
    beam = {
        **_kept(source, ("beam",)),
        **_witnessed(_kept(source, _READ_OF_BEAM), statement),
        **own,
    }
    if "splices" in source and "splices" not in own:
        beam["splices"] = _each(source["splices"], lambda one: _kept(one, ("id",)))
    fulcrum, stack = source.get("fulcrum"), source.get("stack")
    if isinstance(fulcrum, dict) and isinstance(own.get("fulcrum", {}), dict):
        beam["fulcrum"] = {
            **_kept(fulcrum, ("kind",)),
            **_witnessed(_kept(fulcrum, _READ_OF_FULCRUM), statement),
            **own.get("fulcrum", {}),
        }
    rear = source.get("rear")
    if isinstance(rear, dict) and isinstance(own.get("rear", {}), dict):
        beam["rear"] = {
            **_witnessed(_kept(rear, _READ_OF_REAR), statement),
            **own.get("rear", {}),
        }
    own_stack = own.get("stack")
    if isinstance(stack, dict) and isinstance(own_stack, dict):
        groups, before = own_stack.get("groups"), _records(stack.get("groups"))
        if isinstance(groups, list) and len(groups) == len(before):
            pairs = zip(groups, before, strict=True)
            beam["stack"] = {
                **own_stack,
                "groups": [
                    {**_kept(old, ("piece", "per_row")), **new} if isinstance(new, dict) else new
                    for new, old in pairs
                ],
            }
    return beam


def _with_names(rig: _Data) -> _Data:
    """Lines without a name called after their anchors, and a stage on no stated points on all."""
    named = dict(rig)
    points = [one["id"] for one in _records(rig.get("suspension_points")) if "id" in one]
    if isinstance(rig.get("stages"), list) and points:
        named["stages"] = _each(rig["stages"], lambda one: {"from_points": points, **one})
    if isinstance(rig.get("lifelines"), list):
        named["lifelines"] = [_named(one) for one in rig["lifelines"]]
    if isinstance(rig.get("suspension_points"), list):
        named["suspension_points"] = [
            {**one, "tiebacks": [_named(line) for line in one["tiebacks"]]}
            if isinstance(one, dict) and isinstance(one.get("tiebacks"), list)
            else one
            for one in rig["suspension_points"]
        ]
    return named


def _named(line: Any) -> Any:
    if isinstance(line, dict) and "id" not in line and isinstance(line.get("anchor"), str):
        return {"id": line["anchor"], **line}
    return line


def _kept(record: _Data, names: tuple[str, ...]) -> _Data:
    return {name: record[name] for name in names if name in record}


def _witnessed(values: _Data, statement: _Data) -> _Data:
    """Values read elsewhere, each with who read it there."""
    told = {}
    for name, value in values.items():
        own = {"value": value} if isinstance(value, str) else value
        told[name] = {**statement, **own} if isinstance(own, dict) else value
    return told


def _statement(data: _Data, drop: _Data, rig: Any) -> _Data:
    """Who states the values of a rig that do not say so themselves."""
    found: _Data = {}
    for record in (data, drop, rig):
        own = record.get("values_from") if isinstance(record, dict) else None
        if isinstance(own, dict):
            found = {**found, **_kept(own, _WITNESS)}
    return found


def _records(value: Any) -> list[_Data]:
    return [one for one in value if isinstance(one, dict)] if isinstance(value, list) else []
