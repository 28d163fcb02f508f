"""Tag, notices and roof sheet: what each says, on how many pages, and what stands at its foot."""

from __future__ import annotations

import io
from collections.abc import Callable
from dataclasses import replace

import pypdfium2
import pytest
from PIL import Image

from backspan.core.words import ENGLISH, language_of
from backspan.papers import (
    Codes,
    Lift,
    PaperContent,
    Stamp,
    paper_pdf,
    sheet_code,
    sheet_content,
)
from backspan.papers.deficiency_notice import MOST_PHOTOGRAPH_BYTES, MOST_PHOTOGRAPHS
from backspan.papers.qr import qr_svg, qr_text
from tests.unit.core.rigs import ON, PROJECT
from tests.unit.papers.record_sample import (
    CODES,
    HEAD,
    ITEMS,
    NOTICE,
    RAISED,
    REASON,
    STAMP,
    TAG,
    deficiency,
    sheet,
    stop,
    tag,
)
from tests.unit.papers.test_pdf import pages_of

SPANISH = language_of("es")
EVERY: dict[str, Callable[[], PaperContent]] = {
    "tag": tag,
    "stop": stop,
    "deficiency": deficiency,
    "sheet": sheet,
}


def jpeg(side: int) -> bytes:
    """A grey photograph."""
    out = io.BytesIO()
    Image.new("RGB", (side, side), "gray").save(out, "JPEG")
    return out.getvalue()


def printed(content: PaperContent) -> list[str]:
    """The text of each page."""
    return pages_of(paper_pdf(content, issued=ON))


def pictures(content: PaperContent) -> int:
    """How many raster pictures its pages show."""
    kind = pypdfium2.raw.FPDF_PAGEOBJ_IMAGE
    document = pypdfium2.PdfDocument(paper_pdf(content, issued=ON))
    return sum(len(list(page.get_objects(filter=[kind]))) for page in document)


@pytest.mark.parametrize("name", EVERY)
def test_every_page_names_site_drop_codes_ledger_and_caution_and_the_head_stands_once(
    name: str,
) -> None:
    pages = printed(EVERY[name]())
    for number, page in enumerate(pages, 1):
        assert PROJECT.site.name in page
        assert f"drop D, configuration {CODES.configuration}, basis code {CODES.basis}" in page
        assert f"entry 142 of the record, head {HEAD[:12]} " in page
        assert f"page {number} of {len(pages)}" in page
        assert ENGLISH.one_line_caution in page
    assert sum(page.count(HEAD) for page in pages) == 1


@pytest.mark.parametrize("name", EVERY)
def test_the_same_content_gives_the_same_bytes(name: str) -> None:
    assert paper_pdf(EVERY[name](), issued=ON) == paper_pdf(EVERY[name](), issued=ON)


def test_a_tag_says_what_is_permitted_by_whom_and_what_ends_it_on_one_page() -> None:
    (page,) = printed(tag())
    for told in (
        "PERMITTED",
        CODES.configuration,
        "November 25, 2026, 12:00",
        "M. Taper, owner's engineer, Taper Engineers, card PE 77",
        "pass, 3 topics taken over",
        "Most people on the stage 2",
        ENGLISH.paper["no_restriction"],
        "Any change of the rig, a stop or a hold",
        "Signature",
    ):
        assert told in page
    assert "RESTRICTED" not in page
    assert "NOBODY ON" not in page


def test_a_tag_with_a_restriction_says_so() -> None:
    (page,) = printed(tag(replace(TAG, restrictions=("one rider only",))))
    assert "RESTRICTED" in page
    assert "one rider only" in page
    assert "PERMITTED" not in page


def test_a_tag_against_which_something_stands_says_nobody_on() -> None:
    (page,) = printed(tag(replace(TAG, against=("Use is on hold.",), restrictions=("one",))))
    assert "NOBODY ON" in page
    assert "Use is on hold." in page
    for word in ("PERMITTED", "RESTRICTED"):
        assert word not in page


def test_a_tag_that_nobody_stated_riders_for_says_so() -> None:
    (page,) = printed(tag(replace(TAG, riders="")))
    assert "Most people on the stage not stated" in page


def test_a_long_tag_stays_on_one_page() -> None:
    long = replace(TAG, restrictions=("one rider only, tools on a line " * 8,) * 3)
    assert len(printed(tag(long))) == 1


def test_the_code_of_a_tag_holds_plain_text_and_is_drawn_in_the_tag() -> None:
    text = qr_text(PROJECT.site.name, STAMP)
    assert text.splitlines() == [
        PROJECT.site.name,
        "drop D",
        f"configuration {CODES.configuration}",
        "entry 142",
        f"head {HEAD[:16]}",
    ]
    content = tag()
    assert content.data["tag"]["code_text"] == text
    assert content.drawings == {"code.svg": qr_svg(text)}
    assert qr_svg(text) != qr_svg(f"{text}.")


def test_a_notice_of_a_stop_says_all_of_it_in_both_languages() -> None:
    (page,) = printed(stop())
    for words in (ENGLISH.paper, SPANISH.paper):
        for name in ("stop_word", "nobody_on", "why", "who_lifts", "no_word_of_mouth"):
            assert words[name] in page
    for told in (
        REASON.said,
        "Drop / Bajada D",
        "November 25, 2026, 12:00",
        "25 de noviembre de 2026, 12:00",
        "By whom, When",
        *REASON.settles.values(),
        SPANISH.one_line_caution,
        SPANISH.note,
        "M. Taper, owner's engineer, or who acts in that place",
        "M. Taper, owner's engineer, o quien actúe en su lugar",
    ):
        assert told in page


