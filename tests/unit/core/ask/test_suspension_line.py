"""What a rope's end carries and how clips are set, as asked on the roof."""

from __future__ import annotations

import pytest

from backspan.core.ask.shape import QuestionError
from backspan.core.findings import Verdict
from tests.unit.core.ask.asking import FOOT, INCH, POUND_FORCE, amount, ask, count, wanted

ROPE = "breaking=8520lb keeps=0.8"
SHEET = "diameter=5/16in maker-clips=2 maker-turnback=5.5in maker-torque=30ft-lb"
IN_PLACE = "clips=3 spacing=2in turnback=8.25in torque=30ft-lb"


def test_the_largest_hoist_of_a_rope_is_a_number_and_no_verdict() -> None:
    found = ask("rope", ROPE)
    assert (found.verdict, found.message.id) == (None, "ask.most")
    assert amount(found, "strength-at-end") == pytest.approx(6816 * POUND_FORCE)
    assert amount(found, "most-rated") == pytest.approx(1136 * POUND_FORCE)
    assert amount(found, "most-stall-held") == pytest.approx(3408 * POUND_FORCE)


@pytest.mark.parametrize(
    ("hoist", "verdict"),
    [
        ("rated=1136lb stall=2500lb", Verdict.PASS),
        ("rated=1137lb stall=2500lb", Verdict.FAIL),
        ("rated=1000lb stall=3408lb", Verdict.PASS),
        ("rated=1000lb stall=3409lb", Verdict.FAIL),
        ("rated=1000lb", Verdict.MISSING),
        ("rated=1500lb", Verdict.FAIL),
    ],
)
def test_a_hoist_that_is_given_is_judged(hoist: str, verdict: Verdict) -> None:
    assert ask("rope", ROPE, hoist).verdict is verdict


def test_a_stall_load_that_is_not_known_is_asked_for() -> None:
    assert wanted(ask("rope", ROPE, "rated=1000lb")) == {"stall"}


def test_a_text_that_says_nothing_of_ropes_is_for_an_engineer() -> None:
    found = ask("rope", ROPE, "rules=ca-qc-s21-r4")
    assert (found.verdict, found.message.id) == (Verdict.REFER, "ask.no-number")


def test_how_clips_are_set() -> None:
    found = ask("clips", SHEET)
    assert (found.verdict, found.message.id) == (None, "ask.clips")
    assert count(found, "least-clips") == 3
    assert amount(found, "least-spacing") == pytest.approx(1.875 * INCH)
    assert amount(found, "least-turnback") == pytest.approx(8.25 * INCH)
    assert amount(found, "most-torque") == pytest.approx(37.5 * POUND_FORCE * FOOT)


def test_more_clips_ask_for_more_rope() -> None:
    assert amount(ask("clips", SHEET, "clips=4"), "least-turnback") == pytest.approx(11 * INCH)


@pytest.mark.parametrize(
    ("instead", "verdict"),
    [
        ("", "pass"),
        ("clips=2", "fail"),
        ("spacing=1.8in", "fail"),
        ("turnback=8in", "fail"),
        ("torque=29ft-lb", "fail"),
        ("torque=38ft-lb", "fail"),
        ("torque=6Nm", "fail"),
    ],
)
def test_clips_in_place_are_judged(instead: str, verdict: str) -> None:
    name = instead.partition("=")[0]
    kept = [one for one in IN_PLACE.split() if one.partition("=")[0] != name]
    assert ask("clips", SHEET, *kept, *instead.split()).verdict == verdict


def test_a_turnback_is_not_judged_without_a_count() -> None:
    found = ask("clips", SHEET, "turnback=8.25in")
    assert found.verdict is Verdict.MISSING
    assert wanted(found) == {"clips"}


def test_a_torque_in_pounds_is_no_torque() -> None:
    with pytest.raises(QuestionError, match='"lb" is a unit of force or mass; a moment is wanted'):
        ask("clips", SHEET.replace("30ft-lb", "45lb"))
