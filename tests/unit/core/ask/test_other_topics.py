from __future__ import annotations

import pytest

from backspan.core.ask import TOPICS, say_answer, say_label
from backspan.core.ask.wording import CAUTIONS, LABELS, SENTENCES
from backspan.core.findings import Verdict
from backspan.core.quantities import Style
from backspan.core.rules.shape import FactorOnLoad
from tests.unit.core.ask.asking import LIBRARY, POUND_FORCE, amount, ask, ids

FULL = (
    "rated=1000lb stall=1250lb reach=4ft backspan=11ft6in piece=55lb dead=900lb live=700lb"
    " rope=60lb bottom=50lb limiter=1200lb beam=18ft beam-mass=150lb tip=6in"
)


@pytest.mark.parametrize(("stall", "verdict"), [(3000, Verdict.PASS), (3001, Verdict.FAIL)])
def test_a_hoist_may_stall_at_three_times_its_rating(stall: int, verdict: Verdict) -> None:
    found = ask("stall", f"rated=1000lb stall={stall}lb")
    assert found.verdict is verdict
    assert amount(found, "most-stall") == pytest.approx(3000 * POUND_FORCE)
    assert amount(found, "stall-governs-above") == pytest.approx(8000 / 3 * POUND_FORCE)


def test_the_cap_alone_is_a_number_not_a_verdict() -> None:
    found = ask("stall", "rated=1000lb")
    assert (found.verdict, found.message.id) == (None, "stall.cap")
    assert found.rules[0].key == "hoist.stall-cap"


def test_a_rule_set_without_a_cap_says_so() -> None:
    found = ask("stall", "rated=1000lb rules=us-wa-wac-296-874")
    assert (found.verdict, found.message.id) == (None, "stall.no-cap")


def test_every_rule_answers_the_comparison_largest_first() -> None:
    found = ask("compare", FULL)
    sizes = [row.required.value for row in found.comparison if row.required is not None]
    assert sizes == sorted(sizes, reverse=True)
    readings = sum(
        isinstance(reading.content, FactorOnLoad)
        for rules in LIBRARY.rule_sets
        for value in rules.topic("tipping")
        for reading in value.readings
    )
    assert len(sizes) == readings
    assert all(row.enough is None for row in found.comparison)
    assert {row.rule.provenance.mark for row in found.comparison} >= {"read", "memory"}


def test_given_pieces_are_held_against_every_rule() -> None:
    found = ask("compare", FULL, "pieces=20")
    told = {row.pieces <= 20: row.enough for row in found.comparison if row.pieces is not None}
    assert told == {True: True, False: False}


def test_a_comparison_of_almost_nothing_says_what_is_not_stated() -> None:
    found = ask("compare", "rated=1000lb reach=4ft backspan=11ft6in piece=55lb")
    reasons = {row.reason.id for row in found.comparison if row.reason is not None}
    assert reasons == {"compare.no-number", "compare.not-known"}


@pytest.mark.parametrize("topic", TOPICS, ids=lambda topic: topic.id)
def test_every_example_answers_in_words(topic: object) -> None:
    for one in TOPICS:
        if one is topic:
            for style in Style:
                found = ask(one.id, one.example, style=style)
                said = [say_answer(found.message, style)]
                said += [say_answer(note, style) for note in found.notes]
                said += [say_label(line) for line in ids(found)]
                assert all(said)
                assert "safe" not in " ".join(said).lower()


def test_no_sentence_says_safe() -> None:
    said = [*SENTENCES.values(), *LABELS.values(), *CAUTIONS]
    assert not [text for text in said if "safe" in text.lower()]


def test_parameters_are_named_once_a_topic() -> None:
    for topic in TOPICS:
        names = [one.name for one in topic.parameters]
        assert len(names) == len(set(names)), topic.id
