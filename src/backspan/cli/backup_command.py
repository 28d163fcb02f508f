"""`backspan backup`: an archive with its day in its name, read back and proven."""

from __future__ import annotations

import re
from pathlib import Path

import click

from backspan.cli.site_source import DATABASE, now
from backspan.cli.status import Status

HELP = """\
Write the whole record of a site to a new file in a folder, read it back and prove it.

No backup ever replaces another. Keep the folder on another disk, and the head that is printed on
paper: with it anybody can show later that nothing was cut off. `backspan restore` brings a backup
back; try it now and then. The key of the record is not in it: a record that is brought back signs
with a key of its own.

\b
Example:
  backspan backup record --to /media/disk/backups

Exit status: 0 written and proven, 10 written but not what it should be, 2 bad input or usage.
"""


@click.command("backup", help=HELP, short_help="Write the record to a new file and prove it.")
@click.argument("folder", type=click.Path(path_type=Path))
@click.option(
    "--to",
    type=click.Path(path_type=Path),
    required=True,
    metavar="FOLDER",
    help="The folder that the backups are in.",
)
@DATABASE
def command(*, folder: Path, to: Path, database: str | None) -> int:
    """Write, read back, tell."""
    from backspan.cli.export_command import project_file
    from backspan.cli.record_text import archived_text, proof_text
    from backspan.cli.screen import put
    from backspan.exchange.files import FileError
    from backspan.records.api import open_record
    from backspan.records.archive import verify
    from backspan.records.signing import holds

    if not to.is_dir():
        raise FileError(to, found="no folder", expected="the folder that the backups are in")
    with open_record(folder, database=database) as record:
        at = now()
        path = to / f"{_plain(record.site)}-{_plain(at)}.tar"
        if path.exists():
            raise FileError(path, found="a backup of this very second", expected="none")
        project, why = project_file(record)
        manifest = record.write_archive(path, at=at, project=project)
        report = verify(
            path, holds=holds, trusted_key=record.key.public, known_heads=[manifest.head]
        )
        put(archived_text(path, manifest, record, why) + proof_text(path, report))
    return Status.PASS if report.whole else Status.FAIL


def _plain(text: str) -> str:
    """A text as part of a file's name."""
    return re.sub(r"[^A-Za-z0-9]+", "-", text).strip("-").lower()[:60] or "site"
