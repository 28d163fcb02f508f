"""A suspension point put right before anybody looked at it; what was not touched stays."""

from __future__ import annotations

from typing import Any

from backspan.core.model.rigs import SuspensionPoint
from backspan.core.quantities import Style
from backspan.exchange.written import part_data
from backspan.web.asking import Ask
from backspan.web.pages.rig_asked import joints_named
from backspan.web.righting import put_right


def point_as_asked(of: SuspensionPoint) -> dict[str, Any]:
    """A point as its form asks for it: its connecting hardware by name alone."""
    data = part_data(of)
    if of.connectors is not None:
        data["connectors"] = [one.connector for one in of.connectors]
    return data


def point_put_right(
    of: SuspensionPoint, sent: tuple[Ask, ...], by: dict[str, str], style: Style
) -> dict[str, Any]:
    """The data of a point with what was written otherwise than it stood."""
    before = part_data(of)
    data = put_right(sent, point_as_asked(of), by, style)
    if "connectors" in data:
        fitted = {one["connector"]: one for one in before.get("connectors", [])}
        data["connectors"] = [fitted.get(one, {"connector": one}) for one in data["connectors"]]
    joints_named(data)
    first, *others = data.get("tiebacks") or [{}]
    if first.get("anchor") or first.get("ends_on"):
        data["tiebacks"] = [{"id": f"TB-{of.id}", **first}, *others]
    elif others or before.get("tiebacks") == []:
        # An empty list says that there is none, no list that nobody said.
        data["tiebacks"] = others
    else:
        data.pop("tiebacks", None)
    return data
