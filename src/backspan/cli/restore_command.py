"""`backspan restore`: the record that an archive or a backup holds, in a new folder."""

from __future__ import annotations

from pathlib import Path

import click

from backspan.cli.site_source import DATABASE
from backspan.cli.status import Status

HELP = """\
Bring a record back from an archive or a backup, into a new folder, whole or not at all.

Entries stand at the places, with the times and heads, that they had. The folder is another device
with a key of its own: the old one may still be in use somewhere. To take entries into a record
that is there, use `backspan import`.

\b
Example:
  backspan restore backups/site.tar --into record

Exit status: 0 brought back, 2 bad input or usage: then nothing was brought back.
"""


@click.command("restore", help=HELP, short_help="Bring a record back from an archive.")
@click.argument("archive", type=click.Path(path_type=Path))
@click.option(
    "--into",
    type=click.Path(path_type=Path),
    required=True,
    metavar="FOLDER",
    help="The new folder of the record.",
)
@DATABASE
def command(*, archive: Path, into: Path, database: str | None) -> int:
    """Bring it back and tell what came."""
    from backspan.cli.record_text import restored_text
    from backspan.cli.screen import put
    from backspan.records.api import restore_record

    with restore_record(archive, into, database=database) as record:
        put(restored_text(record))
    return Status.PASS
