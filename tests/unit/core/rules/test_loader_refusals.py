"""The loader refuses what is not right, and tells all of it at once."""

from __future__ import annotations

import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from backspan.core.errors import BackspanError
from backspan.core.rules.loader import load
from backspan.core.rules.shape import RuleError
from tests.unit.core.rules.rule_file import (
    HEAD,
    LIMIT,
    PLAIN,
    READINGS,
    REMARK,
    SAMPLE,
    SHARED,
    WORDS,
    plain,
    problems_of,
    replaced,
    without,
)


@pytest.mark.parametrize(
    "key", ["format", "id", "edition", "title", "publisher", "jurisdiction", "scope"]
)
def test_a_missing_head_field_is_told(key: str) -> None:
    found = problems_of(without(SAMPLE, key))
    assert len(found) == 1
    assert found[0].startswith(f"{key!r} is missing; expected ")


@pytest.mark.parametrize(
    ("content", "key"),
    [
        *((PLAIN, key) for key in ("kind", *SHARED, "factor", "load", "beam_weight")),
        *((LIMIT, key) for key in ("kind", *SHARED, "value", "dimension")),
        *((WORDS, key) for key in ("kind", *SHARED, "words")),
        *((REMARK, key) for key in ("kind", *SHARED, "text")),
    ],
)
def test_a_missing_field_of_a_value_is_told_with_its_place(content: str, key: str) -> None:
    place = re.findall(r"^\[(.*)\]$", content, flags=re.MULTILINE)[0]
    found = problems_of(plain(without(content, key)))
    assert found[0].startswith(f"{place}: {key!r} is missing; expected ")
    assert len(found) == 1


@pytest.mark.parametrize(
    ("old", "new", "told"),
    [
        ("format = 1", "format = 2", "'format': found 2, expected 1"),
        ("format = 1", "format = true", "'format': found True, expected 1"),
        ("format = 1", "format = 1.0", "'format': found 1.0, expected 1"),
        ('id = "made-up"', "id = 3", "'id': found 3, expected text"),
        ('id = "made-up"', 'id = " "', "'id': found ' ', expected text"),
        ('title = "A', 'titel = "A', "unknown key 'titel'; a rule file has: format, id, "),
        (
            "[tipping.rated-load]",
            "[tiping.rated-load]",
            "unknown topic 'tiping'; topics: tipping, ",
        ),
        ("[tipping.rated-load]", "[tipping]", "tipping.kind: found 'factor on load', expected a"),
        ('"factor on load"', '"factor"', "'kind': found 'factor', expected one of: 'factor on"),
        ("factor = 4", "factor = true", "'factor': found True, expected a number above 0"),
        ("factor = 4", 'factor = "4"', "'factor': found '4', expected a number above 0"),
        ("factor = 4", "factor = 0", "'factor': found 0, expected a number above 0"),
        ("factor = 4", "factor = -4", "'factor': found -4, expected a number above 0"),
        ("factor = 4", "factor = nan", "'factor': found nan, expected a number above 0"),
        ("factor = 4", "factor = inf", "'factor': found inf, expected a number above 0"),
        ("factor = 4", "factor = 40", "'factor': found 40, expected a number above 0 and at most"),
        ("hoist rated load", "rated load", "'load': found 'rated load', expected one of: 'hoist"),
        ('"no credit"', '"some"', "'beam_weight': found 'some', expected one of: 'no credit', 'c"),
        ('"read"', '"seen"', "'mark': found 'seen', expected one of: 'read', 'copy', 'memory', 'p"),
        ('clause = "1(a)"', 'clause = ""', "'clause': found '', expected text"),
        (
            'clause = "1(a)"',
            'clause = "1\\n(a)"',
            "'clause': found '1\\n(a)', expected text on one",
        ),
        ('clause = "1(a)"', 'clause = "1(a)"\nclaus = "2"', "unknown key 'claus'; a value of kind"),
        ("factor = 4", 'factor = 4\ntext = "No."', "unknown key 'text'; a value of kind factor on"),
        ("factor = 4", 'factor = 4\ndefault = "a"', "'default': only a value with readings has a"),
        ("factor = 4", "factor = 4\nnote = 5", "'note': found 5, expected text on one line"),
        ("factor = 4", "factor = 4\nreadings = 5", "'readings': expected two readings or more"),
        ('"length"', '"lenght"', "'dimension': found 'lenght', expected one of: length, area, f"),
        ('"15 ft"', '"15"', "'value': found '15'"),
        ('"15 ft"', '"15 lb"', "'value': found '15 lb'"),
        ('"15 ft"', '"0 ft"', "'value': found '0 ft', expected a length above 0"),
        ('"15 ft"', '"-15 ft"', "'value': found '-15 ft', expected a length above 0"),
        ('"15 ft"', "15", "'value': found 15, expected text"),
        ('["bolted", "pinned"]', "[]", "'words': found [], expected a list of different words"),
        ('["bolted", "pinned"]', '["a", "a"]', "'words': found ['a', 'a'], expected a list of d"),
        ('["bolted", "pinned"]', '["a", " b"]', "'words': found ['a', ' b'], expected a list"),
        ('["bolted", "pinned"]', '["a", 1]', "'words': found ['a', 1], expected a list of diff"),
        ('["bolted", "pinned"]', '"bolted"', "'words': found 'bolted', expected a list of diff"),
        ('"Ask the qualified person."', '"Ask  twice."', "'text': found 'Ask  twice.', expected"),
        ('default = "one end"', 'default = "two"', "'default': found 'two', expected one of its r"),
        ('default = "one end"\n', "", "tipping.any-load: 'default' is missing; expected text"),
    ],
)
def test_a_wrong_part_is_told_with_what_was_found_and_expected(
    old: str, new: str, told: str
) -> None:
    assert any(told in line for line in problems_of(replaced(SAMPLE, old, new)))


