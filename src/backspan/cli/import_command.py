"""`backspan import`: a project file, a table, a drawing or an archive becomes entries."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

import click

from backspan.cli.drawing_import import OUTLINE, Drawing, Into, drawing
from backspan.cli.site_source import DATABASE, is_archive, now
from backspan.cli.status import Status
from backspan.cli.table_import import Asked, ended_by, refuse_incomplete, table_text, taken
from backspan.core.errors import quoted

if TYPE_CHECKING:
    from backspan.core.ledger.entry import Entry, Signer
    from backspan.core.model.project import Project

HELP = """\
Take a project file, or the archive of a site, into the record of a site.

The record is a folder: entries that are only ever added, the files they rest on, the key that
signs them. It is made where there is none. Of a project file only what is new in it becomes
entries, stated by the person that --by names; what was found on the roof since is not undone. Of
an archive whatever is not here yet is taken, once all of it was proven.

A table (.csv or .xlsx) holds anchors or drops of one roof, under the names that a project file has
for their fields: id, kind, edge, along and back, or x and y, and for an anchor uses, rating,
inspected, certified, fixed_by, standing; id, edge, start, width, and for a drop name, height,
clear_below. Its rows are shown as they would be stated; --state states them, all or none. A rating
out of a table is told, or read from a drawing; a certificate is stated on the anchor's own page.

A drawing (.dxf, text) holds anchors as blocks, the mark of each in an attribute; attributes called
as the columns of a table are taken with it, and what has no KIND is called as its block. Or it
holds the outline of a roof, a closed line on a layer of its own: shown without --into, and with it
as it would be stated. An edge keeps the parapet of the edge that was called the same. The drawing's
origin is the site's datum, x to the right and y up: move the drawing there before it is saved. A
drawing that does not say its units is refused unless --units says them. Of a drawing anchors are
stated as read from it, by its name, unless --evidence and --document say otherwise.

\b
Examples:
  backspan import site.yaml --into record --by MT
  backspan import site.yaml --into record --by MT --show
  backspan import site.tar --into record
  backspan import anchors.csv --what anchors --roof MAIN --into record --by MT
  backspan import anchors.csv --what anchors --roof MAIN --into record --by MT --state
  backspan import roof.dxf --what outline --layer ROOF
  backspan import roof.dxf --what anchors --block EYE --id-attribute MARK --roof MAIN \\
      --into record --by MT

