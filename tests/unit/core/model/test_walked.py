"""Roofs from lengths and turns, with the corners worked out by hand."""

from __future__ import annotations

from types import SimpleNamespace
from typing import Any, cast

import pytest

from backspan.core.model.site import Point
from backspan.core.model.walked import (
    Facing,
    Walked,
    WalkError,
    along_and_back,
    edge_length,
    is_within,
    on_plan,
    read_walk,
    roof_of,
)
from backspan.core.quantities import LENGTH, parse
from backspan.core.sheet.tied import on_edge

MOST = parse("3 in", LENGTH)
OBLONG = "60 ft, right 90, 30 ft, right 90, 60 ft, right 90, 30 ft"
L_SHAPED = "60 ft, right, 30 ft, right, 20 ft, right, 10 ft, left, 40 ft, right, 20 ft"


def walked(text: str, first: Facing = Facing.SOUTH) -> Walked:
    return roof_of(read_walk(text), first=first, most_gap=MOST)


def feet(points: tuple[Point, ...]) -> list[tuple[float, float]]:
    return [(round(x / 0.3048, 6), round(y / 0.3048, 6)) for x, y in points]


def test_an_oblong_roof_has_its_corners_and_is_called_by_its_facings() -> None:
    # Looking south from the roof the left end is in the east: the edge runs from east to west.
    found = walked(OBLONG)
    assert feet(found.outline) == [(60, 0), (0, 0), (0, 30), (60, 30)]
    assert [one.id for one in found.edges] == ["S", "W", "N", "E"]
    assert feet((found.edges[0].start, found.edges[0].end)) == [(60, 0), (0, 0)]
    assert found.gap == 0.0


@pytest.mark.parametrize(
    ("first", "names"),
    [(Facing.WEST, "WNES"), (Facing.NORTH, "NESW"), (Facing.EAST, "ESWN")],
)
def test_the_first_edge_faces_what_was_said(first: Facing, names: str) -> None:
    found = walked(OBLONG, first)
    assert "".join(one.id for one in found.edges) == names
    assert min(x for x, _ in found.outline) == 0.0
    assert min(y for _, y in found.outline) == 0.0


def test_a_roof_with_two_edges_of_one_facing_is_numbered() -> None:
    found = walked(L_SHAPED)
    assert [one.id for one in found.edges] == ["E1", "E2", "E3", "E4", "E5", "E6"]
    assert feet(found.outline) == [(60, 0), (0, 0), (0, 30), (20, 30), (20, 20), (60, 20)]


def test_a_roof_of_odd_angles_closes_within_the_tolerance() -> None:
    # An equilateral triangle: each turn is a third of a full one.
    found = walked("10 ft, right 120, 10 ft, right 120 deg, 10 ft")
    assert [one.id for one in found.edges] == ["E1", "E2", "E3"]
    assert found.gap < 1e-9
    assert found.outline[2][1] / 0.3048 == pytest.approx(8.660254, abs=1e-5)


def test_a_small_gap_is_taken_by_the_last_edge_and_told() -> None:
    found = walked("60 ft, right, 30 ft, right, 60 ft 2 in, right, 30 ft")
    assert found.gap == pytest.approx(2 * 0.0254)
    assert found.edges[-1].end == found.edges[0].start
    # The last edge runs aslant: 2 in across in 30 ft.
    assert edge_length(found.edges[-1]) == pytest.approx(9.144141, abs=1e-6)


def test_a_roof_that_does_not_close_names_the_gap() -> None:
    with pytest.raises(WalkError, match=r"does not close.*5'-0\".*west.*expected within"):
        walked("60 ft, right 90, 30 ft, right 90, 65 ft, right 90, 30 ft")
    # Three feet west and four north of each other: five apart.
    with pytest.raises(WalkError, match=r"found its end 5'-0\""):
        walked("60 ft, right 90, 30 ft, right 90, 63 ft, right 90, 34 ft")


def test_the_edge_of_the_tolerance_closes_and_a_sixteenth_more_does_not() -> None:
    assert walked("60 ft, right, 30 ft, right, 60 ft 2 15/16 in, right, 30 ft").gap < MOST
    with pytest.raises(WalkError, match="does not close"):
        walked("60 ft, right, 30 ft, right, 60 ft 3 1/16 in, right, 30 ft")


def test_a_walk_with_the_roof_on_the_left_is_refused() -> None:
    with pytest.raises(WalkError, match="roof on the left"):
        walked(OBLONG.replace("right", "left"))


def test_edges_that_cross_are_refused() -> None:
    # A spike from the north edge that passes the south edge and comes back.
    text = "60 ft, right, 30 ft, right, 20 ft, right, 40 ft, left, 10 ft, left, 40 ft, right"
    with pytest.raises(WalkError, match="found edge 4 across edge 1"):
        walked(f"{text}, 30 ft, right, 30 ft")
    with pytest.raises(WalkError, match="a loop"):
        walked(f"{OBLONG}, right 90, {OBLONG}")


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("", "found nothing"),
        ("60 ft, 30 ft", "step 2: found '30 ft', expected a turn"),
        ("right 90, 60 ft", "step 1: found 'right 90', expected a length"),
        ("60, right 90, 30", "step 1.*bare number.*step 3.*bare number"),
        ("60 ft, right 90", "found a turn at the end"),
        ("60 ft, right 90, 60 ft", "found 2 edges, expected 3"),
        ("60 ft, right 90, 0 ft, right 90, 60 ft", "edge 2: found no length"),
    ],
)
def test_what_cannot_be_read_is_told(text: str, told: str) -> None:
    with pytest.raises(WalkError, match=told):
        walked(text)


def test_an_anchor_stands_along_and_back_as_a_rig_reads_it() -> None:
    # 8 ft along the south edge from its left, eastern end, 12 ft back: 52 ft east, 12 ft north.
    south, west = walked(OBLONG).edges[:2]
    at = on_plan(south, along=8 * 0.3048, back=12 * 0.3048)
    assert feet((at,)) == [(52, 12)]
    assert feet((on_plan(west, along=8 * 0.3048, back=12 * 0.3048),)) == [(12, 8)]
    assert along_and_back(south, at) == pytest.approx((8 * 0.3048, 12 * 0.3048))
    case = cast("Any", SimpleNamespace(edge=south))
    assert on_edge(case, at) == pytest.approx((8 * 0.3048, 12 * 0.3048))


def test_a_point_is_within_its_roof_or_not() -> None:
    outline = walked(L_SHAPED).outline
    assert is_within(outline, (3.0, 8.5))
    assert not is_within(outline, (10.0, 8.5))
    assert not is_within(outline, (3.0, -1.0))


def test_the_ends_of_two_wings_in_one_line_do_not_cross() -> None:
    # Seen from above a U: both wings end 30 ft north of the south edge.
    wings = (
        "60 ft, right, 30 ft, right, 20 ft, right, 20 ft, left, 20 ft, left, 20 ft, right, 20 ft,"
        " right, 30 ft"
    )
    found = walked(wings)
    assert feet(found.outline)[2:8] == [(0, 30), (20, 30), (20, 10), (40, 10), (40, 30), (60, 30)]
