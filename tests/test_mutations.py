"""A few hundred damaged documents: an answer or a documented error. Deep: make soak PART=fuzz."""

from __future__ import annotations

import random

import pytest

from tests.mutations import NUMBERS, PLACES, changed, damaged, mutated, number_places, outcome
from tests.soak import fuzz


@pytest.mark.parametrize("value", NUMBERS)
def test_any_number_anywhere_is_answered_or_refused(value: float) -> None:
    for place in number_places()[::3]:
        assert outcome(changed(place, value))


def test_a_document_with_anything_anywhere_is_answered_or_refused() -> None:
    draw = random.Random("wire")  # noqa: S311 - examples, not secrets
    told = {outcome(mutated(draw)) for _ in range(150)}
    assert "WireError" in told
    assert len(PLACES) > 500


def test_a_damaged_file_is_answered_or_refused() -> None:
    draw = random.Random("file")  # noqa: S311 - as above
    for at in range(60):
        assert fuzz.tried(lambda: fuzz.of_file(damaged(draw, fuzz.TEXT)), at)


def test_an_error_that_is_not_documented_is_a_counterexample() -> None:
    with pytest.raises(AssertionError, match="here: ZeroDivisionError"):
        fuzz.tried(lambda: 1 / 0, "here")
