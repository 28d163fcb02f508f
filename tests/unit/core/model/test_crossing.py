"""Edges of an outline that cross, touch or lie upon one another."""

from __future__ import annotations

import pytest

from backspan.core.model.crossing import crossings
from backspan.core.model.site import Point

SQUARE = ((0.0, 0.0), (0.0, 9.0), (9.0, 9.0), (9.0, 0.0))


def crossed(*corners: Point) -> list[tuple[int, int, Point]]:
    return [(one.one, one.other, one.at) for one in crossings([*corners, corners[0]])]


@pytest.mark.parametrize("turn", range(4))
def test_a_square_and_a_triangle_cross_nowhere(turn: int) -> None:
    assert crossed(*SQUARE[turn:], *SQUARE[:turn]) == []
    assert crossed(*SQUARE[:3]) == []


def test_edges_that_cross_are_told_with_the_point() -> None:
    assert crossed((0, 0), (8, 8), (8, 0), (0, 8)) == [(1, 3, (4.0, 4.0))]


def test_a_corner_on_another_edge_touches_it() -> None:
    assert crossed((0, 0), (10, 0), (10, 10), (5, 0), (0, 10)) == [
        (1, 3, (5.0, 0.0)),
        (1, 4, (5.0, 0.0)),
    ]


def test_edges_upon_one_another_meet_and_edges_in_one_line_do_not() -> None:
    # Down one wing and up the other: the third and the seventh edge lie in one line.
    wings = ((0, 0), (0, 9), (3, 9), (3, 3), (6, 3), (6, 9), (9, 9), (9, 0))
    assert crossed(*wings) == []
    upon = ((0, 0), (0, 9), (6, 9), (6, 3), (8, 3), (8, 9), (5, 9), (5, 0))
    assert (2, 6, (6, 9)) in crossed(*upon) or (2, 6, (5, 9)) in crossed(*upon)
    aslant = ((0, 0), (2, 2), (4, 1), (5, 5), (9, 9), (9, -3))
    assert crossed(*aslant) == []


def test_an_edge_that_runs_back_along_the_one_before_it_meets_it() -> None:
    assert (3, 4, (9, 12)) in crossed((0, 0), (0, 9), (9, 9), (9, 12), (9, 5), (9, 0))
    # The last edge back along the first.
    assert (1, 4, (0, 0)) in crossed((0, 0), (9, 0), (9, 9), (12, 0))
