"""Notes and titles of drawings that count or list what they speak of."""

from __future__ import annotations

from backspan.core.model.rigs import Tieback
from backspan.core.words import Language


def tied_to(tieback: Tieback, language: Language) -> str:
    """What a tieback goes to: its anchor, or the word for what else it ends on."""
    if tieback.anchor is not None:
        return language.drawn("to_anchor", anchor=tieback.anchor)
    word = language.word(tieback.goes_to) if tieback.goes_to else language.drawn("not_stated")
    return language.drawn("to_other", end=word)


def backward_note(edges: tuple[str, ...], language: Language) -> str:
    """An edge that seems to be entered from the wrong end."""
    return language.drawn("backward", edges=", ".join(edges))


def no_room_note(labels: int, language: Language) -> str:
    """Labels that this scale has no room for."""
    return language.drawn("no_room", labels=_labels(labels, language))


def figure_room_note(count: int, sheet: str, language: Language) -> str:
    """Labels that found no room in a figure, and the sheet that has them."""
    return language.drawn("left_out", labels=_labels(count, language), sheet=sheet)


def _labels(count: int, language: Language) -> str:
    return language.drawn("one_label") if count == 1 else language.drawn("labels", count=str(count))


def more_views_note(points: tuple[str, ...], language: Language) -> str:
    """Suspension points that found no room on the sheet."""
    return language.drawn("more_views", points=", ".join(points))


def points_title(points: tuple[str, ...], language: Language) -> str:
    """The title of a view."""
    if len(points) == 1:
        return language.drawn("point_title", point=points[0])
    return language.drawn("points_title", points=", ".join(points[:-1]), last=points[-1])


def count_text(pieces: int, language: Language) -> str:
    """A number of pieces in words."""
    if pieces == 1:
        return language.drawn("one_piece")
    return language.drawn("pieces", count=str(pieces))
