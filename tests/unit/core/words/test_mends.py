"""What is refused is always told with what mends it."""

from __future__ import annotations

from dataclasses import replace

import pytest

from backspan.core.findings import Finding, Margin, Message, Verdict
from backspan.core.quantities import LENGTH, Amount, Style
from backspan.core.words import english, mends, say_mend

FOUND = Finding("tipping", "D/L", (), Verdict.FAIL, Message("tipping.does-not-hold"))


def test_every_sentence_of_a_refusal_has_what_mends_it() -> None:
    refusals = {name for name in english.SENTENCES if name.endswith(".fail")}
    assert refusals <= set(mends.BY_MESSAGE)
    assert set(mends.BY_MESSAGE) <= set(english.SENTENCES)


def test_every_margin_that_can_be_used_up_has_a_change() -> None:
    told = {name for name, (left, short) in english.MARGINS.items() if left != short}
    assert told <= set(mends.BY_MARGIN)
    assert set(mends.BY_MARGIN) <= set(english.MARGINS)


@pytest.mark.parametrize(
    ("margins", "told"),
    [
        ((), "Change the beam, its counterweight or the hoist; have it reviewed."),
        ((Margin("pieces-spare", 1, beyond=True),), "One change: add 1 piece."),
        (
            (
                Margin("pieces-spare", 7, beyond=True),
                Margin("more-reach", Amount(0.1016, LENGTH), beyond=True),
            ),
            'One change: add 7 pieces; or take 4" off the reach.',
        ),
        (
            (Margin("pieces-spare", 2),),
            "Change the beam, its counterweight or the hoist; have it reviewed.",
        ),
    ],
)
def test_one_change_is_told_by_what_is_short(margins: tuple[Margin, ...], told: str) -> None:
    assert say_mend(replace(FOUND, margins=margins), Style.US) == told
