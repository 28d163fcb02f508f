"""Adding pieces moves the middle of the stack: WM-90, derived by statics."""

from __future__ import annotations

import pytest

from backspan.core.ask import QuestionError
from backspan.core.findings import Verdict
from tests.unit.core.ask.asking import FOOT, INCH, amount, ask, count, ids, notes, wanted

PLATES = "beam=18ft tip=0in reach=1ft tail-gap=0in piece-length=4in piece=55lb"
BLOCKS = "beam=18ft tip=0in reach=3ft tail-gap=0in piece-length=12in piece=55lb"


def test_plates_of_4_in_settle_at_five() -> None:
    found = ask("stack", PLATES, "rated=1000lb stall=1250lb")
    assert found.verdict is None
    assert count(found, "pieces-needed") == 5
    assert amount(found, "stack-centroid") == pytest.approx(10 * INCH)
    assert amount(found, "backspan") == pytest.approx(16 * FOOT + 2 * INCH)
    assert amount(found, "stack-length") == pytest.approx(20 * INCH)


def test_blocks_of_12_in_never_hold_and_the_answer_says_so() -> None:
    found = ask("stack", BLOCKS, "rated=1000lb")
    assert (found.verdict, found.message.id) == (Verdict.FAIL, "ask.too-short")
    words = dict(found.message.values)
    assert words["most"] == 15
    assert count(found, "most-that-fit") == 15
    assert "pieces-needed" not in ids(found)


@pytest.mark.parametrize(
    ("pieces", "verdict"), [(4, Verdict.FAIL), (5, Verdict.PASS), (51, Verdict.PASS)]
)
def test_given_pieces_are_judged_where_they_stand(pieces: int, verdict: Verdict) -> None:
    found = ask("stack", PLATES, f"rated=1000lb stall=1250lb pieces={pieces}")
    assert found.verdict is verdict


def test_a_stack_longer_than_the_beam_fails() -> None:
    found = ask("stack", BLOCKS, "pieces=16")
    assert (found.verdict, found.message.id) == (Verdict.FAIL, "stack-fits.fail")
    assert "room-left" not in ids(found)
    assert ask("stack", BLOCKS, "pieces=15").verdict is Verdict.PASS


def test_rows_of_two_take_half_the_beam() -> None:
    found = ask("stack", BLOCKS, "pieces=15 per-row=2")
    assert amount(found, "stack-length") == pytest.approx(8 * FOOT)
    # Seven full rows in 7 ft and one piece beyond: (14 x 3.5 + 7.5) / 15 ft from the tail.
    assert amount(found, "stack-centroid") == pytest.approx((14 * 3.5 + 7.5) / 15 * FOOT)


def test_an_unknown_stall_load_is_told_at_both_ends() -> None:
    found = ask("stack", PLATES, "rated=1000lb")
    assert (found.verdict, found.message.id) == (Verdict.MISSING, "ask.open")
    assert count(found, "pieces-needed-at-most-stall") == 6
    assert wanted(found) == {"stall"}


def test_a_beam_long_enough_for_one_branch_only() -> None:
    beam = "beam=16ft tip=0in reach=3ft tail-gap=0in piece-length=12in per-row=2 piece=75lb"
    found = ask("stack", beam, "rated=1000lb")
    assert (found.verdict, found.message.id) == (Verdict.MISSING, "ask.open-none")
    assert "pieces-needed-at-most-stall" not in ids(found)


def test_neither_pieces_nor_hoist_is_no_question() -> None:
    with pytest.raises(QuestionError, match=r"give pieces=\.\.\. .* or rated=\.\.\."):
        ask("stack", PLATES)


def test_a_beam_all_outboard_has_no_room() -> None:
    found = ask("stack", PLATES.replace("reach=1ft", "reach=19ft"), "rated=1000lb")
    assert found.verdict is Verdict.FAIL
    assert "note.label" in notes(found)
