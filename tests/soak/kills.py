"""Runs killed while they write, one after another into one folder: a whole set stays in force."""

from __future__ import annotations

import random
import subprocess
import tempfile
from collections import Counter
from pathlib import Path

from tests.killed_runs import command, kill_once, whole_set

ROUNDS, KILLS = 3, 20


def one_round(number: int) -> dict[str, int]:
    """Kill runs at moments drawn; AssertionError where what is in force is not whole."""
    draw = random.Random(f"kills-{number}")  # noqa: S311 - a draw anyone can repeat
    counts = Counter[str]()
    with tempfile.TemporaryDirectory() as name:
        out = Path(name)
        subprocess.run(command(out), check=True, capture_output=True)
        for _ in range(KILLS):
            counts["killed"] += 1
            counts[f"{kill_once(out, draw)} set in force"] += 1
        subprocess.run(command(out), check=True, capture_output=True)
        whole_set(out)
        assert not list(out.glob(".unfinished-*")), "what killed runs left is still there"
    return dict(counts)
