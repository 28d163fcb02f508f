"""The package as PDF: every number of the review can be read in it, and user text stays text."""

from __future__ import annotations

import re
from dataclasses import replace

import pypdfium2
import pytest

from backspan.core.quantities import Style, display, shared_unit
from backspan.core.review.front import front_data
from backspan.core.words import ENGLISH, english, shown
from backspan.papers import PaperError, paper_pdf
from tests.unit.core.rigs import put
from tests.unit.papers.sample import EVERYTHING, ON, demo, package, paper, part, reviews


def pages_of(pdf: bytes) -> list[str]:
    """The text of each page of a PDF, white space folded."""
    document = pypdfium2.PdfDocument(pdf)
    texts = (page.get_textpage().get_text_range() for page in document)
    return [re.sub(r"\s+", " ", text) for text in texts]


def text_of(pdf: bytes) -> str:
    """All text of a PDF, white space folded."""
    return " ".join(pages_of(pdf))


def test_every_demand_capacity_clause_and_code_can_be_read_in_the_pdf() -> None:
    names = ["S1", "W1"]
    front = text_of(paper_pdf(package(demo(), names), issued=ON))

    for review in reviews(demo(), names):
        text = text_of(paper_pdf(paper(demo(), review.drop, EVERYTHING), issued=ON))
        assert review.configuration in front
        assert review.configuration in text
        for finding in review.findings:
            compared = [one for one in (finding.demand, finding.capacity) if one is not None]
            units = shared_unit(compared, review.units)
            for one in compared:
                told = shown(one, review.units)
                if one.dimension in units:
                    unit = units[one.dimension]
                    told = display(one.value, one.dimension, review.units, unit=unit)
                assert told in text
            for rule in finding.rules:
                assert rule.provenance.clause in text
        assert re.search(r"page 1 of \d+", text)
    assert "It speaks of the configuration named by its code" in front


def test_a_drops_first_page_names_its_basis_with_the_readings_chosen() -> None:
    first, _ = pages_of(paper_pdf(paper(demo(), "N1"), issued=ON))
    for one in (
        "us-osha-1926-subpart-l 1996 (usual, as it is)",
        "eu-en-1808 2015 (beam not credited)",
    ):
        assert one in first


@pytest.mark.parametrize("drop", ["S3", "S4", "N1"])
def test_the_second_page_holds_the_numbers_of_the_governing_calculation(drop: str) -> None:
    _, second = pages_of(paper_pdf(paper(demo(), drop), issued=ON))
    governing = part(demo(), drop)["calculation"]
    assert governing["message"]["text"] in second
    assert governing["margins_text"] in second
    for rule in governing["rules"]:
        assert rule["clause"] in second
        assert f"[{rule['mark_text']}]" in second
    for one in governing["inputs"]:
        assert f"{one['title']} {one['text']}" in second
        assert one["used_text"] in second
    told = "".join(second.split())
    for step in governing["steps"]:
        # A minus or a point may be set in a sign of its own; the digits stay.
        assert "".join(step["result"]["text"].split()) in told


@pytest.mark.slow
def test_page_one_of_twelve_drops_tells_each_answer_its_reason_and_who_must_act() -> None:
    names = [one.id for one in demo().drops]
    assert len(names) == 12
    first, *_ = pages_of(paper_pdf(package(demo(), names), issued=ON))
    first = " ".join(first.split())
    for review in reviews(demo(), names):
        for reason in front_data(review)["reasons"]:
            assert reason["text"].removeprefix(ENGLISH.phrase("not-judged-here")).strip() in first
            for act in reason["acts"]:
                assert f"{act['who']}: {act['text']}" in first


def test_every_page_names_site_configuration_page_and_caution() -> None:
    front = pages_of(paper_pdf(package(demo(), ["W1"]), issued=ON))
    of_drop = pages_of(paper_pdf(paper(demo(), "W1", EVERYTHING), issued=ON))
    (review,) = reviews(demo(), ["W1"])

    for pages in (front, of_drop):
        for number, page in enumerate(pages, 1):
            assert "Harrier Court" in page
            assert f"page {number} of {len(pages)}" in page
            assert english.ONE_LINE_CAUTION in page
    name = f"Drop W1, {review.configuration}"
    assert [page[:80] for page in of_drop if name not in page] == []
    several = pages_of(paper_pdf(package(demo(), ["W1", "T2"]), issued=ON))
    parts = ("Review of the contractor's rig", "Summary", "Roof plan")
    for pages in (front, several):
        assert [page[:80] for page in pages if not any(part in page for part in parts)] == []
    assert "drop-W1.pdf" in " ".join(several)


def test_a_drawing_lies_on_a_page_of_its_own_size() -> None:
    document = pypdfium2.PdfDocument(paper_pdf(paper(demo(), "T2", EVERYTHING), issued=ON))

    points_per_millimetre = 72 / 25.4
    sizes = {
        tuple(round(one / points_per_millimetre) for one in page.get_size()) for page in document
    }

    assert sizes == {(216, 279), (420, 297)}  # US letter by ANSI/ASME Y14.1, and the drawing's A3


