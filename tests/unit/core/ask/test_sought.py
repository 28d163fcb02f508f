"""What is sought is held by the engine at the step told, and not one step beyond."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from backspan.core.ask import QuestionError
from backspan.core.findings import Verdict
from backspan.core.quantities import Style
from tests.unit.core.ask.asking import (
    FOOT,
    INCH,
    POUND_FORCE,
    amount,
    ask,
    count,
    ids,
    notes,
    wanted,
)

PIECES = st.integers(min_value=5, max_value=60)
POUNDS = st.integers(min_value=500, max_value=2500)
INCHES = st.integers(min_value=12, max_value=120)
SIXTEENTH = 0.0625


def _inches(found: float) -> float:
    sixteenths = found / INCH / SIXTEENTH
    assert sixteenths == pytest.approx(round(sixteenths), abs=1e-6)
    return round(sixteenths) * SIXTEENTH


@given(PIECES, POUNDS, st.integers(min_value=60, max_value=200))
def test_the_reach_told_holds_and_a_sixteenth_more_does_not(
    pieces: int, rated: int, backspan: int
) -> None:
    rig = f"rated={rated}lb stall={rated}lb backspan={backspan}in piece=55lb pieces={pieces}"
    found = ask("reach", rig)
    inches = _inches(amount(found, "most-reach"))
    if inches <= backspan:
        assert ask("counterweight", rig, f"reach={inches}in").verdict is Verdict.PASS
    beyond = ask("counterweight", rig, f"reach={inches + SIXTEENTH}in")
    assert beyond.verdict is Verdict.FAIL


@given(PIECES, POUNDS, INCHES)
def test_the_backspan_told_holds_and_a_sixteenth_less_does_not(
    pieces: int, rated: int, reach: int
) -> None:
    rig = f"rated={rated}lb stall={rated}lb reach={reach}in piece=55lb pieces={pieces}"
    inches = _inches(amount(ask("backspan", rig), "least-backspan"))
    if inches >= reach:
        assert ask("counterweight", rig, f"backspan={inches}in").verdict is Verdict.PASS
    less = ask("counterweight", rig, f"backspan={inches - SIXTEENTH}in")
    assert less.verdict is Verdict.FAIL


@given(PIECES, INCHES, st.sampled_from(["1.1", "1.25", "2.8", "3"]))
def test_the_hoist_told_holds_and_a_pound_more_does_not(
    pieces: int, reach: int, ratio: str
) -> None:
    rig = f"reach={reach}in backspan=11ft piece=55lb pieces={pieces}"
    found = ask("hoist", rig, f"stall-ratio={ratio}")
    pounds = round(amount(found, "most-rated") / POUND_FORCE)
    factor = float(ratio)
    for rated, verdict in ((pounds, Verdict.PASS), (pounds + 1, Verdict.FAIL)):
        # A little less, so that the cap of 3 times is not passed by rounding.
        stall = f"stall={rated * factor - 1e-6:.6f}lb"
        assert ask("counterweight", rig, f"rated={rated}lb", stall).verdict is verdict


def test_reach_of_forty_pieces() -> None:
    found = ask("reach", "rated=1000lb stall=1250lb backspan=11ft6in pieces=40 piece=55lb")
    # 40 x 55 x 11.5 / 4,000 = 6.325 ft, down to 6 ft 3 7/8 in.
    assert amount(found, "most-reach") == pytest.approx(6 * FOOT + 3.875 * INCH, rel=1e-12)
    assert "note.rounded-down" in notes(found)


def test_metric_answers_are_rounded_to_millimetres() -> None:
    found = ask(
        "reach", "rated=5kN stall=6kN backspan=3.5m pieces=40 piece=25kg", style=Style.METRIC
    )
    assert amount(found, "most-reach") == 1.716


@pytest.mark.parametrize(
    ("topic", "rig", "line", "lower_or_higher"),
    [
        ("reach", "rated=1kip backspan=11ft6in pieces=40 piece=55lb", "most-reach", -1),
        ("backspan", "rated=1kip reach=4ft pieces=40 piece=55lb", "least-backspan", 1),
        ("hoist", "reach=4ft backspan=11ft6in pieces=26 piece=55lb", "most-rated", -1),
    ],
)
def test_an_unknown_stall_load_gives_both_ends(
    topic: str, rig: str, line: str, lower_or_higher: int
) -> None:
    found = ask(topic, rig)
    assert found.verdict is Verdict.MISSING
    assert found.message.id == ("ask.open-ratio" if topic == "hoist" else "ask.open")
    here, there = amount(found, line), amount(found, f"{line}-at-most-stall")
    assert (there - here) * lower_or_higher > 0.0
    assert wanted(found) == {"stall-ratio" if topic == "hoist" else "stall"}


@pytest.mark.parametrize(
    ("topic", "rig"),
    [
        ("reach", "rated=1kip stall=1kip backspan=1in pieces=0 piece=55lb"),
        ("backspan", "rated=1kip stall=1kip reach=2ft pieces=0 piece=55lb"),
        ("hoist", "reach=100ft backspan=1in pieces=1 piece=1lb stall-ratio=1"),
    ],
)
def test_where_nothing_is_held(topic: str, rig: str) -> None:
    found = ask(topic, rig)
    assert found.verdict is Verdict.FAIL
    assert not ids(found)


def test_a_rule_on_other_loads_sets_no_hoist() -> None:
    rig = "reach=4ft backspan=11ft pieces=26 piece=55lb"
    with pytest.raises(QuestionError, match="multiplies half the dead load and the full live load"):
        ask("hoist", rig, "rules=nz-acop-scaffolding")


@pytest.mark.parametrize("topic", ["reach", "backspan"])
def test_a_rule_whose_load_is_not_given_is_missing(topic: str) -> None:
    other = "backspan=11ft" if topic == "reach" else "reach=2ft"
    found = ask(topic, f"rated=1kip {other} pieces=9 piece=55lb rules=nz-acop-scaffolding")
    assert found.verdict is Verdict.MISSING
    assert wanted(found) == {"dead", "live"}


@pytest.mark.parametrize("topic", ["reach", "backspan", "hoist"])
def test_a_rule_without_a_number_is_referred(topic: str) -> None:
    rig = {
        "reach": "rated=1kip backspan=9ft",
        "backspan": "rated=1kip reach=2ft",
        "hoist": "reach=2ft backspan=9ft",
    }[topic]
    found = ask(topic, f"{rig} pieces=9 piece=55lb rules=ca-qc-s21-r4")
    assert found.verdict is Verdict.REFER


def test_a_shift_inboard_counts_twice() -> None:
    rig = "rated=1kip stall=1kip reach=2ft backspan=11ft piece=55lb"
    found = ask("shift", "shift=6in", rig, "pieces=18")
    assert found.verdict is Verdict.PASS
    assert amount(found, "reach-after") == pytest.approx(2.5 * FOOT)
    assert amount(found, "backspan-after") == pytest.approx(10.5 * FOOT)
    assert amount(found, "factor-before") == pytest.approx(18 * 55 * 11 / 2000)
    assert amount(found, "factor-after") == pytest.approx(18 * 55 * 10.5 / 2500)
    assert count(found, "pieces-needed") == 18
    assert ask("shift", "shift=6in", rig, "pieces=17").verdict is Verdict.FAIL


def test_a_shift_outboard_helps() -> None:
    rig = "rated=1kip stall=1kip reach=2ft6in backspan=10ft6in piece=55lb pieces=17"
    assert ask("shift", "shift=0in", rig).verdict is Verdict.FAIL
    assert ask("shift", "shift=-6in", rig).verdict is Verdict.PASS


@pytest.mark.parametrize(("shift", "what"), [("-2ft", "suspension line"), ("11ft", "middle")])
def test_a_fulcrum_cannot_pass_what_it_stands_between(shift: str, what: str) -> None:
    rig = "rated=1kip stall=1kip reach=2ft backspan=11ft piece=55lb pieces=18"
    with pytest.raises(QuestionError, match=f"the fulcrum would pass the {what}"):
        ask("shift", f"shift={shift}", rig)
