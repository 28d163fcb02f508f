"""Any single bit that was flipped is found, and the member and line it lies in are named."""

from __future__ import annotations

import functools
import io
import random

import pytest

from backspan.core.ledger.entry import read_entry
from backspan.core.ledger.receipts import read_receipt
from backspan.records.archive import Damage, followed, layout, statements, verify_stream
from tests.unit.records.archive.content import holds

IN_LINES = {layout.ENTRIES, layout.RECEIPTS}


def lies_in(whole: bytes, at: int) -> tuple[str, int | None, str]:
    """Member, line and part of the archive of that byte."""
    start = 0
    while (named := layout.read_header(whole[start : start + layout.BLOCK])) is not None:
        one = layout.Member(named[0], start, named[1])
        if at < one.after:
            if at < one.content or at >= one.end:
                return one.name, None, "container"
            line = whole.count(b"\n", one.content, at) + 1 if one.name in IN_LINES else None
            return one.name, line, "content"
        start = one.after
    return layout.END, None, "container"


def unseen(whole: bytes, monkeypatch: pytest.MonkeyPatch, count: int, seed: int) -> list[str]:
    """Which of so many flipped bits are not found where they lie."""
    # Reading the same bytes again answers the same, so what was read once need not be again.
    monkeypatch.setattr(statements, "read_entry", functools.cache(read_entry))
    monkeypatch.setattr(followed, "read_receipt", functools.cache(read_receipt))
    chance, problems = random.Random(seed), []  # noqa: S311 - a draw anyone can repeat
    for _ in range(count):
        at, bit = chance.randrange(len(whole)), chance.randrange(8)
        flipped = bytearray(whole)
        flipped[at] ^= 1 << bit
        report = verify_stream(io.BytesIO(flipped), holds=holds)
        member, line, part = lies_in(whole, at)
        if not any(located(one, member, line, part) for one in report.damage):
            told = "; ".join(str(one) for one in report.damage[:4])
            problems.append(f"byte {at} bit {bit} of {member} line {line} ({part}): {told}")
    return problems


def located(one: Damage, member: str, line: int | None, part: str) -> bool:
    """Whether it tells of that place: by its line where it has lines, by its offset around it."""
    if part == "container":
        return one.member == member and " at byte " in one.says
    return one.member == member and one.number == line


def test_a_flipped_bit_is_found_where_it_lies(
    whole: bytes, monkeypatch: pytest.MonkeyPatch
) -> None:
    assert unseen(whole, monkeypatch, 100, seed=1) == []


@pytest.mark.long
@pytest.mark.slow
def test_two_thousand_flipped_bits_are_found_where_they_lie(
    whole: bytes, monkeypatch: pytest.MonkeyPatch
) -> None:
    assert unseen(whole, monkeypatch, 2000, seed=2) == []
