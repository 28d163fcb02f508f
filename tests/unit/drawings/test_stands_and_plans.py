"""What stands under a beam behind, and where the contractor's plan has a beam."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest

from backspan.core.model.rigs import CounterweightedBeam, Pad, RearBearing
from backspan.core.model.units import UnitKind
from backspan.drawings import Scene, drop_section, plan_figure, roof_plan
from backspan.drawings.scene import Layer, Polygon, SymbolName
from backspan.drawings.tags import tagged, type_of
from backspan.drawings.things import ThingKind
from tests.unit.core.rigs import PROJECT, length, put
from tests.unit.drawings.inspection import (
    lines_on,
    said_on,
    scene_named,
    symbols_of,
    texts_on_paper,
    words_of,
)
from tests.unit.drawings.sample import beam_support, drop, metres, point, project


def section_of(support: CounterweightedBeam) -> Scene:
    """The section of a drop with one suspension point on this support."""
    one = drop("D1", "N", "4 ft", (point("P", "6 ft", "A1", support),))
    return drop_section(replace(project(), drops=(one,)), "D1", None)


def planned(**lengths: str) -> CounterweightedBeam:
    """The rig's left beam with these lengths planned otherwise than found."""
    support = beam_support()
    for name, text in lengths.items():
        support = put(support, (name, "planned"), metres(text))
    return support


def outlines(scene: Scene) -> list[Polygon]:
    """The planned outlines of a scene."""
    return [
        shape
        for shape in scene.drawing
        if isinstance(shape, Polygon) and shape.layer is Layer.PLANNED
    ]


def test_a_rear_stand_stands_where_it_is_stated_from_the_roof_to_the_beam() -> None:
    scene = section_of(put(beam_support(), ("rear_stand",), length("9 ft")))
    (fulcrum,) = symbols_of(scene, SymbolName.FULCRUM)
    feet = lines_on(scene, Layer.FULCRUM)
    behind = [line for line in feet if line.start[0] > fulcrum.at[0] + metres("5 ft")]
    assert len(behind) == 4
    middle = sum(line.start[0] + line.end[0] for line in behind) / 8
    assert middle - fulcrum.at[0] == pytest.approx(metres("9 ft"))
    heights = [end[1] for line in behind for end in (line.start, line.end)]
    assert max(heights) == pytest.approx(fulcrum.at[1])
    roof = min(
        line.end[1] for line in lines_on(scene, Layer.EXISTING) if line.start[1] == line.end[1]
    )
    assert min(heights) == pytest.approx(roof)
    assert {"Rear stand, from the fulcrum", "9'-0\" [2,743 mm]"} <= words_of(scene)


def test_a_rear_stand_that_nobody_stated_is_not_drawn() -> None:
    scene = section_of(put(beam_support(), ("rear_stand",), None))
    (fulcrum,) = symbols_of(scene, SymbolName.FULCRUM)
    assert all(
        line.start[0] < fulcrum.at[0] + metres("2 ft") for line in lines_on(scene, Layer.FULCRUM)
    )
    assert "Rear stand" not in said_on(scene)


def test_a_tieback_runs_from_the_tail_of_its_beam_to_its_anchor_over_all_beams() -> None:
    scene = scene_named("plan")
    anchors = {
        symbol.at
        for name in (
            SymbolName.ANCHOR,
            SymbolName.ANCHOR_CONDITIONAL,
            SymbolName.ANCHOR_OUT,
        )
        for symbol in symbols_of(scene, name)
    }
    ties = lines_on(scene, Layer.TIEBACK)
    # One beam's tail lies nobody knows where, and so does the start of its tieback.
    ties += [
        line
        for line in lines_on(scene, Layer.NOT_KNOWN)
        if line.of is not None and line.of.kind is ThingKind.TIEBACK
    ]
    ends = {
        end
        for layer in (Layer.BEAM, Layer.NOT_KNOWN)
        for line in lines_on(scene, layer)
        for end in (line.start, line.end)
    }
    assert len(ties) == 7
    assert {tie.end for tie in ties} <= anchors
    assert {tie.start for tie in ties} <= ends
    shapes = list(scene.drawing)
    last = max(at for at, one in enumerate(shapes) if one.layer is Layer.BEAM)
    assert all(shapes.index(tie) > last for tie in ties)


def test_a_drop_whose_points_are_alike_says_their_pieces_in_the_table_only() -> None:
    texts = [text.text for text in texts_on_paper(scene_named("plan"))]
    assert not texts[texts.index("N-01/SP1") + 1].endswith("pieces")
    assert texts[texts.index("N-02/SP1") + 1] == "20 pieces"


