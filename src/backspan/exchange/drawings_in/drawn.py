"""What was read of a drawing: lines, blocks and texts in metres, and what was left out."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from backspan.core.model.site import Point
from backspan.core.quantities import LENGTH, Length, Style, display
from backspan.exchange.drawings_in.units import DrawingUnit


@dataclass(frozen=True, slots=True)
class Units:
    """The unit of a drawing; `said` is who says so: the file, or who asked for it."""

    unit: DrawingUnit
    said: str

    @property
    def style(self) -> Style:
        """How lengths of such a drawing are told."""
        return self.unit.style

    def place(self, at: Point) -> str:
        """A place as whoever drew it finds it again: in the drawing's own units."""
        x, y = (one / float(self.unit.factor) for one in at)
        return f"{_plain(x)}, {_plain(y)} ({self.unit})"

    def length(self, value: Length) -> str:
        """A length as it is told beside such a drawing."""
        return display(value, LENGTH, self.style)


@dataclass(frozen=True, slots=True)
class DrawnLine:
    """A run of points; a closed one goes on from its last point to its first."""

    layer: str
    points: tuple[Point, ...]
    closed: bool


@dataclass(frozen=True, slots=True)
class BlockPlaced:
    """A block where it was placed, with the texts of its attributes by their tags."""

    block: str
    layer: str
    at: Point
    attributes: Mapping[str, str]


@dataclass(frozen=True, slots=True)
class DrawnText:
    """A text where it begins."""

    layer: str
    text: str
    at: Point


@dataclass(frozen=True, slots=True)
class Size:
    """The overall size: from the lowest corner of all that was read to the highest."""

    low: Point
    high: Point

    @property
    def width(self) -> Length:
        """Across the sheet."""
        return self.high[0] - self.low[0]

    @property
    def height(self) -> Length:
        """Up the sheet."""
        return self.high[1] - self.low[1]

    @property
    def overall(self) -> Length:
        """The longer side."""
        return max(self.width, self.height)

    @property
    def told(self) -> str:
        """Both sides in feet and in metres."""
        feet, metres = DrawingUnit.FEET, DrawingUnit.METRES
        return " or ".join(
            " by ".join(f"{one / float(unit.factor):,.5g} {unit}" for one in self._sides)
            for unit in (feet, metres)
        )

    @property
    def _sides(self) -> tuple[Length, Length]:
        return self.width, self.height


@dataclass(frozen=True, slots=True)
class Noted:
    """Something that was mended, left out or is odd, and how often."""

    what: str
    many: int


@dataclass(frozen=True, slots=True)
class DrawnIn:
    """A drawing as it was read: model space only, all coordinates in metres."""

    origin: str
    units: Units
    lines: tuple[DrawnLine, ...]
    blocks: tuple[BlockPlaced, ...]
    texts: tuple[DrawnText, ...]
    size: Size
    audit: tuple[Noted, ...]


def _plain(value: float) -> str:
    return f"{round(value, 4) + 0.0:.12g}"
