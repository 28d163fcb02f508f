"""`backspan export`: the whole record of a site as one file."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

import click

from backspan.cli.site_source import DATABASE, now
from backspan.cli.status import Status

if TYPE_CHECKING:
    from backspan.records.api import SiteRecord

HELP = """\
Write the whole record of a site to one file: entries, evidence, receipts, the project file.

It is a plain tar file that any program opens, with a page in it that says how each part is proven
without this program. Its head is signed with the key of the record.

\b
Example:
  backspan export record --to site.tar

Exit status: 0 written, 2 bad input or usage: then nothing was written.
"""


@click.command("export", help=HELP, short_help="Write the whole record of a site to one file.")
@click.argument("folder", type=click.Path(path_type=Path))
@click.option(
    "--to",
    type=click.Path(path_type=Path),
    required=True,
    metavar="FILE",
    help="The file to write; one that is there is replaced once the new one is whole.",
)
@click.option(
    "--without-missing",
    is_flag=True,
    help="Write it although files that entries rest on are not there; it then proves less.",
)
@DATABASE
def command(*, folder: Path, to: Path, without_missing: bool, database: str | None) -> int:
    """Write the archive and tell what is in it."""
    from backspan.cli.record_text import archived_text
    from backspan.cli.screen import put
    from backspan.records.api import open_record

    with open_record(folder, database=database) as record:
        project, why = project_file(record)
        manifest = record.write_archive(
            to, at=now(), project=project, without_missing=without_missing
        )
        put(archived_text(to, manifest, record, why))
    return Status.PASS


def project_file(record: SiteRecord) -> tuple[bytes | None, str]:
    """The project file of a site as it stands, or why there is none."""
    from backspan.core.ledger.errors import LedgerError
    from backspan.core.ledger.fold import fold
    from backspan.exchange.written import NoProjectFileError, project_text

    try:
        return project_text(fold(record.entries()).project).encode("utf-8"), ""
    except (NoProjectFileError, LedgerError) as error:
        return None, str(error)
