from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from backspan.core.questions.search import least_that_holds, most_that_holds

STEP = 0.0254 / 16


@given(st.integers(min_value=0, max_value=100_000))
def test_the_last_step_that_holds_is_found(limit: int) -> None:
    def holds(x: float) -> bool:
        return x <= limit * STEP + STEP / 2

    found = most_that_holds(holds, step=STEP)
    assert found == pytest.approx(limit * STEP, abs=STEP / 100)


@given(st.integers(min_value=1, max_value=100_000))
def test_the_first_step_that_holds_is_found(limit: int) -> None:
    def holds(x: float) -> bool:
        return x >= limit * STEP - STEP / 2

    found = least_that_holds(holds, step=STEP)
    assert found == pytest.approx(limit * STEP, abs=STEP / 100)


def test_where_nothing_or_everything_holds() -> None:
    assert most_that_holds(lambda _: False, step=STEP) == 0.0
    assert most_that_holds(lambda _: True, step=STEP) is None
    assert least_that_holds(lambda _: False, step=STEP) is None
    assert least_that_holds(lambda _: True, step=STEP) == STEP
