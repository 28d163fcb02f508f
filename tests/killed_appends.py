"""Programs that append to one ledger and are killed, and what has to hold of the ledger then.

Each writes a device's entries, three in one transaction, and tells the hash of each once it is
acknowledged. Whatever is killed at whatever moment: what was acknowledged is there, what was there
stays where it was, a transaction is there whole or not at all, and the chain proves.
"""

from __future__ import annotations

import random
import signal
import subprocess
import sys
import time
from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass, field
from pathlib import Path
from typing import Self

from backspan.core.ledger.entry import read_entry
from backspan.core.ledger.receipts import Receipt, following
from backspan.records.opening import open_ledger
from tests.unit.records.appending import TOGETHER
from tests.unit.records.places import CAME

ROOT = Path(__file__).resolve().parent.parent
#: Seconds of commits within which a moment is drawn; most commits take less.
MOMENTS = 0.01


@dataclass(slots=True)
class Run:
    """A program that appends, with the hashes that it told."""

    process: subprocess.Popen[str]
    told: list[str] = field(default_factory=list)

    @classmethod
    def started(cls, where: str, device: str) -> Self:
        """Begin to append to the ledger there."""
        command = [sys.executable, "-m", "tests.unit.records.appending", where, device]
        pipe = subprocess.PIPE
        return cls(subprocess.Popen(command, stdout=pipe, stderr=pipe, text=True, cwd=ROOT))

    def hear(self) -> str:
        """Wait for the next hash it tells; AssertionError where it ended instead."""
        assert self.process.stdout is not None
        line = self.process.stdout.readline()
        if not line.endswith("\n"):
            raise AssertionError(f"it ended by itself: {self.ended()}")
        self.told.append(line.strip())
        return self.told[-1]

    def ended(self) -> str:
        """Take in what it still told, until it is gone; what it said of its end."""
        assert self.process.stdout is not None
        assert self.process.stderr is not None
        # Not `communicate`: it does not see what was read ahead of the last line.
        with self.process, self.process.stdout as told, self.process.stderr as said:
            rest = told.read()
            why = said.read()
        assert not rest or rest.endswith("\n"), f"half a line: {rest[-80:]!r}"
        self.told += rest.split()
        return why

    def kill(self) -> None:
        """Kill it at once; AssertionError where it had ended by itself."""
        self.process.send_signal(signal.SIGKILL)
        said = self.ended()
        assert self.process.returncode == -signal.SIGKILL, f"it ended by itself: {said}"


@dataclass(slots=True)
class Watched:
    """A ledger with all that was acknowledged of it and all that was found in it so far."""

    where: str
    acknowledged: set[str] = field(default_factory=set)
    kept: list[Receipt] = field(default_factory=list)

    def holds(self) -> None:
        """Prove the ledger; AssertionError with what is lost, moved or half there."""
        with open_ledger(self.where) as ledger:
            # Takes the lock of writers: what was under way when one was killed is decided by then.
            ledger.append([], received=CAME)
            rows = list(ledger.entries())
        now = [receipt for receipt, _ in rows]
        assert list(following(now)) == now
        assert now[: len(self.kept)] == self.kept, "what was there before is another now"
        lost = self.acknowledged - {one.entry for one in now}
        assert not lost, f"acknowledged and lost: {sorted(lost)}"
        many = Counter(read_entry(raw).envelope.device for _, raw in rows)
        assert all(one % TOGETHER == 0 for one in many.values()), f"half a transaction: {many}"
        self.kept = now

    def begun(self, draw: random.Random, devices: Sequence[str]) -> list[Run]:
        """Writers that all append by now, at a moment drawn."""
        runs = [Run.started(self.where, device) for device in devices]
        for run in runs:
            run.hear()
        for _ in range(draw.randint(0, 9)):
            runs[0].hear()
        # Any moment of the next commits will do.
        time.sleep(draw.uniform(0, MOMENTS))
        return runs

    def heard(self, runs: Sequence[Run]) -> None:
        """Count what writers told that are gone."""
        self.acknowledged.update(one for run in runs for one in run.told)

    def kill_writers(self, draw: random.Random, devices: Sequence[str]) -> None:
        """Kill one of some writers, see that the others go on over it, then kill those too."""
        runs = self.begun(draw, devices)
        draw.shuffle(runs)
        first, *others = runs
        first.kill()
        self.heard([first])
        if others:
            self.holds()
            before = {one.entry for one in self.kept}
            for run in others:
                while run.hear() in before:
                    pass
            time.sleep(draw.uniform(0, MOMENTS))
        for run in others:
            run.process.send_signal(signal.SIGKILL)
        for run in others:
            run.kill()
        self.heard(others)
        self.holds()
