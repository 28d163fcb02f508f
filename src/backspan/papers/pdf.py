"""From a paper's content to PDF bytes; the same content gives the same bytes."""

from __future__ import annotations

import datetime
import json
import tempfile
from importlib import resources
from pathlib import Path

from backspan.papers.characters import all_printable, printable
from backspan.papers.content import PaperContent
from backspan.papers.errors import PaperError

TEMPLATES = (
    "package.typ",
    "front.typ",
    "drop.typ",
    "calculation.typ",
    "appendix.typ",
    "finding.typ",
    "parts.typ",
    "reactions.typ",
    "stamp.typ",
    "tag.typ",
    "stop.typ",
    "deficiency.typ",
    "sheet.typ",
    "drawing.typ",
)


def paper_pdf(content: PaperContent, *, issued: datetime.date) -> bytes:
    """A paper as PDF, dated `issued`; fonts and templates come from the program itself.

    What people typed reaches the typesetter as JSON data, never as markup; a character that no
    font here has is printed as its number. Raises PaperError when the paper cannot be set.
    """
    with tempfile.TemporaryDirectory(prefix="backspan-") as name:
        write_into(Path(name), content)
        return set_in(Path(name), content.template, issued=issued)


def set_in(folder: Path, template: str, *, issued: datetime.date) -> bytes:
    """The PDF of what `write_into` wrote to a folder; PaperError when it cannot be set."""
    import typst

    package = resources.files("backspan.papers")
    stamp = int(
        datetime.datetime(issued.year, issued.month, issued.day, tzinfo=datetime.UTC).timestamp()
    )
    with resources.as_file(package / "fonts") as fonts:
        try:
            pdf = typst.compile(
                str(folder / template),
                root=str(folder),
                font_paths=[str(fonts)],
                ignore_system_fonts=True,
                timestamp=stamp,
            )
        except typst.TypstError as error:
            raise PaperError(f"the paper could not be set: {error}") from error
    if not isinstance(pdf, bytes):
        raise PaperError("the typesetter gave no document")
    return pdf


def write_into(folder: Path, content: PaperContent) -> None:
    """Write to a folder all that a paper is set from; an error of the system names the file."""
    templates = resources.files("backspan.papers") / "templates"
    for template in TEMPLATES:
        _put(folder / template, (templates / template).read_text(encoding="utf-8"))
    data = json.dumps(all_printable(content.data), ensure_ascii=False, sort_keys=True)
    _put(folder / "data.json", data)
    for name, svg in content.drawings.items():
        _put(folder / name, printable(svg))
    for name, photograph in content.photographs.items():
        _put(folder / name, photograph)


def _put(path: Path, content: str | bytes) -> None:
    """Write a file for the typesetter; an error of the system names it."""
    raw = content.encode("utf-8") if isinstance(content, str) else content
    try:
        path.write_bytes(raw)
    except OSError as error:
        raise OSError(error.errno, error.strerror, str(path)) from error
