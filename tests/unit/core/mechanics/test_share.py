"""The share that is used, of whatever is compared."""

from __future__ import annotations

from dataclasses import replace

import pytest

from backspan.core.mechanics import FORMULAS
from backspan.core.mechanics.share import utilisation
from backspan.core.quantities import FORCE, MOMENT, PRESSURE, RATIO, Dimension, Style
from backspan.core.worked.expression import WorkedError
from backspan.core.worked.lines import worked_line
from backspan.core.worked.table import describe

STEP = utilisation(demand=900.0, capacity=1000.0)
DESCRIBED = describe(FORMULAS["utilisation"])


def test_nine_tenths() -> None:
    assert STEP.value == pytest.approx(0.9)


@pytest.mark.parametrize(
    ("of", "unit"), [(MOMENT, "N m"), (FORCE, "N"), (PRESSURE, "Pa"), (RATIO, "")]
)
def test_it_is_written_in_the_unit_of_what_is_compared(of: Dimension, unit: str) -> None:
    line = worked_line(replace(STEP, of=of), DESCRIBED, Style.METRIC)
    assert [one.unit for one in line.numbers] == [unit, unit]
    assert line.result.unit == ""


def test_a_share_of_nobody_knows_what_is_not_written() -> None:
    with pytest.raises(WorkedError, match="the step does not say of which kind 'demand' is"):
        worked_line(STEP, DESCRIBED, Style.METRIC)
