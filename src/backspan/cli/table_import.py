"""Anchors or drops of a roof out of a table: shown as they would be stated, then stated."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

import click

if TYPE_CHECKING:
    from backspan.core.ledger.entry import Entry, Signer
    from backspan.core.ledger.kinds import Body
    from backspan.core.model.project import Project
    from backspan.exchange.tables import What


@dataclass(frozen=True, slots=True)
class Asked:
    """What the options say of a table."""

    what: str | None
    roof: str | None
    evidence: str | None
    document: str | None
    state: bool

    @property
    def of_a_table(self) -> bool:
        """Whether anything is said that only a table needs."""
        return self.state or any((self.what, self.roof, self.evidence, self.document))


def taken(
    file: Path, signer: Signer, project: Project, asked: Asked, now: str
) -> tuple[What, tuple[tuple[str, ...], ...], list[Body]]:
    """What the rows are, the rows as they are shown, and the entries that state them."""
    from backspan.exchange.files import load_table
    from backspan.exchange.tables import Told, What, entries_for, shown, stated

    what, roof = What(asked.what or ""), asked.roof or ""
    told = Told(signer.person, now, asked.evidence or "told", asked.document or "")
    rows = stated(load_table(file, what), what, project, roof, told, today=now[:10])
    return what, shown(rows, project, roof), list(entries_for(rows, roof))


def refuse_incomplete(asked: Asked) -> None:
    """Raise UsageError where a table is not told what its rows are, and of which roof."""
    if asked.what is None or asked.roof is None:
        raise click.UsageError(
            "a table does not say what it is of: add --what anchors or --what drops, and --roof"
            " with the id of the roof"
        )


def table_text(
    what: What,
    rows: Sequence[Sequence[str]],
    signer: Signer,
    ended: Sequence[str],
    *,
    done: bool,
) -> str:
    """The rows under their headings, and what was done with them."""
    from backspan.cli.record_text import NOBODY
    from backspan.cli.screen import harmless, screen_of
    from backspan.exchange.tables import HEADINGS

    screen = screen_of()
    table = screen.table(*HEADINGS[what])
    for row in rows:
        table.add_row(*map(harmless, row))
    who = f"{signer.name}, {signer.role}"
    many = f"{len(rows):,} {what}"
    said = (
        f"{many} stated by {who}, one entry each."
        if done
        else f"{many} would be stated by {who}. Nothing was written; add --state to state them."
    )
    lines = [screen.drawn(table), "", screen.paragraph(said), *map(screen.paragraph, ended)]
    return "\n".join([*lines, screen.paragraph(NOBODY)] if done else lines) + "\n"


def ended_by(before: Sequence[Entry], written: Sequence[Entry]) -> list[str]:
    """The acceptances that ended with what was written."""
    from backspan.cli.record_text import ended

    return list(ended(before, written))
