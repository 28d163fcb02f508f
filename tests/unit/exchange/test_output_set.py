"""A set of results is in force whole or not at all, whatever stops the run that makes it."""

from __future__ import annotations

import errno
import subprocess
import sys
from collections.abc import Callable
from hashlib import sha256
from pathlib import Path
from typing import Any

import pytest

from backspan.exchange.files import FileError
from backspan.exchange.output_set import INDEX, OutputSet, refuse_unwritable, set_in_force

DAY = "2026-11-25"


def names(folder: Path) -> list[str]:
    """Everything in a folder."""
    return sorted(path.name for path in folder.iterdir())


def made(folder: Path, content: str, day: str = DAY) -> Path:
    """A finished set of one file."""
    with OutputSet(folder) as one:
        one.write("paper", "txt", content.encode())
        return one.finish(day, lambda name: f"all of {name}\n")


def fails(number: int) -> Callable[..., Any]:
    """What the system does where it refuses."""

    def refuse(*_: Any, **__: Any) -> Any:
        raise OSError(number, {errno.ENOSPC: "No space left on device"}.get(number, "Refused"))

    return refuse


def test_a_set_is_made_in_folders_that_were_not_there_and_named_by_its_day(tmp_path: Path) -> None:
    out = tmp_path / "a" / "out"
    assert made(out, "one") == out / f"{DAY}-1"
    assert names(out) == [f"{DAY}-1", INDEX]
    assert (out / f"{DAY}-1" / "paper.txt").read_text() == "one"
    assert (out / INDEX).read_text() == f"The set in force: {DAY}-1\nall of {DAY}-1\n"


def test_the_next_set_stands_beside_the_one_before_and_is_in_force(tmp_path: Path) -> None:
    made(tmp_path, "one")
    made(tmp_path, "two")
    made(tmp_path, "three", "2026-11-26")
    assert names(tmp_path) == [f"{DAY}-1", f"{DAY}-2", "2026-11-26-1", INDEX]
    assert set_in_force(tmp_path) == "2026-11-26-1"
    assert (tmp_path / f"{DAY}-1" / "paper.txt").read_text() == "one"


def test_the_sum_of_each_file_is_kept(tmp_path: Path) -> None:
    with OutputSet(tmp_path) as one:
        one.write("paper", "txt", b"abc")
        assert one.sums == {"paper.txt": sha256(b"abc").hexdigest()}


def test_no_file_takes_the_name_of_another(tmp_path: Path) -> None:
    with OutputSet(tmp_path) as one:
        written = [one.write(stem, "svg", b"") for stem in ("S1", "s1", "S1")]
    assert written == ["S1.svg", "s1-2.svg", "S1-3.svg"]


@pytest.mark.parametrize("stem", ["../x", "a/x", "/x"])
def test_no_file_is_written_elsewhere(tmp_path: Path, stem: str) -> None:
    with (
        pytest.raises(FileError, match="a name that leads elsewhere; expected a file name alone"),
        OutputSet(tmp_path / "out") as one,
    ):
        one.write(stem, "txt", b"")
    assert names(tmp_path) == []


def test_what_is_not_finished_is_taken_away_with_the_folders_made_for_it(tmp_path: Path) -> None:
    with OutputSet(tmp_path / "a" / "b") as one:
        one.write("paper", "txt", b"half")
        assert len(names(tmp_path / "a" / "b")) == 2
    assert names(tmp_path) == []


STOPPED_BY = {
    "a full disk while a file is written": ("os.fsync", errno.ENOSPC),
    "a folder that may not be renamed": ("pathlib.Path.rename", errno.EACCES),
    "an index that may not be replaced": ("pathlib.Path.replace", errno.EACCES),
}


@pytest.mark.parametrize("what", STOPPED_BY)
def test_the_set_before_stays_in_force(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, what: str
) -> None:
    made(tmp_path, "one")
    name, number = STOPPED_BY[what]
    with monkeypatch.context() as patched:
        patched.setattr(name, fails(number))
        with pytest.raises(FileError, match="expected a f"):
            made(tmp_path, "two")
    assert names(tmp_path) == [f"{DAY}-1", INDEX]
    assert set_in_force(tmp_path) == f"{DAY}-1"


def test_a_full_disk_is_told_by_the_name_of_the_file(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("os.fsync", fails(errno.ENOSPC))
    with pytest.raises(FileError, match=r"paper\.txt: no space left on device; expected a file"):
        made(tmp_path, "two")


def test_an_index_that_is_a_folder_is_refused_and_the_set_taken_away(tmp_path: Path) -> None:
    (tmp_path / INDEX).mkdir()
    with pytest.raises(FileError, match=r"current\.txt: .*; expected a file that can be written"):
        made(tmp_path, "one")
    assert names(tmp_path) == [INDEX]


@pytest.mark.parametrize("below", ["", "below"])
def test_a_place_that_is_no_folder_is_refused_before_any_work(tmp_path: Path, below: str) -> None:
    file = tmp_path / "file"
    file.touch()
    with pytest.raises(FileError, match="expected a folder that can be written to"):
        refuse_unwritable(file / below)
    with pytest.raises(FileError, match="expected a folder that can be written to"):
        made(file / below, "x")


def test_looking_whether_a_folder_would_do_makes_none(tmp_path: Path) -> None:
    refuse_unwritable(tmp_path / "a" / "b")
    assert names(tmp_path) == []


KILLED = """
import os, signal, sys
from pathlib import Path
from backspan.exchange.output_set import OutputSet
with OutputSet(Path(sys.argv[1])) as one:
    one.write("paper", "txt", b"half")
    if len(sys.argv) > 2:
        print("made", flush=True)
        sys.stdin.read()
    os.kill(os.getpid(), signal.SIGKILL)
"""


def test_what_a_killed_run_left_goes_at_the_next(tmp_path: Path) -> None:
    made(tmp_path, "one")
    subprocess.run([sys.executable, "-c", KILLED, str(tmp_path)], check=False)
    left = [name for name in names(tmp_path) if name.startswith(".unfinished-")]
    assert len(left) == 2
    assert set_in_force(tmp_path) == f"{DAY}-1"
    made(tmp_path, "two")
    assert names(tmp_path) == [f"{DAY}-1", f"{DAY}-2", INDEX]


def test_what_a_run_that_lives_makes_is_left_alone(tmp_path: Path) -> None:
    command = [sys.executable, "-c", KILLED, str(tmp_path), "wait"]
    with subprocess.Popen(command, stdin=subprocess.PIPE, stdout=subprocess.PIPE) as other:
        assert other.stdout is not None
        assert other.stdin is not None
        assert other.stdout.readline() == b"made\n"
        made(tmp_path, "one")
        left = [name for name in names(tmp_path) if name.startswith(".unfinished-")]
        other.stdin.close()
    assert len(left) == 2


def test_what_a_person_put_there_stays(tmp_path: Path) -> None:
    (tmp_path / "notes.txt").write_text("mine")
    (tmp_path / ".unfinished-business").mkdir()
    made(tmp_path, "one")
    assert names(tmp_path) == [".unfinished-business", f"{DAY}-1", INDEX, "notes.txt"]
