"""The numbers of the first test are WE-01: 1,391 lb and 26 pieces of 55 lb (a rigging manual)."""

from __future__ import annotations

import pytest

from backspan.core.findings import Verdict
from backspan.core.model.basis import Confirmation
from tests.unit.core.ask.asking import POUND, amount, ask, count, ids, notes, wanted

RIG = "rated=1000lb reach=4ft backspan=11ft6in piece=55lb"
SHORT = "rated=1000lb reach=2ft backspan=12ft piece=55lb"


def test_the_pieces_of_a_manual() -> None:
    found = ask("counterweight", RIG, "stall=1250lb")
    assert found.verdict is None
    assert found.message.id == "ask.least"
    assert amount(found, "required") / POUND == pytest.approx(16_000 / 11.5, rel=1e-12)
    assert count(found, "pieces-needed") == 26
    assert amount(found, "factor-reached") == pytest.approx(26 * 55 * 11.5 / 4000, rel=1e-12)
    assert {rule.key for rule in found.rules} >= {"tipping.rated-load", "tipping.stall-load"}


@pytest.mark.parametrize(("pieces", "verdict"), [(25, Verdict.FAIL), (26, Verdict.PASS)])
def test_given_pieces_are_judged(pieces: int, verdict: Verdict) -> None:
    found = ask("counterweight", RIG, f"stall=1250lb pieces={pieces}")
    assert found.verdict is verdict
    assert count(found, "pieces") == pieces
    assert found.margins[0].id == "pieces-spare"
    assert found.margins[0].beyond is (verdict is Verdict.FAIL)


def test_no_pieces_at_all_fail() -> None:
    assert ask("counterweight", RIG, "stall=1250lb pieces=0").verdict is Verdict.FAIL


@pytest.mark.parametrize(
    ("stall", "needed", "branch"),
    [
        (1250, 13, "4 x hoist rated load"),
        (2666, 13, "4 x hoist rated load"),
        (2667, 13, "1.5 x hoist stall load"),
        (3000, 14, "1.5 x hoist stall load"),
    ],
)
def test_stall_governs_above_eight_thirds(stall: int, needed: int, branch: str) -> None:
    found = ask("counterweight", SHORT, f"stall={stall}lb")
    assert count(found, "pieces-needed") == needed
    assert {line.id: line.value for line in found.lines}["governing"] == branch
    assert found.verdict is None


def test_a_stall_load_above_the_cap_fails_whatever_the_pieces() -> None:
    found = ask("counterweight", SHORT, "stall=3001lb")
    assert found.verdict is Verdict.FAIL
    assert found.message.id == "stall-cap.fail"


def test_an_unknown_stall_load_is_told_at_both_ends() -> None:
    found = ask("counterweight", RIG)
    assert found.verdict is Verdict.MISSING
    assert found.message.id == "ask.open"
    assert count(found, "pieces-needed") == 26
    assert count(found, "pieces-needed-at-most-stall") == 29
    assert amount(found, "required-at-most-stall") / POUND == pytest.approx(18_000 / 11.5)
    assert wanted(found) == {"stall"}
    assert "note.by-what-is-known" in notes(found)


def test_pieces_given_with_an_unknown_stall_load_are_never_passed() -> None:
    assert ask("counterweight", RIG, "pieces=40").verdict is Verdict.MISSING
    assert ask("counterweight", RIG, "pieces=25").verdict is Verdict.FAIL


def test_a_rule_without_a_stall_branch_does_not_ask_for_it() -> None:
    found = ask("counterweight", RIG, "rules=us-wa-wac-296-874")
    assert found.verdict is None
    assert count(found, "pieces-needed") == 26
    assert "most-stall" not in ids(found)


def test_a_remembered_value_is_answered_and_referred() -> None:
    found = ask("counterweight", SHORT, "rules=uk-bs-5974")
    assert found.verdict is Verdict.REFER
    assert count(found, "pieces-needed") == 10
    assert str(found.rules[0].provenance.mark) == "memory"
    assert found.needs[0].what.id == "need.confirmation"


def test_a_confirmed_value_is_no_longer_referred() -> None:
    seen = Confirmation(
        "uk-bs-5974", "undated", "tipping.rated-load", "A. Sample", "2026-11-02", "office copy"
    )
    found = ask("counterweight", SHORT, "rules=uk-bs-5974 pieces=10", confirmations=[seen])
    assert found.verdict is Verdict.PASS
    assert found.rules[0].confirmed is not None
    assert found.rules[0].confirmed.by == "A. Sample"


def test_a_rule_on_the_stage_asks_for_its_loads() -> None:
    rules = "rules=nz-acop-scaffolding"
    found = ask("counterweight", SHORT, rules)
    assert found.verdict is Verdict.MISSING
    assert found.message.id == "ask.not-known"
    assert wanted(found) == {"dead", "live"}
    loaded = ask("counterweight", SHORT, rules, "dead=300kg live=240kg")
    # Half of 300 kg and all of 240 kg, three times, at 2 ft over 12 ft: 195 kg.
    assert amount(loaded, "required") == pytest.approx(195.0, rel=1e-12)


def test_a_text_without_a_number_is_referred() -> None:
    found = ask("counterweight", SHORT, "rules=ca-on-oreg-213-91")
    assert (found.verdict, found.message.id) == (Verdict.REFER, "ask.no-number")


def test_a_beam_that_pulls_outboard_is_asked_for_its_weight() -> None:
    found = ask("counterweight", "rated=1000lb stall=1kip reach=9ft backspan=8ft piece=55lb")
    assert (found.verdict, found.message.id) == (Verdict.MISSING, "ask.by-what-is-known")
    assert wanted(found) == {"beam", "beam-mass", "tip"}
    assert "note.beam-weight-left-out" not in notes(found)


def test_an_unlikely_value_is_questioned() -> None:
    found = ask("counterweight", "rated=1000lb stall=1kip reach=4ft backspan=31ft piece=55lb")
    assert "unlikely.large" in notes(found)


def test_every_answer_says_who_vouches_and_what_the_label_may_limit() -> None:
    assert {"note.asker-vouches", "note.label"} <= notes(ask("counterweight", RIG))
