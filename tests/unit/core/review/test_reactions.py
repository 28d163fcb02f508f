"""What the structural engineer is told of each beam: the sums of the tests of both bearings.

The edge of the rig runs from (60, 0) to (0, 0) ft, the roof to its right; point L hangs at 1 ft.
"""

from __future__ import annotations

from dataclasses import replace

import pytest

from backspan.core.findings import Pressed, Reactions
from backspan.core.model.project import Project
from backspan.core.quantities import FORCE, LENGTH, Amount, parse
from backspan.core.review import review
from backspan.core.review.report import formula_descriptions, review_data
from tests.unit.core.rigs import (
    ARM,
    BEAM,
    LIBRARY,
    ON,
    PROJECT,
    QUEBEC,
    on_basis,
    put,
    without_stall,
)


def of(project: Project = PROJECT) -> Reactions:
    return review(project, "D", LIBRARY, on=ON, compared=False).reactions[0]


def pounds(one: Amount | None) -> float:
    assert one is not None
    return one.value / parse("1 lb", FORCE)


def feet(one: Pressed) -> tuple[float, ...]:
    assert one.at is not None
    return tuple(each.value / parse("1 ft", LENGTH) for each in one.at)


def test_the_fulcrum_is_told_idle_loaded_with_each_factor_and_at_the_most() -> None:
    front = of().front
    assert pounds(front.idle) == pytest.approx(70.0, rel=1e-9)
    assert pounds(front.rated) == pytest.approx(1270.0, rel=1e-9)
    assert [pounds(one.load) for one in front.imposed] == pytest.approx([5080.0, 4605.0], rel=1e-9)
    assert pounds(front.most) == pytest.approx(2080.0, rel=1e-9)


def test_the_rear_stand_likewise_its_factors_on_what_lies_there_idle() -> None:
    rear = of().rear
    assert pounds(rear.idle) == pytest.approx(1010.0, rel=1e-9)
    assert pounds(rear.rated) == pytest.approx(810.0, rel=1e-9)
    assert [pounds(one.load) for one in rear.imposed] == pytest.approx([4040.0, 1515.0], rel=1e-9)
    assert rear.most == rear.idle


def test_both_stands_carry_all_there_is() -> None:
    found = of()
    for name, every in (("idle", 1080.0), ("rated", 2080.0)):
        carried = pounds(getattr(found.front, name)) + pounds(getattr(found.rear, name))
        assert carried == pytest.approx(every, rel=1e-9)


def test_their_places_are_on_the_plan_of_the_site() -> None:
    found = of()
    assert feet(found.front) == pytest.approx((59.0, 1.5), rel=1e-9)
    assert feet(found.rear) == pytest.approx((59.0, 11.5), rel=1e-9)


def test_what_is_not_known_is_not_nought() -> None:
    no_stand = of(put(PROJECT, (*ARM, "rear_stand"), None))
    assert (no_stand.front.idle, no_stand.rear.idle, no_stand.rear.at) == (None, None, None)
    assert pounds(no_stand.front.most) == pytest.approx(2080.0, rel=1e-9)
    bare = of(put(put(PROJECT, (*ARM, "fulcrum"), None), (*ARM, "rear"), None))
    assert (bare.kind, bare.front.at, bare.rear.plate_length) == (None, None, None)
    assert of(put(PROJECT, (*BEAM, "mass"), None)).front.most is None
    assert [one.load is None for one in of(without_stall(PROJECT)).front.imposed] == [False, True]


def test_factors_are_those_of_the_rules_in_force() -> None:
    assert of(on_basis(PROJECT, QUEBEC)).front.imposed == ()


def test_a_drop_without_a_beam_has_none() -> None:
    made = review(put(PROJECT, ("drops", "D", "rig"), None), "D", LIBRARY, on=ON, compared=False)
    assert made.reactions == ()


def test_the_data_holds_them_with_their_texts() -> None:
    made = review(replace(PROJECT), "D", LIBRARY, on=ON, compared=False)
    first = review_data(made, formulas=formula_descriptions())["reactions"][0]
    assert (first["subject"], first["kind"]) == ("D/L", "pad")
    assert first["front"]["rated"]["text"] == "1,270 lb"
    assert [one["text"] for one in first["rear"]["at"]] == ["59'-0\"", "11'-6\""]


def test_a_pad_is_told_as_far_as_it_is_stated() -> None:
    front = (*ARM, "fulcrum", "pad")
    inches = [None if one is None else one.value / 0.0254 for one in of().front.pad or ()]
    assert inches == pytest.approx([24.0, 24.0, 1.5], rel=1e-9)
    thin = of(put(PROJECT, (*front, "thickness"), None)).front.pad
    assert thin is not None
    assert thin[0] is not None
    assert thin[2] is None
    assert of(put(PROJECT, front, None)).front.pad is None
