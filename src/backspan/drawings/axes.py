"""Axes of a diagram: round steps in the style's own unit, and where a value lies on paper."""

from __future__ import annotations

from dataclasses import dataclass

from backspan.core.quantities import Style

FOOT = 0.3048
STEPS = (0.1, 0.2, 0.5, 1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0)
MOST_TICKS = 7
HEADROOM = 1.08


@dataclass(frozen=True, slots=True)
class Axis:
    """From zero at `low` (paper) to `largest` metres at `high` (paper), ticks in metres."""

    largest: float
    low: float
    high: float
    ticks: tuple[float, ...]

    def at(self, value: float) -> float:
        """Where a length lies, in millimetres on paper."""
        return self.low + (self.high - self.low) * value / self.largest


def axis_for(largest: float, style: Style, *, low: float, high: float) -> Axis:
    """An axis that holds lengths up to `largest` (metres) with some room above it."""
    unit = FOOT if style is Style.US else 1.0
    end = max(largest, unit * STEPS[0]) * HEADROOM
    step = next(
        (step for step in STEPS if end / (step * unit) <= MOST_TICKS), end / unit / MOST_TICKS
    )
    count = int(end / (step * unit))
    return Axis(end, low, high, tuple(place * step * unit for place in range(count + 1)))


def axis_title(name: str, style: Style) -> str:
    """The name of an axis with its unit."""
    return f"{name}, {'ft' if style is Style.US else 'm'}"


def tick_text(value: float, style: Style) -> str:
    """The number at a tick, in the unit of the axis."""
    return f"{value / (FOOT if style is Style.US else 1.0):,.3g}"
