"""Common practice, no source: 2,000 lb at 8 ft turn a beam with 16,000 lb ft, before factors."""

from __future__ import annotations

import pytest

from backspan.core.ask import answer, read_values, topic_of
from backspan.core.quantities import Amount, Style
from tests.published.published_rig import LIBRARY, ON, in_unit


@pytest.mark.parametrize("asked", [["load=2,000 lb", "reach=8 ft"], ["load=2 kip reach=96 in"]])
def test_2000_lb_at_8_ft(asked: list[str]) -> None:
    topic = topic_of("moment")
    found = answer(topic, read_values(topic, asked), LIBRARY, style=Style.US, on=ON)
    (line,) = found.lines
    assert isinstance(line.value, Amount)
    assert in_unit(line.value, "lb ft") == pytest.approx(16_000.0, rel=1e-12)
    assert found.verdict is None
