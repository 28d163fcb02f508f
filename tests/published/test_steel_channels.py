"""Single channels against the shape table, a published example and the plates themselves.

Weak axis, torsion and warping of rolled channels: AISC shapes database 15 (from memory; its text
was not seen). AISC Design Examples v15.0, F.2-1, a C15x33.9 (from memory).
"""

from __future__ import annotations

from itertools import pairwise

import pytest

from backspan.core.mechanics import FORMULAS
from backspan.core.quantities import PRESSURE, SECOND_MOMENT, parse
from backspan.core.rules.shape import SectionForm
from backspan.core.sheet.beam_section import Steel, nominal_moment, section_numbers
from tests.published.test_steel_beams import A992, SHAPES, do, inches, kip_inches, moment_of

A36 = Steel(parse("36 ksi", PRESSURE), A992.elastic_constant, A992.slender)
#: Weak second moment and radius, torsion constant, warping constant: in4, in, in4, in6.
OF_TABLE = {
    "C4x5.4": (0.312, 0.444, 0.0399, 0.921),
    "C5x6.7": (0.470, 0.489, 0.0549, 2.22),
    "C6x8.2": (0.687, 0.536, 0.0736, 4.70),
    "C8x11.5": (1.31, 0.623, 0.130, 16.5),
}
C15X33_9 = {
    "section_depth": inches(15.0),
    "flange_width": inches(3.40),
    "web_thickness": inches(0.400),
    "flange_thickness": inches(0.650),
}
Plates = tuple[float, float, float, float]


def numbers_of(plates: Plates) -> tuple[dict[str, float], float]:
    """Depth, width, web and flange in inches; the numbers, and the warping constant in in6."""
    names = ("section_depth", "flange_width", "web_thickness", "flange_thickness")
    sizes = {name: inches(size) for name, size in zip(names, plates, strict=True)}
    found = section_numbers(do, SectionForm.CHANNEL, sizes)
    apart = found["warping_distance"] / 0.0254
    return found, in4(found["weak_second_moment"]) * apart * apart / 4


def in4(moment: float) -> float:
    return moment / parse("1 in4", SECOND_MOMENT)


@pytest.mark.parametrize("shape", OF_TABLE)
def test_rolled_channels_have_a_little_less_sideways_than_their_table(shape: str) -> None:
    """Less, never more: the flanges are taken with more slope than they are rolled with."""
    weak, radius, torsion, warping = OF_TABLE[shape]
    numbers = section_numbers(do, SectionForm.CHANNEL, SHAPES[shape].numbers)
    apart = numbers["warping_distance"] / 0.0254
    assert 0.96 < in4(numbers["weak_second_moment"]) / weak < 0.98
    assert 0.98 < numbers["radius_y"] / 0.0254 / radius < 1.0
    assert 0.83 < in4(numbers["torsion_constant"]) / torsion < 0.88
    assert 0.80 < in4(numbers["weak_second_moment"]) * apart * apart / 4 / warping < 0.83


@pytest.mark.parametrize("shape", OF_TABLE)
def test_even_flanges_of_the_mean_thickness_would_be_too_much(shape: str) -> None:
    """Why the slope is taken: by the parallel axis theorem alone, much more than the table has."""
    depth, width, web, flange = (
        SHAPES[shape].numbers[name] / 0.0254
        for name in ("section_depth", "flange_width", "web_thickness", "flange_thickness")
    )
    between = depth - 2 * flange
    area = 2 * width * flange + between * web
    middle = (width * width * flange + between * web * web / 2) / area
    even = (2 * flange * width**3 + between * web**3) / 3 - area * middle * middle
    assert even / OF_TABLE[shape][0] > 1.14


def test_a_flange_of_even_slope_summed_slice_by_slice() -> None:
    """By sums over a thousand slices of flange: about the centroid, and about the shear centre."""
    depth, width, web, flange = 6.0, 2.0, 0.25, 0.4
    found, warping = numbers_of((depth, width, web, flange))
    count = 4000

    def slices(length: float) -> list[tuple[float, float]]:
        middles = [(at + 0.5) / count for at in range(count)]
        return [(one * length, flange * (1.5 - one) * length / count) for one in middles]

    over = [(web + x, area) for x, area in slices(width - web)]
    plates = [*(over * 2), (web / 2, depth * web)]
    area = sum(one for _, one in plates)
    middle = sum(x * one for x, one in plates) / area
    weak = sum((x - middle) ** 2 * one for x, one in plates) + depth * web**3 / 12
    assert in4(found["weak_second_moment"]) == pytest.approx(weak, rel=1e-3)

    height = depth - flange
    beside = slices(width - web / 2)
    pull = sum(height * height / 2 * x * one for x, one in beside)
    stiff = sum(height * height / 2 * one for _, one in beside) + web * height**3 / 12
    centre = pull / stiff
    bent = 2 * sum((height / 2 * (centre - x)) ** 2 * one for x, one in beside)
    assert warping == pytest.approx(bent + centre * centre * web * height**3 / 12, rel=1e-3)