def test_a_metric_project_is_set_on_a4() -> None:
    project = replace(demo(), units=Style.METRIC)

    document = pypdfium2.PdfDocument(paper_pdf(paper(project, "S1"), issued=ON))

    assert [round(one * 25.4 / 72) for one in document[0].get_size()] == [210, 297]  # ISO 216


def test_no_page_has_text_beyond_its_edges_with_very_long_words() -> None:
    word = "Unterbeamtengesellschaftshauptbetriebswerkbauamtsvorsteher" * 2
    project = demo()
    hoists = tuple(
        replace(one, name=word, rated_load=replace(one.rated_load, document=word))
        for one in project.kit.hoists
    )
    project = replace(project, kit=replace(project.kit, hoists=hoists))

    pdf = pypdfium2.PdfDocument(paper_pdf(paper(project, "S1", EVERYTHING), issued=ON))

    for page in pdf:
        text = page.get_textpage()
        rights = [text.get_rect(index)[2] for index in range(text.count_rects())]
        assert max(rights) < page.get_width() - 20  # the margin is 51 points, of a sheet 25


@pytest.mark.slow
@pytest.mark.parametrize("code", ["en", "es"])
@pytest.mark.parametrize("units", list(Style))
def test_no_text_of_a_drop_stands_beyond_its_margins(units: Style, code: str) -> None:
    project = replace(demo(), units=units)
    for drop in ("S3", "N2", "T1", "T2", "W2"):
        pdf = pypdfium2.PdfDocument(paper_pdf(paper(project, drop, code=code), issued=ON))
        for page in pdf:
            text = page.get_textpage()
            boxes = [text.get_rect(index) for index in range(text.count_rects())]
            assert min(box[0] for box in boxes) > 60  # 22 mm for a binder are 62 points
            assert min(box[1] for box in boxes) > 12
            assert max(box[2] for box in boxes) < page.get_width() - 37
            assert max(box[3] for box in boxes) < page.get_height() - 34


def test_spanish_papers_say_that_nobody_checked_them_yet() -> None:
    for content in (package(demo(), ["W2"], "es"), paper(demo(), "W2", code="es")):
        for page in pages_of(paper_pdf(content, issued=ON)):
            assert "pendientes de comprobar por un ingeniero" in page
            assert "The pieces are not held" not in page


def test_loads_of_other_rules_are_in_the_language_of_the_paper() -> None:
    for code, told in (("en", "4 × hoist rated load"), ("es", "4 × carga nominal del aparejo")):
        content = paper(demo(), "S4", EVERYTHING, code)
        assert told in text_of(paper_pdf(content, issued=ON))


def test_the_same_review_gives_the_same_bytes() -> None:
    once = paper_pdf(paper(demo(), "T2"), issued=ON)

    assert paper_pdf(paper(demo(), "T2"), issued=ON) == once


def test_what_people_type_is_printed_as_they_typed_it() -> None:
    typed = "Court #1 *bold* _it_ $x$ @ref <tag> \\ [a] `code` // a -- b 'c' \"d\" ... #panic()"
    project = replace(demo(), site=replace(demo().site, name=typed))

    assert typed in text_of(paper_pdf(paper(project, "T2"), issued=ON))


def test_a_package_that_cannot_be_set_says_so() -> None:
    good = paper(demo(), "T2")
    broken = replace(good, data={**good.data, "drop": "not a record"})

    with pytest.raises(PaperError, match="could not be set"):
        paper_pdf(broken, issued=ON)


def upon_each_other(pdf: bytes) -> list[tuple[str, str]]:
    """Pairs of characters of which one covers much of the other; two of a ligature share a box."""
    found = []
    for page in pypdfium2.PdfDocument(pdf):
        text = page.get_textpage()
        boxes = {
            text.get_charbox(at): text.get_text_range(at, 1) for at in range(text.count_chars())
        }
        placed = sorted((box, one) for box, one in boxes.items() if one.strip() and box[0] < box[2])
        for index, (first, one) in enumerate(placed):
            for second, other in placed[index + 1 :]:
                if second[0] >= first[2]:
                    break
                wide = min(first[2], second[2]) - max(first[0], second[0])
                high = min(first[3], second[3]) - max(first[1], second[1])
                least = min((box[2] - box[0]) * (box[3] - box[1]) for box in (first, second))
                if wide > 0 and high > 0 and wide * high > 0.4 * least:
                    found.append((one, other))
    return found


def test_a_long_formula_does_not_run_over_its_neighbour() -> None:
    """The plain beam of T1, held by nobody: how it turns over governs its second page."""
    site = demo()
    at = next(index for index, one in enumerate(site.drops) if one.id == "T1")
    beam = ("drops", at, "rig", "suspension_points", 0, "counterweighted_beam")
    loose = put(site, (*beam, "unbraced_length"), None)
    assert part(loose, "T1")["calculation"]["check"] == "beam-strength"
    assert upon_each_other(paper_pdf(paper(loose, "T1"), issued=ON)) == []
