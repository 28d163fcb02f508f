"""Collects the shapes of a drawing while it is made, and keeps its labels apart.

Shapes are given in metres, places of labels in millimetres on paper; a canvas knows both.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence
from contextlib import contextmanager
from dataclasses import replace
from enum import IntEnum
from itertools import islice, pairwise
from types import MappingProxyType

from backspan.core.words import ENGLISH, Language
from backspan.drawings.arranging import Request, arrange
from backspan.drawings.dimensions import DimensionLines, dimension_lines
from backspan.drawings.geometry import (
    Box,
    angle_of,
    corners,
    direction,
    left_of,
    moved,
    readable,
    text_quad,
    turned,
)
from backspan.drawings.lettering import ASCENT, DESCENT, plain, text_width
from backspan.drawings.paper import Frame
from backspan.drawings.placing import Label, Placed, Placer
from backspan.drawings.scene import (
    Align,
    Dimension,
    Layer,
    Line,
    Point,
    Polygon,
    Polyline,
    Shape,
    Symbol,
    SymbolName,
    Text,
)
from backspan.drawings.spots import Spot, around
from backspan.drawings.things import Thing

TEXT = 2.5
"""Height of a capital letter in millimetres: the least that survives a copy (common practice)."""

ARROW = 2.0
ABOVE_LINE = 1.0


_WEIGHTS = MappingProxyType(
    {
        Layer.BEAM: 6,
        Layer.COUNTERWEIGHT: 6,
        Layer.DROP: 3,
        Layer.ENVELOPE: 3,
        Layer.FULCRUM: 3,
        Layer.JOINT: 2,
        Layer.PLATE: 2,
        Layer.SUSPENSION: 3,
        Layer.TIEBACK: 4,
    }
)
"""How much more than a thin line it counts when a label lies on one of these."""


class Rank(IntEnum):
    """Which labels get their places first."""

    POINT = 1
    NAME = 2
    PLACE = 3


class Canvas:
    """The shapes drawn so far and the labels placed among them."""

    def __init__(
        self, frame: Frame, area: Box, *, text: float = TEXT, language: Language = ENGLISH
    ) -> None:
        """Start a drawing that lies on the sheet as `frame` says and stays within `area`.

        `text` is the height of the capitals of its labels, in millimetres; what is written among
        them is in `language`.
        """
        self.frame = frame
        self.text = text
        self.language = language
        self.placer = Placer(area)
        self.most_spots: int | None = None
        """So many of the places that are proposed for a label are looked at; None for all."""
        self.shapes: list[Shape] = []
        self._waiting: list[tuple[Rank, Request, Thing | None]] = []
        self._of: Thing | None = None

    @contextmanager
    def of(self, thing: Thing | None) -> Iterator[None]:
        """What is drawn and written meanwhile shows this thing, unless a shape says another."""
        before, self._of = self._of, thing
        try:
            yield
        finally:
            self._of = before

    def add(self, *shapes: Shape) -> None:
        """Draw shapes; labels will keep off their lines, and never cover a sign or a text."""
        for shape in shapes:
            self.shapes.append(self._shown(shape))
            if isinstance(shape, Line):
                self._keep_off(shape.layer, (shape.start, shape.end))
            elif isinstance(shape, Polyline):
                self._keep_off(shape.layer, shape.points)
            elif isinstance(shape, Polygon) and shape.outlined:
                self._keep_off(shape.layer, (*shape.points, shape.points[0]))
            elif isinstance(shape, Symbol) and shape.name is not SymbolName.ARROW:
                x, y = self.frame.to_paper(shape.at)
                half = shape.size * 0.5
                self.placer.block(corners((x - half, y - half, x + half, y + half)))
            elif isinstance(shape, Text):
                self.placer.block(text_quad(self._on_paper(shape)))

    def label(
        self,
        lines: Sequence[str],
        target: Point,
        *,
        spots: Iterable[Spot] = (),
        bold: bool = False,
        layer: Layer = Layer.LABEL,
        leader: bool = True,
        near: bool = False,
    ) -> Placed | None:
        """Write lines beside `target` (metres), with a leader where they stand away from it.

        With `near` they are left out, and counted, where there is no room close by.
        """
        label = Label(_plain(lines), self.text, layer, bold=bold, led=leader)
        at = self.frame.to_paper(target)
        placed = self.placer.place(label, at, spots, near=near)
        if placed is not None:
            self._draw(placed, self._of)
        return placed

    def later(
        self,
        lines: Sequence[str],
        target: Point,
        *,
        spots: Iterable[Spot] = (),
        bold: bool = False,
        rank: Rank = Rank.NAME,
        near: bool = False,
        others: Iterable[Sequence[str]] = (),
        led: bool = True,
    ) -> None:
        """As `label`, but written when all lines are drawn, in the order of the ranks.

        `others` are other wordings, taken where they stand better; without `led` no leader is
        drawn.
        """
        words = tuple(_plain(each) for each in others)
        label = Label(_plain(lines), self.text, bold=bold, others=words, led=led)
        places = tuple(islice(spots, self.most_spots))
        request = Request(label, self.frame.to_paper(target), places, near)
        self._waiting.append((rank, request, self._of))

    def write(self, texts: Iterable[Text]) -> None:
        """Write texts whose place on paper is settled, and keep their room."""
        for text in texts:
            self.placer.block(text_quad(text))
            self.shapes.append(self._in_drawing(text, self._of))

    def write_labels(self) -> None:
        """Write the labels that waited."""
        waiting = sorted(self._waiting, key=lambda each: each[0])
        self._waiting.clear()
        labels = arrange(self.placer, [request for _, request, _ in waiting])
        for placed, (_, _, of) in zip(labels, waiting, strict=True):
            if placed is not None:
                self._draw(placed, of)

    def arrow(self, layer: Layer, start: Point, end: Point) -> None:
        """A line with an arrow head at its end."""
        self.add(Line(layer, start, end))
        angle = angle_of(direction(start, end))
        self.shapes.append(Symbol(Layer.LABEL, SymbolName.ARROW, end, ARROW, angle))

    def reserve(
        self, start: Point, end: Point, *, line_through: Point, angle: float
    ) -> DimensionLines:
        """Keep texts off the lines of a dimension (metres), be it drawn now or later."""
        drawn = dimension_lines(
            self.frame.to_paper(start),
            self.frame.to_paper(end),
            line_through=self.frame.to_paper(line_through),
            angle=angle,
        )
        self.placer.cross(drawn.extensions, weight=3)
        # A text on it would be read as the length of this one.
        self.placer.cross((drawn.line,), weight=3)
        return drawn

    def dimension(
        self,
        start: Point,
        end: Point,
        *,
        line_through: Point,
        angle: float,
        lines: Sequence[str],
        others: Iterable[Sequence[str]] = (),
    ) -> None:
        """A dimension between two points (metres); its text on the line, or beside it if longer.

        The text stands above the line; where that is too long, its second line stands below.
        Beside it the `others`, other ways to break it, are taken where they stand better.
        """
        drawn = self.reserve(start, end, line_through=line_through, angle=angle)
        texts = (
            self._on_line(drawn.line, (", ".join(lines),))
            or self._on_line(drawn.line, lines)
            or self._beside_line(drawn.line, lines, others)
        )
        if not texts:
            return
        first, *further = (self._in_drawing(text, self._of) for text in texts)
        self.shapes.append(
            Dimension(Layer.DIMENSION, start, end, line_through, angle, first, of=self._of)
        )
        self.shapes += further

    def _on_line(self, line: tuple[Point, Point], lines: Sequence[str]) -> tuple[Text, ...]:
        along = direction(*line)
        angle = readable(angle_of(along))
        up = left_of(turned((1.0, 0.0), degrees=angle))
        middle = ((line[0][0] + line[1][0]) / 2, (line[0][1] + line[1][1]) / 2)
        texts = []
        for row, words in enumerate(lines):
            by = (
                ABOVE_LINE + self.text * DESCENT
                if row == 0
                else -self.text * ASCENT * row - ABOVE_LINE / 2
            )
            at = moved(middle, along=up, by=by)
            texts.append(
                Text(Layer.DIMENSION, at, plain(words), self.text, Align.MIDDLE, angle, masked=True)
            )
        room = math.dist(*line)
        fits = all(text_width(text.text, height=self.text) + 2.0 <= room for text in texts)
        if not fits or not all(self.placer.free(text_quad(text)) for text in texts):
            return ()
        self.placer.fix(texts)
        return tuple(texts)

    def _beside_line(
        self, line: tuple[Point, Point], lines: Sequence[str], others: Iterable[Sequence[str]]
    ) -> tuple[Text, ...]:
        along = direction(*line)
        middle = ((line[0][0] + line[1][0]) / 2, (line[0][1] + line[1][1]) / 2)
        spots = [
            Spot(
                moved(end, along=along, by=sign * away),
                round(sign * along[0]),
                round(sign * along[1]),
                away / 2,
                points_at=end,
            )
            for away in (2.5, 6.0, 10.0, 15.0)
            for end, sign in ((line[0], -1.0), (line[1], 1.0))
        ]
        spots += [Spot(spot.at, spot.across, spot.up, 4.0 + spot.cost) for spot in around(middle)]
        forms = tuple(_plain(each) for each in others)
        label = Label(_plain(lines), self.text, Layer.DIMENSION, others=forms)
        placed = self.placer.place(label, middle, spots)
        if placed is None:
            return ()
        self._leader(placed)
        return placed.texts

    def _draw(self, placed: Placed, of: Thing | None) -> None:
        self.shapes += [self._in_drawing(text, of) for text in placed.texts]
        self._leader(placed)

    def _leader(self, placed: Placed) -> None:
        if placed.leader is None:
            return
        start, end = (self.frame.to_drawing(point) for point in placed.leader)
        self.shapes.append(Line(Layer.LABEL, start, end))
        angle = angle_of(direction(start, end))
        self.shapes.append(Symbol(Layer.LABEL, SymbolName.ARROW, end, ARROW, angle))

    def _keep_off(self, layer: Layer, points: Sequence[Point]) -> None:
        on_paper = [self.frame.to_paper(point) for point in points]
        self.placer.cross(pairwise(on_paper), weight=_WEIGHTS.get(layer, 1))

    def _shown(self, shape: Shape) -> Shape:
        of = shape.of or self._of
        return shape if of is shape.of else replace(shape, of=of)

    def _in_drawing(self, text: Text, of: Thing | None) -> Text:
        return _text_at(text, self.frame.to_drawing(text.at), of)

    def _on_paper(self, text: Text) -> Text:
        return _text_at(text, self.frame.to_paper(text.at), text.of)


def _plain(lines: Sequence[str]) -> tuple[str, ...]:
    return tuple(plain(line) for line in lines)


def _text_at(text: Text, at: Point, of: Thing | None) -> Text:
    return Text(
        text.layer,
        at,
        text.text,
        text.height,
        text.align,
        text.angle,
        bold=text.bold,
        masked=text.masked,
        of=of,
    )
