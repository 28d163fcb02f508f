"""Laws of every other limit: equality passes, one step of the roof beyond it fails.

One step is 1/16 in or 1 mm, 1 lb, or one piece. The tipping finding has laws of its own.
"""

from __future__ import annotations

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from backspan.core.findings import Verdict
from backspan.core.model.kit import BeamLabel, LabelState
from backspan.core.model.project import Project
from backspan.core.model.rigs import PieceGroup
from backspan.core.quantities import FORCE, LENGTH, MASS, parse
from tests.properties.rig_strategies import is_stacked, moved, pounds, rigs
from tests.unit.core.rigs import (
    ARM,
    BEAM,
    HOIST,
    OSHA,
    PIECE,
    PROJECT,
    QUEBEC,
    STACK,
    at,
    count,
    finding,
    findings,
    force,
    labelled,
    length,
    mass,
    on_basis,
    put,
)

FEW = settings(max_examples=30)
STEPS = pytest.mark.parametrize("step", ["1/16 in", "1 mm"])


@given(rigs(), st.integers(500, 1500))
@FEW
def test_a_stall_load_of_exactly_the_cap_passes_and_a_pound_more_fails(
    rig: Project, rated: int
) -> None:
    """29 CFR 1926 subpart L: at most three times the rated load."""
    rig = put(on_basis(rig, OSHA), (*HOIST, "rated_load"), force(f"{rated} lb"))
    at_cap = put(rig, (*HOIST, "stall_load"), force(f"{3 * rated} lb"))
    pound = parse("1 lb", FORCE)
    assert finding(at_cap, "stall-cap").verdict is Verdict.PASS
    for worse in (
        moved(at_cap, (*HOIST, "stall_load"), pound),
        moved(at_cap, (*HOIST, "rated_load"), -pound),
    ):
        assert finding(worse, "stall-cap").verdict is Verdict.FAIL


@given(rigs(), pounds(20, 110), st.integers(1, 40))
@FEW
def test_a_label_allows_exactly_what_it_says_and_not_a_piece_or_a_pound_more(
    rig: Project, piece: str, pieces: int
) -> None:
    """Both limits of a label, in pieces and in mass."""
    rig = put(rig, (*STACK, "groups"), (PieceGroup("P", count(pieces)),))
    rig = put(rig, (*PIECE, "mass"), mass(piece))
    total = f"{pieces * int(piece.removesuffix(' lb'))} lb"
    rig = put(rig, (*BEAM, "label"), labelled(pieces, total))
    assert {one.verdict for one in findings(rig, "beam-label")} == {Verdict.PASS}
    a_pound_less = moved(rig, (*BEAM, "label", "most_mass"), -parse("1 lb", MASS))
    a_piece_more = moved(rig, (*STACK, "groups", 0, "count"), 1)
    for worse, refused in ((a_pound_less, 1), (a_piece_more, 2)):
        verdicts = [one.verdict for one in findings(worse, "beam-label")]
        assert verdicts.count(Verdict.FAIL) == refused


def test_a_label_of_one_limit_is_held_to_that_limit_alone() -> None:
    """A label that states a mass and no number of pieces: sixteen plates of 55 lb are 880 lb."""
    label = BeamLabel(LabelState.READABLE, None, mass("880 lb"))
    rig = put(PROJECT, (*BEAM, "label"), label)
    assert {one.verdict for one in findings(rig, "beam-label")} == {Verdict.PASS}
    rig = moved(rig, (*STACK, "groups", 0, "count"), 1)
    verdicts = [one.verdict for one in findings(rig, "beam-label")]
    assert verdicts.count(Verdict.FAIL) == 1


@STEPS
@given(rigs())
@FEW
def test_a_stack_or_backspan_that_just_fits_the_beam_passes_and_one_step_more_fails(
    step: str, rig: Project
) -> None:
    """The beam is cut to the length that is taken, inboard and outboard of the fulcrum."""
    found = finding(rig, "beam-length")
    assert found.demand is not None
    assume(found.demand.value > 0.1)
    arm = at(rig, ARM)
    outboard = arm.reach.value + arm.tip_beyond_line.value
    rig = put(rig, (*BEAM, "length", "value"), found.demand.value + outboard)
    assert finding(rig, "beam-length").verdict is Verdict.PASS
    beyond = parse(step, LENGTH)
    inboard = (*STACK, "tail_gap") if is_stacked(rig) else (*ARM, "backspan")
    for worse in (
        moved(rig, (*BEAM, "length"), -beyond),
        moved(rig, (*ARM, "reach"), beyond),
        moved(rig, (*ARM, "tip_beyond_line"), beyond),
        moved(rig, inboard, beyond),
    ):
        assert finding(worse, "beam-length").verdict is Verdict.FAIL


@STEPS
@given(rigs(stacked=False), st.integers(6 * 16, 96 * 16))
@FEW
def test_a_proportion_of_exactly_one_and_a_half_passes_and_one_step_less_fails(
    step: str, rig: Project, sixteenths: int
) -> None:
    """Quebec, S-2.1 r.4, s. 3.9.15."""
    rig = put(on_basis(rig, QUEBEC), (*ARM, "reach"), length(f"{2 * sixteenths}/16 in"))
    rig = put(rig, (*ARM, "backspan"), length(f"{3 * sixteenths}/16 in"))
    assert finding(rig, "beam-proportion").verdict is Verdict.PASS
    beyond = parse(step, LENGTH)
    for worse in (moved(rig, (*ARM, "reach"), beyond), moved(rig, (*ARM, "backspan"), -beyond)):
        assert finding(worse, "beam-proportion").verdict is Verdict.FAIL


@STEPS
@given(rigs(stacked=True))
@FEW
def test_a_proportion_from_the_stack_holds_at_equality_and_not_one_step_further_in(
    step: str, rig: Project
) -> None:
    """The beam is cut so that the backspan to the stack is one and a half times the reach."""
    rig = on_basis(rig, QUEBEC)
    found = finding(rig, "beam-proportion")
    assert found.capacity is not None
    reach = at(rig, (*ARM, "reach")).value
    rig = moved(rig, (*BEAM, "length"), (1.5 - found.capacity.value) * reach)
    assume(at(rig, (*BEAM, "length")).value > 0.1)
    assert finding(rig, "beam-proportion").verdict is Verdict.PASS
    beyond = parse(step, LENGTH)
    for worse in (
        moved(rig, (*STACK, "tail_gap"), beyond),
        moved(rig, (*ARM, "reach"), beyond),
        moved(rig, (*BEAM, "length"), -beyond),
    ):
        assert finding(worse, "beam-proportion").verdict is Verdict.FAIL
