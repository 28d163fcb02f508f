"""What a cord leaves of the voltage, and what hoists ask of a generator, as asked on the roof."""

from __future__ import annotations

import pytest

from backspan.core.ask.shape import QuestionError
from backspan.core.findings import Verdict
from backspan.core.model.basis import Confirmation
from backspan.core.quantities import Style
from backspan.core.words import say
from tests.unit.core.ask.asking import FOOT, POUND_FORCE, amount, ask, ids, notes, wanted

HOISTS = "volts=220V amps=10A hoists=2 phases=1"
START = "start-amps=40A starting=1"
SET = "volts=230V amps=10A hoists=2 phases=1"
CONFIRMED = Confirmation(
    rule_set="trade-practice",
    edition="2026",
    value="power.resistance-8-awg",
    by="An office",
    at="2026-11-20",
    copy_seen="own copy",
)


def test_two_hoists_lose_what_their_currents_sum_up_to() -> None:
    """By hand: 2 x 300 ft x 0.778 ohm/kft x 20 A = 9.336 V; one starting, 50 A: 23.34 V."""
    found = ask("cord", HOISTS, START, "gage=8AWG length=300ft")
    assert amount(found, "cord-drop") == pytest.approx(9.336)
    assert amount(found, "cord-left") == pytest.approx(210.664)
    assert amount(found, "cord-drop-start") == pytest.approx(23.34)
    assert amount(found, "cord-left-start") == pytest.approx(196.66)


def test_three_phases_lose_less_by_root_three_over_two() -> None:
    three = HOISTS.replace("phases=1", "phases=3")
    found = ask("cord", three, "gage=8AWG length=300ft")
    assert amount(found, "cord-drop") == pytest.approx(9.336 * 3**0.5 / 2)
    assert amount(ask("generator", three, "set=8kVA"), "power-running") == pytest.approx(
        220 * 20 * 3**0.5
    )


def test_a_hundred_feet_more_are_judged_with_what_is_there() -> None:
    found = ask("cord", HOISTS, "gage=8AWG length=200ft more=100ft cord-mass=0.5lb/ft")
    assert amount(found, "cord-drop-before") == pytest.approx(6.224)
    assert amount(found, "cord-drop") == pytest.approx(9.336)
    assert amount(found, "cord-length") == pytest.approx(300 * FOOT)
    assert amount(found, "cord-weight") == pytest.approx(150 * POUND_FORCE)
    assert "note.cord-hangs" in notes(found)


def test_without_the_makers_voltage_or_a_start_nothing_passes() -> None:
    found = ask("cord", HOISTS, "ohms=0.1ohm/kft length=10ft")
    assert found.verdict is Verdict.MISSING
    assert wanted(found) == {"least-volts", "start-amps"}
    found = ask("cord", HOISTS, "ohms=0.1ohm/kft length=10ft least-volts=198V")
    assert found.verdict is Verdict.MISSING
    assert wanted(found) == {"start-amps"}
    found = ask("cord", HOISTS, START, "ohms=0.1ohm/kft length=10ft")
    assert found.verdict is Verdict.MISSING
    assert wanted(found) == {"least-volts"}


def test_stated_ohms_within_all_limits_pass() -> None:
    found = ask("cord", HOISTS, START, "ohms=0.491ohm/kft length=300ft least-volts=198V")
    assert found.verdict is Verdict.PASS
    assert not found.needs


def test_a_remembered_resistance_is_referred_until_confirmed() -> None:
    words = (HOISTS, START, "gage=8AWG length=200ft least-volts=198V")
    found = ask("cord", *words)
    assert found.verdict is Verdict.REFER
    assert [need.what.id for need in found.needs] == ["need.confirmation"]
    assert ask("cord", *words, confirmations=(CONFIRMED,)).verdict is Verdict.PASS


def test_too_little_left_is_refused_lifting_and_starting() -> None:
    found = ask("cord", HOISTS, START, "gage=8AWG length=300ft least-volts=211V")
    assert (found.verdict, found.message.id) == (Verdict.FAIL, "ask.cord-low")
    found = ask("cord", HOISTS, START, "gage=8AWG length=300ft least-volts=197V")
    assert (found.verdict, found.message.id) == (Verdict.FAIL, "ask.cord-low-start")
    found = ask("cord", HOISTS, "gage=14AWG length=1800ft")
    assert (found.verdict, found.message.id) == (Verdict.FAIL, "ask.cord-nothing-left")


def test_all_start_at_once_where_nobody_says_how_many() -> None:
    words = (HOISTS, "start-amps=40A", "ohms=0.778ohm/kft length=300ft")
    found = ask("cord", *words)
    assert amount(found, "cord-drop-start") == pytest.approx(4 * 9.336)
    assert "note.all-start" in notes(found)
    assert "note.all-start" not in notes(ask("cord", *words, "starting=1"))


