"""Quebec, S-2.1 r.4, s. 3.9.15: inboard at least 1.5 times outboard; equality is enough."""

from __future__ import annotations

import pytest

from backspan.core.findings import Verdict
from tests.published.published_rig import finding, reviewed

FILE = "quebec-proportion"


@pytest.mark.parametrize(
    ("drop", "verdict", "ratio"), [("R150", Verdict.PASS, 1.5), ("R149", Verdict.FAIL, 1.49)]
)
def test_the_proportion(drop: str, verdict: Verdict, ratio: float) -> None:
    found = finding(reviewed(FILE, drop), "beam-proportion")
    assert found.verdict is verdict
    assert found.capacity is not None
    assert found.capacity.value == pytest.approx(ratio, rel=1e-12)
    assert found.rules[0].provenance.clause == "s. 3.9.15"


def test_the_section_has_no_factor_so_an_engineer_decides_about_tipping() -> None:
    found = finding(reviewed(FILE, "R150"), "tipping")
    assert (found.verdict, found.message.id) == (Verdict.REFER, "tipping.no-number")
