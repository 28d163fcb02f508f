"""A ledger's own chain: a changed, missing or added receipt shows, with its place."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import pytest

from backspan.core.ledger.errors import ChainError, EntryError
from backspan.core.ledger.receipts import (
    NO_HEAD,
    Receipt,
    following,
    read_receipt,
    receipt_after,
    write_receipt,
)

HASHES = [f"{n:064x}" for n in range(1, 6)]
AT = "2026-11-28T10:00:00+00:00"


def receipts() -> list[Receipt]:
    """Five receipts, one after the other."""
    found: list[Receipt] = []
    for one in HASHES:
        found.append(receipt_after(found[-1] if found else None, entry=one, received=AT))
    return found


def test_receipts_follow_on_each_other() -> None:
    assert list(following(receipts())) == receipts()
    assert [one.place for one in receipts()] == [1, 2, 3, 4, 5]
    assert len({NO_HEAD, *(one.head for one in receipts())}) == 6


@pytest.mark.parametrize(
    ("change", "place"),
    [
        (lambda found: found[:2] + found[3:], 3),
        (lambda found: [*found[:1], found[2], found[1], *found[3:]], 2),
        (lambda found: [*found[:3], replace(found[3], entry=HASHES[0]), found[4]], 4),
        (lambda found: [*found[:4], replace(found[4], received="2026-11-28T10:00:01+00:00")], 5),
        (lambda found: [replace(found[0], head=HASHES[0]), *found[1:]], 1),
    ],
)
def test_what_does_not_follow_is_named(
    change: Callable[[list[Receipt]], list[Receipt]], place: int
) -> None:
    with pytest.raises(ChainError, match=f"^place {place}:"):
        list(following(change(receipts())))


def test_a_receipt_is_one_line() -> None:
    one = receipts()[2]
    raw = write_receipt(one)
    assert b"\n" not in raw
    assert read_receipt(raw) == one


@pytest.mark.parametrize(
    "raw", [b"", b"{}", b"[1]", b"\xff", write_receipt(receipts()[0]).replace(b":1", b": 1")]
)
def test_what_is_no_receipt_is_refused(raw: bytes) -> None:
    with pytest.raises(EntryError, match="receipt"):
        read_receipt(raw)


def test_a_receipt_without_a_time_is_refused() -> None:
    with pytest.raises(EntryError, match="a time with its offset"):
        read_receipt(write_receipt(replace(receipts()[0], received="2026-11-28")))
