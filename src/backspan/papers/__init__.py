"""The papers of a review, laid out as an engineer's office would print them."""

from backspan.papers.content import (
    DropDrawings,
    PaperContent,
    drop_content,
    package_content,
    reactions_content,
)
from backspan.papers.errors import PaperError
from backspan.papers.pdf import paper_pdf
from backspan.papers.typesetter import Typesetter

__all__ = [
    "DropDrawings",
    "PaperContent",
    "PaperError",
    "Typesetter",
    "drop_content",
    "package_content",
    "paper_pdf",
    "reactions_content",
]
