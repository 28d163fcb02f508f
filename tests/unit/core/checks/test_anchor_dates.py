"""The last day on which a paper of an anchor counts: the one that the finding names."""

from __future__ import annotations

import datetime
from dataclasses import replace

from backspan.core.checks.anchor_dates import lasting
from backspan.core.model.site import Anchor, AnchorFixing
from backspan.core.quantities import RATIO
from backspan.core.sheet.limits import limit_of, needed_value
from tests.unit.core.rigs import PROJECT, at, case, findings

A1: Anchor = at(PROJECT, ("site", "roofs", "ROOF", "anchors", "A1"))
PRACTICE = case().practice


def last_days(anchor: Anchor) -> dict[str, str | None]:
    """The last day of each paper."""
    return {paper.name: last for paper, last in lasting(anchor, PRACTICE)}


def days_of(key: str) -> int:
    """For how many days the practice lets a paper count."""
    return round(limit_of(needed_value(PRACTICE, key), RATIO))


def test_it_is_the_day_that_the_finding_names() -> None:
    found = findings(PROJECT, "anchor-dates", "D/A1")
    named = {one.question: dict(one.message.values)["last"] for one in found}
    assert named == last_days(A1)


def test_its_first_day_is_one_of_those_that_count() -> None:
    first = datetime.date(2026, 3, 3)
    last = first + datetime.timedelta(days=days_of("age.anchor-letter") - 1)
    assert last_days(A1)["inspected"] == last.isoformat()


def test_a_test_of_an_adhesive_anchor_lasts_shorter_and_so_where_nobody_knows() -> None:
    cast_in = last_days(A1)["certified"]
    for fixing in (AnchorFixing.ADHESIVE, None):
        other = last_days(replace(A1, fixed_by=fixing))["certified"]
        assert other is not None
        assert cast_in is not None
        assert other < cast_in


def test_without_a_day_it_has_no_last_one() -> None:
    bare = replace(A1, inspected=None, certified=None)
    assert last_days(bare) == {"inspected": None, "certified": None}
