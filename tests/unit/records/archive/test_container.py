"""Files that are no archive, or not only one: told of, no traceback, and nothing unpacked."""

from __future__ import annotations

import io
import random
import tarfile
from pathlib import Path

import pytest

from backspan.records.archive import ArchiveDamagedError, layout, read_archive, verify_stream
from backspan.records.archive.manifest import BEGINS
from tests.unit.records.archive.content import holds, kept, members_of, tar_of


def told(raw: bytes) -> list[str]:
    """All that is found in these bytes, as text."""
    return [str(one) for one in verify_stream(io.BytesIO(raw), holds=holds).damage]


def refused(folder: Path, raw: bytes, match: str) -> None:
    """Both the proof and the reader say so, and nothing appears beside the file."""
    assert any(match in one for one in told(raw)), told(raw)
    with pytest.raises(ArchiveDamagedError, match="archive: "):
        read_archive(kept(folder, raw))
    assert [one.name for one in folder.iterdir()] == ["kept.tar"]


@pytest.mark.parametrize(
    ("raw", "match"),
    [
        (b"", "an empty file"),
        (b"no tar at all", "no member in its 13 bytes"),
        (bytes(10_240), "no member in its 10,240 bytes"),
        (b"\xff" * 5_000, "no member"),
        (layout.MAGIC * 5_000, "no member"),
        (BEGINS.ljust(layout.BLOCK, b"1") * 4_000, "no member"),
    ],
)
def test_a_file_that_is_no_archive(tmp_path: Path, raw: bytes, match: str) -> None:
    refused(tmp_path, raw, match)


@pytest.mark.parametrize("of_eight", range(8))
def test_a_file_cut_short(tmp_path: Path, whole: bytes, of_eight: int) -> None:
    length = len(whole) * of_eight // 8 + 600
    refused(tmp_path, whole[:length], "is not there")


@pytest.mark.parametrize("missing", [1, 511, 512, 1023, 1024])
def test_end_blocks_cut_short(tmp_path: Path, whole: bytes, missing: int) -> None:
    refused(tmp_path, whole[:-missing], "end of archive: its end blocks differs")


@pytest.mark.parametrize("more", [b"\0", b"x", bytes(9_000)])
def test_bytes_after_the_end(tmp_path: Path, whole: bytes, more: bytes) -> None:
    refused(tmp_path, whole + more, f"end of archive: {len(more):,} bytes more")


def test_bytes_before_the_start(tmp_path: Path, whole: bytes) -> None:
    refused(tmp_path, bytes([1]) + whole, "no header of a member that may follow on nothing")


def test_bytes_taken_out_of_the_middle_leave_the_rest_readable(
    tmp_path: Path, whole: bytes
) -> None:
    at = whole.index(b'"sequence":20')
    raw = whole[:at] + whole[at + 700 :]
    refused(tmp_path, raw, "entries.jsonl: ")
    assert not any(one.startswith(layout.EVIDENCE) for one in told(raw))


@pytest.mark.parametrize(
    "name", ["../outside.txt", "/outside.txt", "evidence/short", "more.txt", "evidence/../x"]
)
def test_a_member_of_another_name(tmp_path: Path, whole: bytes, name: str) -> None:
    members = members_of(whole)
    manifest = members.pop(layout.MANIFEST)
    raw = tar_of(members | {name: b"x", layout.MANIFEST: manifest})
    refused(tmp_path, raw, "no header of a member that may follow on evidence/")


def test_members_in_another_order_or_twice(tmp_path: Path, whole: bytes) -> None:
    members = members_of(whole)
    swapped = {layout.ENTRIES: members[layout.ENTRIES], **dict(members)}
    refused(tmp_path, tar_of(swapped), "README.txt: ")
    end = len(layout.END_BLOCKS)
    twice = whole[:-end] + tar_of({layout.MANIFEST: members[layout.MANIFEST]})
    refused(tmp_path, twice, "end of archive: ")


@pytest.mark.parametrize("kind", [tarfile.SYMTYPE, tarfile.LNKTYPE, tarfile.DIRTYPE, b"x", b"g"])
def test_links_folders_and_extensions(tmp_path: Path, whole: bytes, kind: bytes) -> None:
    info = tarfile.TarInfo(layout.README)
    info.type, info.linkname = kind, "elsewhere"
    block = info.tobuf(tarfile.USTAR_FORMAT)
    refused(tmp_path, block + whole, "no header of a member that may follow on nothing")


def test_a_size_beyond_the_file(tmp_path: Path, whole: bytes) -> None:
    raw = layout.header(layout.README, layout.MOST_SIZE) + whole[layout.BLOCK :]
    refused(tmp_path, raw, "README.txt: its header differs at byte")
    alone = layout.header(layout.README, layout.MOST_SIZE)
    refused(tmp_path, alone, "README.txt: the file ends at byte 512")


@pytest.mark.parametrize("name", [layout.HEADS, layout.RECEIPTS, layout.MANIFEST, layout.ENTRIES])
def test_a_required_member_that_is_missing(tmp_path: Path, whole: bytes, name: str) -> None:
    members = members_of(whole)
    del members[name]
    refused(tmp_path, tar_of(members), f"{name}: is not there")


def test_a_manifest_sealed_anew_with_impossible_rows_is_told(tmp_path: Path, whole: bytes) -> None:
    members = members_of(whole)
    broken = members[layout.MANIFEST].replace(b'"format":1', b'"format":2')
    refused(tmp_path, tar_of(members | {layout.MANIFEST: broken}), "its seal is not the hash")
    for raw in (b"", b"{}", b"\xff", b"[" * 100_000, b'{"entries":1}'):
        refused(tmp_path, tar_of(members | {layout.MANIFEST: raw}), "manifest.json: ")


def test_an_archive_kept_as_evidence_in_a_broken_one_is_not_taken_for_it(whole: bytes) -> None:
    raw = bytearray(whole)
    raw[len(whole) - 1_100 - 512] ^= 1
    members = members_of(whole)
    name = layout.EVIDENCE + "f" * 64
    manifest = members.pop(layout.MANIFEST)
    outer = tar_of(members | {name: bytes(raw), layout.MANIFEST: manifest[:-1]})
    found = told(outer)
    assert any(one.startswith(f"{name}: its content has the hash") for one in found)
    assert any(one.startswith("manifest.json: cannot be read") for one in found)


@pytest.mark.parametrize("seed", range(40))
def test_random_damage_is_told_and_never_raises(whole: bytes, seed: int) -> None:
    chance = random.Random(seed)  # noqa: S311 - a draw anyone can repeat
    raw = bytearray(whole)
    for _ in range(chance.randrange(1, 12)):
        at, length = chance.randrange(len(raw)), chance.choice([1, 3, 512, 5_000])
        how = chance.randrange(3)
        if how == 0:
            raw[at : at + length] = chance.randbytes(length)
        elif how == 1:
            del raw[at : at + length]
        else:
            raw[at:at] = raw[length : 2 * length]
    assert told(bytes(raw))