def test_a_share_that_is_stated_refuses_and_the_trades_refers() -> None:
    words = (HOISTS, START, "ohms=0.778ohm/kft length=300ft least-volts=190V")
    found = ask("cord", *words, "most-drop=4%")
    assert (found.verdict, found.message.id) == (Verdict.FAIL, "ask.cord-over")
    assert ask("cord", *words, "most-drop=5%").verdict is Verdict.PASS
    found = ask("cord", *words)
    assert (found.verdict, found.message.id) == (Verdict.REFER, "ask.cord-over-practice")
    assert "4.2436 % of the voltage" in say(found.message, Style.US)
    assert [need.what.id for need in found.needs] == ["ask.need-of-drop"]


def test_the_longest_cord_is_rounded_down_and_holds() -> None:
    words = (HOISTS, START, "ohms=1.24ohm/kft least-volts=198V")
    found = ask("cord", *words)
    assert found.verdict is None
    longest = amount(found, "cord-longest")
    assert 0.0 <= 6.6 / (40 * 1.24e-3) * FOOT - longest < 0.0127 + 1e-9
    assert ask("cord", *words, f"length={longest}m").verdict is Verdict.PASS
    beyond = ask("cord", *words, f"length={longest + 0.0127}m")
    assert beyond.verdict is Verdict.REFER
    assert ask("cord", HOISTS, "gage=10AWG").verdict is Verdict.MISSING
    assert ask("cord", HOISTS, START, "gage=10AWG least-volts=198V").verdict is Verdict.REFER


def test_a_start_bounds_the_longest_cord_too() -> None:
    found = ask("cord", HOISTS, "start-amps=60A ohms=1.24ohm/kft least-volts=214V")
    assert amount(found, "cord-longest") == pytest.approx(
        6.0 / (2 * 120 * 1.24e-3) * FOOT, abs=0.0127
    )


def test_no_cord_makes_up_for_a_supply_that_is_too_low() -> None:
    found = ask("cord", HOISTS, "gage=10AWG least-volts=220V")
    assert (found.verdict, found.message.id) == (Verdict.FAIL, "ask.cord-no-length")
    assert "cord-longest" not in ids(found)


@pytest.mark.parametrize(
    ("words", "told"),
    [
        ("gage=7AWG length=1ft", "gage: the table has no 7 AWG"),
        ("gage=4mm2 length=1ft", "ohms=... from its maker"),
        ("length=1ft", "neither of gage and ohms"),
        ("gage=8AWG ohms=1ohm/kft", "both of gage and ohms"),
        ("gage=8AWG more=10ft", "more: "),
        ("gage=8AWG starting=1", "starting: nothing follows"),
        ("gage=8AWG start-amps=40A starting=3", "no more than the 2 hoists"),
        ("gage=8AWG start-amps=9A", "start-amps: "),
        ("gage=8AWG length=300ft most-drop=5", "most-drop: a share"),
    ],
)
def test_what_makes_no_question_is_told_by_its_name(words: str, told: str) -> None:
    with pytest.raises(QuestionError, match=told.replace(".", r"\.")):
        ask("cord", HOISTS, words)


def test_numbers_that_cannot_be_read_are_told_by_their_name() -> None:
    with pytest.raises(QuestionError, match="bare number") as caught:
        ask("cord", "volts=220 amps=10V hoists=0 phases=1 gage=8AWG")
    assert [one.partition(":")[0] for one in caught.value.problems] == ["volts", "amps", "hoists"]
    with pytest.raises(QuestionError, match="phases: found 2, expected 1 or 3"):
        ask("cord", HOISTS.replace("phases=1", "phases=2"), "gage=8AWG")
    with pytest.raises(QuestionError, match="phases is not given"):
        ask("generator", "volts=220V amps=10A hoists=2 set=5kVA")


def test_a_generator_gives_enough_to_lift_and_to_start() -> None:
    """By hand: 230 x 20 = 4,600 VA; one starting beside one that lifts, 230 x 50 = 11,500 VA."""
    found = ask("generator", SET, START, "set=5kVA set-start=12kVA")
    assert found.verdict is Verdict.PASS
    assert amount(found, "power-running") == pytest.approx(4600)
    assert amount(found, "power-starting") == pytest.approx(11_500)
    assert ask("generator", SET, START, "set=4.6kVA set-start=11.5kVA").verdict is Verdict.PASS
    assert ask("generator", SET, START, "set=5kVA set-start=11kVA").verdict is Verdict.FAIL
    assert ask("generator", SET, START, "set=4.5kVA set-start=12kVA").verdict is Verdict.FAIL


def test_a_generator_without_a_rating_for_starts_is_held_to_the_one_it_has() -> None:
    found = ask("generator", SET, START, "set=5kW")
    assert (found.verdict, found.message.id) == (Verdict.FAIL, "ask.generator-low-start")
    assert "note.start-by-rating" in notes(found)
    assert ask("generator", SET, START, "set=12kVA").verdict is Verdict.PASS


def test_a_generator_is_not_known_to_start_what_nobody_states() -> None:
    found = ask("generator", SET, "set=50kVA")
    assert found.verdict is Verdict.MISSING
    assert wanted(found) == {"start-amps"}
    assert ask("generator", SET, "set=4kVA").verdict is Verdict.FAIL
