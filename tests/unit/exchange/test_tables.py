"""Anchors and drops out of a table: what is stated, and every cell that is wrong by its address."""

from __future__ import annotations

import datetime

import pytest

from backspan.core.model.evidence import Evidence
from backspan.core.model.rigs import Drop
from backspan.core.model.site import Anchor, AnchorFixing, AnchorStanding, AnchorUse
from backspan.core.model.walked import along_and_back
from backspan.core.quantities import FORCE, LENGTH, parse
from backspan.exchange.tables import (
    TableError,
    Told,
    What,
    brought,
    carried,
    read_table,
    shown,
    stated,
)
from tests.unit.core.rigs import ON, PROJECT

TOLD = Told("MT", "2026-11-25T12:00", "told")
HEAD = "id,edge,along,back,kind,uses,rating,inspected,certified,fixed_by,standing\n"
ROW = 'B1,S,10 ft,12 ft,eye bolt,fall arrest; tieback,"5,000 lb",2026-03-03,,cast in,conditional\n'
PLAN = "id,x,y,kind\nB1,10 ft,12 ft,post\n"
DROPS = "id,name,edge,start,width,height,clear_below\nD2,second,S,22 ft,20 ft,90 ft,0 ft\n"


def taken(text: str | bytes, what: What = What.ANCHORS, told: Told = TOLD) -> tuple[object, ...]:
    """What a table in plain text states."""
    content = text if isinstance(text, bytes) else text.encode()
    table = read_table(content, "roof.csv", what)
    return stated(table, what, PROJECT, "ROOF", told, today=ON.isoformat())


def wrong(text: str | bytes, what: What = What.ANCHORS) -> list[str]:
    """All that is wrong with it."""
    with pytest.raises(TableError, match="found") as caught:
        taken(text, what)
    return [str(one) for one in caught.value.problems]


def test_an_anchor_is_stated_as_its_row_says_and_its_rating_is_only_told() -> None:
    (one,) = taken(HEAD + ROW)
    assert isinstance(one, Anchor)
    along, back = along_and_back(PROJECT.site.roofs[0].edges[0], one.at)
    assert along == pytest.approx(parse("10 ft", LENGTH))
    assert back == pytest.approx(parse("12 ft", LENGTH))
    assert one.uses == (AnchorUse.FALL_ARREST, AnchorUse.TIEBACK)
    assert (one.standing, one.fixed_by) == (AnchorStanding.CONDITIONAL, AnchorFixing.CAST_IN)
    assert (one.inspected, one.certified, one.ratings) == ("2026-03-03", None, ())
    assert one.rating is not None
    assert one.rating.value == parse("5,000 lb", FORCE)
    assert (one.rating.evidence, one.rating.by, one.rating.text) == (
        Evidence.TOLD,
        "MT",
        "5,000 lb",
    )


def test_a_place_on_the_plan_and_a_paper_are_taken_too() -> None:
    (one,) = taken(PLAN)
    assert isinstance(one, Anchor)
    assert one.at == (parse("10 ft", LENGTH), parse("12 ft", LENGTH))
    (two,) = taken(DROPS, What.DROPS, Told("MT", "2026-11-25", "drawing", "SW-04"))
    assert isinstance(two, Drop)
    assert (two.roof, two.edge, two.name, two.start) == (
        "ROOF",
        "S",
        "second",
        parse("22ft", LENGTH),
    )
    assert (two.width.evidence, two.width.document) == (Evidence.DRAWING, "SW-04")


def test_rows_are_shown_as_they_would_be_stated() -> None:
    table = read_table((HEAD + ROW).encode(), "roof.csv", "anchors")
    rows = stated(table, What.ANCHORS, PROJECT, "ROOF", TOLD, today=ON.isoformat())
    assert shown(rows, PROJECT, "ROOF") == (
        (
            "B1",
            "10'-0\" along S, 12'-0\" back",
            "eye bolt, cast in",
            "fall arrest, tieback, 5,000 lb (told)",
            "2026-03-03",
            "-",
            "conditional",
        ),
    )


