"""The trade's ways to write a length, and the ways that can be misread."""

from fractions import Fraction

import pytest

from backspan.core.quantities import LENGTH, QuantityError, parse, parse_exact

INCH = Fraction("0.0254")

ACCEPTED_INCHES = [
    # Feet and inches.
    ("5'-6 1/2\"", "66.5"),
    ("5' 6 1/2\"", "66.5"),
    ("5'6 1/2\"", "66.5"),
    ("5'6\"", "66"),
    ("5'-6\"", "66"),
    ("5' - 6\"", "66"),
    ("5'- 6\"", "66"),
    ("5'-6-1/2\"", "66.5"),
    ("5'-6.5\"", "66.5"),
    ("5' 3/4\"", "60.75"),
    ("5'-3/4\"", "60.75"),
    ("5'- 3/4\"", "60.75"),
    ("5'-0 3/4\"", "60.75"),
    ("5'-11 15/16\"", "71.9375"),
    ("0'-6 1/2\"", "6.5"),
    ("6'-0\"", "72"),
    ("1,200'-0\"", "14400"),
    ("5ft 6 1/2in", "66.5"),
    ("5ft6in", "66"),
    ("5 ft 6 in", "66"),
    ("5 ft. 6 in.", "66"),
    ("5 ft-6 in", "66"),
    ("5 ft - 6 in", "66"),
    ("5 feet 6 inches", "66"),
    ("5feet6inches", "66"),
    ("1 foot 1 inch", "13"),
    ("5 FT 6 IN", "66"),
    ("5' 6 in", "66"),
    ("  5 ft   6 in  ", "66"),
    # Feet only, inches only.
    ("5'", "60"),
    ("5 ft", "60"),
    ("5.5 ft", "66"),
    ("5 1/2 ft", "66"),
    ("66.5 in", "66.5"),
    ('66.5"', "66.5"),
    ('66 1/2"', "66.5"),
    ('66-1/2"', "66.5"),
    ("1-1/2 in", "1.5"),
    ("1/2 in", "0.5"),
    ('3/4"', "0.75"),
    ('5/4"', "1.25"),
    (".5 in", "0.5"),
    ("0.5 in", "0.5"),
    ("0 in", "0"),
    ("1 inch", "1"),
    # Typographic marks.
    ("5′-6 1/2″", "66.5"),
    ("5’-6 1/2”", "66.5"),
    ("5‘ 6“", "66"),
    ("5' 6''", "66"),
    ("5'-6½\"", "66.5"),
    ("5'-6 ½\"", "66.5"),
    ("5'-½\"", "60.5"),
    ("5½ in", "5.5"),
    ("5 ½ in", "5.5"),
    ("5-½ in", "5.5"),
    ("½ in", "0.5"),
    ('¼"', "0.25"),
    ('¾"', "0.75"),
    ('⅛"', "0.125"),
    ('⅜"', "0.375"),
    ('⅝"', "0.625"),
    ('⅞"', "0.875"),
    ("1⁄2 in", "0.5"),
    ("5'\u20106\"", "66"),
    ("5\u00a0ft\u20096\u202fin", "66"),
    # A sign in front is for the whole.
    ("-1'-2\"", "-14"),
    ("−1'-2\"", "-14"),
    ("-1/2 in", "-0.5"),
    ("-1-1/2 in", "-1.5"),
    ("-½ in", "-0.5"),
    ("+5 in", "5"),
]
ACCEPTED_METRES = [
    ("1.69 m", "1.69"),
    ("1690 mm", "1.69"),
    ("1,690 mm", "1.69"),
    ("1,690.5 mm", "1.6905"),
    ("12,345,678 mm", "12345.678"),
    ("1690 MM", "1.69"),
    ("169 cm", "1.69"),
    ("1.69 metres", "1.69"),
    ("1.69 meters", "1.69"),
    ("1/2 m", "0.5"),
    ("-1.69 m", "-1.69"),
    ("123456789012345 mm", "123456789012.345"),
]
REFUSED = [
    ("", "nothing is written"),
    (" \t ", "nothing is written"),
    ("66", "bare number"),
    ("66.5", "bare number"),
    ("0", "bare number"),
    ("1/2", "bare number"),
    ("in", "no number"),
    ("NaN", "no number"),
    ("nan m", "no number"),
    ("inf m", "no number"),
    ("-inf m", "no number"),
    ("infinity", "no number"),
    ("1e3 m", "powers of ten"),
    ("1E3 m", "powers of ten"),
    ("1e-3 m", "powers of ten"),
    ("5'6", "after the feet has no inch mark"),
    ("5'-6", "after the feet has no inch mark"),
    ("5' 6 1/2", "after the feet has no inch mark"),
    ("5 ft 6", "after the feet has no inch mark"),
    ("5 6 in", "two numbers in a row"),
    ("1 690 mm", "two numbers in a row"),
    ("6.5.5 in", "two numbers in a row"),
    ("5'-6.5.5\"", "two numbers in a row"),
    ("5'-6 7\"", "two numbers in a row"),
    ("5 3/2 in", "mixed number is below one, not 3/2"),
    ("5 2/2 in", "mixed number is below one, not 1"),
    ("5'-6 4/3\"", "mixed number is below one, not 4/3"),
    ("1/0 in", "fraction with zero"),
    ("0/4 in", "fraction with zero"),
    ("5 0/4 in", "fraction with zero"),
    ("5 1/0 in", "fraction with zero"),
    ("5'-12\"", "twelve inches or more"),
    ("5'-14\"", "twelve inches or more"),
    ("0'-66 1/2\"", "twelve inches or more"),
    ("5.5 1/2 in", "decimal number mixed with a fraction"),
    ("5.5-1/2 in", "decimal number mixed with a fraction"),
    ("5'-6.5 1/2\"", "decimal number mixed with a fraction"),
    ("5.5' 6\"", "whole feet"),
    ("5 1/2 ft 6 in", "whole feet"),
    ("1/2 ft 6 in", "whole feet"),
    ("1 - 1/2 in", '"1 1/2" .* or 1 minus 1/2'),
    ("1 -1/2 in", '"1 1/2" .* or 1 minus 1/2'),
    ("1- 1/2 in", '"1 1/2" .* or 1 minus 1/2'),
    ("5'-6 - 1/2\"", '"6 1/2" .* or 6 minus 1/2'),
    ("5' -6\"", "feet minus inches"),
    ("5' - 1/2\"", "feet minus inches"),
    ("66-70 in", "range or a subtraction"),
    ("5'--6\"", "mixed units"),
    ("--5 in", "no number"),
    ("- 5 in", "no number"),
    ("1,5 m", "ambiguous comma"),
    ("1,69 m", "ambiguous comma"),
    ("0,123 m", "ambiguous comma"),
    ("1234,567 mm", "ambiguous comma"),
    ("1,690,5 mm", "ambiguous comma"),
    ("1.690,5 m", "ambiguous comma"),
    ("1,5'-0\"", "ambiguous comma"),
    ("5,½ in", "ambiguous comma"),
    ("½5 in", "number follows a fraction"),
    ("½ 5 in", "number follows a fraction"),
    ("½/2 in", "number follows a fraction"),
    ("5.½ in", "not a known unit"),
    ("1/½ in", "not a known unit"),
    ("1/2/3 in", "not a known unit"),
    ("5 ft 200 mm", "mixed units"),
    ("1 m 69 cm", "mixed units"),
    ("6 in 5 ft", "mixed units"),
    ("1'690 mm", "mixed units"),
    ("5'-6'", "mixed units"),
    ("5 ft² in", "not a known unit"),
    ("5 blobs", '"blobs" is not a known unit'),
    ("1_000 mm", "not a known unit"),
    ("0x10 mm", "not a known unit"),
    ("66 in.5", "two numbers|mixed units|not a known unit"),
    ("1 Mm", '"mm" is: letter case'),
    ("1 M", '"m" is: letter case'),
    ("5 kN", '"kN" is a unit of force; a length is wanted'),
    ("5 lb", '"lb" is a unit of force or mass; a length is wanted'),
    ("5 ft-lb", '"ft-lb" is a unit of moment'),
    ("5 sq ft", '"sq ft" is a unit of area'),
    ("٣ m", "no number"),
    ("1234567890123456 mm", "more than 15 digits"),
    ("1,234,567,890,123,456 mm", "more than 15 digits"),
    ("0.12345678901234567890123456 m", "more than 25 digits"),
    ("5'-0.12345678901234567890123456\"", "more than 25 digits"),
    ("0" * 62 + " m", "more than 15 digits"),
    ("1" + " " * 62 + "in", "longer than 64 characters"),
]


