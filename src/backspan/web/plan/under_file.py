"""The file that is laid under a plan: judged before it is kept, read again by its hash."""

from __future__ import annotations

import threading
from collections import OrderedDict
from dataclasses import dataclass
from io import BytesIO
from pathlib import PurePath
from typing import Self

from django.http import HttpRequest

from backspan.core.errors import quoted
from backspan.core.model.site import Point
from backspan.exchange.drawings_in import DrawingUnit, DrawnIn, is_drawing, read_drawing
from backspan.exchange.pdf_page import is_pdf
from backspan.exchange.pictures import EXPECTED, picture_size
from backspan.records.evidence import EvidenceFolder
from backspan.web.application import workbench_of
from backspan.web.pages.common import FormError
from backspan.web.plan.under_name import a_name
from backspan.web.plan.under_page import PageOf, Pages, taken_in
from backspan.web.speaking import signer_of
from backspan.web.uploads import MOST_BYTES, refuse_too_large

#: So many drawings that were read are kept at hand; each may take seconds to read.
_AT_HAND = 4
_READ: OrderedDict[tuple[str, str], DrawnIn] = OrderedDict()
_READING = threading.Lock()
#: How a picture begins; what begins otherwise is read as a drawing.
_PICTURES = (b"\x89PNG", b"\xff\xd8\xff")


@dataclass(frozen=True, slots=True)
class Given:
    """A file of evidence to be laid under a plan: a drawing in its units, or a picture.

    A picture may be of a page of a PDF, which is evidence beside it.
    """

    file: str
    name: str
    drawn: DrawnIn | None = None
    size: tuple[int, int] | None = None
    page: PageOf | None = None

    @classmethod
    def of_page(cls, page: PageOf) -> Self:
        """The picture of a page."""
        return cls(page.picture, page.name, size=page.size, page=page)

    @property
    def evidence(self) -> tuple[str, ...]:
        """The files that show it: what it was made of stands beside it."""
        return (self.file,) if self.page is None else (self.file, self.page.pdf)

    @property
    def unit_word(self) -> str:
        """The same as people say it."""
        named = {"in": "inches", "ft": "feet", "survey ft": "survey feet", "m": "metres"}
        return named.get(self.unit, self.unit)

    @property
    def unit(self) -> str:
        """The unit in which places on it are typed; a picture's are its dots."""
        return "dots" if self.drawn is None else str(self.drawn.units.unit)

    @property
    def factor(self) -> float:
        """Metres in that unit; 1 for a picture, whose places stay in dots."""
        return 1.0 if self.drawn is None else float(self.drawn.units.unit.factor)

    @property
    def corner(self) -> Point:
        """Its upper left corner, in that unit."""
        if self.drawn is None:
            return 0.0, 0.0
        low, high = self.drawn.size.low, self.drawn.size.high
        return low[0] / self.factor, high[1] / self.factor

    @property
    def sides(self) -> tuple[float, float]:
        """Across and down, in that unit."""
        if self.drawn is not None:
            return self.drawn.size.width / self.factor, self.drawn.size.height / self.factor
        across, down = self.size or (0, 0)
        return float(across), float(down)

    @property
    def told(self) -> str:
        """What it is, in a line."""
        if self.page is not None:
            return self.page.told
        if self.drawn is None:
            across, down = self.size or (0, 0)
            return f"a picture of {across:,} by {down:,} dots"
        units = self.drawn.units
        many, size = len(self.drawn.lines), self.drawn.size.told
        return f"a drawing of {many:,} lines, {size}, in {self.unit_word} ({units.said})"


def handed_in(request: HttpRequest) -> Given | Pages:
    """The file of a form, judged and then kept; a PDF of several pages is to be chosen from.

    Raises FormError, DrawingError, PictureError with nothing kept for one that cannot be laid
    under a plan; NobodySpeaksError where nobody said who hands it in.
    """
    signer_of(request)
    refuse_too_large(request)
    file = request.FILES.get("file")
    if file is None:
        raise FormError(f"Which file: found none, expected {EXPECTED}")
    content = file.read(MOST_BYTES + 1)
    name = a_name(PurePath(file.name or "file").name)
    unit = request.POST.get("unit", "")
    evidence = workbench_of(request).record.evidence
    if is_pdf(content):
        of_pdf = taken_in(evidence, content, name)
        return of_pdf if isinstance(of_pdf, Pages) else Given.of_page(of_pdf)
    found = _read(content, "", name, unit)
    kept = evidence.keep(BytesIO(content))
    given = Given(kept, name, found.drawn, found.size)
    if given.drawn is not None:
        with _READING:
            _keep_at_hand((kept, unit), given.drawn)
    return given


def given(evidence: EvidenceFolder, file: str, name: str, unit: str) -> Given:
    """A file of evidence by its hash. Raises EvidenceError where it is not here, and as above."""
    name = a_name(name)
    with _READING:
        at_hand = _READ.get((file, unit))
        if at_hand is not None and evidence.has(file):
            _READ.move_to_end((file, unit))
            return Given(file, name, at_hand)
        evidence.check(file)
        with evidence.open(file) as stream:
            found = _read(stream.read(MOST_BYTES + 1), file, name, unit)
        if found.drawn is not None:
            _keep_at_hand((file, unit), found.drawn)
    return found


def _read(content: bytes, file: str, name: str, unit: str) -> Given:
    if content.startswith(_PICTURES) or not (is_drawing(name) or _looks_drawn(content)):
        return Given(file, name, size=picture_size(content, name))
    if unit and unit not in set(DrawingUnit):
        words = ", ".join(DrawingUnit)
        raise FormError(f"Its units: found {quoted(unit)}, expected one of {words}")
    said = DrawingUnit(unit) if unit else None
    return Given(file, name, drawn=read_drawing(content, name, units=said))


def _looks_drawn(content: bytes) -> bool:
    """Whether a file without a drawing's name begins as a drawing does."""
    return content[:200].split()[:2] in ([b"0", b"SECTION"], [b"999"])


def _keep_at_hand(key: tuple[str, str], drawn: DrawnIn) -> None:
    # Asked for by the unit that its file says it is the same.
    for one in {key, (key[0], str(drawn.units.unit))}:
        _READ[one] = drawn
        _READ.move_to_end(one)
    while len(_READ) > _AT_HAND:
        _READ.popitem(last=False)
