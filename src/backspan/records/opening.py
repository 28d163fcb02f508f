"""Opens ledgers: finds out what is there, makes what is not, and refuses what is another's."""

from __future__ import annotations

from pathlib import Path

from backspan.records.errors import (
    NotAStoreError,
    StoreFormatError,
    StoreMissingError,
    StoreSiteError,
)
from backspan.records.port import APPEND_ONLY, FORMAT, Database
from backspan.records.postgres import PostgresDatabase, read_address
from backspan.records.sqlite import SqliteDatabase
from backspan.records.store import Ledger

_SCHEMES = ("postgresql://", "postgres://")


def open_ledger(where: str | Path, site: str | None = None) -> Ledger:
    """The ledger at an address of PostgreSQL, or in a file.

    With a site it is made where there is none; without, it must be there. Raises StoreError: its
    subclasses say whether it is missing, of another site, of a newer program, locked or damaged.
    """
    if isinstance(where, str) and where.startswith(_SCHEMES):
        return open_postgres(where, site)
    return open_sqlite(Path(where), site)


def open_sqlite(path: Path, site: str | None = None) -> Ledger:
    """The ledger in a file. Makes and raises as `open_ledger` does."""
    return opened(SqliteDatabase(path, make=site is not None), site=site)


def open_postgres(url: str, site: str | None = None) -> Ledger:
    """The ledger in a database that is there. Makes and raises as `open_ledger` does."""
    return opened(PostgresDatabase(read_address(url)), site=site)


def opened(database: Database, *, site: str | None) -> Ledger:
    """The ledger in a database, which is closed where it is refused."""
    try:
        if not database.table_names():
            _make(database, site)
        return Ledger(database, site=_checked(database, site))
    except BaseException:
        database.close()
        raise


def _make(database: Database, site: str | None) -> None:
    if site is None:
        raise StoreMissingError(database.where, found="no ledger", expected="one that was made")
    if not site or "\0" in site:
        raise StoreSiteError(database.where, found=f"the site {site!r}", expected="a name")
    with database.writing():
        # Another program may have made it while this one waited.
        if database.table_names():
            return
        for statement in database.tables:
            database.run(statement)
        database.run(
            "INSERT INTO about (format, site) VALUES (:format, :site)", format=FORMAT, site=site
        )


def _checked(database: Database, site: str | None) -> str:
    """The site of a ledger that is there, and that this program can use."""
    if "about" not in database.table_names():
        raise NotAStoreError(
            database.where, found="tables of something else", expected="a ledger or an empty place"
        )
    rows = database.run("SELECT format, site FROM about")
    if len(rows) != 1:
        raise NotAStoreError(
            database.where, found=f"{len(rows)} rows about it", expected="one: format and site"
        )
    number, its_site = rows[0]
    if number > FORMAT:
        raise StoreFormatError(
            database.where,
            found=f"format {number}, made by a newer program",
            expected=f"format {FORMAT} or lower",
        )
    absent = sorted(set(APPEND_ONLY) - database.table_names())
    if absent:
        raise NotAStoreError(
            database.where, found=f"no table {', '.join(absent)}", expected="all tables of a ledger"
        )
    if site is not None and site != its_site:
        raise StoreSiteError(
            database.where, found=f"a ledger of {its_site!r}", expected=f"one of {site!r}"
        )
    return str(its_site)