@pytest.mark.parametrize("mark", [b"", b"\xef\xbb\xbf"])
@pytest.mark.parametrize("separator", [",", ";", "\t"])
@pytest.mark.parametrize("end", ["\n", "\r\n"])
def test_every_dialect_says_the_same(mark: bytes, separator: str, end: str) -> None:
    text = PLAN.replace(",", separator).replace("\n", end).encode()
    assert taken(mark + text) == taken(PLAN)


@pytest.mark.parametrize(
    ("text", "told"),
    [
        (HEAD, "line 1: found no row below the headings"),
        ("", "roof.csv: found nothing in it"),
        ("id;x,y,kind\n", "commas and semicolons in the row of headings"),
        (PLAN.replace("kind", "sort"), "line 1, column 4: found the column 'sort'"),
        (PLAN.replace("kind", "id"), "line 1, column 4: found the column 'id' a second time"),
        (PLAN.replace("y,kind", "kind").replace("12 ft,", ""), "line 1: found no column y"),
        ("id,kind\nB1,post\n", "line 1: found no column edge"),
        (PLAN + "B2,,13 ft,post\n", "line 3, column 2 (x): found an empty cell"),
        (PLAN + ",15 ft,13 ft,post\n", "line 3, column 1 (id): found an empty cell"),
        (PLAN + "B2,15 ft,13 ft\n", "line 3, column 4 (kind): found an empty cell"),
        (PLAN + "B2,15 ft,13 ft,post,7\n", "line 3, column 5: found '7' under no heading"),
        (PLAN + "B1,15 ft,13 ft,post\n", "column 1 (id): found 'B1' a second time"),
        (PLAN.replace("B1", "A1"), "column 1 (id): found 'A1', which is an anchor of roof"),
        (PLAN.replace("B1", "<b>"), "line 2, column 1 (id): found '<b>'; expected 1 to 24 letters"),
        (PLAN.replace("B1", "B" * 25), "expected 1 to 24 letters, digits, - or _"),
        (PLAN.replace("post", "p" * 201), "(kind): found a text of 201 characters"),
        (PLAN.replace("post", "po\x1bst"), "U+001B"),
        (PLAN.replace("post", '"po\nst"'), "a line break"),
        (PLAN.replace("post", '"post'), "line 2: found a row that cannot be read"),
        (PLAN.replace("10 ft", "10"), "line 2, column 2 (x): found '10': "),
        (PLAN.replace("10 ft", "ten"), "line 2, column 2 (x): found 'ten': "),
        (PLAN.replace("10 ft", "100 ft"), "(y): found a place outside roof"),
        (PLAN + "B2,10 ft,12 ft,post\n", "line 3, column 3 (y): found the spot of anchor B1"),
        (PLAN.replace("10 ft", "59 ft").replace("12 ft", "30 ft"), "the spot of anchor A1"),
        (HEAD + ROW.replace(",S,", ",Q,"), "line 2, column 2 (edge): found the edge 'Q'"),
        (HEAD + ROW.replace("12 ft", "-1 ft"), "(along): found a place outside roof"),
        (
            HEAD + ROW.replace("tieback", "tie"),
            "(uses): found 'tie'; expected some of: fall arrest",
        ),
        (
            HEAD + ROW.replace("cast in", "glue"),
            "(fixed_by): found 'glue'; expected one of: bolted",
        ),
        (
            HEAD + ROW.replace("conditional", "ok"),
            "(standing): found 'ok'; expected one of: in serv",
        ),
        (HEAD + ROW.replace("5,000 lb", "5000"), "column 7 (rating): found '5000'"),
        (HEAD + ROW.replace("5,000 lb", "0 lb"), "column 7 (rating): found '0 lb'"),
        (HEAD + ROW.replace("2026-03-03", "3/3/26"), "column 8 (inspected): found '3/3/26', not"),
        (HEAD + ROW.replace("2026-03-03", "2026-02-30"), "no day or time of the calendar"),
        (HEAD + ROW.replace("2026-03-03", "2026-11-26"), "a day that is not after 2026-11-25"),
        (b"id,x,y,kind\n\xff,1 ft,1 ft,post\n", "line 2: found the byte 0xFF, which is not UTF-8"),
        ("id,x,y,kind\nB\0,1 ft,1 ft,post\n", "line 2: found the character U+0000"),
        (
            "id,edge,along,back,x,y,kind\nB1,S,1 ft,1 ft,1 ft,1 ft,post\n",
            "found a place on the plan and one from an edge",
        ),
        (PLAN + "B2,1 ft,1 ft,post\n" * 5001, "more than 5,000 rows"),
    ],
)
def test_each_mistake_is_told_with_its_place(text: str | bytes, told: str) -> None:
    assert any(told in one for one in wrong(text)), wrong(text)


