"""What each sign looks like, drawn about its own point at size one."""

from __future__ import annotations

from collections.abc import Callable
from types import MappingProxyType

from backspan.core.findings import Verdict
from backspan.drawings.geometry import turned
from backspan.drawings.scene import (
    BLACK,
    Arc,
    Circle,
    Layer,
    Line,
    Point,
    Polygon,
    Polyline,
    Symbol,
    SymbolName,
)

Glyph = tuple[Line | Polyline | Polygon | Circle | Arc, ...]

WHITE = "#ffffff"


def _anchor(layer: Layer) -> Glyph:
    return (Circle(layer, (0.0, 0.0), 0.5, WHITE), Circle(layer, (0.0, 0.0), 0.12, BLACK))


def _anchor_conditional(layer: Layer) -> Glyph:
    return (Circle(layer, (0.0, 0.0), 0.5, WHITE), Line(layer, (-0.5, 0.0), (0.5, 0.0)))


def _anchor_out(layer: Layer) -> Glyph:
    return (
        Circle(layer, (0.0, 0.0), 0.5, WHITE),
        Line(layer, (-0.6, -0.6), (0.6, 0.6)),
        Line(layer, (-0.6, 0.6), (0.6, -0.6)),
    )


def _fulcrum(layer: Layer) -> Glyph:
    # Its point is the tip that bears the beam.
    return (Polygon(layer, ((0.0, 0.0), (-0.5, -0.9), (0.5, -0.9)), BLACK),)


def _suspension_point(layer: Layer) -> Glyph:
    return (Circle(layer, (0.0, 0.0), 0.5, BLACK),)


def _centroid(layer: Layer) -> Glyph:
    return (
        Circle(layer, (0.0, 0.0), 0.5, WHITE),
        Line(layer, (-0.8, 0.0), (0.8, 0.0)),
        Line(layer, (0.0, -0.8), (0.0, 0.8)),
        Polygon(layer, _quarter(0.0), BLACK),
        Polygon(layer, _quarter(180.0), BLACK),
    )


def _quarter(start: float) -> tuple[Point, ...]:
    rim = (turned((0.5, 0.0), degrees=start + step * 15.0) for step in range(7))
    return ((0.0, 0.0), *rim)


def _north(layer: Layer) -> Glyph:
    return (
        Polygon(layer, ((0.0, 0.6), (-0.22, -0.4), (0.0, -0.25)), BLACK),
        Polygon(layer, ((0.0, 0.6), (0.22, -0.4), (0.0, -0.25)), WHITE),
        Polyline(layer, ((-0.1, 0.68), (-0.1, 0.96), (0.1, 0.68), (0.1, 0.96))),
    )


def _arrow(layer: Layer) -> Glyph:
    return (Polygon(layer, ((0.0, 0.0), (-1.0, 0.22), (-1.0, -0.22)), BLACK),)


def _as_built(layer: Layer) -> Glyph:
    return (
        Circle(layer, (0.0, 0.0), 0.5, WHITE),
        Line(layer, (-0.9, 0.0), (0.9, 0.0)),
        Line(layer, (0.0, -0.9), (0.0, 0.9)),
        Circle(layer, (0.0, 0.0), 0.16, BLACK),
    )


def _pass(layer: Layer) -> Glyph:
    return (
        Circle(layer, (0.0, 0.0), 0.5, WHITE),
        Polyline(layer, ((-0.24, 0.02), (-0.07, -0.2), (0.25, 0.22))),
    )


def _fail(layer: Layer) -> Glyph:
    box = ((-0.46, -0.46), (0.46, -0.46), (0.46, 0.46), (-0.46, 0.46))
    return (
        Polygon(layer, box, WHITE),
        Line(layer, (-0.26, -0.26), (0.26, 0.26)),
        Line(layer, (-0.26, 0.26), (0.26, -0.26)),
    )


def _refer(layer: Layer) -> Glyph:
    pointed = ((-0.5, -0.36), (0.16, -0.36), (0.54, 0.0), (0.16, 0.36), (-0.5, 0.36))
    return (
        Polygon(layer, pointed, WHITE),
        Polyline(layer, ((-0.3, 0.0), (0.22, 0.0))),
        Polyline(layer, ((0.02, 0.18), (0.22, 0.0), (0.02, -0.18))),
    )


def _missing(layer: Layer) -> Glyph:
    diamond = ((0.0, -0.58), (0.58, 0.0), (0.0, 0.58), (-0.58, 0.0))
    return (
        Polygon(layer, diamond, WHITE),
        Arc(layer, (0.0, 0.13), 0.15, -90.0, 180.0),
        Line(layer, (0.0, -0.02), (0.0, -0.13)),
        Circle(layer, (0.0, -0.27), 0.035, BLACK),
    )


def _nothing(layer: Layer) -> Glyph:
    del layer
    return ()


_GLYPHS: MappingProxyType[SymbolName, Callable[[Layer], Glyph]] = MappingProxyType(
    {
        SymbolName.ANCHOR: _anchor,
        SymbolName.ANCHOR_CONDITIONAL: _anchor_conditional,
        SymbolName.ANCHOR_OUT: _anchor_out,
        SymbolName.FULCRUM: _fulcrum,
        SymbolName.SUSPENSION_POINT: _suspension_point,
        SymbolName.CENTROID: _centroid,
        SymbolName.NORTH: _north,
        SymbolName.ARROW: _arrow,
        SymbolName.POINT_AS_BUILT: _as_built,
        SymbolName.PASS: _pass,
        SymbolName.FAIL: _fail,
        SymbolName.REFER: _refer,
        SymbolName.MISSING: _missing,
        SymbolName.SCHEDULE_ROW: _nothing,
    }
)

_ANSWERS = MappingProxyType(
    {
        Verdict.PASS: (SymbolName.PASS, Layer.PASS),
        Verdict.FAIL: (SymbolName.FAIL, Layer.FAIL),
        Verdict.REFER: (SymbolName.REFER, Layer.REFER),
        Verdict.MISSING: (SymbolName.MISSING, Layer.MISSING),
    }
)


def glyph(name: SymbolName, layer: Layer) -> Glyph:
    """The shapes of a sign about (0, 0) at size one, y up."""
    return _GLYPHS[name](layer)


def answer_layer(verdict: Verdict) -> Layer:
    """The layer, and so the colour, of an answer."""
    return _ANSWERS[verdict][1]


def answer_sign(verdict: Verdict, at: Point, *, size: float) -> Symbol:
    """The sign of an answer: each has a shape of its own, so that it needs no colour."""
    name, layer = _ANSWERS[verdict]
    return Symbol(layer, name, at, size)
