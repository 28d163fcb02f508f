"""A drawing under a plan: thin grey lines, one path a layer, so that many lines stay light.

Only numbers of our own reading are written: no text, name or style of a file comes through.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from typing import Protocol

from backspan.core.model.site import Point

_GREY = "#7d8287"
#: Digits behind the point of a coordinate, in units of what is drawn on.
_DIGITS = 2


class Run(Protocol):
    """A run of points on a layer; a closed one goes on from its last point to its first."""

    @property
    def layer(self) -> str:
        """The layer it was drawn on."""

    @property
    def points(self) -> tuple[Point, ...]:
        """Its points."""

    @property
    def closed(self) -> bool:
        """Whether it goes on to its first point."""


@dataclass(frozen=True, slots=True)
class Window:
    """What is shown: from its left upper corner across and down; what lies outside is left out."""

    left: float
    top: float
    width: float
    height: float

    @property
    def box(self) -> str:
        """It as a view box."""
        return " ".join(_number(one, 3) for one in (self.left, self.top, self.width, self.height))

    def meets(self, points: Iterable[Point]) -> bool:
        """Whether some of a run may be seen in it."""
        there = list(points)
        across, down = [x for x, _ in there], [y for _, y in there]
        return (
            min(across) <= self.left + self.width
            and max(across) >= self.left
            and min(down) <= self.top + self.height
            and max(down) >= self.top
        )


def under_svg(
    runs: Iterable[Run], placed: Callable[[Point], Point], window: Window, *, pen: float
) -> str:
    """Lines as an SVG document of their own; `placed` tells where a point lies in the window."""
    sides = f'width="{_number(window.width, 3)}" height="{_number(window.height, 3)}"'
    lines = [
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="{window.box}" {sides}>',
        f'<g data-part="underlay" fill="none" stroke="{_GREY}" stroke-width="{_number(pen)}">',
        *_paths(runs, placed, window),
        "</g>",
        "</svg>",
        "",
    ]
    return "\n".join(lines)


def _paths(runs: Iterable[Run], placed: Callable[[Point], Point], window: Window) -> Iterator[str]:
    by_layer: dict[str, list[str]] = {}
    for run in runs:
        points = [placed(one) for one in run.points]
        if len(points) > 1 and window.meets(points):
            by_layer.setdefault(run.layer, []).append(_steps(points, closed=run.closed))
    for steps in by_layer.values():
        yield f'<path d="{"".join(steps)}"/>'


def _steps(points: list[Point], *, closed: bool) -> str:
    first, *rest = (f"{_number(x)} {_number(y)}" for x, y in points)
    return f"M{first}L{' '.join(rest)}{'Z' if closed else ''}"


def _number(value: float, digits: int = _DIGITS) -> str:
    text = f"{value:.{digits}f}".rstrip("0").rstrip(".")
    return "0" if text in {"", "-0"} else text


def matrix(placed: Callable[[Point], Point]) -> str:
    """How a picture is turned, scaled and moved, as the attribute of an SVG element."""
    (left, top), (x, y), (u, v) = (placed(one) for one in ((0.0, 0.0), (1.0, 0.0), (0.0, 1.0)))
    six = (x - left, y - top, u - left, v - top, left, top)
    return f"matrix({' '.join(f'{one:.9g}' for one in six)})"
