"""The package as PDF: every number of the review can be read in it, and user text stays text."""

from __future__ import annotations

import re
from dataclasses import replace

import pypdfium2
import pytest

from backspan.core.words import shown
from backspan.papers import PackageContent, PaperError, package_pdf
from tests.unit.papers.sample import ON, content, demo, reviews


def text_of(pdf: bytes) -> str:
    """All text of a PDF, white space folded."""
    document = pypdfium2.PdfDocument(pdf)
    pages = [page.get_textpage().get_text_range() for page in document]
    return re.sub(r"\s+", " ", " ".join(pages))


def test_every_demand_capacity_clause_and_code_can_be_read_in_the_pdf() -> None:
    names = ["S1", "W1"]
    text = text_of(package_pdf(content(demo(), names), issued=ON))

    for review in reviews(demo(), names):
        assert review.configuration in text
        for finding in review.findings:
            for amount in (finding.demand, finding.capacity):
                assert amount is None or shown(amount, review.units) in text
            for rule in finding.rules:
                assert rule.provenance.clause in text
    assert "It speaks of the configuration named by its code" in text
    assert re.search(r"page 1 of \d+", text)


def test_the_same_review_gives_the_same_bytes() -> None:
    once = package_pdf(content(demo(), ["T2"]), issued=ON)

    assert package_pdf(content(demo(), ["T2"]), issued=ON) == once


def test_what_people_type_is_printed_as_they_typed_it() -> None:
    typed = "Court #1 *bold* _it_ $x$ @ref <tag> \\ [a] `code`"
    project = replace(demo(), site=replace(demo().site, name=typed))

    assert typed in text_of(package_pdf(content(project, ["T2"]), issued=ON))


def test_a_package_that_cannot_be_set_says_so() -> None:
    good = content(demo(), ["T2"])
    broken = PackageContent({**good.data, "drops": "not a list"}, good.drawings)

    with pytest.raises(PaperError, match="could not be set"):
        package_pdf(broken, issued=ON)
