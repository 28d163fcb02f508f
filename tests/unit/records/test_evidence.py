"""Files of evidence: named by their content, kept whole or not at all, never changed."""

from __future__ import annotations

import datetime
import hashlib
import io
import os
import resource
import signal
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest

from backspan.records.errors import (
    EvidenceDamagedError,
    EvidenceError,
    EvidenceFullError,
    EvidenceMissingError,
    MomentError,
)
from backspan.records.evidence import EvidenceFolder

PHOTO = b"a photograph of a tieback" * 10_000
NAME = hashlib.sha256(PHOTO).hexdigest()
NOW = "2026-11-28T10:00:00+01:00"
DAY = 86_400
#: Keeps what comes on its input, of which the test gives the beginning only.
UPLOAD = (
    "import sys; from pathlib import Path; from backspan.records.evidence import EvidenceFolder;"
    " EvidenceFolder(Path(sys.argv[1])).keep(sys.stdin.buffer)"
)


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


def last_written(path: Path, *, seconds_ago: int) -> None:
    """Give a file the time it would have if it was last written so long before now."""
    then = datetime.datetime.fromisoformat(NOW).timestamp() - seconds_ago
    os.utime(path, (then, then), follow_symlinks=False)


def unfinished(evidence: EvidenceFolder, name: str, *, seconds_ago: int) -> Path:
    path = evidence.folder / name
    path.parent.mkdir(exist_ok=True)
    path.write_bytes(PHOTO[:1000])
    last_written(path, seconds_ago=seconds_ago)
    return path


def killed_upload(folder: Path) -> Path:
    """What a run leaves that was killed in the middle of a file."""
    command = [sys.executable, "-c", UPLOAD, str(folder)]
    with subprocess.Popen(command, stdin=subprocess.PIPE, bufsize=0) as run:
        assert run.stdin is not None
        # More than a pipe takes: when all of it is given, its reader has begun to write.
        for _ in range(8):
            run.stdin.write(PHOTO)
        run.send_signal(signal.SIGKILL)
    (left,) = folder.iterdir()
    return left


def test_what_a_killed_upload_left_is_cleared_away_a_day_later(evidence: EvidenceFolder) -> None:
    left = killed_upload(evidence.folder)
    evidence.keep(io.BytesIO(PHOTO))
    last_written(left, seconds_ago=DAY)
    EvidenceFolder.opened(evidence.folder, now=NOW)
    assert left.exists()
    last_written(left, seconds_ago=DAY + 1)
    again = EvidenceFolder.opened(evidence.folder, now=NOW)
    assert [one.name for one in evidence.folder.iterdir()] == [NAME]
    again.check(NAME)


@pytest.mark.parametrize("seconds_ago", [-DAY, 0, DAY - 1])
def test_what_another_program_may_be_at_stays(evidence: EvidenceFolder, seconds_ago: int) -> None:
    left = unfinished(evidence, f".unfinished-{'0a' * 8}", seconds_ago=seconds_ago)
    EvidenceFolder.opened(evidence.folder, now=NOW)
    assert left.read_bytes() == PHOTO[:1000]


def test_nothing_else_is_cleared_away(evidence: EvidenceFolder) -> None:
    names = (NAME, ".unfinished-", f".unfinished-{'0A' * 8}", f"x.unfinished-{'0a' * 8}", "notes")
    others = [unfinished(evidence, name, seconds_ago=99 * DAY) for name in names]
    folder, link = (evidence.folder / f".unfinished-{sign * 16}" for sign in "bc")
    folder.mkdir()
    link.symlink_to("notes")
    for one in (folder, link):
        last_written(one, seconds_ago=99 * DAY)
    EvidenceFolder.opened(evidence.folder, now=NOW)
    assert set(evidence.folder.iterdir()) == {*others, folder, link}


def test_a_folder_is_opened_that_is_not_there_yet_and_a_time_is_needed(tmp_path: Path) -> None:
    one = EvidenceFolder.opened(tmp_path / "evidence", now=NOW)
    assert not one.folder.exists()
    assert one.keep(io.BytesIO(PHOTO)) == NAME
    with pytest.raises(MomentError, match="expected a day with a time and its offset"):
        EvidenceFolder.opened(one.folder, now="2026-11-28T10:00:00")


def test_a_folder_that_cannot_be_cleared_is_told(tmp_path: Path) -> None:
    (tmp_path / "evidence").touch()
    with pytest.raises(EvidenceError, match="expected a folder to read and write"):
        EvidenceFolder.opened(tmp_path / "evidence", now=NOW)
