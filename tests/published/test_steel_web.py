"""Webs of steel beams against published worked examples and tables, all from memory.

AISC Manual, tables of W-shapes (shear of 50 ksi steel) and of the constants R1 to R4 over a
bearing, as its design examples use them for a W16x50 on a seat; Design Examples v14 on a
rectangular and a round tube in shear. Their pages were not at hand; sizes are of the shape tables.
"""

from __future__ import annotations

import pytest

from backspan.core.mechanics import FORMULAS
from backspan.core.quantities import AREA, FORCE, PRESSURE, parse

ELASTIC, FIFTY = parse("29000 ksi", PRESSURE), parse("50 ksi", PRESSURE)


def do(name: str, **arguments: float) -> float:
    value: float = FORMULAS[name].__wrapped__(**arguments)
    return value


def inches(number: float) -> float:
    return number * 0.0254


def kips(force: float) -> float:
    return force / parse("1 kip", FORCE)


@pytest.mark.parametrize(
    ("depth", "web", "safety", "allowed"),
    [
        (20.6, 0.350, 1.50, 144.0),  # W21x48, also Design Example G.1
        (15.7, 0.250, 1.67, 70.5),  # W16x26, h / t_w = 56.8: not stocky
        (11.9, 0.200, 1.67, 42.8),  # W12x14, h / t_w = 54.3: not stocky
    ],
)
def test_shear_of_w_shapes(depth: float, web: float, safety: float, allowed: float) -> None:
    nominal = do(
        "shear_of_web",
        yield_strength=FIFTY,
        section_depth=inches(depth),
        web_thickness=inches(web),
    )
    found = do("allowed_force", nominal_force=nominal, safety_factor=safety)
    assert kips(found) == pytest.approx(allowed, rel=2e-3)


def test_where_a_web_of_50_ksi_ends_to_be_stocky() -> None:
    """Printed 53.9; the W16x26 and the W12x14 are just beyond."""
    found = do(
        "slenderness_up_to", slender_limit=2.24, elastic_constant=ELASTIC, yield_strength=FIFTY
    )
    assert found == pytest.approx(53.9, rel=2e-3)


#: W16x50: its depth, web, flange and fillet.
DEPTH, WEB, FLANGE, FILLET = (inches(one) for one in (16.3, 0.380, 0.630, 1.03))


def allowed_at_end(name: str, safety: float, bearing: float, **sizes: float) -> float:
    nominal = do(
        name, yield_strength=FIFTY, web_thickness=WEB, bearing_length=inches(bearing), **sizes
    )
    return kips(nominal) / safety


def test_the_web_of_a_w16x50_over_a_seat() -> None:
    """R1 32.6 kips, R2 12.7 kips/in; R3 44.8 kips, R4 3.86 kips/in, allowed strength."""
    yields = [allowed_at_end("web_yields_at_end", 1.5, one, fillet=FILLET) for one in (0, 1)]
    assert yields[0] == pytest.approx(32.6, rel=2e-3)
    assert yields[1] - yields[0] == pytest.approx(12.7, rel=4e-3)
    sizes = {"elastic_constant": ELASTIC, "section_depth": DEPTH, "flange_thickness": FLANGE}
    cripples = [allowed_at_end("web_cripples_at_end", 2.0, one, **sizes) for one in (0, 1)]
    assert cripples[0] == pytest.approx(44.8, rel=2e-3)
    assert cripples[1] - cripples[0] == pytest.approx(3.86, rel=2e-3)


@pytest.mark.parametrize("bearing", [0.0, 1.0, 6.0])
def test_within_a_beam_a_web_takes_twice_what_it_takes_at_an_end(bearing: float) -> None:
    """By the tables 2 R1 + R2 l_b, and 2 (R3 + R4 l_b)."""
    r1, r2 = (allowed_at_end("web_yields_at_end", 1.5, one, fillet=FILLET) for one in (0, 1))
    found = allowed_at_end("web_yields", 1.5, bearing, fillet=FILLET)
    assert found == pytest.approx(2 * r1 + (r2 - r1) * bearing)
    sizes = {"elastic_constant": ELASTIC, "section_depth": DEPTH, "flange_thickness": FLANGE}
    found = allowed_at_end("web_cripples", 2.0, bearing, **sizes)
    assert found == pytest.approx(2 * allowed_at_end("web_cripples_at_end", 2.0, bearing, **sizes))


def test_a_rectangular_tube_in_shear() -> None:
    """HSS6x4x3/8 of 46 ksi: h 4.95 in, h / t 14.2, V_n 95.5 kips, 57.2 kips allowed."""
    wall = inches(0.349)
    height = do("web_height_of_tube", section_depth=inches(6), wall=wall)
    assert height == pytest.approx(inches(4.95), rel=1e-3)
    assert do("slenderness_of_web", web_height=height, web_thickness=wall) == pytest.approx(
        14.2, rel=2e-3
    )
    strength = parse("46 ksi", PRESSURE)
    nominal = do("shear_of_tube", yield_strength=strength, web_height=height, wall=wall)
    assert kips(nominal) == pytest.approx(95.5, rel=2e-3)
    assert kips(nominal) / 1.67 == pytest.approx(57.2, rel=2e-3)


def test_a_round_tube_in_shear() -> None:
    """HSS16.000x0.375 of 42 ksi: buckling at 73.0 ksi, yielding at 25.2; V_n 217 kips."""
    sizes = {"elastic_constant": ELASTIC, "section_depth": inches(16), "wall": inches(0.349)}
    buckles = do("shear_stress_of_pipe", yield_strength=parse("900 ksi", PRESSURE), **sizes)
    assert buckles == pytest.approx(parse("73.0 ksi", PRESSURE), rel=3e-3)
    stress = do("shear_stress_of_pipe", yield_strength=parse("42 ksi", PRESSURE), **sizes)
    assert stress == pytest.approx(parse("25.2 ksi", PRESSURE))
    nominal = do("shear_of_pipe", shear_stress=stress, area=parse("17.2 sq in", AREA))
    assert kips(nominal) == pytest.approx(217, rel=2e-3)
    assert kips(nominal) / 1.67 == pytest.approx(130, rel=3e-3)
