"""The fifteen things that are looked at before anybody rides, with what is stated of each.

What an item asks for are values of the rig, or of a thing by its tag. An item has no answer of its
own: what is stated and what nobody stated is told, the review of the drop answers.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator
from dataclasses import dataclass
from enum import StrEnum
from typing import Any

from backspan.core.findings import WORST_FIRST, Finding, Review, Verdict
from backspan.core.ledger.document import PlaceError
from backspan.core.ledger.fields import Stateable, rig_fields, unit_fields
from backspan.core.model.evidence import Evidence
from backspan.core.model.project import Project
from backspan.core.model.rigs import Rig
from backspan.core.model.topics import Topic
from backspan.core.model.units import Unit
from backspan.core.wire import to_data


class Known(StrEnum):
    """How far a value is known."""

    BLANK = "not stated"
    PLANNED = "planned only"
    AGAIN = "look again"
    FOUND = "found"


@dataclass(frozen=True, slots=True)
class Asked:
    """A value an item asks for, and how far it is known."""

    value: Stateable
    known: Known


@dataclass(frozen=True, slots=True)
class Item:
    """One line of the list; `verdict` is the worst of the findings that belong to it alone.

    It is None where such a finding is not there: numbers are judged with others together.
    """

    number: int
    id: str
    asked: tuple[Asked, ...]
    verdict: Verdict | None

    @property
    def open(self) -> bool:
        """Whether something of it is not found yet, or what was found does not do."""
        unseen = any(one.known is not Known.FOUND for one in self.asked)
        nothing = not self.asked and self.verdict is None
        return unseen or nothing or self.verdict not in {None, Verdict.PASS}


@dataclass(frozen=True, slots=True)
class _Row:
    """An item: the fields it asks for as (record, field), the checks that are about it alone."""

    id: str
    fields: tuple[tuple[str, str], ...] = ()
    checks: tuple[str, ...] = ()


_BEAM = "counterweighted_beam"
ROWS = (
    _Row("tieback", (("tieback", "found"), ("tieback", "taut")), ("tieback", "tieback-end")),
    _Row("pin", (("stack", "fastening"),), ("counterweight-fastening",)),
    _Row("pieces", (("piece_group", "count"),)),
    _Row("reach", ((_BEAM, "reach"),)),
    _Row("backspan", ((_BEAM, "backspan"), ("stack", "tail_gap"))),
    _Row("anchors", (), ("anchor-dates", "anchor-use")),
    _Row("heads", (("rig", "riders"),), ("heads",)),
    _Row(
        "softeners",
        tuple((one, "softener") for one in ("suspension_point", "tieback", "lifeline")),
        ("softeners",),
    ),
    _Row("lines", (("lifeline", "found"),), ("lifeline",)),
    _Row("rear-stand", ((_BEAM, "rear_stand"),)),
    _Row("beam-label", (("unit", "label"),)),
    _Row("rope-ends", (("suspension_point", "rope_ends"),), ("rope-ends",)),
    _Row("power", (("rig", "power"),), ("power",)),
    _Row("rescue", (("rig", "rescue"),), ("rescue",)),
    _Row("papers", (), ("design", "as-planned")),
)


def stop_list(project: Project, drop: str, review: Review) -> tuple[Item, ...]:
    """The items of a drop, in their order. Raises PlaceError where the project has no such drop."""
    found = next((one for one in project.drops if one.id == drop), None)
    if found is None:
        raise PlaceError(f"drops/{drop}: there is no such drop")
    rig = found.rig or Rig()
    values, wanting = values_of(project, drop), wanted(review)
    return tuple(
        Item(
            number,
            row.id,
            tuple(Asked(one, known(one, wanting)) for one in values if _asks(row, one, rig)),
            _worst(row, review),
        )
        for number, row in enumerate(ROWS, start=1)
    )


def also_wanted(project: Project, drop: str, review: Review) -> tuple[Asked, ...]:
    """The values that the review waits for besides those of the list."""
    wanting, rig = wanted(review), next(one.rig for one in project.drops if one.id == drop)
    return tuple(
        Asked(one, known(one, wanting))
        for one in values_of(project, drop)
        if one.path in wanting and not any(_asks(row, one, rig or Rig()) for row in ROWS)
    )


def values_of(project: Project, drop: str) -> tuple[Stateable, ...]:
    """What may be stated of a drop's rig, and of the things in it by their tags."""
    rig = next(one.rig for one in project.drops if one.id == drop)
    units = () if rig is None else things_of(project, rig)
    return (*rig_fields(project, drop), *(field for one in units for field in unit_fields(one)))


def wanted(review: Review) -> frozenset[tuple[str, ...]]:
    """The places of the values that some finding waits for: not stated, or not well enough."""
    return frozenset(path for one in review.findings for path in _waits_for(one))


def wanting_topics(review: Review) -> dict[tuple[str, ...], Topic]:
    """The topic of the finding that waits for each value; the first of several, in their order."""
    found: dict[tuple[str, ...], Topic] = {}
    for topic in review.topics:
        for at in topic.findings:
            for path in _waits_for(review.findings[at]):
                found.setdefault(path, topic.topic)
    return found


def known(value: Stateable, wanting: Collection[tuple[str, ...]] = ()) -> Known:
    """How far a value is known: what a drawing says was not found by anybody.

    What was found and a finding waits for was seen too long ago, or by somebody who may not say.
    """
    stated = value.stated
    if stated is None or stated.evidence is None:
        return Known.BLANK
    if stated.evidence not in {Evidence.MEASURED, Evidence.LABEL, Evidence.CERTIFICATE}:
        return Known.PLANNED
    return Known.AGAIN if value.path in wanting else Known.FOUND


def things_of(project: Project, rig: Rig) -> tuple[Unit, ...]:
    """The things of a rig that have a tag."""
    names = set(_names(to_data(rig)))
    return tuple(one for one in project.kit.units if one.id in names)


def _waits_for(finding: Finding) -> Iterator[tuple[str, ...]]:
    places = (dict(need.what.values).get("place") for need in finding.needs)
    return (tuple(one.split("/")) for one in places if isinstance(one, str))


def _names(data: Any) -> Iterator[str]:
    if isinstance(data, str):
        yield data
    elif isinstance(data, dict | list):
        for one in data.values() if isinstance(data, dict) else data:
            yield from _names(one)


def _asks(row: _Row, value: Stateable, rig: Rig) -> bool:
    if (value.record, value.field) not in row.fields:
        return False
    stated = value.stated is not None
    match value.record, value.field:
        case "suspension_point", "softener":  # a beam's line hangs clear: asked where it does not
            point = next(one for one in rig.suspension_points if one.id == value.path[4])
            return stated or point.counterweighted_beam is None
        case "tieback", "softener":
            return stated
        case "unit", "label":
            return _is_beam(value, rig)
        case ("counterweighted_beam", "backspan") | ("stack", "tail_gap"):
            return stated or value.field == "backspan"
        case _:
            return True


def _is_beam(value: Stateable, rig: Rig) -> bool:
    beams = (one.counterweighted_beam for one in rig.suspension_points)
    return any(one is not None and one.beam == value.path[2] for one in beams)


def _worst(row: _Row, review: Review) -> Verdict | None:
    verdicts = {one.verdict for one in _findings(row, review)}
    return next((one for one in WORST_FIRST if one in verdicts), None)


def _findings(row: _Row, review: Review) -> Iterator[Finding]:
    return (one for one in review.findings if one.check in row.checks)
