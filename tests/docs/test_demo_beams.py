"""The demo building shows what is asked of beams in all four answers, on drops that had them."""

from __future__ import annotations

import datetime

import pytest

from backspan.core.findings import Finding, Verdict
from backspan.core.review import review
from backspan.exchange.files import load
from tests.architecture.source import ROOT
from tests.unit.core.rigs import LIBRARY

DEMO = load(ROOT / "examples" / "demo" / "site.yaml", LIBRARY)
ON = datetime.date(2026, 11, 25)
STORY = {
    "S1": (Verdict.PASS, {}),
    "S3": (Verdict.REFER, {"splice-reach": Verdict.REFER}),
    "N2": (Verdict.MISSING, {"label-load": Verdict.MISSING}),
    "W1": (Verdict.FAIL, {"splice-clear": Verdict.FAIL}),
}


def of_beams(found: tuple[Finding, ...]) -> dict[str | None, Verdict]:
    """The answers of the checks of beams that do not pass, by their question."""
    checks = {"beam-label", "beam-seen", "splice-clear"}
    return {
        one.question: one.verdict
        for one in found
        if one.check in checks and one.verdict is not Verdict.PASS
    }


@pytest.mark.parametrize("drop", STORY)
def test_a_drop_tells_its_part_of_the_story_of_beams(drop: str) -> None:
    found = review(DEMO, drop, LIBRARY, on=ON, compared=False)
    assert (found.verdict, of_beams(found.findings)) == STORY[drop]
