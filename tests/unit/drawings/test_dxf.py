import io
import re

import pytest
from ezdxf import bbox
from ezdxf.document import Drawing
from ezdxf.entities import Dimension
from ezdxf.filemanagement import read
from ezdxf.version import __version__ as version

from backspan.core.quantities import Style
from backspan.drawings import roof_plan, to_dxf
from backspan.drawings.dxf_tables import pen_width
from backspan.drawings.scene import PENS, Layer
from tests.unit.drawings.inspection import SCENE_NAMES, scene_named, words_of
from tests.unit.drawings.sample import metres, with_site_name
from tests.unit.drawings.sample_reviews import reviews

INCHES, MILLIMETRES = 1, 4
BOTH = pytest.mark.parametrize(
    ("units", "code", "metre"),
    [
        (Style.US, INCHES, 1 / 0.0254),
        (Style.METRIC, MILLIMETRES, 1000.0),
    ],
)


def read_back(name: str, units: Style = Style.US) -> Drawing:
    """A scene written as DXF and read again."""
    return read(io.StringIO(to_dxf(scene_named(name, units)).decode("utf-8")))


@pytest.mark.parametrize("name", SCENE_NAMES)
@pytest.mark.parametrize("units", list(Style))
def test_an_audit_finds_nothing(name: str, units: Style) -> None:
    audit = read_back(name, units).audit()
    assert audit.errors == []
    assert audit.fixes == []


@pytest.mark.parametrize("name", SCENE_NAMES)
def test_the_same_scene_gives_the_same_bytes(name: str) -> None:
    assert to_dxf(scene_named(name)) == to_dxf(scene_named(name))


@BOTH
def test_units_are_stated_and_the_roof_has_its_real_size(
    units: Style, code: int, metre: float
) -> None:
    document = read_back("plan", units)
    assert document.header["$INSUNITS"] == code
    assert document.header["$MEASUREMENT"] == (0 if units is Style.US else 1)
    (outline,) = document.modelspace().query(f'LWPOLYLINE[layer=="{Layer.EXISTING}"]')
    box = bbox.extents([outline])
    assert box.extmin.x == pytest.approx(0.0)
    assert box.size.x == pytest.approx(metres("110 ft") * metre)
    assert box.size.y == pytest.approx(metres("62 ft") * metre)
    assert document.header["$EXTMAX"][0] >= box.extmax.x


@BOTH
def test_a_beam_in_section_has_its_real_length(units: Style, code: int, metre: float) -> None:
    document = read_back("N-01", units)
    assert document.header["$INSUNITS"] == code
    ends = [
        end.x
        for line in document.modelspace().query(f'LINE[layer=="{Layer.BEAM}"]')
        for end in (line.dxf.start, line.dxf.end)
    ]
    assert max(ends) - min(ends) == pytest.approx(metres("18 ft") * metre)


@pytest.mark.parametrize(
    ("name", "text", "inches"),
    [
        ("N-01", 'Backspan 10\'-0" [3,048 mm], measured ±1/2"', 120.0),
        ("N-02", "Backspan 10'-11 1/4\" [3,334 mm]", 131.25),
    ],
)
def test_dimensions_measure_what_they_print(name: str, text: str, inches: float) -> None:
    found = {
        one.dxf.text: one.get_measurement()
        for one in read_back(name).modelspace().query("DIMENSION")
        if isinstance(one, Dimension)
    }
    assert found[text] == pytest.approx(inches)


def test_layers_carry_the_trade_s_names_pens_and_dashes() -> None:
    document = read_back("plan")
    for layer in Layer:
        entry = document.layers.get(str(layer))
        assert entry.dxf.lineweight == pen_width(PENS[layer].width)
        assert (entry.dxf.linetype != "Continuous") == bool(PENS[layer].dashes)
    used = {entity.dxf.layer for entity in document.modelspace()}
    assert used <= {str(layer) for layer in Layer} | {"0"}


def test_anchors_are_blocks_at_their_places() -> None:
    inserts = read_back("plan").modelspace().query(f'INSERT[layer=="{Layer.ANCHOR}"]')
    places = {(round(one.dxf.insert.x, 6), round(one.dxf.insert.y, 6)) for one in inserts}
    assert (168.0, 480.0) in places
    assert len(places) == 6


def test_texts_are_all_there_and_as_high_as_on_the_sheet() -> None:
    scene = scene_named("N-01")
    assert scene.scale is not None
    document = read_back("N-01")
    texts = {one.dxf.text for layout in document.layouts for one in layout.query("TEXT")}
    texts |= {one.dxf.text for one in document.modelspace().query("DIMENSION")}
    assert words_of(scene) <= texts
    low = min(one.dxf.height for one in document.modelspace().query("TEXT"))
    assert low * 25.4 / scene.scale.ratio >= 2.5 - 1e-9


def test_the_sheet_shows_the_model_at_the_scale() -> None:
    scene = scene_named("N-01")
    assert scene.scale is not None
    layout = read_back("N-01").paperspace("Sheet")
    windows = [one for one in layout.query("VIEWPORT") if one.dxf.id > 1]
    assert len(windows) == 1
    assert windows[0].dxf.view_height / windows[0].dxf.height == pytest.approx(scene.scale.ratio)


def test_a_diagram_has_no_second_layout_of_its_own() -> None:
    document = read_back("envelope")
    assert "Sheet" not in document.layout_names()
    assert len(document.modelspace()) > 10


def test_no_clock_gets_into_the_file() -> None:
    text = to_dxf(scene_named("N-01")).decode("utf-8")
    assert version not in text
    dates = re.findall(r"\$TDU?(?:CREATE|UPDATE)\n *40\n([^\n]*)", text)
    assert set(dates) == {"2461369.5"}  # 2026-11-25, the date of the review


def test_user_text_is_never_taken_for_a_control_code() -> None:
    project = with_site_name("50%%d {\\H5;big} <> Café 高")
    document = read(io.StringIO(to_dxf(roof_plan(project, reviews(), "ROOF")).decode("utf-8")))
    texts = [one.dxf.text for one in document.paperspace("Sheet").query("TEXT")]
    assert "50% %d {\\H5;big} <> Café 高" in texts
    assert document.audit().errors == []
