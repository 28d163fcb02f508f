"""Shares of hoists, clearance below and the length of a lifeline, as asked on the roof."""

from __future__ import annotations

import pytest

from backspan.core.ask.shape import Answer, QuestionError
from backspan.core.findings import Verdict
from backspan.core.quantities import Amount
from tests.unit.core.ask.asking import ask

FOOT, POUND = 0.3048, 4.4482216152605
STAGE = "dead=600lb apart=20ft"
FALL = "lanyard=3ft deceleration=3.5ft slide=6in elongation=0.03 line=150ft"


def line(found: Answer, name: str) -> float:
    (one,) = [each.value for each in found.lines if each.id == name]
    assert isinstance(one, Amount)
    return one.value


def test_two_men_and_two_windows_near_one_rope() -> None:
    """By hand: 300 + 500 x 17/20 + 400 x 18/20 = 1,085 lb, the other rope 415 lb."""
    found = ask("hoist-share", STAGE, "load=500lb at=3ft load-2=400lb at-2=2ft rated=1000lb")
    assert found.verdict is Verdict.FAIL
    assert line(found, "share-left") == pytest.approx(1085 * POUND)
    assert line(found, "share-right") == pytest.approx(415 * POUND)
    assert line(found, "take-off-left") == pytest.approx(85 * POUND)
    assert not [one for one in found.lines if one.id == "take-off-right"]


def test_both_hoists_over_are_both_told() -> None:
    """Two loads in the middle, 1,005 lb on each: 5 lb come off each, which is 10 lb of load."""
    found = ask("hoist-share", STAGE, "load=705lb at=10ft load-2=705lb at-2=10ft rated=1000lb")
    for side in ("left", "right"):
        assert line(found, f"take-off-{side}") == pytest.approx(5 * POUND)


@pytest.mark.parametrize("rated", ["", "rated=2000lb"])
def test_a_line_that_goes_slack_is_no_answer_that_holds(rated: str) -> None:
    """300 lb hold a line taut; 500 lb 12 ft beyond the other take off 500 x 12 / 20 = 300 lb."""
    asked = "load=500lb at=-{} " + rated
    assert ask("hoist-share", STAGE, asked.format("12ft")).verdict is not Verdict.FAIL
    slack = ask("hoist-share", STAGE, asked.format("12ft1in"))
    assert (slack.verdict, slack.message.id) == (Verdict.FAIL, "ask.share-slack")
    assert dict(slack.message.values)["side"] == "right"


def test_a_load_beyond_its_rope_lifts_the_other() -> None:
    found = ask("hoist-share", STAGE, "load=400lb at=-18in rated=1000lb")
    assert found.verdict is Verdict.PASS
    assert line(found, "share-left") == pytest.approx((300 + 1.075 * 400) * POUND)
    assert line(found, "share-right") == pytest.approx((300 - 0.075 * 400) * POUND)
    assert ask("hoist-share", STAGE, "load=400lb at=0ft").verdict is None


def test_a_load_without_its_place_is_no_question() -> None:
    with pytest.raises(QuestionError, match="at-2"):
        ask("hoist-share", STAGE, "load=400lb at=0ft load-2=100lb")


def test_a_fall_is_in_time_only_above_what_it_takes() -> None:
    found = ask("clearance", FALL, "height=14ft6in")
    assert found.verdict is Verdict.PASS
    assert line(found, "fall-takes") == pytest.approx(14.5 * FOOT)
    assert ask("clearance", FALL, "height=14ft5in").verdict is Verdict.FAIL
    assert ask("clearance", FALL).verdict is None
    low = line(ask("clearance", FALL, "height=25ft"), "in-time-from")
    assert (14.5 + 0.75) / 1.03 * FOOT <= low <= (14.5 + 0.75) / 1.03 * FOOT + 0.0254 / 16


def test_a_lanyard_that_lets_fall_too_far_is_refused_however_high() -> None:
    long = FALL.replace("lanyard=3ft", "lanyard=6ft")
    assert ask("clearance", long, "height=100ft").verdict is Verdict.PASS
    assert ask("clearance", long, "above=-6in height=100ft").verdict is Verdict.FAIL


def test_a_rider_slowed_over_too_much_is_refused_however_high() -> None:
    """At most 3 ft 6 in: 29 CFR 1926.502(d)(16)(iv), as the rule value has it."""
    slow = FALL.replace("deceleration=3.5ft", "deceleration=43in")
    found = ask("clearance", slow, "height=400ft")
    assert (found.verdict, found.message.id) == (Verdict.FAIL, "ask.clearance-too-slow")


def test_no_lanyard_holds_higher_than_it_reaches() -> None:
    with pytest.raises(QuestionError, match="above"):
        ask("clearance", FALL, "above=3ft1in height=11ft")
    assert ask("clearance", FALL, "above=3ft height=100ft").verdict is Verdict.PASS


def test_a_lifeline_goes_over_the_wall_and_down() -> None:
    found = ask("lifeline-length", "run=12ft wall=42in drop=130ft")
    assert line(found, "lifeline-length") == pytest.approx(149 * FOOT)
