"""The shapes of a drawing as frozen data, before anybody decides how they are written.

A scene has two lists of shapes. `drawing` is the thing drawn, in metres at real size; `sheet` is
the paper around it, in millimetres from the lower left corner. In both, y runs up the sheet, and
what belongs to the pen (text height, symbol size, hatch spacing, dashes) is millimetres on paper.
A shape that shows a thing of the site says in `of` which one; one without is only drawn.
"""

from __future__ import annotations

import datetime
from dataclasses import dataclass, replace
from enum import StrEnum
from types import MappingProxyType

from backspan.core.errors import BackspanError
from backspan.core.quantities import Style
from backspan.drawings.things import Thing

Point = tuple[float, float]
"""x to the right and y up the sheet: metres in a drawing, millimetres on the sheet."""


class DrawingError(BackspanError, ValueError):
    """A drawing that was asked for and cannot be made: what it names is not in the project."""


class Layer(StrEnum):
    """What a shape belongs to; the names are those of the layers in a CAD file."""

    EXISTING = "Existing building"
    PARAPET = "Parapets"
    OBSTACLE = "Obstacles"
    ANCHOR = "Anchors"
    DROP = "Drops"
    STAGE = "Stages"
    BEAM = "Beams"
    JOINT = "Joints"
    FULCRUM = "Fulcrums"
    PLATE = "Plates and pads"
    COUNTERWEIGHT = "Counterweights"
    SUSPENSION = "Suspension lines"
    TIEBACK = "Tiebacks"
    LIFELINE = "Lifelines"
    SOFTENER = "Softeners"
    PLANNED = "Planned"
    NOT_KNOWN = "Not known"
    DIMENSION = "Dimensions"
    LABEL = "Labels"
    PASS = "Answer pass"
    FAIL = "Answer fail"
    REFER = "Answer refer"
    MISSING = "Answer missing"
    ENVELOPE = "Envelope"
    SHEET = "Sheet"


@dataclass(frozen=True, slots=True)
class Pen:
    """Width in millimetres on paper, colour as #rrggbb, dash pattern in millimetres."""

    width: float
    colour: str
    dashes: tuple[float, ...] = ()


BLACK = "#000000"
GREY = "#666666"

PENS = MappingProxyType(
    {
        Layer.EXISTING: Pen(0.18, GREY),
        Layer.PARAPET: Pen(0.18, GREY),
        Layer.OBSTACLE: Pen(0.18, GREY),
        Layer.ANCHOR: Pen(0.35, BLACK),
        Layer.DROP: Pen(0.25, "#1f3a5f"),
        Layer.STAGE: Pen(0.35, BLACK),
        Layer.BEAM: Pen(0.9, BLACK),
        Layer.JOINT: Pen(0.35, BLACK),
        Layer.FULCRUM: Pen(0.35, BLACK),
        Layer.PLATE: Pen(0.6, BLACK),
        Layer.COUNTERWEIGHT: Pen(0.35, BLACK),
        Layer.SUSPENSION: Pen(0.25, BLACK),
        Layer.TIEBACK: Pen(0.35, BLACK, (3.0, 1.2)),
        Layer.LIFELINE: Pen(0.35, "#1f3a5f", (5.0, 1.2, 0.8, 1.2)),
        Layer.SOFTENER: Pen(0.8, BLACK),
        Layer.PLANNED: Pen(0.18, BLACK),
        Layer.NOT_KNOWN: Pen(0.35, BLACK, (1.2, 1.0)),
        Layer.DIMENSION: Pen(0.18, BLACK),
        Layer.LABEL: Pen(0.18, BLACK),
        Layer.PASS: Pen(0.5, "#0b5d1e"),
        Layer.FAIL: Pen(0.5, "#a30000"),
        Layer.REFER: Pen(0.5, "#6a3d00"),
        Layer.MISSING: Pen(0.5, "#4b2a82"),
        Layer.ENVELOPE: Pen(0.5, BLACK),
        Layer.SHEET: Pen(0.25, BLACK),
    }
)


class Align(StrEnum):
    """Where a text stands beside its point."""

    START = "start"
    MIDDLE = "middle"
    END = "end"


@dataclass(frozen=True, slots=True)
class Line:
    """A straight line."""

    layer: Layer
    start: Point
    end: Point
    of: Thing | None = None


