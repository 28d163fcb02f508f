"""One step of a tape, a label or a scale, in SI."""

from __future__ import annotations

import pytest

from backspan.core.quantities import (
    CONDUCTOR_AREA,
    FORCE,
    LENGTH,
    MASS,
    Dimension,
    QuantityError,
    Style,
    parse,
    roof_step,
)


@pytest.mark.parametrize(
    ("dimension", "style", "step"),
    [
        (LENGTH, Style.US, "1/16 in"),
        (LENGTH, Style.METRIC, "1 mm"),
        (FORCE, Style.US, "1 lb"),
        (FORCE, Style.METRIC, "0.01 kN"),
        (MASS, Style.US, "1 lb"),
        (MASS, Style.METRIC, "1 kg"),
    ],
)
def test_one_step_beyond_is_what_the_design_says(
    dimension: Dimension, style: Style, step: str
) -> None:
    assert roof_step(dimension, style) == pytest.approx(parse(step, dimension), rel=1e-12)


def test_every_dimension_with_a_step_gives_a_positive_one() -> None:
    assert roof_step(CONDUCTOR_AREA, Style.US) > 0.0


def test_a_dimension_nobody_reads_in_steps_is_refused() -> None:
    made_up = Dimension("luck", "1", units=(), forms=())

    with pytest.raises(QuantityError, match="no step people read"):
        roof_step(made_up, Style.US)
