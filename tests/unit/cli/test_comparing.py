from __future__ import annotations

import datetime

from backspan.cli.comparing import comparison_table
from backspan.cli.screen import Screen
from backspan.core.review import review
from backspan.core.review.plain import Data
from backspan.core.review.report import formula_descriptions, review_data
from backspan.core.review.told import told
from backspan.exchange.files import load, load_rule_library
from tests.unit.cli.conftest import DEMO

SCREEN = Screen(width=100)


def rows() -> list[Data]:
    """The rules compared for the first support of a drop of the demo."""
    made = review(load(DEMO), "S4", load_rule_library(), on=datetime.date(2026, 11, 25))
    data = review_data(made, formulas=formula_descriptions())
    return next(told(data, "comparison"))[1]


def line_of(rule_set: str, table: str) -> list[str]:
    """The cells of the first row of a rule set."""
    return next(line.split() for line in table.splitlines() if line.startswith(rule_set))


def test_what_is_short_is_told_beside_what_is_enough() -> None:
    by_answer = {row["enough"]: row for row in rows() if row["required"] is not None}
    for enough, word in ((True, "yes"), (False, "no")):
        row = by_answer[enough]
        assert word in line_of(row["rule"]["rule_set"], comparison_table([row], SCREEN))


def test_pieces_that_are_not_known_are_not_told_as_none_needed() -> None:
    row = next(row for row in rows() if row["required"] is not None)
    known = line_of(row["rule"]["rule_set"], comparison_table([row], SCREEN))
    unknown = line_of(row["rule"]["rule_set"], comparison_table([{**row, "pieces": None}], SCREEN))
    assert row["pieces"]["text"] in known
    assert unknown == [cell for cell in known if cell != row["pieces"]["text"]]


def test_a_rule_without_a_number_is_told_with_its_reason() -> None:
    without = [row for row in rows() if row["required"] is None]
    text = " ".join(comparison_table(without, SCREEN).split())
    assert without
    assert all(row["rule"]["rule_set"] in text and row["reason"]["text"] in text for row in without)