def test_a_plan_that_says_otherwise_is_a_thin_outline_with_its_word() -> None:
    scene = section_of(planned(reach="5 ft", backspan="9 ft"))
    beam = max(outlines(scene), key=lambda one: max(x for x, _ in one.points) - one.points[0][0])
    (fulcrum,) = symbols_of(scene, SymbolName.FULCRUM)
    tip = metres("5 ft") + beam_support().tip_beyond_line.value  # type: ignore[union-attr]
    assert fulcrum.at[0] - min(x for x, _ in beam.points) == pytest.approx(tip)
    assert all(one.fill is None for one in outlines(scene))
    assert "planned" in words_of(scene)
    shapes = list(scene.drawing)
    first = min(at for at, one in enumerate(shapes) if one.layer is Layer.BEAM)
    assert all(shapes.index(one) < first for one in outlines(scene))


def test_a_plan_that_says_the_same_is_not_drawn() -> None:
    found = beam_support().reach
    assert found is not None
    same = put(beam_support(), ("reach", "planned"), found.value)
    assert outlines(section_of(same)) == []
    assert "planned" not in words_of(section_of(same))


def test_the_roof_plan_shows_the_planned_beam_where_the_difference_can_be_seen() -> None:
    for reach, seen in (("6 ft", 1), ("2 ft", 0)):
        support = planned(reach=reach)
        one = drop("D1", "N", "4 ft", (point("P", "6 ft", "A1", support),))
        scene = roof_plan(replace(project(), drops=(one,)), {}, "ROOF")
        assert len(outlines(scene)) == seen


def test_kit_is_named_by_its_tags_and_then_its_type() -> None:
    kit = PROJECT.kit
    assert tagged(kit, UnitKind.BEAM, ("B-1", "B-1")) == "B-1, type B"
    assert tagged(kit, UnitKind.BEAM, ("B",)) == "B"
    assert type_of(kit, UnitKind.BEAM, "B-1") == "B"
    assert type_of(kit, UnitKind.BEAM, None) is None


def test_the_plan_has_the_rear_stand_across_the_beam_where_it_is_stated() -> None:
    stated = put(beam_support(), ("rear_stand",), length("9 ft"))
    for support, boxes in ((stated, 1), (put(stated, ("rear_stand",), None), 0)):
        one = replace(
            project(), drops=(drop("D1", "N", "4 ft", (point("P", "6 ft", "A1", support),)),)
        )
        for scene in (plan_figure(one, "D1", None), roof_plan(one, {}, "ROOF")):
            found = polygons(scene, Layer.PLATE)
            assert len(found) == boxes
            (fulcrum,) = symbols_of(scene, SymbolName.FULCRUM)
            for box in found:
                middle = tuple(sum(corner[at] for corner in box.points) / 4 for at in (0, 1))
                assert math.dist(middle, fulcrum.at) == pytest.approx(metres("9 ft"))
                assert box.of is not None
                assert box.of.kind is ThingKind.REAR_STAND


def test_the_plates_under_both_stands_are_drawn_to_scale_where_they_are_stated() -> None:
    support = put(beam_support(), ("rear_stand",), length("9 ft"))
    fulcrum = put(support.fulcrum, ("plate_length",), length("2 ft"))
    fulcrum = put(fulcrum, ("pad",), None)
    rear = RearBearing(plate_length=length("18 in"), pad=Pad(length("3 ft"), None, length("2 in")))
    scene = section_of(replace(support, fulcrum=fulcrum, rear=rear))
    (sign,) = symbols_of(scene, SymbolName.FULCRUM)
    plates = sorted(lines_on(scene, Layer.PLATE), key=lambda line: line.start[0])
    sides = [line.end[0] - line.start[0] for line in plates]
    assert sides == pytest.approx([metres("2 ft"), metres("18 in")])
    middles = [(line.start[0] + line.end[0]) / 2 - sign.at[0] for line in plates]
    assert middles == pytest.approx([0.0, metres("9 ft")])
    (pad,) = polygons(scene, Layer.PLATE)
    low, high = (pick(y for _, y in pad.points) for pick in (min, max))
    assert high - low == pytest.approx(metres("2 in"))
    assert plates[1].start[1] == pytest.approx(high)


def test_a_plate_of_unknown_size_is_not_drawn() -> None:
    fulcrum = put(beam_support().fulcrum, ("plate_length",), None)
    scene = section_of(replace(beam_support(), fulcrum=fulcrum, rear=None))
    assert lines_on(scene, Layer.PLATE) == []


def polygons(scene: Scene, layer: Layer) -> list[Polygon]:
    """The outlines of one layer."""
    return [one for one in scene.drawing if isinstance(one, Polygon) and one.layer is layer]
