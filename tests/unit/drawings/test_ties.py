"""Where a tieback is drawn to be made fast: as stated, in section and in plan."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest

from backspan.core.model.evidence import StatedValue
from backspan.core.model.project import Project
from backspan.core.model.rigs import SuspensionPoint, TiebackStart
from backspan.core.words import language_of
from backspan.drawings import Scene, drop_section, plan_figure, section_figure
from backspan.drawings.geometry import meet
from backspan.drawings.scene import Layer, Line, Polyline, SymbolName
from backspan.drawings.things import ThingKind
from tests.unit.core.rigs import length, put
from tests.unit.drawings.inspection import said_on, symbols_of
from tests.unit.drawings.sample import beam_support, drop, metres, point, project

REACH = "2 ft"


def held(start: TiebackStart | None, *, name: str = "P", at: str = "6 ft") -> SuspensionPoint:
    """A suspension point whose tieback is made fast there, or nobody said where."""
    one = point(name, at, "A1", put(beam_support(reach=REACH), ("rear_stand",), length("9 ft")))
    attached = None if start is None else StatedValue(start)
    return replace(one, tiebacks=(replace(one.tied[0], attached=attached),))


def site(*points: SuspensionPoint) -> Project:
    """The site with one drop that has these points."""
    return replace(project(), drops=(drop("D1", "N", "4 ft", points),))


def ties(scene: Scene) -> list[Line]:
    """The lines of tiebacks, whatever is known of them."""
    return [
        one
        for one in scene.drawing
        if isinstance(one, Line) and one.of is not None and one.of.kind is ThingKind.TIEBACK
    ]


def behind(scene: Scene) -> float:
    """How far behind the fulcrum the tieback of a section begins."""
    (fulcrum,) = symbols_of(scene, SymbolName.FULCRUM)
    return ties(scene)[0].start[0] - fulcrum.at[0]


def test_a_tieback_begins_where_it_is_made_fast() -> None:
    tail, shackle, stack, stand = (
        drop_section(site(held(start)), "D1", None)
        for start in (
            TiebackStart.TAIL,
            TiebackStart.SHACKLE,
            TiebackStart.STACK,
            TiebackStart.STAND,
        )
    )
    (centroid,) = symbols_of(stack, SymbolName.CENTROID)
    (bearing,) = symbols_of(tail, SymbolName.FULCRUM)
    assert behind(shackle) == pytest.approx(-metres(REACH))
    assert ties(shackle)[0].start[1] < bearing.at[1] == ties(tail)[0].start[1]
    assert ties(stack)[0].start == pytest.approx(centroid.at)
    assert behind(stand) == pytest.approx(metres("9 ft"))
    assert behind(tail) > behind(stand)
    assert [ties(one)[0].layer for one in (tail, shackle, stack)] == [Layer.TIEBACK] * 3


def test_of_two_stands_it_is_not_known_which_holds_a_tieback() -> None:
    scene = section_figure(site(held(TiebackStart.STAND)), "D1", None)
    assert ties(scene)[0].layer is Layer.NOT_KNOWN
    alone = replace(
        held(TiebackStart.STAND), counterweighted_beam=put(beam_support(), ("rear_stand",), None)
    )
    scene = section_figure(site(alone), "D1", None)
    assert behind(scene) == pytest.approx(0.0)
    assert ties(scene)[0].layer is Layer.TIEBACK


@pytest.mark.parametrize("figure", [section_figure, drop_section])
def test_where_nobody_said_it_is_dashed_and_the_section_says_so(figure: object) -> None:
    assert callable(figure)
    scene = figure(site(held(None)), "D1", None)
    assert ties(scene)[0].layer is Layer.NOT_KNOWN
    assert "made fast: not stated" in said_on(scene)
    spanish = figure(site(held(None)), "D1", None, language=language_of("es"))
    assert "sujeto en: no declarado" in said_on(spanish)


def test_the_plan_has_the_tieback_from_the_same_place() -> None:
    scenes = {
        start: plan_figure(site(held(start)), "D1", None)
        for start in (TiebackStart.TAIL, TiebackStart.SHACKLE, None)
    }
    (hung,) = symbols_of(scenes[TiebackStart.SHACKLE], SymbolName.SUSPENSION_POINT)
    assert ties(scenes[TiebackStart.SHACKLE])[0].start == pytest.approx(hung.at)
    assert ties(scenes[TiebackStart.TAIL])[0].start != pytest.approx(hung.at)
    assert ties(scenes[None])[0].layer is Layer.NOT_KNOWN


def test_points_whose_tiebacks_are_made_fast_elsewhere_are_not_alike() -> None:
    one = site(held(TiebackStart.TAIL, name="L"), held(TiebackStart.SHACKLE, name="R", at="20 ft"))
    assert {"L", "R"} <= {part.title for part in drop_section(one, "D1", None).parts}


@pytest.mark.parametrize("figure", [section_figure, drop_section])
@pytest.mark.parametrize("start", [TiebackStart.TAIL, TiebackStart.SHACKLE])
def test_an_anchor_in_section_is_told_to_be_out_of_scale_where_it_is_drawn(
    figure: object, start: TiebackStart
) -> None:
    assert callable(figure)
    scene = figure(site(held(start)), "D1", None)
    (tie,) = ties(scene)
    (anchor,) = symbols_of(scene, SymbolName.ANCHOR)
    assert tie.end == anchor.at
    assert "not to scale" in said_on(scene)
    cuts = [
        one
        for one in scene.drawing
        if isinstance(one, Polyline)
        and all(
            math.dist(corner, anchor.at) * 1000.0 / scene.scale.ratio < 8.0 for corner in one.points
        )
    ]
    assert len(cuts) == 1
    assert meet((tie.start, tie.end), (cuts[0].points[0], cuts[0].points[-1]))
