"""`backspan recheck`: which accepted drops this version of the program answers differently."""

from __future__ import annotations

import datetime
from pathlib import Path
from typing import TYPE_CHECKING

import click

from backspan.cli.site_source import DATABASE, ON, day, entries_at
from backspan.cli.status import Status, status_of

if TYPE_CHECKING:
    from backspan.core.ledger.answers import Rechecked

HELP = """\
Review every accepted drop again, as whoever accepted it knew it, with this version's program and
rule values.

Run it after every upgrade. A drop that is answered differently now stays as it is until a person
decides: stop it, or look again and accept it anew.

\b
Examples:
  backspan recheck record
  backspan recheck site.tar

Exit status: 0 every answer is the same, 10 one is a fail now, 11 another answer differs, 2 bad
input or usage.
"""


@click.command("recheck", help=HELP, short_help="Review accepted drops again, after an upgrade.")
@click.argument("record", type=click.Path(path_type=Path))
@ON
@DATABASE
def command(*, record: Path, on: datetime.datetime | None, database: str | None) -> int:
    """Review again and tell where a person has to decide."""
    from backspan.cli.record_text import rechecked_text
    from backspan.cli.screen import put
    from backspan.core.ledger.answers import recheck
    from backspan.exchange.files import load_rule_library

    entries = entries_at(record, database=database)
    found = list(recheck(entries, load_rule_library(), on=day(on)))
    put(rechecked_text(found))
    return _status([one for one in found if one.differs])


def _status(differing: list[Rechecked]) -> Status:
    from backspan.core.findings import Verdict

    if not differing:
        return Status.PASS
    failing = any(one.verdict is Verdict.FAIL for one in differing)
    return status_of(Verdict.FAIL if failing else Verdict.MISSING)