Exit status: 0 taken (or shown), 2 bad input or usage: then nothing was taken.
"""


@click.command(
    "import",
    help=HELP,
    short_help="Take a project file, a table, a drawing or an archive into a record.",
)
@click.argument("file", type=click.Path(path_type=Path))
@click.option(
    "--into",
    type=click.Path(path_type=Path),
    metavar="FOLDER",
    help="The folder of the record; made where there is none. Only an outline does without.",
)
@click.option("--by", metavar="PERSON", help="Who states it: the id of a person of the project.")
@click.option("--show", is_flag=True, help="Tell what would be taken of a project file, only.")
@click.option(
    "--what",
    type=click.Choice(["anchors", "drops", OUTLINE]),
    help="What a table's rows are, or what is taken of a drawing.",
)
@click.option("--roof", metavar="ROOF", help="The roof that a table or drawing is of, by its id.")
@click.option(
    "--evidence",
    type=click.Choice(["told", "drawing"]),
    help="Where the values come from.  [default: told; of a drawing, drawing]",
)
@click.option("--document", metavar="NAME", help="The paper that the values stand on.")
@click.option(
    "--state", is_flag=True, help="State what a table or drawing says; else only show it."
)
@click.option("--block", metavar="NAME", help="The block that marks an anchor in a drawing.")
@click.option("--id-attribute", metavar="TAG", help="The attribute that holds an anchor's mark.")
@click.option("--layer", metavar="LAYER", help="The layer that holds a roof's outline.")
@click.option(
    "--units",
    type=click.Choice(["in", "ft", "survey ft", "mm", "cm", "m"]),
    help="The units of a drawing.  [default: as it says]",
)
@DATABASE
def command(
    *,
    file: Path,
    into: Path | None,
    by: str | None,
    show: bool,
    database: str | None,
    what: str | None,
    roof: str | None,
    evidence: str | None,
    document: str | None,
    state: bool,
    block: str | None,
    id_attribute: str | None,
    layer: str | None,
    units: str | None,
) -> int:
    """Take it in, and tell what was taken."""
    from backspan.cli.screen import put
    from backspan.exchange.drawings_in import is_drawing
    from backspan.exchange.tables.opening import is_table

    asked = Asked(what, roof, evidence, document, state and not show)
    of_drawing = Drawing(units, block, id_attribute, layer)
    if is_drawing(file.name):

        def signer(project: Project) -> Signer:
            return _signer(project, by)

        record = None if into is None else Into(into, database, signer, now())
        put(drawing(file, record, asked, of_drawing))
        return Status.PASS
    if of_drawing.any_said or what == OUTLINE:
        raise click.UsageError(
            f"{file.name}: found no drawing by its name, expected .dxf; --block, --id-attribute,"
            " --layer, --units and --what outline are for drawings"
        )
    if into is None:
        raise click.UsageError("Missing option '--into'.")
    if is_table(file.name):
        refuse_incomplete(asked)
        put(_table(file, into, by, database, asked))
    elif asked.of_a_table:
        raise click.UsageError(
            f"{file.name}: found no table by its name, expected .csv or .xlsx; --what, --roof,"
            " --evidence, --document and --state are for tables"
        )
    elif is_archive(file):
        if by is not None or show:
            raise click.UsageError("--by and --show are for project files; an archive is neither")
        put(_archive(file, into, database))
    else:
        put(_project(file, into, by, database, show=show))
    return Status.PASS


def _project(file: Path, into: Path, by: str | None, database: str | None, *, show: bool) -> str:
    from backspan.cli.record_text import imported_text
    from backspan.core.ledger.chain import in_order
    from backspan.core.ledger.described import not_said_yet
    from backspan.exchange.files import load, load_rule_library
    from backspan.records.api import make_record
    from backspan.records.store import Statement

    project = load(file, load_rule_library())
    signer = _signer(project, by)
    before = _entries(into, database)
    new = list(not_said_yet(project, in_order(before)))
    written: tuple[Entry, ...] = ()
    if new and not show:
        with make_record(into, project.site.name, database=database) as record:
            written = record.say([Statement(body, signer) for body in new], at=now())
    return imported_text(project, before, written, new, signer)


def _table(file: Path, into: Path, by: str | None, database: str | None, asked: Asked) -> str:
    from backspan.core.ledger.fold import fold
    from backspan.records.api import open_record
    from backspan.records.store import Statement

    at = now()
    with open_record(into, database=database) as record:
        before = record.entries()
        project = fold(before).project
        signer = _signer(project, by)
        what, rows, new = taken(file, signer, project, asked, at)
        written: tuple[Entry, ...] = ()
        if asked.state:
            written = record.say([Statement(body, signer) for body in new], at=at)
    return table_text(what, rows, signer, ended_by(before, written), done=asked.state)


def _entries(folder: Path, database: str | None) -> tuple[Entry, ...]:
    """The entries that are there; none where the record is still to be made."""
    from backspan.records.api import open_record
    from backspan.records.errors import NoRecordError

    try:
        with open_record(folder, database=database) as record:
            return record.entries()
    except NoRecordError:
        return ()


def _signer(project: Project, by: str | None) -> Signer:
    from backspan.core.ledger.entry import Signer
    from backspan.core.review.naming import suggested

    people = {one.id: one for one in project.people}
    if by is None:
        raise click.UsageError(
            "what is taken in is stated by a person: add --by with one of its people:"
            f" {', '.join(people) or 'it names none yet'}"
        )
    if by not in people:
        meant = suggested(by, list(people), what="people")
        raise click.UsageError(f"the project has no person {quoted(by)}; {meant}")
    one = people[by]
    return Signer(one.id, one.name, one.role, one.employer, one.card)


def _archive(file: Path, into: Path, database: str | None) -> str:
    from backspan.cli.record_text import restored_text, taken_text
    from backspan.records.api import open_record, restore_record
    from backspan.records.errors import NoRecordError

    try:
        record = open_record(into, database=database)
    except NoRecordError:
        with restore_record(file, into, database=database) as made:
            return restored_text(made)
    with record:
        return taken_text(record, record.take_archive(file, received=now()))
