"""The outline of a roof from a layer: found, walked clockwise, or refused with its place."""

from __future__ import annotations

from itertools import pairwise

import pytest
from ezdxf.document import Drawing

from backspan.core.model.walked import along_and_back, edge_length, is_within
from backspan.exchange.drawings_in import DrawingError, DrawnOutline, roof_outline
from tests.unit.exchange.drawings_in.drawing import FOOT, made, oblong, read

ROOF = {"layer": "ROOF"}
Corners = list[tuple[float, float]]
L_SHAPED: Corners = [(0, 0), (60, 0), (60, 30), (40, 30), (40, 20), (0, 20)]


def outline(document: Drawing, layer: str = "ROOF") -> DrawnOutline:
    return roof_outline(read(document), layer)


def closed(*runs: Corners) -> Drawing:
    document = made()
    for one in runs:
        document.modelspace().add_lwpolyline(one, close=True, dxfattribs=ROOF)
    return document


def lines(corners: Corners) -> Drawing:
    """Lines from each corner to the next, each other one drawn backwards."""
    document = made()
    ends = [*pairwise(corners)]
    for place, (one, other) in enumerate(ends):
        start, end = (other, one) if place % 2 else (one, other)
        document.modelspace().add_line(start, end, dxfattribs=ROOF)
    return document


def refused(document: Drawing, match: str) -> DrawingError:
    with pytest.raises(DrawingError, match=match) as caught:
        outline(document)
    return caught.value


@pytest.mark.parametrize("corners", [L_SHAPED, L_SHAPED[::-1]])
def test_the_roof_lies_on_the_right_hand_whichever_way_it_was_drawn(corners: Corners) -> None:
    found = outline(closed(corners))
    assert {tuple(round(one / FOOT, 9) for one in at) for at in found.outline} == set(L_SHAPED)
    assert found.outline[0] == pytest.approx(tuple(FOOT * one for one in corners[0]))
    middle = (10 * FOOT, 10 * FOOT)
    assert is_within(found.outline, middle)
    south = next(one for one in found.edges if one.start[1] == one.end[1] == 0.0)
    # Looking out over the south facade, its left end is in the east.
    assert south.start[0] > south.end[0]
    assert along_and_back(south, middle) == pytest.approx((50 * FOOT, 10 * FOOT))
    assert [one.id for one in found.edges] == [f"E{place}" for place in range(1, 7)]


def test_edges_that_look_four_ways_are_called_by_them() -> None:
    document = made()
    oblong(document)
    long = {one.id: edge_length(one) / FOOT for one in outline(document, "roof").edges}
    assert long == pytest.approx({"S": 60, "W": 30, "N": 60, "E": 30})


def test_lines_that_meet_within_a_millimetre_are_joined() -> None:
    off = 0.0009 / FOOT
    found = outline(lines([(0, 0), (60, 0), (60, 30), (0, 30), (off, 0)]))
    assert len(found.edges) == 4
    assert found.left_out == 0


def test_a_line_drawn_back_to_its_start_is_closed() -> None:
    document = made()
    run = [(0, 0), (60, 0), (60, 30), (0, 30), (0, 0)]
    document.modelspace().add_lwpolyline(run, dxfattribs=ROOF)
    assert len(outline(document).outline) == 4
    assert len(outline(closed([*run])).outline) == 4


def test_wings_that_end_in_one_line_do_not_cross() -> None:
    wings: Corners = [(0, 0), (60, 0), (60, 30), (40, 30), (40, 10), (20, 10), (20, 30), (0, 30)]
    assert len(outline(closed(wings)).edges) == 8


def test_other_lines_of_the_layer_are_counted() -> None:
    document = made()
    oblong(document)
    document.modelspace().add_line((10, 10), (20, 10), dxfattribs=ROOF)
    assert outline(document).left_out == 1


def test_an_open_line_is_told_with_its_gap_and_both_ends() -> None:
    error = refused(lines([(0, 0), (60, 0), (60, 30), (0, 30), (0, 0.5)]), "does not close")
    assert 'its ends lie 6" apart, at 0, 0 (ft) and 0, 0.5 (ft)' in str(error)
    off = 0.0011 / FOOT
    refused(lines([(0, 0), (60, 0), (60, 30), (0, 30), (off, 0)]), "does not close")


def test_lines_that_meet_in_threes_are_told_with_their_place() -> None:
    document = lines([(0, 0), (60, 0), (60, 30), (0, 30), (0, 0)])
    document.modelspace().add_line((60, 0), (0, 30), dxfattribs=ROOF)
    error = refused(document, r"the ends of 3 lines at 60, 0 \(ft\)")
    assert "the ends of 3 lines at 0, 30 (ft)" in str(error)


def test_several_closed_lines_are_told_with_their_sizes() -> None:
    shed: Corners = [(10, 10), (20, 10), (20, 15), (10, 15)]
    error = refused(closed(L_SHAPED, shed), "2 closed lines")
    assert "60'-0\" by 30'-0\" at 0, 0 (ft); 10'-0\" by 5'-0\" at 10, 10 (ft)" in str(error)
    assert "put it on a layer of its own" in str(error)


def test_edges_that_cross_are_told_with_their_ends_and_their_place() -> None:
    error = refused(closed([(0, 0), (60, 30), (60, 0), (0, 30)]), "edge 3 across edge 1 at 30, 15")
    assert "edge 1 runs from 0, 0 (ft) to 60, 30 (ft)" in str(error)
    refused(closed([(0, 0), (60, 0), (60, 30), (30, 0), (0, 30)]), "edge 3 across edge 1 at 30, 0")
    refused(
        closed([(0, 0), (60, 0), (60, 30), (60, 10), (0, 10)]), "edge 3 across edge 2 at 60, 30"
    )


def test_too_few_corners_and_edges_without_a_length_are_refused() -> None:
    document = closed([(0, 0), (60, 0)])
    refused(document, "an outline of 2 corners; expected 3 at least")
    error = refused(
        closed([(0, 0), (60, 0), (60, 0), (60, 30), (0, 30), (0, 30.001)]),
        r"edge 2 without a length, at 60, 0 \(ft\)",
    )
    assert [one.found[:6] for one in error.problems] == ["edge 2", "edge 5"]


def test_an_outline_of_too_many_corners_is_refused() -> None:
    document = made(6)
    document.modelspace().add_circle((0, 0), 900, dxfattribs=ROOF)
    refused(document, r"an outline of [\d,]+ corners; expected at most 1,000")


def test_a_layer_without_a_line_is_told_with_those_that_have_some() -> None:
    document = made()
    oblong(document, "A-ROOF-EDGE")
    document.modelspace().add_line((0, 0), (1, 1), dxfattribs={"layer": "DOORS"})
    error = refused(document, "layer 'ROOF': found no line on it")
    assert str(error).endswith("layers with lines: 'A-ROOF-EDGE', 'DOORS'")
