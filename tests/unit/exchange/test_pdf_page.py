"""A page of a PDF as a picture; what is no page, or ends its process, is told and ends alone."""

from __future__ import annotations

import io
import os
import sys
import zipfile
import zlib
from pathlib import Path

import pytest
import typst

from backspan.exchange import pdf_page
from backspan.exchange.pdf_page import PageError, is_pdf, number_of_pages, page_picture
from tests.site.pdfs import CARRIES, OUTLINE, SCRIPT, pdf

THREE = pdf(OUTLINE, b"", b"0 0 1 rg " + OUTLINE.replace(b" S", b" f"))


def zipped() -> bytes:
    """An archive, as a workbook is one."""
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w") as archive:
        archive.writestr("roof.pdf", THREE)
    return out.getvalue()


def rows(png: bytes) -> bytes:
    """The dots of a picture that this program made."""
    at = png.index(b"IDAT")
    return zlib.decompress(png[at + 4 : at + 4 + int.from_bytes(png[at - 4 : at])])


def test_a_page_becomes_a_picture_with_its_dots() -> None:
    made = page_picture(THREE, "roof.pdf", 1)
    assert number_of_pages(THREE, "roof.pdf") == made.pages == 3
    assert (made.number, made.dots) == (1, 300)
    assert made.size == (2917, 2084)
    grey = rows(made.png)
    wide = made.size[0] + 1
    assert len(grey) == wide * made.size[1]
    # The line 50 points in, at 300 dots an inch; white beside it and inside.
    middle = grey[wide * 1000 + 1 : wide * 1001]
    assert middle[208] == 0
    assert middle[150] == middle[300] == 255
    assert middle.count(0) < 40


def test_the_same_pdf_gives_the_same_bytes() -> None:
    one, other = (page_picture(THREE, name, 3) for name in ("roof.pdf", "other.pdf"))
    assert one == other
    assert b"\0\0\xff" in rows(one.png)  # its blue
    assert one.png != page_picture(THREE, "roof.pdf", 2).png


def test_a_page_that_a_typesetter_made_is_painted_with_its_letters() -> None:
    source = b"#set page(width: 40in, height: 30in)\n#set text(size: 9in)\nROOF"
    made = page_picture(typst.compile(source), "roof.pdf", 1)
    assert (made.dots, made.size) == (100, (4000, 3000))
    assert rows(made.png).count(0) > 3000 + 100_000  # each row begins with one


def test_script_and_files_in_it_change_nothing() -> None:
    plain, loaded = (pdf(OUTLINE, catalog=one) for one in ("", f"{SCRIPT} {CARRIES}"))
    assert page_picture(plain, "a.pdf", 1) == page_picture(loaded, "a.pdf", 1)


@pytest.mark.parametrize(
    ("size", "dots", "long"), [((14_400, 3_600), 20, 4_000), ((72, 36), 300, 300)]
)
def test_a_large_page_gets_fewer_dots(size: tuple[float, float], dots: int, long: int) -> None:
    made = page_picture(pdf(b"", size=size), "roof.pdf", 1)
    assert (made.dots, max(made.size)) == (dots, long)


@pytest.mark.parametrize("size", [(14_500, 100), (100, 1e7), (71, 71), (2e9, 2e9)])
def test_a_page_of_no_sensible_size_is_refused(size: tuple[float, float]) -> None:
    with pytest.raises(PageError, match=r"found a page of .* inches, expected one of 1 to 200"):
        page_picture(pdf(b"", size=size), "roof.pdf", 1)


@pytest.mark.parametrize("number", [-1, 0, 4, 9, 201])
def test_a_page_that_is_not_there_is_refused(number: int) -> None:
    with pytest.raises(PageError, match=f"'roof.pdf': found page {number}, .* from 1 to 3$"):
        page_picture(THREE, "roof.pdf", number)


