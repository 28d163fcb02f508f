"""Values and items as pages show them: in the project's units, with who stated them and when."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any

from backspan.core.ledger.fields import Stateable
from backspan.core.ledger.stop_list import Item, Known, known
from backspan.core.model.evidence import Evidence
from backspan.core.model.project import Project
from backspan.core.quantities import Dimension, Style, display
from backspan.core.words import say_input

#: Steps of a path that name a list or a record, not a thing.
_NOT_NAMES = frozenset(
    {
        *("drops", "rig", "suspension_points", "counterweighted_beam", "other_support", "fulcrum"),
        *("rear", "stack", "groups", "tiebacks", "lifelines", "connectors", "clips", "pad"),
        "splices",
        *("wear", "kit", "units", "stages", "found", "work", "loads"),
    }
)


@dataclass(frozen=True, slots=True)
class Shown:
    """A value that may be stated, as a page shows it; texts are empty where there is nothing."""

    key: str
    """Its path, as forms name it."""
    name: str
    where: str
    words: tuple[str, ...]
    count: bool
    rated: bool
    planned: str
    found: str
    evidence: str
    by: str
    at: str
    known: Known
    like: str
    """An example of what may be typed."""


@dataclass(frozen=True, slots=True)
class ShownItem:
    """An item of the stop list."""

    number: int
    id: str
    title: str
    verdict: str | None
    open: bool
    values: tuple[Shown, ...]


TITLES = {
    "tieback": "Tieback there, and on what",
    "pin": "Pin locked",
    "pieces": "Pieces counted",
    "reach": "Reach",
    "backspan": "Backspan",
    "anchors": "Anchors in date, for this use",
    "heads": "Heads against lines",
    "softeners": "Softeners",
    "lines": "Line ends seen",
    "rear-stand": "Rear stand where the plan says",
    "beam-label": "Beam label",
    "rope-ends": "Rope ends",
    "power": "Power",
    "rescue": "Rescue",
    "papers": "Papers",
}


def shown_items(items: tuple[Item, ...], project: Project) -> Iterator[ShownItem]:
    """The stop list as a page shows it."""
    for one in items:
        yield ShownItem(
            one.number,
            one.id,
            TITLES[one.id],
            None if one.verdict is None else str(one.verdict),
            one.open,
            tuple(shown_value(asked.value, project, asked.known) for asked in one.asked),
        )


def shown_value(value: Stateable, project: Project, there: Known | None = None) -> Shown:
    """A value as a page shows it; how far it is known by itself where nobody says."""
    stated, style = value.stated, project.units
    there = there or known(value)
    planned: Any = None if stated is None else stated.planned
    if stated is not None and planned is None and stated.evidence is Evidence.DRAWING:
        planned = stated.value
    seen = stated is not None and there in {Known.FOUND, Known.AGAIN}
    found = _text(value, stated.value, style) if stated is not None and seen else ""
    told = there is Known.PLANNED and stated is not None and stated.evidence is not Evidence.DRAWING
    people = {one.id: one.name for one in project.people}
    by = "" if stated is None or stated.by is None else people.get(stated.by, stated.by)
    return Shown(
        key="/".join(value.path),
        name=say_input(value.name),
        where=where_of(value.path),
        words=value.words,
        count=value.is_count,
        rated=value.is_rated,
        planned="" if planned is None else _text(value, planned, style),
        found=_text(value, stated.value, style) if told and stated is not None else found,
        evidence="" if stated is None or stated.evidence is None else str(stated.evidence),
        by=by,
        at="" if stated is None or stated.at is None else stated.at.replace("T", " "),
        known=there,
        like=_like(value.dimension, style),
    )


def where_of(path: tuple[str, ...]) -> str:
    """The things a path leads through, such as "L" or "L, TB-L"."""
    after = path[3:] if path[:1] == ("drops",) else path[2:]
    names = [one for one in after[:-1] if one not in _NOT_NAMES]
    return ", ".join(f"no. {int(one) + 1}" if one.isdigit() else one for one in names)


def _text(value: Stateable, stated: Any, style: Style) -> str:
    if value.dimension is None:
        return str(stated)
    return display(stated, value.dimension, style)


def _like(dimension: Dimension | None, style: Style) -> str:
    if dimension is None:
        return ""
    return dimension.forms[0] if style is Style.US else dimension.forms[-1]
