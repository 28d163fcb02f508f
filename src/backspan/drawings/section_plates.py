"""The plates under the stands of a beam in section, to scale where their size is stated."""

from __future__ import annotations

from backspan.core.model.rigs import Fulcrum, RearBearing
from backspan.drawings.scene import Layer, Line, Polygon
from backspan.drawings.section_points import Section
from backspan.drawings.symbols import WHITE
from backspan.drawings.values import known


def draw_plate(
    section: Section,
    bearing: Fulcrum | RearBearing | None,
    *,
    inward: float,
    foot: float,
    sure: bool,
) -> None:
    """The plate of a stand and the pad under it, where the length of the plate is stated.

    As on the sheet of details, the length lies along the beam.
    """
    length = known(None if bearing is None else bearing.plate_length)
    if bearing is None or length is None:
        return
    layer = Layer.PLATE if sure else Layer.NOT_KNOWN
    top = foot
    pad = bearing.pad
    wide, thick = (None, None) if pad is None else (known(pad.length), known(pad.thickness))
    if wide is not None and thick is not None:
        top = foot + thick.value
        half = wide.value / 2
        box = ((-half, foot), (half, foot), (half, top), (-half, top))
        corners = tuple(section.at(inward=inward + x, above=y) for x, y in box)
        section.canvas.add(Polygon(layer, corners, WHITE))
    half = length.value / 2
    start, end = (section.at(inward=inward + side, above=top) for side in (-half, half))
    section.canvas.add(Line(layer, start, end))
