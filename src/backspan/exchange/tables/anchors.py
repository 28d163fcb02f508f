"""Anchors of one roof out of a table: the columns, and what each row says."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

from backspan.core.errors import quoted
from backspan.core.model.identifiers import near
from backspan.core.model.project import Project
from backspan.core.model.site import Anchor, AnchorUse, Point, Roof
from backspan.core.model.walked import edge_length, is_within, on_plan
from backspan.core.quantities import LENGTH, Length, display
from backspan.exchange.tables.cells import Row, Table
from backspan.exchange.tables.headed import Headed

_FROM_EDGE, _ON_PLAN = ("edge", "along", "back"), ("x", "y")
_DAYS = ("inspected", "certified")
COLUMNS = ("id", *_FROM_EDGE, *_ON_PLAN, "kind", "uses", "rating", *_DAYS, "fixed_by", "standing")
_BETWEEN = re.compile("[,;]")
#: Two anchors that stand nearer than this are one.
_SPOT: Length = 0.001


@dataclass(frozen=True, slots=True)
class Told:
    """Who takes a table in, when, and on what evidence its values are stated."""

    by: str
    at: str
    evidence: str
    document: str = ""

    @property
    def data(self) -> dict[str, str]:
        """The same as the data of a stated value."""
        paper = {"document": self.document} if self.document else {}
        return {"by": self.by, "at": self.at, "evidence": self.evidence, **paper}


def anchors_of(
    table: Table, project: Project, roof: Roof, told: Told, *, today: str
) -> tuple[Anchor, ...]:
    """The anchors that a table says stand on a roof. Raises TableError with every problem."""
    headed = Headed(table, COLUMNS, _DAYS)
    headed.need("id", "kind", *_places_needed(headed.columns))
    there = {one.id: f"an anchor of {of.name}" for of in project.site.roofs for one in of.anchors}
    headed.names(there)
    found = []
    spots = _Spots(roof.anchors)
    for row in headed.rows:
        at = _place(headed, row, project, roof)
        if at is not None:
            other = spots.taken(at, headed.plain(row, "id"))
            if other:
                # The spot is told at the column that says it last.
                name = "back" if headed.plain(row, "back") else "y"
                headed.tell(row, name, f"the spot of anchor {other}", "a spot of its own")
        one = headed.record(row, Anchor, _data(headed, row, told, today))
        if one is not None and at is not None:
            found.append(replace(one, at=at))
    headed.refuse()
    return tuple(found)


def _places_needed(columns: Mapping[str, int]) -> Sequence[str]:
    """The columns of a place: from an edge, unless the table begins the other way."""
    whole = [way for way in (_FROM_EDGE, _ON_PLAN) if all(one in columns for one in way)]
    begun = [way for way in (_FROM_EDGE, _ON_PLAN) if any(one in columns for one in way)]
    if whole:
        return [name for way in begun for name in way]
    return begun[0] if len(begun) == 1 else _FROM_EDGE


def _place(headed: Headed, row: Row, project: Project, roof: Roof) -> Point | None:
    """Where the anchor stands in plan; None, and a problem, where it stands nowhere on the roof."""
    ways = [way for way in (_FROM_EDGE, _ON_PLAN) if any(headed.plain(row, name) for name in way)]
    if len(ways) > 1:
        headed.tell(row, "x", "a place on the plan and one from an edge", "one of the two")
        return None
    way = ways[0] if ways else _FROM_EDGE if "edge" in headed.columns else _ON_PLAN
    if any(name not in headed.columns for name in way):
        return None
    if way is _ON_PLAN:
        x, y = headed.length(row, "x"), headed.length(row, "y")
        at = None if x is None or y is None else (x, y)
        told = ""
    else:
        name = headed.text(row, "edge", needed=f"an edge of {roof.name}")
        edge = next((one for one in roof.edges if one.id == name), None)
        if name and edge is None:
            expected = near(name, [one.id for one in roof.edges], what=f"edges of {roof.name}")
            headed.tell(row, "edge", f"the edge {quoted(name)}, which is not there", expected)
        along, back = headed.length(row, "along"), headed.length(row, "back")
        if edge is None or along is None or back is None:
            return None
        at = on_plan(edge, along=along, back=back)
        long = display(edge_length(edge), LENGTH, project.units)
        told = f"; edge {edge.id} is {long} long"
    if at is not None and not is_within(roof.outline, at):
        headed.tell(row, way[1], f"a place outside {roof.name}", f"one on it{told}")
        return None
    return at


def _data(headed: Headed, row: Row, told: Told, today: str) -> dict[str, object]:
    """What a row says but its place, as a project file says it."""
    rating = headed.text(row, "rating")
    uses = [one.strip() for one in _BETWEEN.split(headed.text(row, "uses")) if one.strip()]
    if any(one not in set(AnchorUse) for one in uses):
        found = ", ".join(quoted(one) for one in uses if one not in set(AnchorUse))
        words = " | ".join(AnchorUse)
        headed.tell(row, "uses", found, f"some of: {words}; a semicolon between two")
        uses = []
    return {
        "id": headed.text(row, "id", needed="the anchor's mark, such as A01"),
        "at": ["0 ft", "0 ft"],
        "kind": headed.text(row, "kind", needed="what it is, such as eye bolt"),
        "uses": list(dict.fromkeys(uses)),
        "rating": {"value": rating, **told.data} if rating else None,
        "inspected": headed.day(row, "inspected", latest=today),
        "certified": headed.day(row, "certified", latest=today),
        "fixed_by": headed.text(row, "fixed_by"),
        "standing": headed.text(row, "standing"),
    }


class _Spots:
    """Where anchors stand, so that a second one on a spot is found."""

    def __init__(self, anchors: Sequence[Anchor]) -> None:
        self._there: dict[tuple[int, int], list[tuple[Point, str]]] = {}
        for one in anchors:
            self.taken(one.at, one.id)

    def taken(self, at: Point, name: str) -> str:
        """The anchor that stands there already; else this one stands there from now on."""
        x, y = round(at[0] / _SPOT), round(at[1] / _SPOT)
        for near_x in (x - 1, x, x + 1):
            for near_y in (y - 1, y, y + 1):
                for (other_x, other_y), other in self._there.get((near_x, near_y), ()):
                    if max(abs(other_x - at[0]), abs(other_y - at[1])) < _SPOT:
                        return other or "another row"
        self._there.setdefault((x, y), []).append((at, name))
        return ""
