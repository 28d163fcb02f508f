"""Programs that are killed while they append: what they were told is kept is there, and whole."""

from __future__ import annotations

import random
import signal
import subprocess
import sys
import time
from pathlib import Path

import pytest

from backspan.core.ledger.receipts import following
from backspan.records.opening import open_ledger
from tests.unit.core.ledger.writing import SITE

ROOT = Path(__file__).resolve().parents[3]
KILLS = 5
TOGETHER = 3


def killed_at(where: str, draw: random.Random) -> list[str]:
    """Run one until it is killed at a moment drawn; the hashes that were acknowledged."""
    command = [sys.executable, "-m", "tests.unit.records.appending", where]
    with subprocess.Popen(command, stdout=subprocess.PIPE, text=True, cwd=ROOT) as run:
        assert run.stdout is not None
        told = [run.stdout.readline() for _ in range(draw.randint(1, 10))]
        # Any moment of the next commits will do.
        time.sleep(draw.uniform(0, 0.01))
        run.send_signal(signal.SIGKILL)
        told += run.stdout.readlines()
    assert all(one.endswith("\n") for one in told), f"it ended by itself: {told}"
    return [one.strip() for one in told]


@pytest.mark.slow
def test_what_was_acknowledged_is_there_after_every_kill(where: str) -> None:
    open_ledger(where, SITE).close()
    draw = random.Random(where.split("?", maxsplit=1)[0].rsplit("/", 1)[-1])  # noqa: S311 - moments, no secret
    acknowledged: list[str] = []
    for _ in range(KILLS):
        acknowledged += killed_at(where, draw)
        with open_ledger(where) as ledger:
            kept = [receipt for receipt, _ in ledger.entries()]
            assert list(following(kept)) == kept
            assert set(acknowledged) <= {one.entry for one in kept}
            assert len(kept) % TOGETHER == 0, "a part of a transaction is there"
    assert len(acknowledged) >= KILLS
