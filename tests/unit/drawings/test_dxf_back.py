"""A drawing as DXF says the numbers of the project, and they are read back the same."""

import io
from dataclasses import replace
from functools import cache

import pytest
from ezdxf.entities.insert import Insert
from ezdxf.filemanagement import read

from backspan.core.model.rigs import Drop, SuspensionPoint
from backspan.core.model.site import Roof
from backspan.core.quantities import Style
from backspan.drawings import drop_details, drop_section, to_dxf
from backspan.drawings.beams import beam_picture
from backspan.drawings.dxf_back import ThingRead, things_in
from backspan.drawings.edges import edge_line
from backspan.drawings.scene import (
    DrawingError,
    Layer,
    Line,
    Point,
    Scale,
    Scene,
    Symbol,
    SymbolName,
)
from backspan.drawings.things import Thing, ThingKind
from backspan.drawings.values import findings_on, length_text
from tests.unit.drawings.inspection import scene_named
from tests.unit.drawings.sample_reviews import reviews
from tests.unit.drawings.test_demo import demo, plan

BOTH = pytest.mark.parametrize("units", list(Style))
MICROMETRE = 1e-6
ODD = "a|b^c {d} \\P %%d \\U+0041 / 100% <>\u00a0Café 高 \U0001f600 "


@cache
def read_plan(units: Style) -> dict[tuple[ThingKind, tuple[str, ...]], ThingRead]:
    """The plan of the main roof as a DXF file shows it, by kind and path."""
    return {(one.kind, one.path): one for one in things_in(to_dxf(plan(units)))}


def main_roof(units: Style) -> Roof:
    """The roof that is drawn."""
    return next(roof for roof in demo(units).site.roofs if roof.id == "MAIN")


def points_of(units: Style) -> list[tuple[Drop, SuspensionPoint]]:
    """The suspension points of its drops."""
    drops = [drop for drop in demo(units).drops if drop.roof == "MAIN"]
    return [
        (drop, point)
        for drop in drops
        if drop.rig is not None
        for point in drop.rig.suspension_points
    ]


def close(found: Point | None, expected: Point) -> bool:
    """Whether a place is where it should be."""
    return found == pytest.approx(expected, abs=MICROMETRE)


@BOTH
def test_every_anchor_lies_where_the_project_has_it(units: Style) -> None:
    anchors = main_roof(units).anchors
    assert len(anchors) > 20
    for anchor in anchors:
        path = ("site", "roofs", "MAIN", "anchors", anchor.id)
        found = read_plan(units)[ThingKind.ANCHOR, path]
        assert close(found.at, anchor.at)
        assert found.id == anchor.id
        facts = dict(found.facts)
        assert (float(facts["x_m"]), float(facts["y_m"])) == anchor.at
        assert facts["standing"] == anchor.standing
        assert facts.get("uses", "") == ", ".join(anchor.uses)
        assert facts.get("inspected") == anchor.inspected
        if anchor.rating is not None:
            assert float(facts["rating_n"]) == anchor.rating.value
    assert sum(kind is ThingKind.ANCHOR for kind, _ in read_plan(units)) == len(anchors)


@BOTH
def test_every_edge_obstacle_and_outline_is_the_project_s(units: Style) -> None:
    roof, at = main_roof(units), ("site", "roofs", "MAIN")
    for edge in roof.edges:
        found = read_plan(units)[ThingKind.EDGE, (*at, "edges", edge.id)]
        assert close(found.outline[0], edge.start)
        assert close(found.outline[1], edge.end)
        if edge.parapet is not None:
            assert float(found.fact("parapet_height_m") or 0.0) == edge.parapet.height.value
    assert roof.obstacles
    for obstacle in roof.obstacles:
        found = read_plan(units)[ThingKind.OBSTACLE, (*at, "obstacles", obstacle.id)]
        assert len(found.outline) == len(obstacle.outline)
        assert all(map(close, found.outline, obstacle.outline))
        assert found.fact("name") == obstacle.name
    assert all(map(close, read_plan(units)[ThingKind.ROOF, at].outline, roof.outline))


@BOTH
def test_every_suspension_point_and_beam_is_the_project_s(units: Style) -> None:
    edges = {edge.id: edge for edge in main_roof(units).edges}
    for drop, point in points_of(units):
        edge = edges[drop.edge]
        picture = beam_picture(demo(units), edge, point, findings_on(None, point.id))
        path = ("drops", drop.id, "rig", "suspension_points", point.id)
        found = read_plan(units)[ThingKind.SUSPENSION_POINT, path]
        assert found.id == f"{drop.id}/{point.id}"
        assert found.fact("hoist") == point.hoist
        at = [
            edge_line(edge).at(station=point.station, inward=place.x)
            for place in (picture.line, picture.tip, picture.tail)
        ]
        assert close(found.at, at[0])
        support = point.counterweighted_beam
        if support is None:
            continue
        for name, stated in (("reach", support.reach), ("backspan", support.backspan)):
            if stated is not None:
                assert float(found.fact(f"{name}_m") or 0.0) == stated.value
        counts = " + ".join(str(group.count.value) for group in support.stack.groups)
        assert (found.fact("pieces") or "") == counts
        beam = read_plan(units)[ThingKind.BEAM, (*path, "counterweighted_beam")]
        assert close(beam.outline[0], at[1])
        assert close(beam.outline[-1], at[2])
        assert beam.fact("beam") == support.beam


