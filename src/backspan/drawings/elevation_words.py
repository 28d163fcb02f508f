"""The words of a strip on an elevation: id, sign and word of its answer, its standing, the rest."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from backspan.core.words import Language
from backspan.drawings.canvas import TEXT, Canvas
from backspan.drawings.geometry import Box, corners, corners_around, grown, text_quad
from backspan.drawings.lettering import ASCENT, DESCENT, LEADING, plain, text_width, wrapped
from backspan.drawings.plan_drops import SIGN, TITLE, Strip
from backspan.drawings.scene import Align, Layer, Point, Polygon, Shape, Text
from backspan.drawings.spots import Spot
from backspan.drawings.symbols import answer_layer, answer_sign

SIDE = 1.0
"""Paper kept at the sides of a strip, in millimetres."""

BETWEEN = 1.6
"""Paper between what a strip says, in millimetres."""

FRAME = 0.9


@dataclass(frozen=True, slots=True)
class Row:
    """Words of a strip; a frame stands around those of its standing."""

    words: str
    framed: bool = False


@dataclass(slots=True)
class _Column:
    """What stands in a strip, from its top down; in millimetres on paper."""

    left: float
    right: float
    y: float
    texts: list[Text]
    frames: list[Box]
    sign: Point | None = None

    @property
    def middle(self) -> float:
        return (self.left + self.right) / 2

    def lines(
        self, words: str, *, height: float = TEXT, bold: bool = False, layer: Layer = Layer.LABEL
    ) -> None:
        for line in wrapped(words, room=self.right - self.left, height=height, bold=bold):
            self.y -= height * ASCENT
            at = (self.middle, self.y)
            self.texts.append(Text(layer, at, line, height, Align.MIDDLE, bold=bold))
            self.y -= height * (LEADING - ASCENT)
        self.y -= BETWEEN

    def framed(self, words: str) -> None:
        first = len(self.texts)
        self.y -= FRAME
        self.lines(words, bold=True)
        quads = [text_quad(text) for text in self.texts[first:]]
        xs = [x for quad in quads for x, _ in quad]
        ys = [y for quad in quads for _, y in quad]
        self.frames.append(grown((min(xs), min(ys), max(xs), max(ys)), FRAME))
        self.y -= FRAME


def in_strip(
    canvas: Canvas, one: Strip, rows: Sequence[Row], *, edges: tuple[float, float], top: float
) -> bool:
    """Write the words of a strip between its edges (mm) from `top` down; False without room."""
    column = _Column(edges[0] + SIDE, edges[1] - SIDE, top, [], [])
    room = column.right - column.left
    parts = [word for words in _all(one, rows, canvas.language) for word in words.split()]
    if max(text_width(word, height=TEXT, bold=True) for word in parts) > room:
        return False
    if text_width(plain(one.drop.id), height=TITLE, bold=True) > room:
        return False
    column.lines(one.drop.id, height=TITLE, bold=True)
    _answer(column, one, answer_words(one, canvas.language), room)
    for row in rows:
        if row.framed:
            column.framed(row.words)
        else:
            column.lines(row.words)
    if not all(canvas.placer.free(text_quad(text)) for text in column.texts):
        return False
    canvas.write(column.texts)
    _mark(canvas, one, column)
    return True


def beside_strip(canvas: Canvas, one: Strip, rows: Sequence[Row], target: Point) -> None:
    """Write the words beside a strip that has no room for them, with a leader to its top."""
    lines = (plain(one.drop.id), *_all(one, rows, canvas.language))
    layer = Layer.LABEL if one.verdict is None else answer_layer(one.verdict)
    placed = canvas.label(lines, target, bold=True, layer=layer, spots=_beside(canvas, target))
    if placed is None or one.verdict is None:
        return
    left, _, right, top = placed.box
    for x in (left - SIGN / 2 - 1.0, right + SIGN / 2 + 1.0):
        at = (x, top - SIGN)
        if canvas.placer.free(corners_around(at, SIGN)):
            canvas.add(answer_sign(one.verdict, canvas.frame.to_drawing(at), size=SIGN))
            return


def answer_words(one: Strip, language: Language) -> str:
    """The word of a strip's answer."""
    return language.drawn("not_reviewed") if one.verdict is None else language.word(one.verdict)


def _all(one: Strip, rows: Sequence[Row], language: Language) -> Iterator[str]:
    yield answer_words(one, language)
    yield from (row.words for row in rows)


def _beside(canvas: Canvas, target: Point) -> tuple[Spot, ...]:
    x, y = canvas.frame.to_paper(target)
    return tuple(
        Spot((x + across * 3.0, y - down), across, -1, down / 10.0)
        for down in (12.0, 30.0, 50.0, 80.0)
        for across in (-1, 1)
    )


def _answer(column: _Column, one: Strip, words: str, room: float) -> None:
    """Sign and word in one row, or the word below the sign where the strip is narrow."""
    layer = Layer.LABEL if one.verdict is None else answer_layer(one.verdict)
    if one.verdict is None:
        column.lines(words, bold=True)
        return
    wide = text_width(words, height=TEXT, bold=True)
    if SIGN + 1.2 + wide <= room:
        left = column.middle - (SIGN + 1.2 + wide) / 2
        column.y -= SIGN / 2
        column.sign = (left + SIGN / 2, column.y)
        at = (left + SIGN + 1.2, column.y - TEXT / 2)
        column.texts.append(Text(layer, at, words, TEXT, Align.START, bold=True))
        column.y -= SIGN / 2 + BETWEEN
        return
    column.sign = (column.middle, column.y - SIGN / 2)
    column.y -= SIGN + TEXT * DESCENT
    column.lines(words, bold=True, layer=layer)


def _mark(canvas: Canvas, one: Strip, column: _Column) -> None:
    """The sign of the answer, and the frame around the standing."""
    shapes: list[Shape] = []
    if one.verdict is not None and column.sign is not None:
        shapes.append(answer_sign(one.verdict, canvas.frame.to_drawing(column.sign), size=SIGN))
    for box in column.frames:
        around = tuple(canvas.frame.to_drawing(corner) for corner in corners(box))
        shapes.append(Polygon(Layer.LABEL, around, of=None))
    canvas.add(*shapes)
