"""A drawing under the plan by taps: four points, a check, a signature, and it lies there."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest

from backspan.core.ledger import bodies
from backspan.core.model.underlay import laid_under
from backspan.records.api import SiteRecord
from tests.chromium.conftest import Opened
from tests.chromium.test_pages import WIDTHS, faults
from tests.site.pdfs import OUTLINE, pdf
from tests.site.underlays import CORNERS, dxf, png

AT = "/plan/MAIN/under"


def handed_in(page: Any, folder: Path, name: str, content: bytes) -> None:
    """A file handed in by its form."""
    path = folder / name
    path.write_bytes(content)
    page.set_input_files("#file", path)
    page.click("button[value=upload]")
    page.wait_for_selector("#under-drawing")


def tapped(page: Any, x: float, y: float) -> None:
    """A tap at a place of the file, in units of what is shown."""
    at = page.evaluate(
        "([x, y]) => { const m = document.getElementById('under-drawing').getScreenCTM();"
        " const p = new DOMPoint(x, y).matrixTransform(m); return [p.x, p.y]; }",
        [x, y],
    )
    page.mouse.click(*at)


def test_taps_fill_the_points_and_the_drawing_lies_under_the_plan(
    opened: Opened, record: SiteRecord, tmp_path: Path
) -> None:
    page = opened(AT)
    handed_in(page, tmp_path, "roof.dxf", dxf())
    page.locator("#under-drawing").scroll_into_view_if_needed()
    high = 2000 * 40 / 60
    # A block is drawn round its place: the outline alone is what is as large as the file.
    for x, y in ((0, high), (2000, high), (2000, high), (2000, 0)):
        tapped(page, x, y)
    values = [float(page.input_value(f"[name={name}]")) for name in ("x1", "y1", "x2", "y4")]
    assert values == pytest.approx([100, 0, 160, 40], abs=0.2)
    assert page.locator(".picked").count() == 4
    page.select_option("[name=at1]", "corner:1")
    page.select_option("[name=at2]", "apart:")
    page.fill("[name=apart]", "60 ft")
    page.fill("[name=taped]", "40 ft")
    page.click("button[value=check]")
    page.wait_for_selector("#fits")
    for width in WIDTHS:
        page.set_viewport_size({"width": width, "height": 800})
        assert page.evaluate("document.documentElement.scrollWidth") <= width
        assert faults(page) == []
    page.set_viewport_size({"width": 1280, "height": 800})
    page.click("button[value=sign]")
    page.wait_for_selector(".under-told")
    body = record.entries()[-1].body
    assert isinstance(body, bodies.UnderlayLaid)
    assert laid_under(body.underlay).confirmed
    page.click("button[value=look]")
    page.wait_for_selector("text=2 anchors, as they would be stated")
    assert faults(page) == []
    page.goto(page.url.split("/plan/")[0] + "/plan/MAIN/")
    image = page.locator("[data-part=underlay] image")
    image.wait_for(state="attached")
    box = image.bounding_box()
    assert box is not None
    assert box["width"] > 100
    page.click(".layers summary")
    page.uncheck("[data-layer=underlay]")
    assert not image.is_visible()
    assert faults(page) == []


def test_a_photograph_without_a_script_is_laid_by_typed_dots(
    opened: Opened, record: SiteRecord, tmp_path: Path
) -> None:
    page = opened(AT, script=False)
    handed_in(page, tmp_path, "roof.png", png(700, 500))
    said = {**CORNERS, "x1": "50", "y1": "450", "x2": "650", "y2": "450"}
    said |= {"x3": "650", "y3": "450", "x4": "650", "y4": "50", "apart": "60 ft"}
    for name, value in said.items():
        if name.startswith("at"):
            page.select_option(f"[name={name}]", "apart:" if name == "at2" else value)
        else:
            page.fill(f"[name={name}]", value)
    page.click("button[value=check]")
    page.wait_for_selector("#fits")
    page.click("button[value=sign]")
    page.wait_for_selector(".under-told")
    body = record.entries()[-1].body
    assert isinstance(body, bodies.UnderlayLaid)
    assert body.underlay.size == (700, 500)


def test_a_page_of_a_pdf_is_chosen_and_picked_on(opened: Opened, tmp_path: Path) -> None:
    page = opened(AT)
    path = tmp_path / "roof.pdf"
    path.write_bytes(pdf(b"", OUTLINE))
    page.set_input_files("#file", path)
    page.click("button[value=upload]")
    page.wait_for_selector("#choose")
    assert faults(page) == []
    page.fill("[name=page]", "2")
    page.click("button[value=page]")
    page.wait_for_selector("#under-drawing")
    page.locator("#under-drawing").scroll_into_view_if_needed()
    for width in WIDTHS:
        page.set_viewport_size({"width": width, "height": 800})
        assert page.evaluate("document.documentElement.scrollWidth") <= width
        assert faults(page) == []
    page.set_viewport_size({"width": 1280, "height": 800})
    tapped(page, 1000, 500)
    assert float(page.input_value("[name=x1]")) == pytest.approx(2917 / 2, abs=5)
    page.click("text=another page of it")
    page.wait_for_selector("#choose")
