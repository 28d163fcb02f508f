"""The document of a day: every drop with its state, its reasons and its permit."""

from __future__ import annotations

import datetime
import json
from dataclasses import replace
from typing import Any

import pytest

from backspan.core.ledger import bodies
from backspan.core.ledger.day_told import day_data
from backspan.core.ledger.errors import LedgerError
from backspan.core.words import ENGLISH, Language, language_of
from tests.unit.core.ledger.histories import (
    DROP,
    TOMORROW,
    History,
    accepted,
    described,
    in_service,
)
from tests.unit.core.ledger.writing import FOREMAN
from tests.unit.core.rigs import LIBRARY, ON


def told(history: History, on: datetime.date = ON, language: Language = ENGLISH) -> dict[str, Any]:
    """The document of a day."""
    found = day_data(history.entries, LIBRARY, on=on, language=language)
    assert json.loads(json.dumps(found)) == found
    return found


def the_drop(history: History, on: datetime.date = ON) -> dict[str, Any]:
    """The drop in it."""
    (only,) = told(history, on)["drops"]
    return dict(only)


def test_a_drop_in_service_is_counted_with_its_permit() -> None:
    found = told(in_service())
    assert (found["in_service"], found["format"], found["on"]) == (1, 1, ON.isoformat())
    drop = the_drop(in_service())
    assert drop["state"] == "in service"
    assert drop["reasons"] == drop["refused"] == drop["restrictions"] == []
    assert drop["permit"].startswith("drop D: use permitted, configuration ")
    assert drop["permit_by"] == "Ana Example"


def test_on_the_next_day_nobody_rides_before_the_shift_check() -> None:
    drop = the_drop(in_service(), TOMORROW)
    assert not drop["in_service"]
    assert drop["state"] == "accepted"
    assert drop["reasons"] == [
        "No shift check of the day finds it fit. A competent person looks before anybody rides."
    ]


def test_a_stop_is_told_once_and_the_permit_is_gone() -> None:
    history = in_service()
    history.says(bodies.UseStopped((DROP,), "crack"), signer=FOREMAN)
    drop = the_drop(history)
    assert (drop["state"], drop["permit"]) == ("stopped", None)
    (reason,) = drop["reasons"]
    assert "drop D: use stopped - crack" in reason


def test_a_restriction_stands_beside_the_permit() -> None:
    history = in_service()
    history.says(bodies.UseRestricted(DROP, "one rider only"))
    drop = the_drop(history)
    assert drop["in_service"]
    assert drop["restrictions"] == ["drop D: use restricted - one rider only"]


def test_what_was_refused_is_told_on_its_day_only() -> None:
    history = accepted()
    history.says(bodies.ShiftChecked(DROP, TOMORROW.isoformat(), fit=True))
    (refused,) = the_drop(history)["refused"]
    assert refused.startswith("No effect: drop D: shift check of ")
    assert the_drop(history, TOMORROW)["refused"] == []


def test_a_correction_of_nothing_is_told_for_the_site() -> None:
    history = described()
    history.says(bodies.Corrected("0" * 64, "a slip"))
    assert told(history)["refused"][0].startswith("No effect: entry 000000000000")


def test_a_clock_that_ran_a_day_ahead_is_told_in_both_languages() -> None:
    history = in_service()
    stop = history.says(
        bodies.UseStopped((DROP,), "crack"), at=f"{TOMORROW.isoformat()}T13:05:00+00:00"
    )
    came = f"{ON.isoformat()}T12:00:00+00:00"
    history.entries[-1] = replace(stop, received=came)
    assert told(history)["clocks"] == [
        "The clock of pad ran 25:05 h ahead: drop D: use stopped - crack."
    ]
    spanish = told(history, language=language_of("es"))
    assert spanish["clocks"] == [
        "El reloj de pad iba adelantado 25:05 h: bajada D: uso parado: «crack»."
    ]
    assert the_drop(history)["state"] == "stopped"


def test_before_the_first_entry_there_is_no_day_to_tell() -> None:
    with pytest.raises(LedgerError, match="no site is described"):
        told(described(), ON - datetime.timedelta(days=1))
