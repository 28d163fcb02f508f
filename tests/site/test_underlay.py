"""A drawing or a picture under the plan: nothing of it is there before a third length agrees."""

from __future__ import annotations

import math
import re
from dataclasses import replace

import pytest

from backspan.core.ledger import bodies
from backspan.core.ledger.fold import fold
from backspan.core.ledger.kinds import Body
from backspan.core.model.evidence import Evidence
from backspan.core.model.underlay import laid_under
from backspan.records.api import SiteRecord
from backspan.records.store import Statement
from tests.site.bench import IMPORTER, NOON, Answer, Browser
from tests.site.typist import project_of
from tests.site.underlays import AT, CORNERS, DOTS, dxf, handed_in, picked, png

PLAN, ANCHORS = "/plan/ROOF/", "/plan/ROOF/under/anchors"
SVG = b'<svg xmlns="http://www.w3.org/2000/svg"><script>alert(1)</script></svg>'


def signed(pages: Browser, name: str = "roof.dxf", content: bytes | None = None) -> Answer:
    """A file handed in, checked and signed."""
    shown = handed_in(pages, name, dxf() if content is None else content)
    return picked(pages, shown, does="sign", **(CORNERS if name.endswith("dxf") else DOTS))


def bodies_of(record: SiteRecord) -> list[Body]:
    """What was stated, in its order."""
    return [one.body for one in record.entries()]


def nothing_under(pages: Browser) -> bool:
    """Whether a plan shows nothing under it, and hands nothing out."""
    page = pages.get(PLAN)
    assert page.status == 200
    return b'data-part="underlay"' not in page.body and (
        pages.get("/plan/ROOF/under.svg").status == 400
    )


def test_a_drawing_lies_under_the_plan_once_it_is_checked_and_signed(
    pages: Browser, record: SiteRecord
) -> None:
    before = len(record.entries())
    shown = handed_in(pages, "roof.dxf", dxf())
    assert shown.status == 200
    assert "in feet (the file says)" in shown.plain
    (kept,) = record.evidence.all()
    drawn = re.search(r'<image href="([^"]+)"', shown.text)
    assert drawn is not None
    image = pages.get(drawn[1])
    assert image.headers["Content-Type"] == "image/svg+xml"
    assert image.body.count(b"<path") == 2  # the outline's layer, and that of the blocks
    looked = picked(pages, shown, **CORNERS)
    assert looked.status == 200
    assert "The third length agrees" in looked.plain
    assert len(record.entries()) == before
    assert nothing_under(pages)
    done = picked(pages, shown, does="sign", **CORNERS)
    assert done.status == 200
    (entry,) = record.entries()[before:]
    assert isinstance(entry.body, bodies.UnderlayLaid)
    assert (entry.envelope.signer.person, entry.envelope.evidence) == ("MT", (kept,))
    under = entry.body.underlay
    assert (under.file, under.name, under.unit) == (kept, "roof.dxf", "ft")
    assert under.places == ("corner 1", "corner 2")
    assert (under.taped.text, under.taped.evidence) == ("40 ft", Evidence.MEASURED)
    assert laid_under(under).on_roof((130 * 0.3048, 0.0)) == pytest.approx((9.144, 0.0))
    page = pages.get(PLAN)
    for told in ("roof.dxf", "corner 1 and corner 2", "M. Tape, competent person", "no difference"):
        assert told in page.plain
    assert "drawing under it" in page.text
    image = pages.get(address_of(page))
    assert (image.status, image.body.count(b"<path")) == (200, 2)
    assert "immutable" in image.headers["Cache-Control"]


def address_of(page: Answer) -> str:
    """Where the image under a plan is asked for."""
    found = re.search(r'<g data-part="underlay"><image href="([^"]+)"', page.text)
    assert found is not None
    return found[1]


def test_an_act_does_not_send_it_again(pages: Browser) -> None:
    signed(pages)
    look = {"does": "look", "draft": "[]", "of": "site/roofs/ROOF"}
    page = pages.get(PLAN).text
    token = re.search(r'name="csrfmiddlewaretoken" value="([^"]+)"', page)
    assert token is not None
    part = pages.send(PLAN, {"csrfmiddlewaretoken": token[1], **look}, HTTP_X_PART="plan")
    assert part.status == 200
    assert "underlay" not in part.text


