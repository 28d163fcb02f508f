"""A scene as DXF: the drawing at real size in model space, the sheet around it in a layout.

Units are inches or millimetres, stated in the file. The same scene gives the same bytes: what
the library takes from the clock or from chance is replaced by what the scene says.
"""

from __future__ import annotations

import datetime
import hashlib
import io
import re
from typing import TYPE_CHECKING

from backspan.core.quantities import Style
from backspan.drawings.dxf_attributes import define
from backspan.drawings.dxf_shapes import Space, add_shapes
from backspan.drawings.dxf_tables import STYLE, add_tables, block_name
from backspan.drawings.dxf_things import APPLICATION
from backspan.drawings.lettering import plain
from backspan.drawings.paper import MILLIMETRES, Frame, frame_of
from backspan.drawings.scene import Layer, Point, Scale, Scene, Symbol, SymbolName
from backspan.drawings.symbols import glyph
from backspan.drawings.things import Thing

if TYPE_CHECKING:
    from ezdxf.document import Drawing

VERSION = "R2010"
LAYOUT = "Sheet"
VIEWPORT_LAYER = "Viewport"
INCHES, IN_MILLIMETRES = 1, 4
INCH = 25.4
ARCHITECTURAL, DECIMAL = 4, 2

_DATES = re.compile(r"(\$TDU?(?:CREATE|UPDATE)\n *40\n)[^\n]*")
_GUIDS = re.compile(r"(\$(?:FINGERPRINT|VERSION)GUID\n *2\n)[^\n]*")
_MADE_BY = re.compile(r"\n\d+\.\d+[^\n]* @ \d{4}-\d\d-\d\dT[^\n]*")
# Days from the start of the Julian day count (noon) to the day before 0001-01-01, at midnight.
_JULIAN_DAY = 1721424.5


def to_dxf(scene: Scene) -> bytes:
    """The scene as a DXF file. A scene without scale has its sheet in model space."""
    from ezdxf.filemanagement import new

    per_millimetre = 1.0 if scene.units is Style.METRIC else 1.0 / INCH
    ratio = 1.0 if scene.scale is None else scene.scale.ratio
    document = new(VERSION, setup=False)
    _header(document, scene, line_scale=ratio * per_millimetre)
    document.appids.add(APPLICATION)
    add_tables(document, text_height=2.5 * ratio * per_millimetre)
    _blocks(document, scene)
    on_sheet = Frame(Scale(MILLIMETRES, ""), (0.0, 0.0))
    model = document.modelspace()
    if scene.scale is None:
        add_shapes(Space(model, on_sheet, per_millimetre), scene.sheet)
    else:
        # A metre of the drawing is 1000 mm in the model: its own size, whatever the sheet's scale.
        metre = MILLIMETRES * per_millimetre
        add_shapes(Space(model, frame_of(scene), metre), scene.drawing)
        _layout(document, scene, per_millimetre)
    _extents(document, scene, per_millimetre)
    # In an order of our own: the library takes them from a set.
    for name in sorted(document.entitydb.dxf_types_in_use()):
        document.classes.add_class(name)
    stream = io.StringIO()
    document.write(stream)
    return _settled(stream.getvalue(), scene).encode("utf-8")


def _header(document: Drawing, scene: Scene, *, line_scale: float) -> None:
    metric = scene.units is Style.METRIC
    document.header["$INSUNITS"] = IN_MILLIMETRES if metric else INCHES
    document.header["$MEASUREMENT"] = 1 if metric else 0
    document.header["$LUNITS"] = DECIMAL if metric else ARCHITECTURAL
    document.header["$LUPREC"] = 0 if metric else 4
    document.header["$LTSCALE"] = line_scale
    document.header["$PSLTSCALE"] = 0
    document.header["$LWDISPLAY"] = 1
    document.header["$TEXTSTYLE"] = STYLE
    document.header["$PROJECTNAME"] = plain(scene.title)[:255]


def _layout(document: Drawing, scene: Scene, per_millimetre: float) -> None:
    """The sheet at its own size, with one window through which the model shows at the scale."""
    if scene.scale is None:
        return
    document.layouts.rename("Layout1", LAYOUT)
    layout = document.paperspace(LAYOUT)
    size = (scene.width * per_millimetre, scene.height * per_millimetre)
    units = "mm" if scene.units is Style.METRIC else "inch"
    layout.page_setup(size=size, margins=(0, 0, 0, 0), units=units)
    document.layers.add(VIEWPORT_LAYER).dxf.plot = 0
    frame = frame_of(scene)
    x, y = frame.to_drawing((scene.width / 2, scene.height / 2))
    metre = MILLIMETRES * per_millimetre
    layout.add_viewport(
        center=(size[0] / 2, size[1] / 2),
        size=size,
        view_center_point=(x * metre, y * metre),
        view_height=size[1] * scene.scale.ratio,
        dxfattribs={"layer": VIEWPORT_LAYER},
    )
    on_sheet = Frame(Scale(MILLIMETRES, ""), (0.0, 0.0))
    space = Space(layout, on_sheet, per_millimetre, line_scale=1.0 / scene.scale.ratio)
    add_shapes(space, scene.sheet)


def _blocks(document: Drawing, scene: Scene) -> None:
    """A block of size one for every sign that is used, and the attributes it has where used."""
    used: dict[SymbolName, list[Thing]] = {}
    for shape in (*scene.drawing, *scene.sheet):
        if isinstance(shape, Symbol):
            things = used.setdefault(shape.name, [])
            things += () if shape.of is None else (shape.of,)
    for name in SymbolName:
        if name in used:
            block = document.blocks.new(block_name(name))
            frame = Frame(Scale(MILLIMETRES, ""), (0.0, 0.0))
            add_shapes(Space(block, frame, 1.0, in_block=True), glyph(name, Layer.LABEL))
            define(block, used[name])


def _extents(document: Drawing, scene: Scene, per_millimetre: float) -> None:
    """What a viewer shows first: all that the sheet shows."""
    corners: tuple[Point, ...] = ((0.0, 0.0), (scene.width, scene.height))
    scale = per_millimetre
    if scene.scale is not None:
        frame = frame_of(scene)
        corners, scale = tuple(map(frame.to_drawing, corners)), MILLIMETRES * per_millimetre
    (left, low), (right, high) = corners
    least, most = (left * scale, low * scale, 0.0), (right * scale, high * scale, 0.0)
    document.modelspace().reset_extents(least, most)


def _settled(text: str, scene: Scene) -> str:
    """The file with its dates from the scene, and its identities from its own content."""
    day = scene.dated or datetime.date(2000, 1, 1)
    text = _DATES.sub(rf"\g<1>{_JULIAN_DAY + day.toordinal()}", text)
    text = _MADE_BY.sub("\nbackspan", text)
    blank = _GUIDS.sub(r"\g<1>{}", text)
    digest = hashlib.sha256(blank.encode("utf-8")).hexdigest().upper()
    name = "-".join((digest[:8], digest[8:12], digest[12:16], digest[16:20], digest[20:32]))
    return _GUIDS.sub(rf"\g<1>{{{name}}}", text)
