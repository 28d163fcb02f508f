"""A page of a PDF that is laid under a plan: chosen, rendered, its picture kept beside the PDF.

The picture is made anew from the PDF wherever it is asked for: no form says which picture is of
which page, so an entry never names a PDF beside a picture of something else.
"""

from __future__ import annotations

import threading
from collections import OrderedDict
from dataclasses import dataclass, replace
from hashlib import sha256
from io import BytesIO

from backspan.core.errors import quoted
from backspan.exchange.pdf_page import MOST_PAGES, PagePicture, number_of_pages, page_picture
from backspan.records.evidence import EvidenceFolder
from backspan.web.pages.common import FormError
from backspan.web.plan.under_name import a_name
from backspan.web.uploads import MOST_BYTES

#: So many pages that were rendered are known again, with the hash of the picture of each.
_KNOWN = 64
_MOST_DIGITS = 6
_MADE: OrderedDict[tuple[str, int], PageOf] = OrderedDict()
#: One page is rendered at a time: each may take much memory.
_RENDERING = threading.Lock()


@dataclass(frozen=True, slots=True)
class Pages:
    """A PDF of evidence of which a page is to be chosen."""

    pdf: str
    name: str
    pages: int

    @property
    def last(self) -> int:
        """The last page that may be chosen."""
        return min(self.pages, MOST_PAGES)


@dataclass(frozen=True, slots=True)
class PageOf:
    """A page of a PDF by their hashes: the PDF's, and that of the picture that was made of it."""

    pdf: str
    origin: str
    picture: str
    size: tuple[int, int]
    dots: int
    number: int
    pages: int

    @property
    def name(self) -> str:
        """What papers call it: the file, and its page."""
        return page_name(self.origin, self.number)

    @property
    def told(self) -> str:
        """What it is, in words."""
        across, down = self.size
        return (
            f"page {self.number} of {self.pages:,} of a PDF, as a picture of {across:,} by {down:,}"
            f" dots, {self.dots} to an inch of the page"
        )


def page_name(name: str, number: int) -> str:
    """The name of a page. Raises FormError where the file's is none, or too long with it."""
    return a_name(f"{a_name(name)}, page {number}")


def taken_in(evidence: EvidenceFolder, content: bytes, name: str) -> PageOf | Pages:
    """A PDF handed in, kept: its only page, or the pages to choose from.

    Raises PageError or FormError with nothing kept for one that cannot be opened, or whose only
    page cannot be rendered.
    """
    with _RENDERING:
        pages = number_of_pages(content, name)
        page_name(name, min(pages, MOST_PAGES))
        if pages > 1:
            return Pages(evidence.keep(BytesIO(content)), name, pages)
        made = page_picture(content, name, 1)
        return _kept(evidence, evidence.keep(BytesIO(content)), name, made)


def pages_of(evidence: EvidenceFolder, pdf: str, name: str) -> Pages:
    """The pages to choose from, of a PDF of evidence. Raises EvidenceError or PageError."""
    with _RENDERING:
        return Pages(pdf, a_name(name), number_of_pages(_content(evidence, pdf), name))


def chosen(evidence: EvidenceFolder, pdf: str, name: str, said: str) -> PageOf:
    """A page that somebody chose, rendered, its picture kept.

    Raises FormError or PageError with nothing kept for what is no page of it.
    """
    number = _number(said)
    page_name(name, number)
    with _RENDERING:
        made = page_picture(_content(evidence, pdf), name, number)
        return _kept(evidence, pdf, name, made)


def page_of(evidence: EvidenceFolder, pdf: str, name: str, said: str) -> PageOf:
    """A page that was chosen before; its picture is made anew where it is not known any more.

    Raises FormError where that is not in the evidence: nobody chose the page, or other libraries
    made another picture of it. Raises EvidenceError where either file was damaged.
    """
    number = _number(said)
    called = page_name(name, number)
    with _RENDERING:
        found = _MADE.get((pdf, number))
        if found is None:
            made = page_picture(_content(evidence, pdf), name, number)
            found = _known(pdf, name, made, sha256(made.png).hexdigest())
    if not evidence.has(found.picture):
        raise FormError(f"{quoted(called)}: found no picture of it kept, expected it chosen first")
    for one in (pdf, found.picture):
        evidence.check(one)
    return replace(found, origin=name)


def _content(evidence: EvidenceFolder, pdf: str) -> bytes:
    evidence.check(pdf)
    with evidence.open(pdf) as stream:
        return stream.read(MOST_BYTES + 1)


def _number(said: str) -> int:
    said = said.strip()
    if not (said.isascii() and said.isdecimal() and len(said) <= _MOST_DIGITS):
        raise FormError(
            f"Which page: found {quoted(said)}, expected its number in the file, from 1"
        )
    return int(said)


def _kept(evidence: EvidenceFolder, pdf: str, name: str, made: PagePicture) -> PageOf:
    return _known(pdf, name, made, evidence.keep(BytesIO(made.png)))


def _known(pdf: str, name: str, made: PagePicture, picture: str) -> PageOf:
    found = PageOf(pdf, name, picture, made.size, made.dots, made.number, made.pages)
    _MADE[pdf, made.number] = found
    _MADE.move_to_end((pdf, made.number))
    while len(_MADE) > _KNOWN:
        _MADE.popitem(last=False)
    return found
