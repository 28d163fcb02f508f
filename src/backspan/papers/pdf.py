"""From a paper's content to PDF bytes; the same content gives the same bytes."""

from __future__ import annotations

import datetime
import json
import tempfile
from importlib import resources
from importlib.abc import Traversable
from pathlib import Path

from backspan.papers.characters import all_printable, printable
from backspan.papers.content import PaperContent
from backspan.papers.errors import PaperError

TEMPLATES = ("package.typ", "drop_paper.typ", "cover.typ", "finding.typ", "drop.typ", "parts.typ")


def paper_pdf(content: PaperContent, *, issued: datetime.date) -> bytes:
    """A paper as PDF, dated `issued`; fonts and templates come from the program itself.

    What people typed reaches the typesetter as JSON data, never as markup; a character that no
    font here has is printed as its number. Raises PaperError when the paper cannot be set.
    """
    import typst

    package = resources.files("backspan.papers")
    stamp = int(
        datetime.datetime(issued.year, issued.month, issued.day, tzinfo=datetime.UTC).timestamp()
    )
    with (
        tempfile.TemporaryDirectory(prefix="backspan-") as name,
        resources.as_file(package / "fonts") as fonts,
    ):
        folder = Path(name)
        _write(folder, content, package / "templates")
        try:
            pdf = typst.compile(
                str(folder / content.template),
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


def _write(folder: Path, content: PaperContent, templates: Traversable) -> None:
    for template in TEMPLATES:
        text = (templates / template).read_text(encoding="utf-8")
        _put(folder / template, text)
    data = json.dumps(all_printable(content.data), ensure_ascii=False, sort_keys=True)
    _put(folder / "data.json", data)
    for name, svg in content.drawings.items():
        _put(folder / name, printable(svg))


def _put(path: Path, text: str) -> None:
    """Write a file for the typesetter; an error of the system names it."""
    try:
        path.write_text(text, encoding="utf-8")
    except OSError as error:
        raise OSError(error.errno, error.strerror, str(path)) from error
