"""Infrastructure Health and Safety Association (Ontario), safety talk on counterweights.

Printed: beam 18 ft, 2 ft taken at the tail, overhang 1 ft, pieces of 55 lb: L = 16 ft, 4,000 ft lb,
250 lb, 5 pieces. The load of 1000 lb is inferred from the printed moment.
"""

from __future__ import annotations

import pytest

from backspan.core.findings import Verdict
from backspan.core.quantities import FORCE, LENGTH
from tests.published.published_rig import (
    Printed,
    finding,
    in_unit,
    reviewed,
    row,
    spare,
    step,
    value_in,
)

FILE = "ontario-safety-talk"
TALK = ("ca-on-ihsa-counterweights", "tipping.equipment-capacity")


def test_the_steps_as_printed() -> None:
    made = reviewed(FILE, "N5")
    found = finding(made, "tipping")
    whole = "printed as a whole number, and is one"
    arm = value_in(step(found, "backspan_to_stack"), LENGTH, "in") / 12
    Printed(16.0, 16.0, 1e-9, whole).check(arm)
    Printed(4000.0, 4000.0, 1e-9, whole).check(in_unit(found.demand, "lb ft"))
    Printed(250.0, 250.0, 1e-9, whole).check(in_unit(row(made, *TALK).required, "lb"))
    assert row(made, *TALK).pieces == 5


def test_five_pieces_give_275_lb_and_a_factor_of_4_40() -> None:
    found = finding(reviewed(FILE, "N5"), "tipping")
    assert found.verdict is Verdict.PASS
    assert spare(found) == 0
    assert step(found, "factor_reached") == pytest.approx(4.40, rel=1e-9)
    assert value_in(step(found, "added_weight"), FORCE, "lb") == pytest.approx(275.0)


def test_4_5_is_rounded_up_never_down() -> None:
    found = finding(reviewed(FILE, "N4"), "tipping")
    assert found.verdict is Verdict.FAIL
    assert spare(found) == -1


@pytest.mark.parametrize(
    ("drop", "pieces", "verdict"),
    [("C6", 6, Verdict.PASS), ("C5", 6, Verdict.FAIL), ("E5", 5, Verdict.PASS)],
)
def test_the_arm_ends_at_the_centre_of_the_stack(drop: str, pieces: int, verdict: Verdict) -> None:
    # Derived: pieces of 48 lb tell 16 ft from 17 ft; the wrong arm would let five pass.
    made = reviewed(FILE, drop)
    assert row(made, *TALK).pieces == pieces
    assert finding(made, "tipping").verdict is verdict
