"""A facade as a page: what is seen, its drops as rows, what can be taken along."""

from __future__ import annotations

import pytest

from backspan.drawings.dxf_back import things_in
from tests.site.bench import Browser

AT = "/plan/ROOF/edges/S/"


def test_a_facade_shows_its_drops_and_leads_to_them(pages: Browser) -> None:
    page = pages.get(AT)
    assert page.status == 200
    assert "Seen from outside" in page.plain
    assert 'href="/drops/D/"' in page.text
    assert 'href="/plan/ROOF/"' in page.text
    assert "Drops from left to right: D " in page.text
    today = pages.get("/").text
    stand = today[today.index('class="stand') :].partition(">")[2].partition("<")[0]
    assert f">{stand}<" in page.text
    assert stand in pages.get(f"{AT}picture.svg").text


def test_the_plan_leads_to_every_facade_and_to_its_sheets(pages: Browser) -> None:
    page = pages.get("/plan/ROOF/").text
    assert f'href="{AT}"' in page
    for form in ("svg", "dxf", "pdf"):
        assert f'href="/plan/ROOF/plan.{form}"' in page


@pytest.mark.parametrize("path", ["/plan/ROOF/plan", f"{AT}elevation"])
def test_a_sheet_can_be_taken_along_in_three_forms(pages: Browser, path: str) -> None:
    svg, dxf, pdf = (pages.get(f"{path}.{form}") for form in ("svg", "dxf", "pdf"))
    assert "<svg" in svg.text
    assert "D" in {one.id for one in things_in(dxf.body)}
    assert pdf.body.startswith(b"%PDF-")
    for answer, form in ((svg, "svg"), (dxf, "dxf"), (pdf, "pdf")):
        assert answer.status == 200
        assert f".{form}" in answer.headers["Content-Disposition"]
    assert pages.get(f"{path}.dxf").body == dxf.body


def test_an_edge_or_a_roof_that_is_not_there_is_told(pages: Browser) -> None:
    for path, told in (
        ("/plan/ROOF/edges/X/", "found no edge of roof ROOF 'X', expected one of:"),
        ("/plan/ATTIC/edges/S/", "found no roof 'ATTIC', expected one of: ROOF"),
        ("/plan/ROOF/edges/X/elevation.svg", "found no edge"),
        ("/plan/ATTIC/plan.dxf", "found no roof"),
        (f"{AT}elevation.dwg", "found the form 'dwg', expected one of: svg, dxf, pdf"),
    ):
        page = pages.get(path)
        assert page.status == 400
        assert told in page.plain


def test_the_picture_is_kept_only_under_the_place_it_shows(pages: Browser) -> None:
    named = pages.get(AT).text.partition("picture.svg?at=")[2].partition('"')[0]
    assert "private" in pages.get(f"{AT}picture.svg?at={named}").headers["Cache-Control"]
    assert pages.get(f"{AT}picture.svg").headers["Cache-Control"] == "no-store"
