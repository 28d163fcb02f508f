"""Entries in, receipts out: the same in both databases."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from backspan.core.ledger.bodies import UseStopped
from backspan.core.ledger.chain import Chains
from backspan.core.ledger.entry import Signer
from backspan.core.ledger.errors import ChainError, EntryError, ForkError, GapError
from backspan.core.ledger.receipts import NO_HEAD, following
from backspan.records.errors import MomentError, StoreDamagedError, StoreError
from backspan.records.opening import open_ledger
from backspan.records.port import Database
from backspan.records.signing import holds, signing_key
from backspan.records.store import Ledger, Statement
from tests.unit.core.ledger.writing import ENGINEER, SITE, written
from tests.unit.records.archive.content import receipts_of
from tests.unit.records.places import CAME, LATER

OTHER = UseStopped(("S1",), "hail")


def many(chains: Chains, *devices: str) -> list[bytes]:
    """An entry of each device named, one after the other."""
    return [written(chains, device).raw for device in devices]


def test_entries_come_back_as_they_came_in_the_order_of_their_places(ledger: Ledger) -> None:
    raws = many(Chains(SITE), "pad", "phone", "pad")
    receipts = ledger.append(raws, received=CAME)
    assert [one.place for one in receipts] == [1, 2, 3]
    assert list(ledger.entries()) == list(zip(receipts, raws, strict=True))
    assert list(ledger.entries(after=2)) == [(receipts[2], raws[2])]
    assert list(following(receipts)) == list(receipts)
    assert ledger.last() == receipts[2]


def test_more_entries_than_are_read_at_a_time_all_come(ledger: Ledger) -> None:
    raws = many(Chains(SITE), *["pad"] * 501)
    ledger.append(raws, received=CAME)
    assert [raw for _, raw in ledger.entries()] == raws


def test_receipts_stand_in_the_order_the_entries_were_given(ledger: Ledger) -> None:
    raws = many(Chains(SITE), "pad", "phone", "pad")
    receipts = ledger.append(raws[::-1], received=CAME)
    assert [one.place for one in receipts] == [3, 2, 1]


def test_an_entry_that_came_twice_gets_its_old_receipt(ledger: Ledger) -> None:
    first, second = many(Chains(SITE), "pad", "pad")
    (receipt,) = ledger.append([first], received=CAME)
    again = ledger.append([first, second, first], received=LATER)
    assert again[0] == again[2] == receipt
    assert again[1].place == 2
    assert len(list(ledger.entries())) == 2


def test_a_gap_keeps_nothing_of_what_came_with_it(ledger: Ledger) -> None:
    raws = many(Chains(SITE), "pad", "phone", "pad", "pad")
    with pytest.raises(GapError, match="pad 3 came without pad 2"):
        ledger.append([raws[0], raws[1], raws[3]], received=CAME)
    assert ledger.last() is None
    assert ledger.chains.links == {}
    assert len(ledger.append(raws, received=CAME)) == 4


def test_what_is_no_entry_keeps_nothing_of_what_came_with_it(ledger: Ledger) -> None:
    raws = many(Chains(SITE), "pad")
    with pytest.raises(EntryError, match="not JSON"):
        ledger.append([*raws, b"{"], received=CAME)
    assert ledger.last() is None


def test_a_fork_is_set_aside_once_and_keeps_nothing_of_what_came_with_it(ledger: Ledger) -> None:
    chains = Chains(SITE)
    ledger.append(many(chains, "pad"), received=CAME)
    after = written(chains, "phone").raw
    fork = written(Chains(SITE), "pad", OTHER).raw
    for _ in range(2):
        with pytest.raises(ForkError, match="pad 1 is here already with other content"):
            ledger.append([after, fork], received=LATER)
    (kept,) = ledger.set_aside()
    assert kept.raw == fork
    assert kept.received == LATER
    assert "pad 1 is here already" in kept.reason
    assert len(list(ledger.entries())) == 1
    assert set(ledger.chains.links) == {"pad"}


def test_a_fork_of_a_device_with_a_strange_name_is_set_aside_too(ledger: Ledger) -> None:
    ledger.append([written(Chains(SITE), "a\0b").raw], received=CAME)
    with pytest.raises(ForkError, match="is here already"):
        ledger.append([written(Chains(SITE), "a\0b", OTHER).raw], received=CAME)
    assert len(ledger.set_aside()) == 1


def test_a_clock_that_steps_back_does_not_turn_receipts_back(ledger: Ledger) -> None:
    first, second = many(Chains(SITE), "pad", "pad")
    ledger.append([first], received="2026-11-28T12:00:00+02:00")
    (receipt,) = ledger.append([second], received="2026-11-28T09:59:59+00:00")
    assert receipt.received == "2026-11-28T12:00:00+02:00"


@pytest.mark.parametrize("time", ["", "yesterday", "2026-11-28", "2026-11-28T10:00:00"])
def test_a_time_that_is_none_is_refused(ledger: Ledger, time: str) -> None:
    with pytest.raises(MomentError, match="expected a day with a time and its offset"):
        ledger.append(many(Chains(SITE), "pad"), received=time)
    assert ledger.last() is None


def test_two_who_share_a_ledger_see_what_the_other_kept(ledger: Ledger, where: str) -> None:
    with open_ledger(where) as other:
        first = written(ledger.chains, "pad").raw
        ledger.append([first], received=CAME)
        second = written(other.chains, "pad").raw
        (receipt,) = other.append([second], received=CAME)
        assert receipt.place == 2
        # Not asked since: the other's entry is found only while writing.
        (third,) = ledger.append(many(other.chains, "phone"), received=CAME)
        assert third.place == 3
        with pytest.raises(ForkError, match="pad 1 is here already"):
            other.append([written(Chains(SITE), "pad", OTHER).raw], received=CAME)


def test_chains_are_there_again_after_opening_and_are_a_copy(ledger: Ledger, where: str) -> None:
    ledger.append(many(Chains(SITE), "pad", "phone", "pad"), received=CAME)
    before = ledger.chains
    with open_ledger(where) as other:
        assert other.chains == before
        written(other.chains, "pad")
        assert other.chains == before


def test_heads_are_signed_and_kept(ledger: Ledger, tmp_path: Path, where: str) -> None:
    key = signing_key(tmp_path / "key.pem")
    empty = ledger.sign_head(key, at=CAME)
    assert (empty.place, empty.head) == (0, NO_HEAD)
    (receipt,) = ledger.append(many(Chains(SITE), "pad"), received=CAME)
    signed = ledger.sign_head(key, at=LATER)
    assert (signed.site, signed.place, signed.head) == (SITE, 1, receipt.head)
    assert holds(signed)
    with open_ledger(where) as other:
        assert other.signed_heads() == (empty, signed)
    with pytest.raises(MomentError, match="expected a day"):
        ledger.sign_head(key, at="noon")


@pytest.mark.parametrize("table", ["about", "entries", "set_aside", "heads"])
@pytest.mark.parametrize("change", ["UPDATE {} SET {} = {}", "DELETE FROM {}"])
def test_no_row_is_changed_or_taken_out(
    ledger: Ledger, database: Database, tmp_path: Path, table: str, change: str
) -> None:
    ledger.append(many(Chains(SITE), "pad"), received=CAME)
    ledger.sign_head(signing_key(tmp_path / "key.pem"), at=CAME)
    with pytest.raises(ForkError, match="pad 1"):
        ledger.append([written(Chains(SITE), "pad", OTHER).raw], received=CAME)
    column = {"about": "site", "heads": "at"}.get(table, "received")
    with pytest.raises(StoreError, match=f"rows of {table} are only added"):
        database.run(change.format(table, column, column))
    assert len(list(ledger.entries())) == len(ledger.signed_heads()) == len(ledger.set_aside()) == 1


def test_a_changed_byte_is_found_at_opening(ledger: Ledger, database: Database, where: str) -> None:
    first, second = many(Chains(SITE), "pad", "pad")
    ledger.append([first, second], received=CAME)
    (guard,) = [one for one in database.tables if "UPDATE" in one and "ON entries" in one]
    name = guard.split()[2]
    on = " ON entries" if where.startswith("postgresql") else ""
    database.run(f"DROP TRIGGER {name}{on}")
    database.run("UPDATE entries SET raw = :raw WHERE place = 1", raw=second)
    with pytest.raises(StoreDamagedError, match="at place 1 what does not follow"):
        open_ledger(where)
    database.run("UPDATE entries SET raw = :raw, place = 3 WHERE place = 1", raw=first)
    with pytest.raises(StoreDamagedError, match=re.escape("at place 2 what does not")):
        open_ledger(where)


def test_what_is_said_beside_the_ledger_has_seen_all_that_is_here(ledger: Ledger) -> None:
    ledger.append(many(Chains(SITE), "pad", "phone"), received=CAME)
    (first, second) = ledger.say([Statement(OTHER, ENGINEER)] * 2, device="desk", at=LATER)
    assert {one.device: one.sequence for one in first.envelope.seen} == {"pad": 1, "phone": 1}
    assert [first.envelope.sequence, second.envelope.sequence] == [1, 2]
    assert [raw for _, raw in ledger.entries(after=2)] == [first.raw, second.raw]


def test_two_programs_may_say_as_one_device(where: str, ledger: Ledger) -> None:
    with open_ledger(where) as other:
        ledger.say([Statement(OTHER, ENGINEER)], device="desk", at=CAME)
        (second,) = other.say([Statement(OTHER, ENGINEER)], device="desk", at=CAME)
    assert second.name == "desk 2"
    assert ledger.set_aside() == ()


def test_what_is_said_with_a_clock_that_stepped_back_came_no_earlier(ledger: Ledger) -> None:
    ledger.append(many(Chains(SITE), "pad"), received=LATER)
    (entry,) = ledger.say([Statement(OTHER, ENGINEER)], device="desk", at=CAME)
    assert (entry.envelope.at, entry.received) == (CAME, LATER)


def test_one_statement_that_cannot_be_written_keeps_none(ledger: Ledger) -> None:
    nobody = Signer("", "", "")
    with pytest.raises(EntryError, match="nobody who states it"):
        ledger.say([Statement(OTHER, ENGINEER), Statement(OTHER, nobody)], device="desk", at=CAME)
    assert ledger.last() is None
    assert ledger.chains.links == {}


def test_a_ledger_refilled_is_the_one_that_was(ledger: Ledger, tmp_path: Path) -> None:
    chains = Chains(SITE)
    ledger.append(many(chains, "pad", "phone"), received=CAME)
    head = ledger.sign_head(signing_key(tmp_path / "key.pem"), at=LATER)
    ledger.append(many(chains, "pad"), received=LATER)
    with open_ledger(tmp_path / "again.sqlite", SITE) as again:
        again.refill(ledger.entries(), [head])
        assert list(again.entries()) == list(ledger.entries())
        assert again.signed_heads() == (head,)
        with pytest.raises(StoreError, match="3 entries, expected a ledger that holds nothing"):
            again.refill(ledger.entries(), [])


def test_a_receipt_of_another_entry_refills_nothing(ledger: Ledger) -> None:
    raws = many(Chains(SITE), "pad", "phone")
    first, _ = receipts_of(raws)
    with pytest.raises(ChainError, match="place 1: its receipt is not of this entry"):
        ledger.refill([(first, raws[0]), (first, raws[1])], [])
    assert ledger.last() is None
