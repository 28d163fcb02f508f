"""Laws of the suspension line's own numbers: clips, wear, length; each is judged alone."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from backspan.core.findings import Finding, FindingKey, Verdict
from backspan.core.model.kit import HoistRope
from backspan.core.model.project import Project
from backspan.core.quantities import MOMENT
from backspan.core.sheet.case import Place
from tests.properties.rig_strategies import RANK, all_findings, inches
from tests.unit.core.rigs import HOIST, PROJECT, RIGHT, at, count, place_of, put, stated

SHEET: Place = ("kit", "terminations", "GRIPS", "clips")
CLIPS: Place = (*RIGHT, "clips")
WEAR: Place = ("kit", "units", "W-1", "wear")


def foot_pounds(low: int, high: int) -> st.SearchStrategy[Any]:
    """Torques in whole foot-pounds."""
    return st.integers(low, high).map(lambda number: stated(f"{number} lb ft", MOMENT))


@st.composite
def lines(draw: st.DrawFn) -> Project:
    """A rig whose clips, rope wear and rope length are drawn, all of them stated."""
    project = PROJECT
    for place, value in (
        ((*CLIPS, "count"), count(draw(st.integers(0, 6)))),
        ((*CLIPS, "spacing"), draw(inches(1, 4))),
        ((*CLIPS, "turnback"), draw(inches(3, 20))),
        ((*CLIPS, "torque"), draw(foot_pounds(4, 60))),
        ((*SHEET, "count", "value"), draw(st.integers(2, 4))),
        ((*SHEET, "turnback", "value"), draw(inches(3, 12)).value),
        ((*SHEET, "torque", "value"), draw(foot_pounds(4, 60)).value),
        ((*WEAR, "broken_in_lay"), count(draw(st.integers(0, 9)))),
        ((*WEAR, "broken_in_strand"), count(draw(st.integers(0, 5)))),
        ((*WEAR, "wire_worn", "value"), draw(st.floats(0.0, 0.6))),
        ((*RIGHT, "rope_length"), draw(inches(1000, 1500))),
    ):
        project = put(project, place, value)
    return project


def verdicts(project: Project, check: str) -> dict[FindingKey, Finding]:
    """The findings of one check on the points drawn here."""
    return all_findings(project, check)


def no_worse(project: Project, changed: Project, check: str) -> None:
    """Every finding of the changed rig is at least as good."""
    before, after = verdicts(project, check), verdicts(changed, check)
    assert before.keys() == after.keys()
    for key, found in after.items():
        assert RANK[found.verdict] >= RANK[before[key].verdict], key


def more(project: Project, place: Place, by: float) -> Project:
    """The project with a stated number larger by so much."""
    value = at(project, place)
    return put(project, place, replace(value, value=value.value + by))


@pytest.mark.law("clips")
@given(lines(), st.sampled_from(["spacing", "turnback"]), st.floats(0.0, 0.3))
def test_clips_further_apart_or_with_more_rope_turned_back_are_no_worse(
    rig: Project, name: str, by: float
) -> None:
    no_worse(rig, more(rig, (*CLIPS, name), by), "clips")


@pytest.mark.law("clips")
@given(lines())
def test_a_clip_more_with_the_rope_it_asks_for_is_no_worse(rig: Project) -> None:
    per_clip = at(rig, (*SHEET, "turnback")).value / at(rig, (*SHEET, "count")).value
    longer = more(rig, (*CLIPS, "turnback"), per_clip)
    no_worse(rig, more(longer, (*CLIPS, "count"), 1), "clips")


@pytest.mark.law("rope-wear")
@given(lines(), st.sampled_from(["broken_in_lay", "broken_in_strand", "wire_worn"]))
def test_more_wear_is_no_better(rig: Project, name: str) -> None:
    by = 0.05 if name == "wire_worn" else 1
    no_worse(more(rig, (*WEAR, name), by), rig, "rope-wear")


@pytest.mark.law("rope-length")
@given(lines(), st.floats(0.0, 5.0))
def test_a_longer_rope_is_no_worse(rig: Project, by: float) -> None:
    no_worse(rig, more(rig, (*RIGHT, "rope_length"), by), "rope-length")


@pytest.mark.law("rope-length")
@given(lines(), st.integers(0, 9), st.integers(0, 3))
def test_more_turns_on_a_drum_are_no_worse(rig: Project, turns: int, by: int) -> None:
    drum = put(rig, (*HOIST, "takes_rope"), HoistRope.WINDS)
    few, many = (put(drum, (*RIGHT, "drum_turns"), count(one)) for one in (turns, turns + by))
    no_worse(few, many, "rope-length")


#: Every number of these checks, which nobody may have stated.
NUMBERS = (
    *(("clips", f"clip_{name}") for name in ("count", "spacing", "turnback", "torque")),
    *(("clips", f"sheet_{name}") for name in ("clip_count", "turnback", "torque")),
    *(("rope-wear", name) for name in ("broken_in_lay", "broken_in_strand", "wire_worn")),
    ("rope-length", "drop_height"),
)


@pytest.mark.law
@pytest.mark.parametrize(("check", "name"), NUMBERS, ids=[name for _, name in NUMBERS])
@given(lines())
def test_a_pass_does_not_survive_what_nobody_stated(check: str, name: str, rig: Project) -> None:
    left = verdicts(put(rig, place_of(name), None), check)
    for key, found in verdicts(rig, check).items():
        if any(used.name == name and used.place == place_of(name) for used in found.inputs):
            assert left[key].verdict is not Verdict.PASS, key


@pytest.mark.law
@pytest.mark.parametrize(("check", "name"), NUMBERS, ids=[name for _, name in NUMBERS])
@given(lines(), st.floats(0.0, 0.3), st.floats(0.0, 0.3))
def test_a_larger_tolerance_never_improves(
    check: str, name: str, rig: Project, one: float, other: float
) -> None:
    place = place_of(name)
    value = at(rig, place)
    whole = isinstance(value.value, int)
    shares = (0.0, 1.0) if whole else sorted(share * value.value for share in (one, other))
    if whole and value.value <= 1:
        return
    small, large = (int(share) if whole else share for share in shares)
    wide = put(rig, (*place, "tolerance"), large)
    no_worse(wide, put(rig, (*place, "tolerance"), small), check)