@pytest.mark.parametrize(
    ("old", "new", "told"),
    [
        ("D2", "D", "column 1 (id): found 'D', which is a drop of the site"),
        (",S,", ",Q,", "column 3 (edge): found the edge 'Q', which is not there"),
        (",S,", ",,", "column 3 (edge): found an empty cell"),
        ("22 ft", "-1 ft", "column 4 (start): found a drop that begins before its edge"),
        ("22 ft", "41 ft", "column 5 (width): found a drop that ends at 61'-0\""),
        ("22 ft", "22", "column 4 (start): found '22'"),
        ("20 ft", "", "column 5 (width): found an empty cell"),
        ("90 ft", "0 ft", "column 6 (height): found '0 ft'"),
        ("width", "to", "line 1: found no column width"),
    ],
)
def test_each_mistake_of_a_drop_is_told_with_its_place(old: str, new: str, told: str) -> None:
    found = wrong(DROPS.replace(old, new), What.DROPS)
    assert any(told in one for one in found), found


def test_all_mistakes_are_told_at_once_and_each_once() -> None:
    rows = "B1,S,10,12 ft,,tie,5000,soon,,glue,\nB1,Q,10 ft,12 ft,post,,,,2027-01-01,,ok\n"
    found = wrong(HEAD + rows)
    cells = [one.split(":")[0] for one in found]
    assert sorted(cells) == sorted(
        [
            "line 3, column 1 (id)",
            "line 2, column 3 (along)",
            "line 2, column 5 (kind)",
            "line 2, column 6 (uses)",
            "line 2, column 7 (rating)",
            "line 2, column 8 (inspected)",
            "line 2, column 10 (fixed_by)",
            "line 3, column 2 (edge)",
            "line 3, column 9 (certified)",
            "line 3, column 11 (standing)",
        ]
    )


def test_a_roof_that_is_not_there_is_told() -> None:
    table = read_table(PLAN.encode(), "roof.csv", "anchors")
    with pytest.raises(TableError, match="no roof 'ATTIC'; expected one of its roofs: ROOF"):
        stated(table, What.ANCHORS, PROJECT, "ATTIC", TOLD, today=ON.isoformat())


def test_a_table_is_carried_by_a_form_whole_or_refused() -> None:
    table = read_table((HEAD + ROW).encode(), "roof.csv", "anchors")
    assert brought(carried(table)) == table
    odd = ('["a", null, [[1, [[0, "id"]]]]]', '["a", null, [[1e999, []]]]')
    for text in (*odd, "", "[]", "[1, null, []]", '["a", null, [[1, [[1, 2]]]]]', "[" * 9_999):
        with pytest.raises(TableError, match="choose the file again"):
            brought(text)


@pytest.mark.parametrize("name", ["roof.xlsm", "roof.xls", "roof.ods", "roof", "roof.txt"])
def test_a_file_of_another_kind_is_refused(name: str) -> None:
    with pytest.raises(TableError, match=r"a table as \.csv or \.xlsx"):
        read_table(PLAN.encode(), name, "anchors")


def test_five_thousand_anchors_are_read_before_a_person_loses_patience() -> None:
    rows = "".join(
        f"B{at},{1 + at % 58} ft {at // 58 % 12} in,{1 + at // 696} ft,post\n" for at in range(5000)
    )
    before = datetime.datetime.now(datetime.UTC)
    assert len(taken("id,x,y,kind\n" + rows)) == 5000
    assert (datetime.datetime.now(datetime.UTC) - before).total_seconds() < 30
