"""The size of a picture by its own header; whatever is cut short or made up is refused."""

from __future__ import annotations

import contextlib
import struct

import pytest

from backspan.exchange.pictures import PictureError, picture_size
from tests.site.underlays import png


def segment(marker: int, body: bytes) -> bytes:
    """A marker of a JPEG with what stands in it."""
    return bytes((0xFF, marker)) + struct.pack(">H", len(body) + 2) + body


def frame(across: int, down: int, marker: int = 0xC0) -> bytes:
    """What begins the dots of a JPEG."""
    return segment(marker, struct.pack(">BHHB", 8, down, across, 3) + b"\x01\x11\0" * 3)


def remarks(turned: int, order: str = "<") -> bytes:
    """How a telephone says that its picture is to be turned."""
    start = b"II*\0" if order == "<" else b"MM\0*"
    one = struct.pack(f"{order}HHIHH", 0x0112, 3, 1, turned, 0)
    return segment(0xE1, b"Exif\0\0" + start + struct.pack(f"{order}IH", 8, 1) + one + b"\0" * 4)


def jpeg(*parts: bytes) -> bytes:
    """A JPEG of these parts, without any dots."""
    return b"\xff\xd8" + b"".join(parts) + segment(0xDA, b"\0" * 10)


@pytest.mark.parametrize(
    ("content", "size"),
    [
        (png(7, 5), (7, 5)),
        (jpeg(frame(4000, 3000)), (4000, 3000)),
        (jpeg(segment(0xE0, b"x" * 14), frame(40, 20, 0xC2)), (40, 20)),
        (jpeg(segment(0xC4, b"x" * 14), frame(40, 20)), (40, 20)),
        (jpeg(b"\xff\xff", segment(0xE0, b""), frame(40, 20))[:-1], (40, 20)),
        (jpeg(remarks(1), frame(40, 20)), (40, 20)),
        (jpeg(remarks(6), frame(40, 20)), (20, 40)),
        (jpeg(remarks(8, ">"), frame(40, 20)), (20, 40)),
        (jpeg(remarks(9), frame(40, 20)), (40, 20)),
        (jpeg(segment(0xE1, b"Exif\0\0II*\0\xff\xff\xff\x7f"), frame(40, 20)), (40, 20)),
        (jpeg(segment(0xE1, b"Exif\0\0II"), frame(40, 20)), (40, 20)),
    ],
)
def test_a_size_is_that_of_the_picture_as_it_is_shown(
    content: bytes, size: tuple[int, int]
) -> None:
    assert picture_size(content, "roof.jpg") == size


def huge() -> bytes:
    """A picture that says it is larger than any."""
    return png(1, 1)[:16] + struct.pack(">II", 30_000, 30_000)


@pytest.mark.parametrize(
    ("content", "told"),
    [
        (b"", "found nothing in it"),
        (b"%PDF-1.7", "found a PDF"),
        (b"<?xml version='1.0'?><svg/>", "such as SVG"),
        (b"\xef\xbb\xbf \n<html>", "such as SVG"),
        (b"GIF89a", "begins with b'GIF89a'"),
        (png(1, 1)[:20], "no size in its header"),
        (jpeg(), "no size in its header"),
        (jpeg(frame(40, 20))[:9], "no size in its header"),
        (b"\xff\xd8\xff\xe0\0\0" + b"\xff" * 50, "no size in its header"),
        (jpeg(frame(0, 20)), "found 0 by 20 dots"),
        (huge(), "found 30,000 by 30,000 dots"),
    ],
)
def test_what_is_no_whole_picture_is_refused(content: bytes, told: str) -> None:
    with pytest.raises(PictureError, match="expected") as error:
        picture_size(content, "roof.jpg")
    assert told in str(error.value)


def test_a_picture_cut_anywhere_is_refused_or_read() -> None:
    whole = jpeg(remarks(6), frame(40, 20))
    read = 0
    for end in range(len(whole)):
        with contextlib.suppress(PictureError):
            assert picture_size(whole[:end], "roof.jpg") == (20, 40)
            read += 1
    assert 0 < read < len(whole) / 2
