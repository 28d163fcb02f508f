"""A table of anchors or drops comes in by a page: every wrong cell, or rows, then entries."""

from __future__ import annotations

import re
from html import unescape

from backspan.core.model.evidence import Evidence
from backspan.records.api import SiteRecord
from tests.site.bench import TOKEN, Answer, Browser
from tests.site.typist import project_of

ANCHORS, DROPS = "/set-up/roofs/ROOF/table/anchors", "/set-up/roofs/ROOF/table/drops"
TABLE = b'id,edge,along,back,kind,uses,rating\nB1,S,10 ft,12 ft,eye,tieback,"5,000 lb"\n'
TABLE += b"B2,S,20 ft,12 ft,<b>post</b>,,\n"
WRONG = b"id,edge,along,back,kind\nA1,S,10,12 ft,eye\nB2,Q,10 ft,12 ft,\n"
HIDDEN = re.compile(r'name="([a-z_]+)" value="([^"]*)"')


def looked(pages: Browser, content: bytes, at: str = ANCHORS, name: str = "t.csv") -> Answer:
    """A table handed in."""
    return pages.upload(at, at, {name: content}, into="file", does="look", evidence="told")


def carried(answer: Answer) -> dict[str, str]:
    """What the form that states the rows carries."""
    part = answer.body.decode().split('name="ledger_place"')[1].split("</form>")[0]
    token = TOKEN.search(answer.text)
    assert token is not None
    said = {name: unescape(value) for name, value in HIDDEN.findall('name="ledger_place"' + part)}
    return {**said, "csrfmiddlewaretoken": token[1], "does": "state"}


def test_rows_are_shown_and_then_stated_one_entry_each(pages: Browser, record: SiteRecord) -> None:
    before = len(record.entries())
    page = looked(pages, TABLE)
    assert page.status == 200
    assert "2 anchors, as they would be stated" in page.plain
    assert "10'-0\" along S, 12'-0\" back" in page.plain
    assert b"<b>post</b>" not in page.body
    assert len(record.entries()) == before
    done = pages.send(ANCHORS, carried(page))
    assert done.status == 200
    assert "B1" in done.plain
    new = record.entries()[before:]
    assert [(one.envelope.kind, one.envelope.signer.person) for one in new] == [
        ("anchor registered", "MT")
    ] * 2
    made = {one.id: one for one in project_of(record).site.roofs[0].anchors}
    rating = made["B1"].rating
    assert rating is not None
    assert (rating.evidence, rating.by) == (Evidence.TOLD, "MT")
    again = pages.send(ANCHORS, carried(page))
    assert again.status == 400
    assert len(record.entries()) == before + 2


def test_drops_come_in_the_same_way(pages: Browser, record: SiteRecord) -> None:
    page = looked(pages, b"id;edge;start;width\nD2;S;22 ft;20 ft\n", DROPS)
    assert "1 drops, as they would be stated" in page.plain
    assert pages.send(DROPS, carried(page)).status == 200
    assert [one.id for one in project_of(record).drops] == ["D", "D2"]


def test_every_wrong_cell_is_told_and_nothing_is_written(
    pages: Browser, record: SiteRecord
) -> None:
    before = len(record.entries())
    page = looked(pages, WRONG)
    assert page.status == 400
    for told in (
        "line 2, column 1 (id): found 'A1'",
        "line 2, column 3 (along): found '10'",
        "line 3, column 2 (edge): found the edge 'Q'",
        "line 3, column 5 (kind): found an empty cell",
    ):
        assert told in page.plain
    assert "as they would be stated" not in page.plain
    for name, content in (("t.xlsm", b"PK"), ("t.xlsx", b"PK\x03\x04"), ("t.csv", b"\xff")):
        assert looked(pages, content, name=name).status == 400
    assert "more than 5,000,000 bytes" in looked(pages, b"x" * 5_000_001).plain
    assert len(record.entries()) == before


def test_rows_that_a_form_changed_are_judged_anew(pages: Browser, record: SiteRecord) -> None:
    before = len(record.entries())
    said = carried(looked(pages, TABLE))
    for rows in (said["rows"].replace("10 ft", "999 ft"), "[]", ""):
        assert pages.send(ANCHORS, {**said, "rows": rows}).status == 400
    assert pages.send(ANCHORS, {**said, "evidence": "certificate"}).status == 400
    assert pages.send(ANCHORS, {**said, "csrfmiddlewaretoken": "x"}).status == 403
    assert len(record.entries()) == before


def test_nobody_takes_a_table_in_before_somebody_speaks(
    silent: Browser, record: SiteRecord
) -> None:
    before = len(record.entries())
    answer = looked(silent, TABLE)
    assert answer.status == 400
    assert "Nobody said who speaks" in answer.plain
    assert len(record.entries()) == before


def test_pages_of_nothing_are_refused(pages: Browser) -> None:
    assert pages.get("/set-up/roofs/NONE/table/anchors").status == 400
    assert pages.get("/set-up/roofs/ROOF/table/beams").status == 400
