"""One thread that writes for many: together in one commit, each for itself."""

from __future__ import annotations

import threading
from collections.abc import Iterator, Sequence
from concurrent.futures import Future, ThreadPoolExecutor

import pytest

from backspan.core.ledger.bodies import UseStopped
from backspan.core.ledger.chain import Chains
from backspan.core.ledger.errors import EntryError, ForkError
from backspan.core.ledger.receipts import Receipt, following
from backspan.records.errors import WriterClosedError
from backspan.records.store import Ledger
from backspan.records.writer import Writer
from tests.unit.core.ledger.writing import SITE, written
from tests.unit.records.places import CAME

OTHER = UseStopped(("S1",), "hail")
EACH = 50


def clock() -> str:
    return CAME


class Gate:
    """A clock that the first who asks it is held by until it is opened."""

    def __init__(self) -> None:
        self.asked = threading.Event()
        self.opened = threading.Event()
        self.times = 0

    def __call__(self) -> str:
        self.times += 1
        self.asked.set()
        assert self.opened.wait(10)
        return CAME


@pytest.fixture
def gate() -> Gate:
    return Gate()


@pytest.fixture
def held(ledger: Ledger, gate: Gate) -> Iterator[Writer]:
    """A writer at work on a first entry, so that what comes now waits together."""
    with Writer(ledger, gate) as writer:
        first = writer.hand_in([written(Chains(SITE), "first").raw])
        assert gate.asked.wait(10)
        yield writer
        gate.opened.set()
        assert first.result(10)[0].place == 1


def test_all_that_four_threads_were_told_is_kept_is_there(ledger: Ledger) -> None:
    def work(device: str) -> list[Receipt]:
        chains = Chains(SITE)
        told: list[Receipt] = []
        for _ in range(EACH):
            told += writer.submit([written(chains, device).raw])
        return told

    with Writer(ledger, clock) as writer, ThreadPoolExecutor(4) as pool:
        told = [one for mine in pool.map(work, ("a", "b", "c", "d")) for one in mine]
    kept = [receipt for receipt, _ in ledger.entries()]
    assert len(kept) == 4 * EACH
    assert sorted(told, key=lambda one: one.place) == kept
    assert list(following(kept)) == kept


def test_those_that_wait_share_one_commit_and_get_their_own_receipts(
    held: Writer, gate: Gate
) -> None:
    one, other = Chains(SITE), Chains(SITE)
    pads = [written(one, "pad") for _ in range(2)]
    phone = written(other, "phone")
    results = [held.hand_in([entry.raw for entry in mine]) for mine in (pads, [phone], [])]
    gate.opened.set()
    entries = [[receipt.entry for receipt in result.result(10)] for result in results]
    assert entries == [[entry.hash for entry in pads], [phone.hash], []]
    assert gate.times == 2


def test_one_that_is_refused_takes_no_other_with_it(
    held: Writer, gate: Gate, ledger: Ledger
) -> None:
    chains = Chains(SITE)
    first = written(chains, "pad").raw
    fork = written(Chains(SITE), "pad", OTHER).raw
    after = written(chains, "pad").raw
    submissions: list[Sequence[bytes]] = [[first], [fork], [b"{"], [after]]
    results: list[Future[tuple[Receipt, ...]]] = [held.hand_in(raws) for raws in submissions]
    gate.opened.set()
    assert results[0].result(10)[0].place == 2
    with pytest.raises(ForkError, match="pad 1 is here already"):
        results[1].result(10)
    with pytest.raises(EntryError, match="not JSON"):
        results[2].result(10)
    assert results[3].result(10)[0].place == 3
    assert [one.raw for one in ledger.set_aside()] == [fork]


def test_what_nobody_foresaw_is_told_to_who_waits(ledger: Ledger) -> None:
    def broken() -> str:
        raise ZeroDivisionError("no clock")

    with Writer(ledger, broken) as writer, pytest.raises(ZeroDivisionError, match="no clock"):
        writer.submit([written(Chains(SITE), "pad").raw])
    assert ledger.last() is None


def test_one_that_was_cancelled_is_not_kept(held: Writer, gate: Gate, ledger: Ledger) -> None:
    gone = held.hand_in([written(Chains(SITE), "pad").raw])
    assert gone.cancel()
    gate.opened.set()
    held.close()
    assert set(ledger.chains.links) == {"first"}


def test_closing_commits_what_waits_and_takes_no_more(held: Writer, gate: Gate) -> None:
    waiting = held.hand_in([written(Chains(SITE), "pad").raw])
    gate.opened.set()
    held.close()
    held.close()
    assert waiting.result(0)[0].place == 2
    with pytest.raises(WriterClosedError, match="a writer that is closed"):
        held.submit([written(Chains(SITE), "phone").raw])
