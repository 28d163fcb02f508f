"""A third length confirms what two points laid; what shows nothing is refused."""

from __future__ import annotations

from dataclasses import replace

import pytest

from backspan.core.model.evidence import StatedValue
from backspan.core.model.laid import LaidError, NotConfirmedError, NotToScaleError, Pick
from backspan.core.model.underlay import Underlay, laid_under, tolerance

#: A roof of 20 m by 10 m, drawn 100 m to the right of where it lies.
DRAWN = Underlay(
    "5e" * 32,
    "roof.dxf",
    (Pick((100.0, 0.0), (0.0, 0.0)), Pick((120.0, 0.0), (20.0, 0.0))),
    ("corner 1", "corner 2"),
    ((120.0, 0.0), (120.0, 10.0)),
    StatedValue(10.0),
    0.0,
    unit="m",
)


def taped(length: float) -> Underlay:
    """The same with another third length."""
    return replace(DRAWN, taped=StatedValue(length))


def test_the_tolerance_is_a_hundredth_or_fifty_millimetres_whichever_is_more() -> None:
    assert tolerance(4.0) == 0.05
    assert tolerance(20.0) == pytest.approx(0.2)


@pytest.mark.parametrize(
    ("length", "holds"), [(10.0, True), (10.1, True), (10.11, False), (9.9, False), (9.91, True)]
)
def test_it_is_confirmed_within_the_tolerance_only(length: float, holds: bool) -> None:
    laid = laid_under(taped(length))
    assert laid.confirmed is holds
    if holds:
        assert laid.on_roof((110.0, 5.0)) == pytest.approx((10.0, 5.0))
    else:
        with pytest.raises(NotConfirmedError, match="third length is"):
            laid.on_roof((110.0, 5.0))


@pytest.mark.parametrize("length", [0.0, -10.0, float("nan")])
def test_a_tape_shows_more_than_nothing(length: float) -> None:
    with pytest.raises(LaidError, match="expected more than 0"):
        laid_under(taped(length))


@pytest.mark.parametrize(
    "between",
    [
        ((100.0, 0.0), (120.0, 0.0)),
        ((120.0, 0.05), (100.05, 0.0)),
        ((100.0, 0.0), (100.1, 0.0)),
        ((110.0, 0.0), (112.0, 0.0)),
    ],
)
def test_a_length_that_shows_nothing_is_none(
    between: tuple[tuple[float, float], tuple[float, float]],
) -> None:
    with pytest.raises(LaidError, match="the third length: found"):
        laid_under(replace(DRAWN, check=between, taped=StatedValue(20.0)))


def test_a_short_length_lays_and_checks_nothing() -> None:
    """Over half a metre a picture at nine tenths of its scale would still be within 50 mm."""
    dots = (Pick((0.0, 100.0), (0.0, 0.0)), Pick((20.0, 100.0), (2.0, 0.0)))
    short = replace(DRAWN, picks=dots, unit=None, size=(200, 100))
    with pytest.raises(LaidError, match=r"the two points: found 2 m .* expected 2.5 m at least"):
        laid_under(replace(short, check=((0.0, 0.0), (90.0, 0.0)), taped=StatedValue(9.0)))
    wide = (dots[0], Pick((90.0, 100.0), (9.0, 0.0)))
    check = ((0.0, 0.0), (24.0, 0.0))
    with pytest.raises(LaidError, match=r"the third length: found 2.4 m .* at least"):
        laid_under(replace(short, picks=wide, check=check, taped=StatedValue(2.4)))
    check = ((0.0, 0.0), (25.0, 0.0))
    assert laid_under(replace(short, picks=wide, check=check, taped=StatedValue(2.5))).confirmed


def test_a_drawing_keeps_its_own_scale_and_a_picture_has_none() -> None:
    far = (DRAWN.picks[0], Pick((120.0, 0.0), (6.1, 0.0)))
    with pytest.raises(NotToScaleError, match="drawn in other units"):
        laid_under(replace(DRAWN, picks=far))
    dots = (Pick((0.0, 100.0), (0.0, 0.0)), Pick((200.0, 100.0), (20.0, 0.0)))
    check = ((200.0, 100.0), (200.0, 0.0))
    laid = laid_under(replace(DRAWN, picks=dots, check=check, unit=None, size=(200, 100)))
    assert laid.on_roof((100.0, 50.0)) == pytest.approx((10.0, 5.0))


def test_two_points_of_the_roof_that_are_one_lay_nothing() -> None:
    with pytest.raises(LaidError, match="found one spot"):
        laid_under(replace(DRAWN, picks=(DRAWN.picks[0], Pick((120.0, 0.0), (0.0, 0.0)))))
