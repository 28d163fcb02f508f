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
    apart,
    corners,
    grown,
    meet,
    overlap,
    passes,
    text_quad,
)
from backspan.drawings.lettering import ASCENT, DESCENT, LEADING, text_width
from backspan.drawings.scene import Align, Layer, Point, Text
from backspan.drawings.spots import Spot, around

CELL = 15.0
CROSSING_COSTS = 6.0
"""How far, in millimetres, a label moves away rather than lie on one line."""

LEADER_CROSSING_COSTS = 3.0
OVER_TEXT_COSTS = 15.0
LEADER_FROM = 4.0
NEAR_COSTS = 30.0
FURTHEST = 110.0
CLEAR = 0.6
OFF_LINES = 0.8
"""How close a label comes to a line before it counts as lying on it."""


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
    cost: float = 0.0


@dataclass(frozen=True, slots=True)
class _Room:
    """The room of one text: its outline, the upright box around it, whether they are the same."""

    quad: Quad
    box: Box
    upright: bool

    def covers(self, other: _Room) -> bool:
        """Whether two texts would lie over one another."""
        if apart(self.box, other.box):
            return False
        return (self.upright and other.upright) or overlap(self.quad, other.quad)


def _room(quad: Quad) -> _Room:
    xs, ys = {point[0] for point in quad}, {point[1] for point in quad}
    box = (min(xs), min(ys), max(xs), max(ys))
    return _Room(quad, box, len(xs) == 2 and len(ys) == 2)  # noqa: PLR2004 - two of each


@dataclass(slots=True)
class Placer:
    """The paper filled so far: texts that nothing may cover, lines better left clear."""

    area: Box
    unplaced: list[Label] = field(default_factory=list)
    _texts: dict[tuple[int, int], list[_Room]] = field(default_factory=dict)
    _lines: dict[tuple[int, int], list[tuple[Segment, int]]] = field(default_factory=dict)

    def block(self, quad: Quad) -> None:
        """Keep this room for the text that stands there."""
        room = _room(quad)
        for cell in _cells(room.box):
            self._texts.setdefault(cell, []).append(room)

    def cross(self, segments: Iterable[Segment], *, weight: int = 1) -> None:
        """Keep labels off these lines where that is possible; heavy ones count `weight` times."""
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
                for cell in _cells(_around(one, other)):
                    self._lines.setdefault(cell, []).append(((one, other), weight))

    def free(self, quad: Quad) -> bool:
        """Whether a text may stand here: inside the area, over no other text."""
        room = _room(quad)
        if not _within(room.box, self.area):
            return False
        return not any(
            other.covers(room) for cell in _cells(room.box) for other in self._texts.get(cell, ())
        )

    def place(
        self, label: Label, target: Point, spots: Iterable[Spot] = (), *, near: bool = False
    ) -> Placed | None:
        """The label at the best of the spots given, or else around `target`; None without room.

        With `near` it is not put far away. A label that finds no room is kept in `unplaced`, so
        that the sheet can say so.
        """
        best = self._best(label, target, tuple(spots)) or self._best(
            label, target, tuple(around(target))
        )
        if best is None and not near:
            best = self._best(label, target, tuple(self._anywhere(target)))
        if best is None or (near and best.cost > NEAR_COSTS):
            self.unplaced.append(label)
            return None
        self._keep(best)
        return best

    def fix(self, texts: Sequence[Text]) -> None:
        """Keep the room of texts whose place is already settled."""
        for text in texts:
            self.block(text_quad(text))

    def _best(self, label: Label, target: Point, spots: Sequence[Spot]) -> Placed | None:
        best, best_cost = None, math.inf
        size = label_size(label)
        for spot in sorted(spots, key=lambda spot: spot.cost):
            if spot.cost >= best_cost:
                break
            box = _box(size, spot)
            if not self.free(corners(_grown(box))):
                continue
            leader = _leader(box, spot.points_at or target)
            cost = spot.cost + CROSSING_COSTS * self._crossed(grown(box, OFF_LINES))
            if leader is not None and cost < best_cost:
                # Texts are written over lines, so a leader behind a text is ugly, not unreadable.
                cost += OVER_TEXT_COSTS * self._over_text(leader)
                cost += LEADER_CROSSING_COSTS * self._met(leader)
            if cost < best_cost:
                best, best_cost = Placed(_texts(label, box), box, leader, cost), cost
        return best

    def _keep(self, placed: Placed) -> None:
        self.block(corners(placed.box))
        if placed.leader is not None:
            self.cross((placed.leader,))

    def _over_text(self, leader: Segment) -> int:
        cells = _cells(_around(*leader))
        near = {room for cell in cells for room in self._texts.get(cell, ())}
        return sum(1 for room in near if passes(leader, room.box) and overlap(leader, room.quad))

    def _crossed(self, box: Box) -> int:
        """How many lines run through a box, heavy ones counted more than once."""
        near = {line for cell in _cells(box) for line in self._lines.get(cell, ())}
        return sum(weight for line, weight in near if passes(line, box))

    def _met(self, leader: Segment) -> int:
        """How many lines a leader crosses, heavy ones counted more than once."""
        near = {line for cell in _cells(_around(*leader)) for line in self._lines.get(cell, ())}
        return sum(weight for line, weight in near if meet(line, leader))

    def _anywhere(self, target: Point) -> Iterator[Spot]:
        left, bottom, right, top = self.area
        across, up = int((right - left) // 8) + 1, int((top - bottom) // 5) + 1
        for column in range(across):
            for row in range(up):
                at = (left + column * 8.0, bottom + row * 5.0)
                distance = math.dist(at, target)
                if distance <= FURTHEST:
                    yield Spot(at, 1, 1, distance)


def label_size(label: Label) -> tuple[float, float]:
    """Width and height of a label on paper."""
    width = max(text_width(line, height=label.height, bold=label.bold) for line in label.lines)
    return width, label.height * (ASCENT + DESCENT + LEADING * (len(label.lines) - 1))


def _box(size: tuple[float, float], spot: Spot) -> Box:
    width, height = size
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


def _around(one: Point, other: Point) -> Box:
    return (
        min(one[0], other[0]),
        min(one[1], other[1]),
        max(one[0], other[0]),
        max(one[1], other[1]),
    )


def _cells(box: Box) -> list[tuple[int, int]]:
    left, bottom = math.floor(box[0] / CELL), math.floor(box[1] / CELL)
    right, top = math.floor(box[2] / CELL), math.floor(box[3] / CELL)
    return [(column, row) for column in range(left, right + 1) for row in range(bottom, top + 1)]
