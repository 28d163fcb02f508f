"""The same content gives the same bytes; what fails leaves nothing behind."""

from __future__ import annotations

import errno
import io
import os
import resource
import subprocess
import tarfile
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path
from typing import Any, BinaryIO

import pytest

from backspan.records.archive import (
    ArchiveDamagedError,
    ArchiveError,
    Content,
    ContentError,
    EvidenceAbsentError,
    WritingError,
    layout,
    read_archive,
    verify,
    write_archive,
)
from tests.unit.records.archive.content import (
    EVIDENCE,
    FILES,
    PROJECT,
    content_of,
    entries_of,
    holds,
    kept,
    listed_anew,
    members_of,
    opened,
    receipts_of,
    signed,
    tar_of,
)


def test_the_same_content_gives_the_same_bytes(tmp_path: Path, whole: bytes) -> None:
    path = tmp_path / "again.tar"
    write_archive(path, content_of())
    assert path.read_bytes() == whole
    assert tar_of(members_of(whole)) == whole


def test_another_tar_program_reads_it(whole: bytes) -> None:
    with tarfile.open(fileobj=io.BytesIO(whole)) as tar:
        names = tar.getnames()
        photo = tar.extractfile(names[-2])
        assert photo is not None
        assert photo.read() in FILES
    assert names[:5] == [*layout.FIXED]
    assert names[5:] == [*(layout.EVIDENCE + one for one in sorted(EVIDENCE)), layout.MANIFEST]


def test_the_readme_tells_how_to_check_it_by_hand(tmp_path: Path, whole: bytes) -> None:
    path = kept(tmp_path, whole)
    subprocess.run(["tar", "xf", path.name], cwd=tmp_path, check=True)

    def by_hand(command: str) -> str:
        done = subprocess.run(
            ["bash", "-c", command], cwd=tmp_path, check=True, capture_output=True, text=True
        )
        return done.stdout[:64]

    told = " ".join((tmp_path / layout.README).read_text("ascii").split())
    seventh = "sed -n 7p entries.jsonl | tr -d '\\n' | sha256sum"
    seal = """sed 's/"seal":"[0-9a-f]*",//' manifest.json | sha256sum"""
    assert seventh in told
    assert seal in told
    archive = read_archive(path)
    receipts = list(archive.receipts())
    assert by_hand(seventh) == receipts[6].entry
    assert f'"seal":"{by_hand(seal)}"' in (tmp_path / layout.MANIFEST).read_text("utf-8")
    one = receipts[6]
    text = f'["{receipts[5].head}",7,"{one.entry}","{one.received}"]'
    assert by_hand(f"printf '%s' '{text}' | sha256sum") == one.head


def test_what_is_written_is_read(tmp_path: Path, whole: bytes) -> None:
    content = content_of()
    archive = read_archive(kept(tmp_path, whole))
    assert list(archive.entries()) == content.entries
    assert list(archive.receipts()) == content.receipts
    assert list(archive.heads) == content.heads
    assert archive.project == PROJECT
    assert archive.evidence == tuple(sorted(EVIDENCE))
    for name, photo in EVIDENCE.items():
        with archive.open_evidence(name) as stream:
            assert stream.read(10) == photo[:10]
            assert stream.read() == photo[10:]
    with pytest.raises(ArchiveError, match="no evidence of the hash 'x'"):
        archive.open_evidence("x")


def test_evidence_of_another_content_is_not_handed_out(tmp_path: Path, whole: bytes) -> None:
    name = min(EVIDENCE)
    place = whole.index(EVIDENCE[name])
    raw = whole[:place] + b"P" + whole[place + 1 :]
    archive = read_archive(kept(tmp_path, raw))
    with pytest.raises(ArchiveDamagedError, match="its content has the hash"):
        archive.open_evidence(name)


@pytest.mark.parametrize("name", [layout.README, layout.ENTRIES, layout.RECEIPTS, layout.PROJECT])
def test_a_changed_member_is_not_opened(tmp_path: Path, whole: bytes, name: str) -> None:
    at = whole.index(members_of(whole)[name])
    raw = whole[:at] + bytes([whole[at] ^ 1]) + whole[at + 1 :]
    with pytest.raises(ArchiveDamagedError, match=f"archive: {name}: found the hash"):
        read_archive(kept(tmp_path, raw))


def test_lines_that_are_none_are_named_by_the_reader(tmp_path: Path, whole: bytes) -> None:
    members = members_of(whole)
    bad = {layout.ENTRIES: b"x" * 5_000_000 + b"\n", layout.RECEIPTS: b"\n" * 3}
    archive = read_archive(kept(tmp_path, tar_of(listed_anew(members | bad, head="0" * 64))))
    with pytest.raises(ArchiveDamagedError, match=r"entries\.jsonl line 1: too long"):
        list(archive.entries())
    with pytest.raises(ArchiveDamagedError, match=r"receipts\.jsonl line 1: cannot be read"):
        list(archive.receipts())


