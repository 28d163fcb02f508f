"""What is read of a drawing: equal coordinates, curves within a millimetre, all else counted."""

from __future__ import annotations

import math
from itertools import pairwise

import pytest
from ezdxf.document import Drawing

from backspan.core.model.site import Point
from backspan.exchange.drawings_in import DrawingError, DrawingUnit
from tests.unit.exchange.drawings_in.drawing import FOOT, made, oblong, read, told

MILLIMETRE = 0.001


def sagitta(points: tuple[tuple[float, float], ...], centre: tuple[float, float]) -> float:
    """How far the chords lie inside of a circle whose points are exact."""
    radius = math.dist(points[0], centre)
    return max(
        radius - math.dist(((a[0] + b[0]) / 2, (a[1] + b[1]) / 2), centre)
        for a, b in pairwise(points)
    )


@pytest.mark.parametrize("version", ["R12", "R2000", "R2018"])
def test_what_was_drawn_is_read(version: str) -> None:
    document = made(version=version)
    space = document.modelspace()
    space.add_line((1, 2), (60, 30), dxfattribs={"layer": "Wall"})
    space.add_polyline2d([(0, 0), (10, 0), (10, 5)], close=True, dxfattribs={"layer": "P"})
    space.add_text("EYE BOLT", dxfattribs={"layer": "T", "insert": (3, 4)})
    document.blocks.new("EYE")
    eye = space.add_blockref("EYE", (20, 10), dxfattribs={"layer": "A", "rotation": 30})
    eye.add_attrib("MARK", "A01", (20, 10))
    eye.add_attrib("NOTE", "", (20, 10))
    drawn = read(document, DrawingUnit.FEET)  # the oldest version has no place for units
    line, run = drawn.lines
    assert (line.layer, line.closed) == ("Wall", False)
    assert line.points[1] == pytest.approx((60 * FOOT, 30 * FOOT), abs=1e-9)
    assert (run.closed, len(run.points)) == (True, 3)
    (text,) = drawn.texts
    assert (text.layer, text.text) == ("T", "EYE BOLT")
    assert text.at == pytest.approx((3 * FOOT, 4 * FOOT), abs=1e-9)
    (block,) = drawn.blocks
    assert (block.block, block.layer, dict(block.attributes)) == (
        "EYE",
        "A",
        {"MARK": "A01", "NOTE": ""},
    )
    assert block.at == pytest.approx((20 * FOOT, 10 * FOOT), abs=1e-9)
    assert drawn.size.told == "60 ft by 30 ft or 18.288 m by 9.144 m"


def test_arcs_keep_their_ends_and_a_millimetre() -> None:
    document = made(6)
    space = document.modelspace()
    space.add_arc((10, 0), 50, 350, 80)
    space.add_circle((10, 0), 30)
    space.add_lwpolyline([(0, 0, 1), (40, 0, 0)], format="xyb")
    arc, circle, bulge = read(document).lines
    ends = [(10 + 50 * math.cos(a), 50 * math.sin(a)) for a in map(math.radians, (-10, 80))]
    assert arc.points[0] == pytest.approx(ends[0], abs=1e-9)
    assert arc.points[-1] == pytest.approx(ends[1], abs=1e-9)
    assert circle.closed
    assert not arc.closed
    # A bulge of one is half a circle to the right of its chord: below it.
    assert min(y for _, y in bulge.points) == pytest.approx(-20, abs=MILLIMETRE)
    assert bulge.points[-1] == (40.0, 0.0)
    for one, centre in ((arc, (10, 0)), (circle, (10, 0)), (bulge, (20, 0))):
        assert sagitta(one.points, centre) <= MILLIMETRE + 1e-9


def test_ellipses_and_splines_become_runs_of_points() -> None:
    document = made(6)
    space = document.modelspace()
    space.add_ellipse((0, 0), (20, 0), 0.5)
    space.add_open_spline([(0, 0), (10, 10), (20, 0), (30, 10)])
    ellipse, spline = read(document).lines
    assert ellipse.closed
    assert all(
        (x / 20) ** 2 + (y / 10) ** 2 == pytest.approx(1, abs=1e-9) for x, y in ellipse.points
    )
    assert spline.points[0] == pytest.approx((0, 0), abs=1e-9)
    assert spline.points[-1] == pytest.approx((30, 10), abs=1e-9)


def off(at: Point, start: Point, end: Point) -> float:
    """How far a point lies off a line between two."""
    along, up = end[0] - start[0], end[1] - start[1]
    share = ((at[0] - start[0]) * along + (at[1] - start[1]) * up) / (along**2 + up**2)
    share = max(0.0, min(1.0, share))
    return math.dist(at, (start[0] + share * along, start[1] + share * up))


def test_a_spline_is_followed_within_a_millimetre() -> None:
    document = made(6)
    drawn = document.modelspace().add_open_spline(
        [(0, 0), (10, 10), (20, 0), (30, 10), (31, -40), (80, 30)]
    )
    (line,) = read(document).lines
    fine = [(one.x, one.y) for one in drawn.construction_tool().approximate(400)]
    pieces = list(pairwise(line.points))
    assert max(min(off(at, *piece) for piece in pieces) for at in fine) <= MILLIMETRE


