"""Where a hand means: corners, edges, rows of anchors, whole steps of the tape."""

from __future__ import annotations

from dataclasses import replace

import pytest

from backspan.core.drafting import distance, seen_from, snapped
from backspan.core.quantities import Style
from tests.unit.core.rigs import PROJECT

ROOF = PROJECT.site.roofs[0]
BARE = replace(ROOF, anchors=())
HALF_INCH = 0.0127


def test_a_corner_goes_before_the_edge_it_ends() -> None:
    found = snapped(BARE, (18.2, 0.1), within=0.3)
    assert (found.at, found.to) == ((18.288, 0.0), "a corner")


def test_beside_an_edge_it_is_square_to_it_and_a_step_of_the_tape() -> None:
    for side in (0.1, -0.1):
        found = snapped(BARE, (10.0, side), within=0.3)
        assert found.to == "edge S"
        assert found.at[1] == pytest.approx(0.0, abs=1e-12)
        assert (18.288 - found.at[0]) / HALF_INCH == pytest.approx(
            round((18.288 - found.at[0]) / HALF_INCH), abs=1e-6
        )
        assert abs(found.at[0] - 10.0) <= HALF_INCH / 2 + 1e-9


def test_in_line_with_another_anchor_along_and_back() -> None:
    first, second = ROOF.anchors[:2]
    near = (first.at[0] + 0.08, second.at[1] + 0.05)
    found = snapped(ROOF, near, within=0.1)
    assert found.to == "in line with A1"
    assert found.at == pytest.approx((first.at[0], second.at[1]), abs=1e-9)


@pytest.mark.parametrize(("style", "step"), [(Style.US, HALF_INCH), (Style.METRIC, 0.01)])
def test_elsewhere_it_is_a_step_along_and_back(style: Style, step: float) -> None:
    found = snapped(BARE, (9.001, 5.003), within=0.2, style=style)
    assert found.seen is not None
    assert found.to == ""
    for one in (found.seen.along, found.seen.back):
        assert one / step == pytest.approx(round(one / step), abs=1e-6)
    assert distance(found.at, (9.001, 5.003)) <= step


def test_what_no_edge_sees_stays_where_it_was_pointed_at() -> None:
    found = snapped(BARE, (-40.0, 5.0), within=0.2)
    assert (found.at, found.seen) == ((-40.0, 5.0), None)


def test_a_place_is_seen_from_each_edge_it_lies_behind_nearest_first() -> None:
    found = seen_from(ROOF, (15.0, 2.0))
    assert [one.edge for one in found] == ["S"]
    assert (found[0].along, found[0].back) == pytest.approx((3.288, 2.0))
