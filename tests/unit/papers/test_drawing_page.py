"""A drawing as a page: of the sheet's own size, the same bytes for the same drawing."""

from __future__ import annotations

import pypdfium2
import pytest

from backspan.core.quantities import Style
from backspan.drawings import elevation, to_svg
from backspan.papers import PaperError, drawing_content, paper_pdf
from tests.unit.core.rigs import ON
from tests.unit.drawings.test_demo import demo

POINTS = 72 / 25.4


@pytest.mark.parametrize("units", list(Style))
def test_a_sheet_is_printed_at_its_own_size(units: Style) -> None:
    scene = elevation(demo(units), "TERRACE", "TS", {})
    content = drawing_content(to_svg(scene), title=scene.title)
    pdf = paper_pdf(content, issued=ON)
    (page,) = pypdfium2.PdfDocument(pdf)
    assert page.get_size() == pytest.approx((scene.width * POINTS, scene.height * POINTS), abs=0.1)
    # Where much of a sheet stands in one column the reader may take its lines for columns.
    assert "Seenfromoutside" in "".join(page.get_textpage().get_text_range().split())
    assert paper_pdf(content, issued=ON) == pdf


def test_a_drawing_without_a_size_is_refused() -> None:
    with pytest.raises(PaperError, match="does not say its size"):
        drawing_content("<svg/>", title="nothing")