def test_blocks_are_taken_apart_and_told_where_they_are_placed() -> None:
    document = made(6)
    inner = document.blocks.new("INNER")
    inner.add_line((0, 0), (1, 0))
    outer = document.blocks.new("OUTER")
    outer.add_blockref("INNER", (10, 0), dxfattribs={"layer": "KEPT"}).add_attrib("MARK", "A02")
    document.modelspace().add_blockref(
        "OUTER", (100, 50), dxfattribs={"rotation": 90, "xscale": 2, "yscale": 2, "layer": "SET"}
    )
    drawn = read(document)
    (line,) = drawn.lines
    # 10 along, doubled and turned to the left: 20 up.
    assert line.points[0] == pytest.approx((100, 70), abs=1e-9)
    assert line.points[1] == pytest.approx((100, 72), abs=1e-9)
    assert line.layer == "KEPT"
    outside, inside = drawn.blocks
    assert (outside.block, outside.layer) == ("OUTER", "SET")
    assert (inside.block, dict(inside.attributes)) == ("INNER", {"MARK": "A02"})
    assert inside.at == pytest.approx((100, 70), abs=1e-9)


def test_rows_and_columns_of_a_block_are_each_a_place() -> None:
    document = made(6)
    document.blocks.new("POST").add_circle((0, 0), 0.1)
    attributes = {"row_count": 2, "column_count": 3, "row_spacing": 5, "column_spacing": 4}
    document.modelspace().add_blockref("POST", (1, 1), dxfattribs=attributes)
    drawn = read(document)
    assert sorted(one.at for one in drawn.blocks) == [
        (1, 1), (1, 6), (5, 1), (5, 6), (9, 1), (9, 6),
    ]  # fmt: skip
    assert len(drawn.lines) == 6


def test_an_attribute_of_several_lines_is_one_text() -> None:
    document = made(6, "R2018")
    document.modelspace().add_line((0, 0), (9, 0))
    document.blocks.new("EYE")
    one = document.modelspace().add_blockref("EYE", (1, 1))
    attribute = one.add_attrib("MARK", "A01", (1, 1))
    attribute.embed_mtext(document.modelspace().add_mtext("A\\P01"))
    assert dict(read(document).blocks[0].attributes) == {"MARK": "A\n01"}


def test_a_mirrored_plane_is_turned_back() -> None:
    document = made(6)
    attributes = {"extrusion": (0, 0, -1), "layer": "M"}
    document.modelspace().add_lwpolyline([(0, 0), (10, 5)], dxfattribs=attributes)
    assert read(document).lines[0].points == ((0, 0), (-10, 5))


def test_what_is_not_read_is_counted() -> None:
    document = made()
    oblong(document)
    space = document.modelspace()
    space.add_point((1, 1))
    space.add_point((2, 1))
    space.add_hatch().paths.add_polyline_path([(0, 0), (1, 0), (1, 1)])
    space.add_attdef("MARK", (0, 0))
    space.add_line((0, 0, 3), (1, 0, 3))
    space.add_circle((0, 0), 1e12)
    document.layout("Layout1").add_line((0, 0), (1, 1))
    document.layers.add("HIDDEN").off()
    space.add_line((0, 0), (5, 0), dxfattribs={"layer": "hidden"})
    assert told(read(document)) == {
        "POINT: not read, left out": 2,
        "HATCH: not read, left out": 1,
        "ATTDEF: the pattern of an attribute, which is not a text placed": 1,
        "above or below the plan, laid upon it": 1,
        "CIRCLE: an arc of radius 1e+12, left out": 1,
        "in paper space: not read, left out": 1,
        "on a layer that is off or frozen, read all the same": 1,
    }


def test_a_drawing_of_nothing_is_refused_with_what_was_left_out() -> None:
    document = made()
    document.modelspace().add_point((1, 1))
    with pytest.raises(DrawingError, match=r"nothing drawn in model space \(1 POINT: not read"):
        read(document)


def test_references_to_other_files_are_refused_each_by_name() -> None:
    document = made()
    oblong(document)
    document.add_xref_def("tower.dxf", "TOWER")
    document.add_xref_def("podium.dxf", "PODIUM")
    with pytest.raises(DrawingError, match="'TOWER': found a reference to another file") as caught:
        read(document)
    assert [one.where for one in caught.value.problems] == ["block 'TOWER'", "block 'PODIUM'"]
    assert "'podium.dxf'" in str(caught.value)


def nested(levels: int, each: int) -> Drawing:
    document = made()
    document.blocks.new("B0").add_line((0, 0), (60, 0))
    for level in range(1, levels):
        block = document.blocks.new(f"B{level}")
        for place in range(each):
            block.add_blockref(f"B{level - 1}", (place, 0))
    document.modelspace().add_blockref(f"B{levels - 1}", (0, 0))
    return document


def test_blocks_may_be_nested_eight_deep_and_no_deeper() -> None:
    assert len(read(nested(8, 1)).lines) == 1
    with pytest.raises(DrawingError, match="more than 8 blocks, each inside the one before"):
        read(nested(9, 1))
    with pytest.raises(DrawingError, match="more than 8 blocks, each inside the one before"):
        read(nested(400, 1))


def test_blocks_that_grow_when_taken_apart_are_counted_before() -> None:
    with pytest.raises(DrawingError, match="entities once its blocks are taken apart"):
        read(nested(8, 10))


def test_rows_and_columns_are_counted_before_even_of_an_empty_block() -> None:
    document = made()
    oblong(document)
    document.blocks.new("EMPTY")
    many = {"row_count": 30_000, "column_count": 30_000}
    document.modelspace().add_blockref("EMPTY", (0, 0), dxfattribs=many)
    with pytest.raises(DrawingError, match="found 900,000,001 entities once its blocks"):
        read(document)


def test_a_block_inside_itself_is_refused() -> None:
    document = made()
    oblong(document)
    document.blocks.new("LOOP").add_blockref("LOOP", (1, 0))
    document.modelspace().add_blockref("LOOP", (0, 0))
    with pytest.raises(DrawingError, match='block reference cycle detected in block "LOOP"'):
        read(document)
