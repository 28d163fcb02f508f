"""Try-out: the answer that other numbers would give, by the same review, and nothing written."""

from __future__ import annotations

import re

import pytest

from backspan.core.review import review
from backspan.core.review.front import front_data
from backspan.records.api import SiteRecord
from tests.site.bench import Browser
from tests.unit.core.rigs import LIBRARY, ON, PROJECT, put

AT = "/drops/D/try"
REACH = ("drops", "D", "rig", "suspension_points", "L", "counterweighted_beam", "reach", "value")
COUNT = (*REACH[:-2], "stack", "groups", 0, "count", "value")


def answered(pages: Browser, query: str) -> str:
    """What it would answer."""
    return pages.get(f"{AT}{query}").plain.split("It would answer")[1]


def test_with_nothing_moved_it_answers_as_recorded(pages: Browser) -> None:
    front = front_data(review(PROJECT, "D", LIBRARY, on=ON, compared=False))
    assert answered(pages, "").count(front["answer"]) == 2


@pytest.mark.parametrize(
    ("query", "path", "value"),
    [
        ("?reach-L=96", REACH, 96 * 0.0127),
        ("?reach-L=47", REACH, 47 * 0.0127),
        ("?pieces-L-0=9", COUNT, 9),
    ],
)
def test_a_moved_value_answers_as_a_site_that_had_it(
    pages: Browser, query: str, path: tuple[str | int, ...], value: float
) -> None:
    project = put(PROJECT, path, value)
    front = front_data(review(project, "D", LIBRARY, on=ON, compared=False))
    shown = answered(pages, query)
    assert front["answer"] in shown
    assert front["governs"] is None or front["governs"] in shown


def test_a_value_that_nobody_moved_stays_as_it_was_stated_to_the_last_digit(
    pages: Browser,
) -> None:
    """A reach between two steps of the slider is not rounded to one of them."""
    now = re.search(r'name="reach-L"[^>]*value="([0-9]+)"', pages.get(AT).text)
    assert now is not None
    assert answered(pages, f"?reach-L={now[1]}") == answered(pages, "")


def test_trying_writes_nothing_and_takes_no_form(pages: Browser, record: SiteRecord) -> None:
    before = record.ledger.last()
    pages.get(f"{AT}?reach-L=96")
    answer = pages.send(AT, {"csrfmiddlewaretoken": pages.cookies["csrftoken"], "reach-L": "96"})
    assert answer.status == 405
    assert record.ledger.last() == before
    assert "Nothing here is recorded" in pages.get(AT).plain
    assert 'method="post"' not in pages.get(AT).text


@pytest.mark.parametrize("query", ["?reach-L=far", "?reach-L=0", "?reach-L=-4", "?hoist-L=X"])
def test_what_cannot_be_tried_is_refused(pages: Browser, query: str) -> None:
    answer = pages.get(f"{AT}{query}")
    assert answer.status == 400
    assert "expected" in answer.plain


def test_another_hoist_is_tried_by_its_kind(pages: Browser) -> None:
    kinds = [one.id for one in PROJECT.kit.hoists]
    assert pages.get(f"{AT}?hoist-L={kinds[0]}").status == 200
