"""The demo on the workbench: whatever day it is, its story is the same."""

from __future__ import annotations

import datetime
from pathlib import Path

import pytest

from backspan.core.findings import Verdict
from backspan.core.ledger.day_told import day_data
from backspan.core.review import review
from backspan.exchange.files import load
from backspan.records.api import open_record
from tests.unit.core.rigs import LIBRARY
from tools.serve_demo import DEMO, ITS_DAY, demo_of, filled

LATER = datetime.datetime(2031, 2, 28, 9, 0, tzinfo=datetime.UTC)


def answers(day: datetime.date) -> dict[str, Verdict]:
    """Each drop's answer on a day by the demo of that day."""
    project = demo_of(day, LIBRARY)
    return {
        one.id: review(project, one.id, LIBRARY, on=day, compared=False).verdict
        for one in project.drops
    }


def test_on_its_own_day_it_is_the_demo() -> None:
    assert demo_of(ITS_DAY, LIBRARY) == load(DEMO, LIBRARY)


@pytest.mark.slow
def test_on_another_day_every_drop_is_answered_the_same() -> None:
    assert answers(LATER.date()) == answers(ITS_DAY)


def test_its_record_has_a_drop_in_service_and_is_made_once(tmp_path: Path) -> None:
    folder = tmp_path / "demo"
    filled(folder, LATER)
    with open_record(folder) as record:
        entries = record.entries()
        day = day_data(entries, LIBRARY, on=LATER.date())
    assert day["in_service"] == 1
    assert {one["state"] for one in day["drops"]} >= {"in service", "stopped", "rigged"}
    filled(folder, LATER)
    with open_record(folder) as record:
        assert record.entries() == entries
