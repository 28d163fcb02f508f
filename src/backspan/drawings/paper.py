"""How a drawing lies on its sheet: the standard scales, and metres to millimetres and back."""

from __future__ import annotations

from dataclasses import dataclass

from backspan.core.quantities import Style
from backspan.drawings.geometry import Box
from backspan.drawings.scene import Point, Scale, Scene

MILLIMETRES = 1000.0

_US_DETAIL = (
    (12, '1" = 1\'-0"'),
    (16, '3/4" = 1\'-0"'),
    (24, '1/2" = 1\'-0"'),
    (32, '3/8" = 1\'-0"'),
    (48, '1/4" = 1\'-0"'),
    (64, '3/16" = 1\'-0"'),
    (96, '1/8" = 1\'-0"'),
    (128, '3/32" = 1\'-0"'),
    (192, '1/16" = 1\'-0"'),
)
_US_SITE = tuple((12 * feet, f"1\" = {feet}'") for feet in (20, 30, 40, 50, 60, 80, 100, 150, 200))
_METRIC = tuple(
    (ratio, f"1:{ratio}") for ratio in (10, 20, 25, 50, 100, 200, 250, 500, 1000, 2000, 2500)
)


def standard_scales(units: Style) -> tuple[Scale, ...]:
    """The scales an office draws at, largest drawing first."""
    rows = _METRIC if units is Style.METRIC else (*_US_DETAIL, *_US_SITE)
    return tuple(Scale(float(ratio), text) for ratio, text in rows)


def fitting_scale(units: Style, *, least_ratio: float, most_detail: float = 0.0) -> Scale:
    """The largest standard scale at which things are at least `least_ratio` times smaller.

    `most_detail` keeps small things from being blown up past what is usual. Beyond the standard
    scales the ratio is a round number that fits.
    """
    wanted = max(least_ratio, most_detail)
    for scale in standard_scales(units):
        if scale.ratio >= wanted - 1e-9:
            return scale
    ratio = standard_scales(units)[-1].ratio
    while ratio < wanted:
        ratio *= 2
    return Scale(ratio, f"1:{ratio:,.0f}")


def ratio_to_fit(content: Box, area: Box) -> float:
    """How many times smaller `content` (metres) must be drawn to fit `area` (millimetres)."""
    across = (content[2] - content[0]) * MILLIMETRES / (area[2] - area[0])
    up = (content[3] - content[1]) * MILLIMETRES / (area[3] - area[1])
    return max(across, up)


@dataclass(frozen=True, slots=True)
class Frame:
    """A scale and where the drawing's (0, 0) lies on the sheet."""

    scale: Scale
    origin: Point

    def to_paper(self, point: Point) -> Point:
        """A point of the drawing (metres) as a point on the sheet (millimetres)."""
        factor = MILLIMETRES / self.scale.ratio
        return (self.origin[0] + point[0] * factor, self.origin[1] + point[1] * factor)

    def to_drawing(self, point: Point) -> Point:
        """A point on the sheet (millimetres) as a point of the drawing (metres)."""
        factor = self.scale.ratio / MILLIMETRES
        return ((point[0] - self.origin[0]) * factor, (point[1] - self.origin[1]) * factor)

    def real(self, on_paper: float) -> float:
        """The length in metres that is `on_paper` millimetres long on the sheet."""
        return on_paper * self.scale.ratio / MILLIMETRES

    def drawn(self, length: float) -> float:
        """The millimetres on the sheet that a length in metres takes."""
        return length * MILLIMETRES / self.scale.ratio


def centred(scale: Scale, *, content: Box, area: Box) -> Frame:
    """The frame in which `content` (metres) lies in the middle of `area` (millimetres)."""
    factor = MILLIMETRES / scale.ratio
    middle_x, middle_y = (area[0] + area[2]) / 2, (area[1] + area[3]) / 2
    return Frame(
        scale,
        (
            middle_x - factor * (content[0] + content[2]) / 2,
            middle_y - factor * (content[1] + content[3]) / 2,
        ),
    )


def frame_of(scene: Scene) -> Frame:
    """The frame of a scene; a scene without scale has its drawing in millimetres."""
    return Frame(scene.scale or Scale(MILLIMETRES, "none"), scene.origin)
