"""Room on the beam: the stack, or the taped backspan, ends before the beam does."""

from __future__ import annotations

import pytest

from backspan.core.findings import Verdict
from tests.unit.core.rigs import (
    ARM,
    BEAM,
    PIECE,
    PROJECT,
    STACK,
    STACKED,
    count,
    finding,
    length,
    needs,
    put,
    reasons,
)

COUNT = (*STACK, "groups", "LOT", "count")


@pytest.mark.parametrize(
    ("backspan", "verdict"),
    [
        # 18 ft less 6 in of tip and 2 ft of reach.
        ("15 ft 6 in", Verdict.PASS),
        ("15 ft 6 1/16 in", Verdict.FAIL),
        ("4.724 m", Verdict.PASS),
        ("4.725 m", Verdict.FAIL),
    ],
)
def test_a_taped_backspan_lies_within_the_beam(backspan: str, verdict: Verdict) -> None:
    found = finding(put(PROJECT, (*ARM, "backspan"), length(backspan)), "beam-length")
    assert found.verdict is verdict
    assert found.message.id == f"backspan-fits.{verdict}"


@pytest.mark.parametrize(
    ("pieces", "verdict"),
    [(61, Verdict.PASS), (62, Verdict.FAIL)],  # 186 in less the gap of 3 in, 3 in each
)
def test_a_stack_ends_before_the_fulcrum(pieces: int, verdict: Verdict) -> None:
    found = finding(put(STACKED, COUNT, count(pieces)), "beam-length")
    assert found.verdict is verdict
    assert found.message.id == f"stack-fits.{verdict}"


def test_a_fulcrum_beyond_the_tail_fails() -> None:
    found = finding(put(STACKED, (*ARM, "reach"), length("18 ft")), "beam-length")
    assert found.verdict is Verdict.FAIL
    assert found.utilisation is None


def test_what_is_not_stated_leaves_it_open() -> None:
    open_stack = finding(put(STACKED, (*PIECE, "length_on_beam"), None), "beam-length")
    assert open_stack.verdict is Verdict.MISSING
    assert needs(open_stack) == (("need.input", "piece_length"),)
    open_backspan = finding(put(PROJECT, (*ARM, "backspan"), None), "beam-length")
    assert open_backspan.verdict is Verdict.MISSING
    assert needs(open_backspan) == (("need.input", "backspan"),)


def test_without_a_length_a_taped_backspan_has_nothing_to_be_held_against() -> None:
    assert ("D/L", "na.beam-length") in reasons(
        put(PROJECT, (*BEAM, "length"), None), "beam-length"
    )


def test_without_the_tip_a_backspan_can_be_refused_and_not_passed() -> None:
    no_tip = put(PROJECT, (*ARM, "tip_beyond_line"), None)
    assert ("D/L", "na.beam-tip") in reasons(no_tip, "beam-length")
    longest = put(no_tip, (*ARM, "backspan"), length("16 ft"))
    assert ("D/L", "na.beam-tip") in reasons(longest, "beam-length")
    too_long = put(no_tip, (*ARM, "backspan"), length("16 ft 1/16 in"))
    assert finding(too_long, "beam-length").verdict is Verdict.FAIL


def test_more_of_what_takes_room_does_harm() -> None:
    more = put(STACKED, COUNT, count(61, tolerance=1))
    taped = put(PROJECT, (*ARM, "backspan"), length("15 ft 6 in", tolerance="1/16 in"))
    assert finding(more, "beam-length").verdict is Verdict.FAIL
    assert finding(taped, "beam-length").verdict is Verdict.FAIL


def test_a_backspan_that_is_not_on_its_beam_is_refused_though_its_moment_holds() -> None:
    """Nine feet of beam, its middle outboard: the moment of a backspan of 10 ft leaves that out."""
    short = put(
        put(PROJECT, (*BEAM, "length"), length("9 ft")), (*ARM, "reach"), length("4 ft 6 in")
    )
    short = put(short, (*STACK, "groups", 0, "count"), count(60))
    assert finding(short, "tipping").verdict is Verdict.PASS
    assert finding(short, "beam-length").verdict is Verdict.FAIL