def test_a_site_without_anything_is_an_archive_too(tmp_path: Path) -> None:
    path = tmp_path / "empty.tar"
    manifest = write_archive(path, Content("invented site", [], [], [], opened))
    assert verify(path, holds=holds).whole
    archive = read_archive(path)
    assert (list(archive.entries()), archive.project) == ([], None)
    assert archive.manifest == manifest


class Failing(io.BytesIO):
    """A file that cannot be read to its end."""

    def read(self, size: int | None = -1, /) -> bytes:
        """Some of it once, then nothing but an error."""
        if self.tell():
            raise OSError(errno.EIO, "made-up failure")
        return super().read(min(size or 0, 10))


def no_file(name: str) -> BinaryIO:
    """A store that cannot be reached."""
    raise OSError(errno.EIO, f"made-up failure of {name}")


def left_as_it_was(folder: Path, content: Content, error: type[Exception], match: str) -> None:
    """Writing raises the error; an archive that stood there stands as before, alone."""
    path = folder / "site.tar"
    path.write_bytes(b"an older one")
    with pytest.raises(error, match=match):
        write_archive(path, content)
    assert path.read_bytes() == b"an older one"
    assert list(folder.iterdir()) == [path]


def test_evidence_that_is_not_there_is_all_told(tmp_path: Path) -> None:
    first, *rest = sorted(EVIDENCE)

    def only_first(name: str) -> BinaryIO | None:
        return opened(name) if name == first else None

    content = replace(content_of(), evidence=only_first)
    left_as_it_was(tmp_path, content, EvidenceAbsentError, ", ".join(rest))
    path = tmp_path / "site.tar"
    write_archive(path, content, without_missing=True)
    report = verify(path, holds=holds)
    assert [one.member for one in report.damage] == [layout.EVIDENCE + name for name in rest]
    assert all("is not there" in one.says for one in report.damage)


@pytest.mark.parametrize(
    ("evidence", "error", "match"),
    [
        (lambda _: Failing(FILES[1]), WritingError, "cannot be read: .*made-up failure"),
        (no_file, WritingError, "cannot be read: .*made-up failure"),
        (lambda _: io.BytesIO(b"another"), ContentError, "its content has the hash"),
    ],
)
def test_evidence_that_fails_leaves_nothing_behind(
    tmp_path: Path,
    evidence: Callable[[str], BinaryIO | None],
    error: type[Exception],
    match: str,
) -> None:
    left_as_it_was(tmp_path, replace(content_of(), evidence=evidence), error, match)


def test_a_full_disk_leaves_nothing_behind(tmp_path: Path) -> None:
    content = content_of()
    soft, hard = resource.getrlimit(resource.RLIMIT_FSIZE)
    resource.setrlimit(resource.RLIMIT_FSIZE, (50_000, hard))
    try:
        left_as_it_was(tmp_path, content, WritingError, "site.tar: cannot be written")
    finally:
        resource.setrlimit(resource.RLIMIT_FSIZE, (soft, hard))


def test_a_disk_that_does_not_keep_it_leaves_nothing_behind(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def full(_: Any) -> None:
        raise OSError(errno.ENOSPC, "no space left")

    monkeypatch.setattr(os, "fsync", full)
    left_as_it_was(tmp_path, content_of(20), WritingError, "no space left")


def test_a_folder_that_is_not_there(tmp_path: Path) -> None:
    with pytest.raises(WritingError, match="cannot be written"):
        write_archive(tmp_path / "none" / "site.tar", content_of(20))


@pytest.mark.parametrize(
    ("change", "match"),
    [
        (lambda one: replace(one, site="elsewhere"), "line 1: of the site 'invented site'"),
        (lambda one: replace(one, entries=[b"{}"]), "entries.jsonl line 1: no entry"),
        (lambda one: replace(one, entries=one.entries[:-1]), "line 20: found a receipt of"),
        (lambda one: replace(one, receipts=one.receipts[:-1]), "line 20: found no receipt"),
        (lambda one: replace(one, receipts=one.receipts[1:]), "place 1: found the place 2"),
        (
            lambda one: replace(one, receipts=receipts_of(list(reversed(entries_of(20))))),
            "line 1: found a receipt of",
        ),
        (
            lambda one: replace(one, heads=[signed(replace(one.receipts[3], place=5))]),
            "the signed head of place 5",
        ),
        (
            lambda one: replace(one, heads=[signed(replace(one.receipts[3], place=21))]),
            "the signed head of place 21",
        ),
    ],
)
def test_what_does_not_prove_itself_is_not_written(
    tmp_path: Path, change: Callable[[Any], Content], match: str
) -> None:
    left_as_it_was(tmp_path, change(content_of(20)), ContentError, match)


def test_a_member_too_large_for_the_format(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(layout, "MOST_SIZE", 5_000)
    left_as_it_was(tmp_path, content_of(20), ContentError, "entries.jsonl: more than 5,000 bytes")
