"""The two databases that every test of a ledger is run against."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from backspan.records.opening import opened
from backspan.records.port import Database
from backspan.records.store import Ledger
from tests.postgres_server import Server, running_server
from tests.unit.core.ledger.writing import SITE
from tests.unit.records.places import database_at


@pytest.fixture(scope="session")
def server() -> Iterator[Server]:
    with running_server() as one:
        yield one


@pytest.fixture(params=["sqlite", "postgres"])
def where(request: pytest.FixtureRequest, tmp_path: Path) -> str:
    """Where a ledger may be made: a file's path or an address."""
    if request.param == "sqlite":
        return str(tmp_path / "ledger.db")
    found: Server = request.getfixturevalue("server")
    return found.database()


@pytest.fixture
def database(where: str) -> Iterator[Database]:
    """The database below a ledger, to look behind its back."""
    one = database_at(where)
    yield one
    one.close()


@pytest.fixture
def ledger(database: Database) -> Ledger:
    """A new ledger in that database."""
    return opened(database, site=SITE)
