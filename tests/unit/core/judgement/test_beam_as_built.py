"""The beam as built. Beam 18 ft and 200 lb, tip 6 in, reach 2 ft, 16 plates of 55 lb and 3 in."""

from __future__ import annotations

import pytest

from backspan.core.judgement import beam_as_built
from backspan.core.judgement.beam_as_built import AsBuilt, OwnWeight
from backspan.core.judgement.inputs import Inputs
from backspan.core.judgement.subjects import BeamSubject, counterweighted
from backspan.core.model.project import Project
from backspan.core.quantities import FORCE, LENGTH, parse
from tests.unit.core.rigs import (
    ARM,
    BEAM,
    PIECE,
    PROJECT,
    STACK,
    STACKED,
    case,
    length,
    put,
)


def subject_of(project: Project) -> tuple[Inputs, BeamSubject]:
    inputs = Inputs(case(project))
    left = next(iter(counterweighted(inputs.case, "tipping")))
    assert isinstance(left, BeamSubject)
    return inputs, left


def built(project: Project) -> AsBuilt:
    return beam_as_built.read(*subject_of(project))


def own(project: Project) -> OwnWeight | None:
    inputs, subject = subject_of(project)
    reach = beam_as_built.read(inputs, subject).reach
    assert reach is not None
    return beam_as_built.own_weight(inputs, subject, reach, credited=False)


def feet(text: str) -> float:
    return parse(text, LENGTH)


def test_a_taped_backspan_is_taken_as_it_is() -> None:
    found = built(PROJECT)
    assert found.reach == feet("2 ft")
    assert found.backspan == feet("10 ft")
    assert found.counterweight == pytest.approx(parse("880 lb", FORCE), rel=1e-12)
    assert found.pieces == 16
    assert not found.from_stack


def test_a_backspan_from_the_stack_is_worked_out() -> None:
    found = built(STACKED)
    assert found.backspan == pytest.approx(feet("13 ft 3 in"))
    assert found.inboard == pytest.approx(feet("15 ft 6 in"))
    assert found.stack_inner_end == pytest.approx(feet("51 in"))
    assert found.from_stack
    assert found.steps[-1].formula == "backspan_to_stack"


def test_both_ways_of_knowing_it_agree() -> None:
    taped = put(STACKED, (*STACK, "tail_gap"), length("3 ft 6 in"))
    assert built(taped).backspan == pytest.approx(built(PROJECT).backspan)
    subject = subject_of(taped)[1]
    worked_out = beam_as_built.worked_out_backspan(case(taped), subject.support)
    assert worked_out == pytest.approx(feet("10 ft"))


@pytest.mark.parametrize("project", [PROJECT, STACKED])
def test_without_pieces_there_is_no_counterweight(project: Project) -> None:
    found = built(put(project, (*STACK, "groups"), ()))
    assert found.counterweight == 0.0
    assert found.pieces == 0


def test_without_pieces_the_stack_would_begin_at_the_tail_gap() -> None:
    found = built(put(STACKED, (*STACK, "groups"), ()))
    assert found.backspan == pytest.approx(feet("15 ft 3 in"))


def test_a_length_that_is_not_stated_leaves_the_counterweight_unknown() -> None:
    found = built(put(STACKED, (*PIECE, "length_on_beam"), None))
    assert found.backspan is None
    assert found.counterweight is None
    assert found.reach == feet("2 ft")


def test_a_uniform_beam_has_its_weight_in_the_middle() -> None:
    found = own(PROJECT)
    assert found is not None
    assert found.weight == pytest.approx(parse("200 lb", FORCE), rel=1e-12)
    assert found.centroid_inboard == pytest.approx(feet("6 ft 6 in"))


def test_a_stated_centroid_goes_before_the_middle() -> None:
    found = own(put(PROJECT, (*BEAM, "centroid_from_tail"), length("16 ft")))
    assert found is not None
    assert found.centroid_inboard == pytest.approx(feet("15 ft 6 in") - feet("16 ft"))


@pytest.mark.parametrize("place", [(*BEAM, "mass"), (*BEAM, "length"), (*ARM, "tip_beyond_line")])
def test_own_weight_needs_all_of_its_parts(place: tuple[str, ...]) -> None:
    assert own(put(PROJECT, place, None)) is None


@pytest.mark.parametrize(
    ("reach", "harmful", "room"),
    # Taped backspan 10 ft, tip 6 in: the weight may do harm beyond a reach of 9 ft 6 in.
    [("2 ft", False, "7 ft 6 in"), ("9 ft 6 in", False, "0 in"), ("9 ft 7 in", True, None)],
)
def test_when_own_weight_may_do_harm(reach: str, room: str | None, *, harmful: bool) -> None:
    inputs, subject = subject_of(put(PROJECT, (*ARM, "reach"), length(reach)))
    beam = beam_as_built.read(inputs, subject)
    assert beam_as_built.may_be_harmful(inputs, subject, beam) is harmful
    left = beam_as_built.left_out_until(inputs, subject, beam)
    if room is None:
        assert left is None
    else:
        assert left == pytest.approx(feet(room), abs=1e-12)


def test_a_stated_centroid_tells_how_far_the_weight_stays_harmless() -> None:
    tail_heavy = put(PROJECT, (*BEAM, "centroid_from_tail"), length("8 ft"))
    inputs, subject = subject_of(tail_heavy)
    beam = beam_as_built.read(inputs, subject)
    assert beam_as_built.left_out_until(inputs, subject, beam) == pytest.approx(feet("7 ft 6 in"))
