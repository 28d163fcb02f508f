"""Databases by where they are, and times of the tests."""

from __future__ import annotations

from pathlib import Path

from backspan.records.port import Database
from backspan.records.postgres import PostgresDatabase, read_address
from backspan.records.sqlite import SqliteDatabase

CAME = "2026-11-28T10:00:05+00:00"
LATER = "2026-11-28T10:00:09+00:00"


def database_at(where: str, *, patience: float = 10.0) -> Database:
    """The database at a path or an address."""
    if where.startswith("postgresql://"):
        return PostgresDatabase(read_address(where), patience=patience)
    return SqliteDatabase(Path(where), make=True, patience=patience)
