"""Runs of `review --out` that are killed while they write, and what then is in force.

A run is started as a user starts it and killed when the set in the making holds so many files, or a
moment after. The index must name a whole set, the one before or the new one: every file it lists is
there with the sum it lists, and no other.
"""

from __future__ import annotations

import random
import signal
import subprocess
import sys
import time
from hashlib import sha256
from pathlib import Path

from backspan.exchange.output_set import INDEX, set_in_force

ROOT = Path(__file__).resolve().parent.parent
RIG = ROOT / "tests" / "cases" / "rig.yaml"
DAY = "2026-11-25"
#: Files of a set of the rig's one drop: two papers, plan and section twice, two envelopes, data.
FILES = 9
#: Seconds after which a run that neither writes nor ends is a fault of its own.
PATIENCE = 60.0


def command(out: Path) -> list[str]:
    """A review of the one sound rig into a folder."""
    return [
        sys.executable,
        "-m",
        "backspan.cli",
        "review",
        str(RIG),
        "--on",
        DAY,
        "--out",
        str(out),
    ]


def whole_set(out: Path) -> str:
    """The name of the set in force; AssertionError where a file of it is not as listed."""
    name = set_in_force(out)
    assert name is not None, "no set is in force"
    text = (out / INDEX).read_text(encoding="utf-8")
    _, listed = text.split("Files, each with its SHA-256:\n")
    sums = {file: total for total, file in (line.split("  ") for line in listed.splitlines())}
    there = {path.name: sha256(path.read_bytes()).hexdigest() for path in (out / name).iterdir()}
    assert there == sums, f"{name} is not as listed"
    return name


def kill_once(out: Path, draw: random.Random) -> str:
    """Kill one run at a moment drawn; "old" or "new", whichever set is in force then."""
    before = whole_set(out)
    files, later = draw.randint(0, FILES), draw.choice((0.0, 0.0, 0.002, 0.01, 0.05))
    with subprocess.Popen(
        command(out), stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL
    ) as run:
        end = time.monotonic() + PATIENCE
        while run.poll() is None and written(out) < files:
            assert time.monotonic() < end, "the run neither writes nor ends"
            time.sleep(0.0005)
        time.sleep(later)
        run.send_signal(signal.SIGKILL)
    return "old" if whole_set(out) == before else "new"


def written(out: Path) -> int:
    """How many files the set in the making holds; none where none is being made."""
    making = [one for one in out.glob(".unfinished-*") if one.suffix != ".lock"]
    try:
        return sum(1 for folder in making for _ in folder.iterdir())
    except FileNotFoundError:
        return FILES  # it was just given its name
