"""A rigging-hardware manual, section "Calculation of counterweights", instructions 2013.

Printed: hoist 1000 lb, overhang 4 ft, backspan 11 ft 6 in, factor 4: W = 1391 lb, 26 pieces or
more. Pieces of 55 lb are inferred.
"""

from __future__ import annotations

import pytest

from backspan.core.findings import Verdict
from tests.published.published_rig import Printed, finding, in_unit, reviewed, row, spare, step

FILE = "rigging-manual-2013"
OSHA = "us-osha-1926-subpart-l"


def test_the_counterweight_and_the_pieces_as_printed() -> None:
    found = row(reviewed(FILE, "N26"), OSHA, "tipping.rated-load")
    weight = Printed(1391.0, 16_000 / 11.5, 0.5, "printed to the pound")
    weight.check(in_unit(found.required, "lb"))
    assert found.pieces == 26


@pytest.mark.parametrize(
    ("drop", "verdict", "factor", "left"),
    [("N26", Verdict.PASS, 4.111, 0), ("N25", Verdict.FAIL, 3.953, -1)],
)
def test_26_pieces_hold_and_25_do_not(
    drop: str, verdict: Verdict, factor: float, left: int
) -> None:
    made = reviewed(FILE, drop)
    for side in "LR":
        found = finding(made, "tipping", side)
        assert found.verdict is verdict
        assert step(found, "factor_reached") == pytest.approx(factor, abs=5e-4)
        assert spare(found) == left
