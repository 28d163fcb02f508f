"""The beam as built. Beam 18 ft and 200 lb, tip 6 in, reach 2 ft, 16 plates of 55 lb and 3 in."""

from __future__ import annotations

import math

import pytest

from backspan.core.model.project import Project
from backspan.core.quantities import FORCE, LENGTH, parse
from backspan.core.sheet.beam_as_built import (
    AsBuilt,
    BeamReads,
    OwnWeight,
    as_built,
    beam_reads,
    own_weight,
    weight_outboard,
)
from backspan.core.sheet.case import Place
from backspan.core.sheet.reads import Read
from backspan.core.sheet.sheet import BareSheet
from backspan.core.sheet.subjects import BeamSubject, counterweighted
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


def reads_of(project: Project) -> BeamReads:
    one = case(project)
    left = next(iter(counterweighted(one, "tipping")))
    assert isinstance(left, BeamSubject)
    return beam_reads(one, left)


def built(project: Project) -> AsBuilt:
    return as_built(BareSheet({}, {}), reads_of(project))


def own(project: Project) -> OwnWeight:
    return own_weight(BareSheet({}, {}), reads_of(project), built(project).reach)


def feet(text: str) -> float:
    return parse(text, LENGTH)


def test_a_taped_backspan_is_taken_as_it_is() -> None:
    found = built(PROJECT)
    assert found.reach == feet("2 ft")
    assert found.backspan == feet("10 ft")
    assert found.counterweight == pytest.approx(parse("880 lb", FORCE), rel=1e-12)
    assert found.pieces == 16
    assert math.isnan(found.inboard)


def test_a_backspan_from_the_stack_is_worked_out() -> None:
    found = built(STACKED)
    assert found.backspan == pytest.approx(feet("13 ft 3 in"))
    assert found.inboard == pytest.approx(feet("15 ft 6 in"))
    assert found.stack_inner_end == pytest.approx(feet("51 in"))


def test_both_ways_of_knowing_it_agree() -> None:
    taped = put(STACKED, (*STACK, "tail_gap"), length("3 ft 6 in"))
    assert built(taped).backspan == pytest.approx(built(PROJECT).backspan)


@pytest.mark.parametrize("project", [PROJECT, STACKED])
def test_without_pieces_there_is_no_counterweight(project: Project) -> None:
    found = built(put(project, (*STACK, "groups"), ()))
    assert found.counterweight == 0.0
    assert found.pieces == 0


def test_without_pieces_the_stack_would_begin_at_the_tail_gap() -> None:
    found = built(put(STACKED, (*STACK, "groups"), ()))
    assert found.backspan == pytest.approx(feet("15 ft 3 in"))


def test_a_length_that_is_not_stated_leaves_the_backspan_unknown() -> None:
    found = built(put(STACKED, (*PIECE, "length_on_beam"), None))
    assert math.isnan(found.backspan)
    assert found.counterweight == pytest.approx(parse("880 lb", FORCE), rel=1e-12)
    assert found.reach == feet("2 ft")


def test_a_uniform_beam_has_its_weight_in_the_middle() -> None:
    found = own(PROJECT)
    assert found.weight == pytest.approx(parse("200 lb", FORCE), rel=1e-12)
    assert found.centroid_inboard == pytest.approx(feet("6 ft 6 in"))


def test_a_stated_centroid_goes_before_the_middle() -> None:
    found = own(put(PROJECT, (*BEAM, "centroid_from_tail"), length("16 ft")))
    assert found.centroid_inboard == pytest.approx(feet("15 ft 6 in") - feet("16 ft"))


@pytest.mark.parametrize("place", [(*BEAM, "mass"), (*BEAM, "length"), (*ARM, "tip_beyond_line")])
def test_own_weight_needs_all_of_its_parts(place: tuple[str, ...]) -> None:
    found = own(put(PROJECT, place, None))
    assert math.isnan(found.weight * found.centroid_inboard)


@pytest.mark.parametrize(
    ("reach", "looked_at", "counted"),
    # Taped backspan 10 ft, tip 6 in: shorter inboard beyond 9 ft 6 in; but 18 ft of beam have their
    # middle outboard beyond 8 ft 6 in, where a backspan of 10 ft is not on the beam any more.
    [("2 ft", False, False), ("9 ft 6 in", False, False), ("9 ft 7 in", True, True)],
)
def test_own_weight_is_looked_at_where_the_beam_is_shorter_inboard(
    reach: str, *, looked_at: bool, counted: bool
) -> None:
    reads: dict[Place, Read] = {}
    sheet = BareSheet({}, reads)
    beam = reads_of(put(PROJECT, (*ARM, "reach"), length(reach)))
    outboard = weight_outboard(sheet, beam, as_built(sheet, beam))
    assert ("beam_mass" in {one.quantity.name for one in reads.values()}) is looked_at
    assert (outboard is not None) is counted


def test_a_stated_centroid_is_always_looked_at() -> None:
    sheet = BareSheet({}, {})
    beam = reads_of(put(PROJECT, (*BEAM, "centroid_from_tail"), length("16 ft")))
    outboard = weight_outboard(sheet, beam, as_built(sheet, beam))
    assert outboard is not None
    assert outboard.centroid_inboard == pytest.approx(feet("-6 in"))


def test_weight_that_may_pull_outboard_is_unknown_where_its_parts_are() -> None:
    far = put(PROJECT, (*ARM, "reach"), length("9 ft 7 in"))
    sheet = BareSheet({}, {})
    beam = reads_of(put(far, (*BEAM, "length"), None))
    outboard = weight_outboard(sheet, beam, as_built(sheet, beam))
    assert outboard is not None
    assert math.isnan(outboard.centroid_inboard)
