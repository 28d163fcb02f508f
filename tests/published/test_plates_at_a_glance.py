"""This project's own tables under 29 CFR 1926.451(a)(2), worked by hand; not printed elsewhere."""

from __future__ import annotations

import pytest

from backspan.core.findings import Verdict
from tests.published.published_rig import (
    Printed,
    finding,
    in_unit,
    project,
    reviewed,
    row,
    spare,
)

FILE = "plates-at-a-glance"
TEXTS = "one-rig-five-texts"
OSHA = "us-osha-1926-subpart-l"

#: Drop, pounds needed as the table rounds them, exactly, plates of 50 lb, plates of 25 kg.
ROWS = [
    ("T1", 563, 562.5, 12, 11),
    ("T2", 1125, 1125.0, 23, 21),
    ("T3", 1200, 1200.0, 24, 22),
    ("T4", 1350, 1350.0, 27, 25),
    ("T5", 1267, 4000 * 19 / 12 / 5, 26, 23),
    ("T6", 1500, 1500.0, 30, 28),
    ("T7", 2250, 2250.0, 45, 41),
]


@pytest.mark.parametrize(("drop", "printed", "exact", "fifties", "metric"), ROWS)
def test_a_row_of_the_table(
    drop: str, printed: float, exact: float, fifties: int, metric: int
) -> None:
    made = reviewed(FILE, drop)
    for side, pieces in (("L", fifties), ("R", metric)):
        found = finding(made, "tipping", side)
        assert found.governing is not None
        asked = row(made, OSHA, found.governing, side=side)
        Printed(printed, exact, 0.5, "the table is rounded to the pound").check(
            in_unit(asked.required, "lb")
        )
        assert asked.pieces == pieces
        assert found.verdict is Verdict.PASS
        assert spare(found) == 0


def test_every_drop_of_the_file_is_a_row() -> None:
    assert [drop.id for drop in project(FILE).drops] == [drop for drop, *_ in ROWS]


def test_more_than_40_plates_are_questioned() -> None:
    questioned = [one for one in reviewed(FILE, "T7").findings if one.check == "plausible-values"]
    assert {one.verdict for one in questioned} == {Verdict.REFER}
    assert not [one for one in reviewed(FILE, "T6").findings if one.check == "plausible-values"]


def test_an_inch_of_reach_at_a_backspan_of_5_ft_costs_more_than_a_plate() -> None:
    # 4 x 1000 lb x 1 in / 60 in = 66.7 lb: 1.33 plates of 50 lb, told as 1.4.
    price = next(
        one for one in finding(reviewed(FILE, "T3"), "tipping").margins if "per-step" in one.id
    )
    assert in_unit(getattr(price, "value", None), "") == pytest.approx(1.4)


@pytest.mark.parametrize(
    ("drop", "rule_set", "key", "reading", "pounds"),
    [
        ("LIM", OSHA, "tipping.rated-load", "as written", 1000.0),
        ("STALL", OSHA, "tipping.stall-load", "as written", 1125.0),
        ("LIM", "au-as-nzs-1576-4", "tipping.rope-tension", "as written", 982.5),
        ("LIM", "eu-en-1808", "tipping.working-load-limit", "beam not credited", 750.0),
        ("LIM", "uk-bs-5974", "tipping.rated-load", "as written", 750.0),
    ],
)
def test_one_rig_under_several_texts(
    drop: str, rule_set: str, key: str, reading: str, pounds: float
) -> None:
    found = row(reviewed(TEXTS, drop), rule_set, key, reading)
    assert in_unit(found.required, "lb") == pytest.approx(pounds, rel=1e-9)
    assert finding(reviewed(TEXTS, drop), "tipping").verdict is Verdict.PASS
