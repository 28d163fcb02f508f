import math

import pytest

from backspan.drawings.geometry import (
    apart,
    bounds,
    corners,
    crossings,
    direction,
    hatch_lines,
    inside,
    left_of,
    meet,
    overlap,
    passes,
    readable,
    text_quad,
    turned,
)
from backspan.drawings.scene import Align, Layer, Text

SQUARE = corners((0.0, 0.0, 10.0, 10.0))
ELL = ((0.0, 0.0), (10.0, 0.0), (10.0, 5.0), (5.0, 5.0), (5.0, 10.0), (0.0, 10.0))


def test_a_direction_has_length_one_and_a_left() -> None:
    along = direction((1.0, 1.0), (4.0, 5.0))
    assert along == (0.6, 0.8)
    assert left_of(along) == (-0.8, 0.6)


def test_two_equal_points_still_have_a_direction() -> None:
    assert direction((2.0, 2.0), (2.0, 2.0)) == (1.0, 0.0)


def test_turning_is_anticlockwise() -> None:
    assert turned((1.0, 0.0), degrees=90.0) == pytest.approx((0.0, 1.0))


@pytest.mark.parametrize(
    ("angle", "shown"),
    [
        (0.0, 0.0),
        (45.0, 45.0),
        (90.0, 90.0),
        (135.0, -45.0),
        (180.0, 0.0),
        (270.0, 90.0),
        (-90.0, 90.0),
    ],
)
def test_text_is_never_upside_down(angle: float, shown: float) -> None:
    assert readable(angle) == pytest.approx(shown)


def test_boxes_that_only_touch_do_not_overlap() -> None:
    assert not overlap(SQUARE, corners((10.0, 0.0, 20.0, 10.0)))
    assert overlap(SQUARE, corners((9.9, 0.0, 20.0, 10.0)))
    assert apart((0.0, 0.0, 1.0, 1.0), (1.0, 0.0, 2.0, 1.0))
    assert not apart((0.0, 0.0, 1.0, 1.0), (0.9, 0.0, 2.0, 1.0))


def test_turned_boxes_are_compared_as_they_lie() -> None:
    slanted = tuple(turned(corner, degrees=45.0) for corner in corners((0.0, -1.0, 10.0, 1.0)))
    assert not overlap(slanted, corners((5.0, -6.0, 9.0, 0.0)))
    assert overlap(slanted, corners((3.0, 3.0, 6.0, 6.0)))


@pytest.mark.parametrize(
    ("segment", "through"),
    [
        (((-5.0, 5.0), (15.0, 5.0)), True),
        (((-5.0, -5.0), (15.0, 15.0)), True),
        (((2.0, 2.0), (3.0, 3.0)), True),
        (((-5.0, 0.0), (15.0, 0.0)), False),
        (((-5.0, 5.0), (-1.0, 5.0)), False),
        (((-6.0, 5.0), (4.0, 15.0)), False),
    ],
)
def test_a_line_passes_a_box_only_through_its_inside(
    segment: tuple[tuple[float, float], tuple[float, float]], *, through: bool
) -> None:
    assert passes(segment, (0.0, 0.0, 10.0, 10.0)) is through


def test_segments_meet_where_they_cross() -> None:
    assert meet(((0.0, 0.0), (4.0, 4.0)), ((0.0, 4.0), (4.0, 0.0)))
    assert not meet(((0.0, 0.0), (4.0, 4.0)), ((0.0, 4.0), (1.0, 3.0)))


def test_the_room_of_a_text_follows_its_alignment_and_angle() -> None:
    start = text_quad(Text(Layer.LABEL, (10.0, 10.0), "Reach", 2.5))
    end = text_quad(Text(Layer.LABEL, (10.0, 10.0), "Reach", 2.5, Align.END))
    upright = text_quad(Text(Layer.LABEL, (10.0, 10.0), "Reach", 2.5, angle=90.0))
    assert start[0][0] == 10.0
    assert end[1][0] == pytest.approx(10.0)
    box = bounds(upright)
    assert box is not None
    assert box[3] - box[1] > box[2] - box[0]


def test_no_points_have_no_bounds() -> None:
    assert bounds(()) is None


def test_hatch_lines_stay_inside_and_cover_the_outline() -> None:
    lines = hatch_lines(ELL, spacing=0.5, angle=45.0)
    assert lines
    for start, end in lines:
        middle = ((start[0] + end[0]) / 2, (start[1] + end[1]) / 2)
        assert inside(ELL, middle)
    drawn = sum(math.dist(start, end) for start, end in lines)
    assert drawn * 0.5 == pytest.approx(75.0, rel=0.02)


def test_a_line_is_no_area_to_hatch() -> None:
    assert hatch_lines(((0.0, 0.0), (1.0, 1.0)), spacing=1.0, angle=0.0) == []
    assert not inside(((0.0, 0.0), (1.0, 1.0)), (0.5, 0.5))


def test_crossings_come_in_order() -> None:
    assert crossings(SQUARE, (-1.0, 5.0), (1.0, 0.0)) == [1.0, 11.0]
