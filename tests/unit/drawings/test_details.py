"""The detail sheet of a drop: bearings to scale, lines end to end, the schedule of hardware."""

from __future__ import annotations

import io
from dataclasses import replace
from typing import Any

import pytest
from ezdxf.filemanagement import read

from backspan.core.model.beams import BeamSection
from backspan.core.model.evidence import Evidence, StatedValue
from backspan.core.model.project import Project
from backspan.core.model.rigs import (
    Clips,
    CounterweightedBeam,
    Found,
    Pad,
    RearBearing,
    SuspensionPoint,
    Tieback,
    TiebackStart,
)
from backspan.core.model.seen import Route
from backspan.core.quantities import PRESSURE, Style, parse
from backspan.core.words import language_of
from backspan.drawings import DrawingError, Scene, drop_details, to_dxf
from backspan.drawings.paper import standard_scales
from backspan.drawings.scene import Layer, Polygon, Polyline, SymbolName
from tests.unit.core.rigs import count, length, put
from tests.unit.drawings.ink import ink_beyond
from tests.unit.drawings.inspection import (
    dimensions_of,
    lines_on,
    outside,
    overlapping,
    said_on,
    symbols_of,
)
from tests.unit.drawings.sample import beam_support, drop, metres, point, project
from tests.unit.drawings.test_demo import demo

BOTH = pytest.mark.parametrize("units", list(Style))
EVERY = pytest.mark.parametrize("name", [one.id for one in demo(Style.US).drops])


def details_of(*points: SuspensionPoint, site: Project | None = None) -> Scene:
    """The detail sheet of a drop with these points."""
    one = replace(site or project(), drops=(drop("D1", "N", "4 ft", points),))
    return drop_details(one, "D1", None)


def on(**fulcrum: Any) -> CounterweightedBeam:
    """The rig's left beam with these values of its front bearing, and no others."""
    support = put(beam_support(), ("rear_stand",), None)
    support = put(support, ("rear",), None)
    for name in ("plate_length", "plate_width", "pad", "surface_strength"):
        support = put(support, ("fulcrum", name), fulcrum.get(name))
    return put(support, ("fulcrum", "height"), fulcrum.get("height"))


def plate_of(scene: Scene) -> list[Polygon]:
    """Outlines of plates and pads that are known."""
    return [one for one in scene.drawing if isinstance(one, Polygon) and one.layer is Layer.PLATE]


def size(outline: Polygon) -> tuple[float, float]:
    """How long and how wide an outline is, in metres."""
    xs, ys = zip(*outline.points, strict=True)
    return (max(xs) - min(xs), max(ys) - min(ys))


@EVERY
@BOTH
def test_nothing_on_the_demonstration_lies_over_another_or_off_its_sheet(
    units: Style, name: str
) -> None:
    for language in ("en", "es"):
        scene = drop_details(demo(units), name, None, language=language_of(language))
        assert overlapping(scene) == []
        assert outside(scene) == []
        assert ink_beyond(scene) == []
        assert "found no room" not in said_on(scene)
        assert scene.scale in standard_scales(units)
        assert not [word for word in said_on(scene).split() if word.endswith("...")]


def test_a_plate_is_drawn_as_large_as_it_is_stated_with_both_dimensions() -> None:
    scene = details_of(
        point("P", "6 ft", "A1", on(plate_length=length("24 in"), plate_width=length("18 in")))
    )
    (plan,) = plate_of(scene)
    assert size(plan) == pytest.approx((metres("24 in"), metres("18 in")))
    (seen,) = lines_on(scene, Layer.PLATE)
    assert seen.end[0] - seen.start[0] == pytest.approx(metres("24 in"))
    words = dimensions_of(scene)
    assert {"2'-0\"", "1'-6\""} <= set(words)
    said = said_on(scene)
    assert "Plate: 2'-0\" [610 mm] x 1'-6\" [457 mm]" in said
    assert "what it carries is not stated" in said


