"""A page of a PDF as a picture, rendered in a process of its own with limits.

What size a page says it has is told to nobody: a picture has dots, and nothing of it is a length.
"""

from __future__ import annotations

import json
from dataclasses import dataclass
from pathlib import PurePath
from typing import Any

from backspan.core.errors import quoted
from backspan.exchange.apart import ApartError, Limits, run_apart
from backspan.exchange.pictures import PictureError, picture_size

#: How long a page may take, and how large its picture may be: as large as a file handed in.
SECONDS, MOST_PICTURE = 60, 40_000_000
#: The last page that may be chosen.
MOST_PAGES = 200
_MODULE = "backspan.exchange.pdf_rendering"
_BEGINS, _ENDS, _END_WITHIN = b"%PDF-", b"%%EOF", 1_024
_PICTURE = b"\x89PNG\r\n\x1a\n"
_SIMPLER = "a simpler page: print it anew to a PDF"


class PageError(PictureError):
    """A page that cannot be made a picture; says what was found and what was expected."""


@dataclass(frozen=True, slots=True)
class PagePicture:
    """A page as PNG, its dots across and down, and how many of them an inch of its page got."""

    png: bytes
    size: tuple[int, int]
    dots: int
    number: int
    pages: int


def is_pdf(content: bytes) -> bool:
    """Whether a file begins as a PDF does."""
    return content.startswith(_BEGINS)


def number_of_pages(content: bytes, name: str, *, seconds: int = SECONDS) -> int:
    """How many pages a PDF has. Raises PageError for what is none, or cannot be opened."""
    return _pages(_asked(content, name, 0, seconds)[0], _where(name))


def page_picture(content: bytes, name: str, number: int, *, seconds: int = SECONDS) -> PagePicture:
    """A page by its number, from 1. The same PDF gives the same bytes with the same libraries.

    Raises PageError for a number that is no page, and for a page that cannot be rendered.
    """
    where = _where(name)
    if not 1 <= number <= MOST_PAGES:
        raise _no_page(where, number, number_of_pages(content, name, seconds=seconds))
    told, png = _asked(content, name, number, seconds)
    pages, dots = _pages(told, where), told.get("dots")
    if not isinstance(dots, int) or not png.startswith(_PICTURE):
        raise _stopped(where, "no picture that came of its page")
    return PagePicture(png, picture_size(png, name), dots, number, pages)


def _asked(content: bytes, name: str, number: int, seconds: int) -> tuple[dict[str, Any], bytes]:
    """What the process says of a page, and its picture."""
    where = _where(name)
    _refuse_cut(content, where)
    limits = Limits(seconds, MOST_PICTURE)
    try:
        answer = run_apart(_MODULE, [str(number), str(seconds)], content, limits)
    except ApartError as error:
        raise _stopped(where, str(error)) from error
    line, _, png = answer.partition(b"\n")
    try:
        told = json.loads(line)
    except ValueError as error:
        raise _stopped(where, f"an answer that begins with {quoted(line[:12])}") from error
    if not isinstance(told, dict):
        raise _stopped(where, f"an answer that begins with {quoted(line[:12])}")
    if "wrong" in told:
        found, expected = told["wrong"]
        raise PageError(f"{where}: found {found}, expected {expected}")
    return told, png


def _pages(told: dict[str, Any], where: str) -> int:
    pages = told.get("pages")
    if not isinstance(pages, int) or pages < 1:
        raise _stopped(where, "no answer about its pages")
    return pages


def _refuse_cut(content: bytes, where: str) -> None:
    """Raise PageError for no PDF, and for one without its end: what is left of it looks whole."""
    if not is_pdf(content):
        raise PageError(f"{where}: found {quoted(content[:12])} at its beginning, expected a PDF")
    if _ENDS not in content[-_END_WITHIN:]:
        raise PageError(
            f"{where}: found no end of a PDF in its last {_END_WITHIN:,} bytes, expected a whole"
            " file: it was cut short"
        )


def _no_page(where: str, number: int, pages: int) -> PageError:
    more = ": of a longer file, save the page alone" if pages > MOST_PAGES else ""
    last = min(pages, MOST_PAGES)
    return PageError(f"{where}: found page {number}, expected a page from 1 to {last}{more}")


def _stopped(where: str, found: str) -> PageError:
    return PageError(f"{where}: found {found}, expected {_SIMPLER}")


def _where(name: str) -> str:
    return quoted(PurePath(name).name[:80])
