"""Files of evidence: named by their content, kept whole or not at all, never changed."""

from __future__ import annotations

import hashlib
import io
import resource
from collections.abc import Iterator
from pathlib import Path

import pytest

from backspan.records.errors import (
    EvidenceDamagedError,
    EvidenceError,
    EvidenceFullError,
    EvidenceMissingError,
)
from backspan.records.evidence import EvidenceFolder

PHOTO = b"a photograph of a tieback" * 10_000
NAME = hashlib.sha256(PHOTO).hexdigest()


@pytest.fixture
def evidence(tmp_path: Path) -> EvidenceFolder:
    return EvidenceFolder(tmp_path / "evidence")


@pytest.fixture
def little_room() -> Iterator[None]:
    """A system that lets no file grow beyond some bytes."""
    before = resource.getrlimit(resource.RLIMIT_FSIZE)
    resource.setrlimit(resource.RLIMIT_FSIZE, (1000, before[1]))
    yield
    resource.setrlimit(resource.RLIMIT_FSIZE, before)


class Breaking(io.BytesIO):
    """A stream that breaks off after its first piece."""

    def read(self, size: int | None = -1, /) -> bytes:
        if self.tell():
            raise TimeoutError("the phone is gone")
        return super().read(min(size or 0, 1000))


def test_what_is_kept_comes_back_under_its_hash(evidence: EvidenceFolder) -> None:
    assert evidence.keep(io.BytesIO(PHOTO)) == NAME
    assert evidence.has(NAME)
    assert evidence.all() == (NAME,)
    with evidence.open(NAME) as file:
        assert file.read() == PHOTO
    evidence.check(NAME)


def test_nothing_is_there_before_the_first_file(evidence: EvidenceFolder) -> None:
    assert evidence.all() == ()
    assert not evidence.has(NAME)


def test_what_is_here_is_not_written_again(evidence: EvidenceFolder) -> None:
    evidence.keep(io.BytesIO(PHOTO))
    before = (evidence.folder / NAME).stat()
    assert evidence.keep(io.BytesIO(PHOTO)) == NAME
    after = (evidence.folder / NAME).stat()
    assert (before.st_ino, before.st_mtime_ns) == (after.st_ino, after.st_mtime_ns)
    assert len(list(evidence.folder.iterdir())) == 1


def test_a_damaged_file_is_found_and_mended_by_the_same_content(evidence: EvidenceFolder) -> None:
    evidence.keep(io.BytesIO(PHOTO))
    (evidence.folder / NAME).write_bytes(PHOTO[:-1])
    with pytest.raises(EvidenceDamagedError, match=f"expected {NAME[:12]}"):
        evidence.check(NAME)
    evidence.keep(io.BytesIO(PHOTO))
    evidence.check(NAME)


@pytest.mark.usefixtures("little_room")
def test_a_full_disk_leaves_nothing_behind(evidence: EvidenceFolder) -> None:
    with pytest.raises(EvidenceFullError, match="expected room for it"):
        evidence.keep(io.BytesIO(PHOTO))
    assert list(evidence.folder.iterdir()) == []
    small = b"small"
    assert evidence.keep(io.BytesIO(small)) == hashlib.sha256(small).hexdigest()


def test_a_stream_that_breaks_leaves_nothing_behind(evidence: EvidenceFolder) -> None:
    with pytest.raises(TimeoutError, match="the phone is gone"):
        evidence.keep(Breaking(PHOTO))
    assert list(evidence.folder.iterdir()) == []


@pytest.mark.parametrize("name", [NAME, "", "../ledger.db", NAME.upper(), "/etc/passwd"])
def test_what_is_not_here_is_told_and_no_name_leads_elsewhere(
    evidence: EvidenceFolder, name: str
) -> None:
    evidence.keep(io.BytesIO(b"other"))
    assert not evidence.has(name)
    for ask in (evidence.open, evidence.check):
        with pytest.raises(EvidenceMissingError, match="expected"):
            ask(name)


def test_a_folder_that_is_a_file_is_told(tmp_path: Path) -> None:
    (tmp_path / "evidence").touch()
    with pytest.raises(EvidenceError, match="expected a folder to read and write"):
        EvidenceFolder(tmp_path / "evidence").keep(io.BytesIO(PHOTO))
