"""The closed registry of kinds: which words an entry may be, and how each version is read.

A kind's later version is a row of its own beside the older ones. Rows are never taken out: an entry
of today is read by every program to come.
"""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType
from typing import Any

from backspan.core.ledger import bodies
from backspan.core.ledger.errors import EntryError
from backspan.core.wire import WireError, from_data

Body = (
    bodies.SiteDescribed
    | bodies.DropDescribed
    | bodies.AnchorRegistered
    | bodies.AnchorInspected
    | bodies.AnchorWithdrawn
    | bodies.PlanReceived
    | bodies.UnitRegistered
    | bodies.UnitLookedAt
    | bodies.UnitExchanged
    | bodies.RigSetUp
    | bodies.RigMoved
    | bodies.WorkPlanned
    | bodies.NumberFound
    | bodies.CountFound
    | bodies.WordFound
    | bodies.LineConnected
    | bodies.TopicTakenOver
    | bodies.LimitsSigned
    | bodies.DeficiencyRaised
    | bodies.DeficiencyAnswered
    | bodies.DeficiencyReinspected
    | bodies.DeficiencyClosed
    | bodies.ConcernNoted
    | bodies.ConcernClosed
    | bodies.UseStopped
    | bodies.UsePermitted
    | bodies.UseRestricted
    | bodies.ShiftChecked
    | bodies.HoldBegun
    | bodies.HoldEnded
    | bodies.PaperIssued
    | bodies.UnderlayLaid
    | bodies.Corrected
)

#: Records that state nothing of a site: what was told of it before them still is all of it.
STATES_NOTHING = (bodies.PaperIssued, bodies.UnderlayLaid)

#: Kind and version to the record that holds what it says.
KINDS: Mapping[tuple[str, int], type[Body]] = MappingProxyType(
    {
        ("site described", 1): bodies.SiteDescribed,
        ("drop described", 1): bodies.DropDescribed,
        ("anchor registered", 1): bodies.AnchorRegistered,
        ("anchor inspected", 1): bodies.AnchorInspected,
        ("anchor withdrawn", 1): bodies.AnchorWithdrawn,
        ("plan received", 1): bodies.PlanReceived,
        ("unit registered", 1): bodies.UnitRegistered,
        ("unit looked at", 1): bodies.UnitLookedAt,
        ("unit exchanged", 1): bodies.UnitExchanged,
        ("rig set up", 1): bodies.RigSetUp,
        ("rig moved", 1): bodies.RigMoved,
        ("work planned", 1): bodies.WorkPlanned,
        ("number found", 1): bodies.NumberFound,
        ("count found", 1): bodies.CountFound,
        ("word found", 1): bodies.WordFound,
        ("line connected", 1): bodies.LineConnected,
        ("topic taken over", 1): bodies.TopicTakenOver,
        ("limits signed", 1): bodies.LimitsSigned,
        ("deficiency raised", 1): bodies.DeficiencyRaised,
        ("deficiency answered", 1): bodies.DeficiencyAnswered,
        ("deficiency re-inspected", 1): bodies.DeficiencyReinspected,
        ("deficiency closed", 1): bodies.DeficiencyClosed,
        ("concern noted", 1): bodies.ConcernNoted,
        ("concern closed by a test", 1): bodies.ConcernClosed,
        ("use stopped", 1): bodies.UseStopped,
        ("use permitted", 1): bodies.UsePermitted,
        ("use restricted", 1): bodies.UseRestricted,
        ("shift check", 1): bodies.ShiftChecked,
        ("hold begun", 1): bodies.HoldBegun,
        ("hold ended", 1): bodies.HoldEnded,
        ("paper issued", 1): bodies.PaperIssued,
        ("underlay laid", 1): bodies.UnderlayLaid,
        ("correction", 1): bodies.Corrected,
    }
)


def kind_of(body: Body) -> tuple[str, int]:
    """The kind and version by which a body is written."""
    return next(key for key, record in KINDS.items() if record is type(body))


def read_body(kind: str, version: int, data: Any) -> Body:
    """What an entry of that kind and version says.

    Raises EntryError for a kind or version that is not in the registry, WireError for content
    that is not that kind's.
    """
    record = KINDS.get((kind, version))
    if record is None:
        known = sorted(number for name, number in KINDS if name == kind)
        if known:
            raise EntryError(
                f"{kind}: found version {version}, expected {', '.join(map(str, known))}:"
                " a newer program wrote it"
            )
        raise EntryError(f"found the kind {kind[:40]!r}, which is none of the registry")
    try:
        return from_data(record, data)
    except WireError as error:
        raise error.within("body") from error
