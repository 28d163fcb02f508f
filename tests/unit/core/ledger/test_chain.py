"""What follows on what: gaps, forks and entries that came twice."""

from __future__ import annotations

import json
from collections.abc import Callable
from typing import Any

import pytest

from backspan.core.ledger.bodies import UseStopped
from backspan.core.ledger.chain import Chains, in_order, take_all
from backspan.core.ledger.entry import read_entry
from backspan.core.ledger.errors import ChainError, ForkError, GapError
from backspan.core.wire import canonical
from tests.unit.core.ledger.writing import SITE, copied, written

OTHER = UseStopped(("S1",), "hail")


def test_an_entry_that_came_twice_is_here_once() -> None:
    chains = Chains(SITE)
    entry = written(chains, "pad")
    assert not chains.take(entry)
    assert len(chains.links["pad"]) == 1


def test_a_gap_names_what_to_send() -> None:
    there, here = Chains(SITE), Chains(SITE)
    written(there, "pad")
    second = written(there, "pad")
    with pytest.raises(GapError, match="pad 2 came without pad 1: send that one first"):
        here.take(second)


def test_what_rests_on_another_device_waits_for_it() -> None:
    there, here = Chains(SITE), Chains(SITE)
    first = written(there, "pad")
    second = written(there, "phone")
    with pytest.raises(GapError, match="phone 1 rests on pad 1, and pad is here to 0 only"):
        here.take(second)
    assert here.take(first)
    assert here.take(second)


def test_another_entry_in_the_same_place_is_a_fork() -> None:
    one, other = Chains(SITE), Chains(SITE)
    written(one, "pad")
    second = written(other, "pad", OTHER)
    with pytest.raises(ForkError, match="pad 1 is here already with other content"):
        one.take(second)
    assert len(one.links["pad"]) == 1


def test_an_entry_that_follows_on_another_one_is_a_fork() -> None:
    one, other = Chains(SITE), Chains(SITE)
    written(one, "pad")
    written(other, "pad", OTHER)
    after = written(other, "pad")
    with pytest.raises(ForkError, match="pad 2 follows on another pad 1"):
        one.take(after)


@pytest.mark.parametrize(
    ("change", "said"),
    [
        (lambda data: data.update(site="elsewhere"), "belongs to the site 'elsewhere'"),
        (lambda data: data.update(order=7), "has the order 7, expected 3"),
        (lambda data: data.update(seen=[], order=3), "has seen less"),
    ],
)
def test_what_follows_on_nothing_is_refused(
    change: Callable[[dict[str, Any]], None], said: str
) -> None:
    chains = Chains(SITE)
    written(chains, "phone")
    written(chains, "pad")
    after = copied(chains)
    data = json.loads(written(after, "pad").raw)
    change(data)
    with pytest.raises(ChainError, match=said):
        chains.take(read_entry(canonical(data)))


def test_entries_stand_after_what_they_rest_on_whatever_the_clocks_say() -> None:
    chains = Chains(SITE)
    first = written(chains, "pad", at="2026-11-30T10:00:00+00:00")
    second = written(chains, "phone", at="2026-11-27T10:00:00+00:00")
    third = written(chains, "pad", at="2026-11-28T10:00:00+00:00")
    assert in_order([third, first, second]) == [first, second, third]
    assert third.has_seen(second)
    assert second.has_seen(first)
    assert not first.has_seen(second)
    assert list(take_all(Chains(SITE), [third, second, first])) == [first, second, third]


def test_two_devices_that_were_apart_are_put_together() -> None:
    start = Chains(SITE)
    first = written(start, "pad")
    one, other = copied(start), copied(start)
    here, there = written(one, "pad"), written(other, "phone", OTHER)
    assert not here.has_seen(there)
    assert not there.has_seen(here)
    assert list(take_all(one, [there, first])) == [there]
    assert list(take_all(other, [here])) == [here]
    assert one.links == other.links