@BOTH
def test_tiebacks_and_lifelines_end_on_their_anchors(units: Style) -> None:
    anchors = {anchor.id: anchor.at for anchor in main_roof(units).anchors}
    ends = [one for (kind, _), one in read_plan(units).items() if kind is ThingKind.TIEBACK]
    starts = [one for (kind, _), one in read_plan(units).items() if kind is ThingKind.LIFELINE]
    assert ends
    assert starts
    assert all(close(one.outline[-1], anchors[one.fact("anchor") or ""]) for one in ends)
    assert all(close(one.outline[0], anchors[one.fact("anchor") or ""]) for one in starts)


def test_a_drop_says_its_answer_and_its_configuration() -> None:
    found = {one.id: one for one in things_in(to_dxf(scene_named("plan"))) if one.kind == "drop"}
    for drop, review in reviews().items():
        assert found[drop].fact("answer") == review.verdict
        assert found[drop].fact("configuration") == review.configuration
        assert len(found[drop].outline) == 4
    assert found["N-02"].at is not None


@BOTH
def test_the_schedule_says_the_numbers_of_its_points(units: Style) -> None:
    rows = [one for (kind, _), one in read_plan(units).items() if kind is ThingKind.SCHEDULE_ROW]
    said = {
        f"{row.id.split('/')[0]}/{point}": row
        for row in rows
        for point in row.id.split("/")[1].split(", ")
    }
    for drop, point in points_of(units):
        support = point.counterweighted_beam
        row = said[f"{drop.id}/{point.id}"]
        assert row.fact("point") == row.id
        hoist = demo(units).kit.hoist(point.hoist)
        assert hoist is not None
        assert row.fact("rated_load_n") == repr(hoist.rated_load.value)
        if support is None or support.reach is None:
            continue
        assert row.fact("reach_m") == repr(support.reach.value)
        assert (row.fact("reach") or "").startswith(length_text(support.reach.value, units))
        assert row.at is None


def test_the_schedule_of_lines_says_its_cells_and_lengths() -> None:
    project = demo(Style.US)
    (drop,) = (one for one in project.drops if one.id == "S1")
    assert drop.rig is not None
    rows = {one.path: one for one in things_in(to_dxf(drop_details(project, "S1", None)))}
    for point in drop.rig.suspension_points:
        row = rows["drops", "S1", "rig", "suspension_points", point.id]
        rope = project.kit.rope(point.rope or "")
        assert rope is not None
        assert row.kind is ThingKind.SCHEDULE_ROW
        assert row.fact("diameter_m") == repr(rope.diameter.value)
        assert row.fact("construction") == rope.name
        assert row.fact("line_kind")
        if point.rope_length is not None:
            assert row.fact("length_m") == repr(point.rope_length.value)


@BOTH
@pytest.mark.parametrize("name", ["S1", "N1", "W2"])
def test_the_section_says_reach_and_backspan(units: Style, name: str) -> None:
    read_back = things_in(to_dxf(drop_section(demo(units), name, None)))
    found = [one for one in read_back if one.kind is ThingKind.SUSPENSION_POINT]
    beams = {one.id: one for one in read_back if one.kind is ThingKind.BEAM}
    said: dict[str, ThingRead] = {}
    for one in found:
        names = (one.fact("alike") or one.id.split("/")[1]).split(", ")
        said |= dict.fromkeys(names, one)
    for drop, point in points_of(units):
        support = point.counterweighted_beam
        if drop.id != name or support is None:
            continue
        for what, stated in (("reach", support.reach), ("backspan", support.backspan)):
            if stated is not None:
                assert said[point.id].fact(f"{what}_m") == repr(stated.value)
        # What is drawn is as long as what is said.
        beam = beams[said[point.id].id]
        long = float(beam.fact("length_m") or 0.0)
        assert beam.outline[-1][0] - beam.outline[0][0] == pytest.approx(long, abs=MICROMETRE)


def pairs_of(dxf: bytes) -> list[tuple[int, str]]:
    """Group codes and values of a file, read line by line."""
    lines = dxf.decode("utf-8").split("\n")
    return [(int(lines[at]), lines[at + 1]) for at in range(0, len(lines) - 1, 2)]


