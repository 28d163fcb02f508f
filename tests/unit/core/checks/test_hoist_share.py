"""Two hoists that lift all of it together, and the one on which most of it stands."""

from __future__ import annotations

from dataclasses import replace

import pytest

from backspan.core.findings import Finding, Verdict
from backspan.core.model.project import Project
from backspan.core.model.stages import HungStage
from backspan.core.model.work import LoadKind, PlacedLoad, WorkStep
from backspan.core.review import review
from tests.unit.core.rigs import (
    LIBRARY,
    ON,
    PROJECT,
    RIG,
    RIGHT,
    STAGE,
    at,
    findings,
    length,
    mass,
    put,
)

POUND = 4.4482216152605
#: Who stays where they are goes nowhere else.
MEN = tuple(PlacedLoad(one, LoadKind.PERSON, at=0.9144, to=0.9144) for one in ("P1", "P2"))
WINDOWS = PlacedLoad("U", LoadKind.MATERIAL, mass("400 lb"), at=0.6096)


def loaded(*loads: PlacedLoad) -> Project:
    """20 ft between the ropes, 600 lb of stage and hoists."""
    project = put(PROJECT, (*STAGE, "stirrup_spacing"), length("20 ft", tolerance="0 in"))
    project = put(project, (*STAGE, "dead_mass"), mass("600 lb"))
    project = put(project, (*STAGE, "intended_load"), mass("900 lb"))
    hung = HungStage("ST-1", ("L", "R"), work=(WorkStep("UP", loads),))
    return put(project, (*RIG, "stages"), (hung,))


def share(project: Project) -> Finding:
    """The finding on the worst share."""
    found = review(project, "D", LIBRARY, on=ON, compared=False).findings
    (one,) = [each for each in found if each.message.id.startswith("share-in-step")]
    return one


def test_two_men_and_two_windows_near_one_rope() -> None:
    """Numbers by hand: 300 + 500 x 17/20 + 400 x 18/20; the other rope 415 lb.

    Source: this project's notes of practice, a calculation; statics.
    """
    one = share(loaded(*MEN, WINDOWS))
    assert one.verdict is Verdict.FAIL
    assert one.demand is not None
    assert one.demand.value == pytest.approx(1085 * POUND, rel=1e-9)
    assert dict(one.message.values)["side"] == "left"
    results = {round(step.value / POUND, 6) for step in one.steps if step.formula == "hoist_share"}
    assert results == {1085.0, 415.0}


def test_a_load_beyond_its_rope_brings_more_than_itself_on_it() -> None:
    """18 in outside a rope 20 ft from the other: 1.075 of it, by hand."""
    longer = put(
        loaded(PlacedLoad("U", LoadKind.MATERIAL, mass("400 lb"), at=-0.4572)),
        (*STAGE, "length"),
        length("24 ft"),
    )
    one = share(longer)
    assert one.demand is not None
    assert one.demand.value == pytest.approx((300 + 1.075 * 400) * POUND, rel=1e-9)


def test_people_walk_wherever_they_began() -> None:
    """In the middle, and nobody said that they stay: 300 + 500 lb where they come to one rope."""
    middle = tuple(PlacedLoad(one, LoadKind.PERSON, at=3.048) for one in ("P1", "P2"))
    walking, placed = share(loaded(*middle)), share(loaded(*(replace(p, to=p.at) for p in middle)))
    unplaced = share(loaded(*(replace(one, at=None) for one in middle)))
    assert walking.demand == unplaced.demand
    assert walking.demand is not None
    assert placed.demand is not None
    assert walking.demand.value == pytest.approx(800 * POUND, rel=1e-9)
    assert placed.demand.value == pytest.approx(550 * POUND, rel=1e-9)
    # A thing stays where it lies.
    lying = PlacedLoad("U", LoadKind.MATERIAL, mass("500 lb"), at=3.048)
    there = share(loaded(lying)).demand
    assert there is not None
    assert there.value == pytest.approx(550 * POUND, rel=1e-9)


def test_with_three_lines_half_is_still_half() -> None:
    """700 lb and 500 lb hang: 600 lb may come on one line of however many; a third is less."""
    right = at(PROJECT, RIGHT)
    points = (*at(PROJECT, (*RIG, "suspension_points")), replace(right, id="M"))
    three = put(PROJECT, (*RIG, "suspension_points"), points)
    hung = put(three, (*RIG, "stages"), (HungStage("ST-1", ("L", "M", "R")),))
    (half,) = (
        one for one in findings(hung, "hoist-load", "D/ST-1") if one.question == "hoists-by-half"
    )
    assert half.demand is not None
    assert half.demand.value == pytest.approx(600 * POUND, rel=1e-9)
    single = put(PROJECT, (*RIG, "stages"), (HungStage("ST-1", ("L",)),))
    assert {one.question for one in findings(single, "hoist-load", "D/ST-1")} == {"hoists-in-sum"}


def test_a_point_names_the_very_stage_that_hangs_from_it() -> None:
    (found,) = findings(PROJECT, "hanging", "D/L")
    assert dict(found.message.values)["stages"] == ("ST-1",)
    assert [one.place for one in found.inputs] == [(*RIG, "stages", "ST-1")]
