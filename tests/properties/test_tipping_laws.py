"""Laws of the tipping finding: what makes a rig worse never makes its answer better."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from backspan.core.findings import Finding, Verdict
from backspan.core.judgement.case import Place
from backspan.core.model.project import Project
from backspan.core.model.rigs import PieceGroup
from backspan.core.quantities import FORCE, LENGTH, MASS, Style, parse, parse_exact
from backspan.core.review import review
from backspan.core.rules.shape import FactorOnLoad, LoadBasis
from tests.properties.rig_strategies import (
    COUNT,
    CREDITED,
    FACTOR,
    RANK,
    TEXTS,
    is_stacked,
    moved,
    no_better,
    rigs,
    stack_fits,
    stands,
    tipping,
)
from tests.unit.core.rigs import (
    ARM,
    BEAM,
    EN,
    HOIST,
    LEFT,
    LIBRARY,
    ON,
    OSHA,
    PROJECT,
    STACK,
    STAGE,
    at,
    confirmed,
    count,
    force,
    length,
    margin,
    mass,
    on_basis,
    put,
)

FEW = settings(max_examples=30)
NUMBERED = tuple(one for one in TEXTS if one.rule_set != "ca-qc-s21-r4")
STEP = {Style.US: Fraction(254, 160_000), Style.METRIC: Fraction(1, 1000)}
EXACTLY_FULL = st.just(1.0)

#: The values whose sum or share each load basis is.
PLACES_OF_LOAD: dict[LoadBasis, tuple[Place, ...]] = {
    LoadBasis.HOIST_RATED: ((*HOIST, "rated_load"),),
    LoadBasis.HOIST_STALL: ((*HOIST, "stall_load"),),
    LoadBasis.LARGEST_ROPE_TENSION: (
        (*HOIST, "limiter_trip"),
        (*LEFT, "rope_mass"),
        (*LEFT, "bottom_weight"),
    ),
    LoadBasis.HALF_DEAD_FULL_LIVE: ((*STAGE, "dead_mass"), (*STAGE, "intended_load")),
    LoadBasis.HALF_DEAD_HALF_LIVE: ((*STAGE, "dead_mass"), (*STAGE, "intended_load")),
}


def never_better(before: Project, after: Project) -> None:
    """After a change for the worse the tipping finding has no better answer and no more left."""
    assert no_better(tipping(before), tipping(after))


@given(rigs(), st.floats(0.001, 1.0))
@FEW
def test_more_reach_never_improves_tipping(rig: Project, more: float) -> None:
    """With the backspan as taped, or shrinking as the beam moves out under its stack."""
    never_better(rig, moved(rig, (*ARM, "reach"), more))


@given(rigs(stacked=False), st.floats(0.001, 0.6))
@FEW
def test_less_backspan_never_improves_tipping(rig: Project, less: float) -> None:
    """Of a taped backspan."""
    never_better(rig, moved(rig, (*ARM, "backspan"), -less))


@given(rigs(stacked=True), st.floats(0.001, 0.6))
@FEW
def test_a_stack_nearer_the_fulcrum_never_improves_tipping(rig: Project, nearer: float) -> None:
    """Whichever measurement brings it nearer: tail gap, front end or length of the beam."""
    never_better(rig, moved(rig, (*STACK, "tail_gap"), nearer))
    never_better(rig, moved(rig, (*ARM, "tip_beyond_line"), nearer))
    never_better(rig, moved(rig, (*BEAM, "length"), -nearer))


@given(rigs(stacked=True), st.floats(0.001, 0.1))
@FEW
def test_longer_pieces_never_improve_tipping(rig: Project, longer: float) -> None:
    """Pieces that take more of the beam bring the centroid of a stack nearer the fulcrum."""
    for group in at(rig, (*STACK, "groups")):
        place = ("kit", "pieces", group.piece, "length_on_beam")
        never_better(rig, moved(rig, place, longer))


@given(rigs(stacked=False))
@FEW
def test_a_piece_fewer_at_the_same_centroid_never_improves_tipping(rig: Project) -> None:
    """Of any group, where the backspan was taped."""
    for index in range(len(at(rig, (*STACK, "groups")))):
        never_better(rig, moved(rig, (*STACK, "groups", index, "count"), -1))


@given(rigs(stacked=True))
@FEW
def test_an_innermost_piece_fewer_never_improves_tipping_while_the_stack_fits(rig: Project) -> None:
    """The groups outboard of it stay; a piece beyond the fulcrum would pull the other way."""
    assume(stack_fits(rig))
    never_better(rig, moved(rig, COUNT, -1))


@given(rigs(), st.floats(0.01, 20.0))
@FEW
def test_heavier_pieces_never_worsen_tipping_while_the_stack_fits(
    rig: Project, heavier: float
) -> None:
    """Each kind of piece by itself, mixed or not; the beam-length finding sees that it fits."""
    assume(stack_fits(rig))
    for group in at(rig, (*STACK, "groups")):
        never_better(moved(rig, ("kit", "pieces", group.piece, "mass"), heavier), rig)


@pytest.mark.parametrize(
    "place",
    sorted({place for places in PLACES_OF_LOAD.values() for place in places}),
    ids=lambda place: str(place[-1]),
)
@given(rigs(), st.floats(0.01, 4000.0))
@settings(max_examples=20)
def test_a_larger_load_never_improves_tipping(place: Place, rig: Project, more: float) -> None:
    """A higher rated or stall load among them, whether the text multiplies it or not."""
    never_better(rig, moved(rig, place, more))


@given(rigs(texts=(OSHA, EN)), st.floats(0.01, 200.0))
@FEW
def test_without_credit_a_heavier_beam_never_improves_tipping(rig: Project, more: float) -> None:
    """It is left out where it helps and counted where it harms."""
    never_better(rig, moved(rig, (*BEAM, "mass"), more))


@given(rigs(texts=(CREDITED,)), st.floats(0.01, 25.0))
@FEW
def test_with_credit_a_beam_of_doubtful_mass_never_improves_tipping(
    rig: Project, doubt: float
) -> None:
    """Credited at the light end of its tolerance, counted at the heavy end where it harms."""
    vague = replace(at(rig, (*BEAM, "mass")), tolerance=doubt)
    never_better(rig, put(rig, (*BEAM, "mass"), vague))


@given(rigs())
@FEW
def test_leaving_the_beam_out_never_improves_on_crediting_it(rig: Project) -> None:
    """The two readings of EN 1808:2015: the stricter one never has the better tipping answer."""
    never_better(on_basis(rig, CREDITED), on_basis(rig, EN))


@given(rigs(texts=NUMBERED, share=EXACTLY_FULL))
@settings(max_examples=60)
def test_tipping_holds_at_equality_and_not_one_step_beyond_under_every_text(rig: Project) -> None:
    """One step is 1/16 in or 1 mm, 1 lb, or one piece; mixed stacks and harmful beams too."""
    found = tipping(rig)
    assume(found.utilisation is not None and stack_fits(rig))
    assert stands(rig)
    step = float(STEP[rig.units])
    nearer = (*STACK, "tail_gap") if is_stacked(rig) else (*ARM, "backspan")
    worse = [
        moved(rig, (*ARM, "reach"), step),
        moved(rig, nearer, step if is_stacked(rig) else -step),
        moved(rig, COUNT, -1),
    ]
    worse += [moved(rig, place, a_pound(place)) for place in governing_loads(found)]
    for one in worse:
        assert tipping(one).verdict is Verdict.FAIL


def a_pound(place: Place) -> float:
    """One pound of load or of mass, in SI."""
    return parse("1 lb", FORCE if place[:2] == HOIST[:2] else MASS)


def governing_loads(found: Finding) -> tuple[Place, ...]:
    """Where the load of the governing branch is stated."""
    rule = found.rules[0].content
    assert isinstance(rule, FactorOnLoad)
    return PLACES_OF_LOAD[rule.load]


@given(
    st.sampled_from(["50 lb", "55 lb", "25 kg", "20 kg"]),
    st.integers(1, 40),
    st.integers(24 * 16, 200 * 16),
    st.integers(500, 1500),
    st.sampled_from(list(Style)),
)
@settings(max_examples=60)
def test_equal_moments_in_exact_fractions_hold_and_one_step_beyond_they_do_not(
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
    rig = put(rig, (*ARM, "tip_beyond_line"), None)
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


@pytest.mark.parametrize("unit", ["kg", "lb"])
def test_250_of_weight_in_pieces_of_25_is_exactly_ten_pieces(unit: str) -> None:
    """3 x 250 at a reach of 1 against pieces of 25 at a backspan of 3: not nine, not eleven."""
    rig = confirmed(on_basis(PROJECT, EN), EN, FACTOR)
    rig = put(rig, (*HOIST, "rated_load"), force(f"250 {unit}"))
    rig = put(rig, ("kit", "pieces", "P", "mass"), mass(f"25 {unit}"))
    rig = put(put(rig, (*ARM, "reach"), length("1 m")), (*ARM, "backspan"), length("3 m"))
    ten, nine = put(rig, COUNT, count(10)), put(rig, COUNT, count(9))
    assert tipping(ten).verdict is Verdict.PASS
    assert margin(tipping(ten), "pieces-spare") == 0
    assert tipping(nine).verdict is Verdict.FAIL
    rows = review(nine, "D", LIBRARY, on=ON).comparison
    (row,) = (one for one in rows if one.in_basis and one.subject == "D/L")
    assert row.pieces == 10


@given(rigs(texts=NUMBERED))
@FEW
def test_the_answer_is_the_comparison_of_the_two_moments_shown(rig: Project) -> None:
    """Required against resisting moment of the tipping finding, equal within 1e-9."""
    found = tipping(rig)
    if found.demand is None or found.capacity is None:
        return
    enough = found.capacity.value >= found.demand.value * (1 - 1e-9)
    assert found.verdict is (Verdict.PASS if enough else Verdict.FAIL)
    if found.utilisation is not None:
        assert found.utilisation == pytest.approx(found.demand.value / found.capacity.value)


@given(rigs(stacked=True))
@FEW
def test_both_modes_agree_on_the_backspan_that_was_worked_out(rig: Project) -> None:
    """Taping the backspan that follows from the stack never changes the tipping answer."""
    arms = [one.value for one in tipping(rig).steps if one.formula == "backspan_to_stack"]
    assume(arms and arms[0] > 0.05)
    taped = put(rig, (*ARM, "backspan"), length("10 ft"))
    taped = put(taped, (*ARM, "backspan", "value"), arms[0])
    taped = put(taped, (*ARM, "backspan_from"), type(at(rig, (*ARM, "backspan_from"))).MEASURED)
    one, other = tipping(rig), tipping(taped)
    if "beam_mass" in {used.name for used in other.inputs} - {used.name for used in one.inputs}:
        # What the tape does not tell of the beam's inboard length is taken against it.
        assert RANK[other.verdict] <= RANK[one.verdict]
        return
    assert one.verdict is other.verdict
