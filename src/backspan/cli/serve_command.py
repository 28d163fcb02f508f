"""`backspan serve`: the workbench, as pages on this machine alone."""

from __future__ import annotations

import datetime
import socket
from pathlib import Path
from typing import TYPE_CHECKING

import click

from backspan.cli.site_source import DATABASE
from backspan.cli.status import Status

if TYPE_CHECKING:
    from backspan.records.api import SiteRecord

HELP = """\
Open the record of a site as pages on this machine.

The pages are for this machine alone: nothing outside it can reach them, and there is no account or
password. Who speaks is chosen on the page, and every entry says so. Stop it with Ctrl and C.

\b
Example:
  backspan serve record
  backspan serve record --port 8765
  backspan serve record --new "Harrier Court"
"""
#: Pages are made by so many at a time; a review takes a fraction of a second.
_THREADS = 4
#: This machine, and nothing outside it.
HOST = "127.0.0.1"


@click.command("serve", help=HELP, short_help="Open the record of a site as pages on this machine.")
@click.argument("folder", type=click.Path(path_type=Path))
@click.option(
    "--port", type=click.IntRange(0, 65535), default=8765, show_default=True, help="Its number."
)
@click.option(
    "--new", metavar="NAME", help="Make the record of a site of this name where there is none."
)
@DATABASE
def command(*, folder: Path, port: int, new: str | None, database: str | None) -> int:
    """Serve until stopped."""
    from waitress.server import create_server

    from backspan.cli.screen import put
    from backspan.exchange.files import FileError, load_rule_library
    from backspan.records.api import make_record, open_record
    from backspan.web.application import application_of, seldom_collected
    from backspan.web.workbench import Workbench

    def clock() -> datetime.datetime:
        return datetime.datetime.now().astimezone()

    def opened() -> SiteRecord:
        if new is None:
            return open_record(folder, database=database)
        return make_record(folder, new, database=database)

    with opened() as record:
        pages = application_of(Workbench(record, load_rule_library(), clock))
        with socket.socket() as here:
            try:
                here.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
                here.bind((HOST, port))
            except OSError as error:
                found = error.strerror or str(error)
                where = Path(f"port {port}")
                raise FileError(where, found=found, expected="a free one: --port 0") from error
            server = create_server(pages, sockets=[here], threads=_THREADS, ident=None)
            address = f"http://{HOST}:{here.getsockname()[1]}/"
            seldom_collected()
            put(f"{record.site}: {address}  (stop with Ctrl and C)\n")
            server.run()
    return Status.PASS
