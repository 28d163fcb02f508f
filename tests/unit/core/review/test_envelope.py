"""The operating envelope: as built it lies inside exactly where the rule it is drawn for holds."""

from __future__ import annotations

import itertools

import pytest

from backspan.core.findings import Envelope, Verdict
from backspan.core.model.project import Project
from backspan.core.review import review
from tests.unit.core.rigs import (
    ARM,
    EN,
    LIBRARY,
    NEW_ZEALAND,
    ON,
    OSHA,
    PROJECT,
    QUEBEC,
    RIG,
    STACK,
    STACKED,
    count,
    finding,
    findings,
    length,
    on_basis,
    put,
)

COUNT = (*STACK, "groups", 0, "count")


def envelope(project: Project) -> Envelope:
    made = review(project, "D", LIBRARY, on=ON)
    return next(one for one in made.envelopes if one.subject == "D/L")


def reach_at(drawn: Envelope, backspan: float) -> float:
    """The reach on the drawn curve at a backspan, straight between its points."""
    points = [(one.backspan.value, one.most_reach.value) for one in drawn.points]
    for (near, low), (far, high) in itertools.pairwise(points):
        if near <= backspan <= far:
            return low + (high - low) * (backspan - near) / (far - near)
    raise AssertionError("outside the curve")


@pytest.mark.parametrize("project", [PROJECT, STACKED, on_basis(PROJECT, NEW_ZEALAND)])
@pytest.mark.parametrize("pieces", [5, 8, 11, 14, 15, 16, 30])
def test_inside_is_where_the_rule_holds(project: Project, pieces: int) -> None:
    rig = put(project, COUNT, count(pieces))
    drawn = envelope(rig)
    inside = drawn.reach_now.value <= reach_at(drawn, drawn.backspan_now.value)
    assert inside is (finding(rig, "tipping").verdict is Verdict.PASS)


def test_the_point_as_built_is_the_one_the_check_used() -> None:
    vague = put(PROJECT, (*ARM, "reach"), length("2 ft", tolerance="1 in"))
    drawn = envelope(vague)
    assert drawn.reach_now.value == pytest.approx(25 * 0.0254)
    assert drawn.backspan_now.value == pytest.approx(120 * 0.0254)
    assert drawn.pieces == 16
    assert drawn.counterweight.value == pytest.approx(880 * 0.45359237)


def test_the_curve_begins_at_no_backspan_and_goes_beyond_what_is_there() -> None:
    points = envelope(PROJECT).points
    assert points[0].backspan.value == 0.0
    assert points[0].most_reach.value == 0.0
    assert points[-1].backspan.value > envelope(PROJECT).backspan_now.value
    reaches = [one.most_reach.value for one in points]
    assert reaches == sorted(reaches)


def test_the_envelope_is_drawn_for_the_rule_that_asks_for_most() -> None:
    """Under two rule sets a point inside the envelope holds under both."""
    for basis in ((OSHA, EN), (EN, OSHA)):
        rig = put(on_basis(PROJECT, *basis), COUNT, count(13))
        drawn = envelope(rig)
        inside = drawn.reach_now.value <= reach_at(drawn, drawn.backspan_now.value)
        holds = all(one.verdict is not Verdict.FAIL for one in findings(rig, "tipping"))
        assert inside is holds is False


@pytest.mark.parametrize(
    "project",
    [
        put(PROJECT, RIG, None),
        put(put(PROJECT, (*ARM, "backspan"), None), (*STACK, "groups"), ()),
        put(PROJECT, (*STACK, "groups"), ()),
        put(PROJECT, (*ARM, "reach"), None),
        on_basis(PROJECT, QUEBEC),
    ],
)
def test_where_there_is_no_number_nothing_is_drawn(project: Project) -> None:
    made = review(project, "D", LIBRARY, on=ON)
    assert "D/L" not in {one.subject for one in made.envelopes}
