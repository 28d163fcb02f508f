"""The size of a photograph by its file's own header: JPEG or PNG, nothing of it unpacked.

A telephone keeps a photograph as its sensor lay and says beside it how to turn it. The size told
here is that of the picture as it is shown, turned.
"""

from __future__ import annotations

import struct
from collections.abc import Iterator
from pathlib import PurePath

from backspan.core.errors import BackspanError, quoted

#: So many dots a side at most, and this many in all: a browser unpacks four bytes of each.
LONGEST, MOST_DOTS = 30_000, 200_000_000
EXPECTED = "a DXF, a photograph as JPEG or PNG, or a PDF"
_PNG, _JPEG = b"\x89PNG\r\n\x1a\n", b"\xff\xd8\xff"
_PNG_HEADER = struct.pack(">I", 13) + b"IHDR"
_PNG_SIZE = struct.Struct(">II")
#: What begins each marker; where a frame tells its height and width.
_MARK = 0xFF
_FRAME_SIZE, _FRAME_SIZE_AT = struct.Struct(">HH"), 1
#: Markers of a JPEG: those that begin a frame and hold its size; those that stand alone.
_FRAMES = frozenset(range(0xC0, 0xD0)) - {0xC4, 0xC8, 0xCC}
_ALONE = frozenset({0x01, *range(0xD0, 0xD9)})
_APP1, _SCAN, _END = 0xE1, 0xDA, 0xD9
_EXIF = b"Exif\0\0"
#: The first bytes of the remarks: their order, a number, where the first directory stands.
_TAGS_HEAD = 8
_ORIENTATION, _SHORT = 0x0112, 3
#: From here on a picture lies on its side.
_SIDEWAYS = range(5, 9)


class PictureError(BackspanError, ValueError):
    """A file that is no whole JPEG or PNG; says what was found and what was expected."""


def picture_size(content: bytes, name: str) -> tuple[int, int]:
    """Dots across and down, as the picture is shown. Raises PictureError for anything else."""
    where = quoted(PurePath(name).name[:80])
    if content.startswith(_PNG):
        size = _png_size(content)
    elif content.startswith(_JPEG):
        size = _jpeg_size(content)
    else:
        raise PictureError(f"{where}: found {_kind(content)}, expected {EXPECTED}")
    if size is None:
        raise PictureError(f"{where}: found no size in its header, expected a whole JPEG or PNG")
    across, down = size
    if not (0 < across <= LONGEST and 0 < down <= LONGEST and across * down <= MOST_DOTS):
        raise PictureError(
            f"{where}: found {across:,} by {down:,} dots, expected 1 to {LONGEST:,} a side and at"
            f" most {MOST_DOTS:,} in all"
        )
    return size


def _kind(content: bytes) -> str:
    start = content[:512].lstrip().lower()
    if start.startswith(b"%pdf-"):
        return "a PDF"
    if b"<svg" in start or b"<html" in start or start.startswith(b"<"):
        return "a text with marks in it, such as SVG, which may carry a program"
    return f"a file that begins with {quoted(content[:12])}" if content else "nothing in it"


def _png_size(content: bytes) -> tuple[int, int] | None:
    start = len(_PNG) + len(_PNG_HEADER)
    whole = len(content) >= start + _PNG_SIZE.size
    if not whole or not content[len(_PNG) :].startswith(_PNG_HEADER):
        return None
    across, down = _PNG_SIZE.unpack_from(content, start)
    return across, down


def _jpeg_size(content: bytes) -> tuple[int, int] | None:
    turned = False
    for marker, body in _segments(content):
        if marker == _APP1 and body.startswith(_EXIF):
            turned = _is_sideways(body[len(_EXIF) :])
        elif marker in _FRAMES and len(body) >= _FRAME_SIZE_AT + _FRAME_SIZE.size:
            down, across = _FRAME_SIZE.unpack_from(body, _FRAME_SIZE_AT)
            return (down, across) if turned else (across, down)
    return None


def _segments(content: bytes) -> Iterator[tuple[int, bytes]]:
    """Each marker with what stands in it, up to the first line of dots."""
    at = 2
    while at + 4 <= len(content) and content[at] == _MARK:
        marker = content[at + 1]
        if marker == _MARK:  # filled up
            at += 1
        elif marker in _ALONE:
            at += 2
        elif marker in {_SCAN, _END}:
            return
        else:
            (long,) = struct.unpack_from(">H", content, at + 2)
            yield marker, content[at + 4 : at + 2 + long]
            at += 2 + max(long, 2)


def _is_sideways(tags: bytes) -> bool:
    """Whether the first directory of a picture's remarks says that it lies on its side."""
    order = {b"II": "<", b"MM": ">"}.get(tags[:2])
    if order is None or len(tags) < _TAGS_HEAD:
        return False
    (at,) = struct.unpack_from(f"{order}I", tags, 4)
    if at + 2 > len(tags):
        return False
    (many,) = struct.unpack_from(f"{order}H", tags, at)
    for entry in range(at + 2, min(at + 2 + 12 * many, len(tags) - 11), 12):
        tag, kind = struct.unpack_from(f"{order}HH", tags, entry)
        if (tag, kind) == (_ORIENTATION, _SHORT):
            (turned,) = struct.unpack_from(f"{order}H", tags, entry + 8)
            return turned in _SIDEWAYS
    return False
