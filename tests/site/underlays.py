"""Files to lay under the plan of the case roof, 60 ft by 40 ft, and what a person types of them."""

from __future__ import annotations

import re
import struct
import zlib
from typing import Any

from tests.site.bench import TOKEN, Answer, Browser
from tests.unit.exchange.drawings_in.drawing import content, made

AT = "/plan/ROOF/under"
PICKED = re.compile(r'name="(file|name|unit|pdf|page)" value="([^"]*)"')


def dxf(units: int = 2, *, wide: float = 60.0, marks: tuple[str, ...] = ("B1", "B2")) -> bytes:
    """The roof as a drawing: its outline 100 to the right, anchors as blocks."""
    document = made(units)
    model = document.modelspace()
    corners = [(100, 0), (100 + wide, 0), (100 + wide, 40), (100, 40)]
    model.add_lwpolyline(corners, close=True, dxfattribs={"layer": "ROOF"})
    block = document.blocks.new("EYE")
    block.add_circle((0, 0), 1)
    for number, mark in enumerate(marks):
        placed = model.add_blockref("EYE", (110 + 10 * number, 12))
        placed.add_attrib("MARK", mark, placed.dxf.insert)
    return content(document)


def png(across: int, down: int) -> bytes:
    """A white picture."""

    def chunk(kind: bytes, data: bytes) -> bytes:
        whole = kind + data
        return struct.pack(">I", len(data)) + whole + struct.pack(">I", zlib.crc32(whole))

    head = struct.pack(">IIBBBBB", across, down, 8, 0, 0, 0, 0)
    rows = (b"\0" + b"\xff" * across) * down
    parts = ((b"IHDR", head), (b"IDAT", zlib.compress(rows)), (b"IEND", b""))
    return b"\x89PNG\r\n\x1a\n" + b"".join(chunk(*one) for one in parts)


#: Two corners lay the drawing; the south-north edge, taped, confirms it.
CORNERS = {
    "x1": "100",
    "y1": "0",
    "at1": "corner:1",
    "x2": "160",
    "y2": "0",
    "at2": "corner:2",
    "x3": "160",
    "y3": "0",
    "x4": "160",
    "y4": "40",
    "taped": "40 ft",
}
#: A picture of 10 dots a foot, the first corner at its lower left with a rim of 50 dots.
DOTS = {
    "x1": "50",
    "y1": "450",
    "at1": "corner:1",
    "x2": "650",
    "y2": "450",
    "at2": "apart:",
    "apart": "60 ft",
    "x3": "650",
    "y3": "450",
    "x4": "650",
    "y4": "50",
    "taped": "40 ft",
}


def handed_in(pages: Browser, name: str, content: bytes, unit: str = "", at: str = AT) -> Answer:
    """A file handed in: the page on which its points are picked."""
    return pages.upload(at, at, {name: content}, into="file", does="upload", unit=unit)


def picked(pages: Browser, shown: Answer, at: str = AT, **said: Any) -> Answer:
    """The form of its points, filled and sent."""
    page = shown.body.decode()
    token, place = TOKEN.search(page), re.search(r'name="ledger_place" value="([0-9]+)"', page)
    assert token is not None
    assert place is not None
    carried = dict(PICKED.findall(page))
    first = {"csrfmiddlewaretoken": token[1], "ledger_place": place[1], "does": "check"}
    return pages.send(at, {**first, **carried, **said})
