"""The sheets of the demonstration site: every label readable and beside what it names."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import date
from functools import cache
from pathlib import Path

import pytest

from backspan.core.findings import Review
from backspan.core.model.project import Project
from backspan.core.quantities import Style
from backspan.core.review import review
from backspan.drawings import Scene, drop_section, plan_figure, roof_plan, section_figure
from backspan.drawings.dimensions import dimension_lines
from backspan.drawings.geometry import corners, grown, overlap, text_quad
from backspan.drawings.paper import frame_of
from backspan.drawings.scene import Layer, Line, Polygon, SymbolName, Text
from backspan.exchange.files import load, load_rule_library
from tests.unit.core.rigs import put
from tests.unit.drawings.inspection import (
    dimensions_of,
    leaders_of,
    lines_on,
    meeting,
    overlapping,
    said_on,
    symbols_of,
    texts_on_paper,
    through_texts,
    words_of,
)
from tests.unit.drawings.over_lines import over_lines
from tests.unit.drawings.sample import metres

DEMO = Path(__file__).parents[3] / "examples" / "demo" / "site.yaml"
BOTH = pytest.mark.parametrize("units", list(Style))
DROPS = ("S1", "S2", "S3", "S4", "S5", "W1", "W2", "N1", "N2")
EVERY_DROP = (*DROPS, "T1", "T2", "T3")


@cache
def demo(units: Style) -> Project:
    """The demonstration site in one system of units."""
    return replace(load(DEMO, load_rule_library()), units=units)


@cache
def reviewed(drop: str) -> Review:
    """The review of one drop on the day of the story, as its paper tells it."""
    return review(demo(Style.US), drop, load_rule_library(), on=date(2026, 11, 25))


@cache
def plan(units: Style) -> Scene:
    """The plan of its main roof, before any review."""
    return roof_plan(demo(units), {}, "MAIN")


def named(scene: Scene, words: str) -> tuple[float, float]:
    """Where a label stands on the sheet."""
    return next(text.at for text in texts_on_paper(scene) if text.text == words)


def test_a_leader_through_a_text_would_be_seen() -> None:
    scene = plan(Style.US)
    x, y = frame_of(scene).to_drawing(named(scene, "S3/L"))
    crossing = Line(Layer.LABEL, (x + 0.5, y - 2.0), (x + 0.5, y + 2.0))
    assert "S3/L" in through_texts(replace(scene, drawing=(*scene.drawing, crossing)))
    other = Line(Layer.LABEL, (x, y), (x + 1.0, y))
    assert meeting(replace(scene, drawing=(crossing, other)))


@BOTH
def test_no_label_of_the_plan_lies_over_another(units: Style) -> None:
    assert overlapping(plan(units)) == []


@BOTH
def test_no_leader_of_the_plan_runs_through_a_label_or_meets_another(units: Style) -> None:
    assert through_texts(plan(units)) == []
    assert meeting(plan(units)) == []


@BOTH
def test_no_leader_of_the_plan_runs_through_an_anchor_that_it_does_not_point_at(
    units: Style,
) -> None:
    frame = frame_of(plan(units))
    for anchor in symbols_of(plan(units), SymbolName.ANCHOR):
        x, y = frame.to_paper(anchor.at)
        left, bottom, right, top = grown((x, y, x, y), anchor.size / 2 - 0.1)
        for start, end in leaders_of(plan(units)):
            points = [
                (start[0] + (end[0] - start[0]) * at / 40, start[1] + (end[1] - start[1]) * at / 40)
                for at in range(41)
            ]
            within = any(left < a < right and bottom < b < top for a, b in points)
            assert not within or end == pytest.approx((x, y), abs=0.1)


@BOTH
def test_every_suspension_point_and_anchor_is_named_on_the_plan(units: Style) -> None:
    project = demo(units)
    points = {
        f"{drop.id}/{point.id}"
        for drop in project.drops
        if drop.roof == "MAIN" and drop.rig is not None
        for point in drop.rig.suspension_points
    }
    (roof,) = (roof for roof in project.site.roofs if roof.id == "MAIN")
    assert points | {anchor.id for anchor in roof.anchors} <= words_of(plan(units))
    assert "found no room" not in said_on(plan(units))


@BOTH
def test_a_point_is_named_close_to_its_beam(units: Style) -> None:
    frame = frame_of(plan(units))
    beams = [
        (frame.to_paper(line.start), frame.to_paper(line.end))
        for line in lines_on(plan(units), Layer.BEAM)
    ]
    for words in ("N1/R", "S5/L", "W2/L", "S1/R"):
        x, y = named(plan(units), words)
        away = min(
            max(min(start[0], end[0]) - x, x - max(start[0], end[0]), 0.0)
            + max(min(start[1], end[1]) - y, y - max(start[1], end[1]), 0.0)
            for start, end in beams
        )
        assert away < 16.0


@pytest.mark.parametrize("drop", DROPS)
@BOTH
def test_no_leader_of_a_section_runs_through_a_label(units: Style, drop: str) -> None:
    scene = drop_section(demo(units), drop, None)
    assert overlapping(scene) == []
    assert through_texts(scene) == []
    assert "found no room" not in said_on(scene)


@pytest.mark.parametrize("drop", EVERY_DROP)
@pytest.mark.parametrize("figure", [section_figure, plan_figure])
def test_no_label_of_a_paper_lies_on_a_dimension_the_rig_or_the_box_of_the_drop(
    figure: Callable[..., Scene], drop: str
) -> None:
    scene = figure(demo(Style.US), drop, reviewed(drop))
    assert over_lines(scene) == set()
    assert overlapping(scene) == []


@pytest.mark.parametrize("drop", ["S1", "N1"])
def test_nor_where_the_rear_stand_is_close(drop: str) -> None:
    project = demo(Style.US)
    for point in ("L", "R"):
        beam = ("drops", drop, "rig", "suspension_points", point, "counterweighted_beam")
        project = put(project, (*beam, "rear_stand", "value"), metres("6 ft"))
    assert over_lines(section_figure(project, drop, None)) == set()


def test_a_label_over_an_extension_line_or_a_box_would_be_seen() -> None:
    scene = section_figure(demo(Style.US), "S1", None)
    (gap,) = (one for words, one in dimensions_of(scene).items() if words.startswith("Tail gap"))
    over = Text(Layer.LABEL, (gap.end[0] - 0.1, gap.end[1] + 0.2), "12 pieces", 2.1)
    found = over_lines(replace(scene, drawing=(*scene.drawing, over)))
    assert ("12 pieces", f"dimension: {gap.text.text}") in found
    scene = plan_figure(demo(Style.US), "S1", None)
    (box,) = (one for one in scene.drawing if isinstance(one, Polygon) and one.layer is Layer.DROP)
    over = Text(Layer.LABEL, (box.points[0][0] - 0.2, box.points[0][1] - 1.0), "Edge S", 2.1)
    assert ("Edge S", Layer.DROP) in over_lines(replace(scene, drawing=(*scene.drawing, over)))


@pytest.mark.parametrize("drop", DROPS)
@BOTH
def test_the_text_of_a_dimension_does_not_stand_on_the_line_of_another(
    units: Style, drop: str
) -> None:
    scene = drop_section(demo(units), drop, None)
    frame = frame_of(scene)
    found = dimensions_of(scene)
    lines = {
        words: dimension_lines(
            frame.to_paper(one.start),
            frame.to_paper(one.end),
            line_through=frame.to_paper(one.line_through),
            angle=one.angle,
        ).line
        for words, one in found.items()
    }
    for words, one in found.items():
        low, _, high, _ = text_quad(replace(one.text, at=frame.to_paper(one.text.at)))
        # Two lines of text stand above and below the height of the line they must keep off.
        room = corners((low[0], low[1] - 2.5, high[0], high[1] + 2.5))
        over = [other for other, line in lines.items() if overlap(line, room)]
        assert over in ([], [words])


def test_the_same_plan_is_drawn_again() -> None:
    assert roof_plan(demo(Style.US), {}, "MAIN") == plan(Style.US)


def test_points_that_differ_in_their_tags_only_are_drawn_once() -> None:
    said = said_on(drop_section(demo(Style.US), "S1", None))
    assert "Suspension points L and R, alike" in said
    for words in (
        "Beam B-01 / B-02, type B18A: 18'-0\"",
        "rope R-01 / R-02, type ROPE516",
        "hoist H-01 / H-02, type H1,",
        "Stage S-01, type ST20",
    ):
        assert words in said


def test_points_with_beams_of_other_types_are_drawn_apart() -> None:
    words = words_of(drop_section(demo(Style.US), "W2", None))
    assert {"Suspension point L", "Suspension point R"} <= words
    assert any(one.startswith("Beam B-13, type I18S:") for one in words)
    assert any(one.startswith("Beam B-14, type B18B:") for one in words)
