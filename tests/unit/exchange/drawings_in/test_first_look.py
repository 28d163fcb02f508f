"""Files that are refused by their bytes, before a library loads them."""

from __future__ import annotations

from pathlib import Path

import pytest

from backspan.exchange.drawings_in import MOST_BYTES, DrawingError, read_drawing
from backspan.exchange.files import load_drawing
from tests.unit.exchange.drawings_in.drawing import content, made, oblong

BEGINNING = b"0\nSECTION\n2\nENTITIES\n"
END = b"0\nENDSEC\n0\nEOF\n"


def refused(data: bytes, match: str) -> DrawingError:
    with pytest.raises(DrawingError, match=match) as caught:
        read_drawing(data, "plans/roof.dxf")
    return caught.value


@pytest.mark.parametrize(
    ("data", "found"),
    [
        (b"", "nothing in it"),
        (b" \n\n", "nothing in it"),
        (b"AutoC" + b"AD Binary DXF\r\n\x1a\x00\x00SECTION", "a binary DXF"),
        (b"AC1027\0\0\0\0", "a DWG"),
        (b"%PDF-1.7\n", "no DXF: it begins with b'%PDF"),
        (b"PK\x03\x04", "no DXF: it begins with"),
        (b"id,edge\nA01,S\n", "no DXF: it begins with"),
        (b"0\nEOF\n", "no DXF: it begins with"),
    ],
)
def test_what_is_no_dxf_in_text_is_told_as_what_it_is(data: bytes, found: str) -> None:
    error = refused(data, found)
    assert "saved as DXF, ASCII" in str(error)
    assert str(error).startswith("roof.dxf: found ")


def test_a_comment_may_stand_before_the_first_section() -> None:
    refused(b"999\nmade for a test\n" + BEGINNING + END, "no units")
    refused(b"\xef\xbb\xbf  0\r\nSECTION\r\n  0\r\nEOF\r\n", "no units")


def test_a_file_that_was_cut_short_is_refused() -> None:
    document = made()
    oblong(document)
    whole = content(document)
    for much in (len(whole) // 2, len(whole) - 6):
        error = refused(whole[:much], "no end: the file was cut short")
        assert "EOF" in str(error)


def test_a_character_that_no_text_holds_is_told_by_its_line() -> None:
    refused(BEGINNING + b"0\nLINE\n8\nA\0B\n" + END, r"line 8: found the character U\+0000")


def test_every_number_that_is_not_finite_is_told_by_its_line() -> None:
    line = b"0\nLINE\n8\nNAN\n10\nnan\n20\n-INF\n11\n1e999\n21\n1e100\n"
    error = refused(BEGINNING + line + END, "line 10: found the number nan")
    assert [one.where for one in error.problems] == ["line 10", "line 12", "line 14"]
    assert [one.found for one in error.problems][1:] == ["the number -INF", "the number 1e999"]


def test_a_text_that_reads_as_such_a_number_is_a_text() -> None:
    refused(BEGINNING + b"0\nTEXT\n8\n0\n1\nnan\n10\n1.0\n20\n2.0\n" + END, "no units")


def test_a_million_entities_are_refused_by_counting(tmp_path: Path) -> None:
    file = tmp_path / "many.dxf"
    file.write_bytes(BEGINNING + b"0\nPOINT\n8\n0\n10\n1\n20\n2\n" * 1_000_000 + END)
    with pytest.raises(DrawingError, match="more than 200,000 entities; expected at most 200,000"):
        load_drawing(file)


def test_a_value_of_nothing_is_no_entity() -> None:
    refused(BEGINNING + b"0\nPOINT\n" + b"62\n0\n" * 300_000 + END, "no units")


def test_a_file_that_is_too_large_is_refused_before_it_is_read(tmp_path: Path) -> None:
    file = tmp_path / "large.dxf"
    file.write_bytes(BEGINNING + b"999\n" + b"x" * 51_000_000 + b"\n" + END)
    with pytest.raises(DrawingError, match=f"more than {MOST_BYTES:,} bytes; expected at most"):
        load_drawing(file)
