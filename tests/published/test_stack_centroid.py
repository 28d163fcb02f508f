"""Adding pieces moves the centroid; derived by statics on the beam of the Ontario safety talk."""

from __future__ import annotations

import pytest

from backspan.core.findings import Verdict
from backspan.core.quantities import LENGTH
from tests.published.published_rig import (
    failed,
    finding,
    in_unit,
    reviewed,
    row,
    spare,
    step,
    value_in,
)

FILE = "stack-centroid"
TALK = ("ca-on-ihsa-counterweights", "tipping.equipment-capacity")


def test_plates_of_4_in_settle_at_five() -> None:
    made = reviewed(FILE, "N5")
    found = finding(made, "tipping")
    arm = value_in(step(found, "backspan_to_stack"), LENGTH, "in") / 12
    assert arm == pytest.approx(16 + 1 / 6, rel=1e-9)
    asked = in_unit(row(made, *TALK).required, "lb")
    assert asked == pytest.approx(247.42, abs=5e-3)
    assert row(made, *TALK).pieces == 5
    assert (found.verdict, spare(found)) == (Verdict.PASS, 0)
    short = finding(reviewed(FILE, "N4"), "tipping")
    assert (short.verdict, spare(short)) == (Verdict.FAIL, -1)


@pytest.mark.parametrize("drop", ["B14", "B15", "B16"])
def test_blocks_of_12_in_never_hold_and_the_answer_says_so(drop: str) -> None:
    found = finding(reviewed(FILE, drop), "tipping")
    assert found.verdict is Verdict.FAIL
    told = [(one.id, one.beyond) for one in found.margins if "pieces" in one.id]
    assert ("no-number-of-pieces", True) in told
    assert "pieces-spare" not in {name for name, _ in told}


def test_the_moment_is_greatest_where_the_stack_fills_the_beam() -> None:
    moments = {
        drop: in_unit(finding(reviewed(FILE, drop), "tipping").capacity, "lb ft")
        for drop in ("B14", "B15", "B16")
    }
    assert moments["B15"] == pytest.approx(6187.5, rel=1e-9)
    assert moments["B15"] == max(moments.values())


def test_a_sixteenth_block_stands_beyond_the_fulcrum() -> None:
    assert ("beam-length", "stack-fits.fail") in failed(reviewed(FILE, "B16"))
    assert ("beam-length", "stack-fits.fail") not in failed(reviewed(FILE, "B15"))
