"""Sections of beams against two libraries that know nothing of this program.

Plates: areas and moments of polygons, discs and round corners by sympy, within 0.1 %. Shapes of the
table: the United States sections of anastruct's data, within 2 %, by which editions differ.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence

import pytest
from anastruct.sectionbase.sectionbase import section_base
from sympy import Circle, Integral, Point, Polygon, integrate, re, sqrt, symbols

from backspan.core.rules.shape import SectionForm
from backspan.core.sheet.beam_section import section_numbers
from tests.published.test_steel_beams import SHAPES, do

WITHIN_PLATES = 1e-3
#: Two percent, and what an area of three digits is rounded by.
WITHIN_TABLE = 2.01e-2
Corner = tuple[float, float]
#: Depth, width, web, flange in inches: light and heavy, narrow and wide, thin and thick.
I_PLATES = (
    (5.9, 3.94, 0.17, 0.215),
    (8.0, 8.0, 0.25, 0.25),
    (4.0, 1.5, 0.5, 0.75),
    (12, 4, 0.2, 1),
)
#: Depth, width, wall.
TUBES = ((3, 3, 0.174), (6, 4, 0.233), (2, 8, 0.5))
#: Diameter, wall.
PIPES = ((2.375, 0.143), (4.5, 0.221), (6.0, 1.5))


def polygon(corners: Sequence[Corner]) -> Polygon:
    return Polygon(*(Point(x, y) for x, y in corners))


def moment_of_round_box(width: float, depth: float, radius: float, power: int) -> float:
    """The integral of y to a power over a rectangle with round corners: of its upper half twice."""
    y, high = symbols("y high", positive=True)
    straight = integrate(width * y**power, (y, 0, depth / 2 - radius))
    across = width - 2 * radius + 2 * sqrt(radius**2 - high**2)
    round_part = Integral(across * (high + depth / 2 - radius) ** power, (high, 0, radius))
    return 2 * float(re(straight + round_part.evalf()))


def numbers_of(corners: Sequence[Corner]) -> tuple[float, float, float]:
    """Area and second moments across and along the web."""
    one = polygon(corners)
    across, along, _ = one.second_moment_of_area(Point(0, 0))
    return float(abs(one.area)), float(abs(across)), float(abs(along))


def first_moment(upper: Sequence[Corner]) -> float:
    """Area times the height of its centroid, of what lies above the middle."""
    one = polygon(upper)
    return float(abs(one.area) * one.centroid.y)


def i_corners(depth: float, width: float, web: float, flange: float) -> list[Corner]:
    right = [(width / 2, depth / 2 - flange), (web / 2, depth / 2 - flange)]
    down = [(x, -y) for x, y in reversed(right)]
    edge = [(width / 2, depth / 2), *right, *down, (width / 2, -depth / 2)]
    return edge + [(-x, y) for x, y in reversed(edge)]


def ours(form: SectionForm, **sizes: float) -> Mapping[str, float]:
    return section_numbers(do, form, {name: size * 0.0254 for name, size in sizes.items()})


def agree(got: Mapping[str, float], expected: Mapping[str, float], within: float) -> None:
    for name, value in expected.items():
        assert got[name] == pytest.approx(value, rel=within), name


def in_metres(area: float, across: float, along: float) -> dict[str, float]:
    return {
        "area": area * 0.0254**2,
        "second_moment": across * 0.0254**4,
        "weak_second_moment": along * 0.0254**4,
    }


@pytest.mark.parametrize(("depth", "width", "web", "flange"), I_PLATES)
def test_plates_of_an_i(depth: float, width: float, web: float, flange: float) -> None:
    got = ours(
        SectionForm.I_SHAPE,
        section_depth=depth,
        flange_width=width,
        web_thickness=web,
        flange_thickness=flange,
    )
    agree(got, in_metres(*numbers_of(i_corners(depth, width, web, flange))), WITHIN_PLATES)
    high, below = depth / 2, depth / 2 - flange
    right = [(width / 2, high), (width / 2, below), (web / 2, below), (web / 2, 0.0)]
    half = right + [(-x, y) for x, y in reversed(right)]
    agree(got, {"plastic_modulus": 2 * first_moment(half) * 0.0254**3}, WITHIN_PLATES)


@pytest.mark.parametrize(("depth", "width", "wall"), TUBES)
def test_plates_of_a_tube(depth: float, width: float, wall: float) -> None:
    got = ours(SectionForm.TUBE, section_depth=depth, flange_width=width, wall=wall)
    # Its corners are round: two walls outside, one inside.
    area, along, across, plastic = (
        moment_of_round_box(wide, deep, 2 * wall, power)
        - moment_of_round_box(wide - 2 * wall, deep - 2 * wall, wall, power)
        for wide, deep, power in (
            (width, depth, 0),
            (depth, width, 2),
            (width, depth, 2),
            (width, depth, 1),
        )
    )
    expected = in_metres(area, across, along) | {"plastic_modulus": plastic * 0.0254**3}
    agree(got, expected, WITHIN_PLATES)


@pytest.mark.parametrize(("diameter", "wall"), PIPES)
def test_the_wall_of_a_pipe(diameter: float, wall: float) -> None:
    got = ours(SectionForm.PIPE, section_depth=diameter, wall=wall)
    area, across, plastic = 0.0, 0.0, 0.0
    radius, height = symbols("radius height", positive=True)
    half = integrate(2 * height * sqrt(radius**2 - height**2), (height, 0, radius))
    for one, sign in ((diameter / 2, 1.0), (diameter / 2 - wall, -1.0)):
        disc = Circle(Point(0, 0), one)
        area += sign * float(disc.area)
        across += sign * float(disc.second_moment_of_area()[0])
        plastic += sign * 2 * float(half.subs(radius, one))
    expected = {
        "area": area * 0.0254**2,
        "second_moment": across * 0.0254**4,
        "plastic_modulus": plastic * 0.0254**3,
    }
    agree(got, expected, WITHIN_PLATES)


#: Our names of shapes, by the other's.
WALLS = {"3/16": ".188", "1/4": ".250"}


def other_name(shape: str) -> str:
    if shape.startswith("Pipe"):
        return f"PIPE{shape.split()[1]}SCH40"
    name = shape.upper()
    for fraction, decimal in WALLS.items():
        name = name.replace(f"X{fraction}", f"X{decimal}") if name.startswith("HSS") else name
    return name


@pytest.mark.parametrize("shape", sorted(SHAPES))
def test_a_shape_of_the_table_is_the_other_s(shape: str) -> None:
    section_base.set_database_name("US")
    other = section_base.get_section_parameters(other_name(shape))
    got = {name: amount.value for name, amount in SHAPES[shape].sizes.items()}
    expected = {
        "area": float(other["Ax"]),
        "second_moment": float(other["Iy"]),
        "plastic_modulus": float(other["Wply"]) * 0.0254**3,
        "section_depth": float(other["h"]) * 0.0254,
        "elastic_modulus_x": float(other["Iy"]) / (float(other["vz"]) * 0.0254),
    }
    if SHAPES[shape].form is SectionForm.I_SHAPE:
        expected |= {
            "flange_width": float(other["b"]) * 0.0254,
            "web_thickness": float(other["ea"]) * 0.0254,
            "flange_thickness": float(other["es"]) * 0.0254,
            "radius_y": math.sqrt(float(other["Iz"]) / float(other["Ax"])),
        }
        if "torsion_constant" in got:
            expected["torsion_constant"] = float(other["Ix"]) * 0.0254**4
    agree(got, expected, WITHIN_TABLE)
