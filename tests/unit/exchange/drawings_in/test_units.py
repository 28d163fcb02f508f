"""The units of a drawing: as its file says, as the caller says, and whether they can be so."""

from __future__ import annotations

import re

import pytest

from backspan.exchange.drawings_in import DrawingError, DrawingUnit, read_drawing
from tests.unit.exchange.drawings_in.drawing import CODES, content, made, oblong, read, told

# One roof of 18.288 m by 9.144 m in every unit, its numbers by hand.
LONG = {"in": 720, "ft": 60, "mm": 18288, "cm": 1828.8, "m": 18.288, "survey ft": 60}


@pytest.mark.parametrize("unit", DrawingUnit)
def test_the_units_of_the_file_make_metres(unit: DrawingUnit) -> None:
    document = made(CODES[unit])
    long = LONG[unit]
    document.modelspace().add_lwpolyline([(0, 0), (long, 0), (long, long / 2)], close=True)
    drawn = read(document)
    survey = 60 * 1200 / 3937
    expected = survey if unit is DrawingUnit.SURVEY_FEET else 18.288
    assert drawn.lines[0].points[2] == pytest.approx((expected, expected / 2), abs=1e-9)
    assert (drawn.units.unit, drawn.units.said) == (unit, "the file says")
    assert drawn.audit == ()


@pytest.mark.parametrize("is_there", [True, False])
def test_without_units_a_drawing_is_refused_until_someone_says_them(is_there: bool) -> None:
    document = made(0)
    oblong(document)
    data = content(document)
    if not is_there:
        data = re.sub(rb" *9\r?\n\$INSUNITS\r?\n *70\r?\n *0\r?\n", b"", data)
        assert b"INSUNITS" not in data
    found = r"\$INSUNITS is 0" if is_there else r"\$INSUNITS is not in its header"
    with pytest.raises(DrawingError, match=rf"no units \({found}\); expected the units it was"):
        read_drawing(data, "roof.dxf")
    drawn = read_drawing(data, "roof.dxf", units=DrawingUnit.FEET)
    assert (drawn.units.unit, drawn.units.said) == (DrawingUnit.FEET, "you said")
    assert drawn.size.width == pytest.approx(18.288, abs=1e-9)


@pytest.mark.parametrize(("code", "name"), [(3, "miles"), (10, "yards"), (99, "not known")])
def test_units_in_which_no_roof_is_drawn_are_told_by_name(code: int, name: str) -> None:
    document = made(code)
    oblong(document)
    with pytest.raises(DrawingError, match=rf"{name} \(\$INSUNITS is {code}\)"):
        read(document)


def test_who_says_other_units_than_the_file_is_followed_and_told() -> None:
    document = made(CODES["in"])
    oblong(document)
    drawn = read(document, DrawingUnit.FEET)
    assert drawn.size.width == pytest.approx(18.288, abs=1e-9)
    assert told(drawn) == {"the file says in ($INSUNITS is 1); taken as ft, as you said": 1}


def test_a_kind_of_measurement_that_disagrees_is_told() -> None:
    document = made(CODES["ft"])
    document.header["$MEASUREMENT"] = 1
    oblong(document)
    assert told(read(document)) == {"$MEASUREMENT is 1 (metric), which is not what ft is": 1}


def test_units_that_make_no_roof_are_refused_with_those_that_would() -> None:
    document = made(CODES["in"])
    oblong(document)
    with pytest.raises(
        DrawingError, match="in ft or survey ft or m it would be a roof's"
    ) as caught:
        read(document)
    # 60 in by 30 in.
    assert "5 ft by 2.5 ft or 1.524 m by 0.762 m with in as its units" in str(caught.value)
    large = made(CODES["m"])
    large.modelspace().add_line((0, 0), (18288, 0))
    with pytest.raises(DrawingError, match="in in or mm or cm it would be a roof's"):
        read(large)
    with pytest.raises(DrawingError, match=r"with cm as its units \(you said so\)"):
        read(document, DrawingUnit.CENTIMETRES)
