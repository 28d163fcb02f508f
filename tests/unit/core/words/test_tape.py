"""Lengths that were worked out stand in sentences as a tape shows them, on the side of caution."""

from __future__ import annotations

import pytest

from backspan.core.findings import Message
from backspan.core.quantities import LENGTH, Amount, Style
from backspan.core.words import language_of, say

INCH = 0.0254


def clearance(needed: float, there: float, lowest: float, ending: str = "pass") -> Message:
    numbers = (("needed", needed), ("there", there), ("lowest", lowest))
    values = tuple((name, Amount(inches * INCH, LENGTH)) for name, inches in numbers)
    return Message(f"fall-clearance.{ending}", values)


def test_what_a_fall_takes_is_told_in_feet_and_inches_and_no_less() -> None:
    told = say(clearance(191.566, 300.0, 195.01), Style.US)
    assert told == (
        "A fall takes 15'-11 5/8\" below the feet; the deck is 25'-0\" above the level below. A"
        " fall is in time from 16'-3 1/16\" on."
    )
    assert "4.866 m" in say(clearance(191.566, 300.0, 195.01), Style.METRIC)
    assert "15'-11 5/8\"" in say(
        clearance(191.566, 300.0, 195.01), Style.US, language=language_of("es")
    )


@pytest.mark.parametrize(
    ("needed", "there"), [(191.98, 192.0), (191.57, 191.6), (192.01, 192.0), (192.0, 192.0)]
)
def test_a_sentence_never_tells_another_order_than_the_numbers_have(
    needed: float, there: float
) -> None:
    told = say(clearance(needed, there, 300.0), Style.US)
    shown = told.split("takes ")[1].split(" below")[0], told.split("deck is ")[1].split(" above")[0]
    assert (shown[0] == shown[1]) == (needed == there)


def test_numbers_that_would_swap_stay_exact() -> None:
    values = (("taken", Amount(100.02 * INCH, LENGTH)), ("inboard", Amount(100.03 * INCH, LENGTH)))
    told = say(Message("stack-fits.pass", values), Style.US)
    assert told == "The stack takes 100.02 in of 100.03 in inboard."


def test_what_somebody_stated_is_told_as_it_was() -> None:
    values = (("made_for", Amount(0.008, LENGTH)), ("diameter", Amount(0.0079, LENGTH)))
    assert "0.314961 in" in say(Message("end-fits.fail", values), Style.US)