@BOTH
def test_another_reader_finds_the_same_anchors(units: Style) -> None:
    metre = 0.0254 if units is Style.US else 0.001
    places: dict[str, Point] = {}
    values: dict[str, str] = {}
    where: dict[int, float] = {}
    entity, text = "", ""
    for code, value in pairs_of(to_dxf(plan(units))):
        if code == 0:
            if value in {"INSERT", "SEQEND"} and values.get("KIND") == "anchor":
                places[values["ID"]] = (where[10], where[20])
                assert (float(values["X_M"]), float(values["Y_M"])) == pytest.approx(
                    places[values["ID"]], abs=MICROMETRE
                )
            if value == "INSERT":
                where, values = {}, {}
            entity = value
        elif entity == "INSERT" and code in {10, 20}:
            where[code] = float(value) * metre
        elif entity == "ATTRIB" and code == 1:
            text = value
        elif entity == "ATTRIB" and code == 2:
            values[value] = text
    anchors = {anchor.id: anchor.at for anchor in main_roof(units).anchors}
    assert places.keys() == anchors.keys()
    assert all(close(places[name], at) for name, at in anchors.items())


def test_attributes_do_not_clutter_the_drawing() -> None:
    document = read(io.StringIO(to_dxf(plan(Style.US)).decode("utf-8")))
    found = [
        attribute
        for insert in document.modelspace().query("INSERT")
        if isinstance(insert, Insert)
        for attribute in insert.attribs
    ]
    assert found
    assert all(attribute.is_invisible for attribute in found)
    defined = {one.dxf.tag for one in document.blocks.get("ANCHOR").attdefs()}
    assert {"KIND", "ID", "PATH", "X", "Y", "X_M", "Y_M", "USES", "STANDING"} <= defined
    assert document.audit().errors == []
    assert document.audit().fixes == []


def test_a_place_that_nobody_stated_is_said_to_be_not_known() -> None:
    found = [one for one in things_in(to_dxf(scene_named("plan"))) if one.fact("place")]
    assert found
    assert {one.fact("place") for one in found} == {"not known"}
    assert {one.fact("x_m") for one in found} == {None}


def drawn(thing: Thing) -> Scene:
    """A sign and a line of one thing."""
    sign = Symbol(Layer.ANCHOR, SymbolName.ANCHOR, (1.0, 2.0), 4.0, of=thing)
    line = Line(Layer.BEAM, (1.0, 2.0), (3.0, 4.0), of=thing)
    scale = Scale(50.0, "1:50")
    return Scene("t", "d", 100.0, 100.0, Style.METRIC, (), (sign, line), scale)


@pytest.mark.parametrize("name", [ODD, "x" * 300, "高" * 300, "\\" * 300, "a\nb\u2028c\x01"])
def test_any_name_comes_back_as_it_was(name: str) -> None:
    for kind, path in ((ThingKind.ANCHOR, ("a", name, "/")), (ThingKind.BEAM, (name,))):
        dxf = to_dxf(drawn(Thing(kind, name, path, (("name", name),))))
        (found,) = things_in(dxf)
        assert found == ThingRead(
            kind, name, path, (("name", name),), (1.0, 2.0), ((1.0, 2.0), (3.0, 4.0))
        )
        both = drawn(Thing(kind, name, path, (("name", name),)))
        (only,) = things_in(to_dxf(replace(both, drawing=both.drawing[1:])))
        assert (only.id, only.path, only.fact("name")) == (name, path, name)
        assert all(len(value.encode()) <= 255 for code, value in pairs_of(dxf) if code == 1000)


@pytest.mark.parametrize("name", ["x" * 2001, "\ud800", "\U000e0001"])
def test_a_name_that_cannot_be_written_is_refused_and_named(name: str) -> None:
    thing = Thing(ThingKind.ANCHOR, "A1", ("site",), (("name", name),))
    with pytest.raises(DrawingError, match="anchor 'A1': its NAME"):
        to_dxf(drawn(thing))


@pytest.mark.parametrize("wrong", [b"", b"no drawing", b"  0\nSECTION\n  2\nHEADER\n", b"\xff\xfe"])
def test_what_is_no_drawing_is_refused(wrong: bytes) -> None:
    with pytest.raises(DrawingError, match="cannot be read as a DXF file"):
        things_in(wrong)


def test_a_file_that_is_cut_off_is_refused() -> None:
    with pytest.raises(DrawingError, match="cannot be read as a DXF file"):
        things_in(to_dxf(plan(Style.US))[:4000])


def test_a_file_in_another_unit_is_refused() -> None:
    feet = to_dxf(plan(Style.US)).replace(b"$INSUNITS\n 70\n1\n", b"$INSUNITS\n 70\n2\n")
    with pytest.raises(DrawingError, match="inches or millimetres"):
        things_in(feet)


def test_a_kind_that_is_not_known_is_refused() -> None:
    other = to_dxf(plan(Style.US)).replace(b"KIND=roof\n", b"KIND=attic\n")
    with pytest.raises(DrawingError, match="attic"):
        things_in(other)
