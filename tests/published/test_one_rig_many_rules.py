"""One rig under many rules; derived by hand from the texts the rule sets name, not printed."""

from __future__ import annotations

import pytest

from backspan.core.findings import Verdict
from backspan.core.model.basis import RuleChoice
from tests.published.published_rig import finding, in_unit, reviewed, row, spare

FILE = "one-rig-many-rules"
NO_CREDIT, CREDIT = "beam not credited", "beam credited"
FULL, EVEN = "all the load at one end", "even split"

#: Rule set, value, reading, counterweight in kg at 0.5 m and 4.0 m, pieces of 25 kg.
ROWS = [
    ("us-osha-1926-subpart-l", "tipping.rated-load", "as written", 250.0, 10),
    ("us-osha-1926-subpart-l", "tipping.stall-load", "as written", 281.25, 12),
    ("us-wa-wac-296-874", "tipping.rated-load", "as written", 250.0, 10),
    ("ca-on-ihsa-counterweights", "tipping.equipment-capacity", "as written", 250.0, 10),
    ("au-as-nzs-1576-4", "tipping.rope-tension", "as written", 251.25, 11),
    ("eu-en-1808", "tipping.working-load-limit", NO_CREDIT, 187.5, 8),
    ("eu-en-1808", "tipping.working-load-limit", CREDIT, 161.25, 7),
    ("cn-gb-t-19155", "tipping.working-load-limit", NO_CREDIT, 187.5, 8),
    ("cn-gb-t-19155", "tipping.working-load-limit", CREDIT, 161.25, 7),
    ("uk-bs-5974", "tipping.rated-load", "as written", 187.5, 8),
    ("nz-acop-scaffolding", "tipping.load-at-one-end", "as written", 165.0, 7),
    ("hk-cap-59ac", "tipping.load-on-projecting-part", "full live load", 165.0, 7),
    ("hk-cap-59ac", "tipping.load-on-projecting-part", EVEN, 120.0, 5),
    ("no-performance-of-work", "tipping.scaffold-and-load", FULL, 137.5, 6),
    ("no-performance-of-work", "tipping.scaffold-and-load", EVEN, 100.0, 4),
    ("cn-gb-19155", "tipping.half-of-total", "as written", 80.0, 4),
    ("ca-on-reg-859", "tipping.likely-load", FULL, 220.0, 9),
    ("ca-on-reg-859", "tipping.likely-load", EVEN, 160.0, 7),
]
IDS = [f"{rule_set} {reading}" for rule_set, _, reading, _, _ in ROWS]


@pytest.mark.parametrize(("rule_set", "key", "reading", "mass", "pieces"), ROWS, ids=IDS)
def test_the_counterweight_of_each_rule(
    rule_set: str, key: str, reading: str, mass: float, pieces: int
) -> None:
    found = row(reviewed(FILE, "N12"), rule_set, key, reading)
    assert in_unit(found.required, "kg") == pytest.approx(mass, rel=1e-9)
    assert found.pieces == pieces


def test_every_rule_with_a_number_is_in_the_table() -> None:
    numbered = {
        (one.rule.rule_set, one.rule.key, one.rule.reading)
        for one in reviewed(FILE, "N12").comparison
        if one.required is not None
    }
    assert numbered == {tuple(one[:3]) for one in ROWS}


@pytest.mark.parametrize(("rule_set", "key", "reading", "mass", "pieces"), ROWS, ids=IDS)
def test_a_fulcrum_that_creeps_0_1_m_asks_for_23_08_percent_more(
    rule_set: str, key: str, reading: str, mass: float, pieces: int
) -> None:
    crept = in_unit(row(reviewed(FILE, "CREEP"), rule_set, key, reading).required, "kg")
    if reading == CREDIT:
        # 60 kg x 1.65 m of beam are left: (3 x 500 x 0.6 - 99) / 3.9.
        assert crept == pytest.approx(801 / 3.9, rel=1e-9)
    else:
        assert crept / mass == pytest.approx(1.2308, abs=5e-5)
        assert crept / mass == pytest.approx((0.6 / 3.9) / (0.5 / 4.0), rel=1e-9)
    assert crept > mass
    assert pieces > 0


def test_the_stall_branch_asks_for_12_pieces_and_11_do_not_do() -> None:
    enough, short = reviewed(FILE, "N12"), reviewed(FILE, "N11")
    assert finding(enough, "tipping").verdict is Verdict.PASS
    assert spare(finding(enough, "tipping")) == 0
    assert finding(short, "tipping").verdict is Verdict.FAIL
    assert spare(finding(short, "tipping")) == -1


def test_250_kg_are_exactly_10_pieces() -> None:
    washington = (RuleChoice("us-wa-wac-296-874", "2007"),)
    found = finding(reviewed(FILE, "N10", washington), "tipping")
    assert found.verdict is Verdict.PASS
    assert spare(found) == 0
    assert finding(reviewed(FILE, "N10"), "tipping").verdict is Verdict.FAIL


def test_the_largest_is_three_and_a_half_times_the_smallest() -> None:
    masses = [mass for *_, mass, _ in ROWS]
    assert max(masses) / min(masses) == pytest.approx(3.515625)
