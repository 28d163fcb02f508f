"""The record of a site as one folder: made, opened, written as an archive, brought back."""

from __future__ import annotations

import io
from pathlib import Path

import pytest

from backspan.core.ledger.bodies import UseStopped
from backspan.records.api import (
    DEVICE,
    EVIDENCE,
    LEDGER,
    SiteRecord,
    make_record,
    open_record,
    restore_record,
)
from backspan.records.archive import ArchiveDamagedError, EvidenceAbsentError
from backspan.records.errors import (
    EvidenceMissingError,
    FolderError,
    FolderTakenError,
    MomentError,
    NoRecordError,
    StoreError,
    StoreSiteError,
)
from backspan.records.store import Statement
from tests.postgres_server import Server
from tests.unit.core.ledger.writing import ENGINEER, SITE
from tests.unit.records.places import CAME, LATER

STOP = Statement(UseStopped(("S1",), "hail"), ENGINEER)


@pytest.fixture
def record(tmp_path: Path) -> SiteRecord:
    """A record with two entries, one of which rests on a photograph."""
    made = make_record(tmp_path / "site", SITE)
    photo = made.evidence.keep(io.BytesIO(b"a photograph"))
    made.say([STOP, Statement(STOP.body, ENGINEER, (photo,))], at=CAME)
    return made


def archived(record: SiteRecord, name: str = "site.tar") -> Path:
    """All of a record in one file."""
    path = record.folder.parent / name
    record.write_archive(path, at=LATER, project=b"{}")
    return path


def test_a_folder_is_the_same_device_whenever_it_is_opened(record: SiteRecord) -> None:
    with open_record(record.folder) as again:
        (entry,) = again.say([STOP], at=LATER)
    assert entry.name == f"{record.device} 3"
    assert [one.envelope.sequence for one in record.entries()] == [1, 2, 3]


def test_a_folder_with_something_else_in_it_is_left_alone(tmp_path: Path) -> None:
    (tmp_path / "notes.txt").write_text("mine")
    with pytest.raises(FolderTakenError, match="expected a new or empty folder"):
        make_record(tmp_path, SITE)
    with pytest.raises(NoRecordError, match="no record of a site"):
        open_record(tmp_path)
    with pytest.raises(NoRecordError, match="absent: found no record"):
        open_record(tmp_path / "absent")
    assert [path.name for path in tmp_path.iterdir()] == ["notes.txt"]


def test_a_record_that_stopped_half_made_is_made_whole(record: SiteRecord) -> None:
    (record.folder / LEDGER).unlink()
    with make_record(record.folder, SITE) as again:
        assert again.device == record.device
        assert again.entries() == ()


def test_a_record_of_another_site_is_refused(record: SiteRecord) -> None:
    with pytest.raises(StoreSiteError, match="expected one of 'elsewhere'"):
        make_record(record.folder, "elsewhere")


def test_a_device_without_a_name_is_refused(record: SiteRecord) -> None:
    (record.folder / DEVICE).write_bytes(b"\xff")
    with pytest.raises(FolderError, match="expected the one of this device"):
        open_record(record.folder)


def test_an_entry_on_evidence_that_is_not_here_is_refused(record: SiteRecord) -> None:
    with pytest.raises(EvidenceMissingError, match="found no evidence"):
        record.say([Statement(STOP.body, ENGINEER, ("0" * 64,))], at=LATER)
    assert len(record.entries()) == 2


def test_a_record_brought_back_is_the_one_that_was_under_another_device(
    record: SiteRecord,
) -> None:
    path = archived(record)
    with restore_record(path, record.folder.parent / "again") as again:
        assert again.entries() == record.entries()
        assert list(again.ledger.entries()) == list(record.ledger.entries())
        assert again.ledger.signed_heads() == record.ledger.signed_heads()
        assert again.evidence.all() == record.evidence.all()
        assert again.damage() == ()
        assert again.device != record.device
        assert again.key.public != record.key.public
        (mine,) = record.say([STOP], at=LATER)
        (theirs,) = again.say([STOP], at=LATER)
        assert record.take_archive(archived(again, "again.tar"), received=LATER) == 1
    assert [one.hash for one in record.entries()][-2:] == [mine.hash, theirs.hash]


def test_a_record_is_brought_back_into_a_database(record: SiteRecord, server: Server) -> None:
    path, url = archived(record), server.database()
    with restore_record(path, record.folder.parent / "again", database=url) as again:
        assert again.entries() == record.entries()
    with pytest.raises(StoreError, match="2 entries, expected a ledger that holds nothing"):
        restore_record(path, record.folder.parent / "more", database=url)
    assert not (record.folder.parent / "more").exists()


def test_a_damaged_archive_brings_nothing_back(record: SiteRecord) -> None:
    path = archived(record)
    raw = bytearray(path.read_bytes())
    raw[raw.index(b"hail")] ^= 1
    path.write_bytes(raw)
    with pytest.raises(ArchiveDamagedError, match=r"entries\.jsonl line 1"):
        restore_record(path, record.folder.parent / "again")
    with pytest.raises(ArchiveDamagedError, match="line 1"):
        record.take_archive(path, received=LATER)
    assert sorted(one.name for one in record.folder.parent.iterdir()) == ["site", "site.tar"]


def test_an_archive_does_not_go_over_what_is_there(record: SiteRecord) -> None:
    with pytest.raises(FolderTakenError, match="something there"):
        restore_record(archived(record), record.folder)
    assert len(record.entries()) == 2


def test_an_archive_of_another_site_is_refused(record: SiteRecord) -> None:
    other = make_record(record.folder.parent / "other", "elsewhere")
    other.say([STOP], at=CAME)
    with pytest.raises(StoreSiteError, match="an archive of 'elsewhere'"):
        record.take_archive(archived(other, "other.tar"), received=LATER)


def test_an_archive_with_a_missing_photograph_is_written_only_where_it_is_asked_for(
    record: SiteRecord,
) -> None:
    (photo,) = record.evidence.all()
    (record.folder / EVIDENCE / photo).unlink()
    with pytest.raises(EvidenceAbsentError, match=photo):
        archived(record)
    (damage,) = record.damage()
    assert damage.member == f"{EVIDENCE}/{photo}"
    assert "is not there" in damage.says


def test_a_photograph_that_was_changed_is_named(record: SiteRecord) -> None:
    (photo,) = record.evidence.all()
    (record.folder / EVIDENCE / photo).write_bytes(b"another")
    assert [one.member for one in record.damage()] == [f"{EVIDENCE}/{photo}"]


def test_a_record_without_entries_is_not_archived(tmp_path: Path) -> None:
    made = make_record(tmp_path / "site", SITE)
    with pytest.raises(StoreError, match="no entry yet"):
        archived(made)
    assert made.ledger.signed_heads() == ()


def test_what_cannot_be_written_leaves_the_record_as_it_was(record: SiteRecord) -> None:
    with pytest.raises(MomentError, match="with a time and its offset"):
        record.say([STOP], at="2026-11-28T10:00")
    assert len(record.entries()) == 2
