"""Text that runs down a column of the sheet: headings, pairs, paragraphs, answers."""

from __future__ import annotations

from backspan.core.findings import Verdict
from backspan.core.words import ENGLISH, Language
from backspan.drawings.canvas import TEXT
from backspan.drawings.lettering import ASCENT, DESCENT, LEADING, shortened, text_width, wrapped
from backspan.drawings.scene import Layer, Line, Shape, Text
from backspan.drawings.symbols import answer_layer, answer_sign

HEADING = 3.0
LABEL_ROOM = 30.0


class Flow:
    """A column that is filled from its top; `y` is where the next thing goes."""

    def __init__(
        self, *, left: float, right: float, top: float, language: Language = ENGLISH
    ) -> None:
        """Start at the top of a column of the sheet (millimetres)."""
        self.left, self.right, self.y = left, right, top
        self.language = language
        self.shapes: list[Shape] = []

    @property
    def room(self) -> float:
        """Width of the column."""
        return self.right - self.left

    def space(self, height: float) -> None:
        """Leave some paper blank."""
        self.y -= height

    def rule(self) -> None:
        """A line across the column."""
        self.y -= 1.2
        self.shapes.append(Line(Layer.SHEET, (self.left, self.y), (self.right, self.y)))
        self.y -= 1.2

    def heading(self, text: str) -> None:
        """A bold line."""
        self.paragraph(text, height=HEADING, bold=True, most=2)

    def paragraph(
        self,
        text: str,
        *,
        height: float = TEXT,
        bold: bool = False,
        most: int | None = None,
        indent: float = 0.0,
    ) -> None:
        """Text broken into lines as wide as the column, at most `most` of them."""
        room = self.room - indent
        for line in wrapped(text, room=room, height=height, bold=bold, most=most):
            self._line(line, self.left + indent, height=height, bold=bold)

    def pair(self, label: str, value: str, *, most: int = 2) -> None:
        """A label at the left and its value, in bold, beside it."""
        room = self.room - LABEL_ROOM
        lines = wrapped(value, room=room, height=TEXT, bold=True, most=most)
        lines = lines or (self.language.drawn("not_reviewed"),)
        base = self.y - TEXT * ASCENT
        short = shortened(label, room=LABEL_ROOM - 1.0, height=TEXT)
        self.shapes.append(Text(Layer.LABEL, (self.left, base), short, TEXT))
        for line in lines:
            self._line(line, self.left + LABEL_ROOM, height=TEXT, bold=True)

    def answer(self, verdict: Verdict, text: str) -> None:
        """The answer as sign and word, with a line that says what it means."""
        height = 5.0
        middle = self.y - height / 2 - 1.0
        word = self.language.word(verdict).upper()
        layer = answer_layer(verdict)
        self.shapes.append(answer_sign(verdict, (self.left + 4.0, middle), size=7.0))
        at = (self.left + 10.0, middle - height * 0.4)
        self.shapes.append(Text(layer, at, word, 4.0, bold=True))
        used = 13.0 + text_width(word, height=4.0, bold=True)
        lines = wrapped(text, room=self.room - used, height=TEXT, most=2)
        first = middle - TEXT / 2 + (TEXT * LEADING / 2 if len(lines) > 1 else 0.0)
        for row, line in enumerate(lines):
            base = first - row * TEXT * LEADING
            self.shapes.append(Text(Layer.LABEL, (self.left + used, base), line, TEXT))
        self.y -= height + 4.0

    def _line(self, text: str, left: float, *, height: float, bold: bool) -> None:
        base = self.y - height * ASCENT
        self.shapes.append(Text(Layer.LABEL, (left, base), text, height, bold=bold))
        self.y = base - height * DESCENT - height * (LEADING - ASCENT - DESCENT)
