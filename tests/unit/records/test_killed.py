"""Programs that are killed while they append: what they were told is kept is there, and whole."""

from __future__ import annotations

import random
import signal
from pathlib import Path

import pytest

from backspan.core.ledger.chain import Chains
from backspan.records.opening import open_ledger
from tests.killed_appends import Run, Watched
from tests.postgres_server import running_server
from tests.soak.store import kill_server
from tests.unit.core.ledger.writing import SITE, written
from tests.unit.records.places import CAME

KILLS = 5


@pytest.mark.slow
def test_what_was_acknowledged_is_there_after_every_kill(where: str) -> None:
    open_ledger(where, SITE).close()
    draw = random.Random(where.split("?", maxsplit=1)[0].rsplit("/", 1)[-1])  # noqa: S311 - moments, no secret
    watched = Watched(where)
    for _ in range(KILLS):
        watched.kill_writers(draw, ["pad"])
    assert len(watched.acknowledged) >= KILLS


@pytest.mark.slow
def test_what_was_acknowledged_is_there_after_the_server_was_killed_under_its_writers() -> None:
    with running_server(fsync=True) as server:
        watched = Watched(server.database())
        open_ledger(watched.where, SITE).close()
        for how in (signal.SIGKILL, signal.SIGQUIT):
            kill_server(server, how, watched, random.Random(how.name))  # noqa: S311 - moments, no secret
    assert watched.acknowledged


@pytest.fixture
def watched(tmp_path: Path) -> Watched:
    """A ledger with one transaction of a device, which holds."""
    one = Watched(str(tmp_path / "ledger.db"))
    kept(one.where, 3)
    one.holds()
    return one


def kept(where: str, many: int) -> None:
    """Keep so many entries of a device in one transaction."""
    with open_ledger(where, SITE) as ledger:
        chains = ledger.chains
        ledger.append([written(chains, "pad").raw for _ in range(many)], received=CAME)


def test_what_is_lost_or_half_there_or_another_is_seen(watched: Watched, tmp_path: Path) -> None:
    kept(watched.where, 2)
    with pytest.raises(AssertionError, match="half a transaction"):
        watched.holds()
    watched.acknowledged.add(written(Chains(SITE), "phone").hash)
    with pytest.raises(AssertionError, match="acknowledged and lost"):
        watched.holds()
    watched.where = str(tmp_path / "new.db")
    open_ledger(watched.where, SITE).close()
    with pytest.raises(AssertionError, match="what was there before is another now"):
        watched.holds()


def test_a_writer_that_ends_by_itself_is_told_with_its_reason(tmp_path: Path) -> None:
    run = Run.started(str(tmp_path / "nowhere.db"), "pad")
    with pytest.raises(AssertionError, match=r"(?s)ended by itself: .*StoreMissingError"):
        run.hear()