@dataclass(frozen=True, slots=True)
class Polyline:
    """Straight lines from point to point."""

    layer: Layer
    points: tuple[Point, ...]
    of: Thing | None = None


@dataclass(frozen=True, slots=True)
class Polygon:
    """A closed outline; `fill` is a colour or None for an empty one."""

    layer: Layer
    points: tuple[Point, ...]
    fill: str | None = None
    outlined: bool = True
    of: Thing | None = None


@dataclass(frozen=True, slots=True)
class Circle:
    """A full circle; its radius is in the units of its points."""

    layer: Layer
    centre: Point
    radius: float
    fill: str | None = None
    of: Thing | None = None


@dataclass(frozen=True, slots=True)
class Arc:
    """Part of a circle, anticlockwise from `start_angle` to `end_angle`, in degrees."""

    layer: Layer
    centre: Point
    radius: float
    start_angle: float
    end_angle: float
    of: Thing | None = None


@dataclass(frozen=True, slots=True)
class Text:
    """One line of text; `height` is that of a capital letter, `at` lies on the base line.

    A masked text has blank paper behind it, so that a line that passes there does not cross it.
    """

    layer: Layer
    at: Point
    text: str
    height: float
    align: Align = Align.START
    angle: float = 0.0
    bold: bool = False
    masked: bool = False
    of: Thing | None = None


@dataclass(frozen=True, slots=True)
class Dimension:
    """The distance from `start` to `end` measured along `angle` (degrees, from the x axis).

    The dimension line passes through `line_through`; `text` is what is printed on or beside it.
    """

    layer: Layer
    start: Point
    end: Point
    line_through: Point
    angle: float
    text: Text
    of: Thing | None = None


@dataclass(frozen=True, slots=True)
class Hatch:
    """Parallel lines that fill an outline, `spacing` millimetres apart on paper."""

    layer: Layer
    points: tuple[Point, ...]
    spacing: float
    angle: float = 45.0
    of: Thing | None = None


class SymbolName(StrEnum):
    """The signs a drawing uses; what each looks like is in `symbols`."""

    ANCHOR = "anchor"
    ANCHOR_CONDITIONAL = "anchor, conditional"
    ANCHOR_OUT = "anchor, out of service"
    FULCRUM = "fulcrum"
    SUSPENSION_POINT = "suspension point"
    CENTROID = "centroid of counterweight"
    NORTH = "north arrow"
    ARROW = "arrow head"
    POINT_AS_BUILT = "as built"
    PASS = "sign pass"
    FAIL = "sign fail"
    REFER = "sign refer"
    MISSING = "sign missing"
    SCHEDULE_ROW = "schedule row"
    """Nothing to see: where a row of a schedule begins, for what it says."""


@dataclass(frozen=True, slots=True)
class Symbol:
    """A sign with its point at `at`, `size` millimetres on paper, turned by `angle` degrees."""

    layer: Layer
    name: SymbolName
    at: Point
    size: float
    angle: float = 0.0
    of: Thing | None = None


Shape = Line | Polyline | Polygon | Circle | Arc | Text | Dimension | Hatch | Symbol


@dataclass(frozen=True, slots=True)
class Scale:
    """How many times smaller the drawing is than the thing, and how that is written."""

    ratio: float
    text: str


@dataclass(frozen=True, slots=True)
class Part:
    """A part of the sheet that can be looked at alone on a small screen; box in millimetres."""

    id: str
    title: str
    box: tuple[float, float, float, float]


@dataclass(frozen=True, slots=True)
class Scene:
    """A whole sheet: what is drawn, the paper around it, and how one lies on the other.

    `origin` is where (0, 0) of the drawing lies on the sheet, in millimetres. `scale` is None
    where nothing is drawn at real size (a diagram); `drawing` is then empty.
    """

    title: str
    description: str
    width: float
    height: float
    units: Style
    sheet: tuple[Shape, ...]
    drawing: tuple[Shape, ...] = ()
    scale: Scale | None = None
    origin: Point = (0.0, 0.0)
    dated: datetime.date | None = None
    parts: tuple[Part, ...] = ()

    def with_sheet(self, sheet: tuple[Shape, ...]) -> Scene:
        """The same scene with more shapes on its sheet."""
        return replace(self, sheet=(*self.sheet, *sheet))
