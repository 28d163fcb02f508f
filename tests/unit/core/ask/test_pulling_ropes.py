"""Tiebacks at an angle, slings and stretch, as asked on the roof."""

from __future__ import annotations

import math

import pytest

from backspan.core.ask.shape import QuestionError
from backspan.core.findings import Verdict
from backspan.core.quantities import Amount
from tests.unit.core.ask.asking import FOOT, INCH, POUND_FORCE, amount, ask, ids, notes


@pytest.mark.parametrize(
    ("angles", "verdict", "message"),
    [
        ("angle=0deg", Verdict.PASS, "tieback-angle.pass"),
        ("angle=15deg", Verdict.PASS, "tieback-angle.pass"),
        ("angle=15.1deg", Verdict.FAIL, "tieback-angle.fail"),
        ("angle=40deg other-angle=20deg", Verdict.PASS, "tieback-pair.pass"),
        ("angle=40deg other-angle=0deg", Verdict.FAIL, "tieback-pair.one-side"),
        ("angle=10deg other-angle=5deg", Verdict.PASS, "tieback-angle.pass"),
    ],
)
def test_a_tieback_is_judged_by_its_check(angles: str, verdict: Verdict, message: str) -> None:
    found = ask("tieback", angles)
    assert found.verdict is verdict
    if message.endswith("one-side"):
        assert found.message.id not in {"tieback-pair.pass", "tieback-angle.pass"}
    else:
        assert found.message.id == message
    assert not found.needs
    assert found.rules


def test_one_tieback_holds_all_of_it() -> None:
    found = ask("tieback", "angle=30deg held=1000lb")
    assert amount(found, "pull") == pytest.approx(1000 / math.cos(math.radians(30)) * POUND_FORCE)
    assert amount(found, "pull-aside") == pytest.approx(
        1000 * math.tan(math.radians(30)) * POUND_FORCE
    )


def test_two_within_the_angle_hold_all_of_it_each() -> None:
    """One of them may be slack: each is asked for the whole, as its strength is."""
    found = ask("tieback", "angle=10deg other-angle=5deg held=1000lb")
    for line, angle in (("pull", 10), ("pull-other", 5)):
        expected = 1000 / math.cos(math.radians(angle)) * POUND_FORCE
        assert amount(found, line) == pytest.approx(expected)


@pytest.mark.parametrize(("own", "other"), [(20, 35), (45, 45), (60, 10), (16, 0.5)])
def test_a_pair_balances_across_and_along(own: float, other: float) -> None:
    found = ask("tieback", f"angle={own}deg other-angle={other}deg held=1000lb")
    pulls = [amount(found, name) / POUND_FORCE for name in ("pull", "pull-other")]
    turns = [math.radians(own), math.radians(other)]
    along = [pull * math.cos(turn) for pull, turn in zip(pulls, turns, strict=True)]
    across = [pull * math.sin(turn) for pull, turn in zip(pulls, turns, strict=True)]
    assert sum(along) == pytest.approx(1000)
    assert across[0] == pytest.approx(across[1])
    assert amount(found, "pull-aside") == pytest.approx(across[0] * POUND_FORCE)
    assert amount(found, "pull-aside-other") == pytest.approx(across[1] * POUND_FORCE)
    assert "note.pair-opposite" in notes(found)


def test_a_fall_makes_the_pull_greater_and_presses_the_beam_down() -> None:
    found = ask("tieback", "angle=0deg held=1000lb down=45deg")
    assert amount(found, "pull") == pytest.approx(math.sqrt(2) * 1000 * POUND_FORCE)
    assert amount(found, "pull-down") == pytest.approx(1000 * POUND_FORCE)
    assert amount(found, "pull-aside") == 0.0


def test_without_a_force_only_the_angle_is_judged() -> None:
    assert not ids(ask("tieback", "angle=5deg"))


@pytest.mark.parametrize(
    ("words", "said"),
    [
        ("angle=90deg", "angle: such a rope holds nothing; expected an angle below 90 deg"),
        ("angle=5deg other-angle=91deg", "other-angle: such a rope holds nothing"),
        ("angle=5deg down=90deg held=1lb", "down: such a rope holds nothing"),
        ("angle=5deg down=9deg", "down: nothing follows from it without held="),
        ("angle=-5deg", "angle: found"),
    ],
)
def test_a_tieback_that_makes_no_question(words: str, said: str) -> None:
    with pytest.raises(QuestionError, match=said):
        ask("tieback", words)


@pytest.mark.parametrize(
    ("angle", "verdict"),
    [
        ("from-horizontal=30deg", None),
        ("from-vertical=60deg", None),
        ("from-horizontal=29.9deg", Verdict.REFER),
        ("from-vertical=61deg", Verdict.REFER),
    ],
)
def test_a_sling_is_not_used_flatter_than_its_tables_go(
    angle: str, verdict: Verdict | None
) -> None:
    assert ask("sling", "load=2000lb", angle).verdict is verdict


def test_a_sling_says_both_of_its_angles() -> None:
    found = ask("sling", "load=2000lb from-vertical=25deg")
    given = {one.id: one.value for one in found.lines}
    for line, degrees in (("leg-from-horizontal", 65), ("leg-from-vertical", 25)):
        value = given[line]
        assert isinstance(value, Amount)
        assert math.degrees(value.value) == pytest.approx(degrees)


@pytest.mark.parametrize(
    "words", ["", "from-horizontal=60deg from-vertical=30deg", "from-vertical=90deg"]
)
def test_a_sling_needs_the_one_angle_that_was_measured(words: str) -> None:
    with pytest.raises(QuestionError, match=r"give the one that was measured|holds nothing"):
        ask("sling", "load=2000lb", words)


def test_a_rope_is_as_soft_as_the_trade_knows_it() -> None:
    """P L / (A E) with 0.4 d d and 12 million psi, by hand."""
    found = ask("stretch", "load=1000lb length=200ft diameter=5/16in")
    by_hand = 1000 * 2400 / (0.4 * 0.3125**2 * 12e6)
    assert amount(found, "stretch") == pytest.approx(by_hand * INCH)
    assert [rule.key for rule in found.rules] == ["line.metal-share", "line.modulus"]


def test_two_loads_bring_a_stage_out_of_level() -> None:
    words = "length=200ft diameter=5/16in"
    found = ask("stretch", "load=415lb other-load=1085lb", words)
    one, other = (
        amount(ask("stretch", f"load={load}lb", words), "stretch") for load in (415, 1085)
    )
    assert found.message.id == "ask.out-of-level"
    assert amount(found, "out-of-level") == pytest.approx(other - one)


def test_what_the_makers_sheet_says_goes_first() -> None:
    found = ask("stretch", "load=1000lb length=100ft diameter=1/2in modulus=14000000psi metal=0.47")
    by_hand = 1000 * 100 / (0.47 * 0.25 * 14e6)
    assert amount(found, "stretch") == pytest.approx(by_hand * FOOT)
    assert not found.rules
