"""Laws of the pad under a stand; the check of the surface is judged alone."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from backspan.core.findings import Finding, Verdict
from backspan.core.model.evidence import Evidence
from backspan.core.model.project import Project
from backspan.core.model.rigs import Pad
from backspan.core.quantities import PRESSURE
from backspan.core.sheet.case import Place
from tests.properties.rig_strategies import RANK, all_findings, inches
from tests.unit.core.rigs import ARM, PROJECT, length, put, stated

FULCRUM: Place = (*ARM, "fulcrum")
PAD: Place = (*FULCRUM, "pad")


@st.composite
def on_pads(draw: st.DrawFn) -> Project:
    """A beam whose plate, pad and surface are drawn, all of them stated."""
    project = PROJECT
    for name in ("plate_length", "plate_width"):
        project = put(project, (*FULCRUM, name), draw(inches(4, 20)))
    strength = stated(f"{draw(st.integers(5, 120))} psi", PRESSURE, Evidence.CERTIFICATE)
    project = put(project, (*FULCRUM, "surface_strength"), strength)
    return put(project, PAD, Pad(draw(inches(4, 40)), draw(inches(4, 40)), draw(inches(1, 8))))


def found(project: Project) -> Finding:
    only = [one for one in all_findings(project, "bearing").values() if one.subject == "D/L"]
    (one,) = only
    return one


def pressure(project: Project) -> float:
    demand = found(project).demand
    assert demand is not None
    return demand.value


def no_more(project: Project, changed: Project) -> None:
    """The changed rig presses no more, and is answered no worse."""
    assert pressure(changed) <= pressure(project) * (1 + 1e-9)
    assert RANK[found(changed).verdict] >= RANK[found(project).verdict]


@pytest.mark.law("bearing")
@given(on_pads(), inches(0, 8), st.sampled_from(["length", "width", "thickness"]))
def test_a_larger_or_thicker_pad_never_presses_more(rig: Project, more: object, side: str) -> None:
    place = (*PAD, side)
    stands = rig.drops[0].rig
    assert stands is not None
    beam = stands.suspension_points[0].counterweighted_beam
    assert beam is not None
    assert beam.fulcrum is not None
    assert beam.fulcrum.pad is not None
    stated_side = getattr(beam.fulcrum.pad, side)
    no_more(rig, put(rig, (*place, "value"), stated_side.value + more.value))  # type: ignore[attr-defined]


@pytest.mark.law("bearing")
@given(on_pads())
def test_a_pad_as_large_as_the_plate_never_presses_more_than_the_plate_alone(rig: Project) -> None:
    large = put(rig, PAD, Pad(length("40 in"), length("40 in"), length("1 in")))
    no_more(put(rig, PAD, None), large)


@pytest.mark.law("bearing")
@given(on_pads(), st.sampled_from(["length", "width", "thickness"]))
def test_a_pass_does_not_survive_what_nobody_stated(rig: Project, side: str) -> None:
    assert found(put(rig, (*PAD, side), None)).verdict is not Verdict.PASS
    assert found(rig).verdict is not Verdict.MISSING
