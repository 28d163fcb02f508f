"""A run that is killed or refused while it writes leaves a whole set in force, old or new."""

from __future__ import annotations

import random
import re
import resource
import signal
import subprocess
from pathlib import Path

import pytest

from tests.killed_runs import command, kill_once, whole_set

KILLS = 5


def test_a_killed_run_leaves_an_old_or_a_new_set_and_never_a_mix(tmp_path: Path) -> None:
    draw = random.Random("killed-runs")  # noqa: S311 - a draw anyone can repeat
    subprocess.run(command(tmp_path), check=True, capture_output=True)
    for _ in range(KILLS):
        assert kill_once(tmp_path, draw) in {"old", "new"}
    subprocess.run(command(tmp_path), check=True, capture_output=True)
    whole_set(tmp_path)
    assert list(tmp_path.glob(".unfinished-*")) == []


@pytest.mark.parametrize(
    ("most", "told"),
    [
        (
            100_000,
            r"/(section|details)-D\.dxf: file too large; expected a file that can be written$",
        ),
        (390_000, r"/review\.json: file too large; expected a file that can be written$"),
        (20_000, r"/data\.json: file too large; expected files and outputs that can be"),
    ],
)
def test_where_the_system_refuses_half_a_file_the_set_before_stays_whole(
    tmp_path: Path, most: int, told: str
) -> None:
    """A limit on the size of a file stops the writing in its middle, as a full disk does."""

    def no_larger_file() -> None:
        signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
        resource.setrlimit(resource.RLIMIT_FSIZE, (most, most))

    subprocess.run(command(tmp_path), check=True, capture_output=True)
    before = whole_set(tmp_path)
    ran = subprocess.run(
        command(tmp_path), check=False, capture_output=True, text=True, preexec_fn=no_larger_file
    )
    assert ran.returncode == 2
    assert re.search(told, ran.stderr.strip())
    assert whole_set(tmp_path) == before
    assert sorted(path.name for path in tmp_path.iterdir()) == [before, "current.txt"]
