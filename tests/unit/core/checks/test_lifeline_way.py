"""A lifeline that the plan shows over something on the roof is for who knows how it runs."""

from __future__ import annotations

from backspan.core.findings import Verdict
from backspan.core.model.project import Project
from backspan.core.quantities import LENGTH, parse
from tests.unit.core.rigs import PROJECT, RIG, finding, needs, put, reasons

ANCHOR = ("site", "roofs", "ROOF", "anchors", "A3", "at")
STATION = (*RIG, "lifelines", "LL1", "station")


def feet(number: float) -> float:
    return number * parse("1 ft", LENGTH)


def behind(x: float, y: float) -> Project:
    """The first lifeline from an anchor here, in feet; the vent stands at 49 to 51, 20 to 22."""
    return put(put(PROJECT, ANCHOR, (feet(x), feet(y))), STATION, feet(10.0))


def test_a_line_over_an_obstacle_is_referred() -> None:
    found = finding(behind(50.0, 30.0), "lifeline-way", "D/LL1")
    assert (found.verdict, found.message.id) == (Verdict.REFER, "lifeline-way.in-the-way")
    assert dict(found.message.values)["obstacles"] == ("VENT",)
    assert [one for one, _ in needs(found)] == ["need.lifeline-way"]


def test_one_beside_it_or_in_front_of_it_runs_free() -> None:
    for x, y in ((55.0, 30.0), (50.0, 15.0)):
        assert finding(behind(x, y), "lifeline-way", "D/LL1").verdict is Verdict.PASS


def test_one_that_may_touch_by_what_a_plan_is_off_is_asked() -> None:
    assert finding(behind(50.0, 19.9), "lifeline-way", "D/LL1").verdict is Verdict.REFER


def test_one_of_no_known_place_is_asked_elsewhere() -> None:
    assert ("D/LL1", "na.line-not-placed") in reasons(put(PROJECT, STATION, None), "lifeline-way")
