"""Where a project comes from on the command line: its file, a site's folder, or an archive."""

from __future__ import annotations

import datetime
from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING, Any, TypeVar

import click

if TYPE_CHECKING:
    from backspan.core.ledger.entry import Entry
    from backspan.core.model.project import Project
    from backspan.core.rules.selected import RuleLibrary

F = TypeVar("F", bound=Callable[..., Any])

DATABASE = click.option(
    "--database",
    envvar="DATABASE_URL",
    metavar="ADDRESS",
    help="Where the entries are if not in FOLDER: postgresql://... (else as DATABASE_URL says).",
)
ON = click.option(
    "--on",
    type=click.DateTime(["%Y-%m-%d"]),
    metavar="YYYY-MM-DD",
    help="The day that is asked about.  [default: today]",
)
FORM = click.option(
    "--format",
    "form",
    type=click.Choice(["text", "json"]),
    default="text",
    show_default=True,
    help="How to print it.",
)


def language_option(*, of: str) -> Callable[[F], F]:
    """The option for the language of what a command tells."""
    return click.option(
        "--language",
        "code",
        type=click.Choice(["en", "es"]),
        default="en",
        show_default=True,
        help=f"The language of {of}; Spanish is still to be checked by an engineer.",
    )


def now() -> str:
    """The time on this machine, with its offset."""
    return datetime.datetime.now().astimezone().isoformat(timespec="seconds")


def day(on: datetime.datetime | None) -> datetime.date:
    """The day that was asked about, else today."""
    return datetime.datetime.now().astimezone().date() if on is None else on.date()


def project_at(
    path: Path, library: RuleLibrary, *, on: datetime.date, database: str | None
) -> Project:
    """The project in a file; of a site's folder or an archive, as it stood at the end of a day.

    Raises FileError, ProjectError, RecordsError and LedgerError, each with the place.
    """
    from backspan.core.ledger.errors import LedgerError
    from backspan.core.ledger.fold import fold
    from backspan.exchange.files import FileError, load

    if not path.is_dir() and not is_archive(path):
        return load(path, library)
    folded = fold(entries_at(path, database=database), on=on)
    try:
        return folded.project
    except LedgerError as error:
        found = f"no site that was described by the end of {on}"
        raise FileError(path, found=found, expected="a later day, or a record of one") from error


def entries_at(path: Path, *, database: str | None) -> tuple[Entry, ...]:
    """The entries of a site's folder or of an archive, which is proven first.

    Raises RecordsError with the place.
    """
    from backspan.records.api import open_record, proven_archive

    if path.is_dir():
        with open_record(path, database=database) as record:
            return record.entries()
    return tuple(proven_archive(path).all_entries())


def is_archive(path: Path) -> bool:
    """Whether a file is an archive by its name or its first bytes."""
    from backspan.records.archive import looks_like_archive

    return path.suffix == ".tar" or looks_like_archive(path)
