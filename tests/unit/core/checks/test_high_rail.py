"""A top rail above the usual height: what was seen of it before it was taped settles nothing."""

from __future__ import annotations

import datetime

import pytest

from backspan.core.findings import Verdict
from backspan.core.model.evidence import Evidence, StatedValue
from backspan.core.model.project import Project
from backspan.core.model.stages import HighRail
from backspan.core.quantities import LENGTH, parse
from tests.unit.core.rigs import ON, PROJECT, RIG, findings, put

FOUND = (*RIG, "stages", 0, "found")


def with_rail(*, taped: int, seen: int, word: HighRail = HighRail.ALL) -> Project:
    """A rail of 50 in taped and judged so many days before the review."""

    def said(value: object, days: int) -> StatedValue[object]:
        day = (ON - datetime.timedelta(days=days)).isoformat()
        return StatedValue(value, evidence=Evidence.MEASURED, by="MT", at=day)

    tall = put(PROJECT, (*FOUND, "rail_height"), said(parse("50 in", LENGTH), taped))
    return put(tall, (*FOUND, "high_rail"), said(word, seen))


def answer(project: Project) -> Verdict:
    judged = findings(project, "stage-measures", "D/ST-1")
    (one,) = (found for found in judged if found.question == "high-rail")
    return one.verdict


@pytest.mark.parametrize(
    ("project", "expected"),
    [
        (with_rail(taped=0, seen=0), Verdict.PASS),
        (with_rail(taped=3, seen=0), Verdict.PASS),
        (with_rail(taped=0, seen=1), Verdict.MISSING),
        (with_rail(taped=0, seen=0, word=HighRail.NOT_ALL), Verdict.FAIL),
        (with_rail(taped=0, seen=1, word=HighRail.NOT_ALL), Verdict.MISSING),
    ],
)
def test_what_was_seen_before_the_height_was_taped_is_of_another_rail(
    project: Project, expected: Verdict
) -> None:
    assert answer(project) is expected
