from dataclasses import replace
from itertools import permutations
from xml.etree import ElementTree

import pytest

from backspan.core.model.rigs import CounterweightedBeam
from backspan.core.quantities import Style
from backspan.drawings import DrawingError, Scene, plan_figure, section_figure, to_svg
from backspan.drawings.dimensions import dimension_lines
from backspan.drawings.geometry import bounds, passes, text_quad
from backspan.drawings.paper import frame_of, standard_scales
from backspan.drawings.scene import BLACK, Circle, Layer, Polygon, Symbol, SymbolName
from tests.unit.core.rigs import length, put
from tests.unit.drawings.ink import ink_beyond
from tests.unit.drawings.inspection import (
    dimensions_of,
    lines_on,
    overlapping,
    review_or_none,
    said_on,
    symbols_of,
    texts_on_paper,
    words_of,
)
from tests.unit.drawings.sample import beam_support, drop, metres, on_stand, point, project, roof

WIDEST = 176.0
SMALLEST = 2.0
NOTE = 4.0

DROPS = ("N-01", "N-02", "N-03", "W-01", "E-01")
EVERY = pytest.mark.parametrize("name", DROPS)
BOTH = pytest.mark.parametrize("units", list(Style))


def section(name: str, units: Style = Style.US) -> Scene:
    """The section figure of an invented drop with its invented review."""
    return section_figure(project(units), name, review_or_none(name))


def plan(name: str, units: Style = Style.US) -> Scene:
    """The plan figure of an invented drop with its invented review."""
    return plan_figure(project(units), name, review_or_none(name))


def section_of(*supports: CounterweightedBeam) -> Scene:
    """The section figure of a drop with a suspension point on each support."""
    points = tuple(
        point(f"P{place}", f"{5 + place} ft", "A1", support)
        for place, support in enumerate(supports)
    )
    one = replace(project(), drops=(drop("D1", "N", "4 ft", points),))
    return section_figure(one, "D1", None)


@EVERY
@BOTH
def test_nothing_stands_outside_the_sheet(name: str, units: Style) -> None:
    for scene in (section(name, units), plan(name, units)):
        assert ink_beyond(scene) == []


@EVERY
@BOTH
def test_texts_are_legible_and_do_not_cover_one_another(name: str, units: Style) -> None:
    for scene in (section(name, units), plan(name, units)):
        assert overlapping(scene) == []
        assert min(text.height for text in texts_on_paper(scene)) >= SMALLEST
        ElementTree.fromstring(to_svg(scene))  # noqa: S314 - written by the test itself


@BOTH
def test_a_figure_takes_part_of_a_letter_page(units: Style) -> None:
    for name in DROPS:
        assert section(name, units).width <= WIDEST
        assert plan(name, units).width <= WIDEST / 2
        assert plan(name, units).height <= 80.0 + NOTE
        assert section(name, units).height <= 90.0 + 2 * NOTE


@EVERY
def test_the_same_input_gives_the_same_figure(name: str) -> None:
    assert section(name) == section(name)
    assert plan(name) == plan(name)


@BOTH
@pytest.mark.parametrize("name", ["N-01", "N-02", "N-03", "W-01"])
def test_the_scale_is_a_usual_one_and_is_named_with_a_bar(name: str, units: Style) -> None:
    for scene in (section(name, units), plan(name, units)):
        assert scene.scale in standard_scales(units)
        assert f"Scale {scene.scale.text}" in words_of(scene)
        bars = [
            one
            for one in scene.sheet
            if isinstance(one, Polygon) and one.layer is Layer.SHEET and one.fill == BLACK
        ]
        assert len(bars) == 1


@BOTH
def test_what_is_drawn_is_as_long_as_the_scale_says(units: Style) -> None:
    for scene in (section("N-01", units), plan("N-01", units)):
        frame = frame_of(scene)
        ends = [
            frame.to_paper(end)
            for line in lines_on(scene, Layer.BEAM)
            for end in (line.start, line.end)
        ]
        # The first beam alone: it is level in a section, upright in a plan of this edge.
        own = [end for end in ends if scene.parts or abs(end[0] - ends[0][0]) < 1e-6]
        box = bounds(own)
        assert box is not None
        assert scene.scale is not None
        drawn = max(box[2] - box[0], box[3] - box[1])
        assert drawn == pytest.approx(metres("18 ft") * 1000.0 / scene.scale.ratio)


@pytest.mark.parametrize(
    ("name", "text", "size"),
    [
        ("N-01", "Reach 2'-0\" [610 mm]", "2 ft"),
        ("N-01", 'Tip beyond line 6" [152 mm]', "6 in"),
        ("N-01", "Setback 1'-6\" [457 mm]", "18 in"),
        ("N-02", "Tail gap 1'-0 3/4\" [324 mm]", "1'-0 3/4\""),
    ],
)
def test_every_dimension_is_as_long_as_it_says(name: str, text: str, size: str) -> None:
    scene = section(name)
    # In a narrow place name and length stand in lines of their own.
    ((_, found),) = [one for one in dimensions_of(scene).items() if text.startswith(one[0])]
    assert text in said_on(scene)
    assert abs(found.end[0] - found.start[0]) == pytest.approx(metres(size))


def test_no_text_of_a_dimension_stands_along_the_line_of_another() -> None:
    short = beam_support(reach="18 in", backspan="5 ft")
    for scene in (section_of(short), section_of(short, on_stand()), section("N-01")):
        frame = frame_of(scene)
        lines = {}
        for name, one in dimensions_of(scene).items():
            first, last, through = map(frame.to_paper, (one.start, one.end, one.line_through))
            drawn = dimension_lines(first, last, line_through=through, angle=one.angle)
            lines[name] = (drawn.line, replace(one.text, at=frame.to_paper(one.text.at)))
        for (line, _), (_, text) in permutations(lines.values(), 2):
            box = bounds(text_quad(text))
            assert box is not None
            assert not passes(line, box), text.text