def test_a_pad_lies_under_the_plate_and_is_as_thick_as_stated() -> None:
    pad = Pad(length("36 in"), length("10 in"), length("1 1/2 in"))
    plate = {"plate_length": length("6 in"), "plate_width": length("8 in")}
    strength = StatedValue(parse("40 psi", PRESSURE), evidence=Evidence.CERTIFICATE)
    scene = details_of(point("P", "6 ft", "A1", on(pad=pad, surface_strength=strength, **plate)))
    sizes = [size(one) for one in plate_of(scene)]
    assert sizes[0] == pytest.approx((metres("36 in"), metres("1 1/2 in")))
    assert sizes[1] == pytest.approx((metres("36 in"), metres("10 in")))
    assert sizes[2] == pytest.approx((metres("6 in"), metres("8 in")))
    assert "carries 40 psi [276 kPa]" in said_on(scene)
    assert "certificate" in said_on(scene)
    assert overlapping(scene) == []


def test_a_plate_that_nobody_stated_is_dashed_and_has_no_dimension() -> None:
    scene = details_of(point("P", "6 ft", "A1", on()))
    assert plate_of(scene) == []
    assert lines_on(scene, Layer.PLATE) == []
    assert dimensions_of(scene) == {}
    said = said_on(scene)
    assert "Plate: not stated" in said
    assert "height not measured" in said
    assert "depth not stated" in said


def test_of_a_plate_with_one_side_stated_that_side_alone_is_dimensioned() -> None:
    scene = details_of(point("P", "6 ft", "A1", on(plate_length=length("24 in"))))
    assert plate_of(scene) == []
    assert set(dimensions_of(scene)) == {"2'-0\""}
    assert "x not stated" in said_on(scene)


def test_a_height_that_the_paper_has_room_for_is_dimensioned_and_a_higher_one_is_cut() -> None:
    low = details_of(point("P", "6 ft", "A1", on(height=length("6 in"))))
    assert '6"' in dimensions_of(low)
    high = details_of(point("P", "6 ft", "A1", on(height=length("4 ft"))))
    assert dimensions_of(high) == {}
    assert "4'-0\" [1,219 mm] high" in said_on(high)


def test_a_beam_is_as_deep_as_its_section_says() -> None:
    site = project()
    section = BeamSection(shape="W6x12", section_depth=length("6 in"))
    beams = tuple(replace(one, section=section) for one in site.kit.beams)
    site = replace(site, kit=replace(site.kit, beams=beams))
    scene = details_of(point("P", "6 ft", "A1", on()), site=site)
    (beam,) = [one for one in scene.drawing if isinstance(one, Polygon) and one.layer is Layer.BEAM]
    assert size(beam)[1] == pytest.approx(metres("6 in"))
    assert "shape W6x12" in said_on(scene)


def test_a_rear_bearing_is_there_only_where_somebody_stated_one() -> None:
    assert "Rear bearing" not in said_on(details_of(point("P", "6 ft", "A1", on())))
    rear = RearBearing(plate_length=length("12 in"), plate_width=length("12 in"))
    support = replace(on(), rear=rear, rear_stand=length("9 ft"))
    scene = details_of(point("P", "6 ft", "A1", support))
    assert "Rear bearing" in said_on(scene)
    (plan,) = plate_of(scene)
    assert size(plan) == pytest.approx((metres("12 in"), metres("12 in")))


def bare(name: str, station: str, support: CounterweightedBeam) -> SuspensionPoint:
    """A point of which no tieback and no connecting hardware is stated."""
    return replace(point(name, station, None, support), connectors=())


def test_points_whose_bearings_differ_have_a_row_each() -> None:
    one, other = on(height=length("6 in")), on(height=length("9 in"))
    said = said_on(details_of(bare("P", "6 ft", one), bare("Q", "22 ft", other)))
    assert "Suspension point P" in said
    assert "Suspension point Q" in said
    alike = said_on(details_of(bare("P", "6 ft", one), bare("Q", "22 ft", one)))
    assert "Suspension points P and Q, alike" in alike


