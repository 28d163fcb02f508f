"""The elevation of a facade: which side is which, how far drops reach, what nobody stated."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from functools import cache
from types import MappingProxyType

import pytest

from backspan.core.findings import Review, Verdict
from backspan.core.model.evidence import StatedValue
from backspan.core.model.project import Project
from backspan.core.model.rigs import Drop
from backspan.core.model.stages import Along
from backspan.core.quantities import Style
from backspan.core.words import language_of
from backspan.drawings import DrawingError, Scene, elevation, elevation_figure, to_dxf, to_svg
from backspan.drawings.dxf_back import ThingRead, things_in
from backspan.drawings.edges import edge_line
from backspan.drawings.scene import Dimension, Layer, Polygon, Polyline, SymbolName, Text
from backspan.drawings.things import ThingKind
from tests.unit.core.rigs import length, put
from tests.unit.drawings.ink import ink_beyond
from tests.unit.drawings.inspection import (
    dimensions_of,
    lines_on,
    overlapping,
    said_on,
    symbols_of,
    texts_on_paper,
    through_texts,
    words_of,
)
from tests.unit.drawings.sample import drop, metres, point, project
from tests.unit.drawings.sample_reviews import review_of, reviews
from tests.unit.drawings.test_demo import demo

BOTH = pytest.mark.parametrize("units", list(Style))
FACADES = (("MAIN", "N"), ("MAIN", "S"), ("MAIN", "W"), ("TERRACE", "TE"), ("TERRACE", "TS"))
EVERY = pytest.mark.parametrize("facade", FACADES, ids="-".join)
NAMES = ("N1", "N2", "S1", "S2", "S3", "S4", "S5", "T1", "T2", "T3", "W1", "W2")
STANDINGS: Mapping[str, str] = MappingProxyType(
    dict.fromkeys(NAMES, "in service") | {"S2": "stopped", "T1": "connected"}
)
TURNS = (Verdict.PASS, Verdict.FAIL, Verdict.REFER, Verdict.MISSING)
MICROMETRE = 1e-6


def demo_reviews() -> dict[str, Review]:
    """An answer of each kind by turns; the last drop has none."""
    return {name: review_of(name, TURNS[at % len(TURNS)]) for at, name in enumerate(NAMES[:-1])}


@cache
def facade_of(facade: tuple[str, str], units: Style = Style.US, code: str = "en") -> Scene:
    """A facade of the demo."""
    language = language_of(code)
    made = demo_reviews()
    return elevation(demo(units), *facade, made, standings=STANDINGS, language=language)


def read(scene: Scene) -> dict[str, ThingRead]:
    """The drops of a scene as its DXF shows them."""
    return {one.id: one for one in things_in(to_dxf(scene)) if one.kind is ThingKind.DROP}


def changed(base: Project, name: str, **fields: object) -> Project:
    """The project with one drop changed."""
    drops = tuple(
        replace(one, **fields) if one.id == name else one  # type: ignore[arg-type]
        for one in base.drops
    )
    return replace(base, drops=drops)


def north(base: Project | None = None) -> Scene:
    """The north facade of the invented site."""
    return elevation(base or project(), "ROOF", "N", reviews())


def across_of(scene: Scene, words: str) -> float:
    """Where a text stands on the sheet, from the left."""
    return next(one.at[0] for one in texts_on_paper(scene) if one.text == words)


@EVERY
def test_the_start_of_an_edge_is_on_the_right(facade: tuple[str, str]) -> None:
    scene = facade_of(facade)
    assert across_of(scene, f"start of edge {facade[1]}") > across_of(
        scene, f"end of edge {facade[1]}"
    )
    there = [one for one in demo(Style.US).drops if (one.roof, one.edge) == facade]
    stand = [across_of(scene, one.id) for one in sorted(there, key=lambda one: one.start)]
    assert stand == sorted(stand, reverse=True)
    assert "Seen from outside" in said_on(scene)


def test_who_stands_in_the_street_sees_a_drop_where_the_plan_has_it() -> None:
    """Looking north at the south side, east is to the right; looking south it is to the left."""
    for edge, right_is_east in (("S", True), ("N", False)):
        scene = facade_of(("MAIN", edge))
        roof = next(one for one in demo(Style.US).site.roofs if one.id == "MAIN")
        line = edge_line(next(one for one in roof.edges if one.id == edge))
        there = [one for one in demo(Style.US).drops if (one.roof, one.edge) == ("MAIN", edge)]
        in_plan = sorted(there, key=lambda one: line.at(station=one.start)[0])
        stand = [across_of(scene, one.id) for one in in_plan]
        assert stand == sorted(stand, reverse=not right_is_east)


def test_the_left_point_of_a_rig_hangs_at_the_right() -> None:
    scene = elevation(demo(Style.US), "TERRACE", "TS", {})
    assert across_of(scene, "L") > across_of(scene, "R")


@EVERY
@BOTH
def test_a_drop_reaches_as_far_as_is_stated(facade: tuple[str, str], units: Style) -> None:
    site = demo(units)
    roof = next(one for one in site.site.roofs if one.id == facade[0])
    long = edge_line(next(one for one in roof.edges if one.id == facade[1])).length
    found = read(facade_of(facade, units))
    there = [one for one in site.drops if (one.roof, one.edge) == facade]
    assert found.keys() == {one.id for one in there}
    for one in there:
        assert one.height is not None
        right, level = long - one.start, roof.level.value
        left, bottom = right - one.width.value, level - one.height.value
        corners = found[one.id].outline[:4]
        expected = ((right, level), (left, level), (left, bottom), (right, bottom))
        for corner, wanted in zip(corners, expected, strict=True):
            assert corner == pytest.approx(wanted, abs=MICROMETRE)
        assert float(found[one.id].fact("height_m") or "") == one.height.value
        assert found[one.id].fact("standing") == STANDINGS[one.id]


def test_a_height_that_nobody_stated_is_dashed_and_said() -> None:
    scene = north(changed(project(), "N-01", height=None, clear_below=None))
    dashed = [one for one in scene.drawing if isinstance(one, Polyline)]
    (outline,) = [one for one in dashed if one.layer is Layer.NOT_KNOWN and one.of is not None]
    assert outline.of is not None
    assert outline.of.id == "N-01"
    assert outline.of.path == ("drops", "N-01")
    assert "height" not in dict(outline.of.facts)
    assert not [
        one
        for one in scene.drawing
        if isinstance(one, Polygon) and one.of == outline.of and one.layer is Layer.DROP
    ]
    assert "height not stated" in said_on(scene)
    assert "clear below not stated" in said_on(scene)
    assert "Dashed" in said_on(scene)


def test_what_is_clear_below_is_measured_down_from_the_lowest_place() -> None:
    base = changed(project(), "N-01", height=length("60 ft"), clear_below=length("31 ft"))
    found = dimensions_of(north(base))
    (clear,) = [one for words, one in found.items() if words.startswith("31'-0\"")]
    assert clear.end[1] == pytest.approx(metres("40 ft"))
    assert clear.start[1] == pytest.approx(metres("9 ft"))
    assert "reach below the ground datum: N-02, N-03." in said_on(north(base))


def test_what_reaches_below_the_ground_datum_is_said() -> None:
    base = project()
    for name in ("N-01", "N-03"):
        base = changed(base, name, clear_below=None)
    base = changed(base, "N-02", clear_below=length("12 ft"))
    assert "reach below the ground datum: N-02." in said_on(north(base))
    assert overlapping(north(base)) == []


def test_the_roof_and_the_parapet_are_measured_from_the_datum() -> None:
    found = dimensions_of(north())
    roof = found["100'-0\" [30.48 m]"]
    assert roof.start[1] == 0.0
    assert roof.end[1] == pytest.approx(metres("100 ft"))
    wall = project().site.roofs[0].edges[1].parapet
    assert wall is not None
    above = metres("100 ft") + wall.height.value
    assert any(one.end[1] == pytest.approx(above) for one in found.values())


def test_an_edge_without_a_stated_parapet_says_so() -> None:
    scene = elevation(project(), "ROOF", "S2", {})
    assert "parapet: not stated" in words_of(scene)
    assert "top of parapet" not in words_of(scene)
    assert "What it faces is not stated." in said_on(scene)
    assert "no drops" in scene.description


def test_a_roof_not_above_the_datum_has_no_ground() -> None:
    base = project()
    (roof,) = base.site.roofs
    low = replace(roof, level=StatedValue(0.0))
    scene = north(replace(base, site=replace(base.site, roofs=(low,))))
    assert "where the ground lies is not known" in said_on(scene)
    assert "ground datum" not in words_of(scene)
    assert overlapping(scene) == []


def test_every_answer_has_its_sign_and_its_word() -> None:
    scene = facade_of(("MAIN", "S"))
    for name in (SymbolName.PASS, SymbolName.FAIL, SymbolName.REFER, SymbolName.MISSING):
        assert symbols_of(scene, name)
    assert {"pass", "fail", "refer", "missing"} <= words_of(scene)
    assert "not reviewed" in said_on(facade_of(("MAIN", "W")))


def test_a_standing_is_told_in_the_words_that_were_given() -> None:
    assert {"stopped", "in service"} <= words_of(facade_of(("MAIN", "S")))
    assert "by the record of the day" in said_on(facade_of(("MAIN", "S")))
    without = elevation(demo(Style.US), "MAIN", "S", {})
    assert "in service" not in words_of(without)
    assert "not on this sheet" in said_on(without)
    assert not [one for one in things_in(to_dxf(without)) if one.fact("standing")]


def test_what_a_stage_can_catch_on_is_told_and_else_that_nobody_said() -> None:
    assert "nothing along" in said_on(facade_of(("MAIN", "N")))
    base = project()
    place = ("drops", "N-01", "rig", "stages", 0, "found", "along")
    catches = put(base, place, StatedValue(Along.CATCHES))
    assert "held off" in said_on(north(catches))
    assert "way down: not stated" in said_on(north(put(base, place, None)))


def test_a_stage_is_dashed_and_its_height_is_said_to_mean_nothing() -> None:
    scene = facade_of(("MAIN", "S"))
    stages = [
        one for one in scene.drawing if isinstance(one, Polygon) and one.layer is Layer.NOT_KNOWN
    ]
    assert len(stages) == 5
    assert "how high it hangs is not stated" in said_on(scene)


def test_suspension_points_stand_at_their_stations() -> None:
    scene = north()
    long = metres("110 ft")
    stand = {
        one.of.id: one.at[0]
        for one in symbols_of(scene, SymbolName.SUSPENSION_POINT)
        if one.of is not None
    }
    for one in project().drops:
        if one.edge == "N" and one.rig is not None:
            for hung in one.rig.suspension_points:
                assert stand[f"{one.id}/{hung.id}"] == pytest.approx(long - hung.station)


@EVERY
@BOTH
@pytest.mark.parametrize("code", ["en", "es"])
def test_nothing_is_covered_or_cut(facade: tuple[str, str], units: Style, code: str) -> None:
    language = language_of(code)
    figure = elevation_figure(
        demo(units), *facade, demo_reviews(), standings=STANDINGS, language=language
    )
    for scene in (facade_of(facade, units, code), figure):
        assert overlapping(scene) == []
        assert ink_beyond(scene) == []
        assert through_texts(scene) == []
        assert not [words for words in words_of(scene) if words.endswith("...")]
        assert "found no room" not in said_on(scene)


@BOTH
def test_drops_that_overlap_are_told_apart(units: Style) -> None:
    base = project(units)
    other = drop("N-04", "N", "10 ft", (point("SP1", "12 ft", None), point("SP2", "28 ft", None)))
    scene = north(replace(base, drops=(*base.drops, other)))
    assert {"N-01", "N-04"} <= {one.id for one in things_in(to_dxf(scene))}
    assert overlapping(scene) == []
    assert {"N-01", "N-04"} <= words_of(scene)


def test_a_narrow_drop_has_its_words_beside_it() -> None:
    base = changed(project(), "N-03", width=length("4 ft"))
    scene = north(base)
    assert "N-03" in words_of(scene)
    assert overlapping(scene) == []


def test_the_same_input_gives_the_same_sheet() -> None:
    assert to_svg(facade_of(("MAIN", "W"))) == to_svg(
        elevation(demo(Style.US), "MAIN", "W", demo_reviews(), standings=STANDINGS)
    )


def test_an_unknown_roof_or_edge_is_refused_by_name() -> None:
    with pytest.raises(DrawingError, match=r"no roof 'attic'; its roofs: ROOF"):
        elevation(project(), "attic", "N", {})
    with pytest.raises(DrawingError, match=r"no edge 'X'; its edges: W, N, E, SE, S2, S"):
        elevation(project(), "ROOF", "X", {})


def test_a_sheet_says_no_word_of_safety_and_what_it_is() -> None:
    scene = facade_of(("MAIN", "S"))
    assert not [one for one in words_of(scene) if "safe" in one.casefold()]
    assert "Elevation: edge S, main roof" in said_on(scene)
    assert "S5" in scene.description.partition("S1")[0]
    assert not symbols_of(scene, SymbolName.NORTH)


def test_the_top_of_a_strip_has_the_colour_of_its_answer() -> None:
    tops = lines_on(north(), Layer.FAIL)
    assert len(tops) == sum(1 for one in project().drops if one.edge == "N" and _fails(one))
    assert all(one.start[1] == one.end[1] for one in tops)


def _fails(one: Drop) -> bool:
    found = reviews().get(one.id)
    return found is not None and found.verdict is Verdict.FAIL


def long_facade(many: int) -> Scene:
    """A facade of 120 m with so many drops side by side."""
    base = project()
    (roof,) = base.site.roofs
    edge = replace(roof.edges[0], id="L", start=(120.0, 0.0), end=(0.0, 0.0))
    first = base.drops[0]
    assert first.rig is not None
    drops = []
    for at in range(many):
        by = 0.5 + at * 6.6 - first.start
        points = tuple(
            replace(one, station=one.station + by) for one in first.rig.suspension_points
        )
        rig = replace(first.rig, suspension_points=points)
        moved = replace(first, id=f"D-{at:02}", edge="L", start=first.start + by, rig=rig)
        drops.append(moved)
    site = replace(base.site, roofs=(replace(roof, edges=(edge,)),))
    made = {one.id: review_of(one.id, Verdict.FAIL) for one in drops}
    there = replace(base, site=site, drops=tuple(drops))
    standings = dict.fromkeys(made, "in service")
    return elevation(there, "ROOF", "L", made, standings=standings)


def test_on_a_long_facade_no_drop_loses_its_name_its_answer_or_its_height() -> None:
    scene = long_facade(18)
    assert overlapping(scene) == []
    drawn = [one.text for one in scene.drawing if isinstance(one, Text)]
    assert {f"D-{at:02}" for at in range(18)} <= set(drawn)
    assert drawn.count("fail") == 18
    assert drawn.count("in service") == 18
    assert len(symbols_of(scene, SymbolName.FAIL)) == 18
    heights = [
        one
        for one in scene.drawing
        if isinstance(one, Dimension) and one.text.text.startswith("100'-0\"")
    ]
    assert len(heights) == 19
