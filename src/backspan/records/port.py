"""What the ledger asks of a database: a statement, a transaction that excludes other writers.

Both databases read the same SQL with named values (`:place`), so the ledger is written once.
"""

from __future__ import annotations

from collections.abc import Sequence
from contextlib import AbstractContextManager
from typing import Any, Protocol

#: The format number of the tables. A program refuses a ledger of a higher one.
FORMAT = 1
#: Tables of which a row is never changed or taken out; triggers hold that.
APPEND_ONLY = ("about", "entries", "set_aside", "heads")


class Database(Protocol):
    """One database that holds one ledger, or is to hold one. Raises StoreError of every kind."""

    @property
    def where(self) -> str:
        """The place as messages name it, without a password."""

    @property
    def tables(self) -> Sequence[str]:
        """The statements that make the tables and what guards them."""

    def table_names(self) -> frozenset[str]:
        """The tables that are there."""

    def writing(self) -> AbstractContextManager[None]:
        """A transaction of the only writer: committed at its end, undone when an error leaves it.

        Waits for another writer, and raises StoreLockedError after the time it was told to.
        """

    def run(self, statement: str, **values: object) -> list[tuple[Any, ...]]:
        """Run one statement with its named values; the rows it gives."""

    def close(self) -> None:
        """Let go of it. May be called twice."""


def tables(*, blob: str, whole: str) -> tuple[str, ...]:
    """The tables, given the database's words for bytes and for whole numbers."""
    columns = {
        "about": f"format {whole} PRIMARY KEY, site TEXT NOT NULL",
        "entries": f"place {whole} PRIMARY KEY, entry TEXT NOT NULL UNIQUE, received TEXT NOT NULL,"
        f" head TEXT NOT NULL, raw {blob} NOT NULL",
        "set_aside": f"number {whole} PRIMARY KEY, entry TEXT NOT NULL UNIQUE,"
        f" received TEXT NOT NULL, reason TEXT NOT NULL, raw {blob} NOT NULL",
        "heads": f"number {whole} PRIMARY KEY, site TEXT NOT NULL, place {whole} NOT NULL,"
        " head TEXT NOT NULL, at TEXT NOT NULL, key TEXT NOT NULL, signature TEXT NOT NULL",
    }
    return tuple(f"CREATE TABLE {name} ({columns[name]})" for name in APPEND_ONLY)