def test_a_notice_of_all_of_the_site_names_no_drop_and_counts_what_it_has_no_room_for() -> None:
    reasons = (replace(REASON, lifts=(Lift.HOLD,)), *(REASON,) * 4)
    notice = replace(NOTICE, drop="", name="", who="", reasons=reasons)
    (page,) = printed(stop(notice, Stamp(5, HEAD, ON)))
    assert "Whole site / Toda la obra" in page
    assert "Bajada" not in page
    assert "and 3 more in the record" in page
    assert "y 3 más en el registro" in page
    assert ENGLISH.paper["lift_hold"] in page
    assert f"{ENGLISH.paper['who_permits']}, or who acts in that place" in page


def test_a_notice_of_long_reasons_stays_on_one_page() -> None:
    long = replace(REASON, said="a crack at the weld of the stirrup, " * 14)
    lifts = (Lift.HOLD, Lift.DEFICIENCY, Lift.PERMIT)
    reasons = tuple(replace(long, lifts=(one,)) for one in lifts)
    assert len(printed(stop(replace(NOTICE, reasons=reasons)))) == 1


def test_a_notice_of_a_deficiency_says_what_where_by_whom_and_leaves_lines() -> None:
    (page,) = printed(deficiency())
    for told in (
        "Deficiency 4f-12",
        "left stirrup",
        "a crack of 1 in at the weld",
        "M. Taper, owner's engineer; November 25, 2026, 12:00",
        "USE FORBIDDEN until it is closed",
        "The contractor's answer",
        "The second look",
    ):
        assert told in page


@pytest.mark.parametrize(
    ("forbids", "closed", "told"),
    [
        (False, False, "Use not forbidden by it"),
        (True, True, "CLOSED"),
        (False, True, "CLOSED"),
    ],
)
def test_a_deficiency_that_forbids_nothing_now_does_not_say_it(
    forbids: bool, closed: bool, told: str
) -> None:
    (page,) = printed(deficiency(replace(RAISED, forbids=forbids, closed=closed)))
    assert told in page
    assert "USE FORBIDDEN" not in page


def test_photographs_are_placed_and_all_else_is_named_by_its_hash() -> None:
    evidence: dict[str, bytes | None] = {
        "a" * 64: jpeg(40),
        "b" * 64: b"%PDF-1.7",
        "c" * 64: None,
        "d" * 64: b"\xff\xd8\xff" + bytes(MOST_PHOTOGRAPH_BYTES),
    }
    content = deficiency(evidence=evidence)
    assert list(content.photographs.values()) == [evidence["a" * 64]]
    assert content.data["deficiency"]["named"] == ["b" * 64, "c" * 64, "d" * 64]
    assert pictures(content) == 1
    text = " ".join(printed(content)).replace(" ", "")
    for name in evidence:
        assert name in text


def test_more_photographs_than_there_is_room_for_are_named() -> None:
    evidence: dict[str, bytes | None] = {f"{at:064x}": jpeg(20 + at) for at in range(9)}
    content = deficiency(evidence=evidence)
    assert len(content.photographs) == MOST_PHOTOGRAPHS
    assert len(content.data["deficiency"]["named"]) == 9 - MOST_PHOTOGRAPHS


def test_many_drops_have_their_codes_once() -> None:
    codes = tuple(replace(CODES, drop=f"D{at}") for at in range(3))
    (page,) = printed(stop(NOTICE, Stamp(5, HEAD, ON, codes)))
    assert "3 drops, codes on the last page" in page
    for one in codes:
        assert page.count(f"drop {one.drop}, configuration") == 1


def test_a_drop_without_codes_has_none_at_the_foot() -> None:
    (page,) = printed(stop(NOTICE, Stamp(5, HEAD, ON, (Codes("D", "", ""),))))
    assert "drop D entry 5 of the record" in page.replace(" page 1 of 1", "")


def test_a_sheet_has_a_numbered_blank_or_boxes_for_each_value() -> None:
    (page,) = printed(sheet())
    assert "Sheet 4F2A1" in page
    for item in ITEMS:
        assert f"{item.number} {item.title}" in page
        for one in item.values:
            assert one.number in page
            assert f"planned {one.planned}" in page
            for word in one.words:
                assert word in page
    assert "found 13, QP" in page
    assert page.count(ENGLISH.paper["from_papers"]) == 1
    assert page.count(ENGLISH.paper["none_stated"]) == 1


def test_each_page_of_a_long_sheet_says_of_which_sheet_it_is() -> None:
    items = tuple(replace(one, number=at) for at, one in enumerate(ITEMS * 6))
    content = sheet_content(PROJECT, ("D", "north face"), items, code="4F2A1", stamp=STAMP)
    pages = printed(content)
    assert len(pages) > 1
    assert all(page.count("Sheet 4F2A1") == 1 for page in pages)


def test_other_blanks_have_another_code() -> None:
    assert sheet_code(["1.1 a", "1.2 b"]) == sheet_code(iter(["1.1 a", "1.2 b"]))
    assert sheet_code(["1.1 b", "1.2 a"]) != sheet_code(["1.1 a", "1.2 b"])