def test_design_example_f2_1_a_channel_held_all_along_becomes_plastic() -> None:
    """36 ksi x 50.8 in3 = 1,830 kip in; allowed 91.3 kip ft. By its plates a hundredth less."""
    numbers = section_numbers(do, SectionForm.CHANNEL, C15X33_9)
    found = nominal_moment(do, SectionForm.CHANNEL, numbers, A36, inches(1.0), rolled=True)
    assert kip_inches(found.moment) == pytest.approx(1830, rel=0.01)
    assert kip_inches(found.moment) / 12 / 1.67 <= 91.3
    assert found.plate_left > 0.0


def test_design_example_f2_1b_a_channel_held_at_five_feet_loses_a_little() -> None:
    """Held at fifths of 25 ft: L_b 5 ft, r_y 0.901 in, L_p 3.75 ft, L_el 14.5 ft: 1,740 kip in."""
    steel = A36.constants
    given = {"radius_y": inches(0.901), **steel}
    short = do(FORMULAS["length_still_plastic"], **given)
    assert short / 0.0254 == pytest.approx(45.0, rel=2e-3)
    # h_o 14.4 in, C_w 358 in6, I_y 8.07 in4: c = 7.2 root(8.07 / 358) = 1.08; r_ts 1.13 in.
    apart = 2 * (358 / 8.07) ** 0.5
    assert 14.4 / apart == pytest.approx(1.08, rel=2e-3)
    cubic = inches(1.0) ** 3
    share = do(
        FORMULAS["share_of_torsion_of_channel"],
        torsion_constant=1.01 * parse("1 in4", SECOND_MOMENT),
        elastic_modulus_x=42.0 * cubic,
        warping_distance=inches(apart),
    )
    turning = do(
        FORMULAS["turning_radius_of_channel"],
        weak_second_moment=8.07 * parse("1 in4", SECOND_MOMENT),
        warping_distance=inches(apart),
        elastic_modulus_x=42.0 * cubic,
    )
    assert turning / 0.0254 == pytest.approx(1.13, rel=5e-3)
    long = do(FORMULAS["length_elastic"], effective_radius=turning, torsion_share=share, **steel)
    assert long / 0.0254 == pytest.approx(14.5 * 12, rel=5e-3)
    plastic = 36.0 * 50.8
    fell = (plastic - 0.7 * 36.0 * 42.0) * (60 - short / 0.0254) / ((long - short) / 0.0254)
    assert plastic - fell == pytest.approx(1740, rel=5e-3)
    numbers = section_numbers(do, SectionForm.CHANNEL, C15X33_9)
    by_plates = nominal_moment(do, SectionForm.CHANNEL, numbers, A36, inches(60), rolled=True)
    assert 0.97 < kip_inches(by_plates.moment) / 1740 < 1.0


@pytest.mark.parametrize("shape", OF_TABLE)
def test_the_moment_stays_below_that_of_the_table_s_own_numbers(shape: str) -> None:
    """Elastic turning over by I_y, J and C_w of the table, G = E / 2.6: never more than that."""
    weak, _, torsion, warping = OF_TABLE[shape]
    elastic = 29_000.0
    for feet in (8, 12, 18, 30):
        wave = 3.14159265 / (feet * 12)
        critical = (
            wave
            * (elastic * weak * (elastic / 2.6 * torsion + wave * wave * elastic * warping)) ** 0.5
        )
        assert moment_of(shape, feet) < critical


def test_a_channel_turns_over_before_an_i_of_the_same_plates() -> None:
    for feet in (2, 5, 10, 20):
        taken = []
        for form in (SectionForm.I_SHAPE, SectionForm.CHANNEL):
            wide = C15X33_9 | {"flange_width": inches(6.8 if form is SectionForm.I_SHAPE else 3.4)}
            numbers = section_numbers(do, form, wide)
            taken.append(
                nominal_moment(do, form, numbers, A36, inches(feet * 12), rolled=True).moment
            )
        assert taken[1] < taken[0]


def test_a_wider_flange_of_a_channel_never_warps_less() -> None:
    found = [numbers_of((6.0, width / 10, 0.2, 0.343))[1] for width in range(10, 40)]
    assert all(less < more for less, more in pairwise(found))