def test_a_bearing_that_has_no_room_is_told() -> None:
    heights = ("4 in", "5 in", "6 in", "7 in", "8 in")
    points = (
        bare(f"P{place}", f"{5 + place} ft", on(height=length(height)))
        for place, height in enumerate(heights)
    )
    assert "Not drawn, for want of room: suspension points" in said_on(details_of(*points))


def tied(**stated: Any) -> Scene:
    """The detail sheet of a drop with one tieback."""
    tie = Tieback("TB", **stated)
    return details_of(replace(point("P", "6 ft", "A1", on()), tiebacks=(tie,)))


def test_a_tieback_runs_from_where_it_is_made_fast_to_its_anchor() -> None:
    scene = tied(
        anchor="A1",
        rope="R",
        attached=StatedValue(TiebackStart.TAIL),
        route=StatedValue(Route.STRAIGHT),
    )
    assert len(symbols_of(scene, SymbolName.ANCHOR)) == 1
    assert len(lines_on(scene, Layer.TIEBACK)) == 1
    said = said_on(scene)
    for words in ("Tieback TB, point P", "tail of the beam", "to anchor A1", "straight"):
        assert words in said


def test_of_a_tieback_that_nobody_told_more_of_the_blanks_are_dashed_and_written() -> None:
    scene = tied()
    assert lines_on(scene, Layer.TIEBACK) == []
    assert symbols_of(scene, SymbolName.ANCHOR) == []
    said = said_on(scene)
    for words in ("rope not stated", "run: not stated", "end: not stated", "to: not stated"):
        assert words in said


@pytest.mark.parametrize(
    ("found", "layer"),
    [(Found.SOUND, Layer.SOFTENER), (None, Layer.NOT_KNOWN), (Found.ABSENT, None)],
)
def test_a_tieback_over_an_edge_has_its_softener_as_it_was_found(
    found: Found | None, layer: Layer | None
) -> None:
    state = None if found is None else StatedValue(found)
    scene = tied(anchor="A1", route=StatedValue(Route.OVER_AN_EDGE), softener=state)
    sleeves = [
        one.layer
        for one in scene.drawing
        if isinstance(one, Polyline) and one.layer in {Layer.SOFTENER, Layer.NOT_KNOWN}
    ]
    assert sleeves == ([] if layer is None else [layer])


def test_each_clip_that_was_counted_is_drawn_and_its_spacing_told() -> None:
    clips = Clips(count=count(3), spacing=length("2 in"))
    scene = details_of(replace(point("P", "6 ft", "A1", on()), clips=clips))
    boxes = [
        one for one in scene.drawing if isinstance(one, Polygon) and one.layer is Layer.FULCRUM
    ]
    # Three clips, and the hoist at the end of the line.
    assert len(boxes) == 4
    assert "turned back not stated" in " ".join(said_on(scene).split())


def test_the_schedule_tells_each_line_with_the_letter_of_its_evidence() -> None:
    said = said_on(drop_details(demo(Style.US), "S1", None))
    for words in (
        "Line L",
        "Tieback TB-L",
        "Lifeline LL1",
        "Hardware L",
        '5/16" [8 mm] C',
        "150'-0\" [45.72 m] M",
        "to anchor A01",
        "C certificate",
    ):
        assert words in said


def test_a_plate_in_a_drawing_file_has_its_real_size() -> None:
    scene = drop_details(demo(Style.US), "S1", None)
    document = read(io.StringIO(to_dxf(scene).decode()))
    assert document.audit().errors == []
    lines = document.modelspace().query(f'LINE[layer=="{Layer.PLATE}"]')
    assert {round(line.dxf.end.x - line.dxf.start.x, 6) for line in lines} == {8.0, 24.0}


def test_a_drop_without_a_rig_has_a_sheet_and_an_unknown_one_has_none() -> None:
    assert "No beam of this drop bears" in said_on(details_of())
    with pytest.raises(DrawingError, match="nothing"):
        drop_details(project(), "nothing", None)