def test_a_photograph_is_laid_by_one_corner_and_a_taped_length(
    pages: Browser, record: SiteRecord
) -> None:
    assert signed(pages, "roof.png", png(700, 500)).status == 200
    body = bodies_of(record)[-1]
    assert isinstance(body, bodies.UnderlayLaid)
    assert body.underlay.size == (700, 500)
    assert body.underlay.places == ("corner 1", "60 ft from the first")
    corner = laid_under(body.underlay).on_roof((650.0, 50.0))
    assert corner == pytest.approx((18.288, 12.192))
    page = pages.get(PLAN)
    assert f'<image href="/evidence/{body.underlay.file}" width="700" height="500"' in page.text
    assert address_of(page) == f"/evidence/{body.underlay.file}"


def test_points_may_be_told_from_an_edge_or_by_an_anchor(
    pages: Browser, record: SiteRecord
) -> None:
    shown = handed_in(pages, "roof.dxf", dxf())
    by = {"at1": "edge:S", "along1": "60 ft", "back1": "0 ft", "at2": "anchor:A1"}
    by |= {"x2": "159", "y2": "30"}
    assert picked(pages, shown, does="sign", **{**CORNERS, **by}).status == 200
    body = bodies_of(record)[-1]
    assert isinstance(body, bodies.UnderlayLaid)
    assert body.underlay.places == ("60 ft along and 0 ft back from edge S", "anchor A1")


@pytest.mark.parametrize("does", ["check", "sign"])
def test_a_third_length_that_disagrees_is_refused_with_both_numbers(
    pages: Browser, record: SiteRecord, does: str
) -> None:
    before = len(record.entries())
    shown = handed_in(pages, "roof.dxf", dxf())
    page = picked(pages, shown, **{**CORNERS, "taped": "42 ft"}, does=does)
    assert page.status == 400
    assert "found 40'-0\" on what was laid and 42'-0\" by the tape" in page.plain
    assert "(610 mm) shorter on it" in page.plain
    assert "(128 mm) between them" in page.plain
    assert "agrees" not in page.plain
    assert len(record.entries()) == before
    assert nothing_under(pages)


def test_a_third_length_within_the_tolerance_is_taken(pages: Browser) -> None:
    shown = handed_in(pages, "roof.dxf", dxf())
    assert picked(pages, shown, **{**CORNERS, "taped": "40 ft 4 in"}).status == 200
    assert picked(pages, shown, **{**CORNERS, "taped": "40 ft 6 in"}).status == 400


@pytest.mark.parametrize(
    "between",
    [
        {"x3": "100", "y3": "0", "x4": "160", "y4": "0", "taped": "60 ft"},
        {"x3": "160.1", "y3": "0.1", "x4": "100", "y4": "0.1", "taped": "60 ft"},
        {"x3": "130", "y3": "0", "x4": "135", "y4": "0", "taped": "5 ft"},
        {"x3": "130", "y3": "0", "x4": "130", "y4": "0", "taped": "5 ft"},
    ],
)
def test_a_check_that_shows_nothing_is_refused(pages: Browser, between: dict[str, str]) -> None:
    shown = handed_in(pages, "roof.dxf", dxf())
    page = picked(pages, shown, **{**CORNERS, **between})
    assert page.status == 400
    assert "the third length: found" in page.plain


def test_a_drawing_whose_units_are_others_is_refused(pages: Browser, record: SiteRecord) -> None:
    before = len(record.entries())
    for content, far in ((dxf(units=6), {}), (dxf(wide=66.0), {"x2": "166"})):
        shown = handed_in(pages, "roof.dxf", content)
        page = picked(pages, shown, does="sign", **{**CORNERS, **far})
        assert page.status == 400
        assert "the drawing's scale: found its two points" in page.plain
    assert len(record.entries()) == before


def test_a_drawing_without_units_asks_for_them(pages: Browser, record: SiteRecord) -> None:
    page = handed_in(pages, "roof.dxf", dxf(units=0))
    assert page.status == 400
    assert "no units ($INSUNITS is 0); expected the units it was drawn in" in page.plain
    assert record.evidence.all() == ()
    shown = handed_in(pages, "roof.dxf", dxf(units=0), unit="ft")
    assert shown.status == 200
    assert "in feet (you said)" in shown.plain
    assert picked(pages, shown, does="sign", **CORNERS).status == 200
    assert not nothing_under(pages)
    assert handed_in(pages, "roof.dxf", dxf(), unit="cubits").status == 400


