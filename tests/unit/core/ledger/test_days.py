"""On which day an entry counts, and which clocks are in doubt."""

from __future__ import annotations

from dataclasses import replace

import pytest

from backspan.core.ledger.chain import Chains
from backspan.core.ledger.days import clock_doubts, day_of
from tests.unit.core.ledger.writing import SITE, written


@pytest.mark.parametrize(
    ("at", "received", "day"),
    [
        ("2026-11-28T10:00:00+00:00", None, "2026-11-28"),
        ("2026-11-28T10:00:00+00:00", "2026-11-30T10:00:00+00:00", "2026-11-28"),
        ("2026-11-29T10:00:00+00:00", "2026-11-28T10:00:00+00:00", "2026-11-28"),
        ("2026-11-28T23:00:00-05:00", "2026-11-29T04:10:00+00:00", "2026-11-28"),
    ],
)
def test_an_entry_counts_on_no_day_after_it_came(at: str, received: str | None, day: str) -> None:
    entry = written(Chains(SITE), "pad", at=at)
    assert day_of(replace(entry, received=received)) == day


def test_clocks_that_run_ahead_or_go_back_are_told() -> None:
    chains = Chains(SITE)
    usual = written(chains, "pad", at="2026-11-28T10:09:00+00:00")
    ahead = written(chains, "pad", at="2026-11-29T10:00:00+00:00")
    back = written(chains, "pad", at="2026-11-28T10:20:00+00:00")
    came = "2026-11-28T10:00:00+00:00"
    entries = [replace(one, received=came) for one in (usual, ahead)]
    doubts = list(clock_doubts([*entries, back]))
    assert [(one.entry.name, one.ahead) for one in doubts] == [("pad 2", True), ("pad 3", False)]
    assert doubts[0].by.days == 1
