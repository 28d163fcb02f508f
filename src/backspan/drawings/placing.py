"""Finds a place for each label: never over another text, and off the lines where it can.

All in millimetres on paper. Greedy: what is placed first keeps its place, so the labels that
matter most come first.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, field
from itertools import pairwise

from backspan.drawings.geometry import (
    Box,
    Quad,
    Segment,
    bounds,
    corners,
    grown,
    moved,
    overlap,
    text_quad,
    turned,
)
from backspan.drawings.lettering import ASCENT, DESCENT, LEADING, text_width
from backspan.drawings.scene import Align, Layer, Point, Text

CELL = 15.0
CROSSING_COSTS = 6.0
"""How far, in millimetres, a label moves away rather than lie on one line."""

LEADER_CROSSING_COSTS = 3.0
OVER_TEXT_COSTS = 15.0
LEADER_FROM = 4.0
CLEAR = 0.6
OFF_LINES = 0.8
"""How close a label comes to a line before it counts as lying on it."""

_DISTANCES = (0.0, 2.0, 4.5, 8.0, 12.0, 17.0, 24.0, 32.0, 42.0, 55.0)
_SIDES = ((1, 0), (1, 1), (-1, 0), (-1, 1), (0, 1), (1, -1), (-1, -1), (0, -1))


@dataclass(frozen=True, slots=True)
class Spot:
    """A place that would do: the label stands to one side of `at`; `cost` says how well it does."""

    at: Point
    across: int
    up: int
    cost: float = 0.0
    points_at: Point | None = None
    """Where a leader from here ends, if not at what the label was asked for."""


@dataclass(frozen=True, slots=True)
class Label:
    """Lines of text that stand together; the first may be bold."""

    lines: tuple[str, ...]
    height: float
    layer: Layer = Layer.LABEL
    bold: bool = False
    masked: bool = True


@dataclass(frozen=True, slots=True)
class Placed:
    """A label at its place, and the line from it to what it names where it stands away."""

    texts: tuple[Text, ...]
    box: Box
    leader: Segment | None


@dataclass(slots=True)
class Placer:
    """The paper filled so far: texts that nothing may cover, lines better left clear."""

    area: Box
    unplaced: list[Label] = field(default_factory=list)
    _texts: dict[tuple[int, int], list[Quad]] = field(default_factory=dict)
    _lines: dict[tuple[int, int], list[Segment]] = field(default_factory=dict)

    def block(self, quad: Quad) -> None:
        """Keep this room for the text that stands there."""
        for cell in _cells(bounds(quad)):
            self._texts.setdefault(cell, []).append(quad)

    def cross(self, segments: Iterable[Segment]) -> None:
        """Keep labels off these lines where that is possible."""
        for start, end in segments:
            steps = max(1, math.ceil(math.dist(start, end) / CELL))
            parts = [
                (
                    start[0] + (end[0] - start[0]) * step / steps,
                    start[1] + (end[1] - start[1]) * step / steps,
                )
                for step in range(steps + 1)
            ]
            for one, other in pairwise(parts):
                for cell in _cells(bounds((one, other))):
                    self._lines.setdefault(cell, []).append((one, other))

    def free(self, quad: Quad) -> bool:
        """Whether a text may stand here: inside the area, over no other text."""
        around = bounds(quad)
        if around is None or not _within(around, self.area):
            return False
        return not any(
            overlap(quad, other) for cell in _cells(around) for other in self._texts.get(cell, ())
        )

    def place(self, label: Label, target: Point, spots: Iterable[Spot] = ()) -> Placed | None:
        """The label at the best of the spots given, or else around `target`; None without room.

        A label that finds no room is kept in `unplaced`, so that the sheet can say so.
        """
        for choice in (tuple(spots), tuple(around(target)), tuple(self._anywhere(target))):
            best = self._best(label, target, choice)
            if best is not None:
                self._keep(best)
                return best
        self.unplaced.append(label)
        return None

    def fix(self, texts: Sequence[Text]) -> None:
        """Keep the room of texts whose place is already settled."""
        for text in texts:
            self.block(text_quad(text))

    def _best(self, label: Label, target: Point, spots: Sequence[Spot]) -> Placed | None:
        best, best_cost = None, math.inf
        for spot in sorted(spots, key=lambda spot: spot.cost):
            if spot.cost >= best_cost:
                break
            box = _box(label, spot)
            if not self.free(corners(_grown(box))):
                continue
            leader = _leader(box, spot.points_at or target)
            cost = spot.cost + CROSSING_COSTS * self._crossed(corners(grown(box, OFF_LINES)))
            if leader is not None and cost < best_cost:
                # Texts are written over lines, so a leader behind a text is ugly, not unreadable.
                cost += OVER_TEXT_COSTS * self._over_text(leader)
                cost += LEADER_CROSSING_COSTS * self._crossed(leader)
            if cost < best_cost:
                best, best_cost = Placed(_texts(label, box), box, leader), cost
        return best

    def _keep(self, placed: Placed) -> None:
        self.block(corners(placed.box))
        if placed.leader is not None:
            self.cross((placed.leader,))

    def _over_text(self, leader: Segment) -> int:
        near = {quad for cell in _cells(bounds(leader)) for quad in self._texts.get(cell, ())}
        return sum(1 for quad in near if overlap(leader, quad))

    def _crossed(self, outline: Sequence[Point]) -> int:
        near = {line for cell in _cells(bounds(outline)) for line in self._lines.get(cell, ())}
        return sum(1 for line in near if overlap(line, outline))

    def _anywhere(self, target: Point) -> Iterator[Spot]:
        left, bottom, right, top = self.area
        across, up = int((right - left) // 6) + 1, int((top - bottom) // 4) + 1
        for column in range(across):
            for row in range(up):
                at = (left + column * 6.0, bottom + row * 4.0)
                yield Spot(at, 1, 1, math.dist(at, target))


def around(target: Point, *, away: float = 0.0) -> Iterator[Spot]:
    """Spots on all sides of a point, near ones first; `away` is the least distance."""
    for distance in _DISTANCES:
        for preference, (across, up) in enumerate(_SIDES):
            length = math.hypot(across, up)
            out = away + distance + 1.0
            at = (target[0] + across * out / length, target[1] + up * out / length)
            yield Spot(at, across, up, distance + preference * 0.3)


def beside(target: Point, *, side: Point, away: float = 0.0) -> Iterator[Spot]:
    """Spots on one side of a point and up to 60 degrees to either hand, near ones first."""
    for distance in _DISTANCES:
        for turn in (0.0, 30.0, -30.0, 60.0, -60.0):
            out = turned(side, degrees=turn)
            at = moved(target, along=out, by=away + distance + 1.0)
            across, up = _sign(out[0]), _sign(out[1])
            yield Spot(at, across, up, distance + abs(turn) / 30.0)


def label_size(label: Label) -> tuple[float, float]:
    """Width and height of a label on paper."""
    width = max(text_width(line, height=label.height, bold=label.bold) for line in label.lines)
    return width, label.height * (ASCENT + DESCENT + LEADING * (len(label.lines) - 1))


def _sign(value: float) -> int:
    small = 0.38  # within 22 degrees of the axis counts as straight on
    return 0 if abs(value) < small else (1 if value > 0.0 else -1)


def _box(label: Label, spot: Spot) -> Box:
    width, height = label_size(label)
    left = spot.at[0] + (spot.across - 1) * width / 2
    bottom = spot.at[1] + (spot.up - 1) * height / 2
    return (left, bottom, left + width, bottom + height)


def _texts(label: Label, box: Box) -> tuple[Text, ...]:
    first = box[3] - label.height * ASCENT
    return tuple(
        Text(
            label.layer,
            (box[0], first - row * label.height * LEADING),
            line,
            label.height,
            Align.START,
            bold=label.bold and row == 0,
            masked=label.masked,
        )
        for row, line in enumerate(label.lines)
    )


def _leader(box: Box, target: Point) -> Segment | None:
    left, bottom, right, top = box
    inner = (left + 0.8, bottom + 0.8, right - 0.8, top - 0.8)
    if left <= target[0] <= right and bottom <= target[1] <= top:
        return None
    middle = (bottom + top) / 2
    start = (
        left if target[0] < left else right if target[0] > right else _clamp(target[0], inner),
        middle if not left <= target[0] <= right else (bottom if target[1] < bottom else top),
    )
    return (start, target) if math.dist(start, target) > LEADER_FROM else None


def _clamp(value: float, box: Box) -> float:
    return min(max(value, box[0]), box[2])


def _grown(box: Box) -> Box:
    return (box[0] - CLEAR, box[1] - CLEAR / 2, box[2] + CLEAR, box[3] + CLEAR / 2)


def _within(box: Box, area: Box) -> bool:
    return box[0] >= area[0] and box[1] >= area[1] and box[2] <= area[2] and box[3] <= area[3]


def _cells(box: Box | None) -> list[tuple[int, int]]:
    if box is None:
        return []
    left, bottom = math.floor(box[0] / CELL), math.floor(box[1] / CELL)
    right, top = math.floor(box[2] / CELL), math.floor(box[3] / CELL)
    return [(column, row) for column in range(left, right + 1) for row in range(bottom, top + 1)]
