"""Laws of people and loads: the share of each hoist against exact statics; each check alone."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from backspan.core.findings import Finding, Verdict
from backspan.core.model.project import Project
from backspan.core.model.stages import HungStage
from backspan.core.model.work import LoadKind, PlacedLoad, WorkStep
from backspan.core.sheet.case import Place
from tests.properties.rig_strategies import RANK, all_findings
from tests.unit.core.rigs import HOIST, PROJECT, RIG, STAGE, count, force, length, mass, put

#: Everything in these laws is exact: 1 lb in newtons, and lengths in whole inches.
POUND = Fraction("0.45359237") * Fraction("9.80665")
DEAD, APART, RATED = 700, 216, 1000
SPOTS: Place = (*RIG, "stages")


def load(number: int, pounds: int, at: int | None, to: int | None = None) -> PlacedLoad:
    """A thing of so many pounds, so many inches from the left stirrup."""
    where = None if at is None else at * 0.0254
    further = None if to is None else to * 0.0254
    stated = mass(f"{pounds} lb", tolerance="0 lb")
    return PlacedLoad(f"U{number}", LoadKind.MATERIAL, stated, where, further)


def with_work(*loads: PlacedLoad) -> Project:
    """The rig with one step of work; nothing of it is in doubt."""
    project = put(PROJECT, SPOTS, (HungStage("ST-1", ("L", "R"), work=(WorkStep("UP", loads),)),))
    project = put(project, (*STAGE, "stirrup_spacing"), length("18 ft", tolerance="0 in"))
    project = put(project, (*STAGE, "intended_load"), mass("900 lb"))
    return put(project, (*HOIST, "rated_load"), force("1000 lb"))


def found(project: Project, says: str) -> Finding:
    """The finding of one question of the stage."""
    check = "hoist-share" if says.endswith("-in-step") else "work-steps"
    (one,) = [
        each
        for each in all_findings(project, check).values()
        if each.message.id.rpartition(".")[0] == says
    ]
    return one


LOADS = st.lists(st.tuples(st.integers(10, 600), st.integers(-12, 228)), min_size=1, max_size=4)


@pytest.mark.law("hoist-share")
@given(LOADS)
def test_the_share_of_a_hoist_is_that_of_statics(drawn: list[tuple[int, int]]) -> None:
    one = found(with_work(*(load(n, w, x) for n, (w, x) in enumerate(drawn))), "share-in-step")
    left = Fraction(DEAD, 2) + sum(Fraction(w * (APART - x), APART) for w, x in drawn)
    right = Fraction(DEAD, 2) + sum(Fraction(w * x, APART) for w, x in drawn)
    worst = max(left, right)
    assert one.demand is not None
    assert one.demand.value == pytest.approx(float(worst * POUND), rel=1e-9)
    assert (one.verdict is Verdict.PASS) == (worst <= RATED)


@pytest.mark.law("hoist-share")
@given(st.integers(10, 900), st.integers(0, 108), st.integers(0, 40))
def test_nearer_to_a_hoist_never_brings_less_on_it(pounds: int, at: int, by: int) -> None:
    far, near = (
        found(with_work(load(1, pounds, x)), "share-in-step") for x in (at, max(at - by, -12))
    )
    assert far.demand is not None
    assert near.demand is not None
    assert near.demand.value >= far.demand.value * (1 - 1e-9)
    assert RANK[near.verdict] <= RANK[far.verdict]


@pytest.mark.law("hoist-share")
@given(st.integers(10, 900), st.integers(0, 216), st.integers(0, 216))
def test_who_walks_is_no_better_than_who_stands_and_who_is_nowhere_is_the_worst(
    pounds: int, at: int, to: int
) -> None:
    stands, walks, anywhere = (
        found(with_work(load(1, pounds, *places)), "share-in-step")
        for places in ((at, None), (at, to), (None, None))
    )
    assert RANK[anywhere.verdict] <= RANK[walks.verdict] <= RANK[stands.verdict]


@pytest.mark.law("work-steps")
@given(LOADS, st.integers(0, 400))
def test_more_on_the_stage_is_no_better(drawn: list[tuple[int, int]], more: int) -> None:
    loads = [load(n, w, x) for n, (w, x) in enumerate(drawn)]
    first = replace(loads[0], mass=mass(f"{drawn[0][0] + more} lb"))
    before = found(with_work(*loads), "step-load")
    after = found(with_work(first, *loads[1:]), "step-load")
    assert RANK[after.verdict] <= RANK[before.verdict]
    assert (before.verdict is Verdict.PASS) == (sum(w for w, _ in drawn) <= 900)


@pytest.mark.law("work-steps")
@given(st.integers(1, 4), st.integers(0, 4))
def test_the_steps_have_all_who_ride_and_nobody_else(riders: int, people: int) -> None:
    there = [PlacedLoad(f"P{one}", LoadKind.PERSON) for one in range(people)]
    rig = put(with_work(*there), (*RIG, "riders"), count(riders))
    assert (found(rig, "steps-with-all").verdict is Verdict.PASS) == (people == riders)
