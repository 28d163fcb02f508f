"""What only a file can do: fill up, be no database, be replaced row by row."""

from __future__ import annotations

import sqlite3
from pathlib import Path

import pytest

from backspan.core.ledger.chain import Chains
from backspan.core.ledger.receipts import following
from backspan.records.errors import NotAStoreError, StoreError, StoreFullError
from backspan.records.opening import open_sqlite, opened
from backspan.records.sqlite import PATIENCE, SqliteDatabase
from tests.unit.core.ledger.writing import SITE, written
from tests.unit.records.places import CAME

#: What SQLite answers for the mode EXTRA.
EXTRA = 3


@pytest.fixture
def path(tmp_path: Path) -> Path:
    return tmp_path / "ledger.db"


def test_the_file_is_set_up_so_that_a_commit_is_on_the_disk(path: Path) -> None:
    database = SqliteDatabase(path, make=True)
    assert database.run("PRAGMA journal_mode") == [("delete",)]
    assert database.run("PRAGMA synchronous") == [(EXTRA,)]
    assert database.run("PRAGMA busy_timeout") == [(PATIENCE * 1000,)]
    database.close()


def test_a_file_left_in_another_journal_mode_is_brought_back(path: Path) -> None:
    open_sqlite(path, SITE).close()
    other = sqlite3.connect(path)
    assert other.execute("PRAGMA journal_mode = WAL").fetchone() == ("wal",)
    other.close()
    with open_sqlite(path) as ledger:
        assert ledger.last() is None
    database = SqliteDatabase(path, make=False)
    assert database.run("PRAGMA journal_mode") == [("delete",)]
    database.close()


def test_a_full_disk_keeps_nothing_half_and_it_goes_on_when_there_is_room(path: Path) -> None:
    database = SqliteDatabase(path, make=True)
    ledger = opened(database, site=SITE)
    chains = Chains(SITE)
    first = written(chains, "pad").raw
    ledger.append([first], received=CAME)
    rest = [written(chains, "pad").raw for _ in range(200)]
    (pages,) = database.run("PRAGMA page_count")[0]
    (room,) = database.run("PRAGMA max_page_count")[0]
    database.run(f"PRAGMA max_page_count = {pages + 2}")
    with pytest.raises(StoreFullError, match="expected room for what is to be kept"):
        ledger.append(rest, received=CAME)
    assert [raw for _, raw in ledger.entries()] == [first]
    assert len(ledger.chains.links["pad"]) == 1
    database.run(f"PRAGMA max_page_count = {room}")
    assert ledger.append(rest, received=CAME)[-1].place == 201
    assert len(list(following(receipt for receipt, _ in ledger.entries()))) == 201
    assert database.run("PRAGMA integrity_check") == [("ok",)]
    ledger.close()


def test_a_file_that_is_no_database_is_refused_and_left_as_it_is(path: Path) -> None:
    path.write_bytes(b"drops: []\n" * 100)
    with pytest.raises(NotAStoreError, match=r"ledger\.db: found file is not a database"):
        open_sqlite(path, SITE)
    assert path.read_bytes() == b"drops: []\n" * 100


def test_an_empty_file_becomes_a_ledger(path: Path) -> None:
    path.touch()
    with open_sqlite(path, SITE) as ledger:
        assert ledger.site == SITE


def test_a_folder_that_is_not_there_is_told(tmp_path: Path) -> None:
    with pytest.raises(StoreError, match="unable to open database file"):
        open_sqlite(tmp_path / "absent" / "ledger.db", SITE)


@pytest.mark.parametrize("place", [1, 7])
def test_a_row_is_not_replaced_either(path: Path, place: int) -> None:
    """`INSERT OR REPLACE` takes the row out that has the same place, or the same entry."""
    with open_sqlite(path, SITE) as ledger:
        (receipt,) = ledger.append([written(Chains(SITE), "pad").raw], received=CAME)
    database = SqliteDatabase(path, make=False)
    with pytest.raises(StoreError, match="rows of entries are only added"):
        database.run(
            "INSERT OR REPLACE INTO entries (place, entry, received, head, raw)"
            " VALUES (:place, :entry, 'x', 'x', x'00')",
            place=place,
            entry=receipt.entry,
        )
    with pytest.raises(StoreError, match="rows of about are only added"):
        database.run("INSERT OR REPLACE INTO about (format, site) VALUES (1, 'x')")
    database.close()
