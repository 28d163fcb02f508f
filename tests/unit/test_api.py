"""The program as a library."""

from __future__ import annotations

import datetime

import pytest

import backspan
from backspan import load, review
from backspan.core.findings import Verdict
from backspan.core.model.basis import RuleChoice
from backspan.core.review.dates import NoDayError
from backspan.core.sheet.case import AbsentError
from tests.architecture.source import ROOT

ON = datetime.date(2026, 11, 25)


def test_a_project_is_loaded_and_a_drop_reviewed() -> None:
    project = load(ROOT / "examples" / "demo" / "site.yaml")
    assert review(project, "S1", on=ON).verdict is Verdict.PASS
    other = review(project, "S1", on=ON, basis=[RuleChoice("uk-bs-5974", "undated")])
    assert other.verdict is Verdict.REFER


def test_a_drop_that_is_not_there() -> None:
    project = load(ROOT / "examples" / "demo" / "site.yaml")
    with pytest.raises(AbsentError, match="no drop 'X'"):
        review(project, "X", on=ON)


@pytest.mark.parametrize(
    "on",
    [datetime.datetime(2026, 11, 25, 7, tzinfo=datetime.UTC), "2026-11-25", None, 20261125],
)
def test_what_is_no_plain_day_is_refused(on: object) -> None:
    project = load(ROOT / "examples" / "demo" / "site.yaml")
    with pytest.raises(NoDayError, match=r"as the day of the review, expected a datetime\.date"):
        review(project, "S1", on=on)  # type: ignore[arg-type]


def test_nothing_else_is_offered() -> None:
    assert sorted(backspan.__all__) == ["load", "review"]
    with pytest.raises(AttributeError, match="no attribute 'nothing'"):
        getattr(backspan, "nothing")  # noqa: B009 - the name is not there, which is the point
