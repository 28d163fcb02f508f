"""The stack: weight, centroid, inner end, against exact fractions piece by piece."""

from __future__ import annotations

import math
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from backspan.core.sheet.sheet import BareSheet
from backspan.core.sheet.stack import PlacedStack, Rows, inner_end, placed_stack, stacked_weight

G = 9.80665

rows = st.builds(
    Rows,
    count=st.integers(1, 30),
    per_row=st.integers(1, 4),
    piece_mass=st.sampled_from([20.0, 22.6796185, 24.94758035, 25.0, 40.0]),
    piece_length=st.sampled_from([0.0254, 0.05, 0.1016, 0.3048]),
)
stacks = st.lists(rows, min_size=1, max_size=3)


def placed(groups: list[Rows], gap: float = 0.0) -> PlacedStack:
    return placed_stack(BareSheet({}, {}), groups, tail_gap=gap)


def weighed(groups: list[Rows]) -> float:
    return stacked_weight(BareSheet({}, {}), groups)


def exact_stack(groups: list[Rows], gap: float) -> tuple[Fraction, Fraction, Fraction]:
    """Weight, centroid from the tail and inner end, piece by piece in exact fractions."""
    moment = total = Fraction(0)
    end = Fraction(gap)
    for group in groups:
        length = Fraction(group.piece_length)
        for piece in range(int(group.count)):
            row = piece // group.per_row
            heavy = Fraction(group.piece_mass) * Fraction(G)
            moment += heavy * (end + length * row + length / 2)
            total += heavy
        end += length * -(-int(group.count) // group.per_row)
    return total, moment / total, end


@given(stacks, st.sampled_from([0.0, 0.0762, 0.25]))
def test_weight_centroid_and_inner_end_are_those_of_the_pieces(
    groups: list[Rows], gap: float
) -> None:
    found = placed(groups, gap)
    total, centroid, end = exact_stack(groups, gap)
    assert found.weight == pytest.approx(float(total), rel=1e-12)
    assert found.centroid_from_tail == pytest.approx(float(centroid), rel=1e-12)
    assert found.inner_end_from_tail == pytest.approx(float(end), rel=1e-12)
    assert inner_end(BareSheet({}, {}), groups, tail_gap=gap) == found.inner_end_from_tail
    assert weighed(groups) == pytest.approx(float(total), rel=1e-12)


def test_the_centre_of_one_group_is_half_its_length_in() -> None:
    # The Ontario talk: a stack of 2 ft has its centre 1 ft from the tail.
    found = placed([Rows(5, 1, 24.94758035, 0.6096 / 5)])
    assert found.centroid_from_tail == pytest.approx(0.3048)


def test_a_last_row_that_is_not_full_stands_inboard() -> None:
    found = placed([Rows(5, 2, 25.0, 0.1)])
    # Two at 0.05, two at 0.15, one at 0.25.
    assert found.centroid_from_tail == pytest.approx((2 * 0.05 + 2 * 0.15 + 0.25) / 5)
    assert found.inner_end_from_tail == pytest.approx(0.3)


def test_nothing_weighs_nothing_and_begins_at_the_gap() -> None:
    assert weighed([]) == 0.0
    assert weighed([Rows(0, 1, 25.0, 0.1)]) == 0.0
    assert placed([Rows(0, 1, 25.0, 0.1)], 0.2) == PlacedStack(0.0, 0.2, 0.2)


@pytest.mark.parametrize(
    "unknown", [(math.nan, 25.0, 0.1), (5, math.nan, 0.1), (5, 25.0, math.nan)]
)
def test_what_is_unknown_of_one_group_leaves_the_stack_unknown(
    unknown: tuple[float, float, float],
) -> None:
    number, mass, long = unknown
    found = placed([Rows(3, 1, 25.0, 0.1), Rows(number, 2, mass, long)])
    assert math.isnan(found.centroid_from_tail)
    assert math.isnan(found.weight) is not math.isnan(long)
