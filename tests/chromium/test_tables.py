"""A table of anchors taken in by a real browser: by keys and buttons alone, at phone and desk."""

from __future__ import annotations

from pathlib import Path

import pytest

from backspan.records.api import SiteRecord
from tests.architecture.source import ROOT
from tests.chromium.conftest import Opened
from tests.chromium.test_pages import faults

AT = "/set-up/roofs/MAIN/table/anchors"
TABLE = ROOT / "examples" / "tables" / "anchors.csv"


def test_it_is_taken_in_without_a_script(opened: Opened, record: SiteRecord) -> None:
    before = len(record.entries())
    page = opened("/set-up/anchors", script=False)
    page.click("text=anchors of Main roof out of a table")
    page.set_input_files("#file", TABLE)
    page.click("text=look what it says")
    assert len(record.entries()) == before
    page.click("text=state these 3 anchors")
    assert page.url.endswith("/set-up/anchors")
    assert len(record.entries()) == before + 3


@pytest.mark.parametrize("width", [360, 1280])
def test_rows_and_wrong_cells_have_no_fault_of_access(
    opened: Opened, tmp_path: Path, width: int
) -> None:
    page = opened(AT, width=width)
    wrong = tmp_path / "wrong.csv"
    wrong.write_text(TABLE.read_text("utf-8").replace("10 ft", "10").replace(",S,", ",Q,"), "utf-8")
    for file, told in ((TABLE, "3 anchors, as they would be stated"), (wrong, "(edge): found")):
        page.set_input_files("#file", file)
        page.click("text=look what it says")
        assert told in page.inner_text("#page, main, body")
        assert page.evaluate("document.documentElement.scrollWidth") <= width
        assert faults(page) == []
