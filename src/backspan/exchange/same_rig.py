"""The rig of one drop set up at another: what a project file takes over, for a record too."""

from __future__ import annotations

from collections.abc import Mapping
from decimal import Decimal
from typing import Any

from backspan.core.model.project import Project
from backspan.core.model.rigs import Drop, SuspensionPoint
from backspan.core.quantities import Length
from backspan.exchange.parse import parse_part
from backspan.exchange.parse.filled import filled
from backspan.exchange.written import part_data


def same_rig(project: Project, drop: str, rig: Mapping[str, Any], *, source: str) -> Drop:
    """A drop with the rig that hung at `source`, and with what `rig` says of its new place.

    `rig` is what a project file has for it: each point by its id, with what is so there. Equipment
    and what was read from its plates come along, as with `moved_from` in a file; all of the roof,
    and all that was looked at, stays blank. Raises ProjectError with every problem.
    """
    data = part_data(project)
    drops = [
        {**one, "rig": {"moved_from": source, **rig}} if one["id"] == drop else one
        for one in data["drops"]
    ]
    said = filled({**data, "drops": drops})["drops"]
    return parse_part(next(one for one in said if one["id"] == drop), Drop, "form")


def point_moved(one: SuspensionPoint, written: Mapping[str, Any], *, by: Length) -> dict[str, Any]:
    """A point as a project file has it that was moved: by its id, with what is so at its place."""
    data = {**written, "id": one.id}
    data.setdefault("station", f"{Decimal(repr(one.station + by)):f} m")
    ties = written.get("tiebacks", [])
    data["tiebacks"] = [
        {"id": tie.id, **(ties[number] if number < len(ties) else {})}
        for number, tie in enumerate(one.tied)
    ]
    if one.tiebacks is None:
        del data["tiebacks"]
    if one.connectors is not None:
        data["connectors"] = [{} for _ in one.connectors]
    if one.counterweighted_beam is not None:
        data.setdefault("counterweighted_beam", {})
    return data
