"""A plain beam as it lies: what holds it, what is under it, and which shape of a table it is."""

from __future__ import annotations

import itertools
from dataclasses import replace
from typing import Any

import pytest

from backspan.core.findings import Finding, Verdict
from backspan.core.model.beams import BeamSection
from backspan.core.model.evidence import StatedValue
from backspan.core.rules.shape import SIZES_OF, Section
from tests.unit.core.checks.test_beam_strength import (
    FIFTY,
    SOUND,
    W6X12,
    answers,
    by,
    lb_ft,
    on_label,
    strength,
)
from tests.unit.core.rigs import ARM, LIBRARY, length, put

SHAPES = tuple(
    value.readings[0].content
    for rule_set in LIBRARY.rule_sets
    for value in rule_set.values
    if isinstance(value.readings[0].content, Section)
)


@pytest.mark.parametrize("check", ["beam-strength", "beam-sideways"])
@pytest.mark.parametrize("far", ["1 in", "12 in", "1 ft 11 in"])
def test_a_tip_is_free_so_that_no_less_than_the_reach_is_unbraced(check: str, far: str) -> None:
    """At 2 ft of reach; AISC 360 F1: a free end of a cantilever is not braced."""
    short = put(SOUND, (*ARM, "unbraced_length"), length(far))
    found = next(one for one in answers(short, check) if one.subject.endswith("/L"))
    assert isinstance(found, Finding)
    assert (found.verdict, found.message.id) == (Verdict.FAIL, "outside.unbraced")
    at_least = put(SOUND, (*ARM, "unbraced_length"), length("2 ft"))
    assert strength(at_least).verdict is Verdict.PASS


def test_an_unbraced_length_is_taped_and_doubtful_by_as_much() -> None:
    """A tape's half inch counts although nobody states it."""
    unsaid = replace(length("10 ft"), tolerance=None)
    taped = strength(put(SOUND, (*ARM, "unbraced_length"), unsaid))
    exact = strength(put(SOUND, (*ARM, "unbraced_length"), length("10 ft", tolerance="0 in")))
    more = strength(put(SOUND, (*ARM, "unbraced_length"), length("10 ft 1/2 in", tolerance="0 in")))
    assert lb_ft(taped.capacity) == lb_ft(more.capacity) < lb_ft(exact.capacity)


@pytest.mark.parametrize("far", ["15 ft 6 in", "16 ft", "20 ft", "30 ft"])
@pytest.mark.parametrize(
    "check", ["beam-strength", "beam-sideways", "beam-web", "bearing", "rear-bearing"]
)
def test_no_stand_stands_under_air(check: str, far: str) -> None:
    """Of 18 ft the tip takes 6 in and the reach 2 ft: 15 ft 6 in are inboard."""
    found = next(
        one
        for one in answers(put(SOUND, (*ARM, "rear_stand"), length(far)), check)
        if one.subject.endswith("/L")
    )
    assert isinstance(found, Finding)
    assert (found.verdict, found.message.id) == (Verdict.FAIL, "outside.beyond_tail")


def sizes_of(shape: str) -> dict[str, Any]:
    """The sizes that a table has of a shape, as if each had been measured."""
    (content,) = (one for one in SHAPES if one.shape == shape)
    return {
        name: on_label(StatedValue(content.numbers[name], tolerance=0.0, by="MT", at="2026-11-20"))
        for name in SIZES_OF[content.form]
    }


@pytest.mark.parametrize(
    ("named", "measured"),
    [("W6x15", "W6x12"), ("S6x17.25", "S6x12.5"), ("W8x18", "W8x15"), ("HSS4x4x1/4", "HSS4x2x1/4")],
)
def test_a_neighbour_of_the_table_is_not_taken_for_the_shape(named: str, measured: str) -> None:
    """Of the same depth and thickness, and narrower or of a thinner web."""
    section = BeamSection(shape=named, yield_strength=FIFTY, **sizes_of(measured))
    assert strength(by(section, SOUND)).message.id == "outside.other_shape"
    itself = BeamSection(shape=named, yield_strength=FIFTY, **sizes_of(named))
    assert strength(by(itself, SOUND)).verdict in {Verdict.PASS, Verdict.REFER}


def test_what_is_taken_for_a_shape_is_no_weaker() -> None:
    """Each shape of the table under the name of each other one of its form."""
    taken = set()
    for named, true in itertools.permutations(SHAPES, 2):
        if named.form is not true.form:
            continue
        section = BeamSection(shape=named.shape, yield_strength=FIFTY, **sizes_of(true.shape))
        if strength(by(section, SOUND)).message.id != "outside.other_shape":
            taken.add((named.shape, true.shape))
            assert true.numbers["plastic_modulus"] > named.numbers["plastic_modulus"]
    assert ("W6x9", "W6x12") in taken
    assert len(taken) < 20


@pytest.mark.parametrize("far", ["6.6 in", "12 in"])
def test_a_beam_much_deeper_than_the_shape_is_another(far: str) -> None:
    deep = replace(W6X12, section_depth=on_label(length(far)))
    assert strength(by(deep, SOUND)).message.id == "outside.other_shape"
