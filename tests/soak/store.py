"""Writers of one ledger killed while they append, in SQLite and in PostgreSQL, and its server too.

Three writers append at once. One is killed with SIGKILL, the others have to go on over what it
left, then they are killed too; a PostgreSQL server that waits for the disk is killed with all its
processes (SIGKILL), or made to drop everything (SIGQUIT), under three more. After each kill all
that was acknowledged is there, each transaction whole or not at all, and the chain proves. No
power is cut: what a killed process gave to the system is not lost, and this shows nothing of disks.
"""

from __future__ import annotations

import random
import signal
import tempfile
from collections import Counter
from pathlib import Path

from backspan.records.opening import open_ledger
from tests.killed_appends import Watched
from tests.postgres_server import Server, running_server
from tests.unit.core.ledger.writing import SITE

#: A round is so many kills of writers in either database, and one of the server each way.
ROUNDS, KILLS = 20, 5
WRITERS = ("pad", "phone", "desk")


def one_round(number: int) -> dict[str, int]:
    """Kill at moments drawn; AssertionError with what is lost, half there or does not prove."""
    draw = random.Random(f"store-{number}")  # noqa: S311 - a draw anyone can repeat
    counts = Counter[str]()
    with tempfile.TemporaryDirectory() as name:
        path = Path(name) / "ledger.db"
        watched = made(str(path))
        for _ in range(KILLS):
            watched.kill_writers(draw, WRITERS)
            counts["SQLite: kills of writers"] += 1
        told(counts, "SQLite", watched)
    with running_server(fsync=True) as server:
        watched = made(server.database())
        for _ in range(KILLS):
            watched.kill_writers(draw, WRITERS)
            counts["PostgreSQL: kills of writers"] += 1
        for how in draw.sample((signal.SIGKILL, signal.SIGQUIT), 2):
            kill_server(server, how, watched, draw)
            counts[f"PostgreSQL: server ended by {how.name}"] += 1
        told(counts, "PostgreSQL", watched)
    return dict(counts)


def made(where: str) -> Watched:
    """A new ledger."""
    open_ledger(where, SITE).close()
    return Watched(where)


def kill_server(server: Server, how: signal.Signals, watched: Watched, draw: random.Random) -> None:
    """End the server under its writers, and start it again."""
    runs = watched.begun(draw, WRITERS)
    server.crash(how)
    for run in runs:
        said = run.ended()
        assert "StoreUnreachableError" in said, f"it did not say that the server is gone: {said}"
    watched.heard(runs)
    server.start()
    watched.holds()


def told(counts: Counter[str], database: str, watched: Watched) -> None:
    """Count what is in a ledger at the end of a round."""
    counts[f"{database}: entries acknowledged, all there"] += len(watched.acknowledged)
    # Committed when the kill came, before the writer could say so.
    unheard = len(watched.kept) - len(watched.acknowledged)
    counts[f"{database}: entries kept that nobody was told of"] += unheard
