"""The load a factor multiplies. Hoist 1,000 lb, limiter 1,250 lb, line 25 + 20 lb, 700 + 500 lb."""

from __future__ import annotations

import math

import pytest

from backspan.core.model.project import Project
from backspan.core.model.stages import HungStage
from backspan.core.quantities import FORCE, parse
from backspan.core.rules.shape import LoadBasis
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.load_on_line import line_reads, load_on_line
from backspan.core.sheet.sheet import RecordedSheet
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


def read(basis: LoadBasis, project: Project = PROJECT) -> tuple[float, RecordedSheet]:
    one = case(project)
    sheet = RecordedSheet(Inputs(one))
    return load_on_line(sheet, line_reads(one, one.points[0]), basis), sheet


@pytest.mark.parametrize("basis", list(LoadBasis))
def test_the_load_of_each_basis(basis: LoadBasis) -> None:
    load, sheet = read(basis)
    assert load == pytest.approx(parse(f"{POUNDS[basis]} lb", FORCE), rel=1e-12)
    assert sheet.inputs.not_stated == sheet.inputs.weak == []


@pytest.mark.parametrize("basis", list(LoadBasis))
def test_what_is_worked_out_ends_in_the_load(basis: LoadBasis) -> None:
    load, sheet = read(basis)
    if sheet.steps:
        assert sheet.steps[-1].value == load


@pytest.mark.parametrize(("basis", "place", "name"), MISSING)
def test_what_a_basis_needs_is_asked_for(
    basis: LoadBasis, place: tuple[str, ...], name: str
) -> None:
    rig = put(PROJECT, place, None)
    if name == "stall_load":
        rig = put(rig, (*HOIST, "limiter_trip"), None)
    load, sheet = read(basis, rig)
    assert math.isnan(load)
    assert [dict(need.what.values)["input"] for need in sheet.inputs.not_stated] == [name]


def test_without_a_stage_its_share_is_not_known() -> None:
    load, sheet = read(LoadBasis.HALF_DEAD_FULL_LIVE, put(PROJECT, (*RIG, "stages"), ()))
    assert math.isnan(load)
    assert [dict(need.what.values)["input"] for need in sheet.inputs.not_stated] == ["stage"]


def test_two_stages_on_one_point_are_added() -> None:
    stages = (*PROJECT.kit.stages, put(PROJECT.kit.stages[0], ("id",), "S2"))
    both = (HungStage("ST", ("L", "R")), HungStage("S2", ("L", "R")))
    two = put(put(PROJECT, ("kit", "stages"), stages), (*RIG, "stages"), both)
    load, _ = read(LoadBasis.HALF_DEAD_FULL_LIVE, two)
    assert load == pytest.approx(2 * parse("850 lb", FORCE), rel=1e-12)
