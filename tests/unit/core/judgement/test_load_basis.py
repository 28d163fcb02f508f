"""The load a factor multiplies. Hoist 1,000 lb, limiter 1,250 lb, line 25 + 20 lb, 700 + 500 lb."""

from __future__ import annotations

import pytest

from backspan.core.judgement.inputs import Inputs
from backspan.core.judgement.load_basis import BasisLoad, LoadReader
from backspan.core.model.project import Project
from backspan.core.model.rigs import HungStage
from backspan.core.quantities import FORCE, parse
from backspan.core.rules.shape import LoadBasis
from tests.unit.core.rigs import HOIST, LEFT, PROJECT, RIG, STAGE, case, put

POUNDS = {
    LoadBasis.HOIST_RATED: 1000,
    LoadBasis.HOIST_STALL: 2500,
    LoadBasis.LARGEST_ROPE_TENSION: 1250 + 25 + 20,
    LoadBasis.HALF_DEAD_FULL_LIVE: 350 + 500,
    LoadBasis.HALF_DEAD_HALF_LIVE: 350 + 250,
}

MISSING = [
    (LoadBasis.HOIST_STALL, (*HOIST, "stall_load"), "stall_load"),
    (LoadBasis.LARGEST_ROPE_TENSION, (*HOIST, "limiter_trip"), "limiter_trip"),
    (LoadBasis.LARGEST_ROPE_TENSION, (*LEFT, "rope_mass"), "rope_mass"),
    (LoadBasis.LARGEST_ROPE_TENSION, (*LEFT, "bottom_weight"), "bottom_weight"),
    (LoadBasis.HALF_DEAD_FULL_LIVE, (*STAGE, "dead_mass"), "dead_mass"),
    (LoadBasis.HALF_DEAD_HALF_LIVE, (*STAGE, "intended_load"), "intended_load"),
]


def read(basis: LoadBasis, project: Project = PROJECT) -> tuple[BasisLoad, Inputs]:
    inputs = Inputs(case(project))
    return LoadReader(inputs, inputs.case.points[0], LEFT).read(basis), inputs


@pytest.mark.parametrize("basis", list(LoadBasis))
def test_the_load_of_each_basis(basis: LoadBasis) -> None:
    found, inputs = read(basis)
    assert found.load == pytest.approx(parse(f"{POUNDS[basis]} lb", FORCE), rel=1e-12)
    assert inputs.not_stated == inputs.weak == []


@pytest.mark.parametrize("basis", list(LoadBasis))
def test_what_is_worked_out_ends_in_the_load(basis: LoadBasis) -> None:
    found, _ = read(basis)
    if found.steps:
        assert found.steps[-1].value == found.load


@pytest.mark.parametrize(("basis", "place", "name"), MISSING)
def test_what_a_basis_needs_is_asked_for(
    basis: LoadBasis, place: tuple[str, ...], name: str
) -> None:
    found, inputs = read(basis, put(PROJECT, place, None))
    assert found.load is None
    assert [dict(need.what.values)["input"] for need in inputs.not_stated] == [name]


def test_without_a_stage_its_share_is_not_known() -> None:
    found, inputs = read(LoadBasis.HALF_DEAD_FULL_LIVE, put(PROJECT, (*RIG, "stages"), ()))
    assert found.load is None
    assert [dict(need.what.values)["input"] for need in inputs.not_stated] == ["stage"]


def test_two_stages_on_one_point_are_added() -> None:
    stages = (*PROJECT.kit.stages, put(PROJECT.kit.stages[0], ("id",), "S2"))
    both = (HungStage("ST", ("L", "R")), HungStage("S2", ("L", "R")))
    two = put(put(PROJECT, ("kit", "stages"), stages), (*RIG, "stages"), both)
    found, _ = read(LoadBasis.HALF_DEAD_FULL_LIVE, two)
    assert found.load == pytest.approx(2 * parse("850 lb", FORCE), rel=1e-12)