@pytest.mark.parametrize(("text", "inches"), ACCEPTED_INCHES)
def test_reads_feet_and_inches(text: str, inches: str) -> None:
    assert parse_exact(text, LENGTH) == Fraction(inches) * INCH


@pytest.mark.parametrize(("text", "metres"), ACCEPTED_METRES)
def test_reads_metric(text: str, metres: str) -> None:
    assert parse_exact(text, LENGTH) == Fraction(metres)


@pytest.mark.parametrize(("text", "telling"), REFUSED)
def test_refuses(text: str, telling: str) -> None:
    with pytest.raises(QuantityError, match=telling):
        parse(text, LENGTH)


def test_equal_lengths_are_the_same_float_in_any_unit() -> None:
    texts = ["5'-6 1/2\"", "66.5 in", "1.6891 m", "1689.1 mm", "168.91 cm", '66-1/2"']
    assert {parse(text, LENGTH) for text in texts} == {1.6891}


def test_a_text_of_64_characters_is_read() -> None:
    assert parse("1" + " " * 61 + "in", LENGTH) == 0.0254


# Readings that general unit libraries are known to get wrong without a word: each has its own name.
PITFALLS = {
    "feet, inches and a fraction are added, not multiplied": ("5 ft 6 1/2 in", "66.5"),
    "a fraction adds to its whole, it does not divide it": ("6 1/2 in", "6.5"),
    "marks and hyphen are feet and inches, not a subtraction": ("5'-6 1/2\"", "66.5"),
    "inches after feet are not dropped": ("5 feet 6 inches", "66"),
    "feet before a lone fraction are not dropped": ("5' 3/4\"", "60.75"),
    "the sign is for feet and inches together": ("-1'-2\"", "-14"),
    "zero feet are feet": ("0'-6 1/2\"", "6.5"),
    "a fraction character after a digit is not a second digit": ("5½ in", "5.5"),
    "a hyphen joins a mixed number": ("1-1/2 in", "1.5"),
    "decimal feet are not feet and inches": ("5.6 ft", "67.2"),
}


@pytest.mark.parametrize(("text", "inches"), PITFALLS.values(), ids=PITFALLS.keys())
def test_pitfall(text: str, inches: str) -> None:
    assert parse_exact(text, LENGTH) == Fraction(inches) * INCH


def test_pitfall_an_apostrophe_does_not_part_thousands() -> None:
    with pytest.raises(QuantityError, match="mixed units"):
        parse("1'690 mm", LENGTH)


def test_pitfall_a_spaced_hyphen_may_be_a_minus() -> None:
    with pytest.raises(QuantityError, match=r"ambiguous: \"1 1/2\" .* or 1 minus 1/2"):
        parse("1 - 1/2 in", LENGTH)
