import pytest

from backspan.core.quantities import Style
from backspan.drawings.paper import Frame, centred, fitting_scale, ratio_to_fit, standard_scales
from backspan.drawings.scalebar import scale_bar, segment
from backspan.drawings.scene import Polygon, Scale, Text


@pytest.mark.parametrize(
    ("units", "least", "text"),
    [
        (Style.US, 24.0, '1/2" = 1\'-0"'),
        (Style.US, 24.1, '3/8" = 1\'-0"'),
        (Style.US, 96.0, '1/8" = 1\'-0"'),
        (Style.US, 193.0, "1\" = 20'"),
        (Style.METRIC, 21.0, "1:25"),
        (Style.METRIC, 100.0, "1:100"),
    ],
)
def test_the_largest_standard_scale_that_fits_is_taken(
    units: Style, least: float, text: str
) -> None:
    assert fitting_scale(units, least_ratio=least).text == text


@pytest.mark.parametrize("units", list(Style))
def test_beyond_the_standard_scales_a_round_one_fits(units: Style) -> None:
    scale = fitting_scale(units, least_ratio=1e6)
    assert scale.ratio >= 1e6
    assert scale.text.startswith("1:")


@pytest.mark.parametrize("units", list(Style))
def test_scales_are_in_order(units: Style) -> None:
    ratios = [scale.ratio for scale in standard_scales(units)]
    assert ratios == sorted(ratios)


def test_small_things_are_not_blown_up() -> None:
    assert fitting_scale(Style.US, least_ratio=1.0, most_detail=24.0).ratio == 24.0


def test_paper_and_drawing_are_inverse() -> None:
    frame = Frame(Scale(48.0, ""), (30.0, 40.0))
    assert frame.to_drawing(frame.to_paper((1.5, -2.0))) == pytest.approx((1.5, -2.0))
    assert frame.drawn(frame.real(2.5)) == pytest.approx(2.5)


def test_content_lies_in_the_middle_of_its_area() -> None:
    frame = centred(Scale(100.0, ""), content=(0.0, 0.0, 10.0, 4.0), area=(0.0, 0.0, 200.0, 100.0))
    assert frame.to_paper((5.0, 2.0)) == pytest.approx((100.0, 50.0))


def test_the_ratio_fits_both_ways() -> None:
    assert ratio_to_fit((0.0, 0.0, 10.0, 1.0), (0.0, 0.0, 100.0, 100.0)) == 100.0
    assert ratio_to_fit((0.0, 0.0, 1.0, 20.0), (0.0, 0.0, 100.0, 100.0)) == 200.0


@pytest.mark.parametrize(("units", "metres"), [(Style.US, 0.3048), (Style.METRIC, 1.0)])
@pytest.mark.parametrize("ratio", [12.0, 48.0, 50.0, 192.0, 2400.0, 1e6])
def test_the_bar_is_true_to_scale(units: Style, metres: float, ratio: float) -> None:
    step, drawn, _ = segment(Scale(ratio, ""), units)
    assert drawn == pytest.approx(step * metres * 1000.0 / ratio)
    assert drawn >= 12.0
    bar = [
        one for one in scale_bar(Scale(ratio, "1:x"), units, (0.0, 0.0)) if isinstance(one, Polygon)
    ]
    assert bar[-1].points[1][0] == pytest.approx(4 * drawn)
    words = [
        one.text
        for one in scale_bar(Scale(ratio, "1:x"), units, (0.0, 0.0))
        if isinstance(one, Text)
    ]
    assert "Scale 1:x" in words
    assert words[0] == "0"
