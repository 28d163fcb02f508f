"""Tipping with a backspan from beam and stack: beam 18 ft, 6 in beyond the line, 3 in tail gap."""

from __future__ import annotations

import pytest

from backspan.core.findings import Finding, Verdict
from backspan.core.model.project import Project
from backspan.core.model.rigs import PieceGroup
from tests.unit.core.rigs import (
    ARM,
    BEAM,
    PIECE,
    STACK,
    STACKED,
    count,
    finding,
    length,
    margin,
    needs,
    put,
)


def tipping(project: Project) -> Finding:
    return finding(project, "tipping")


def pieces(number: int) -> Project:
    return put(STACKED, (*STACK, "groups", "LOT", "count"), count(number))


def arm_of(found: Finding) -> float:
    """The backspan worked out, in inches."""
    return next(step.value for step in found.steps if step.formula == "backspan_to_stack") / 0.0254


def test_the_backspan_ends_at_the_centre_of_the_stack() -> None:
    # 18 ft - 6 in - 2 ft = 186 in; 3 in gap; 16 plates of 3 in: half of 48 in.
    assert arm_of(tipping(STACKED)) == pytest.approx(186 - 3 - 24)


def test_plates_that_share_a_row_keep_the_backspan_longer() -> None:
    two_by_two = put(STACKED, (*STACK, "groups"), (PieceGroup("P", count(16), per_row=2),))
    assert arm_of(tipping(two_by_two)) == pytest.approx(186 - 3 - 12)


def test_a_last_row_that_is_not_full_stands_inboard() -> None:
    odd = put(STACKED, (*STACK, "groups"), (PieceGroup("P", count(3), per_row=2),))
    # One row of two at 1.5 in, one piece at 4.5 in: centroid at 2.5 in from the gap.
    assert arm_of(tipping(odd)) == pytest.approx(186 - 3 - 2.5)


def test_the_pieces_spare_are_counted_with_the_centroid_they_leave() -> None:
    found = tipping(STACKED)
    needed = 16 - margin(found, "pieces-spare")
    assert tipping(pieces(needed)).verdict is Verdict.PASS
    assert tipping(pieces(needed - 1)).verdict is Verdict.FAIL


def test_a_beam_too_short_for_any_number_of_pieces_says_so() -> None:
    # A published-style case of this project: each plate takes 12 in, reach 3 ft, inboard 15 ft.
    thick = put(put(STACKED, (*PIECE, "length_on_beam"), length("12 in")), ARM, at_three_feet())
    found = tipping(thick)
    assert found.verdict is Verdict.FAIL
    (told,) = [one for one in found.margins if one.id == "no-number-of-pieces"]
    assert told.beyond


def at_three_feet() -> object:
    support = STACKED.drops[0].rig
    assert support is not None
    arm = support.suspension_points[0].counterweighted_beam
    changed = put(arm, ("reach",), length("3 ft"))
    changed = put(changed, ("stack", "tail_gap"), length("0 in"))
    return put(changed, ("tip_beyond_line",), length("0 in"))


@pytest.mark.parametrize(
    ("place", "name"),
    [
        ((*BEAM, "length"), "beam_length"),
        ((*ARM, "tip_beyond_line"), "tip_beyond_line"),
        ((*STACK, "tail_gap"), "tail_gap"),
        ((*PIECE, "length_on_beam"), "piece_length"),
    ],
)
def test_each_part_of_the_backspan_has_to_be_stated(place: tuple[str, ...], name: str) -> None:
    found = tipping(put(STACKED, place, None))
    assert found.verdict is Verdict.MISSING
    assert needs(found) == (("need.input", name),)


def test_without_pieces_there_is_a_backspan_and_no_hold() -> None:
    found = tipping(put(STACKED, (*STACK, "groups"), ()))
    assert found.verdict is Verdict.FAIL
    assert found.message.id == "tipping.no-pieces"


def test_two_groups_of_one_kind_of_piece_are_both_read() -> None:
    pair = (PieceGroup("P", count(8)), PieceGroup("P", count(8)))
    found = tipping(put(STACKED, (*STACK, "groups"), pair))
    assert arm_of(found) == pytest.approx(186 - 3 - 24)
    assert [one.stated for one in found.inputs if one.name == "pieces"] == [8, 8]
