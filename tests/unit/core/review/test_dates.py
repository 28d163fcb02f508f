"""A statement of a later day than the review's is refused with its place."""

from __future__ import annotations

import datetime
from dataclasses import replace
from typing import Any

import pytest

from backspan.core.model.basis import Confirmation
from backspan.core.model.evidence import Evidence, Statement
from backspan.core.review import review
from backspan.core.review.dates import DatedAheadError
from tests.unit.core.rigs import ARM, LIBRARY, ON, PROJECT, confirmed, put
from tests.unit.core.rigs import OSHA as CHOICE

ANCHOR = ("site", "roofs", "ROOF", "anchors", "A1")
LATER = Confirmation(CHOICE.rule_set, CHOICE.edition, "tipping.rated-load", "PE", "2026-11-26", "x")


@pytest.mark.parametrize(
    ("place", "value", "told"),
    [
        ((*ARM, "reach", "at"), "2026-11-26", r"drops\[D\]\.rig\..*beam\.reach\.at: found 2026-11"),
        ((*ARM, "reach", "at"), "2026-11-26T06:00", r"reach\.at: found 2026-11-26T06:00, expected"),
        ((*ANCHOR, "inspected"), "2026-12-01", r"anchors\[A1\]\.inspected: found 2026-12-01"),
        (("values_from",), Statement(Evidence.TOLD, "MT", "2027-01-01"), r"values_from\.at"),
        (("confirmations",), (LATER,), r"confirmations\[0\]\.at: found 2026-11-26"),
        (("taken_over", 0, "at"), "2026-11-26", r"taken_over\[0\]\.at: found 2026-11-26"),
    ],
)
def test_a_later_day_is_refused(place: tuple[str | int, ...], value: Any, told: str) -> None:
    with pytest.raises(DatedAheadError, match=told):
        review(put(PROJECT, place, value), "D", LIBRARY, on=ON)


def test_the_day_itself_and_days_to_come_of_plan_and_letters_are_none() -> None:
    today = confirmed(
        put(PROJECT, (*ARM, "reach", "at"), "2026-11-25 23:59"), CHOICE, "hoist.stall-cap"
    )
    assert review(today, "D", LIBRARY, on=ON).verdict == "pass"


def test_a_long_list_is_cut_and_counted() -> None:
    early = datetime.date(2026, 11, 1)
    with pytest.raises(DatedAheadError, match=r"and \d+ more"):
        review(replace(PROJECT, taken_over=()), "D", LIBRARY, on=early)
