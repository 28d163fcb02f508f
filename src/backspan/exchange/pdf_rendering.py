"""The library at work: one page of a PDF to a PNG. It runs in a process of its own.

Script and files that a PDF carries are never touched: no form of it is set up, a page is painted.
Standard input is the PDF; out come a line of JSON and, where a page was asked for, its PNG.
"""

from __future__ import annotations

import json
import struct
import sys
import zlib
from typing import TYPE_CHECKING, Any

from backspan.core.errors import BackspanError
from backspan.exchange.apart import hold_to

if TYPE_CHECKING:
    from pypdfium2 import PdfBitmap, PdfDocument, PdfPage

#: How much memory a page may take.
MOST_MEMORY = 2_000_000_000
#: The long side of a picture in dots, and the most dots an inch of its page.
LONG_SIDE, FINEST = 4_000, 300
#: What a page may be long, in points of 1/72 inch: an inch to 200 inches.
SHORTEST_PAGE, LONGEST_PAGE = 72, 14_400
_INCH = 72
_SIMPLER = "a simpler page: print it anew to a PDF"


class UnreadableError(BackspanError, ValueError):
    """What was found instead of a page, and what was expected."""

    def __init__(self, found: str, expected: str) -> None:
        super().__init__(f"{found}; expected {expected}")
        self.found, self.expected = found, expected


def main(number: str, seconds: str) -> int:
    """Count the pages of what stands on standard input, and render one unless it is the 0th."""
    hold_to(seconds=int(seconds), memory=MOST_MEMORY)
    picture = b""
    try:
        told, picture = rendered(sys.stdin.buffer.read(), int(number))
    except UnreadableError as error:
        told = {"wrong": [error.found, error.expected]}
    except MemoryError:
        told = {"wrong": [f"more than {MOST_MEMORY:,} bytes of memory needed for it", _SIMPLER]}
    sys.stdout.buffer.write(json.dumps(told).encode() + b"\n" + picture)
    return 0


def rendered(content: bytes, number: int) -> tuple[dict[str, Any], bytes]:
    """How many pages there are, and the page of that number, if one is asked for, as a PNG.

    Raises UnreadableError with what makes it none that can be rendered.
    """
    document = _document(content)
    pages = len(document)
    if number == 0:
        return {"pages": pages}, b""
    if number > pages:
        raise UnreadableError(f"page {number:,}", f"a page from 1 to {pages:,}")
    page = _page(document, number)
    dots = _dots_an_inch(page)
    bitmap = page.render(scale=dots / _INCH, rev_byteorder=True, may_draw_forms=False)
    return {"pages": pages, "dots": dots}, _png(bitmap)


def _document(content: bytes) -> PdfDocument:
    from pypdfium2 import PdfDocument, PdfiumError, raw

    try:
        return PdfDocument(content)
    except PdfiumError as error:
        if error.err_code in {raw.FPDF_ERR_PASSWORD, raw.FPDF_ERR_SECURITY}:
            found, expected = "an encrypted PDF", "one that opens without a password"
        elif error.err_code == raw.FPDF_ERR_SUCCESS:
            found, expected = "a PDF without a page", "one page at least"
        else:
            found, expected = "something that is no whole PDF", "a PDF as it was saved"
        raise UnreadableError(found, expected) from error


def _page(document: PdfDocument, number: int) -> PdfPage:
    from pypdfium2 import PdfiumError

    try:
        return document[number - 1]
    except PdfiumError as error:
        raise UnreadableError(f"nothing to read as page {number}", _SIMPLER) from error


def _dots_an_inch(page: PdfPage) -> int:
    """So many that the long side is no longer than it may be; a whole number."""
    size = page.get_size()
    if not (SHORTEST_PAGE <= max(size) <= LONGEST_PAGE and min(size) > 0):
        across, up = (f"{one / _INCH:,.4g}" for one in size)
        raise UnreadableError(
            f"a page of {across} by {up} inches",
            f"one of {SHORTEST_PAGE // _INCH} to {LONGEST_PAGE // _INCH} inches on its long side",
        )
    return min(FINEST, int(LONG_SIDE * _INCH / max(size)))


def _png(bitmap: PdfBitmap) -> bytes:
    """A bitmap as PNG; in greys where it has no colour. The same dots give the same bytes."""
    across, down, stride = bitmap.width, bitmap.height, bitmap.stride
    dots, wide = memoryview(bitmap.buffer).cast("B"), across * bitmap.n_channels
    whole = b"".join(dots[one * stride : one * stride + wide] for one in range(down))
    kind, channels = 2, 3
    if whole[0::3] == whole[1::3] == whole[2::3]:
        whole, kind, channels = whole[0::3], 0, 1
    row = across * channels
    rows = b"".join(b"\0" + whole[at : at + row] for at in range(0, len(whole), row))
    head = struct.pack(">IIBBBBB", across, down, 8, kind, 0, 0, 0)
    parts = ((b"IHDR", head), (b"IDAT", zlib.compress(rows, 6)), (b"IEND", b""))
    return b"\x89PNG\r\n\x1a\n" + b"".join(_chunk(*one) for one in parts)


def _chunk(kind: bytes, data: bytes) -> bytes:
    whole = kind + data
    return struct.pack(">I", len(data)) + whole + struct.pack(">I", zlib.crc32(whole))


if __name__ == "__main__":
    raise SystemExit(main(*sys.argv[1:]))
