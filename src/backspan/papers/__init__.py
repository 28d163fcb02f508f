"""The papers of a review, laid out as an engineer's office would print them."""

from backspan.papers.content import (
    DropDrawings,
    PaperContent,
    drop_content,
    package_content,
    reactions_content,
)
from backspan.papers.deficiency_notice import DeficiencyNotice, deficiency_content
from backspan.papers.drawing_page import drawing_content
from backspan.papers.errors import PaperError
from backspan.papers.pdf import paper_pdf
from backspan.papers.roof_sheet import SheetItem, SheetValue, sheet_code, sheet_content
from backspan.papers.stamp_part import Codes, Stamp
from backspan.papers.stop_notice import Lift, StopNotice, StopReason, stop_content
from backspan.papers.tag import Tag, tag_content
from backspan.papers.typesetter import Typesetter

__all__ = [
    "Codes",
    "DeficiencyNotice",
    "DropDrawings",
    "Lift",
    "PaperContent",
    "PaperError",
    "SheetItem",
    "SheetValue",
    "Stamp",
    "StopNotice",
    "StopReason",
    "Tag",
    "Typesetter",
    "deficiency_content",
    "drawing_content",
    "drop_content",
    "package_content",
    "paper_pdf",
    "reactions_content",
    "sheet_code",
    "sheet_content",
    "stop_content",
    "tag_content",
]
