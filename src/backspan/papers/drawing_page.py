"""A drawing as a paper: one page of the sheet's own size, so that it is printed to scale."""

from __future__ import annotations

from backspan.core.words import ENGLISH, Language
from backspan.papers.content import PaperContent
from backspan.papers.pictures import Pictures


def drawing_content(svg: str, *, title: str, language: Language = ENGLISH) -> PaperContent:
    """The page of a drawing. Raises PaperError for a drawing that does not state its size."""
    pictures = Pictures()
    data = {"language": language.code, "drawing": pictures.add(svg, title=title)}
    return PaperContent("drawing.typ", data, pictures.files)
