import pytest

from backspan.core.model.dated import why_no_date


@pytest.mark.parametrize("text", ["2026-11-25", "2024-02-29"])
def test_a_date_is_a_date_with_or_without_leave_for_a_time(text: str) -> None:
    assert why_no_date(text, with_time=False) is None
    assert why_no_date(text, with_time=True) is None


@pytest.mark.parametrize(
    "text",
    [
        "2026-11-25 14:05",
        "2026-11-25T14:05",
        "2026-11-25T14:05:30",
        "2026-11-25T14:05:30Z",
        "2026-11-25 14:05-05:00",
    ],
)
def test_a_time_of_day_is_read_only_where_it_may_stand(text: str) -> None:
    assert why_no_date(text, with_time=True) is None
    assert why_no_date(text, with_time=False) == "not written as year-month-day"


@pytest.mark.parametrize(
    "text", ["11/25/2026", "25.11.2026", "20261125", "2026-W48-3", "2026-330", "2026-1-5", "soon"]
)
def test_other_ways_to_write_a_date_are_refused(text: str) -> None:
    assert why_no_date(text, with_time=True) == "not written as year-month-day"


@pytest.mark.parametrize(
    "text", ["2026-02-30", "2025-02-29", "2026-13-01", "0000-01-01", "2026-11-25 24:30"]
)
def test_a_day_or_time_that_never_was_is_refused(text: str) -> None:
    assert why_no_date(text, with_time=True) == "no day or time of the calendar"
