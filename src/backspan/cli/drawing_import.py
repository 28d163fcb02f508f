"""Anchors or an outline of a roof out of a drawing: shown as they would be stated, then stated."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

import click

from backspan.cli.table_import import Asked, ended_by, table_text

if TYPE_CHECKING:
    from backspan.core.ledger.entry import Signer
    from backspan.core.ledger.kinds import Body
    from backspan.core.model.project import Project
    from backspan.core.model.site import Edge
    from backspan.exchange.drawings_in import DrawnIn, DrawnOutline, DrawnTable

OUTLINE = "outline"


@dataclass(frozen=True, slots=True)
class Drawing:
    """What the options say of a drawing alone."""

    units: str | None
    block: str | None
    id_attribute: str | None
    layer: str | None

    @property
    def any_said(self) -> bool:
        """Whether anything is said that only a drawing needs."""
        return any((self.units, self.block, self.id_attribute, self.layer))


@dataclass(frozen=True, slots=True)
class Into:
    """The record that takes it, who states it there, and when."""

    folder: Path
    database: str | None
    signer: Callable[[Project], Signer]
    at: str


def drawing(file: Path, into: Into | None, asked: Asked, of: Drawing) -> str:
    """What a drawing says, as it is shown; stated where that is asked for."""
    from backspan.exchange.drawings_in import DrawingUnit, anchor_table, anchors_of, roof_outline
    from backspan.exchange.files import load_drawing

    _refuse_incomplete(into, asked, of)
    drawn = load_drawing(file, None if of.units is None else DrawingUnit(of.units))
    head = _read_text(drawn)
    if asked.what == OUTLINE:
        outline = roof_outline(drawn, of.layer or "")
        if into is None:
            return head + _outline_text(outline.edges, drawn, outline.left_out)
        return head + _stated_outline(into, asked, outline, drawn)
    block = of.block or ""
    found = anchors_of(drawn, block, of.id_attribute or "")
    table = anchor_table(found, drawn.origin, block=block)
    if into is None:
        raise click.UsageError("Missing option '--into'.")
    return head + _stated_anchors(into, asked, table)


def _refuse_incomplete(into: Into | None, asked: Asked, of: Drawing) -> None:
    """Raise UsageError where a drawing is not told what to take of it, or for where."""
    if asked.what == OUTLINE:
        if of.layer is None or of.block is not None or of.id_attribute is not None:
            raise click.UsageError("an outline is of a layer: add --layer, and no --block")
        if asked.evidence or asked.document:
            raise click.UsageError("--evidence and --document are for anchors and drops")
        if into is not None and asked.roof is None:
            raise click.UsageError("--into takes the outline of a roof: add --roof with its id")
        if into is None and asked.state:
            raise click.UsageError("--state states it in a record: add --into with its folder")
        return
    if asked.what != "anchors":
        raise click.UsageError(
            "a drawing does not say what to take of it: add --what anchors with --block and"
            " --id-attribute, or --what outline with --layer"
        )
    if of.block is None or of.id_attribute is None or of.layer is not None:
        raise click.UsageError(
            "anchors are blocks of a drawing: add --block with the block's name and"
            " --id-attribute with the tag of its mark, and no --layer"
        )
    if into is None or asked.roof is None:
        raise click.UsageError("anchors stand on a roof of a record: add --into and --roof")


def _stated_anchors(into: Into, asked: Asked, table: DrawnTable) -> str:
    from backspan.core.ledger.fold import fold
    from backspan.exchange.tables import Told, What, entries_for, shown, stated
    from backspan.records.api import open_record
    from backspan.records.store import Statement

    roof = asked.roof or ""
    with open_record(into.folder, database=into.database) as record:
        before = record.entries()
        project = fold(before).project
        by = into.signer(project)
        told = Told(by.person, into.at, asked.evidence or "drawing", asked.document or table.origin)
        rows = stated(table, What.ANCHORS, project, roof, told, today=into.at[:10])
        new = [Statement(one, by) for one in entries_for(rows, roof)]
        written = record.say(new, at=into.at) if asked.state else ()
    text = table_text(
        What.ANCHORS, shown(rows, project, roof), by, ended_by(before, written), done=asked.state
    )
    return _left_out_text(table) + text


def _stated_outline(into: Into, asked: Asked, outline: DrawnOutline, drawn: DrawnIn) -> str:
    from backspan.cli.record_text import NOBODY
    from backspan.cli.screen import screen_of
    from backspan.core.ledger.fold import fold
    from backspan.exchange.drawings_in import with_outline
    from backspan.records.api import open_record
    from backspan.records.store import Statement

    screen, roof = screen_of(), asked.roof or ""
    with open_record(into.folder, database=into.database) as record:
        before = record.entries()
        project = fold(before).project
        by = into.signer(project)
        after = with_outline(project, roof, outline, drawn)
        statement = Statement(_described(after), by)
        written = record.say([statement], at=into.at) if asked.state else ()
    new = next(one for one in after.site.roofs if one.id == roof)
    text = _outline_text(new.edges, drawn, outline.left_out)
    who = f"{by.name}, {by.role}"
    said = (
        f"The outline of {new.name} stated by {who}."
        if asked.state
        else f"The outline of {new.name} would be stated by {who}. Nothing was written; add"
        " --state to state it."
    )
    told = [said, *ended_by(before, written), *([NOBODY] if asked.state else [])]
    return "\n".join([text, *map(screen.paragraph, told)]) + "\n"


def _described(project: Project) -> Body:
    from backspan.core.ledger import bodies
    from backspan.core.ledger.writes import skeleton
    from backspan.core.model.order import ordered

    return bodies.SiteDescribed(ordered(skeleton(project)))


def _read_text(drawn: DrawnIn) -> str:
    """The size of a drawing, its units, and what was mended or left out: for a person to judge."""
    from backspan.cli.screen import screen_of

    screen = screen_of()
    size = (
        f"{drawn.origin} is {drawn.size.told} overall, in {drawn.units.unit}"
        f" ({drawn.units.said} so). Its origin is the site's datum. Is this right?"
    )
    noted = (f"{one.many:,} x {one.what}" for one in drawn.audit)
    return "\n".join(map(screen.paragraph, (size, *noted))) + "\n\n"


def _outline_text(edges: tuple[Edge, ...], drawn: DrawnIn, left_out: int) -> str:
    """The edges with their lengths, in the order of the walk."""
    from backspan.cli.screen import harmless, screen_of
    from backspan.core.model.walked import edge_length

    screen = screen_of()
    table = screen.table("edge", "length", "from", "to", "parapet")
    for one in edges:
        wall = one.parapet
        height = "-" if wall is None else drawn.units.length(wall.height.value)
        ends = map(drawn.units.place, (one.start, one.end))
        table.add_row(harmless(one.id), drawn.units.length(edge_length(one)), *ends, height)
    lines = [screen.drawn(table)]
    if left_out:
        lines.append(screen.paragraph(f"{left_out:,} other lines of the layer were left out."))
    return "\n".join(lines) + "\n"


def _left_out_text(table: DrawnTable) -> str:
    """The attributes that are none of an anchor's."""
    from backspan.cli.screen import screen_of

    if not table.left_out:
        return ""
    told = ", ".join(f"{tag} ({many:,})" for tag, many in sorted(table.left_out.items()))
    return screen_of().paragraph(f"Attributes left out: {told}.") + "\n\n"
