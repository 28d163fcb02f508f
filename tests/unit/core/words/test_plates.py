"""A plate's own unit stands first; a most is never rounded up on the way to another unit."""

from __future__ import annotations

import pytest

from backspan.core.findings import Margin, Message
from backspan.core.quantities import FORCE, MASS, Amount, Dimension, Style, parse
from backspan.core.words import say, say_margin
from backspan.core.words.plates import as_written


@pytest.mark.parametrize(
    ("written", "dimension", "style", "told"),
    [
        ("500 kg", FORCE, Style.METRIC, "500 kg (4.9033 kN)"),
        ("500 kg", FORCE, Style.US, "500 kg (1,102.3 lb)"),
        ("1000 lb", FORCE, Style.US, "1,000 lb"),
        ("1000lb", FORCE, Style.METRIC, "1,000 lb (4.4482 kN)"),
        ("4.9 kN", FORCE, Style.METRIC, "4.9 kN"),
        ("55 lbs", MASS, Style.METRIC, "55 lb (24.948 kg)"),
        ("25 kg", MASS, Style.METRIC, "25 kg"),
        ("0.5 t", FORCE, Style.METRIC, "0.5 t (4.9033 kN)"),
    ],
)
def test_a_rated_value_is_told_as_it_was_written(
    written: str, dimension: Dimension, style: Style, told: str
) -> None:
    amount = Amount(parse(written, dimension), dimension)
    assert as_written(written, amount, style) == told


def test_a_value_without_its_text_is_told_in_the_own_unit() -> None:
    amount = Amount(parse("500 kg", FORCE), FORCE)
    assert as_written("", amount, Style.METRIC) == "4.9033 kN"
    assert as_written("five hundred", amount, Style.METRIC) == "4.9033 kN"


def test_a_load_in_a_metric_sentence_is_told_in_kilograms_first() -> None:
    amount = Amount(parse("500 kg", FORCE), FORCE)
    cap = Amount(parse("1500 kg", FORCE), FORCE)
    message = Message("stall-cap.pass", (("hoist", "H"), ("stall", amount), ("cap", cap)))
    assert say(message, Style.METRIC) == (
        "Hoist H stalls at 500 kg (4.9033 kN); the most allowed is 1,500 kg (14.71 kN)."
    )
    assert "kg" not in say(message, Style.US)


def test_a_most_in_kilograms_is_rounded_down() -> None:
    most = Margin("most-rated-load", Amount(5430.0, FORCE))  # 553.7 kg
    assert say_margin(most, Style.METRIC) == "holds a rated load of up to 553 kg (5.43 kN)"
