"""Page "Counterweight Gives Way" at bhhcsafetycenter.com, a case of OSHA's fatal facts.

Outriggers of a two-point stage held by three 5-gallon buckets of sand, not tied back; one dead.
Reach, backspan, hoists and the mass of a bucket are not in the source; the mass is from memory.
"""

from __future__ import annotations

import pytest

from backspan.core.findings import Verdict
from tests.published.published_rig import failed, finding, in_unit, reviewed

FILE = "sand-buckets"
REFUSED = {
    ("counterweight-kind", "flowable.fail"),
    ("counterweight-kind", "purpose-made.fail"),
    ("counterweight-fastening", "fastening.fail"),
}


def test_the_rig_is_refused_for_every_reason_of_the_case() -> None:
    made = reviewed(FILE, "B3")
    assert failed(made) == REFUSED | {("tipping", "tipping.does-not-hold")}


def test_the_refusals_name_their_clauses() -> None:
    clauses = {
        value.provenance.clause
        for one in reviewed(FILE, "B3").findings
        if one.verdict is Verdict.FAIL
        for value in one.rules
    }
    assert clauses >= {"1926.451(d)(3)(ii)", "1926.451(d)(3)(iii)", "1926.451(d)(3)(iv)"}


def test_sand_that_would_balance_the_moment_is_refused_all_the_same() -> None:
    made = reviewed(FILE, "B3L")
    found = finding(made, "tipping")
    assert in_unit(found.capacity, "lb ft") == pytest.approx(in_unit(found.demand, "lb ft"))
    assert found.verdict is Verdict.MISSING  # the mass of a bucket is assumed
    assert failed(made) == REFUSED