def test_a_unit_of_another_dimension_is_told_with_the_forms_that_would_do() -> None:
    (told,) = problems_of(plain(replaced(LIMIT, '"15 ft"', '"15 lb"')))
    assert told.startswith("plausible.most-reach: 'value': found '15 lb'")
    assert "length" in told
    assert "m" in told.rsplit("write for example", 1)[1]


@pytest.mark.parametrize(
    ("old", "new", "told"),
    [
        ('mark = "copy"', 'mark = "seen"', "reading 'even': 'mark': found 'seen', expected one of"),
        ('mark = "copy"', 'kind = "limit"', "reading 'even': unknown key 'kind'; a reading of kin"),
        ('mark = "copy"', 'note = "x"', "reading 'even': unknown key 'note'; a reading of kind"),
        (
            'load = "half the dead load and half the live load"',
            "",
            "reading 'even': 'load' is missing; expected one of: 'hoist rated load'",
        ),
    ],
)
def test_a_wrong_reading_is_told_by_its_name(old: str, new: str, told: str) -> None:
    (line,) = problems_of(plain(replaced(READINGS, old, new)))
    assert line.startswith("tipping.any-load, ")
    assert told in line


def test_what_a_value_gives_wrongly_for_all_its_readings_is_told_once_at_the_value() -> None:
    (told,) = problems_of(plain(replaced(READINGS, "factor = 2.5", 'factor = "2.5"')))
    assert told.startswith("tipping.any-load: 'factor': found '2.5'")


def test_readings_must_be_tables_and_more_than_one() -> None:
    without_the_second = READINGS[: READINGS.index('[tipping.any-load.readings."even"]')]
    (told,) = problems_of(plain(without_the_second))
    assert told == "tipping.any-load: 'readings': expected two readings or more, a table for each"
    flat = READINGS[: READINGS.index("[tipping.any-load.readings")]
    (told, *_) = problems_of(plain(flat + 'readings = { "one end" = 1, "even" = 2 }\n'))
    assert told == "tipping.any-load: 'readings': reading 'one end': found 1, expected a table"


def test_all_problems_of_a_file_are_told_at_once() -> None:
    text = SAMPLE
    for old, new in (
        ("format = 1", "format = 3"),
        ('scope = "tests"', 'skope = "tests"'),
        ("factor = 4", "factor = 0"),
        ('clause = "1(a)"\n', ""),
        ('mark = "copy"', 'mark = "heard"'),
        ('"15 ft"', '"15 psi"'),
        ('["bolted", "pinned"]', "[]"),
        ('text = "Ask', 'txet = "Ask'),
    ):
        text = replaced(text, old, new)
    found = problems_of(text)
    assert len(found) == len(set(found)) == 10
    places = [line.split(":")[0] for line in found]
    assert places == [
        "'format'",
        "unknown key 'skope'; a rule file has",
        "'scope' is missing; expected text on one line, with single spaces",
        "tipping.rated-load",
        "tipping.rated-load",
        "tipping.any-load, reading 'even'",
        "plausible.most-reach",
        "counterweight.accepted-fastening",
        "hoist.unknown-stall",
        "hoist.unknown-stall",
    ]


def test_a_file_without_values_is_refused() -> None:
    (told,) = problems_of(HEAD)
    assert told.startswith("no values; expected tables of these topics: tipping, ")


def test_a_topic_or_value_that_is_no_table_is_refused() -> None:
    assert problems_of(HEAD + "tipping = 3\n") == [
        "tipping: found 3, expected a table for each value"
    ]
    assert problems_of(HEAD + "[tipping]\nrated-load = 3\n") == [
        "tipping.rated-load: found 3, expected a table"
    ]


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("format = ", "not readable as TOML: "),
        (HEAD + PLAIN + PLAIN, "not readable as TOML: "),
        (replaced(SAMPLE, "factor = 4", "factor = 4\nfactor = 5"), "not readable as TOML: "),
        ("deep = " + "[" * 100_000, "not readable as TOML: "),
    ],
)
def test_what_is_not_toml_is_refused_with_its_origin(text: str, told: str) -> None:
    with pytest.raises(RuleError, match=re.escape(f"made-up.toml: {told}")):
        load(text, "made-up.toml")


def test_a_rule_error_is_caught_as_an_error_of_this_program() -> None:
    with pytest.raises(BackspanError, match=r"^made-up\.toml: "):
        load("", "made-up.toml")


@given(
    line=st.integers(min_value=0, max_value=SAMPLE.count("\n") - 1),
    literal=st.sampled_from(
        ["1", "-1", "1.5", "inf", "true", '""', '"x"', "[]", "[1]", '["a"]', "{}", "1979-05-27"]
    ),
)
def test_any_field_with_any_literal_loads_or_is_refused(line: int, literal: str) -> None:
    lines = SAMPLE.splitlines()
    lines[line] = f"{lines[line].split('=', 1)[0]}= {literal}"
    try:
        rule_set = load("\n".join(lines), "made-up.toml")
    except RuleError as error:
        assert str(error).startswith("made-up.toml: ")  # noqa: PT017 - either outcome will do
    else:
        assert rule_set.values


@given(st.text())
def test_any_text_loads_or_is_refused(text: str) -> None:
    with pytest.raises(RuleError, match=r"^made-up\.toml: "):
        load(text, "made-up.toml")
