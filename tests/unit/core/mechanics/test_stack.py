"""The stack: weight, centroid, room, fewest pieces; against exact fractions and a plain search."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from backspan.core.mechanics.stack import (
    Rows,
    StackError,
    least_count_at_backspan,
    least_count_on_beam,
    most_that_fit,
    placed_stack,
    stacked_weight,
)
from backspan.core.numbers import meets

G = 9.80665
PLATE = Rows(5, 1, 25.0, 0.1)

rows = st.builds(
    Rows,
    count=st.integers(1, 30),
    per_row=st.integers(1, 4),
    piece_mass=st.sampled_from([20.0, 22.6796185, 24.94758035, 25.0, 40.0]),
    piece_length=st.sampled_from([0.0254, 0.05, 0.1016, 0.3048]),
)
stacks = st.lists(rows, min_size=1, max_size=3)


def exact_stack(groups: list[Rows], gap: float) -> tuple[Fraction, Fraction, Fraction]:
    """Weight, centroid from the tail and inner end, piece by piece in exact fractions."""
    moment = total = Fraction(0)
    end = Fraction(gap)
    for group in groups:
        length = Fraction(group.piece_length or 0)
        for piece in range(group.count):
            row = piece // group.per_row
            heavy = Fraction(group.piece_mass) * Fraction(G)
            moment += heavy * (end + length * row + length / 2)
            total += heavy
        end += length * -(-group.count // group.per_row)
    return total, moment / total, end


@given(stacks, st.sampled_from([0.0, 0.0762, 0.25]))
def test_weight_centroid_and_inner_end_are_those_of_the_pieces(
    groups: list[Rows], gap: float
) -> None:
    found = placed_stack(groups, tail_gap=gap)
    total, centroid, end = exact_stack(groups, gap)
    assert found.weight == pytest.approx(float(total), rel=1e-12)
    assert found.centroid_from_tail == pytest.approx(float(centroid), rel=1e-12)
    assert found.inner_end_from_tail == pytest.approx(float(end), rel=1e-12)
    assert stacked_weight(groups).weight == pytest.approx(float(total), rel=1e-12)


def test_the_centre_of_one_group_is_half_its_length_in() -> None:
    # The Ontario talk: a stack of 2 ft has its centre 1 ft from the tail.
    found = placed_stack([Rows(5, 1, 24.94758035, 0.6096 / 5)], tail_gap=0.0)
    assert found.centroid_from_tail == pytest.approx(0.3048)


def test_a_last_row_that_is_not_full_stands_inboard() -> None:
    found = placed_stack([Rows(5, 2, 25.0, 0.1)], tail_gap=0.0)
    # Two at 0.05, two at 0.15, one at 0.25.
    assert found.centroid_from_tail == pytest.approx((2 * 0.05 + 2 * 0.15 + 0.25) / 5)
    assert found.inner_end_from_tail == pytest.approx(0.3)


def test_nothing_weighs_nothing_and_cannot_be_placed() -> None:
    assert stacked_weight([]).weight == 0.0
    assert stacked_weight([Rows(0, 1, 25.0, 0.1)]).weight == 0.0
    with pytest.raises(StackError, match="nothing is stacked"):
        placed_stack([Rows(0, 1, 25.0, 0.1)], tail_gap=0.0)


def test_a_piece_without_a_length_cannot_be_placed() -> None:
    with pytest.raises(StackError, match="a piece on the beam has no length"):
        placed_stack([Rows(1, 1, 25.0, None)], tail_gap=0.0)
    with pytest.raises(StackError, match="a piece on the beam has no length"):
        most_that_fit([], Rows(1, 1, 25.0, None), tail_gap=0.0, inboard=1.0)


@pytest.mark.parametrize(
    ("inboard", "per_row", "fit"),
    [(1.0, 1, 7), (1.05, 1, 8), (1.0, 2, 14), (0.31, 1, 0), (0.1, 1, 0)],
)
def test_what_fits_between_the_others_and_the_fulcrum(
    inboard: float, per_row: int, fit: int
) -> None:
    others = [Rows(2, 1, 25.0, 0.1)]
    last = Rows(0, per_row, 25.0, 0.1)
    assert most_that_fit(others, last, tail_gap=0.05, inboard=inboard) == fit


def test_exactly_ten_pieces_are_ten() -> None:
    assert (
        least_count_at_backspan(
            required=1000 * G, held_by_others=0.0, piece_weight=25 * G, backspan=4.0
        )
        == 10
    )


def test_what_others_hold_already_needs_no_pieces() -> None:
    assert (
        least_count_at_backspan(
            required=1000 * G, held_by_others=2000 * G, piece_weight=25 * G, backspan=4.0
        )
        == 0
    )


@given(
    st.lists(rows, max_size=2),
    rows,
    st.floats(0.5, 6.0),
    st.floats(10.0, 60_000.0),
    st.sampled_from([0.0, -500.0, 800.0]),
)
def test_the_fewest_on_a_beam_are_what_counting_up_finds(
    others: list[Rows], last: Rows, inboard: float, required: float, held: float
) -> None:
    gap = 0.05
    most = most_that_fit(others, last, tail_gap=gap, inboard=inboard)
    taken = placed_stack(others, tail_gap=gap).inner_end_from_tail if others else gap
    assume(taken <= inboard)

    def moment(count: int) -> float:
        groups = [*others, Rows(count, last.per_row, last.piece_mass, last.piece_length)]
        if not any(group.count for group in groups):
            return held
        stack = placed_stack(groups, tail_gap=gap)
        return stack.weight * (inboard - stack.centroid_from_tail) + held

    counted = next((n for n in range(most + 1) if meets(demand=required, capacity=moment(n))), None)
    found = least_count_on_beam(
        others, last, tail_gap=gap, inboard=inboard, required=required, held_by_beam=held
    )
    assert found == counted


def test_a_beam_too_short_for_any_number_gives_none() -> None:
    # Plates of 55 lb and 12 in on 15 ft inboard, 12,000 lb ft asked: the most they give is 6,187.5.
    plate = Rows(0, 1, 24.94758035, 0.3048)
    asked = 12_000 * 1.3558179483314004
    found = least_count_on_beam(
        [], plate, tail_gap=0.0, inboard=15 * 0.3048, required=asked, held_by_beam=0.0
    )
    assert found is None
