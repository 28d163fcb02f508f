"""The words of a narrow strip on an elevation: turned, so that they run down along it."""

from __future__ import annotations

from collections.abc import Sequence

from backspan.drawings.canvas import TEXT, Canvas
from backspan.drawings.elevation_words import BETWEEN, Row, answer_words
from backspan.drawings.geometry import corners_around, text_quad
from backspan.drawings.lettering import ASCENT, DESCENT, LEADING, plain, text_width
from backspan.drawings.placing import Label
from backspan.drawings.plan_drops import SIGN, Strip
from backspan.drawings.scene import Align, Layer, Text
from backspan.drawings.symbols import answer_layer, answer_sign

UPRIGHT = 90.0

SIDE = 0.4
"""Paper between the left side of a strip and its turned words, in millimetres."""


def along_strip(
    canvas: Canvas, one: Strip, rows: Sequence[Row], *, edges: tuple[float, float], top: float
) -> bool:
    """Write id and sign, and below them turned the answer with the standing; False without room.

    The rest follows in lines beside that as far as there is room; what has none is counted.
    """
    middle, room = (edges[0] + edges[1]) / 2, edges[1] - edges[0]
    name = plain(one.drop.id)
    if max(text_width(name, height=TEXT, bold=True), TEXT * LEADING + SIDE) > room:
        return False
    y = top - TEXT * ASCENT
    texts = [Text(Layer.LABEL, (middle, y), name, TEXT, Align.MIDDLE, bold=True)]
    y -= TEXT * DESCENT + BETWEEN / 2
    sign = None
    if one.verdict is not None:
        # At the left: the right half is left to the height of the strip.
        sign = (edges[0] + SIDE + SIGN / 2, y - SIGN / 2)
        y -= SIGN + BETWEEN / 2
    x = edges[0] + SIDE + TEXT * ASCENT
    texts += _answer(one, rows, canvas, (x, y))
    if not all(canvas.placer.free(text_quad(text)) for text in texts):
        return False
    if sign is not None and not canvas.placer.free(corners_around(sign, SIGN)):
        return False
    canvas.write(texts)
    if one.verdict is not None and sign is not None:
        canvas.add(answer_sign(one.verdict, canvas.frame.to_drawing(sign), size=SIGN))
    for row in rows:
        if row.framed:
            continue
        x += TEXT * LEADING
        text = Text(Layer.LABEL, (x, y), plain(row.words), TEXT, Align.END, UPRIGHT)
        if x + TEXT * DESCENT <= edges[1] and canvas.placer.free(text_quad(text)):
            canvas.write((text,))
        else:
            canvas.placer.unplaced.append(Label((text.text,), TEXT))
    return True


def _answer(
    one: Strip, rows: Sequence[Row], canvas: Canvas, top: tuple[float, float]
) -> list[Text]:
    """The word of the answer and below it the standing, in one turned line that ends at `top`."""
    layer = Layer.LABEL if one.verdict is None else answer_layer(one.verdict)
    x, y = top
    texts = []
    for words, on in (
        (answer_words(one, canvas.language), layer),
        *((row.words, Layer.LABEL) for row in rows if row.framed),
    ):
        texts.append(Text(on, (x, y), plain(words), TEXT, Align.END, UPRIGHT, bold=True))
        y -= text_width(words, height=TEXT, bold=True) + 2 * BETWEEN
    return texts
