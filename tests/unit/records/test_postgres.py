"""What only a server can do: run full, go away and come back."""

from __future__ import annotations

import signal
from collections.abc import Iterator

import pytest
from pg8000.exceptions import DatabaseError, InterfaceError

from backspan.core.ledger.chain import Chains
from backspan.records import postgres
from backspan.records.errors import (
    StoreError,
    StoreFullError,
    StoreMissingError,
    StoreUnreachableError,
)
from backspan.records.opening import open_postgres, opened
from backspan.records.postgres import PostgresDatabase, read_address
from tests.postgres_server import Server, running_server
from tests.unit.core.ledger.writing import SITE, written
from tests.unit.records.places import CAME


@pytest.fixture
def own_server() -> Iterator[Server]:
    """A server that a test may stop."""
    with running_server() as one:
        yield one


def test_a_server_that_runs_full_keeps_nothing_half(server: Server) -> None:
    database = PostgresDatabase(read_address(server.database()))
    ledger = opened(database, site=SITE)
    chains = Chains(SITE)
    raws = [written(chains, "pad").raw for _ in range(3)]
    database.run(
        "CREATE FUNCTION full_now() RETURNS trigger LANGUAGE plpgsql AS"
        " 'BEGIN RAISE EXCEPTION ''could not extend'' USING ERRCODE = ''53100''; END'"
    )
    database.run(
        "CREATE TRIGGER full_now BEFORE INSERT ON entries FOR EACH ROW"
        " WHEN (NEW.place = 3) EXECUTE FUNCTION full_now()"
    )
    with pytest.raises(StoreFullError, match="found could not extend, expected room"):
        ledger.append(raws, received=CAME)
    assert ledger.last() is None
    assert ledger.chains.links == {}
    database.run("DROP TRIGGER full_now ON entries")
    assert len(ledger.append(raws, received=CAME)) == 3
    ledger.close()


def test_no_table_is_emptied(server: Server) -> None:
    database = PostgresDatabase(read_address(server.database()))
    opened(database, site=SITE)
    with pytest.raises(StoreError, match="rows of entries are only added"):
        database.run("TRUNCATE entries")
    with pytest.raises(StoreError, match="about_once"):
        database.run("INSERT INTO about (format, site) VALUES (0, 'x')")
    database.close()


def test_a_database_that_is_not_there_is_told(server: Server) -> None:
    url = server.database()
    with pytest.raises(StoreMissingError, match=r'database "absent_\d+" does not exist'):
        open_postgres(url.replace("/ledger_", "/absent_"), SITE)


def test_a_server_that_hangs_up_before_our_goodbye_is_still_understood(
    server: Server, monkeypatch: pytest.MonkeyPatch
) -> None:
    """It says why it lets nobody in and closes; the library's goodbye then finds a broken pipe."""
    refusal = DatabaseError({"S": "FATAL", "C": "3D000", "M": "no such database"})
    hung_up = BrokenPipeError(32, "Broken pipe")
    hung_up.__context__ = refusal
    error = InterfaceError("network error")
    error.__cause__ = hung_up

    def connection(*_: object, **__: object) -> None:
        raise error

    monkeypatch.setattr(postgres, "Connection", connection)
    with pytest.raises(StoreMissingError, match="no such database"):
        PostgresDatabase(read_address(server.database()))


def test_a_commit_is_written_before_it_is_told(server: Server) -> None:
    database = PostgresDatabase(read_address(server.database()))
    assert database.run("SHOW synchronous_commit") == [("on",)]
    assert database.run("SHOW lock_timeout") == [("10s",)]
    database.close()


def test_a_transaction_never_goes_on_over_a_new_connection(server: Server) -> None:
    url = server.database()
    database, other = (PostgresDatabase(read_address(url)) for _ in range(2))
    database.run("CREATE TABLE rooms (name TEXT)")
    (number,) = database.run("SELECT pg_backend_pid()")[0]

    def go_on() -> None:
        with database.writing():
            other.run(f"SELECT pg_terminate_backend({number}, 5000)")
            with pytest.raises(StoreUnreachableError, match="expected a server that"):
                database.run("INSERT INTO rooms VALUES ('first')")
            database.run("INSERT INTO rooms VALUES ('second')")

    with pytest.raises(StoreUnreachableError, match="broke within a transaction"):
        go_on()
    assert database.run("SELECT * FROM rooms") == []
    database.close()
    other.close()


@pytest.mark.slow
def test_what_was_acknowledged_is_there_after_the_server_was_killed(own_server: Server) -> None:
    ledger = open_postgres(own_server.database(), SITE)
    chains = Chains(SITE)
    first, second = (written(chains, "pad").raw for _ in range(2))
    ledger.append([first], received=CAME)
    own_server.stop(signal.SIGQUIT)
    with pytest.raises(StoreUnreachableError, match="expected a server that"):
        ledger.append([second], received=CAME)
    own_server.start()
    assert [one.place for one in ledger.append([first, second], received=CAME)] == [1, 2]
    ledger.close()
