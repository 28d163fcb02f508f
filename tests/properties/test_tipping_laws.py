"""Laws of the tipping check: what makes a rig worse never makes its answer better."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from backspan.core.findings import Verdict
from backspan.core.model.project import Project
from backspan.core.model.rigs import PieceGroup
from backspan.core.quantities import FORCE, LENGTH, MASS, Style, parse_exact
from backspan.core.sheet.case import Place
from tests.properties.rig_strategies import (
    COUNT,
    CREDITED,
    RANK,
    TEXTS,
    beam_fits,
    is_stacked,
    moved,
    rigs,
    stack_fits,
    tipping,
)
from tests.unit.core.rigs import (
    ARM,
    BEAM,
    EN,
    HOIST,
    LEFT,
    OSHA,
    PROJECT,
    STACK,
    STAGE,
    at,
    count,
    force,
    length,
    mass,
    on_basis,
    put,
)

NUMBERED = tuple(one for one in TEXTS if one.rule_set != "ca-qc-s21-r4")
STEP = {Style.US: Fraction(254, 160_000), Style.METRIC: Fraction(1, 1000)}

pytestmark = pytest.mark.law("tipping")


def never_better(before: Project, after: Project) -> None:
    """The tipping answer after a change for the worse is no better than before."""
    assert RANK[tipping(after).verdict] <= RANK[tipping(before).verdict]


@given(rigs(), st.floats(0.001, 1.0))
def test_more_reach_never_improves(rig: Project, more: float) -> None:
    never_better(rig, moved(rig, (*ARM, "reach"), more))


@given(rigs(stacked=False), st.floats(0.001, 0.6))
def test_less_backspan_never_improves(rig: Project, less: float) -> None:
    never_better(rig, moved(rig, (*ARM, "backspan"), -less))


@given(rigs(stacked=True), st.floats(0.001, 0.6))
def test_a_stack_nearer_the_fulcrum_never_improves(rig: Project, nearer: float) -> None:
    never_better(rig, moved(rig, (*STACK, "tail_gap"), nearer))
    never_better(rig, moved(rig, (*ARM, "tip_beyond_line"), nearer))
    never_better(rig, moved(rig, (*BEAM, "length"), -nearer))


@given(rigs(stacked=True), st.floats(0.001, 0.1))
def test_thicker_pieces_never_improve(rig: Project, thicker: float) -> None:
    for group in at(rig, (*STACK, "groups")):
        place = ("kit", "pieces", group.piece.removeprefix("LOT-"), "length_on_beam")
        never_better(rig, moved(rig, place, thicker))


@given(rigs(stacked=False))
def test_a_piece_fewer_at_the_same_centroid_never_improves(rig: Project) -> None:
    for index in range(len(at(rig, (*STACK, "groups")))):
        never_better(rig, moved(rig, (*STACK, "groups", index, "count"), -1))


@given(rigs(stacked=True))
def test_an_innermost_piece_fewer_never_improves_while_the_stack_fits(rig: Project) -> None:
    assume(stack_fits(rig))
    never_better(rig, moved(rig, COUNT, -1))


@given(rigs(), st.floats(0.01, 20.0))
def test_heavier_pieces_never_worsen_while_the_stack_fits(rig: Project, heavier: float) -> None:
    assume(stack_fits(rig))
    for group in at(rig, (*STACK, "groups")):
        never_better(
            moved(rig, ("kit", "pieces", group.piece.removeprefix("LOT-"), "mass"), heavier), rig
        )


@pytest.mark.parametrize(
    "place",
    [
        (*HOIST, "rated_load"),
        (*HOIST, "stall_load"),
        (*HOIST, "limiter_trip"),
        (*LEFT, "rope_mass"),
        (*LEFT, "bottom_weight"),
        (*STAGE, "dead_mass"),
        (*STAGE, "intended_load"),
    ],
    ids=lambda place: str(place[-1]),
)
@given(rigs(), st.floats(0.01, 4000.0))
def test_a_larger_load_never_improves(place: Place, rig: Project, more: float) -> None:
    never_better(rig, moved(rig, place, more))


@given(rigs(texts=(OSHA, EN)), st.floats(0.01, 200.0))
def test_without_credit_a_heavier_beam_never_improves(rig: Project, more: float) -> None:
    never_better(rig, moved(rig, (*BEAM, "mass"), more))


@given(rigs(texts=(CREDITED,)), st.floats(0.01, 25.0))
def test_with_credit_a_beam_of_doubtful_mass_never_improves(rig: Project, doubt: float) -> None:
    vague = replace(at(rig, (*BEAM, "mass")), tolerance=doubt)
    never_better(rig, put(rig, (*BEAM, "mass"), vague))


@given(rigs())
def test_crediting_the_beam_asks_for_no_more_than_not_crediting_it(rig: Project) -> None:
    # A taped backspan that is not on its beam is refused for itself (test_beam_length.py).
    assume(beam_fits(rig))
    never_better(on_basis(rig, CREDITED), on_basis(rig, EN))


@given(
    st.sampled_from(["50 lb", "55 lb", "25 kg", "20 kg"]),
    st.integers(1, 40),
    st.integers(24 * 16, 200 * 16),
    st.integers(500, 1500),
    st.sampled_from(list(Style)),
)
def test_equal_moments_hold_and_one_step_beyond_they_do_not(
    piece: str, pieces: int, sixteenths: int, rated: int, style: Style
) -> None:
    """4 x rated x reach = pieces x piece x backspan, solved for the reach in exact fractions."""
    gravity = Fraction(980_665, 100_000)
    backspan = parse_exact(f"{sixteenths}/16 in", LENGTH)
    weight = parse_exact(piece, MASS) * gravity
    load = parse_exact(f"{rated} lb", FORCE)
    reach = pieces * weight * backspan / (4 * load)
    assume(Fraction(1, 20) < reach < backspan)
    rig = replace(put(PROJECT, (*HOIST, "rated_load"), force(f"{rated} lb")), units=style)
    rig = put(rig, (*HOIST, "stall_load"), force("100 lb"))
    rig = put(rig, ("kit", "pieces", "P", "mass"), mass(piece))
    rig = put(rig, (*STACK, "groups"), (PieceGroup("P", count(pieces)),))
    rig = put(rig, (*ARM, "backspan"), length(f"{sixteenths}/16 in"))
    rig = put(rig, (*ARM, "reach", "value"), float(reach))
    rig = put(rig, (*ARM, "tip_beyond_line"), length("0 in"))
    assert tipping(rig).verdict is Verdict.PASS
    beyond = float(STEP[style])
    fewer = put(rig, COUNT, count(pieces - 1))
    for worse in (
        moved(rig, (*ARM, "reach"), beyond),
        moved(rig, (*ARM, "backspan"), -beyond),
        moved(rig, (*HOIST, "rated_load"), float(parse_exact("1 lb", FORCE))),
        fewer,
    ):
        assert tipping(worse).verdict is Verdict.FAIL


@given(rigs(texts=NUMBERED))
def test_the_answer_is_the_comparison_of_the_two_moments_shown(rig: Project) -> None:
    found = tipping(rig)
    if found.demand is None or found.capacity is None:
        return
    enough = found.capacity.value >= found.demand.value * (1 - 1e-9)
    assert found.verdict is (Verdict.PASS if enough else Verdict.FAIL)
    if found.utilisation is not None:
        assert found.utilisation == pytest.approx(found.demand.value / found.capacity.value)


@given(rigs())
def test_both_modes_agree_on_the_backspan_that_was_worked_out(rig: Project) -> None:
    assume(is_stacked(rig))
    arms = [one.value for one in tipping(rig).steps if one.formula == "backspan_to_stack"]
    assume(arms and arms[0] > 0.05)
    taped = put(rig, (*ARM, "backspan"), length("10 ft"))
    taped = put(taped, (*ARM, "backspan", "value"), arms[0])
    taped = put(taped, (*ARM, "backspan_from"), type(at(rig, (*ARM, "backspan_from"))).MEASURED)
    one, other = tipping(rig), tipping(taped)
    if "beam_mass" in {used.name for used in other.inputs} - {used.name for used in one.inputs}:
        return  # what the tape does not tell of the beam's inboard length is taken against it
    assert one.verdict is other.verdict
