from __future__ import annotations

import pytest

from backspan.core.worked.numerals import (
    PrintedNumber,
    half_of_last,
    places_for,
    read_number,
    write_number,
)


@pytest.mark.parametrize(
    ("number", "places"),
    [
        (1391.304, 2),
        (4.0, 5),
        (0.0, 5),
        (999999.6, 0),
        (99999.96, 0),
        (99999.4, 1),
        (1234567.8, 0),
        (-0.00125, 8),
    ],
)
def test_six_digits_are_shown_and_whole_units_stay(number: float, places: int) -> None:
    assert places_for(number, digits=6) == places


@pytest.mark.parametrize(
    ("number", "places", "text"),
    [
        (1391.304, 2, "1,391.3"),
        (1391.304, 3, "1,391.304"),
        (1000.0, 3, "1,000"),
        (1000.0, 0, "1,000"),
        (-12.5, 4, "-12.5"),
        (-0.0004, 3, "0"),
        (-0.0, 0, "0"),
        (0.0, 6, "0"),
        (1234567.89, 0, "1,234,568"),
    ],
)
def test_a_number_is_written_without_idle_zeros(number: float, places: int, text: str) -> None:
    assert write_number(number, places=places) == text


@pytest.mark.parametrize("text", ["0", "4", "-12.5", "1,391.304", "1,234,568"])
def test_what_is_written_is_read_back(text: str) -> None:
    assert write_number(read_number(text), places=6) == text


def test_half_of_the_last_place() -> None:
    assert half_of_last(0) == 0.5
    assert half_of_last(3) == 0.0005


def test_a_number_without_a_unit_stands_alone() -> None:
    assert PrintedNumber("factor", "k", "4", "").text == "4"
    assert PrintedNumber("reach", "a", "4", "ft").text == "4 ft"
