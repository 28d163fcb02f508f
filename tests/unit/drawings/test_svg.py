import subprocess
import sys
from xml.etree import ElementTree

import pytest

from backspan.core.quantities import Style
from backspan.drawings import Scene, roof_plan, to_svg
from backspan.drawings.scene import (
    Align,
    Arc,
    Circle,
    Dimension,
    Hatch,
    Layer,
    Line,
    Polygon,
    Polyline,
    Scale,
    Symbol,
    SymbolName,
    Text,
)
from tests.unit.drawings.inspection import SCENE_NAMES, scene_named
from tests.unit.drawings.sample import with_site_name
from tests.unit.drawings.sample_reviews import reviews

SVG = "{http://www.w3.org/2000/svg}"
HOSTILE = "</text><script>alert(1)</script> & \"quoted\" 'q' <!-- ]]> \x00"

EVERY = pytest.mark.parametrize("name", SCENE_NAMES)


def small(*shapes: object) -> Scene:
    """A scene of one sheet with these shapes."""
    return Scene("t", "d", 100.0, 50.0, Style.US, sheet=shapes)  # type: ignore[arg-type]  # shapes of one kind each


def root_of(svg: str) -> ElementTree.Element:
    """The document as a tree."""
    return ElementTree.fromstring(svg)  # noqa: S314 - written by the test itself


def elements(svg: str, tag: str) -> list[ElementTree.Element]:
    """All elements of one kind."""
    return root_of(svg).findall(f".//{SVG}{tag}")


@EVERY
def test_it_is_well_formed_and_sized_in_millimetres(name: str) -> None:
    scene = scene_named(name)
    root = root_of(to_svg(scene))
    assert root.get("width") == f"{scene.width:g}mm"
    assert root.get("height") == f"{scene.height:g}mm"
    assert root.get("viewBox") == f"0 0 {scene.width:g} {scene.height:g}"


@EVERY
def test_it_reaches_for_nothing_outside(name: str) -> None:
    svg = to_svg(scene_named(name))
    for word in ("href", "url(", "<script", "<image", "<foreignObject", "<style", "@import", "on"):
        attribute = f" {word}load" if word == "on" else word
        assert attribute not in svg


@EVERY
def test_the_same_scene_gives_the_same_text(name: str) -> None:
    assert to_svg(scene_named(name)) == to_svg(scene_named(name))


@pytest.mark.slow
def test_the_text_does_not_depend_on_the_order_of_hashes() -> None:
    code = (
        "import hashlib; from backspan.drawings import to_svg, to_dxf;"
        "from tests.unit.drawings.inspection import scene_named; s = scene_named('plan');"
        "print(hashlib.sha256(to_svg(s).encode() + to_dxf(s)).hexdigest())"
    )
    runs = [
        subprocess.run(
            [sys.executable, "-c", code],
            env={"PYTHONHASHSEED": seed, "PYTHONPATH": "src:."},
            capture_output=True,
            text=True,
            check=True,
        ).stdout
        for seed in ("1", "2")
    ]
    assert runs[0] == runs[1]


def test_names_with_markup_are_text_and_nothing_else() -> None:
    svg = to_svg(roof_plan(with_site_name(HOSTILE), reviews(), "ROOF"))
    root = root_of(svg)
    assert {element.tag.removeprefix(SVG) for element in root.iter()} <= {
        "svg",
        "title",
        "desc",
        "view",
        "rect",
        "g",
        "polyline",
        "polygon",
        "circle",
        "path",
        "text",
    }
    title = root.find(f"{SVG}title")
    assert title is not None
    assert title.text is not None
    assert "<script>alert(1)</script>" in title.text


def test_it_says_in_words_what_it_shows() -> None:
    root = root_of(to_svg(scene_named("plan")))
    described = root.find(f"{SVG}desc")
    assert root.get("role") == "img"
    assert described is not None
    assert described.text is not None
    assert "N-02 fail" in described.text


def test_each_part_can_be_shown_alone() -> None:
    views = {
        view.get("id"): view.get("viewBox")
        for view in elements(to_svg(scene_named("N-02")), "view")
    }
    assert {"drawing-area", "title-block", "point-1", "point-2"} <= set(views)
    assert views["title-block"] == "325.8 8 98 263.4"


def test_y_runs_up_the_sheet() -> None:
    (line,) = elements(to_svg(small(Line(Layer.SHEET, (10.0, 10.0), (20.0, 10.0)))), "polyline")
    assert line.get("points") == "10,40 20,40"


def test_the_drawing_is_scaled_and_its_pens_are_not() -> None:
    scene = Scene(
        "t",
        "d",
        100.0,
        50.0,
        Style.METRIC,
        sheet=(),
        scale=Scale(50.0, "1:50"),
        origin=(5.0, 5.0),
        drawing=(Line(Layer.BEAM, (0.0, 0.0), (2.0, 0.0)), Circle(Layer.ANCHOR, (0.0, 0.0), 0.5)),
    )
    svg = to_svg(scene)
    (line,) = elements(svg, "polyline")
    (circle,) = elements(svg, "circle")
    assert line.get("points") == "5,45 45,45"
    assert line.get("stroke-width") == "0.9"
    assert circle.get("r") == "10"


def test_every_kind_of_shape_is_written() -> None:
    square = ((10.0, 10.0), (20.0, 10.0), (20.0, 20.0), (10.0, 20.0))
    text = Text(Layer.LABEL, (30.0, 30.0), "a & b", 2.5, Align.MIDDLE, 90.0, bold=True, masked=True)
    svg = to_svg(
        small(
            Polyline(Layer.LIFELINE, square),
            Polygon(Layer.OBSTACLE, square, "#e6e6e6"),
            Polygon(Layer.OBSTACLE, square, "#e6e6e6", outlined=False),
            Arc(Layer.SHEET, (30.0, 10.0), 5.0, 0.0, 90.0),
            Hatch(Layer.COUNTERWEIGHT, square, 1.2),
            Hatch(Layer.COUNTERWEIGHT, square[:2], 1.2),
            Dimension(Layer.DIMENSION, (10.0, 10.0), (20.0, 10.0), (10.0, 20.0), 0.0, text),
            Symbol(Layer.SHEET, SymbolName.NORTH, (50.0, 25.0), 10.0, 30.0),
            text,
        )
    )
    assert 'stroke-dasharray="5 1.2 0.8 1.2"' in svg
    assert svg.count(">a &amp; b</text>") == 2
    assert 'text-anchor="middle" font-weight="bold" transform="rotate(-90 30 20)"' in svg
    assert 'transform="translate(50,25) rotate(-30)"' in svg
    assert 'fill="#e6e6e6" stroke=' in svg
    assert 'fill="#e6e6e6"/>' in svg
    assert len(elements(svg, "path")) == 1


@pytest.mark.parametrize("name", [one for one in SymbolName if one is not SymbolName.SCHEDULE_ROW])
def test_every_sign_can_be_drawn(name: SymbolName) -> None:
    (group,) = [
        one
        for one in elements(to_svg(small(Symbol(Layer.LABEL, name, (5.0, 5.0), 4.0))), "g")
        if one.get("transform")
    ]
    assert len(group) >= 1


def test_the_place_of_a_row_is_nothing_to_see() -> None:
    row = Symbol(Layer.SHEET, SymbolName.SCHEDULE_ROW, (5.0, 5.0), 4.0)
    assert to_svg(small(row)) == to_svg(small())