@pytest.mark.parametrize(
    ("name", "content", "told"),
    [
        ("roof.pdf", b"%PDF-1.7\n", "it was cut short"),
        ("roof.svg", SVG, "may carry a program"),
        ("roof.png", b"\x89PNG\r\n\x1a\n\0\0\0\rIHDX" + b"\0" * 13, "found no size in its header"),
        ("roof.png", b"\x89PNG\r\n\x1a\n", "found no size in its header"),
        ("roof.png", png(1, 1)[:16] + b"\xff" * 8, "dots, expected 1 to 30,000 a side"),
        ("roof.jpg", b"\xff\xd8\xff\xda" + b"\0" * 40, "found no size in its header"),
        ("roof.dxf", SVG, "found no DXF"),
        ("roof.dxf", b"", "nothing in it"),
        ("roof.dxf", dxf().replace(b"160.0", b"nan", 1), "the number nan"),
    ],
)
def test_a_bad_file_is_refused_and_nothing_of_it_is_kept(
    pages: Browser, record: SiteRecord, name: str, content: bytes, told: str
) -> None:
    before = len(record.entries())
    page = handed_in(pages, name, content)
    assert page.status == 400
    assert told in page.plain
    assert record.evidence.all() == ()
    assert len(record.entries()) == before


def test_what_is_too_large_is_refused(pages: Browser, record: SiteRecord) -> None:
    page = handed_in(pages, "roof.png", png(1, 1) + b"\0" * 41_000_000)
    assert page.status == 400
    assert "expected at most 40 MB" in page.plain
    assert record.evidence.all() == ()


@pytest.mark.parametrize(
    "said",
    [
        {"x1": "nan"},
        {"y4": "inf"},
        {"x2": "1e400"},
        {"x3": ""},
        {"y1": "left"},
        {"at1": "corner:9"},
        {"at1": "apart:"},
        {"at1": "edge:S"},
        {"at1": "edge:S", "along1": "4", "back1": "1 ft"},
        {"at2": "anchor:NONE"},
        {"at2": "corner:1"},
        {"at2": "apart:"},
        {"at2": "apart:", "apart": "0 ft"},
        {"taped": ""},
        {"taped": "40"},
        {"taped": "-40 ft"},
        {"x2": "100"},
        {"does": "trust"},
    ],
)
def test_what_is_typed_wrong_is_told_and_writes_nothing(
    pages: Browser, record: SiteRecord, said: dict[str, str]
) -> None:
    before = len(record.entries())
    shown = handed_in(pages, "roof.dxf", dxf())
    page = picked(pages, shown, **{**CORNERS, "does": "sign", **said})
    assert page.status == 400
    assert re.search(r"found .*(expected|wanted)", page.plain)
    assert len(record.entries()) == before
    assert nothing_under(pages)


def test_a_place_beside_the_picture_is_refused(pages: Browser) -> None:
    shown = handed_in(pages, "roof.png", png(700, 500))
    page = picked(pages, shown, **{**DOTS, "x1": "701"})
    assert page.status == 400
    assert "expected a place on the picture, 0, 0 to 700, 500" in page.plain


def test_nobody_hands_in_or_signs_before_somebody_speaks(
    silent: Browser, record: SiteRecord
) -> None:
    page = handed_in(silent, "roof.dxf", dxf())
    assert page.status == 400
    assert "Nobody said who speaks" in page.plain
    assert record.evidence.all() == ()


def test_the_last_one_counts_and_a_correction_takes_it_back(
    pages: Browser, record: SiteRecord
) -> None:
    signed(pages)
    signed(pages, "roof.png", png(700, 500))
    assert "/evidence/" in address_of(pages.get(PLAN))
    name = record.entries()[-1].hash
    assert pages.post(f"/entries/{name}/", why="the wrong roof").status == 200
    assert address_of(pages.get(PLAN)).startswith("/plan/ROOF/under.svg?")
    name = record.entries()[-2 - 1].hash
    assert pages.post(f"/entries/{name}/", why="an old drawing").status == 200
    assert nothing_under(pages)


def test_an_entry_that_does_not_hold_shows_nothing(pages: Browser, record: SiteRecord) -> None:
    """Whatever wrote it: what counts is worked out from its points and lengths."""
    signed(pages)
    body = bodies_of(record)[-1]
    assert isinstance(body, bodies.UnderlayLaid)
    long = replace(body.underlay, taped=replace(body.underlay.taped, value=15.0), difference=0.0)
    beside = replace(body.underlay, taped=replace(body.underlay.taped, value=-1.0))
    for under in (long, beside):
        record.say([Statement(replace(body, underlay=under), IMPORTER)], at=NOON.isoformat())
        assert nothing_under(pages)
        assert "does not hold: it is not shown" in pages.get(PLAN).plain
        assert pages.post(ANCHORS, AT, block="EYE", attribute="MARK").status == 400


