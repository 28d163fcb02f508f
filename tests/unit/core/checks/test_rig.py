"""The rig as a whole: points, supports, stages; supports for an engineer."""

from __future__ import annotations

import pytest

from backspan.core.findings import Verdict
from backspan.core.model.project import Project
from backspan.core.model.rigs import OtherSupport, OtherSupportKind, Rig
from backspan.core.model.stages import HungStage
from tests.unit.core.rigs import ARM, LEFT, PROJECT, RIG, finding, findings, needs, put, reasons

CLAMP = OtherSupport(OtherSupportKind.PARAPET_CLAMP, document="sketch 7")


def hung(*stages: HungStage) -> Project:
    return put(PROJECT, (*RIG, "stages"), stages)


@pytest.mark.parametrize("rig", [None, Rig()])
def test_a_drop_without_a_rig_is_missing(rig: Rig | None) -> None:
    bare = put(PROJECT, RIG, rig)
    found = finding(bare, "rig-described", "D")
    assert found.verdict is Verdict.MISSING
    assert needs(found) == (("need.input", "suspension_points"),)
    assert reasons(bare, "hanging") == (("D", "na.no-suspension-point"),)


def test_a_point_has_one_support() -> None:
    assert finding(PROJECT, "rig-described").verdict is Verdict.PASS
    none = finding(put(PROJECT, ARM, None), "rig-described")
    assert none.verdict is Verdict.MISSING
    assert none.message.id == "support.none"
    both = finding(put(PROJECT, (*LEFT, "other_support"), CLAMP), "rig-described")
    assert both.verdict is Verdict.FAIL
    assert both.message.id == "support.several"


def test_a_stage_on_two_points() -> None:
    assert finding(PROJECT, "hanging").verdict is Verdict.PASS
    assert finding(PROJECT, "hanging", "D/ST-1").message.id == "stage-hangs.two"


@pytest.mark.parametrize("points", [("L",), ("L", "L"), ()])
def test_a_stage_on_one_point_fails(points: tuple[str, ...]) -> None:
    found = finding(hung(HungStage("ST", points)), "hanging", "D/ST")
    assert found.verdict is Verdict.FAIL
    assert found.message.id == "stage-hangs.one"


def test_a_point_without_a_stage_is_missing() -> None:
    found = finding(hung(), "hanging")
    assert found.verdict is Verdict.MISSING
    assert needs(found) == (("need.input", "stage"),)


def test_two_stages_on_one_point_fail() -> None:
    stages = (*PROJECT.kit.stages, put(PROJECT.kit.stages[0], ("id",), "S2"))
    two = put(PROJECT, ("kit", "stages"), stages)
    both = (HungStage("ST", ("L", "R")), HungStage("S2", ("L", "R")))
    found = finding(put(two, (*RIG, "stages"), both), "hanging")
    assert found.verdict is Verdict.FAIL
    assert found.message.id == "stage-on-point.several"


@pytest.mark.parametrize("kind", list(OtherSupportKind))
def test_any_other_support_is_for_a_licensed_engineer(kind: OtherSupportKind) -> None:
    other = put(put(PROJECT, ARM, None), (*LEFT, "other_support"), OtherSupport(kind))
    found = finding(other, "other-support")
    assert found.verdict is Verdict.REFER
    assert [need.who for need in found.needs] == ["licensed engineer"]
    assert dict(found.message.values)["kind"] == str(kind)


def test_a_counterweighted_beam_is_no_other_support() -> None:
    assert findings(PROJECT, "other-support") == ()
    assert set(reasons(PROJECT, "other-support")) == {
        ("D/L", "na.counterweighted"),
        ("D/R", "na.counterweighted"),
    }
