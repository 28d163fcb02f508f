"""Whatever is typed can be read on paper: as itself, or as the number of its character."""

from __future__ import annotations

import json
from dataclasses import replace
from pathlib import Path

import pypdfium2
import pytest
import typst

import backspan.papers
from backspan.papers.characters import COVERED, all_printable, printable
from backspan.papers.pdf import paper_pdf
from tests.unit.papers.sample import ON, demo, package

FONTS = Path(backspan.papers.__file__).parent / "fonts"


@pytest.mark.parametrize(
    ("typed", "printed"),
    [
        ("Łódź, Ærø, Škofja Loka, ½ in ✓", "Łódź, Ærø, Škofja Loka, ½ in ✓"),
        ("香港 Court", "[U+9999][U+6E2F] Court"),
        ("one\ntwo\tthree", "one two three"),
        ("Cafe\u0301", "Café"),
        ("a\u202eb\x07", "a[U+202E]b[U+0007]"),
        ("", ""),
    ],
)
def test_a_character_is_printed_as_itself_or_as_its_number(typed: str, printed: str) -> None:
    assert printable(typed) == printed


def test_every_text_of_plain_data_is_made_printable() -> None:
    assert all_printable({"中": ["中", 1, None, {"a": "b"}]}) == {
        "中": ["[U+4E2D]", 1, None, {"a": "b"}]
    }


def test_the_fonts_have_every_character_that_is_said_to_be_covered(tmp_path: Path) -> None:
    # PDF/A refuses a document with a character that no font has.
    (tmp_path / "all.json").write_text(json.dumps(" ".join(sorted(COVERED))), encoding="utf-8")
    source = tmp_path / "all.typ"
    source.write_text(
        '#set text(font: ("Source Sans Pro", "DejaVu Sans Mono"))\n'
        '#for weight in ("regular", "bold") [#text(weight: weight, json("all.json"))]',
        encoding="utf-8",
    )

    pdf = typst.compile(
        str(source), font_paths=[str(FONTS)], ignore_system_fonts=True, pdf_standards=["a-2b"]
    )

    assert isinstance(pdf, bytes)


def test_a_name_in_another_script_is_in_the_pdf_by_its_numbers() -> None:
    project = replace(demo(), site=replace(demo().site, name="香港 Court"))

    pdf = pypdfium2.PdfDocument(paper_pdf(package(project, ["T2"]), issued=ON))

    assert "[U+9999][U+6E2F] Court" in pdf[0].get_textpage().get_text_range()
