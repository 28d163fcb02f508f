"""The ledger: entries kept in a file or a database, by one writer and by four, and folded.

The disk's own rate is measured beside it: what a small file costs to be written and waited for.
"""

from __future__ import annotations

import datetime
import os
import statistics
import threading
import time
from collections.abc import Sequence
from pathlib import Path

from backspan.core.ledger import bodies
from backspan.core.ledger.chain import Chains
from backspan.core.ledger.described import entries_of
from backspan.core.ledger.entry import Entry, Signer, read_entry
from backspan.core.ledger.fold import fold, take
from backspan.core.ledger.kinds import Body
from backspan.core.model.project import Project
from backspan.records.opening import open_ledger
from backspan.records.writer import Writer

SITE, AT = "benchmark", "2026-11-25T12:00:00+00:00"
SIGNER = Signer("bench", "Benchmark", "none")
MANY, BATCH, WRITERS, EACH = 10_000, 100, 4, 200


def history(project: Project, count: int, device: str = "pad") -> list[Entry]:
    """A site and what is written at it for years: checks, stops and remarks over its drops."""
    chains, entries = Chains(SITE), list[Entry]()
    drops = [one.id for one in project.drops]
    said = list(entries_of(project))
    while len(entries) < count:
        number = len(entries)
        body = said[number] if number < len(said) else _later(drops[number % len(drops)], number)
        entry = read_entry(chains.following(device, body, at=AT, signer=SIGNER))
        chains.take(entry)
        entries.append(entry)
    return entries


def _later(drop: str, number: int) -> Body:
    match number % 10:
        case 0:
            return bodies.UseStopped((drop,), "wind")
        case 1:
            return bodies.ConcernNoted(f"C{number}", drop, "a noise")
        case 2:
            return bodies.ConcernClosed(f"C{number - 1}", "load test", "held")
        case _:
            return bodies.ShiftChecked(drop, AT[:10], fit=number % 10 > 3)


def kept_in_batches(entries: Sequence[Entry], where: str | Path) -> float:
    """Seconds for all entries, a hundred a commit."""
    raws = [one.raw for one in entries]
    with open_ledger(where, SITE) as ledger:
        start = time.perf_counter()
        for first in range(0, len(raws), BATCH):
            ledger.append(raws[first : first + BATCH], received=AT)
        return time.perf_counter() - start


def kept_by_four(where: str | Path) -> list[float]:
    """Seconds that each single entry of four writers took until it was acknowledged."""
    times: list[float] = []
    with (
        open_ledger(where, SITE) as ledger,
        Writer(ledger, lambda: datetime.datetime.now(datetime.UTC).isoformat()) as writer,
    ):

        def work(device: str) -> None:
            chains = Chains(SITE)
            for number in range(EACH):
                body = bodies.UseStopped((), f"{number}")
                raw = chains.following(device, body, at=AT, signer=SIGNER)
                chains.take(read_entry(raw))
                start = time.perf_counter()
                writer.submit([raw])
                times.append(time.perf_counter() - start)

        threads = [threading.Thread(target=work, args=(f"pad {n}",)) for n in range(WRITERS)]
        for one in threads:
            one.start()
        for one in threads:
            one.join()
    return times


def one_sync(folder: Path) -> float:
    """Median seconds for a few bytes to be on the disk."""
    times = []
    with (folder / "raw").open("ab", buffering=0) as file:
        for _ in range(50):
            start = time.perf_counter()
            file.write(b"x" * 800)
            os.fsync(file.fileno())
            times.append(time.perf_counter() - start)
    return statistics.median(times)


def folded(entries: Sequence[Entry]) -> tuple[float, float]:
    """Seconds to fold all entries, and to take one more."""
    *before, last = entries
    start = time.perf_counter()
    site = fold(before)
    between = time.perf_counter()
    take(site, last)
    return between - start, time.perf_counter() - between
