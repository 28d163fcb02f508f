"""Anchors from the blocks of a drawing, and all that is wrong with their marks and places."""

from __future__ import annotations

import pytest
from ezdxf.document import Drawing

from backspan.core.quantities import LENGTH, parse
from backspan.exchange.drawings_in import DrawingError, anchor_table, anchors_of
from backspan.exchange.tables import TableError
from tests.unit.exchange.drawings_in.drawing import FOOT, made, oblong, read

Placed = tuple[float, float, dict[str, str]]


def drawn(*placed: Placed, block: str = "EYE") -> Drawing:
    document = made()
    oblong(document)
    document.blocks.new(block).add_circle((0, 0), 0.2)
    for x, y, attributes in placed:
        one = document.modelspace().add_blockref(block, (x, y))
        for tag, text in attributes.items():
            one.add_attrib(tag, text, (x, y))
    return document


def refused(*placed: Placed) -> list[str]:
    with pytest.raises(DrawingError, match="found") as caught:
        anchors_of(read(drawn(*placed)), "EYE", "MARK")
    return [str(one) for one in caught.value.problems]


def test_each_block_is_an_anchor_with_its_mark_and_other_attributes() -> None:
    document = drawn(
        (10.5, 20.25, {"MARK": " A01 ", "RATING": "5000 lb"}), (30, 5, {"MARK": "A02"})
    )
    one, other = anchors_of(read(document), "eye", "mark")
    assert (one.id, dict(one.attributes)) == ("A01", {"RATING": "5000 lb"})
    assert one.at == pytest.approx((10.5 * FOOT, 20.25 * FOOT), abs=1e-9)
    assert (other.id, dict(other.attributes)) == ("A02", {})
    assert other.where == "block EYE at 30, 5 (ft)"


def test_a_block_that_is_not_placed_is_told_with_those_that_are() -> None:
    document = drawn((1, 1, {}), (2, 2, {}))
    document.blocks.new("DAVIT")
    document.modelspace().add_blockref("DAVIT", (5, 5))
    with pytest.raises(DrawingError, match=r"'POST': found none placed; .* EYE \(2\), DAVIT \(1\)"):
        anchors_of(read(document), "POST", "MARK")


def test_all_that_is_wrong_is_told_at_once() -> None:
    off = 0.0009 / FOOT
    told = refused(
        (10, 10, {"MARK": "A01"}),
        (20, 10, {"NOTE": "x"}),
        (30, 10, {}),
        (40, 10, {"MARK": "  "}),
        (50, 10, {"MARK": "A01"}),
        (10 + off, 10, {"MARK": "A06"}),
    )
    expected = {
        "block EYE at 20, 10 (ft): found no attribute 'MARK' (it has: NOTE)": "the anchor's mark"
        " in it, such as A01",
        "block EYE at 30, 10 (ft): found no attribute 'MARK' (it has: none at all)": "the anchor's"
        " mark in it, such as A01",
        "block EYE at 40, 10 (ft): found a blank in its attribute MARK": "the anchor's mark, such"
        " as A01",
        "block EYE at 50, 10 (ft): found 'A01' a second time": "a mark of its own; the first is"
        " block EYE at 10, 10 (ft)",
        "block EYE at 10.003, 10 (ft): found the spot of anchor A01, block EYE at 10, 10 (ft)": "a"
        " spot of its own",
    }
    assert told == [f"{found}; expected {wanted}" for found, wanted in expected.items()]


def test_anchors_further_apart_than_a_millimetre_are_two() -> None:
    off = 0.0011 / FOOT
    document = drawn((10, 10, {"MARK": "A01"}), (10 + off, 10, {"MARK": "A02"}))
    assert len(anchors_of(read(document), "EYE", "MARK")) == 2


def test_rows_of_a_table_hold_the_very_places_and_what_an_anchor_has() -> None:
    attributes = {"MARK": "A01", "FIXED_BY": "cast in", "KIND": "", "SHEET": "R-2", "X": "9 ft"}
    found = anchors_of(read(drawn((10.1, 0.0001, attributes))), "EYE", "MARK")
    table = anchor_table(found, "roof.dxf", block="EYE")
    heading, row = table.rows
    said = {heading.cells[at].text: cell.text for at, cell in row.cells.items()}
    assert tuple(parse(said[name], LENGTH) for name in ("x", "y")) == found[0].at
    assert (said["kind"], said["fixed_by"]) == ("EYE", "cast in")
    assert dict(table.left_out) == {"SHEET": 1, "X": 1}
    assert table.address(2) == "block EYE at 10.1, 0.0001 (ft)"


def test_a_text_that_no_table_holds_is_refused_at_its_block() -> None:
    found = anchors_of(read(drawn((10, 10, {"MARK": "A\u202e01"}))), "EYE", "MARK")
    with pytest.raises(TableError, match=r"block EYE at 10, 10 \(ft\): found .* in it"):
        anchor_table(found, "roof.dxf", block="EYE")
