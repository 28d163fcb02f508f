"""What a drawing says of the things it shows: which, where in the project, with what values."""

from dataclasses import replace
from xml.etree import ElementTree

import pytest

from backspan.core.quantities import Style
from backspan.drawings import plan_figure, roof_plan, to_svg
from backspan.drawings.scene import Layer, Line, Scene, Symbol, Text
from backspan.drawings.things import Thing, ThingKind, path_in, path_text
from tests.unit.drawings.test_demo import demo, plan

GROUP = "{http://www.w3.org/2000/svg}g"
NAME = "A%/B|^{}\\ \"'<>& Café 高"


def things_of(scene: Scene) -> dict[tuple[str, ...], Thing]:
    """The things of a scene by their paths."""
    return {shape.of.path: shape.of for shape in scene.drawing if shape.of is not None}


def groups_of(svg: str) -> list[tuple[str | None, str]]:
    """Kind and path of each group that shows a thing."""
    groups = ElementTree.fromstring(svg).iter(GROUP)  # noqa: S314 - written by the test itself
    return [
        (one.get("data-thing"), one.get("data-path") or "")
        for one in groups
        if one.get("data-thing")
    ]


def test_the_plan_knows_every_thing_of_its_roof_and_its_drops() -> None:
    project, found = demo(Style.US), things_of(plan(Style.US))
    (roof,) = (one for one in project.site.roofs if one.id == "MAIN")
    at = ("site", "roofs", "MAIN")
    expected: set[tuple[str, ...]] = {at}
    expected |= {(*at, "anchors", one.id) for one in roof.anchors}
    expected |= {(*at, "edges", one.id) for one in roof.edges}
    expected |= {(*at, "obstacles", one.id) for one in roof.obstacles}
    for drop in project.drops:
        if drop.roof != "MAIN":
            continue
        expected.add(("drops", drop.id))
        if drop.rig is None:
            continue
        expected |= {("drops", drop.id, "rig", "lifelines", one.id) for one in drop.rig.lines}
        for point in drop.rig.suspension_points:
            path = ("drops", drop.id, "rig", "suspension_points", point.id)
            expected |= {path, (*path, "counterweighted_beam")}
            expected |= {(*path, "tiebacks", tie.id) for tie in point.tied}
    assert expected <= set(found)
    rest = {found[path].kind for path in set(found) - expected}
    assert rest == {ThingKind.FULCRUM, ThingKind.STACK, ThingKind.REAR_STAND}


def test_a_thing_tells_its_values_as_printed_and_exactly() -> None:
    facts = dict(things_of(plan(Style.US))["drops", "S1", "rig", "suspension_points", "L"].facts)
    (drop,) = (one for one in demo(Style.US).drops if one.id == "S1")
    assert drop.rig is not None
    beam = drop.rig.suspension_points[0].counterweighted_beam
    assert beam is not None
    assert beam.reach is not None
    assert float(facts["reach_m"]) == beam.reach.value
    assert "'-" in facts["reach"]
    assert facts["hoist"] == "H-01"


@pytest.mark.parametrize("units", list(Style))
def test_a_page_can_ask_which_thing_was_hit(units: Style) -> None:
    groups = groups_of(to_svg(plan(units)))
    paths = {path_in(path) for _, path in groups}
    assert paths == set(things_of(plan(units)))
    assert ("anchor", "site/roofs/MAIN/anchors/A08") in groups
    assert ("suspension-point", "drops/S1/rig/suspension_points/L") in groups
    # The sign and its label.
    assert groups.count(("anchor", "site/roofs/MAIN/anchors/A08")) == 2


def test_a_figure_cuts_the_building_and_still_knows_what_it_is() -> None:
    found = things_of(plan_figure(demo(Style.US), "S1", None))
    kinds = {thing.kind for thing in found.values()}
    assert {ThingKind.EDGE, ThingKind.ROOF, ThingKind.ANCHOR, ThingKind.DROP} <= kinds


def test_without_its_groups_the_picture_is_the_same() -> None:
    scene = plan(Style.US)
    bare = replace(
        scene,
        drawing=tuple(replace(shape, of=None) for shape in scene.drawing),
        sheet=tuple(replace(shape, of=None) for shape in scene.sheet),
    )
    assert _without_groups(to_svg(scene)) == _without_groups(to_svg(bare))


def _without_groups(svg: str) -> list[str]:
    lines = svg.splitlines()
    return [line for line in lines if not line.startswith("<g data-thing") and line != "</g>"]


def test_shapes_of_one_thing_that_follow_each_other_share_a_group() -> None:
    thing = Thing(ThingKind.BEAM, "B", ("drops", "B"))
    line = Line(Layer.BEAM, (0.0, 0.0), (1.0, 0.0), of=thing)
    text = Text(Layer.LABEL, (0.0, 0.0), "B", 2.5, of=thing)
    alone = Line(Layer.BEAM, (0.0, 0.0), (1.0, 0.0))
    svg = to_svg(Scene("t", "d", 9.0, 9.0, Style.US, sheet=(line, line, text, alone, line)))
    assert groups_of(svg) == [("beam", "drops/B")] * 3


@pytest.mark.parametrize("name", [NAME, "x" * 300, "a\nb\tc"])
def test_any_name_is_escaped(name: str) -> None:
    path = ("site", "roofs", name, "anchors", "/")
    thing = Thing(ThingKind.ANCHOR, name, path)
    line = Line(Layer.ANCHOR, (0.0, 0.0), (1.0, 0.0), of=thing)
    ((_, found),) = groups_of(to_svg(Scene("t", "d", 9.0, 9.0, Style.US, sheet=(line,))))
    assert path_in(found) == path
    assert path_in(path_text(path)) == path


def test_labels_and_signs_of_a_thing_are_its_own_and_leaders_are_nobody_s() -> None:
    scene = roof_plan(demo(Style.US), {}, "MAIN")
    for shape in scene.drawing:
        if isinstance(shape, Symbol) and shape.layer is Layer.ANCHOR:
            assert shape.of is not None
        if isinstance(shape, Line) and shape.layer is Layer.LABEL:
            assert shape.of is None
