"""Drawings and pictures on a roof, with the places worked out by hand."""

from __future__ import annotations

import pytest

from backspan.core.model.laid import (
    LaidError,
    NotConfirmedError,
    NotToScaleError,
    Pick,
    checked,
    lay,
    lay_by_length,
    lay_to_scale,
)

# A picture of 100 dots in 10 m, turned to the left by a right angle.
TURNED = (Pick((0.0, 0.0), (5.0, 5.0)), Pick((100.0, 0.0), (5.0, 15.0)))


def test_two_points_turn_scale_and_move_what_is_laid() -> None:
    laid = checked(lay(*TURNED), ((0.0, 0.0), (0.0, 50.0)), taped=5.0, tolerance=0.02)
    assert laid.confirmed
    assert laid.scale == pytest.approx(0.1, abs=1e-12)
    assert laid.on_roof((100.0, 50.0)) == pytest.approx((0.0, 15.0), abs=1e-9)
    assert laid.on_drawing((0.0, 15.0)) == pytest.approx((100.0, 50.0), abs=1e-9)


def test_a_picture_counts_its_y_from_the_top() -> None:
    picks = Pick((0.0, 200.0), (0.0, 0.0)), Pick((100.0, 200.0), (10.0, 0.0))
    laid = lay(*picks, y_down=True)
    laid = checked(laid, ((0.0, 200.0), (0.0, 0.0)), taped=20.0, tolerance=0.02)
    assert laid.on_roof((0.0, 0.0)) == pytest.approx((0.0, 20.0), abs=1e-9)
    assert laid.on_drawing((0.0, 20.0)) == pytest.approx((0.0, 0.0), abs=1e-9)


def test_a_taped_length_lays_without_a_turn() -> None:
    laid = lay_by_length((10.0, 10.0), (10.0, 60.0), taped=25.0, at=(1.0, 2.0))
    laid = checked(laid, ((10.0, 10.0), (30.0, 10.0)), taped=10.0, tolerance=0.0)
    assert laid.on_roof((30.0, 10.0)) == pytest.approx((11.0, 2.0), abs=1e-9)


def test_nothing_is_read_off_before_a_third_length_fits() -> None:
    laid = lay(*TURNED)
    assert not laid.confirmed
    with pytest.raises(NotConfirmedError, match="no third length was taped"):
        laid.on_roof((1.0, 1.0))
    off = checked(laid, ((0.0, 0.0), (0.0, 50.0)), taped=5.1, tolerance=0.05)
    assert off.check is not None
    assert off.check.difference == pytest.approx(-0.1, abs=1e-9)
    assert not off.confirmed
    with pytest.raises(NotConfirmedError, match=r"-0\.1 m off, and may be 0\.05 m off"):
        off.on_drawing((1.0, 1.0))
    assert checked(off, ((0.0, 0.0), (0.0, 50.0)), taped=5.01, tolerance=0.05).confirmed


def test_a_difference_of_the_tolerance_itself_holds() -> None:
    laid = lay_by_length((0.0, 0.0), (8.0, 0.0), taped=8.0)
    assert checked(laid, ((0.0, 0.0), (0.0, 4.0)), taped=4.25, tolerance=0.25).confirmed
    assert not checked(laid, ((0.0, 0.0), (0.0, 4.0)), taped=4.5, tolerance=0.25).confirmed


def test_a_check_that_shows_nothing_is_refused() -> None:
    laid = lay(*TURNED)
    with pytest.raises(LaidError, match="by which it was laid, expected two further ones"):
        checked(laid, ((100.0, 0.0), (0.0, 0.0)), taped=10.0, tolerance=0.1)
    with pytest.raises(LaidError, match="a short length shows no wrong scale"):
        checked(laid, ((0.0, 0.0), (0.0, 24.0)), taped=2.4, tolerance=0.1)
    for taped, tolerance in ((0.0, 0.1), (float("nan"), 0.1), (5.0, float("nan")), (5.0, -0.1)):
        with pytest.raises(LaidError, match="expected more than 0 within 0 or more"):
            checked(laid, ((0.0, 0.0), (0.0, 50.0)), taped=taped, tolerance=tolerance)


def test_points_that_are_one_are_refused() -> None:
    one = Pick((1.0, 1.0), (5.0, 5.0))
    with pytest.raises(LaidError, match="on the drawing: found one spot"):
        lay(one, Pick((1.0, 1.0), (6.0, 5.0)))
    with pytest.raises(LaidError, match="on the roof: found one spot"):
        lay(one, Pick((2.0, 1.0), (5.0, 5.0)))
    with pytest.raises(LaidError, match="expected more than 0"):
        lay_by_length((0.0, 0.0), (1.0, 0.0), taped=0.0)
    with pytest.raises(LaidError, match="on the drawing: found one spot"):
        lay(Pick((float("nan"), 1.0), (5.0, 5.0)), one)


def test_a_drawing_keeps_its_own_scale_between_what_two_points_say() -> None:
    laid = lay_to_scale(Pick((0.0, 0.0), (0.0, 0.0)), Pick((20.0, 0.0), (20.1, 0.0)), within=0.01)
    assert laid.scale == 1.0
    laid = checked(laid, ((0.0, 0.0), (0.0, 10.0)), taped=10.0, tolerance=0.02)
    assert laid.on_roof((0.0, 0.0)) == pytest.approx((0.05, 0.0), abs=1e-9)


def test_a_drawing_of_another_scale_is_refused() -> None:
    one, other = Pick((0.0, 0.0), (0.0, 0.0)), Pick((20.0, 0.0), (6.096, 0.0))
    told = r"20 m apart by its own units and 6\.096 m apart on the roof \(0\.3048 times as far\)"
    with pytest.raises(NotToScaleError, match=told):
        lay_to_scale(one, other, within=0.01)
