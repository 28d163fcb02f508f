"""What a table states, entry by entry, and the same as rows that a person reads before it is."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from enum import StrEnum

from backspan.core.errors import quoted
from backspan.core.ledger import bodies
from backspan.core.ledger.kinds import Body
from backspan.core.model.evidence import Evidence, StatedValue
from backspan.core.model.project import Project
from backspan.core.model.references import problems
from backspan.core.model.rigs import Drop
from backspan.core.model.site import Anchor, Roof
from backspan.core.model.walked import along_and_back, edge_length
from backspan.core.quantities import FORCE, LENGTH, Dimension, Length, display
from backspan.exchange.tables.anchors import Told, anchors_of
from backspan.exchange.tables.cells import Table, TableError, refused
from backspan.exchange.tables.drops import drops_of
from backspan.exchange.wrong import Wrong

Row = tuple[str, ...]
#: On what evidence a table may be stated: no rating becomes a certificate by itself.
EVIDENCE = (Evidence.TOLD, Evidence.DRAWING)


class What(StrEnum):
    """What the rows of a table are."""

    ANCHORS = "anchors"
    DROPS = "drops"


HEADINGS = {
    What.ANCHORS: ("mark", "where", "what it is", "uses", "inspected", "certified", "standing"),
    What.DROPS: ("mark", "name", "edge", "begins at", "width", "height", "clear below"),
}


def stated(
    table: Table, what: What, project: Project, roof: str, told: Told, *, today: str
) -> tuple[Anchor, ...] | tuple[Drop, ...]:
    """The anchors or drops of a roof that a table says. Raises TableError with every problem."""
    of = next((one for one in project.site.roofs if one.id == roof), None)
    if of is None:
        names = ", ".join(one.id for one in project.site.roofs) or "none yet"
        raise refused("the site", f"no roof {quoted(roof)}", f"one of its roofs: {names}")
    if what is What.ANCHORS:
        anchors = anchors_of(table, project, of, told, today=today)
        _refuse_unsound(table, project, with_anchors(project, of, anchors))
        return anchors
    drops = drops_of(table, project, of, told)
    _refuse_unsound(table, project, with_drops(project, drops))
    return drops


def with_anchors(project: Project, roof: Roof, new: tuple[Anchor, ...]) -> Project:
    """The project with more anchors on a roof."""
    more = replace(roof, anchors=(*roof.anchors, *new))
    roofs = tuple(more if one is roof else one for one in project.site.roofs)
    return replace(project, site=replace(project.site, roofs=roofs))


def with_drops(project: Project, new: tuple[Drop, ...]) -> Project:
    """The project with more drops."""
    return replace(project, drops=(*project.drops, *new))


def shown(
    rows: tuple[Anchor, ...] | tuple[Drop, ...], project: Project, roof: str
) -> tuple[Row, ...]:
    """Each as it would be stated, under the headings of its kind; a blank is a dash."""
    of = next(one for one in project.site.roofs if one.id == roof)
    return tuple(tuple(text or "-" for text in _row(one, project, of)) for one in rows)


def entries_for(rows: tuple[Anchor, ...] | tuple[Drop, ...], roof: str) -> Iterator[Body]:
    """The entries that state them, one each."""
    for one in rows:
        if isinstance(one, Drop):
            yield bodies.DropDescribed(one)
        else:
            yield bodies.AnchorRegistered(roof, one)


def _row(one: Anchor | Drop, project: Project, of: Roof) -> Row:
    if isinstance(one, Drop):
        said = (one.width, one.height, one.clear_below)
        lengths = [_value(each, LENGTH, project) for each in said]
        return (one.id, one.name or "", one.edge, _length(one.start, project), *lengths)
    rating = _value(one.rating, FORCE, project)
    return (
        one.id,
        _where(one, of, project),
        ", ".join(filter(None, (one.kind, one.fixed_by))),
        ", ".join(filter(None, (*one.uses, rating))),
        one.inspected or "",
        one.certified or "",
        one.standing,
    )


def _where(one: Anchor, of: Roof, project: Project) -> str:
    """From the edge that it stands nearest to; on the plan where it is seen from none."""
    seen = []
    for edge in of.edges:
        along, back = along_and_back(edge, one.at)
        if back >= 0.0 and 0.0 <= along <= edge_length(edge):
            seen.append((back, along, edge.id))
    if not seen:
        return f"x {_length(one.at[0], project)}, y {_length(one.at[1], project)}"
    back, along, name = min(seen)
    return f"{_length(along, project)} along {name}, {_length(back, project)} back"


def _length(value: Length, project: Project) -> str:
    return display(value, LENGTH, project.units)


def _value(one: StatedValue[float] | None, dimension: Dimension, project: Project) -> str:
    if one is None:
        return ""
    return f"{display(one.value, dimension, project.units)} ({one.evidence})"


def _refuse_unsound(table: Table, before: Project, after: Project) -> None:
    """Raise TableError where the site would not be sound with these rows, whatever the reason."""
    known = set(problems(before))
    wrong = [
        Wrong(f"{table.origin} {' '.join(str(step) for step in one.path)}", one.found, one.expected)
        for one in problems(after)
        if one not in known
    ]
    if wrong:
        raise TableError(wrong)
