"""A drop and what is clear below it end above a lower roof that the plan shows under it."""

from __future__ import annotations

from dataclasses import replace

import pytest

from backspan.core.findings import Verdict
from backspan.core.model.evidence import Evidence
from backspan.core.model.project import Project
from backspan.core.model.site import Roof
from tests.unit.core.rigs import PROJECT, finding, length, put, reasons

DROP = ("drops", "D")
#: 100 ft down, 20 ft clear below, each to the inch.
EXACT = put(PROJECT, (*DROP, "height"), length("100 ft", tolerance="0 in"))
EXACT = put(EXACT, (*DROP, "clear_below"), length("20 ft", tolerance="0 in"))


def with_roof(below: str, project: Project = EXACT, *, out: float = 0.0) -> Project:
    """The site with a second roof so far below, in front of the face and `out` metres from it."""
    own = project.site.roofs[0]
    level = length(below).value
    measured = replace(own.level, tolerance=0.0, evidence=Evidence.MEASURED)
    outline = ((0.0, -out), (20.0, -out), (20.0, -out - 9.0), (0.0, -out - 9.0))
    low = Roof("LOW", "low roof", replace(measured, value=own.level.value - level), outline, ())
    levelled = replace(own, level=measured)
    return replace(project, site=replace(project.site, roofs=(levelled, low)))


@pytest.mark.parametrize(
    ("below", "verdict"),
    [("120 ft", Verdict.PASS), ("119 ft", Verdict.FAIL), ("90 ft", Verdict.FAIL)],
)
def test_a_lower_roof_under_the_drop_is_reckoned_with(below: str, verdict: Verdict) -> None:
    found = finding(with_roof(below), "roof-below", "D/LOW")
    assert (found.verdict, found.message.id) == (verdict, f"roof-below.{verdict}")


def test_what_is_not_known_is_missing() -> None:
    unknown = put(with_roof("150 ft"), (*DROP, "clear_below"), None)
    assert finding(unknown, "roof-below", "D/LOW").verdict is Verdict.MISSING


def test_one_beside_the_drop_or_above_it_is_none() -> None:
    for project in (with_roof("50 ft", out=30.0), with_roof("-5 ft"), EXACT):
        assert ("D", "na.no-roof-below") in reasons(project, "roof-below")
