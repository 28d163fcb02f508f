"""A ledger in one SQLite file: the rollback journal, every commit on the disk before it returns.

The write-ahead log is never used: versions in wide use can lose commits with it. `synchronous` is
EXTRA, which is FULL and the folder too: with FULL alone a power cut right after a commit may bring
its journal back, and undo what was acknowledged. A transaction takes the write lock at its start:
one that starts as a reader can be refused halfway.
"""

from __future__ import annotations

import contextlib
import sqlite3
from collections.abc import Iterator, Sequence
from pathlib import Path
from typing import Any

from backspan.records.errors import (
    NotAStoreError,
    StoreDamagedError,
    StoreError,
    StoreFullError,
    StoreLockedError,
    StoreMissingError,
)
from backspan.records.port import APPEND_ONLY, tables

#: Seconds to wait for another writer.
PATIENCE = 10.0
#: The lower byte of an error code is its kind; what is above says more than we need.
_KIND = 0xFF
#: By kind of error: ours, and what was expected.
_KINDS: dict[int, tuple[type[StoreError], str]] = {
    sqlite3.SQLITE_FULL: (StoreFullError, "room for what is to be kept"),
    sqlite3.SQLITE_BUSY: (StoreLockedError, "no other program that writes for so long"),
    sqlite3.SQLITE_LOCKED: (StoreLockedError, "no other program that writes for so long"),
    sqlite3.SQLITE_NOTADB: (NotAStoreError, "a ledger in an SQLite file"),
    sqlite3.SQLITE_CORRUPT: (StoreDamagedError, "a whole SQLite file"),
}


class SqliteDatabase:
    """The file at `path`; made when it is not there and `make` says so.

    One connection, which threads may share if only one uses it at a time.
    """

    def __init__(self, path: Path, *, make: bool, patience: float = PATIENCE) -> None:
        self.where = str(path)
        if not make and not path.exists():
            raise StoreMissingError(self.where, found="no file", expected="a ledger")
        with self._told():
            self._connection = sqlite3.connect(
                path, timeout=patience, isolation_level=None, check_same_thread=False
            )
        try:
            self._set_up()
        except BaseException:
            self._connection.close()
            raise

    @property
    def tables(self) -> Sequence[str]:
        """The statements that make the tables, and triggers that let rows only be added."""
        return (*tables(blob="BLOB", whole="INTEGER"), *_guards())

    def table_names(self) -> frozenset[str]:
        """The tables that are there."""
        rows = self.run("SELECT name FROM sqlite_master WHERE type = 'table'")
        return frozenset(name for (name,) in rows)

    @contextlib.contextmanager
    def writing(self) -> Iterator[None]:
        """A transaction of the only writer."""
        self.run("BEGIN IMMEDIATE")
        try:
            yield
            self.run("COMMIT")
        except BaseException:
            # A full disk ends the transaction by itself.
            if self._connection.in_transaction:
                self.run("ROLLBACK")
            raise

    def run(self, statement: str, **values: object) -> list[tuple[Any, ...]]:
        """Run one statement with its named values; the rows it gives."""
        with self._told():
            return self._connection.execute(statement, values).fetchall()

    def close(self) -> None:
        """Close the file."""
        self._connection.close()

    def _set_up(self) -> None:
        self.run("PRAGMA synchronous = EXTRA")
        (mode,) = self.run("PRAGMA journal_mode")[0]
        if mode != "delete":
            (mode,) = self.run("PRAGMA journal_mode = DELETE")[0]
        if mode != "delete":
            raise StoreError(self.where, found=f"the journal mode {mode}", expected="delete")

    @contextlib.contextmanager
    def _told(self) -> Iterator[None]:
        """Tell an error of SQLite as one of ours."""
        try:
            yield
        except sqlite3.Error as error:
            code = getattr(error, "sqlite_errorcode", sqlite3.SQLITE_ERROR) & _KIND
            kind, expected = _KINDS.get(code, (StoreError, "a ledger that can be read and written"))
            raise kind(self.where, found=str(error), expected=expected) from error


def _guards() -> Iterator[str]:
    for name in APPEND_ONLY:
        for change in ("UPDATE", "DELETE"):
            yield (
                f"CREATE TRIGGER {name}_no_{change.lower()} BEFORE {change} ON {name}"
                f" BEGIN SELECT RAISE(ABORT, 'rows of {name} are only added'); END"
            )
    # `INSERT OR REPLACE` takes rows out and asks no trigger of DELETE.
    for name, key in (("entries", "place"), ("set_aside", "number")):
        yield _once(name, f"{key} = NEW.{key} OR entry = NEW.entry")
    yield _once("heads", "number = NEW.number")
    yield _once("about", "1")


def _once(name: str, there: str) -> str:
    is_there = f"EXISTS (SELECT 1 FROM {name} WHERE {there})"  # noqa: S608 - names of our own
    return (
        f"CREATE TRIGGER {name}_once BEFORE INSERT ON {name} WHEN {is_there}"
        f" BEGIN SELECT RAISE(ABORT, 'rows of {name} are only added'); END"
    )
