"""The page about drawings names every layer, block, kind and value that there is."""

import re

import pytest

from backspan.core.quantities import Style
from backspan.drawings import Scene, drop_details, drop_section, elevation, roof_plan
from backspan.drawings.dxf_tables import block_name
from backspan.drawings.scene import Layer, SymbolName
from backspan.drawings.things import Thing, ThingKind
from tests.architecture.source import ROOT
from tests.unit.drawings.inspection import SCENE_NAMES, scene_named
from tests.unit.drawings.test_demo import demo

PAGE = (ROOT / "docs" / "drawings.md").read_text(encoding="utf-8")
ROW = re.compile(r"^\| `(?P<kind>[a-z-]+)` \|[^|]*\|(?P<values>[^|]*)\|$", re.MULTILINE)
CODE = re.compile(r"`([^`]+)`")
TOLD = {row["kind"]: set(CODE.findall(row["values"])) for row in ROW.finditer(PAGE)}
EVERYWHERE = {"place", "alike"}
RESERVED = {"kind", "id", "path"}


def things_of(scene: Scene) -> list[Thing]:
    """What a scene shows."""
    return [shape.of for shape in (*scene.drawing, *scene.sheet) if shape.of is not None]


def test_every_layer_block_and_kind_is_on_the_page() -> None:
    names = (*map(str, Layer), *map(block_name, SymbolName))
    assert [name for name in names if f"`{name}`" not in PAGE] == []
    assert TOLD.keys() == {str(kind) for kind in ThingKind}


@pytest.mark.parametrize("units", list(Style))
def test_every_value_is_on_the_page(units: Style) -> None:
    project = demo(units)
    scenes = [roof_plan(project, {}, roof.id) for roof in project.site.roofs]
    scenes += [
        make(project, drop.id, None)
        for drop in project.drops
        for make in (drop_section, drop_details)
    ]
    scenes += [
        elevation(project, roof.id, edge.id, {}, standings={"S1": "in service"})
        for roof in project.site.roofs
        for edge in roof.edges
    ]
    scenes += [scene_named(name, units) for name in SCENE_NAMES]
    for thing in (thing for scene in scenes for thing in things_of(scene)):
        names = [name for name, _ in thing.facts]
        assert len(set(names)) == len(names)
        assert not RESERVED & set(names)
        assert all(value for _, value in thing.facts)
        plain = {re.sub("_(m|n|evidence)$", "", name) for name in names} - EVERYWHERE
        rated = {name for name in plain if name.startswith("rating_")}
        assert plain - rated <= TOLD[thing.kind], thing.kind