def test_a_page_far_into_a_long_file_is_refused() -> None:
    long = pdf(*[b""] * 201)
    assert number_of_pages(long, "a.pdf") == 201
    assert page_picture(long, "a.pdf", 200).pages == 201
    with pytest.raises(PageError, match=r"found page 201, .* 1 to 200: of a longer file, save"):
        page_picture(long, "a.pdf", 201)


@pytest.mark.parametrize(
    ("content", "told"),
    [
        (pdf(OUTLINE, encrypted=True), "an encrypted PDF, expected one that opens without"),
        (pdf(), "a PDF without a page, expected one page at least"),
        (THREE[:-40], "no end of a PDF .* it was cut short"),
        (THREE[:60] + b"%%EOF", "something that is no whole PDF, expected a PDF as it was"),
        (b"%PDF-1.7\n%%EOF", "something that is no whole PDF"),
        (b"", "expected a PDF"),
        (zipped(), "'PK.* at its beginning, expected a PDF"),
    ],
)
def test_what_is_no_pdf_to_open_is_refused(content: bytes, told: str) -> None:
    for asked in (
        lambda: number_of_pages(content, "dir/roof.pdf"),
        lambda: page_picture(content, "dir/roof.pdf", 1),
    ):
        with pytest.raises(PageError, match=f"^'roof.pdf': found .*{told}"):
            asked()


def test_a_file_is_told_by_its_beginning() -> None:
    assert is_pdf(THREE)
    assert not is_pdf(zipped())
    assert not is_pdf(b"\n" + THREE)


@pytest.mark.parametrize(
    ("program", "told"),
    [
        ("import time; time.sleep(60)", "no end of it within 1 seconds"),
        ("while True: pass", "no end of it within 1 seconds"),
        ("import os, time; os.close(1); time.sleep(60)", "no end of it within 1 seconds"),
        ("import os, signal; os.kill(os.getpid(), signal.SIGSEGV)", r"\(SIGSEGV\)"),
        ("raise SystemExit(3)", "it ended with 3"),
        ("raise ValueError('broken page')", "broken page"),
        ("while True: print('x' * 1_000_000)", "more than 40,000,000 bytes that came of it"),
        ("print('hello')", "an answer that begins with b'hello'"),
        ("print('[]')", "an answer that begins with"),
        ("print('{}')", "no answer about its pages"),
        ('print(\'{"pages": 1, "dots": 9}\\n<svg/>\')', "no picture that came of its page"),
        ('print(\'{"pages": 1, "dots": "9"}\')', "no picture that came of its page"),
        ('print(\'{"pages": 0, "dots": 9}\')', "no answer about its pages"),
    ],
)
def test_what_stops_the_process_is_told(
    monkeypatch: pytest.MonkeyPatch, tmp_path: Path, program: str, told: str
) -> None:
    faked(monkeypatch, tmp_path, program)
    with pytest.raises(PageError, match=f"^'roof.pdf': found .*{told}.*expected a simpler page"):
        page_picture(THREE, "roof.pdf", 1, seconds=1)


def test_more_memory_than_it_may_have_is_told(
    monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    """The limit is that of the process: a page that needs more ends there."""
    faked(
        monkeypatch,
        tmp_path,
        "import sys\n"
        "from backspan.exchange import pdf_rendering as one\n"
        "one.MOST_MEMORY = 60_000_000\n"
        "one._document = lambda content: bytearray(1_000_000_000)\n"
        "one.main(*sys.argv[1:])\n",
    )
    with pytest.raises(PageError, match="more than 60,000,000 bytes of memory needed for it"):
        page_picture(THREE, "roof.pdf", 1, seconds=9)


def faked(monkeypatch: pytest.MonkeyPatch, folder: Path, program: str) -> None:
    """Another program in the place of the one that renders."""
    (folder / "fake_renderer.py").write_text(program)
    monkeypatch.setenv("PYTHONPATH", os.pathsep.join([str(folder), *sys.path]))
    monkeypatch.setattr(pdf_page, "_MODULE", "fake_renderer")
