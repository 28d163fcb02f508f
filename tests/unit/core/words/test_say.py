"""From messages with typed values to sentences, in either style of units."""

from __future__ import annotations

import re

import pytest

from backspan.core.findings import Margin, Message, Verdict
from backspan.core.quantities import FORCE, LENGTH, PRESSURE, RATIO, Amount, Style, parse
from backspan.core.words import (
    SIGNS,
    WordsError,
    english,
    say,
    say_check,
    say_input,
    say_margin,
    say_margins,
    say_verdict,
    shown,
)

STALL = Message(
    "stall-cap.fail",
    (
        ("hoist", "H1"),
        ("stall", Amount(parse("3001 lb", FORCE), FORCE)),
        ("cap", Amount(parse("3000 lb", FORCE), FORCE)),
    ),
)


def test_a_sentence_shows_its_values_in_the_style_asked_for() -> None:
    assert say(STALL, Style.US) == "Hoist H1 stalls at 3,001 lb; the most allowed is 3,000 lb."
    assert say(STALL, Style.METRIC) == (
        "Hoist H1 stalls at 1,361.2 kg (13.349 kN); the most allowed is 1,360.8 kg (13.345 kN)."
    )


def test_inputs_are_told_in_the_words_of_the_trade() -> None:
    need = Message("need.input", (("input", "reach"), ("place", "drops/D")))
    assert say(need, Style.US) == "State reach, fulcrum to suspension line (drops/D)."
    several = Message("compare.not-known", (("inputs", ("rope_mass", "bottom_weight")),))
    assert say(several, Style.US) == (
        "not stated: mass of the suspension line; weight hung on the line to steady it"
    )


def test_a_message_without_a_sentence_or_without_a_value_is_an_error() -> None:
    with pytest.raises(WordsError, match=r"message 'no\.such' has no sentence"):
        say(Message("no.such"), Style.US)
    with pytest.raises(WordsError, match="lacks the value 'hoist'"):
        say(Message("stall-cap.missing"), Style.US)


def test_names_without_words_are_errors() -> None:
    with pytest.raises(WordsError, match="input 'colour' has no words"):
        say_input("colour")
    with pytest.raises(WordsError, match="check 'colour' has no title"):
        say_check("colour")
    with pytest.raises(WordsError, match="margin 'colour' has no words"):
        say_margin(Margin("colour", 1), Style.US)


@pytest.mark.parametrize(
    ("margin", "text"),
    [
        (Margin("pieces-spare", 3), "3 pieces spare"),
        (Margin("pieces-spare", 1), "1 piece spare"),
        (Margin("pieces-spare", 0), "0 pieces spare"),
        (Margin("pieces-spare", 2, beyond=True), "2 pieces short"),
        (Margin("pieces-spare", 1, beyond=True), "1 piece short"),
        (Margin("more-reach", Amount(0.0254, LENGTH)), '1" more reach'),
        (Margin("more-reach", Amount(0.0254, LENGTH), beyond=True), '1" too much reach'),
        (
            Margin("pieces-per-step-us", Amount(0.7, RATIO)),
            "one more inch of reach costs 0.7 pieces",
        ),
    ],
)
def test_margins_say_what_is_left_and_what_is_short(margin: Margin, text: str) -> None:
    assert say_margin(margin, Style.US) == text


def test_an_answer_is_a_word_and_a_sign_of_its_own() -> None:
    assert say_verdict(Verdict.PASS) == "✓ pass"
    assert len(set(SIGNS.values())) == len(Verdict) == len(SIGNS)


def test_values_of_every_type_are_shown() -> None:
    assert shown(("a", "b"), Style.US) == "a, b"
    assert shown(12, Style.US) == "12"
    assert shown("x", Style.US) == "x"
    assert shown(Amount(1.5, RATIO), Style.US) == "1.5"


def test_nothing_said_calls_anything_safe() -> None:
    said = [
        *english.SENTENCES.values(),
        *(text for pair in english.MARGINS.values() for text in pair),
        *english.INPUTS.values(),
        *english.CHECKS.values(),
        *english.CAUTIONS,
        *english.VERDICTS.values(),
        *english.MARKS.values(),
        english.ONE_LINE_CAUTION,
    ]
    assert not [text for text in said if re.search(r"\bsafe", text, re.IGNORECASE)]


def test_what_is_left_is_told_as_one_change_and_pieces_stay_on() -> None:
    reach, spare = Margin("more-reach", Amount(0.0254, LENGTH)), Margin("pieces-spare", 2)
    short = Margin("pieces-spare", 2, beyond=True)
    assert say_margins((), Style.US) == ""
    assert say_margins((reach,), Style.US) == 'One change only: 1" more reach.'
    assert say_margins((spare, reach), Style.US) == (
        'One change only: 2 pieces spare; 1" more reach.'
        " As built; pieces stay on until the stage is dismantled."
    )
    assert say_margins((short,), Style.US) == "One change only: 2 pieces short."


def test_what_is_compared_is_told_in_one_unit() -> None:
    psi = 6894.757293168361
    words = (("pressure", Amount(9.6 * psi, PRESSURE)), ("strength", Amount(40 * psi, PRESSURE)))
    assert say(Message("bearing.pass", words), Style.US) == (
        "The fulcrum asks 9.6 psi of its surface, which carries 40 psi."
    )
    low = (words[0], ("strength", Amount(9.7 * psi, PRESSURE)))
    assert "1,382.4 psf of its surface, which carries 1,396.8 psf" in say(
        Message("bearing.pass", low), Style.US
    )
