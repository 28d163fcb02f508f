"""A project file or an archive comes in by a page: looked at first, taken whole or not at all."""

from __future__ import annotations

from pathlib import Path

import pytest

from backspan.core.ledger.drop_states import State
from backspan.core.wire import to_data
from backspan.exchange.written import project_text
from backspan.records.api import SiteRecord, make_record
from tests.site.bench import NOON, Answer, Browser, browser, made
from tests.site.test_drop import in_service, state
from tests.site.typist import project_of
from tests.unit.core.rigs import PROJECT, put

AT = "/record/take-in"
TEXT = project_text(PROJECT).encode()
HEAVIER = project_text(put(PROJECT, ("kit", "hoists", "H", "mass", "value"), 60.0)).encode()


def sent(pages: Browser, content: bytes, does: str = "take", **fields: str) -> Answer:
    """A file handed in on the page."""
    return pages.upload(AT, AT, {"site.file": content}, into="file", does=does, **fields)


def test_an_empty_record_takes_a_project_that_a_person_of_it_states(
    new: Browser, empty: SiteRecord
) -> None:
    assert "take it in" in new.get("/set-up/").plain
    shown = sent(new, TEXT, "look", by="MT")
    assert "entries would be written, stated by M. Tape" in shown.plain
    assert empty.entries() == ()
    page = sent(new, TEXT, by="MT")
    assert page.status == 200, page.plain
    assert "Nobody may ride by this" in page.plain
    assert to_data(project_of(empty)) == to_data(PROJECT)
    assert {one.envelope.signer.person for one in empty.entries()} == {"MT"}


@pytest.mark.parametrize(
    ("content", "by", "told"),
    [
        (TEXT, "", "Who states it: found nothing"),
        (TEXT, "XX", "the file has no person 'XX'"),
        (b"\xff\xfe\x00", "MT", "which is no text (byte 0)"),
        (b"site: [", "MT", "site.file"),
        (b"format: '1'\nsite: 3\n", "MT", "site.file"),
        (b"", "MT", "site.file"),
        (b"x" * 257 + b"ustar" + b"x" * 600, "", "archive"),
    ],
)
def test_what_is_no_site_is_refused_whole(
    new: Browser, empty: SiteRecord, content: bytes, by: str, told: str
) -> None:
    answer = sent(new, content, by=by)
    assert answer.status == 400, answer.plain
    assert told in answer.plain
    assert empty.entries() == ()


def test_only_what_is_new_is_taken_and_what_falls_with_it_is_told(
    pages: Browser, record: SiteRecord
) -> None:
    in_service(pages, record)
    before = len(record.entries())
    assert "nothing new in the file" in sent(pages, TEXT).plain
    assert len(record.entries()) == before
    assert "1 entries would be written" in sent(pages, HEAVIER, "look").plain
    assert state(record) is State.IN_SERVICE
    page = sent(pages, HEAVIER)
    assert "Drop D is accepted no longer" in page.plain
    assert len(record.entries()) == before + 1
    assert state(record) is State.STOPPED


def test_nobody_takes_a_file_in_before_somebody_speaks(silent: Browser, record: SiteRecord) -> None:
    before = len(record.entries())
    answer = sent(silent, HEAVIER)
    assert answer.status == 400
    assert "Nobody said who speaks" in answer.plain
    assert len(record.entries()) == before


def archive_of(record: SiteRecord, path: Path) -> bytes:
    """A whole record as one file."""
    record.write_archive(path, at=NOON.isoformat(), project=None)
    return path.read_bytes()


def test_an_archive_of_the_site_brings_what_another_machine_wrote(
    pages: Browser, record: SiteRecord, tmp_path: Path
) -> None:
    in_service(pages, record)
    whole = archive_of(record, tmp_path / "site.tar")
    with make_record(tmp_path / "other", PROJECT.site.name) as other:
        there = browser(other)
        assert "proven whole" in sent(there, whole, "look").plain
        assert other.entries() == ()
        page = sent(there, whole)
        assert f"{len(record.entries())} entries that were not here yet" in page.plain
        assert [one.hash for one in other.entries()] == [one.hash for one in record.entries()]
        assert "was here already" in sent(there, whole).plain
        broken = bytearray(whole)
        broken[len(broken) // 2] ^= 1
        assert sent(there, bytes(broken)).status == 400
        assert len(other.entries()) == len(record.entries())


def test_an_archive_of_another_site_is_refused(pages: Browser, tmp_path: Path) -> None:
    with made(tmp_path / "far", put(PROJECT, ("site", "name"), "Far House")) as far:
        content = archive_of(far, tmp_path / "far.tar")
    answer = sent(pages, content)
    assert answer.status == 400
    assert "Far House" in answer.plain
