"""Finds a place for one label: never over another text, and off the lines where it can.

All in millimetres on paper. A leader that would run through a text or a sign, or meet another
leader, costs more than any way round it.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, field, replace

from backspan.drawings.geometry import (
    Box,
    Quad,
    Segment,
    apart,
    corners,
    direction,
    grown,
    meet,
    moved,
    overlap,
    passes,
    text_quad,
)
from backspan.drawings.lettering import ASCENT, DESCENT, LEADING, text_width
from backspan.drawings.rooms import (
    Cell,
    Room,
    box_around,
    cells_along,
    cells_in,
    parts_of,
    room_of,
    within,
)
from backspan.drawings.scene import Align, Layer, Point, Text
from backspan.drawings.spots import Spot, around

CROSSING_COSTS = 6.0
"""How far, in millimetres, a label moves away rather than lie on one line."""

LEADER_CROSSING_COSTS = 3.0
LEADERS_MEET_COSTS = 60.0
OVER_TEXT_COSTS = 90.0
LENGTH_COSTS = 0.4
"""What a millimetre of leader costs besides how far the label stands away."""

LEADER_FROM = 4.0
NEAR_COSTS = 30.0
MOST_COSTS = 66.0
"""A label that would stand worse than this is left out and counted: less than what it costs a
leader to run through a text or to meet another leader."""

FAR_COSTS = 20.0
ANCHORED = 0.6
"""A leader may run into the sign whose middle is this close to its end: it points at that.
Leaders whose ends lie as close point at the same thing, and may meet there."""

FORM_COSTS = 1.5
"""What the next wording of a label costs against the one before."""

CLEAR = 0.6
OFF_LINES = 0.8
"""How close a label comes to a line before it counts as lying on it."""


@dataclass(frozen=True, slots=True)
class Label:
    """Lines of text that stand together; the first may be bold.

    `others` are other ways to break or shorten them, taken where that stands better. Without
    `led` no leader runs from the label to what it names.
    """

    lines: tuple[str, ...]
    height: float
    layer: Layer = Layer.LABEL
    bold: bool = False
    masked: bool = True
    others: tuple[tuple[str, ...], ...] = ()
    led: bool = True

    @property
    def forms(self) -> tuple[Label, ...]:
        """The label in each of its wordings, the one liked best first."""
        return (self, *(replace(self, lines=lines) for lines in self.others))


@dataclass(frozen=True, slots=True)
class Placed:
    """A label at its place, and the line from it to what it names where it stands away."""

    texts: tuple[Text, ...]
    box: Box
    leader: Segment | None
    cost: float = 0.0


@dataclass(slots=True)
class Placer:
    """The paper filled so far: texts that nothing may cover, lines better left clear."""

    area: Box
    unplaced: list[Label] = field(default_factory=list)
    _texts: dict[Cell, list[Room]] = field(default_factory=dict)
    _lines: dict[Cell, list[tuple[Segment, int]]] = field(default_factory=dict)
    _leaders: dict[Cell, list[Segment]] = field(default_factory=dict)
    _spots: dict[tuple[Point, bool], tuple[Spot, ...]] = field(default_factory=dict)
    """The usual places around a target, near and anywhere: many a label is placed anew."""

    def block(self, quad: Quad) -> None:
        """Keep this room for the text that stands there."""
        room = room_of(quad)
        for cell in cells_in(room.box):
            self._texts.setdefault(cell, []).append(room)

    def cross(self, segments: Iterable[Segment], *, weight: int = 1) -> None:
        """Keep labels off these lines where that is possible; heavy ones count `weight` times."""
        for segment in segments:
            for one, other in parts_of(segment):
                for cell in cells_in(box_around(one, other)):
                    self._lines.setdefault(cell, []).append(((one, other), weight))

    def free(self, quad: Quad) -> bool:
        """Whether a text may stand here: inside the area, over no other text."""
        room = room_of(quad)
        if room.upright:
            return self._open(room.box)
        if not within(room.box, self.area):
            return False
        return not any(
            other.covers(room) for cell in cells_in(room.box) for other in self._texts.get(cell, ())
        )

    def _open(self, box: Box) -> bool:
        """As `free`, for an upright box."""
        if not within(box, self.area):
            return False
        for cell in cells_in(box):
            for other in self._texts.get(cell, ()):
                if apart(other.box, box) or not (
                    other.upright or overlap(other.quad, corners(box))
                ):
                    continue
                return False
        return True

    def place(
        self, label: Label, target: Point, spots: Iterable[Spot] = (), *, near: bool = False
    ) -> Placed | None:
        """The label at the best of the spots given, or else around `target`; None without room.

        With `near` it is not put far away. A label that finds no room is kept in `unplaced`, so
        that the sheet can say so.
        """
        best = self.best(label, target, spots, near=near)
        if best is None:
            self.unplaced.append(label)
        else:
            self.keep(best)
        return best

    def best(
        self,
        label: Label,
        target: Point,
        spots: Iterable[Spot] = (),
        *,
        near: bool = False,
        under: float = math.inf,
    ) -> Placed | None:
        """As `place`, but nothing is kept: where the label would stand by now.

        None also where no place costs less than `under`.
        """
        most = min(NEAR_COSTS if near else MOST_COSTS, under)
        given = sorted(spots, key=lambda spot: spot.cost)
        best = self._best(label, target, given, most=most)
        if best is None or best.cost > FAR_COSTS:
            best = self._best(label, target, self._usual(target), most=most, than=best)
        if not near and (best is None or best.cost > FAR_COSTS):
            far = self._usual(target, anywhere=True)
            best = self._best(label, target, far, most=most, than=best)
        return best

    def _usual(self, target: Point, *, anywhere: bool = False) -> tuple[Spot, ...]:
        """The places around a target, or all over the paper, the cheapest first."""
        known = self._spots.get((target, anywhere))
        if known is None:
            found = self._anywhere(target) if anywhere else around(target)
            known = tuple(sorted(found, key=lambda spot: spot.cost))
            self._spots[target, anywhere] = known
        return known

    def keep(self, placed: Placed) -> None:
        """Keep the room of a placed label and of its leader."""
        self.block(corners(placed.box))
        if placed.leader is not None:
            for cell in cells_along(placed.leader):
                self._leaders.setdefault(cell, []).append(placed.leader)

    def lift(self, placed: Placed) -> None:
        """Give back the room of a label that was kept."""
        room = room_of(corners(placed.box))
        for cell in cells_in(room.box):
            self._texts[cell].remove(room)
        if placed.leader is not None:
            for cell in cells_along(placed.leader):
                self._leaders[cell].remove(placed.leader)

    def fix(self, texts: Sequence[Text]) -> None:
        """Keep the room of texts whose place is already settled."""
        for text in texts:
            self.block(text_quad(text))

    def _best(
        self,
        label: Label,
        target: Point,
        spots: Sequence[Spot],
        *,
        most: float,
        than: Placed | None = None,
    ) -> Placed | None:
        best, best_cost = than, most if than is None else than.cost
        forms = [(form, label_size(form), FORM_COSTS * at) for at, form in enumerate(label.forms)]
        for spot in spots:
            if spot.cost >= best_cost:
                break
            for form, size, dearer in forms:
                box = _box(size, spot)
                if spot.cost + dearer >= best_cost or not self._open(_grown(box)):
                    continue
                cost = spot.cost + dearer + self._covered(box, most=best_cost)
                leader = _leader(box, spot.points_at or target) if label.led else None
                if leader is not None and cost < best_cost:
                    cost += self._led(leader, most=best_cost - cost)
                if cost < best_cost:
                    best, best_cost = Placed(_texts(form, box), box, leader, cost), cost
        return best

    def _covered(self, box: Box, *, most: float) -> float:
        """What a label costs for the lines and leaders that it lies on."""
        around_it, cells = grown(box, OFF_LINES), cells_in(grown(box, OFF_LINES))
        leaders = {leader for cell in cells for leader in self._leaders.get(cell, ())}
        cost = OVER_TEXT_COSTS * sum(1 for leader in leaders if passes(leader, around_it))
        if cost >= most:
            return cost
        near = {line for cell in cells for line in self._lines.get(cell, ())}
        return cost + CROSSING_COSTS * sum(
            weight for line, weight in near if passes(line, around_it)
        )

    def _led(self, leader: Segment, *, most: float) -> float:
        """What a leader costs: its length, what it runs through and what it crosses."""
        cost = LENGTH_COSTS * math.dist(*leader)
        if cost >= most:
            return cost
        cells = cells_along(leader)
        rooms = {room for cell in cells for room in self._texts.get(cell, ())}
        cost += OVER_TEXT_COSTS * sum(
            1
            for room in rooms
            if passes(leader, room.box)
            and overlap(leader, room.quad)
            and math.dist(room.middle, leader[1]) > ANCHORED
        )
        others = {other for cell in cells for other in self._leaders.get(cell, ())}
        cost += LEADERS_MEET_COSTS * sum(
            1
            for other in others
            if math.dist(other[1], leader[1]) > ANCHORED and meet(other, leader)
        )
        if cost >= most:
            return cost
        lines = {line for cell in cells for line in self._lines.get(cell, ())}
        short = _short(leader)
        return cost + LEADER_CROSSING_COSTS * sum(
            weight for line, weight in lines if meet(line, short)
        )

    def _anywhere(self, target: Point) -> Iterator[Spot]:
        left, bottom, right, top = self.area
        across, up = int((right - left) // 8) + 1, int((top - bottom) // 5) + 1
        for column in range(across):
            for row in range(up):
                at = (left + column * 8.0, bottom + row * 5.0)
                distance = math.dist(at, target)
                if distance <= MOST_COSTS:
                    yield Spot(at, 1, 1, distance)


def stands(label: Label, spot: Spot) -> Placed:
    """The label at a place, whatever else stands there."""
    box = _box(label_size(label), spot)
    return Placed(_texts(label, box), box, None)


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


def _short(leader: Segment) -> Segment:
    """A leader without its very end: where it touches the line that it names, it crosses none."""
    start, end = leader
    length = math.dist(start, end)
    return start, moved(start, along=direction(start, end), by=max(length - ANCHORED, 0.0))


def _clamp(value: float, box: Box) -> float:
    return min(max(value, box[0]), box[2])


def _grown(box: Box) -> Box:
    return (box[0] - CLEAR, box[1] - CLEAR / 2, box[2] + CLEAR, box[3] + CLEAR / 2)