def test_points_that_are_alike_are_drawn_once() -> None:
    assert "Suspension points SP1 and SP2," in said_on(section("N-01"))
    assert len(section("N-01").parts) == 1
    unlike = words_of(section("N-02"))
    assert "Suspension point SP1" in unlike
    assert "Not drawn, for want of room: suspension points SP2." in unlike


def test_each_point_has_its_answer_as_sign_and_word() -> None:
    scene = section("N-02")
    # Of points that differ the one with the worst answer is drawn.
    assert "fail" in words_of(scene)
    assert len(symbols_of(scene, SymbolName.FAIL)) == 1
    assert symbols_of(scene, SymbolName.PASS) == []
    assert "not reviewed" in words_of(section_figure(project(), "N-02", None))


def test_what_nobody_stated_is_said_and_dashed_as_on_the_whole_sheet() -> None:
    scene = section("N-03")
    said = said_on(scene)
    for words in (
        "Reach not measured",
        "Beam BX: length not measured",
        "length of the stack not measured",
        "held: not stated",
        "Setback not measured: place on the roof not known",
        "Not drawn, for want of room: suspension points SP2.",
    ):
        assert words in said
    assert lines_on(scene, Layer.BEAM) == []
    assert lines_on(scene, Layer.NOT_KNOWN) != []


def test_a_rear_stand_is_dimensioned_below_the_roof() -> None:
    scene = section_of(put(beam_support(), ("rear_stand",), length("9 ft")))
    found = dimensions_of(scene)["Rear stand 9'-0\" [2,743 mm]"]
    assert abs(found.end[0] - found.start[0]) == pytest.approx(metres("9 ft"))
    assert ink_beyond(scene) == []
    assert overlapping(scene) == []


def test_a_plan_that_says_otherwise_is_a_thin_outline_within_the_figure() -> None:
    for reach in ("1 ft", "9 ft"):
        scene = section_of(put(beam_support(), ("reach", "planned"), metres(reach)))
        assert any(shape.layer is Layer.PLANNED for shape in scene.drawing)
        assert "planned" in words_of(scene)
        assert ink_beyond(scene) == []
        assert overlapping(scene) == []


def test_a_drop_without_a_rig_says_so() -> None:
    assert "No rig is stated for this drop." in words_of(section("E-01"))
    assert section("E-01").scale is None
    assert "E-01" in words_of(plan("E-01"))


def test_points_that_find_no_room_are_named() -> None:
    reaches = ("2 ft", "3 ft", "18 in", "1 ft", "30 in")
    scene = section_of(*(beam_support(reach=reach) for reach in reaches))
    assert ink_beyond(scene) == []
    assert "Not drawn, for want of room: suspension points P1, P2, P3, P4." in words_of(scene)


def test_tiebacks_and_lifelines_are_seen_up_to_their_anchors() -> None:
    scene = plan("N-01")
    anchors = {one.id: one.at for one in roof().anchors}
    ends = {line.end for line in lines_on(scene, Layer.TIEBACK)}
    starts = {line.start for line in lines_on(scene, Layer.LIFELINE)}
    assert ends == starts == {anchors["A1"], anchors["A2"]}
    assert {one.at for one in symbols_of(scene, SymbolName.ANCHOR)} == ends
    assert {"A1", "A2", "LL1", "LL2"} <= words_of(scene)


def test_a_far_anchor_makes_the_plan_smaller_not_cut() -> None:
    far = drop("D1", "N", "4 ft", (point("SP1", "6 ft", "A5"),))
    scene = plan_figure(replace(project(), drops=(far,)), "D1", None)
    (tieback,) = lines_on(scene, Layer.TIEBACK)
    assert tieback.end == next(one.at for one in roof().anchors if one.id == "A5")
    assert ink_beyond(scene) == []


def test_the_plan_leaves_the_neighbours_out() -> None:
    said = said_on(plan("N-01"))
    assert "N-01" in said
    assert "N-02" not in said
    assert "A3" not in words_of(plan("N-01"))


def test_the_plan_has_a_north_arrow_and_names_the_edge() -> None:
    scene = plan("W-01")
    arrows = [
        one for one in scene.sheet if isinstance(one, Symbol) and one.name is SymbolName.NORTH
    ]
    assert len(arrows) == 1
    assert {"Edge W", "faces Plum Lane", "refer"} <= words_of(scene)


def test_a_point_of_unknown_place_is_dashed_in_plan() -> None:
    scene = plan("N-03")
    rings = [
        one for one in scene.drawing if isinstance(one, Circle) and one.layer is Layer.NOT_KNOWN
    ]
    assert rings != []
    assert "angle not known" in said_on(scene)


@pytest.mark.parametrize("figure", [section_figure, plan_figure])
def test_what_the_project_lacks_is_refused_by_name(figure: object) -> None:
    assert callable(figure)
    with pytest.raises(DrawingError, match=r"no drop 'X'; its drops: N-01, N-02"):
        figure(project(), "X", None)
    lost = replace(project(), drops=(drop("D1", "NE", "4 ft", ()),))
    with pytest.raises(DrawingError, match=r"no edge 'NE'; its edges: W, N"):
        figure(lost, "D1", None)


def test_a_figure_is_smaller_than_a_sheet_and_has_no_title_block() -> None:
    for scene in (section("N-01"), plan("N-01")):
        words = words_of(scene)
        assert not {"Legend", "Basis", "Configuration", "Findings"} & words
