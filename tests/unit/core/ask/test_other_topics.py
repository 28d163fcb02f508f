from __future__ import annotations

import pytest

from backspan.core.ask import TOPICS
from backspan.core.findings import Verdict
from backspan.core.quantities import PRESSURE, Amount, Style, parse
from backspan.core.rules.shape import FactorOnLoad
from backspan.core.words import say, say_label
from backspan.core.words.roof_questions import CAUTIONS, LABELS, SENTENCES
from tests.unit.core.ask.asking import LIBRARY, POUND_FORCE, amount, ask, ids, wanted

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
                said = [say(found.message, style)]
                said += [say(note, style) for note in found.notes]
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


STANDING = (
    "rated=1000lb stall=2500lb reach=2ft backspan=10ft piece=55lb pieces=16 beam=18ft tip=6in"
    " beam-mass=200lb rear-stand=10ft plate-length=2ft plate-width=2ft"
)


def test_what_a_surface_has_to_carry_is_the_most_any_branch_asks() -> None:
    found = ask("bearing", STANDING)
    assert (found.verdict, found.message.id) == (None, "ask.least")
    told = dict(found.message.values)["value"]
    assert isinstance(told, Amount)
    assert told.value == pytest.approx(parse("1270 psf", PRESSURE), rel=1e-9)


@pytest.mark.parametrize(("surface", "verdict"), [("1270psf", "pass"), ("1269psf", "fail")])
def test_a_surface_that_is_given_is_judged(surface: str, verdict: str) -> None:
    assert ask("bearing", STANDING, f"surface={surface}").verdict == verdict


def test_a_stall_load_that_is_not_known_leaves_the_surface_open() -> None:
    found = ask("bearing", STANDING.replace("stall=2500lb ", ""))
    assert found.verdict is Verdict.MISSING
    assert wanted(found) == {"stall"}


def test_a_text_that_says_nothing_of_surfaces_is_for_an_engineer() -> None:
    found = ask("bearing", STANDING, "rules=eu-en-1808")
    assert (found.verdict, found.message.id) == (Verdict.REFER, "ask.no-number")
