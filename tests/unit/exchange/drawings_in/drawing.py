"""Drawings made for the tests."""

from __future__ import annotations

import io

from ezdxf.document import Drawing
from ezdxf.filemanagement import new

from backspan.exchange.drawings_in import DrawingUnit, DrawnIn, read_drawing

FOOT = 0.3048
CODES = {"in": 1, "ft": 2, "mm": 4, "cm": 5, "m": 6, "survey ft": 21}


def made(units: int = 2, version: str = "R2010") -> Drawing:
    """An empty drawing in feet, or other units by their number."""
    document = new(version)
    document.header["$INSUNITS"] = units
    document.header["$MEASUREMENT"] = 0 if units in {1, 2, 21} else 1
    return document


def content(document: Drawing) -> bytes:
    """The file that it is saved as."""
    stream = io.StringIO()
    document.write(stream)
    return document.encode(stream.getvalue())


def read(document: Drawing, units: DrawingUnit | None = None) -> DrawnIn:
    """What is read of it."""
    return read_drawing(content(document), "roof.dxf", units=units)


def oblong(document: Drawing, layer: str = "ROOF") -> None:
    """A roof of 60 by 30, drawn to the left."""
    corners = [(0, 0), (60, 0), (60, 30), (0, 30)]
    document.modelspace().add_lwpolyline(corners, close=True, dxfattribs={"layer": layer})


def told(drawn: DrawnIn) -> dict[str, int]:
    """What was mended, left out or is odd, and how often."""
    return {one.what: one.many for one in drawn.audit}
