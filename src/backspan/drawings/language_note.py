"""What a language says of itself on a sheet, such as that nobody has checked it yet."""

from __future__ import annotations

from backspan.core.words import Language
from backspan.drawings.flow import Flow
from backspan.drawings.scene import Shape

ROOM = 150.0
HIGH = 11.0


def language_note(language: Language, *, right: float, bottom: float) -> tuple[Shape, ...]:
    """The note in lines beside a scale bar, up to `right`; nothing where there is none."""
    flow = Flow(left=right - ROOM, right=right, top=bottom + HIGH)
    flow.paragraph(language.note)
    return tuple(flow.shapes)