def test_it_changes_nothing_of_the_site(pages: Browser, record: SiteRecord) -> None:
    before = project_of(record)
    signed(pages)
    assert project_of(record) == before
    assert not fold(record.entries()).unplaced


def test_what_came_since_the_page_was_made_is_seen_first(
    pages: Browser, record: SiteRecord
) -> None:
    shown = handed_in(pages, "roof.dxf", dxf())
    signed(pages, "roof.png", png(700, 500))
    before = len(record.entries())
    late = picked(pages, shown, does="sign", **CORNERS)
    assert late.status == 400
    assert "Since you opened this page" in late.plain
    assert len(record.entries()) == before


def test_blocks_of_a_confirmed_drawing_become_anchors(pages: Browser, record: SiteRecord) -> None:
    assert "Anchors out of it" not in pages.get(AT).plain
    signed(pages)
    page = pages.get(AT)
    assert "EYE (2)" in page.plain
    assert "MARK (2)" in page.plain
    before = len(record.entries())
    chosen = {"block": "EYE", "attribute": "MARK"}
    rows = pages.post(ANCHORS, AT, **chosen, does="look")
    assert rows.status == 200
    assert "2 anchors, as they would be stated" in rows.plain
    assert "50'-0\" along S, 12'-0\" back" in rows.plain
    assert len(record.entries()) == before
    entry = re.search(r'name="entry" value="([0-9a-f]+)"', rows.text)
    assert entry is not None
    state = {**chosen, "entry": entry[1], "does": "state"}
    other = pages.post(ANCHORS, AT, **{**state, "entry": "ab" * 32})
    assert other.status == 400
    assert pages.post(ANCHORS, AT, **state).status == 200
    new = record.entries()[before:]
    assert [type(one.body) for one in new] == [bodies.AnchorRegistered] * 2
    assert {one.envelope.evidence for one in new} == {record.evidence.all()}
    anchors = {one.id: one for one in project_of(record).site.roofs[0].anchors}
    assert math.dist(anchors["B1"].at, (3.048, 3.6576)) < 1e-9
    again = pages.post(ANCHORS, AT, **chosen, does="look")
    assert again.status == 400
    assert "'B1'" in again.plain


def test_every_problem_of_the_blocks_is_told_before_anything_is_written(
    pages: Browser, record: SiteRecord
) -> None:
    signed(pages, content=dxf(marks=("A1", "B1", "B1", "")))
    before = len(record.entries())
    said = {"block": "EYE", "does": "state"}
    page = pages.post(ANCHORS, AT, **said, attribute="MARK")
    assert page.status == 400
    assert "'B1' a second time" in page.plain
    assert "a blank in its attribute MARK" in page.plain
    page = pages.post(ANCHORS, AT, **said, attribute="NUMBER")
    assert page.plain.count("no attribute 'NUMBER'") == 4
    assert len(record.entries()) == before


def test_a_picture_has_no_anchors_in_it(pages: Browser) -> None:
    signed(pages, "roof.png", png(700, 500))
    assert "Anchors out of it" not in pages.get(AT).plain
    answer = pages.post(ANCHORS, AT, block="EYE", attribute="MARK")
    assert answer.status == 400


def test_a_roof_that_is_not_drawn_yet_may_have_a_drawing_first(pages: Browser) -> None:
    at = "/plan/R1/under"
    shown = handed_in(pages, "roof.dxf", dxf(), at=at)
    by = {"at1": "origin:", "at2": "apart:", "apart": "60 ft"}
    assert picked(pages, shown, at, does="sign", **{**CORNERS, **by}).status == 200
    assert "/plan/R1/under.svg?" in address_of(pages.get("/plan/R1/"))


def test_pages_of_nothing_are_refused(pages: Browser) -> None:
    missing = f"{AT}?file={'ab' * 32}&name=roof.dxf"
    for path in ("/plan/NONE/under", missing, f"{AT}?file=x&name=y", "/plan/ROOF/under/drawn.svg"):
        assert pages.get(path).status == 400
    shown = handed_in(pages, "roof.dxf", dxf())
    found = re.search(r'name="file" value="([0-9a-f]+)"', shown.text)
    assert found is not None
    assert pages.get(f"{AT}?file={found[1]}&name=").status == 400
    assert pages.get(f"{AT}?file={found[1]}&name=<b>x").status == 200
    assert b"<b>x" not in pages.get(f"{AT}?file={found[1]}&name=<b>x").body
