import math
from dataclasses import replace

import pytest

from backspan.core.findings import Verdict
from backspan.core.model.project import Project
from backspan.core.model.site import Roof
from backspan.core.quantities import Style
from backspan.drawings import DrawingError, Scene, roof_plan
from backspan.drawings.paper import frame_of
from backspan.drawings.scene import Hatch, Layer, Polygon, Symbol, SymbolName
from tests.unit.core.rigs import length
from tests.unit.drawings.inspection import (
    dimensions_of,
    lines_on,
    overlapping,
    said_on,
    scene_named,
    symbols_of,
    words_of,
)
from tests.unit.drawings.sample import beam_support, drop, lifeline, metres, point, project, roof
from tests.unit.drawings.sample_reviews import review_of


def plan_of(one: Roof) -> Scene:
    """The plan of a changed roof without drops."""
    base = project()
    return roof_plan(_with_roof(base, one), {}, "ROOF")


def _with_roof(base: Project, one: Roof) -> Project:
    return replace(base, site=replace(base.site, roofs=(one,)), drops=())


def test_an_unknown_roof_is_refused_by_name() -> None:
    with pytest.raises(DrawingError, match=r"no roof 'attic'; its roofs: ROOF"):
        roof_plan(project(), {}, "attic")


def test_every_drop_shows_its_answer_as_a_word() -> None:
    words = words_of(scene_named("plan"))
    assert {"N-01", "N-02", "N-03", "W-01", "E-01"} <= words
    assert {"pass", "fail", "refer", "missing", "not reviewed"} <= words


def test_each_answer_has_a_sign_of_its_own_shape() -> None:
    scene = scene_named("plan")
    for name in (SymbolName.PASS, SymbolName.FAIL, SymbolName.REFER, SymbolName.MISSING):
        assert len(symbols_of(scene, name)) == 1


def test_anchors_stand_where_they_were_surveyed_and_say_their_standing() -> None:
    scene = scene_named("plan")
    assert {one.at for one in symbols_of(scene, SymbolName.ANCHOR)} >= {
        (metres("14 ft"), metres("40 ft"))
    }
    assert len(symbols_of(scene, SymbolName.ANCHOR_OUT)) == 1
    assert len(symbols_of(scene, SymbolName.ANCHOR_CONDITIONAL)) == 1
    assert {"out of service", "conditional", "A6"} <= words_of(scene)


@pytest.mark.parametrize(("station", "reach"), [("6 ft", "2 ft"), ("26 ft", "3 ft")])
def test_a_beam_lies_square_to_its_edge_at_its_station(station: str, reach: str) -> None:
    beams = lines_on(scene_named("plan"), Layer.BEAM)
    at_station = [one for one in beams if one.start[0] == pytest.approx(metres(station))]
    ends = [end[1] for one in at_station for end in (one.start, one.end)]
    outside = metres(reach) - metres("18 in") + metres("6 in")
    assert max(ends) == pytest.approx(metres("62 ft") + outside)
    assert max(ends) - min(ends) == pytest.approx(metres("18 ft"))


def test_what_is_not_measured_is_dashed_and_said() -> None:
    scene = scene_named("plan")
    assert lines_on(scene, Layer.NOT_KNOWN)
    assert "not measured" in words_of(scene)
    assert "station not stated" in words_of(scene)
    assert "Not measured" in words_of(scene)  # the legend


def test_a_stack_is_hatched_only_where_its_place_is_known() -> None:
    stacks = [
        one
        for one in scene_named("plan").drawing
        if isinstance(one, Hatch) and one.layer is Layer.COUNTERWEIGHT
    ]
    assert len(stacks) == 6  # seven beams, the place of one not known


def test_a_tieback_runs_from_tail_to_anchor_with_its_angle() -> None:
    scene = scene_named("plan")
    anchors = {one.end for one in lines_on(scene, Layer.TIEBACK)}
    assert (metres("14 ft"), metres("40 ft")) in anchors
    assert any(words.startswith("TB-SP1 ") and words.endswith("°") for words in words_of(scene))
    assert "TB-SP1: angle not known" in words_of(scene)


def test_lifelines_pass_the_edge_at_their_station() -> None:
    ends = {round(one.end[0], 6) for one in lines_on(scene_named("plan"), Layer.LIFELINE)}
    assert ends == {round(metres("11 ft"), 6), round(metres("17 ft"), 6)}


def test_the_chain_along_an_edge_gives_corner_widths_and_gaps() -> None:
    found = dimensions_of(scene_named("plan"))
    assert "20'-0\" [6,096 mm]" in found
    assert "4'-0\"" in found
    assert "6'-0\"" in found


def test_metric_projects_put_millimetres_first_on_a3() -> None:
    scene = scene_named("plan", Style.METRIC)
    assert (scene.width, scene.height) == (420.0, 297.0)
    assert any(words.startswith("6,096 mm") for words in words_of(scene))
    assert any(words.endswith("on A3") for words in words_of(scene))


def test_the_north_arrow_turns_with_the_site() -> None:
    (north,) = [
        one
        for one in scene_named("plan").sheet
        if isinstance(one, Symbol) and one.name is SymbolName.NORTH
    ]
    assert north.angle == pytest.approx(-math.degrees(0.35))


def test_parapets_are_as_thick_as_stated() -> None:
    bands = [
        one
        for one in scene_named("plan").drawing
        if isinstance(one, Polygon) and one.layer is Layer.PARAPET
    ]
    assert len(bands) == 5
    west = bands[0].points
    assert max(x for x, _ in west) - min(x for x, _ in west) == pytest.approx(metres('5"'))
    assert "parapet: not stated" in words_of(scene_named("plan"))


def test_an_edge_entered_from_the_wrong_end_is_pointed_out() -> None:
    good = roof()
    first = good.edges[0]
    turned = replace(first, start=first.end, end=first.start)
    scene = plan_of(replace(good, edges=(turned, *good.edges[1:])))
    assert "lies on the other side of edge W" in said_on(scene)
    assert "other side" not in said_on(plan_of(good))


def test_points_of_a_drop_that_are_alike_share_a_row_of_the_schedule() -> None:
    words = words_of(scene_named("plan"))
    assert "N-01/SP1, SP2" in words
    assert {"N-02/SP1", "N-02/SP2"} <= words


def test_a_roof_with_nothing_on_it_is_drawn() -> None:
    bare = replace(roof(), name="Bare", outline=(), edges=(), obstacles=(), anchors=())
    assert "Roof plan: Bare" in words_of(plan_of(bare))


@pytest.mark.slow
def test_very_many_drops_are_drawn_without_overlap_and_counted() -> None:
    drops = tuple(
        drop(
            f"X{place:02}",
            "N",
            f"{place * 2} ft",
            (
                point("L", f"{place * 2 + 1} ft", "A1"),
                point("R", f"{place * 2 + 1.5} ft", "A2", beam_support(pieces=place + 1)),
            ),
        )
        for place in range(30)
    )
    given = {one.id: review_of(one.id, list(Verdict)[place % 4]) for place, one in enumerate(drops)}
    scene = roof_plan(replace(project(), drops=drops), given, "ROOF")
    assert overlapping(scene) == []
    words = words_of(scene)
    assert any(one.startswith("and ") and "more: see the section" in one for one in words)
    assert "found no room at this scale" in said_on(scene)


def test_everything_drawn_lies_on_the_sheet() -> None:
    scene = scene_named("plan")
    frame = frame_of(scene)
    for layer in (Layer.BEAM, Layer.TIEBACK, Layer.LIFELINE):
        for line in lines_on(scene, layer):
            for end in (line.start, line.end):
                x, y = frame.to_paper(end)
                assert 8.0 <= x <= scene.width - 106.0
                assert 8.0 <= y <= scene.height - 8.0


def test_names_that_do_not_fit_their_strip_stand_outside_with_sign_and_word() -> None:
    narrow = tuple(
        replace(drop(f"NARROW-{place}", "N", f"{place * 30} ft", ()), width=length("2 ft"))
        for place in range(3)
    )
    given = {one.id: review_of(one.id, Verdict.FAIL) for one in narrow}
    scene = roof_plan(replace(project(), drops=narrow), given, "ROOF")
    assert {"NARROW-0", "NARROW-2", "fail"} <= words_of(scene)
    assert len(symbols_of(scene, SymbolName.FAIL)) == 3
    assert overlapping(scene) == []


def test_a_drop_on_an_edge_or_anchor_that_is_not_there_is_left_out_of_the_picture() -> None:
    lost = (
        drop("D1", "gone", "4 ft", (point("P", "5 ft", "A1"),)),
        drop("D2", "N", "30 ft", (point("P", "31 ft", "gone"),), (lifeline("LL", "gone"),)),
    )
    scene = roof_plan(replace(project(), drops=lost), {}, "ROOF")
    assert lines_on(scene, Layer.TIEBACK) == []
    assert "D1" in words_of(scene)  # in the table of answers
